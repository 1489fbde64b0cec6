// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"
#include "core/recording/trace_pyramid.h"
#include "core/screening/finding.h"
#include "core/study/study.h"

#include <QString>

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace bothways::app {

/// One run with its recording, as the trace view shows it.
struct TracedRun {
    int run = 0;   ///< the user's number
    QString label; ///< "run 9, B, out"
    bool device = false;
    bool discarded = false;
    std::optional<double> duration_s;
    std::shared_ptr<const core::RunTrace> trace; ///< may be null: nothing recorded
    std::vector<core::Finding> findings;
    std::vector<core::Mark> marks; ///< of the run sheet; the recording's own are in `trace`
};

enum class TraceAxis { time, distance };

/// Where a run is after so many seconds: from its distance channel, else from the integral of its
/// speed. Never falls, whatever the logger wrote.
class DistanceOfTime {
public:
    DistanceOfTime() = default;
    /// @param perMetre  what a metre is on the axis: 0.001 for km
    DistanceOfTime(const core::RunTrace& trace, double perMetre);
    [[nodiscard]] bool known() const { return m_times.size() > 1; }
    /// Distance since the run's start, in units of the axis; held at its ends beyond them.
    [[nodiscard]] double at(double time_s) const;

private:
    std::vector<double> m_times, m_distances;
};

/// A channel of a run, ready to be drawn: its samples, where they lie on the axis, its pyramid.
class TraceSeries {
public:
    TraceSeries(std::shared_ptr<const core::Samples> samples, TraceAxis axis,
                const DistanceOfTime& distance);

    [[nodiscard]] std::span<const double> places() const;
    [[nodiscard]] std::span<const double> values() const { return m_samples->value; }
    [[nodiscard]] const core::Samples& samples() const { return *m_samples; }
    [[nodiscard]] const core::TracePyramid& pyramid() const { return m_pyramid; }
    /// True between neighbours that are farther apart in time than a missing sample explains: the
    /// line is broken there. max(1 s, 3 times the usual interval), as the rule sensor_lost has it.
    [[nodiscard]] bool gapBefore(std::size_t sample) const;
    /// The sample nearest to a place; nothing where the place lies outside or in a gap.
    [[nodiscard]] std::optional<std::size_t> nearest(double place) const;

private:
    std::shared_ptr<const core::Samples> m_samples;
    std::vector<double> m_places; ///< empty: the times themselves
    core::TracePyramid m_pyramid;
    double m_gap_s = 1.0;
};

} // namespace bothways::app
