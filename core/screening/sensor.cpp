// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/counter_fall.h"
#include "core/recording/trace_totals.h"
#include "core/screening/finding.h"
#include "core/screening/rules.h"
#include "core/statistics/robust.h"
#include "core/study/parts.h"
#include "core/study/rule.h"

#include <algorithm>
#include <cmath>

// Rules about the recording itself.
namespace bothways::core::rules {
namespace {

constexpr double kFrozen_s = 5.0;
constexpr double kStopped_s = 2.0;
constexpr double kOnTheWay_s = 0.2;

/// A lost sensor spoils the run whose consumption was taken from it.
bool gaveConsumption(const RunContext& context, std::string_view channel)
{
    const auto& consumption = context.run().consumption;
    if (!consumption || !consumption->from_trace)
        return false;
    const auto fuel = fuelFromTrace(context.channels.trace(), context.channels.runEnd_s());
    return fuel && fuel->channel == channel;
}

void lost(RunContext& context, const Channel& channel, double from_s, double to_s, double limit_s,
          LostSensor::How how)
{
    const bool spoils = gaveConsumption(context, channel.name);
    Finding& finding =
        context.found(Rule::sensorLost, spoils ? Grade::spoils : gradeOf(Rule::sensorLost),
                      to_s - from_s, limit_s, "s");
    finding.part = partedName(channel.name).part;
    finding.from_s = from_s;
    finding.to_s = to_s;
    finding.lost = {{channel.name, how}};
}

/// Median interval between samples; of a sensor that left only one in the run, that of the approach
/// and of what follows. Nothing where there is no second sample at all.
std::optional<double> pace_s(const Channel& channel)
{
    const SampleTimes& times = channel.owner->time_s;
    if (channel.size() >= 2 || std::isfinite(channel.interval_s))
        return channel.interval_s;
    if (times.size() < 2)
        return std::nullopt;
    return medianOf(times.size() - 1, [&](std::size_t i) { return times[i + 1] - times[i]; });
}

/// No sample for too long, at the run's start and before its end too.
void gaps(RunContext& context, const Channel& channel)
{
    const auto time_s = channel.time_s();
    const std::optional<double> interval_s = pace_s(channel);
    if (!interval_s)
        return;
    const double limit_s = longestGap_s(*interval_s);
    const auto check = [&](double from_s, double to_s) {
        if (to_s - from_s > limit_s + kTimeGrace_s)
            lost(context, channel, from_s, to_s, limit_s, LostSensor::How::gap);
    };
    const UnderWay* underWay = context.channels.underWay();
    if (!underWay || underWay->from_s <= 0.0)
        check(0.0, channel.at_s(0));
    for (const std::size_t i : context.channels.gapsOf(channel))
        check(channel.at_s(i), time_s[i + 1]);
    // Samples of a run under way may be a moment on their way.
    const double end_s = context.channels.end_s() - (underWay ? kOnTheWay_s : 0.0);
    check(channel.at_s(time_s.size() - 1), end_s);
}

bool hasDistinctValues(std::span<const double> values, std::size_t wanted)
{
    std::vector<double> seen;
    for (std::size_t i = 0; i < values.size() && seen.size() < wanted; ++i) {
        if (i > 0 && values[i] == values[i - 1])
            continue;
        if (std::find(seen.begin(), seen.end(), values[i]) == seen.end())
            seen.push_back(values[i]);
    }
    return seen.size() >= wanted;
}

/// Of a run under way: is all there that shows whether a speed was held?
struct Seen {
    bool before = true; ///< the first sample at hand
    bool after = true;
};

/// Does road speed move for kFrozen_s on end somewhere in from_s..to_s? Where it is 0 the vehicle
/// stands; where it says the same for `still_s` or longer it is held too well to tell; where it
/// never changes it does not move.
bool moves(const Channel& roadSpeed, double from_s, double to_s, double still_s, Seen seen)
{
    const auto time_s = roadSpeed.time_s();
    const auto values = roadSpeed.value();
    const auto at = [&](double moment_s) {
        return static_cast<std::size_t>(std::lower_bound(time_s.begin(), time_s.end(), moment_s) -
                                        time_s.begin());
    };
    const std::size_t begin = at(from_s - kTimeGrace_s), end = at(to_s + kTimeGrace_s);
    const auto longEnough = [](double seconds) { return seconds >= kFrozen_s - kTimeGrace_s; };
    double movingSince_s = from_s;
    bool changed = false; // since then
    for (std::size_t first = begin, i = begin; i < end; ++i) {
        if (i + 1 < end && values[i + 1] == values[first])
            continue;
        if (i + 1 == end && !seen.after)
            to_s = std::min(to_s, time_s[first]);
        const bool held = values[first] == 0.0 || (first == 0 && !seen.before);
        if (held || time_s[i] - time_s[first] >= still_s - kTimeGrace_s) {
            if (changed && longEnough(time_s[first] - movingSince_s))
                return true;
            movingSince_s = time_s[i];
            changed = false;
        }
        changed = changed || i + 1 < end;
        first = i + 1;
    }
    // Between its last sample and to_s the speed is taken to be as lively as before.
    return changed && longEnough(to_s - movingSince_s);
}

/// Stretches of equal values, not 0, of at least kFrozen_s. Only where the channel says the same at
/// two neighbouring moments are the samples between looked at.
std::vector<Stretch> equalStretches(const Channel& channel, std::span<const std::size_t> moments)
{
    static_assert(2.0 * kMoments_s < kFrozen_s - kTimeGrace_s); // so each one holds two moments
    const auto time_s = channel.time_s();
    const auto values = channel.value();
    std::vector<Stretch> found;
    std::size_t done = 0;
    for (std::size_t k = 0; k + 1 < moments.size(); ++k) {
        const double value = values[moments[k]];
        if (value != values[moments[k + 1]] || value == 0.0 || moments[k] < done)
            continue;
        std::size_t first = moments[k], last = moments[k];
        while (first > 0 && values[first - 1] == value)
            --first;
        while (last + 1 < values.size() && values[last + 1] == value)
            ++last;
        if (time_s[last] - time_s[first] >= kFrozen_s - kTimeGrace_s)
            found.push_back({first, last});
        done = last + 1;
    }
    return found;
}

/// Median time for which the channel usually keeps a value: a counter with coarse steps stands
/// still for a while without being frozen.
double usualDwell_s(RunContext& context, const Channel& channel)
{
    if (const ChannelSoFar* soFar = context.channels.soFar(channel))
        return soFar->dwell_s;
    const auto time_s = channel.time_s();
    const auto values = channel.value();
    std::vector<double> dwells;
    std::size_t first = 0;
    for (std::size_t i = 1; i < values.size(); ++i) {
        if (values[i] == values[first])
            continue;
        dwells.push_back(time_s[i] - time_s[first]);
        first = i;
    }
    return dwells.empty() ? 0.0 : median(dwells);
}

void frozen(RunContext& context, const Channel& channel, const Channel* roadSpeed)
{
    if (!roadSpeed || partedName(channel.name).base == "setting_set" ||
        channel.tooSlowFor(kFrozen_s))
        return;
    const std::vector<Stretch> still = equalStretches(channel, context.channels.momentsOf(channel));
    const ChannelSoFar* soFar = context.channels.soFar(channel);
    if (still.empty() || !(soFar ? soFar->lively : hasDistinctValues(channel.value(), kLively)))
        return;
    const double longest_s = std::max(kFrozen_s, 3.0 * usualDwell_s(context, channel));
    const double still_s = std::max(kFrozen_s, 3.0 * usualDwell_s(context, *roadSpeed));
    for (const Stretch& stretch : still) {
        const bool last = !soFar || stretch.last + 1 < channel.size();
        const Seen seen{!soFar || context.channels.underWay()->from_s <= 0.0, last};
        double from_s = channel.at_s(stretch.first);
        const double to_s = channel.at_s(stretch.last);
        const bool moved = moves(*roadSpeed, from_s, to_s, still_s, seen);
        if (!last)
            from_s = std::min(from_s, soFar->unchanged_since_s);
        if (moved && to_s - from_s >= longest_s - kTimeGrace_s)
            lost(context, channel, from_s, to_s, longest_s, LostSensor::How::frozen);
    }
}

/// A counter of what was used that fell says nothing of what was used, whoever noted what.
void fell(RunContext& context, const Channel& channel)
{
    const bool fuel = channel.name == "fuel_used_l";
    if ((!fuel && channel.name != "energy_used_kwh") || context.channels.underWay())
        return;
    const auto fall = fallOf(channel.value());
    if (!fall)
        return;
    Finding& finding = context.found(Rule::sensorLost, Grade::spoils, fall->fall, fall->resolution,
                                     fuel ? "L" : "kWh");
    finding.from_s = channel.at_s(fall->highest);
    finding.to_s = channel.at_s(fall->lowest);
    finding.lost = {{channel.name, LostSensor::How::fell}};
}

} // namespace

void sensorsLost(RunContext& context, std::span<const std::string_view> channels)
{
    if (!context.channels.hasTrace())
        return;
    const Channel* roadSpeed = context.channels.find("road_speed_kmh");
    for (const ChannelInfo& info : context.channels.trace().channels()) {
        auto& seen = context.leftover.channels;
        const bool asked = channels.empty()
                               ? std::find(seen.begin(), seen.end(), info.name) == seen.end()
                               : std::find(channels.begin(), channels.end(),
                                           partedName(info.name).base) != channels.end();
        const Channel* channel = asked ? context.channels.find(info.name) : nullptr;
        if (channel) {
            seen.push_back(info.name);
            gaps(context, *channel);
            frozen(context, *channel, roadSpeed);
            fell(context, *channel);
            if (channel != roadSpeed)
                context.channels.release(info.name);
        } else if (asked && channels.empty()) {
            context.leftover.empty.push_back(info.name);
        }
    }
}

namespace {

void partStopped(RunContext& context)
{
    const Channel* speed = context.channels.deviceSpeed(context.part);
    // Its own: of a device of several parts another one may be giving power.
    const Channel* output = context.channels.find(ofPart("output_w", context.part));
    if (!speed || !output || speed->tooSlowFor(kStopped_s) || output->tooSlowFor(kStopped_s))
        return;
    const double little_w = 0.05 * context.usual.of(context.run(), output->name).value_or(0.0);
    const auto time_s = speed->time_s();
    const auto rpm = speed->value();
    Held output_w(*output);
    const auto still = [&](std::size_t i) {
        if (rpm[i] != 0.0)
            return false;
        const double watts = output_w.at(time_s[i]);
        return watts > little_w && watts > 0.0;
    };
    for (const Stretch& event : joined(time_s, stretches(time_s, kStopped_s, still)))
        lost(context, *speed, speed->at_s(event.first), speed->at_s(event.last), kStopped_s,
             LostSensor::How::zero);
}

} // namespace

void deviceStopped(RunContext& context)
{
    eachPart(context, {"rotor_rpm", "generator_rpm"}, [&] { partStopped(context); });
}

void sensorLost(RunContext& context)
{
    if (!context.channels.hasTrace()) {
        context.notChecked(Rule::sensorLost, WhyNotChecked::noTrace, "");
        return;
    }
    (void)context.needed(Rule::sensorLost, "road_speed_kmh");
    sensorsLost(context, {});
    context.leftover.end_s = context.channels.end_s();
}

void traceEndsEarly(RunContext& context)
{
    if (!context.channels.hasTrace()) {
        context.notChecked(Rule::traceEndsEarly, WhyNotChecked::noTrace, "");
        return;
    }
    const std::optional<double> end_s = duration_s(context.run());
    if (!end_s) {
        context.notChecked(Rule::traceEndsEarly, WhyNotChecked::notNoted, "duration_s");
        return;
    }
    const double seconds = context.limitWithDefault("trace_ends_early.seconds");
    const double missing_s = *end_s - context.channels.last_s();
    if (!exceeds(missing_s, seconds + kTimeGrace_s))
        return;
    Finding& finding = context.found(Rule::traceEndsEarly, Grade::note, missing_s, seconds, "s");
    finding.from_s = context.channels.last_s();
    finding.to_s = *end_s;
}

} // namespace bothways::core::rules
