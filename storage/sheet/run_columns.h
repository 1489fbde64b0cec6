// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"
#include "core/study/study.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The columns that a run has in a sheet, in the study file and in messages: one name everywhere.
namespace bothways::storage {

/// A number that a run may have. Values outside [smallest, largest] are impossible, not merely odd.
struct NumberColumn {
    std::string_view name;
    std::optional<double> core::Run::*field;
    double factor; ///< field = cell * factor
    double smallest, largest;
    bool aboveZero; ///< zero itself is impossible too
};
/// In the order of a written sheet. Columns in miles follow their twins in kilometres.
[[nodiscard]] std::span<const NumberColumn> numberColumns();
/// What a value of the column must be, for messages: "a number above 0 and at most 2000".
[[nodiscard]] core::Message expectedNumber(const NumberColumn& column);
[[nodiscard]] bool isPossible(const NumberColumn& column, double value);

/// Free text that a run may have.
struct TextColumn {
    std::string_view name;
    std::string core::Run::*field;
};
[[nodiscard]] std::span<const TextColumn> textColumns();

/// What people call a column, and the unit of its numbers where there is one.
struct ColumnWords {
    std::string_view column;
    core::Text<0> name;
    std::optional<core::Text<0>> unit = {};
};
/// Null for a name that has no meaning of ours, for "NAME_on_s" too.
[[nodiscard]] const ColumnWords* columnWords(std::string_view column);

/// "Heated Windscreen on s" -> "heated_windscreen_on_s": how column names compare.
[[nodiscard]] std::string canonicalColumn(std::string_view name);
/// True for every name that has a meaning, "NAME_on_s" among them. `name` is canonical.
[[nodiscard]] bool isKnownColumn(std::string_view name);
/// NAME of a canonical "NAME_on_s"; empty for others.
[[nodiscard]] std::string_view timedAccessoryOf(std::string_view name);

/// The column with a meaning that `name` (canonical, without one) is spelled nearly like: one or
/// two letters added, left out, swapped or mistaken, and no more than a third of them. Empty: none.
[[nodiscard]] std::string nearestColumn(std::string_view name);

/// A number as text in C form, with the digits as given.
struct GivenNumber {
    double value = 0.0;
    int decimals = 0; ///< digits after the point; an exponent counts
};
/// Reads the whole text as a finite number. `decimalComma`: the comma is the point, and no point.
[[nodiscard]] std::optional<GivenNumber> parseNumber(std::string_view text,
                                                     bool decimalComma = false);
/// The shortest text that reads back as the same double, never with an exponent.
[[nodiscard]] std::string formatNumber(double value);
/// `decimals` digits after the point when that reads back the same, else formatNumber().
[[nodiscard]] std::string formatNumber(double value, int decimals);

/// A cell as a message shows it: on one line, not longer than a message bears.
[[nodiscard]] std::string shownCell(std::string_view cell);
/// The same in the reader's quotes: a piece of a sentence.
[[nodiscard]] core::Message inQuotes(std::string_view cell);

/// "31.2 passing_traffic lorry; 80 gust". A ';' within words is written "\;", a backslash "\\".
[[nodiscard]] std::optional<std::vector<core::Mark>> parseMarks(std::string_view text,
                                                                bool decimalComma = false);
[[nodiscard]] std::string formatMarks(const std::vector<core::Mark>& marks);

/// Impossible below and above, L/100 km or kWh/100 km. (A pedal car on a record run needs some
/// 0.01, the transporter of a space rocket some 30 000. Common knowledge, no source.)
inline constexpr double kSmallestConsumption = 1e-4;
inline constexpr double kLargestConsumption = 1e6;

inline constexpr int kLargestRunNumber = 999'999'999;
inline constexpr std::size_t kMostRuns = 10'000;
/// Of a text of a run, in bytes; nobody types as much.
inline constexpr std::size_t kLongestText = 1'000'000;
/// Of a run sheet.
inline constexpr std::size_t kMostColumns = 500;
/// Of a study, in all its runs: with those that have a meaning its sheet has no more than
/// kMostColumns.
inline constexpr std::size_t kMostOwnColumns = 460;
/// Of a column, a configuration, a direction.
inline constexpr std::size_t kMostNameBytes = 200;

} // namespace bothways::storage
