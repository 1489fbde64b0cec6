// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>
#include <vector>

/// Columns that no table knows, named once by a person.
namespace bothways::storage {

struct ColumnMapping {
    std::string column; ///< as in the sheet's header
    /// Our name, or any name and unit that means one: "distance (m)"; empty: kept as it is,
    /// without a meaning.
    std::string ours;
    friend bool operator==(const ColumnMapping&, const ColumnMapping&) = default;
};

/// "Verbrauch=l_per_100km", "Weg=distance (m)", "Liter="; an Error (wrongUse) where what stands
/// behind the last '=' means no column.
[[nodiscard]] core::Result<ColumnMapping> parseColumnMapping(std::string_view text);

} // namespace bothways::storage
