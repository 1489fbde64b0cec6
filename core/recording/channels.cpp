// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/channels.h"

#include "core/recording/sum_of_parts.h"
#include "core/statistics/robust.h"
#include "core/study/parts.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace bothways::core::rules {
namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

/// No sensor says more; beyond, sums and differences could overflow.
constexpr double kLargest = 1e100;

bool allReadings(const std::vector<double>& values)
{
    // x - x is 0 for finite numbers alone, and x is not finite from kLargest on. Eight sums at
    // once, so that none waits for another.
    constexpr double kToOverflow = 1.7e308 / kLargest;
    constexpr std::size_t kLanes = 8;
    std::array<double, kLanes> sums{};
    std::size_t i = 0;
    for (; i + kLanes <= values.size(); i += kLanes)
        for (std::size_t lane = 0; lane < kLanes; ++lane) {
            const double x = values[i + lane] * kToOverflow;
            sums[lane] += x - x;
        }
    for (; i < values.size(); ++i)
        sums[0] += values[i] * kToOverflow - values[i] * kToOverflow;
    return std::all_of(sums.begin(), sums.end(), [](double sum) { return sum == 0.0; });
}

std::shared_ptr<const Samples> readingsOf(const Samples& samples)
{
    Samples kept;
    std::vector<double> times;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        if (!(std::abs(samples.value[i]) < kLargest))
            continue;
        times.push_back(samples.time_s[i]);
        kept.value.push_back(samples.value[i]);
    }
    kept.time_s = SampleTimes(std::move(times));
    return std::make_shared<const Samples>(std::move(kept));
}

} // namespace

double longestGap_s(double interval_s)
{
    return std::max(1.0, 3.0 * interval_s);
}

double Channel::at_s(std::size_t i) const
{
    return std::max(0.0, owner->time_s[begin + i]);
}

std::span<const double> Channel::between(double from_s, double to_s) const
{
    const SampleTimes& times = owner->time_s;
    const auto first = std::lower_bound(times.begin(), times.end(), from_s - kTimeGrace_s);
    const auto last = std::lower_bound(first, times.end(), to_s - kTimeGrace_s);
    return std::span(owner->value)
        .subspan(static_cast<std::size_t>(first - times.begin()),
                 static_cast<std::size_t>(last - first));
}

std::optional<double> medianAtStart(const Channel& channel)
{
    const auto start = channel.between(0.0, kStart_s);
    return start.empty() ? std::nullopt : std::optional(median(start));
}

Held::Held(const Channel& channel, Age age)
    : m_time(channel.owner->time_s.data()),
      m_value(channel.owner->value.data()),
      m_count(channel.end),
      // at() adds the grace to the time already; a sample of exactly that age still counts.
      m_oldest_s(age == Age::limited ? longestGap_s(channel.interval_s) + 2.0 * kTimeGrace_s
                                     : kInfinite)
{
}

RunChannels::RunChannels(const RunTrace* trace, std::optional<double> duration_s,
                         const UnderWay* underWay)
    : m_trace(trace), m_duration_s(duration_s), m_underWay(underWay)
{
    if (m_trace && m_trace->last_s() > 0.0)
        m_last_s = m_trace->last_s();
}

double RunChannels::runEnd_s() const
{
    return m_duration_s.value_or(m_last_s);
}

double RunChannels::end_s() const
{
    return std::min(runEnd_s(), m_last_s);
}

const Channel* RunChannels::find(std::string_view name)
{
    if (!m_trace)
        return nullptr;
    auto known = m_channels.find(name);
    if (known == m_channels.end()) {
        std::shared_ptr<const Samples> samples = read(name);
        std::unique_ptr<Channel> channel;
        if (samples && samples->size() > 0)
            channel = std::make_unique<Channel>(cut(std::string(name), std::move(samples)));
        if (channel && channel->size() == 0)
            channel.reset();
        known = m_channels.emplace(std::string(name), std::move(channel)).first;
    }
    return known->second.get();
}

std::shared_ptr<const Samples> RunChannels::read(std::string_view name)
{
    std::shared_ptr<const Samples> samples = m_trace->samples(name);
    return samples || name != "output_w" ? samples : sumOfParts(*m_trace, name);
}

const ChannelSoFar* RunChannels::soFar(const Channel& channel) const
{
    if (!m_underWay)
        return nullptr;
    const auto known = m_underWay->so_far.find(channel.name);
    return known == m_underWay->so_far.end() ? nullptr : &known->second;
}

std::vector<std::string> RunChannels::partsOf(std::initializer_list<std::string_view> bases) const
{
    std::vector<std::string> parts;
    if (!m_trace)
        return parts;
    for (const ChannelInfo& info : m_trace->channels()) {
        const PartedName name = partedName(info.name);
        if (!name.part.empty() && std::find(bases.begin(), bases.end(), name.base) != bases.end() &&
            std::find(parts.begin(), parts.end(), name.part) == parts.end())
            parts.emplace_back(name.part);
    }
    return parts;
}

bool RunChannels::names(std::string_view channel) const
{
    return m_trace && std::any_of(m_trace->channels().begin(), m_trace->channels().end(),
                                  [&](const ChannelInfo& info) { return info.name == channel; });
}

const Channel* RunChannels::deviceSpeed(std::string_view part)
{
    if (const Channel* rotor = find(ofPart("rotor_rpm", part)))
        return rotor;
    if (!part.empty() && find("rotor_rpm"))
        return nullptr;
    for (const std::string& other : partsOf({"rotor_rpm"}))
        if (find(ofPart("rotor_rpm", other)))
            return nullptr;
    return find(ofPart("generator_rpm", part));
}

void RunChannels::release(std::string_view name)
{
    if (const auto known = m_channels.find(name); known != m_channels.end())
        m_channels.erase(known);
}

Channel RunChannels::cut(std::string name, std::shared_ptr<const Samples> samples)
{
    Channel channel;
    channel.name = std::move(name);
    channel.owner = allReadings(samples->value) ? std::move(samples) : readingsOf(*samples);
    const SampleTimes& times = channel.owner->time_s;
    const auto first = std::lower_bound(times.begin(), times.end(), -kTimeGrace_s);
    const auto last = m_duration_s
                          ? std::upper_bound(first, times.end(), *m_duration_s + kTimeGrace_s)
                          : times.end();
    channel.begin = static_cast<std::size_t>(first - times.begin());
    channel.end = static_cast<std::size_t>(last - times.begin());
    if (m_underWay && m_underWay->from_s > 0.0) {
        // From the sample before, so that a silence which began earlier is seen.
        const auto part = std::upper_bound(first, last, m_underWay->from_s);
        channel.begin = static_cast<std::size_t>((part > first ? part - 1 : part) - times.begin());
    }
    channel.interval_s = paceOf(channel).interval_s;
    return channel;
}

const RunChannels::Pace& RunChannels::paceOf(const Channel& channel)
{
    const SampleTimes& times = channel.owner->time_s;
    for (const Pace& known : m_paces)
        if (known.times.data() == times.data() && known.begin == channel.begin &&
            known.end == channel.end)
            return known;
    const std::span<const double> inside = channel.time_s();
    Pace pace{times, channel.begin, channel.end, kInfinite, {}, {}};
    if (inside.size() >= 2)
        pace.interval_s =
            medianOf(inside.size() - 1, [&](std::size_t i) { return inside[i + 1] - inside[i]; });
    if (const ChannelSoFar* known = soFar(channel))
        pace.interval_s = known->interval_s;
    const double longest_s = longestGap_s(pace.interval_s) + kTimeGrace_s;
    double moment_s = inside.empty() ? 0.0 : inside.front();
    for (std::size_t i = 0; i < inside.size(); ++i) {
        const double next_s = i + 1 < inside.size() ? inside[i + 1] : kInfinite;
        if (next_s - inside[i] > longest_s && next_s < kInfinite)
            pace.gaps.push_back(i);
        // Two moments at one sample say all that more would: a gap of years costs no more.
        for (int here = 0; moment_s < next_s && moment_s - kMoments_s < inside.back(); ++here) {
            if (here == 2) {
                moment_s = next_s;
                break;
            }
            pace.moments.push_back(i);
            moment_s += kMoments_s;
        }
    }
    return m_paces.emplace_back(std::move(pace));
}

const std::vector<std::size_t>& RunChannels::gapsOf(const Channel& channel)
{
    return paceOf(channel).gaps;
}

const std::vector<std::size_t>& RunChannels::momentsOf(const Channel& channel)
{
    return paceOf(channel).moments;
}

} // namespace bothways::core::rules
