// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/trace_order.h"

#include "storage/bytes/decimal.h"

#include <algorithm>
#include <cmath>

namespace bothways::storage {
namespace {

constexpr double kLargestTime_s = 8e9; ///< in microseconds still below 2^53
constexpr double kSmallStepBack_s = 1.0;
constexpr double kHour_s = 3600.0;
constexpr double kDay_s = 86400.0;
constexpr double kLike = 0.2; ///< intervals that differ by less are alike
constexpr int kAgreeing = 10;
constexpr double kGapIntervals = 10.0;
constexpr double kGap_s = 1.0;

bool alike(double a, double b)
{
    return std::abs(a - b) <= kLike * b;
}

} // namespace

void timesOf(const TraceBlock& block, std::vector<double>& time_s)
{
    const ScaledColumn& time = block.time;
    time_s.resize(block.rows);
    const double divisor = kPowersOfTen[static_cast<std::size_t>(time.decimals)];
    for (std::uint32_t row = 0; row < block.rows; ++row)
        time_s[row] = static_cast<double>(time.scaled[row]) / divisor;
    for (const auto& [row, value] : time.odd)
        time_s[row] = value;
    for (const std::uint32_t row : time.gaps)
        time_s[row] = std::nan("");
}

/// True when every interval of the block, and the one before it, is as usual.
bool TraceOrder::isUneventful(const std::vector<double>& time_s) const
{
    if (!m_started || m_counts.interval_s <= 0.0)
        return false;
    const double low = m_counts.interval_s * (1.0 - kLike);
    const double high = m_counts.interval_s * (1.0 + kLike);
    const double seam = time_s.front() + shift_s() - m_counts.last_s;
    bool usual = seam > low && seam < high && std::abs(time_s.back()) <= kLargestTime_s;
    for (std::size_t i = 1; i < time_s.size(); ++i) {
        const double interval = time_s[i] - time_s[i - 1];
        usual = usual & (interval > low) & (interval < high); // false for NaN
    }
    return usual;
}

void TraceOrder::keep(double shifted_s)
{
    if (!m_started)
        m_counts.first_s = shifted_s;
    m_started = true;
    m_counts.last_s = shifted_s;
    ++m_counts.rows;
    ++m_parts.back().rows;
}

void TraceOrder::noteInterval(double interval_s)
{
    const double usual = m_counts.interval_s;
    if (usual > 0.0 && interval_s > std::max(kGap_s, kGapIntervals * usual)) {
        ++m_counts.gaps;
        m_counts.longest_gap_s = std::max(m_counts.longest_gap_s, interval_s);
    }
    if (usual > 0.0 && alike(interval_s, usual)) {
        m_agreeing = 0;
        return;
    }
    if (m_agreeing > 0 && alike(interval_s, m_candidate_s)) {
        if (++m_agreeing >= kAgreeing) {
            m_counts.rate_changes += usual > 0.0;
            m_counts.interval_s = m_candidate_s;
            m_agreeing = 0;
        }
        return;
    }
    m_candidate_s = interval_s;
    m_agreeing = 1;
}

/// From this row on times are shifted so that it follows the last one at the usual interval.
void TraceOrder::changeClock(double time_s)
{
    const double interval = m_counts.interval_s > 0.0 ? m_counts.interval_s
                            : m_candidate_s > 0.0     ? m_candidate_s
                                                      : 1.0;
    const auto shift_us = std::llround((m_counts.last_s + interval - time_s) * 1e6);
    m_parts.push_back({shift_us, m_parts.back().midnights_us, 0});
    ++m_counts.clock_changes;
}

bool TraceOrder::takeBehind(const std::vector<double>& time_s, std::size_t row)
{
    const double back = m_counts.last_s - (time_s[row] + shift_s());
    if (m_clock == ClockKind::timeOfDay && back > kDay_s / 2) {
        constexpr auto day_us = static_cast<std::int64_t>(kDay_s * 1e6);
        Part& part = m_parts.back(); // the same clock goes on
        part.shift_us += day_us;
        part.midnights_us += day_us;
        m_shifts.emplace_back(row, m_parts.back().shift_us);
        return takeRow(time_s, row);
    }
    std::size_t next = row + 1;
    while (next < time_s.size() && !(std::abs(time_s[next]) <= kLargestTime_s))
        ++next;
    const bool goesOn = next == time_s.size() ||
                        time_s[next] + shift_s() > m_counts.last_s; // it was this row alone
    if (back <= kSmallStepBack_s || goesOn) {
        ++m_counts.backward_times;
        return false;
    }
    changeClock(time_s[row]);
    m_shifts.emplace_back(row, m_parts.back().shift_us);
    keep(time_s[row] + shift_s());
    return true;
}

/// @return  whether the row stays
bool TraceOrder::takeRow(const std::vector<double>& time_s, std::size_t row)
{
    const double time = time_s[row];
    if (!(std::abs(time) <= kLargestTime_s)) {
        ++m_counts.bad_times;
        return false;
    }
    if (!m_started) {
        keep(time + shift_s());
        return true;
    }
    const double interval = time + shift_s() - m_counts.last_s;
    if (interval == 0.0) {
        ++m_counts.repeated_times;
        return false;
    }
    if (interval < 0.0)
        return takeBehind(time_s, row);
    const double slack = std::max(1.0, 2.0 * m_counts.interval_s);
    const bool localClock = m_clock == ClockKind::local || m_clock == ClockKind::timeOfDay;
    const bool summerTime = localClock && std::abs(interval - kHour_s) <= slack &&
                            m_counts.interval_s > 0.0 && m_counts.interval_s < kHour_s / 10;
    if (m_clock != ClockKind::none && (summerTime || interval > kDay_s)) {
        changeClock(time);
        m_shifts.emplace_back(row, m_parts.back().shift_us);
    } else {
        noteInterval(interval);
    }
    keep(time + shift_s());
    return true;
}

void TraceOrder::inspect(const std::vector<double>& time_s)
{
    m_keep.assign(time_s.size(), true);
    for (std::size_t row = 0; row < time_s.size(); ++row)
        if (!takeRow(time_s, row)) {
            m_keep[row] = false;
            m_dropped = true;
        }
}

void TraceOrder::applyShifts(TraceBlock& block, std::vector<double>& time_s) const
{
    ScaledColumn& time = block.time;
    const bool any = std::any_of(m_shifts.begin(), m_shifts.end(),
                                 [](const auto& shift) { return shift.second != 0; });
    if (!any)
        return;
    // Shifts are microseconds, so the times become such. Rows left out may hold anything: unsigned.
    const auto down = static_cast<std::size_t>(std::clamp(time.decimals - 6, 0, 18));
    for (std::uint32_t row = 0; row < block.rows; ++row) {
        auto scaled = static_cast<std::uint64_t>(time.scaled[row] / kIntegerPowersOfTen[down]);
        for (int decimals = time.decimals; decimals < 6; ++decimals)
            scaled *= 10;
        time.scaled[row] = static_cast<std::int64_t>(scaled);
    }
    time.decimals = 6;
    auto part = m_shifts.begin();
    std::vector<double> shifts_s(block.rows);
    std::int64_t shift = 0;
    for (std::uint32_t row = 0; row < block.rows; ++row) {
        for (; part != m_shifts.end() && part->first <= row; ++part)
            shift = part->second;
        shifts_s[row] = static_cast<double>(shift) / 1e6;
        time.scaled[row] = static_cast<std::int64_t>(static_cast<std::uint64_t>(time.scaled[row]) +
                                                     static_cast<std::uint64_t>(shift));
    }
    for (auto& [row, value] : time.odd)
        value += shifts_s[row];
    timesOf(block, time_s);
}

void TraceOrder::put(TraceBlock& block, std::vector<double>& time_s)
{
    if (time_s.empty())
        return;
    m_dropped = false;
    m_shifts.assign(1, {0, m_parts.back().shift_us});
    if (isUneventful(time_s)) {
        m_counts.last_s = time_s.back() + shift_s();
        m_counts.rows += static_cast<std::int64_t>(time_s.size());
        m_parts.back().rows += static_cast<std::int64_t>(time_s.size());
        m_agreeing = 0;
    } else {
        inspect(time_s);
    }
    applyShifts(block, time_s);
    if (!m_dropped)
        return;
    std::size_t kept = 0;
    for (std::size_t row = 0; row < time_s.size(); ++row)
        if (m_keep[row])
            time_s[kept++] = time_s[row];
    time_s.resize(kept);
    keepRows(block, m_keep);
}

std::int64_t TraceOrder::mainShift_us() const
{
    const auto part =
        std::max_element(m_parts.begin(), m_parts.end(),
                         [](const Part& a, const Part& b) { return a.rows < b.rows; });
    return part->shift_us - part->midnights_us;
}

} // namespace bothways::storage
