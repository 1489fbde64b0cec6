// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <string>

namespace bothways::app {

/// Short words of the roadside.
class RoadsideWords {
public:
    /// A name from the study as it is.
    [[nodiscard]] static QString text(const std::string& name)
    {
        return QString::fromStdString(name);
    }
    /// "3:07", "1:02:45".
    [[nodiscard]] static QString clock(double seconds);
    /// A name from the study without underscores.
    [[nodiscard]] static QString readable(std::string name);
};

} // namespace bothways::app
