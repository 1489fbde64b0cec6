// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>

/// A counter that was reset, or that counts back: its last value minus its first is no amount.
namespace bothways::core {

/// The step of which all changes of a counter are multiples, to a billionth of its unit; 0 where it
/// never changes.
[[nodiscard]] double resolutionOf(std::span<const double> counter);

struct CounterFall {
    std::size_t highest = 0, lowest = 0; ///< samples between which it fell
    double fall = 0.0;                   ///< in the counter's unit
    double resolution = 0.0;
};
/// The largest fall below what it had reached, where that is more than one step of the counter's
/// own resolution. (One step back is jitter.)
[[nodiscard]] std::optional<CounterFall> fallOf(std::span<const double> counter);

} // namespace bothways::core
