// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

/// What a line of the history holds beside its kind: values, in nobody's language. How they are
/// said is in history_message.h.
///
/// In the column `detail` they are "/1" (the version of the form) and a JSON array, whose first
/// element says what the others are (written without the blanks that stand here):
///
///     /1["runs", 3, 4]                                          counted again, tied, untied, ...
///     /1["facts", [9, "off", "out", "2026-03-14T09:10:00", "5.42", "l_per_100km"], ...]
///     /1["edit", [9, "duration_s", "211", "213", "notes", "", "wet"], ...]
///     /1["discard", [[3, 4], "overspeed", "rotor 3410 rpm"], ...]
///     /1["overrule", [9, "overspeed", "wrong counter"], ...]
///     /1["stand", [9, "overspeed"], ...]                       overruled no longer
///     /1["properties", ["margin", "0.5"], ...]
///     /1["rename", ["configuration", "off", "without"], ...]
///     /1["sheet", "morning.csv", 12]
///     /1["sheet", "morning.csv", 12, 10]                        with so many recordings
///     /1["recording", "drive.csv", 8160, 5, 0]                  rows, channels, its run or 0
///     /1["recording", "drive.csv", 8160, 5, 0, [1, 2], [1, "start", ...], ...]  cut as it came in
///     /1["cut", "drive.csv", [1, 2], [1, "start", ...], ...]    runs, and what changed on them
///     /1["assign", 3, "drive.csv", "12.000"]
///     /1["record", "2026-05-09 05:40", 7, "{...}"]              recording 7 began; its rig
///     /1["record_end", "2026-05-09 05:40", 7, 8160, 5, 0, [["board", 8170, 3, 0, 1, 0], ...]]
///                                rows, channels, 1: it was not stopped; of each instrument: lines,
///                                unreadable ones, lost bytes, reconnects, silences, drift in ms
///     /1["walk_round", "2026-05-09T05:38:00", 7, ["belts on", 1, "", ""],
///                      ["tyre pressure", 1, "230", "kPa"], ...]   its time, the run that followed
///     /1["words", "margin=1"]                                   as given, or a recording's name
///     /1["made", "0.1.0"]
///     /1["look", 9, "less"]                                     pairs, and what was seen
///     /1["look", 9, "less", "ABA", 4]                           with the plan that stood then
///
/// Lines of earlier versions are English text and stay that. None of them looks like this: only
/// names of imported sheets could begin with a '/', and those lines ended with the word "runs".
namespace bothways::storage {

/// A text, a whole number, or a list.
class HistoryValue {
public:
    using List = std::vector<HistoryValue>;
    HistoryValue(std::string text) : m_value(std::move(text)) {}
    HistoryValue(std::string_view text) : m_value(std::string(text)) {}
    HistoryValue(const char* text) : m_value(std::string(text)) {}
    template <class Integer, std::enable_if_t<std::is_integral_v<Integer>, int> = 0>
    HistoryValue(Integer number) : m_value(static_cast<long long>(number))
    {
    }
    HistoryValue(List list) : m_value(std::move(list)) {}

    /// Empty, or 0, where it is of another kind.
    [[nodiscard]] const std::string& text() const;
    [[nodiscard]] long long number() const;
    [[nodiscard]] const List& list() const;
    [[nodiscard]] bool isList() const { return std::holds_alternative<List>(m_value); }

    [[nodiscard]] const std::variant<std::string, long long, List>& get() const { return m_value; }

private:
    std::variant<std::string, long long, List> m_value;
};

/// Places among the values of a form. Where a form names runs that a cut made or changed, what
/// changed on them ("edit") stands behind their numbers.
inline constexpr std::size_t kRunsOfCut = 1, kRunsOfRecording = 4;
inline constexpr std::size_t kPlanOfLook = 2; ///< its sequence, then its pairs

struct HistoryDetail {
    std::string form = {}; ///< "runs", "facts", ...; empty: nothing to say
    HistoryValue::List values = {};
    /// As it stands in the column; empty for one that has nothing to say.
    [[nodiscard]] std::string written() const;
    /// Nothing for a text that is no such form.
    [[nodiscard]] static std::optional<HistoryDetail> read(std::string_view text);
};

} // namespace bothways::storage
