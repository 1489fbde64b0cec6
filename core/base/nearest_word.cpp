// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/nearest_word.h"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace bothways::core {
namespace {

/// Letters to add, leave out, change, or swap with their neighbour, to make the one word of the
/// other.
std::size_t editsBetween(std::string_view a, std::string_view b)
{
    std::vector<std::size_t> before, last(b.size() + 1), now(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j)
        last[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        now[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t change = a[i - 1] == b[j - 1] ? 0 : 1;
            now[j] = std::min({last[j] + 1, now[j - 1] + 1, last[j - 1] + change});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                now[j] = std::min(now[j], before[j - 2] + 1);
        }
        before = last;
        last = now;
    }
    return last[b.size()];
}

} // namespace

std::string_view nearestWord(std::string_view typed, std::span<const std::string_view> known)
{
    std::string_view nearest;
    std::size_t fewest = std::min<std::size_t>(2, typed.size() / 3) + 1;
    for (const std::string_view word : known) {
        if (word.size() + fewest <= typed.size() || typed.size() + fewest <= word.size())
            continue; // so many letters differ already
        if (const std::size_t edits = editsBetween(typed, word); edits < fewest) {
            fewest = edits;
            nearest = word;
        }
    }
    return nearest;
}

Message didYouMean(Message why, std::string_view nearest)
{
    return nearest.empty() ? why : message("{}; did you mean '{}'?"_t, std::move(why), nearest);
}

} // namespace bothways::core
