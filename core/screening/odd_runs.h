// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"

#include <vector>

/// What looks odd about a run beside the study's others. A person is asked to look again: nothing
/// is refused, and it is no reason to discard. (Method, section 9.)
namespace bothways::core {

/// A consumption this many times the usual one, or less than the usual one over it, is asked about.
/// Common practice, no source: far beyond what road, weather or a device can do to one vehicle, and
/// near to what a wrong unit or a lost decimal sign does.
inline constexpr double kOddConsumptionRatio = 3.0;

struct OddRun {
    enum class What {
        stillDriving, ///< it starts while run `other` was still being driven
        consumption   ///< `times` the usual one of the study
    };
    What what = What::stillDriving;
    int run = 0; ///< numbers
    int other = 0;
    double times = 0.0;
    double l_per_100km = 0.0, usual_l_per_100km = 0.0;
    friend bool operator==(const OddRun&, const OddRun&) = default;
};

/// Counted runs alone, in order of start. One vehicle drives a study, so no run may start before
/// the one before has ended (with a grace of 1 s: starts and durations are noted to the second); a
/// run typed twice is left to the rule same_run_twice. The usual consumption is the median of the
/// counted runs, from three on; the second of two is compared with the first.
[[nodiscard]] std::vector<OddRun> oddRuns(const Study& study);

} // namespace bothways::core
