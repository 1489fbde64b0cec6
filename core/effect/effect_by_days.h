// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/effect_model.h"

#include <cstddef>
#include <optional>
#include <vector>

/// The effect of the headline's model, quickly, for many sets of pairs that differ a little.
namespace bothways::core {

struct EffectEstimate {
    double effect_log = 0.0, se_log = 0.0;
    int df = 0;
};

/// Every day's own terms (intercept, and in a closed design a slope) touch that day alone. So
/// effect and responses are first freed of them, day by day, by orthogonalisation on centred times;
/// what is left is a line through the origin. Same numbers as leastSquares() over effectColumns(),
/// at a cost that does not grow with the number of days, and a changed pair costs its day alone.
///
/// Source: Frisch & Waugh (1933), Lovell (1963). Checked:
/// tests/core/effect/effect_by_days_test.cpp.
class EffectByDays {
public:
    struct Day {
        std::vector<Observation> pairs; ///< Observation::day is not looked at
    };
    /// @param sloped  PreparedStudy::sloped()
    EffectByDays(const std::vector<Day>& days, bool sloped);

    /// Nothing where headlineOf() would give no verdict: under 2 pairs in either configuration,
    /// under 2 degrees of freedom, no spread in time, no variation.
    [[nodiscard]] std::optional<EffectEstimate> estimate() const;
    /// The same with `instead` in place of that day.
    [[nodiscard]] std::optional<EffectEstimate> estimateWith(std::size_t day,
                                                             const Day& instead) const;

private:
    /// A day freed of its own terms.
    struct Freed {
        std::vector<double> x, y;
        int device = 0; ///< pairs of configuration B
        int terms = 0;  ///< that do not depend on others
        double xx = 0.0, xy = 0.0;
    };
    [[nodiscard]] Freed freed(const Day& day) const;
    [[nodiscard]] std::optional<EffectEstimate> estimate(std::size_t replaced,
                                                         const Freed* instead) const;

    std::vector<Freed> m_days;
    bool m_sloped;
};

} // namespace bothways::core
