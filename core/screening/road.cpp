// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/over_time.h"
#include "core/recording/trace_totals.h"
#include "core/screening/finding.h"
#include "core/screening/rules.h"
#include "core/study/rule.h"

#include <algorithm>
#include <cmath>

// Rules about the vehicle on the road: its speed against the target, and the stretch.
namespace bothways::core::rules {
namespace {

constexpr std::string_view kRoadSpeed = "road_speed_kmh";

/// Road speed with the target that it is held against; channel null where the rule cannot be
/// checked, which is then noted.
struct Driven {
    const Channel* channel = nullptr;
    double target_kmh = 0.0;
    [[nodiscard]] double off_pct(double speed_kmh) const
    {
        return 100.0 * (speed_kmh - target_kmh) / target_kmh;
    }
};

Driven drivenAgainstTarget(RunContext& context, Rule rule)
{
    const Channel* channel = context.needed(rule, kRoadSpeed);
    if (!channel)
        return {};
    const auto target_kmh = context.neededLimit(rule, "road_speed.target_kmh");
    return target_kmh ? Driven{channel, *target_kmh} : Driven{};
}

/// Off the target by more than `pct` for at least `seconds`, in any samples of the channel.
std::vector<Stretch> offTarget(const Driven& driven, std::span<const double> time_s,
                               std::span<const double> speed_kmh, double pct, double seconds)
{
    const double least_kmh = driven.target_kmh * (1.0 - pct / 100.0);
    const double most_kmh = driven.target_kmh * (1.0 + pct / 100.0);
    return joined(time_s, stretches(time_s, seconds, [&](std::size_t i) {
                      const bool inside = speed_kmh[i] >= least_kmh && speed_kmh[i] <= most_kmh;
                      return !inside && exceeds(std::abs(driven.off_pct(speed_kmh[i])), pct);
                  }));
}

/// Speed at 0 s: between the samples around it, or the run's first.
double speedAtStart(const Channel& channel)
{
    const Samples& all = *channel.owner;
    const std::size_t next = channel.begin;
    if (next == 0 || all.time_s[next] <= kTimeGrace_s)
        return all.value[next];
    const double before_s = all.time_s[next - 1];
    const double share = -before_s / (all.time_s[next] - before_s);
    return all.value[next - 1] + share * (all.value[next] - all.value[next - 1]);
}

bool hasApproach(const Channel& channel, double seconds)
{
    return channel.begin > 0 && channel.owner->time_s.front() <= -seconds + kTimeGrace_s;
}

/// Samples of the 5 s before counting began; those of the start where the recording has no
/// approach of at least `seconds`.
std::pair<std::size_t, std::size_t> samplesBeforeCounting(const Channel& channel, double seconds)
{
    const SampleTimes& times = channel.owner->time_s;
    const auto index = [&](double time_s) {
        return static_cast<std::size_t>(std::lower_bound(times.begin(), times.end(), time_s) -
                                        times.begin());
    };
    if (hasApproach(channel, seconds))
        return {index(-kStart_s - kTimeGrace_s), index(kTimeGrace_s)};
    return {channel.begin, std::min(channel.end, index(kStart_s - kTimeGrace_s))};
}

} // namespace

void roadSpeed(RunContext& context)
{
    constexpr double kSeconds = 3.0;
    const Driven driven = drivenAgainstTarget(context, Rule::roadSpeed);
    if (!driven.channel)
        return;
    const Channel& channel = *driven.channel;
    const auto speed = channel.value();
    const double mean_pct = context.limitWithDefault("road_speed.mean_pct");
    // The mean of a run is known at its end.
    const double mean_off_pct =
        context.channels.underWay() ? 0.0 : driven.off_pct(meanOverTime(channel));
    if (exceeds(std::abs(mean_off_pct), mean_pct)) {
        // The whole run is one event; what was further off inside it is part of it.
        Finding& finding =
            context.found(Rule::roadSpeed, Grade::doubtful, mean_off_pct, mean_pct, "%");
        finding.from_s = 0.0;
        finding.to_s = context.channels.end_s();
        finding.of_mean = true;
        return;
    }
    const double pct = context.limitWithDefault("road_speed.pct");
    if (!context.fastEnough(Rule::roadSpeed, channel, kSeconds))
        return;
    for (const Stretch& event : offTarget(driven, channel.time_s(), speed, pct, kSeconds)) {
        const auto off_pct = [&](std::size_t i) { return driven.off_pct(speed[i]); };
        context.found(Rule::roadSpeed, channel, event, furthestFromZero(event, off_pct), pct, "%");
    }
}

void interrupted(RunContext& context)
{
    constexpr double kSeconds = 2.0;
    const Driven driven = drivenAgainstTarget(context, Rule::interrupted);
    if (!driven.channel || !context.fastEnough(Rule::interrupted, *driven.channel, kSeconds))
        return;
    const double slow_kmh = driven.target_kmh * context.limitWithDefault("interrupted.pct") / 100.0;
    const auto time_s = driven.channel->time_s();
    const auto speed = driven.channel->value();
    const auto slow = [&](std::size_t i) { return exceeds(slow_kmh, speed[i]); };
    for (const Stretch& event : joined(time_s, stretches(time_s, kSeconds, slow))) {
        const auto first = speed.begin() + static_cast<std::ptrdiff_t>(event.first);
        const auto last = speed.begin() + static_cast<std::ptrdiff_t>(event.last) + 1;
        context.found(Rule::interrupted, *driven.channel, event, *std::min_element(first, last),
                      slow_kmh, "km/h");
    }
}

void notCruising(RunContext& context)
{
    constexpr double kSeconds = 1.0;
    const Driven driven = drivenAgainstTarget(context, Rule::notCruising);
    if (!driven.channel || !context.fastEnough(Rule::notCruising, *driven.channel, kSeconds))
        return;
    const Channel& channel = *driven.channel;
    const double pct = context.limitWithDefault("not_cruising.pct");
    if (const UnderWay* underWay = context.channels.underWay(); underWay && underWay->from_s > 0.0)
        return; // it was asked when the run began
    if (!hasApproach(channel, kSeconds) && context.startIsUnderWay())
        return;
    const auto [first, last] = samplesBeforeCounting(channel, kSeconds);
    const auto time_s = std::span(channel.owner->time_s.data(), last).subspan(first);
    const auto speed_kmh = std::span(channel.owner->value).subspan(first, last - first);
    const std::vector<Stretch> off = offTarget(driven, time_s, speed_kmh, pct, kSeconds);
    if (off.empty())
        return;
    const auto speed = channel.value();
    // The finding reaches from 0 s over what was off, also where that began a little later.
    const std::size_t lastOff = first + off.front().last;
    std::size_t until = lastOff > channel.begin ? lastOff - channel.begin : 0;
    while (until + 1 < speed.size() && exceeds(std::abs(driven.off_pct(speed[until])), pct))
        ++until;
    Finding& finding = context.found(Rule::notCruising, Grade::spoils,
                                     driven.off_pct(speedAtStart(channel)), pct, "%");
    finding.from_s = 0.0;
    finding.to_s = channel.at_s(until);
}

void stretch(RunContext& context)
{
    const auto stretch_km = context.limit("stretch.km");
    if (!stretch_km || context.run().distance_km || !context.channels.hasTrace()) {
        stretchFromSheet(context);
        return;
    }
    const double end_s = context.channels.runEnd_s();
    const auto driven_km = distanceFromTrace_km(context.channels.trace(), end_s);
    if (!driven_km) {
        context.notChecked(Rule::stretch, WhyNotChecked::noChannel, "distance_m");
        return;
    }
    const double pct = context.limitWithDefault("stretch.pct");
    const double off_pct = 100.0 * (*driven_km - *stretch_km) / *stretch_km;
    if (!exceeds(std::abs(off_pct), pct))
        return;
    Finding& finding = context.found(Rule::stretch, Grade::doubtful, off_pct, pct, "%");
    finding.from_s = 0.0;
    finding.to_s = context.channels.end_s();
}

} // namespace bothways::core::rules
