// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace bothways::core {

/// The level of a series: at each sample the median of the samples no further than a half-width
/// away in time (the mean of the middle two of an even number).
///
/// The rules ask two things of it: where it has left a band, and how far it went there. Neither
/// needs the median itself at every sample. Whether a median reaches a bound is a matter of how
/// many values of its window do, and that number slides along in constant time; the extreme of an
/// event is sought by asking the same of an ever higher bound. Cost: linear in the samples,
/// whatever the window and whatever the values (no decimals needed), apart from the windows whose
/// middle two lie on either side of the bound, which are looked through.
///
/// Checked: tests/core/statistics/sliding_level_test.cpp, against sorting every window.
class SlidingLevel {
public:
    /// Both spans must outlive this; times ascend, values are finite.
    SlidingLevel(std::span<const double> time_s, std::span<const double> values,
                 double halfWidth_s);

    /// For each sample, 1 or 0: is its level >= high, or <= low? (low < high)
    [[nodiscard]] std::vector<char> outside(double low, double high) const;
    /// Largest and smallest level of the samples first..last, both included.
    [[nodiscard]] double largest(std::size_t first, std::size_t last) const;
    [[nodiscard]] double smallest(std::size_t first, std::size_t last) const;
    /// The level at one sample; time linear in the window.
    [[nodiscard]] double at(std::size_t sample) const;

private:
    struct Window {
        std::size_t begin, end; ///< samples begin <= i < end
        [[nodiscard]] std::size_t size() const { return end - begin; }
    };
    [[nodiscard]] Window windowAt(std::size_t sample) const;
    void advance(Window& window, std::size_t sample) const;
    template <class Better>
    [[nodiscard]] double extreme(std::size_t first, std::size_t last, Better better) const;

    std::span<const double> m_time;
    std::span<const double> m_values;
    double m_half_s;
};

} // namespace bothways::core
