// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/gate_keeper.h"

#include "core/recording/geodesic.h"

#include <cmath>

namespace bothways::core {
namespace {

constexpr double kOnGate_m = 1.0; ///< finer than receivers tell a place

} // namespace

GateKeeper::GateKeeper(const Geofence& fence) : m_fence(fence)
{
    const LocalPosition end = localPosition(fence.start_lat_deg, fence.start_lon_deg,
                                            fence.end_lat_deg, fence.end_lon_deg);
    m_length_m = std::hypot(end.east_m, end.north_m);
    if (m_length_m > 0.0) {
        m_east = end.east_m / m_length_m;
        m_north = end.north_m / m_length_m;
    }
}

std::optional<CutProposal> GateKeeper::pass(const Position& position)
{
    const LocalPosition p = localPosition(m_fence.start_lat_deg, m_fence.start_lon_deg,
                                          position.lat_deg, position.lon_deg);
    const OnStretch now{position.time_s, p.east_m * m_east + p.north_m * m_north,
                        p.north_m * m_east - p.east_m * m_north};
    std::optional<CutProposal> ended;
    if (!m_started)
        beginAt(now);
    else if (now.time_s - m_before.time_s > kBlind_s)
        m_outwardSince_s = m_returnSince_s = kNever;
    else
        ended = passGates(m_before, now);
    m_before = now;
    m_started = true;
    return ended;
}

std::optional<GateKeeper::Open> GateKeeper::open() const
{
    if (m_outwardSince_s == kNever && m_returnSince_s == kNever)
        return std::nullopt;
    const bool outward = m_outwardSince_s > m_returnSince_s;
    return Open{outward ? m_outwardSince_s : m_returnSince_s, outward};
}

/// A recording that begins on a gate (one was taken from its first part) passes it there.
void GateKeeper::beginAt(const OnStretch& first)
{
    if (std::abs(first.beside_m) > m_fence.radius_m)
        return;
    if (std::abs(first.along_m) <= kOnGate_m)
        m_outwardSince_s = first.time_s;
    else if (std::abs(first.along_m - m_length_m) <= kOnGate_m)
        m_returnSince_s = first.time_s;
}

/// When the line across the road at `gate_m` was passed; nothing where it was not, or too far
/// beside the road's end.
std::optional<double> GateKeeper::passed(const OnStretch& a, const OnStretch& b,
                                         double gate_m) const
{
    if ((a.along_m < gate_m) == (b.along_m < gate_m))
        return std::nullopt;
    const double share = (gate_m - a.along_m) / (b.along_m - a.along_m);
    const double beside_m = a.beside_m + share * (b.beside_m - a.beside_m);
    if (std::abs(beside_m) > m_fence.radius_m)
        return std::nullopt;
    return a.time_s + share * (b.time_s - a.time_s);
}

std::optional<CutProposal> GateKeeper::passGates(const OnStretch& a, const OnStretch& b)
{
    std::optional<CutProposal> ended;
    const bool ahead = b.along_m > a.along_m;
    const auto atStart = passed(a, b, 0.0), atEnd = passed(a, b, m_length_m);
    // Who passes a gate towards the other begins anew, wherever an earlier run was left.
    if (ahead && atStart) {
        m_outwardSince_s = *atStart;
        m_returnSince_s = kNever;
    }
    if (!ahead && atEnd) {
        m_returnSince_s = *atEnd;
        m_outwardSince_s = kNever;
    }
    if (ahead && atEnd) {
        if (m_outwardSince_s != kNever)
            ended = CutProposal{m_outwardSince_s, *atEnd, true, {}, {}, {}};
        m_outwardSince_s = m_returnSince_s = kNever;
    }
    if (!ahead && atStart) {
        if (m_returnSince_s != kNever)
            ended = CutProposal{m_returnSince_s, *atStart, false, {}, {}, {}};
        m_outwardSince_s = m_returnSince_s = kNever;
    }
    return ended;
}

} // namespace bothways::core
