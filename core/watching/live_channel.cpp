// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/watching/live_channel.h"

#include "core/statistics/events.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bothways::core {
namespace {

constexpr double kApproach_s = 6.0;         ///< what rules look at before the start, and some
constexpr double kHead_s = rules::kStart_s; ///< what they look at after it
constexpr double kLargestReading = 1e100;   ///< as the rules have it

} // namespace

LiveChannel::LiveChannel(std::string name, std::string unit)
    : m_name(std::move(name)), m_unit(std::move(unit))
{
}

std::optional<double> LiveChannel::last_s() const
{
    return m_time.empty() ? std::nullopt : std::optional(m_time.back());
}

std::size_t LiveChannel::firstFrom(double time_s) const
{
    return static_cast<std::size_t>(std::lower_bound(m_time.begin(), m_time.end(), time_s) -
                                    m_time.begin());
}

void LiveChannel::put(std::span<const double> time_s, std::span<const double> value)
{
    for (std::size_t i = 0; i < std::min(time_s.size(), value.size()); ++i) {
        if (!(std::abs(value[i]) < kLargestReading) || !std::isfinite(time_s[i]) ||
            (!m_time.empty() && time_s[i] <= m_time.back()))
            continue;
        if (!m_time.empty())
            m_pace.add(time_s[i] - m_time.back());
        m_time.push_back(time_s[i]);
        m_value.push_back(value[i]);
    }
}

void LiveChannel::forgetBefore(double time_s)
{
    std::size_t gone = firstFrom(time_s);
    gone = std::min(gone > 0 ? gone - 1 : 0, m_next);
    // Seldom, so that the rest is not moved along at each look; but not so late that as much again
    // is kept of what nobody asks for.
    if (gone < 1024 || 8 * gone < m_time.size())
        return;
    keepStart();
    m_time.erase(m_time.begin(), m_time.begin() + static_cast<std::ptrdiff_t>(gone));
    m_value.erase(m_value.begin(), m_value.begin() + static_cast<std::ptrdiff_t>(gone));
    m_next -= gone;
}

void LiveChannel::keepStart()
{
    if (m_headKept)
        return;
    m_headKept = true;
    const std::size_t begin = firstFrom(m_start_s - kApproach_s);
    const std::size_t end = firstFrom(m_start_s + kHead_s);
    m_headTime.assign(m_time.begin() + static_cast<std::ptrdiff_t>(begin),
                      m_time.begin() + static_cast<std::ptrdiff_t>(end));
    m_head.assign(m_value.begin() + static_cast<std::ptrdiff_t>(begin),
                  m_value.begin() + static_cast<std::ptrdiff_t>(end));
}

void LiveChannel::beginRun(double start_s)
{
    m_start_s = start_s;
    m_next = firstFrom(start_s - kTimeGrace_s);
    m_headTime.clear();
    m_head.clear();
    m_headKept = false;
    m_intervals = {};
    m_dwells = {};
    m_distinct.clear();
    m_before_s.reset();
    m_latest.reset();
    m_unchangedSince_s = 0.0;
    m_constant = true;
}

void LiveChannel::take(double time_s, double value)
{
    if (m_before_s)
        m_intervals.add(time_s - *m_before_s);
    m_before_s = time_s;
    if (m_latest == value)
        return;
    if (m_latest) {
        m_dwells.add(time_s - m_start_s - m_unchangedSince_s);
        m_constant = false;
    }
    m_latest = value;
    m_unchangedSince_s = std::max(0.0, time_s - m_start_s);
    if (m_distinct.size() < rules::kLively &&
        std::find(m_distinct.begin(), m_distinct.end(), value) == m_distinct.end())
        m_distinct.push_back(value);
}

void LiveChannel::digest()
{
    for (; m_next < m_time.size(); ++m_next)
        take(m_time[m_next], m_value[m_next]);
}

rules::ChannelSoFar LiveChannel::soFar() const
{
    rules::ChannelSoFar known;
    if (m_intervals.count() > 0)
        known.interval_s = m_intervals.median();
    known.dwell_s = m_dwells.median();
    known.lively = m_distinct.size() >= rules::kLively;
    known.constant = m_constant;
    known.unchanged_since_s = m_unchangedSince_s;
    return known;
}

void LiveChannel::append(Samples& samples, std::vector<double>& times, std::size_t begin,
                         std::size_t end) const
{
    times.reserve(times.size() + end - begin);
    for (std::size_t i = begin; i < end; ++i)
        times.push_back(m_time[i] - m_start_s);
    samples.value.insert(samples.value.end(), m_value.begin() + static_cast<std::ptrdiff_t>(begin),
                         m_value.begin() + static_cast<std::ptrdiff_t>(end));
}

Samples LiveChannel::part(double from_s) const
{
    Samples samples;
    std::vector<double> times;
    const std::size_t from = firstFrom(m_start_s + from_s);
    std::size_t begin = from > 0 ? from - 1 : 0;
    if (m_headKept) {
        for (std::size_t i = 0; i < m_head.size(); ++i)
            if (begin < m_time.size() && m_headTime[i] < m_time[begin]) {
                times.push_back(m_headTime[i] - m_start_s);
                samples.value.push_back(m_head[i]);
            }
    } else {
        const std::size_t approach = firstFrom(m_start_s - kApproach_s);
        append(samples, times, approach,
               std::max(approach, std::min(begin, firstFrom(m_start_s + kHead_s))));
        begin = std::max(begin, approach);
    }
    append(samples, times, begin, m_time.size());
    samples.time_s = SampleTimes(std::move(times));
    return samples;
}

Samples LiveChannel::whole() const
{
    Samples samples;
    std::vector<double> times;
    append(samples, times, 0, m_time.size());
    samples.time_s = SampleTimes(std::move(times));
    return samples;
}

} // namespace bothways::core
