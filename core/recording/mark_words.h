// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace bothways::core {

/// A mark that begins or ends a run, by its first word: "start" or "begin", "end", "stop" or
/// "finish".
struct MarkOfRun {
    bool begins = false;
    std::optional<int> run;        ///< a number above 0 among the words
    std::string direction;         ///< the word that is one
    std::optional<bool> outward;   ///< a word that is a direction; false: the return
    std::vector<std::string> rest; ///< the other words
};
/// Nothing where it is another mark.
/// @param directions  outward first
[[nodiscard]] std::optional<MarkOfRun> markOfRun(std::string_view words,
                                                 const std::vector<std::string>& directions);

} // namespace bothways::core
