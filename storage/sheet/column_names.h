// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The names that people give to the columns of a run sheet, in English, German, French and
/// Spanish, with the units that they write beside them. One table: the reader, the verb `columns`
/// and the handbook go by it.
namespace bothways::storage {

/// A unit that a quantity may be given in, and the column that its values go to.
struct UnitForm {
    std::string_view column;
    std::string_view units; ///< "km|kilometer|kilometers", compared without blanks and points
    double before = 0.0;    ///< value = (cell + before) * times / by
    double times = 1.0, by = 1.0;
    bool alone = false; ///< the unit is a name by itself: "L/100km", "MPG (US)"
};

/// What people write down, by any name and unit.
struct Quantity {
    /// English, German, French, Spanish: "distance|length".
    std::string_view english, german, french, spanish;
    std::span<const UnitForm> units;
    std::string_view without; ///< the column where no unit is named; empty: a unit is needed
};
[[nodiscard]] std::span<const Quantity> quantities();

/// The day of a start that is a time of day alone; no column of a run.
inline constexpr std::string_view kDateColumn = "date";

/// What a header's name says.
struct ColumnMeaning {
    std::string column; ///< ours; empty: not known
    double before = 0.0, times = 1.0, by = 1.0;
    /// The quantity is known, its unit is not: these are the columns that it could be.
    std::vector<std::string_view> candidates;
    std::string unit; ///< as written, for words: "min"
    /// The name itself is in no table: a word like "average" was left out of it, or its unit alone
    /// says what it is. A column of a known name goes before it.
    bool guessed = false;
    [[nodiscard]] bool known() const { return !column.empty(); }
    [[nodiscard]] bool mentioned() const { return known() || !candidates.empty(); }
    [[nodiscard]] bool converts() const { return before != 0.0 || times != by; }
};
/// @param header  as written: "Verbrauch [l/100 km]", "Speed in km/h", "speed_kmh"
/// @param unit    what a line of units says for it; empty: nothing
[[nodiscard]] ColumnMeaning meaningOf(std::string_view header, std::string_view unit = {});
/// Whether a text is nothing but a unit, or a bracket round one: "[km/h]", "°C", "-".
[[nodiscard]] bool isUnitText(std::string_view text);

/// Without accents, in small letters, blanks for all that joins words: how names compare.
[[nodiscard]] std::string foldedName(std::string_view name);

/// A column as the verb `columns` and the handbook list it.
struct ColumnInfo {
    std::string name;
    core::Message unit;  ///< empty: none
    core::Message range; ///< what a cell must be
    std::string example;
    std::vector<std::string> known_as; ///< other names, as they may stand in a header
};
/// Every column that has a meaning, in the order of a written sheet.
[[nodiscard]] std::vector<ColumnInfo> allColumns();

} // namespace bothways::storage
