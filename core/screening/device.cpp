// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/over_time.h"
#include "core/screening/rules.h"
#include "core/statistics/change_point.h"
#include "core/statistics/robust.h"
#include "core/study/parts.h"

#include <algorithm>
#include <cmath>

// Rules about the device: its speed, its drive, its output, its vibration.
namespace bothways::core::rules {
namespace {

double largest(std::span<const double> values, const Stretch& event)
{
    return *std::max_element(values.begin() + static_cast<std::ptrdiff_t>(event.first),
                             values.begin() + static_cast<std::ptrdiff_t>(event.last) + 1);
}

/// Events of value > limit for at least `seconds`. Most runs stay below: one look for the largest
/// value is all that they cost.
std::vector<Stretch> eventsAbove(const Channel& channel, double limit, double seconds)
{
    const auto values = channel.value();
    double highest = values.front();
    for (const double value : values)
        highest = value > highest ? value : highest;
    if (!(highest > limit))
        return {};
    const auto time_s = channel.time_s();
    return joined(time_s,
                  stretches(time_s, seconds, [&](std::size_t i) { return values[i] > limit; }));
}

/// The device's speed; where no channel has it, `rule` is noted as not checked.
const Channel* neededSpeed(RunContext& context, Rule rule)
{
    const Channel* speed = context.channels.deviceSpeed(context.part);
    return speed ? speed : context.needed(rule, "rotor_rpm");
}

/// Median of the second before; nothing where it was not recorded.
std::optional<double> outputBefore_w(const Channel* output, double moment_s)
{
    const auto before =
        output ? output->between(moment_s - 1.0, moment_s) : std::span<const double>();
    return before.empty() ? std::nullopt : std::optional(median(before));
}

/// What of the device's speed is above `share` of its limit.
void overspeedOfPart(RunContext& context, double share)
{
    const Channel* speed = context.channels.deviceSpeed(context.part);
    if (!speed)
        return;
    const auto limit_rpm = context.neededLimit(Rule::overspeed, "overspeed.rpm");
    const double seconds = context.limitWithDefault("overspeed.seconds");
    if (!limit_rpm || !context.fastEnough(Rule::overspeed, *speed, seconds))
        return;
    const Channel* output = context.find("output_w");
    const Channel* total = context.part.empty() ? nullptr : context.channels.find("output_w");
    for (const Stretch& event : eventsAbove(*speed, share * *limit_rpm, seconds)) {
        Finding& finding = context.found(Rule::overspeed, *speed, event,
                                         largest(speed->value(), event), *limit_rpm, "rpm");
        finding.length_s = *finding.to_s - *finding.from_s;
        finding.output_w = outputBefore_w(output, *finding.from_s);
        auto& least_w = context.leftover.total_before_w;
        if (const auto total_w = outputBefore_w(total, *finding.from_s))
            least_w = std::min(least_w.value_or(*total_w), *total_w);
    }
}

struct SecondMeans {
    std::vector<double> second, mean;
};

/// Means over [k, k + 1) s of the run, each sample with the time that it stands for; seconds
/// without a sample are left out.
SecondMeans secondMeans(const Channel& channel)
{
    const auto time_s = channel.time_s();
    const bool even = isEven(channel);
    const std::vector<double> weights =
        even ? std::vector<double>() : weightsOverTime(time_s, longestGap_s(channel.interval_s));
    const auto values = channel.value();
    SecondMeans means;
    for (std::size_t i = 0; i < values.size();) {
        const double second = std::floor(time_s[i] + kTimeGrace_s);
        const double until = second + 1.0 - kTimeGrace_s;
        const std::size_t first = i;
        double sum = 0.0, weighted = 0.0, weight = 0.0;
        for (; i < values.size() && time_s[i] < until; ++i) {
            sum += values[i];
            weighted += even ? 0.0 : weights[i] * values[i];
            weight += even ? 0.0 : weights[i];
        }
        means.second.push_back(second);
        means.mean.push_back(weight > 0.0 ? weighted / weight
                                          : sum / static_cast<double>(i - first));
    }
    return means;
}

} // namespace

void overspeed(RunContext& context)
{
    bool recorded = false;
    eachPart(context, {"rotor_rpm", "generator_rpm"}, [&] {
        recorded = recorded || context.channels.deviceSpeed(context.part);
        overspeedOfPart(context, 1.0);
    });
    if (!recorded)
        overspeedFromSheet(context);
}

void nearOverspeed(RunContext& context, double share)
{
    eachPart(context, {"rotor_rpm", "generator_rpm"}, [&] { overspeedOfPart(context, share); });
}

namespace {

void loadLostOfPart(RunContext& context)
{
    const Channel* speed = neededSpeed(context, Rule::loadLost);
    const Channel* output = speed ? context.needed(Rule::loadLost, "output_w") : nullptr;
    if (!output)
        return;
    const double seconds = context.limitWithDefault("load_lost.seconds");
    if (!context.fastEnough(Rule::loadLost, *speed, seconds) ||
        !context.fastEnough(Rule::loadLost, *output, seconds))
        return;
    const double fast_rpm = 0.5 * context.usual.of(context.run(), speed->name).value_or(0.0);
    const double little_w = 0.05 * context.usual.of(context.run(), output->name).value_or(0.0);
    if (fast_rpm <= 0.0 || little_w <= 0.0)
        return; // a parked device carries no load that it could lose
    const auto rpm = speed->value();
    const auto time_s = speed->time_s();
    Held output_w(*output);
    const auto lost = [&](std::size_t i) {
        const double watts = output_w.at(time_s[i]);
        return rpm[i] > fast_rpm && watts < little_w;
    };
    for (const Stretch& event : joined(time_s, stretches(time_s, seconds, lost)))
        context.found(Rule::loadLost, *speed, event, largest(rpm, event), fast_rpm, "rpm");
}

void driveSlipOfPart(RunContext& context)
{
    const Channel* rotor = context.needed(Rule::driveSlip, "rotor_rpm");
    const Channel* generator = rotor ? context.needed(Rule::driveSlip, "generator_rpm") : nullptr;
    constexpr double kSeconds = 1.0;
    if (!generator || !context.fastEnough(Rule::driveSlip, *rotor, kSeconds) ||
        !context.fastEnough(Rule::driveSlip, *generator, kSeconds))
        return;
    const std::optional<double> usual =
        context.usual.of(context.run(), ofPart(UsualValues::kRatio, context.part));
    if (!usual)
        return; // never turned together
    const double pct = context.limitWithDefault("drive_slip.pct");
    const auto time_s = generator->time_s();
    const auto rpm = generator->value();
    const auto departure_pct = [&, held = Held(*rotor)](std::size_t i) mutable {
        const double turning = held.at(time_s[i]);
        const bool both = rpm[i] > 0.0 && turning > 0.0;
        return both ? 100.0 * (rpm[i] / turning / *usual - 1.0) : 0.0;
    };
    const auto slips = [&, departure = departure_pct](std::size_t i) mutable {
        return reaches(std::abs(departure(i)), pct);
    };
    for (const Stretch& event : joined(time_s, stretches(time_s, kSeconds, slips)))
        context.found(Rule::driveSlip, *generator, event, furthestFromZero(event, departure_pct),
                      pct, "%");
}

void outputDropOfPart(RunContext& context)
{
    constexpr double kLevel = 0.01;
    const Channel* output = context.needed(Rule::outputDrop, "output_w");
    if (!output || !context.fastEnough(Rule::outputDrop, *output, 1.0))
        return;
    const SecondMeans means = secondMeans(*output);
    const std::span<const double> mean = means.mean;
    context.leftover.highest_output_w[context.part] = *std::max_element(mean.begin(), mean.end());
    const std::optional<ChangePoint> change = pettittChangePoint(mean);
    if (!change || change->p >= kLevel)
        return;
    const double before = median(mean.first(change->after));
    const double after = median(mean.subspan(change->after));
    const double pct = context.limitWithDefault("output_drop.pct");
    if (before <= 0.0 || !reaches(100.0 * (before - after) / before, pct))
        return;
    const auto time_s = output->time_s();
    const double changed_s = means.second[change->after] - kTimeGrace_s;
    const auto first = std::lower_bound(time_s.begin(), time_s.end(), changed_s);
    context.found(Rule::outputDrop, *output,
                  {static_cast<std::size_t>(first - time_s.begin()), time_s.size() - 1},
                  100.0 * (after - before) / before, pct, "%");
}

void vibrationOfPart(RunContext& context)
{
    constexpr double kSeconds = 1.0;
    const Channel* shaking = context.needed(Rule::vibration, "vibration_ms2");
    const auto limit_ms2 =
        shaking ? context.neededLimit(Rule::vibration, "vibration.ms2") : std::nullopt;
    if (!limit_ms2 || !context.fastEnough(Rule::vibration, *shaking, kSeconds))
        return;
    for (const Stretch& event : eventsAbove(*shaking, *limit_ms2, kSeconds))
        context.found(Rule::vibration, *shaking, event, largest(shaking->value(), event),
                      *limit_ms2, "m/s²");
}

/// The highest total, where it is only the sum of what the parts gave.
void highestSum(RunContext& context)
{
    const Channel* total = context.channels.find("output_w");
    if (!total || context.channels.names("output_w") || total->tooSlowFor(1.0))
        return;
    const SecondMeans means = secondMeans(*total);
    context.leftover.highest_output_w[""] = *std::max_element(means.mean.begin(), means.mean.end());
}

/// A part whose speed is not the device's (a generator behind a rotor) is not asked about.
bool speedCounts(RunContext& context)
{
    return context.channels.partsOf({"rotor_rpm", "generator_rpm"}).empty() ||
           context.channels.deviceSpeed(context.part);
}

} // namespace

void loadLost(RunContext& context)
{
    eachPart(context, {"rotor_rpm", "generator_rpm"}, [&] {
        if (speedCounts(context))
            loadLostOfPart(context);
    });
}

void driveSlip(RunContext& context)
{
    eachPart(context, {"rotor_rpm", "generator_rpm"}, [&] { driveSlipOfPart(context); });
}

void outputDrop(RunContext& context)
{
    eachPart(context, {"output_w"}, [&] { outputDropOfPart(context); });
    highestSum(context);
}

void vibration(RunContext& context)
{
    eachPart(context, {"vibration_ms2"}, [&] { vibrationOfPart(context); });
}

} // namespace bothways::core::rules
