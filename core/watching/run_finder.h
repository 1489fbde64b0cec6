// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/cruise_keeper.h"
#include "core/recording/gate_keeper.h"
#include "core/recording/runs_by.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace bothways::core {

/// Where a run begins or ends, found a moment after.
struct FoundBound {
    enum class What {
        begins,
        ends,
        wasNone ///< what began last is no run after all
    };
    What what = What::begins;
    double at_s = 0.0;              ///< in the recording's time
    std::optional<bool> outward;    ///< of what begins between gates
    bool isMarked = false;          ///< by a mark, which is in the recording
    std::string direction;          ///< that the mark names
    std::vector<std::string> words; ///< the mark's others, but for a number
};

/// Finds the runs of a recording while it is made, by the ways that cut one afterwards: the bounds
/// that it tells are those of cutByMarks() and cutByPosition(). By speed a run ends as in
/// cutBySpeed(), and begins later: once the vehicle has cruised, so that not_cruising does not
/// spoil it at once. No clock and no thread; times ascend.
class RunFinder {
public:
    /// So long, and so near to the target, was it driven when a run begins by speed; one on which
    /// it is not held for CruiseOptions::shortest_s was none. Those of the rule not_cruising.
    static constexpr double kCruised_s = 5.0, kCruised_pct = 3.0;

    /// @param target_kmh  for RunsBy::Way::speed
    /// @param directions  of the study, outward first
    RunFinder(const RunsBy& by, std::optional<double> target_kmh,
              std::vector<std::string> directions);

    /// The study has others now. A run under way keeps its target.
    void setStudy(std::optional<double> target_kmh, std::vector<std::string> directions);

    void mark(double at_s, std::string_view words);
    void speed(double time_s, double kmh);
    /// Those of one moment are a position.
    void latitude(double time_s, double deg);
    void longitude(double time_s, double deg);
    /// Everything up to then was given.
    void passTime(double now_s);
    /// Nothing comes any more, and nothing is found any more: a run under way ends with the
    /// recording, but for one between gates.
    void finish(double last_s);

    /// What was found since the last call, in its order.
    [[nodiscard]] std::vector<FoundBound> take();
    /// The run that began may be over already, since a moment ago: nothing should be said of it.
    [[nodiscard]] bool isInDoubt() const;

private:
    struct Half {
        double time_s = 0.0, deg = 0.0;
    };

    void begins(double at_s, std::optional<bool> outward);
    void ends(double at_s);
    void wasNone();
    void takePosition();
    void endCruise(const std::optional<CruiseKeeper::Held>& ended);

    RunsBy m_by;
    std::vector<std::string> m_directions;
    CruiseOptions m_cruise;
    std::optional<GateKeeper> m_gates;
    std::optional<CruiseKeeper> m_held;
    std::optional<Half> m_lat, m_lon;   ///< the latest
    std::optional<double> m_begun_s;    ///< of the run under way
    std::optional<double> m_cruises_s;  ///< since when the target is kept
    std::optional<double> m_heldFrom_s; ///< of the stretch on which the run began
    std::vector<FoundBound> m_found;
    bool m_isFinished = false;
};

} // namespace bothways::core
