// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/channels.h"

#include <span>
#include <vector>

/// Means and medians of a channel over a time, whatever the pace at which it was recorded: a logger
/// that is faster while something changes must not shift them. (Method 9, "Common to all".)
namespace bothways::core::rules {

/// The time that each sample stands for, s: half the way to either neighbour, so that the sum of
/// value times weight is the trapezoid rule. Ways longer than `longest_s` are left out. Where
/// nothing is left, and for a single sample, all weights are 1.
[[nodiscard]] std::vector<double> weightsOverTime(std::span<const double> time_s, double longest_s);

/// Over the run.
[[nodiscard]] double meanOverTime(const Channel& channel);
/// The value that half of the run's time lies below; the mean of two where it is exactly half.
/// Samples at an even pace have the same weight, also the first and the last.
[[nodiscard]] double medianOverTime(const Channel& channel);

/// As above, of values with weights of their own.
[[nodiscard]] double weightedMedian(std::span<const double> values,
                                    std::span<const double> weights);

/// True where samples follow at one pace; their weights need not be asked.
[[nodiscard]] bool isEven(const Channel& channel);

} // namespace bothways::core::rules
