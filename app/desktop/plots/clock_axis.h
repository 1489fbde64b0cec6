// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"

#include <qcustomplot.h>

#include <vector>

namespace bothways::app {

/// Time of day as a plot shows it. Hours since the study's first run become places on an axis;
/// nights and other long gaps between runs are cut to a little space, so that the runs of several
/// days can be seen.
class ClockAxis {
public:
    ClockAxis() = default;
    /// @param study  runs in order of start
    explicit ClockAxis(const core::Study& study);

    /// Hours since the first run's start -> place on the axis.
    [[nodiscard]] double place(double time_h) const;
    /// The inverse, for places inside a day.
    [[nodiscard]] double time_h(double place) const;
    /// Start and end of each day, as places.
    struct Day {
        double from = 0.0, to = 0.0; ///< places
        double cut_h = 0.0;          ///< hours left out before it, all together
    };
    [[nodiscard]] const std::vector<Day>& days() const { return m_days; }
    [[nodiscard]] QCPRange whole() const;
    /// What to add to a place inside a day for the hours since a midnight.
    [[nodiscard]] double sinceMidnight_h(const Day& day) const;
    /// "06:43" at a place.
    [[nodiscard]] QString clock(double place) const;
    [[nodiscard]] QSharedPointer<QCPAxisTicker> ticker() const;

private:
    std::vector<Day> m_days;
    core::Instant m_first;
};

/// Start and end of a run in hours since the study's first start.
struct RunSpan {
    double from_h = 0.0, mid_h = 0.0, to_h = 0.0;
};
[[nodiscard]] RunSpan spanOf(const core::Study& study, const core::Run& run);

} // namespace bothways::app
