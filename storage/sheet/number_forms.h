// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Numbers as people and spreadsheets write them: "8,41", "1,008.1", "1.008,1", "1 008,1",
/// "1'008.1", with a minus of any kind.
namespace bothways::storage {

/// What the numbers of a sheet, or of a column, have shown so far.
struct NumberSigns {
    int points = 0, commas = 0;         ///< numbers in which it is surely before the decimals
    int weakPoints = 0, weakCommas = 0; ///< in which it could be between thousands: "1,008"
    int plain = 0;                      ///< without any sign
    void look(std::string_view text);
    void add(const NumberSigns& other);
    /// ',' or '.'. Where no number says it surely, what most have is before decimals.
    [[nodiscard]] char decimal() const;
    [[nodiscard]] bool any() const { return points + commas + weakPoints + weakCommas > 0; }
};

struct PlainNumber {
    std::string text;     ///< in C form, with the digits as given
    bool grouped = false; ///< there were signs between thousands
};
/// @param decimal  of the sheet
/// @param column   signs of the column: a lone "1,008" among decimal points is a thousand only
///                 where the column has whole numbers without any sign
/// @return  nothing: not such a number, or one that could mean two things
[[nodiscard]] std::optional<PlainNumber> plainNumber(std::string_view text, char decimal,
                                                     const NumberSigns& column);

/// (number + before) * times / by; by a power of ten the digits stay as they were given.
[[nodiscard]] std::string convertedNumber(std::string_view number, double before, double times,
                                          double by);

} // namespace bothways::storage
