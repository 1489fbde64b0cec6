// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/cutting.h"

#include <limits>
#include <optional>

namespace bothways::core {

struct Position {
    double time_s = 0.0;
    double lat_deg = 0.0, lon_deg = 0.0;
};

/// Tells from one position after the other when the two gates of a stretch are passed: for a
/// recording that is there as for one that is being made.
class GateKeeper {
public:
    /// Between positions further apart it is not known where the vehicle was.
    static constexpr double kBlind_s = 10.0;

    explicit GateKeeper(const Geofence& fence);
    /// The gates are two places; without, nothing is ever passed.
    [[nodiscard]] bool hasLength() const { return m_length_m > 0.0; }

    /// The next position. @return  a run that it ends: from_s, to_s, outward
    std::optional<CutProposal> pass(const Position& position);

    /// The run under way, if any: the gate that was passed last, towards the other.
    struct Open {
        double since_s = 0.0;
        bool outward = false;
        friend bool operator==(const Open&, const Open&) = default;
    };
    [[nodiscard]] std::optional<Open> open() const;

private:
    static constexpr double kNever = -std::numeric_limits<double>::infinity();
    /// Where a vehicle is, seen from the start of the stretch: along it and beside it.
    struct OnStretch {
        double time_s = 0.0;
        double along_m = 0.0, beside_m = 0.0;
    };

    void beginAt(const OnStretch& first);
    [[nodiscard]] std::optional<double> passed(const OnStretch& a, const OnStretch& b,
                                               double gate_m) const;
    std::optional<CutProposal> passGates(const OnStretch& a, const OnStretch& b);

    Geofence m_fence;
    double m_length_m = 0.0, m_east = 0.0, m_north = 0.0;
    bool m_started = false;
    OnStretch m_before;
    double m_outwardSince_s = kNever, m_returnSince_s = kNever;
};

} // namespace bothways::core
