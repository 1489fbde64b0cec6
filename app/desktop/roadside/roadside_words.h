// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QCoreApplication>
#include <QString>

#include <string>
#include <string_view>

namespace bothways::app {

/// Short words of the roadside.
class RoadsideWords {
    Q_DECLARE_TR_FUNCTIONS(RoadsideWords)

public:
    /// A name from the study as it is.
    [[nodiscard]] static QString text(const std::string& name)
    {
        return QString::fromStdString(name);
    }
    /// "3:07", "1:02:45".
    [[nodiscard]] static QString clock(double seconds);
    /// A mark's word as a person says it: "Passing traffic".
    [[nodiscard]] static QString mark(std::string_view word);
    /// A name from the study without underscores.
    [[nodiscard]] static QString readable(std::string name);
    /// What went wrong, as a sentence.
    [[nodiscard]] static QString sentence(const core::Error& error);
};

} // namespace bothways::app
