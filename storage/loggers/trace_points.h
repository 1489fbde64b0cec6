// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/loggers/trace_open.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Positions in time, as satellite receivers give them, made into a recording with the channels
/// lat_deg, lon_deg, road_speed_kmh and distance_m.
namespace bothways::storage {

struct TrackPoint {
    std::int64_t us = 0; ///< since 1970 UTC, or since midnight where no date is known
    double lat_deg = 0.0, lon_deg = 0.0;
    std::optional<double> speed_kmh; ///< as the receiver says; none: from the positions
    bool newSegment = false;         ///< nothing was recorded between the point before and this one
};

/// Sets points in order and derives from them. Distance is along the geodesics between successive
/// points, not across a break between segments. A speed that is not given is the way from the point
/// before to the point after, over the time between (at the ends of a segment, from or to the point
/// itself).
class PointStream {
public:
    PointStream(ClockKind clock, std::int64_t base_us, TakeBlock take);
    [[nodiscard]] Outcome add(const TrackPoint& point);
    [[nodiscard]] Result<ReadTotals> finish();

private:
    struct Row {
        std::int64_t us = 0;
        double time_s = 0.0;
        TrackPoint point;
        double distance_m = 0.0;
    };
    void order();
    [[nodiscard]] Outcome emit(bool all);
    [[nodiscard]] std::optional<double> speedAt(std::size_t row) const;

    std::int64_t m_base_us;
    TakeBlock m_take;
    BlockTotals m_totals;
    std::vector<TrackPoint> m_points; ///< not yet in order
    bool m_breakPending = false;      ///< a point that began a segment was left out
    std::vector<Row> m_rows;          ///< in order; the first was emitted before where m_firstIsOld
    bool m_firstIsOld = false;
    std::int64_t m_speeds = 0, m_rowsOut = 0;
};

/// The channels of such a recording, in their places.
[[nodiscard]] const std::vector<TraceChannel>& pointChannels();

} // namespace bothways::storage
