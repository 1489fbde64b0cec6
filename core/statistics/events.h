// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

/// Stretches of a series over which a condition holds. (Method, section 9, "Common to all".)
namespace bothways::core {

/// Times that differ by less than this are taken for equal: they went through a subtraction.
inline constexpr double kTimeGrace_s = 1e-6;
/// Events of one rule that lie closer together than this are one.
inline constexpr double kApart_s = 1.0;

/// Samples `first` to `last`, both included.
struct Stretch {
    std::size_t first = 0, last = 0;
    friend bool operator==(const Stretch&, const Stretch&) = default;
};

/// The stretches of consecutive samples for which holds(i) is true and whose first and last sample
/// are at least `atLeast_s` apart (within kTimeGrace_s). holds() is asked once a sample, in order.
template <class Holds>
[[nodiscard]] std::vector<Stretch> stretches(std::span<const double> time_s, double atLeast_s,
                                             Holds holds)
{
    std::vector<Stretch> found;
    const std::size_t count = time_s.size();
    for (std::size_t i = 0; i < count; ++i) {
        if (!holds(i))
            continue;
        const std::size_t first = i;
        while (++i < count && holds(i)) {
        }
        if (time_s[i - 1] - time_s[first] >= atLeast_s - kTimeGrace_s)
            found.push_back({first, i - 1});
    }
    return found;
}

/// Neighbours less than kApart_s apart become one.
[[nodiscard]] std::vector<Stretch> joined(std::span<const double> time_s,
                                          std::vector<Stretch> found);

} // namespace bothways::core
