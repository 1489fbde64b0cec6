// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/rig.h"

#include <QString>
#include <QStringList>

namespace bothways::app {

/// The user's rigs, a file each in a folder beside the preferences.
class RigStore {
public:
    explicit RigStore(QString folder = usualFolder());
    [[nodiscard]] static QString usualFolder();
    [[nodiscard]] QStringList names() const; ///< by the alphabet
    [[nodiscard]] QString file(const QString& name) const;
    [[nodiscard]] core::Result<storage::Rig> read(const QString& name) const;
    [[nodiscard]] core::Outcome write(const storage::Rig& rig) const; ///< over an old one
    bool remove(const QString& name) const;

private:
    QString m_folder;
};

/// Addresses of the serial ports that are there now: "serial:/dev/ttyUSB0,115200".
/// @param folder  in place of /dev, for tests
[[nodiscard]] QStringList portsThere(storage::InstrumentKind kind,
                                     const QString& folder = QStringLiteral("/dev"));

} // namespace bothways::app
