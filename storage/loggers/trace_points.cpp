// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/trace_points.h"

#include "core/recording/geodesic.h"
#include "storage/bytes/decimal.h"

#include <cmath>

namespace bothways::storage {
namespace {

using core::Done;

constexpr std::size_t kPointsOfABlock = 16384;
constexpr int kDegreeDecimals = 9;
constexpr int kDerivedDecimals = 3; ///< millimetres, and thousandths of a km/h

void append(ScaledColumn& column, double value)
{
    const auto row = static_cast<std::uint32_t>(column.scaled.size());
    const auto scaled = scaledFrom(value, column.decimals);
    column.scaled.push_back(scaled.value_or(0));
    if (!scaled)
        column.odd.emplace_back(row, value);
}

double rounded(double value)
{
    const double power = kPowersOfTen[kDerivedDecimals];
    return std::round(value * power) / power + 0.0; // no minus zero
}

double metresBetween(const TrackPoint& a, const TrackPoint& b)
{
    return core::geodesicBetween(a.lat_deg, a.lon_deg, b.lat_deg, b.lon_deg).distance_m;
}

} // namespace

const std::vector<TraceChannel>& pointChannels()
{
    static const std::vector<TraceChannel> channels = {
        {"lat_deg", "°"}, {"lon_deg", "°"}, {"road_speed_kmh", "km/h"}, {"distance_m", "m"}};
    return channels;
}

PointStream::PointStream(ClockKind clock, std::int64_t base_us, TakeBlock take)
    : m_base_us(base_us), m_take(std::move(take)), m_totals({clock, base_us, {}}, 1, 1)
{
}

Outcome PointStream::add(const TrackPoint& point)
{
    m_points.push_back(point);
    if (m_points.size() < kPointsOfABlock)
        return Done{};
    order();
    return emit(false);
}

/// Moves the points to m_rows, in order of time. The one channel of the block that is handed in
/// says which points stayed.
void PointStream::order()
{
    TraceBlock block;
    block.rows = static_cast<std::uint32_t>(m_points.size());
    block.time.decimals = 6;
    block.channels.resize(1);
    block.bad.assign(1, 0);
    for (std::size_t i = 0; i < m_points.size(); ++i) {
        block.time.scaled.push_back(m_points[i].us - m_base_us);
        block.channels[0].scaled.push_back(static_cast<std::int64_t>(i));
    }
    std::vector<double> time_s;
    timesOf(block, time_s);
    m_totals.put(block, time_s);
    std::size_t next = 0; // the first point that was not looked at
    for (std::uint32_t row = 0; row < block.rows; ++row) {
        const auto kept = static_cast<std::size_t>(block.channels[0].scaled[row]);
        for (; next <= kept; ++next)
            m_breakPending = m_breakPending || m_points[next].newSegment;
        Row added{block.time.scaled[row], time_s[row], m_points[kept], 0.0};
        added.point.newSegment = m_breakPending || m_rows.empty();
        m_breakPending = false;
        if (!m_rows.empty())
            added.distance_m = m_rows.back().distance_m;
        if (!added.point.newSegment)
            added.distance_m += metresBetween(m_rows.back().point, added.point);
        m_rows.push_back(added);
    }
    for (; next < m_points.size(); ++next)
        m_breakPending = m_breakPending || m_points[next].newSegment;
    m_points.clear();
}

std::optional<double> PointStream::speedAt(std::size_t row) const
{
    const Row& here = m_rows[row];
    if (here.point.speed_kmh)
        return rounded(*here.point.speed_kmh);
    const bool fromBefore = row > 0 && !here.point.newSegment;
    const bool toNext = row + 1 < m_rows.size() && !m_rows[row + 1].point.newSegment;
    if (!fromBefore && !toNext)
        return std::nullopt;
    const Row& from = fromBefore ? m_rows[row - 1] : here;
    const Row& to = toNext ? m_rows[row + 1] : here;
    return rounded(3.6 * (to.distance_m - from.distance_m) / (to.time_s - from.time_s));
}

/// Hands rows on: all, or all but the last, whose speed needs the one after.
Outcome PointStream::emit(bool all)
{
    const std::size_t first = m_firstIsOld ? 1 : 0;
    const std::size_t last = all || m_rows.empty() ? m_rows.size() : m_rows.size() - 1;
    TraceBlock block;
    block.time.decimals = 6;
    block.channels.resize(pointChannels().size());
    block.channels[0].decimals = block.channels[1].decimals = kDegreeDecimals;
    block.channels[2].decimals = block.channels[3].decimals = kDerivedDecimals;
    std::vector<double> time_s;
    for (std::size_t i = first; i < last; ++i) {
        const Row& row = m_rows[i];
        block.time.scaled.push_back(row.us);
        time_s.push_back(row.time_s);
        append(block.channels[0], row.point.lat_deg);
        append(block.channels[1], row.point.lon_deg);
        const auto speed = speedAt(i);
        append(block.channels[2], speed.value_or(0.0));
        if (!speed)
            block.channels[2].gaps.push_back(block.rows);
        m_speeds += speed.has_value();
        append(block.channels[3], rounded(row.distance_m));
        ++block.rows;
    }
    if (block.rows == 0)
        return Done{};
    m_rowsOut += block.rows;
    // What was handed on last stays as the point before the next.
    m_rows.erase(m_rows.begin(), m_rows.begin() + static_cast<std::ptrdiff_t>(last - 1));
    m_firstIsOld = true;
    return m_take(block, time_s);
}

Result<ReadTotals> PointStream::finish()
{
    order();
    if (const Outcome out = emit(true); !out)
        return out.error();
    ReadTotals totals = m_totals.take();
    totals.samples = {m_rowsOut, m_rowsOut, m_speeds, m_rowsOut};
    totals.bad_cells.assign(totals.samples.size(), 0);
    return totals;
}

} // namespace bothways::storage
