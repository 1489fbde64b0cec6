// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

/// Dates and times as people and spreadsheets write them: "9.5.2026 5:40", "5/9/2026 5:40 PM",
/// "9 mai 2026", "5h40".
namespace bothways::storage {

/// What stands first in "5/9/2026".
enum class DateOrder { unknown, dayFirst, monthFirst };

/// A date before it is known which of two numbers is the day.
struct WrittenDate {
    int year = 0;
    int first = 0, second = 0; ///< as written; of a date that says it, day and month
    bool certain = true;       ///< the order is in its form: ISO 8601, points, a month's name
    /// "2026-05-09"; nothing where there is no such day.
    [[nodiscard]] std::optional<std::string> inIso(DateOrder order) const;
    [[nodiscard]] bool possible(DateOrder order) const { return inIso(order).has_value(); }
};

/// A start, a date or a time of day.
struct WrittenMoment {
    std::optional<WrittenDate> date;
    std::string time;     ///< "05:40:00", with an offset from UTC where there was one; empty: none
    bool asIs = false;    ///< it was in our own form already
    std::string own_form; ///< then: the text
};
[[nodiscard]] std::optional<WrittenMoment> writtenMoment(std::string_view text);

/// "0:03:33", "3:33" (minutes and seconds where `minutesFirst`) as seconds.
[[nodiscard]] std::optional<std::string> secondsOfLength(std::string_view text, bool minutesFirst);
/// "3:33", of which nobody can tell whether it is minutes or hours.
[[nodiscard]] bool isTwoPartLength(std::string_view text);

} // namespace bothways::storage
