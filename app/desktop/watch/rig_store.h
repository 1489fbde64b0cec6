// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/rig.h"

#include <QString>
#include <QStringList>

namespace bothways::app {

/// The user's rigs, as the command line knows them too.
class RigStore {
public:
    [[nodiscard]] QStringList names() const;
    [[nodiscard]] core::Result<storage::Rig> read(const QString& name) const;
    [[nodiscard]] core::Outcome write(const storage::Rig& rig) const; ///< over an old one
    bool remove(const QString& name) const;
};

/// Addresses of the serial ports that are there now: "serial:/dev/ttyUSB0,115200".
/// @param folder  in place of /dev, for tests
[[nodiscard]] QStringList portsThere(storage::InstrumentKind kind,
                                     const QString& folder = QStringLiteral("/dev"));

} // namespace bothways::app
