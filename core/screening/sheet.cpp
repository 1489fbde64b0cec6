// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/rules.h"
#include "core/study/parts.h"

#include <algorithm>
#include <cmath>

// Rules that read what was written down: no recording needed.
namespace bothways::core::rules {
namespace {

/// Microseconds on the clock at the place, for moments that may or may not have an offset.
std::int64_t local_us(const Instant& instant)
{
    return instant.us + std::int64_t{60'000'000} * instant.utc_offset_min.value_or(0);
}

std::int64_t between_us(const Instant& from, const Instant& to)
{
    const bool comparable = from.utc_offset_min.has_value() == to.utc_offset_min.has_value();
    return comparable ? to.us - from.us : local_us(to) - local_us(from);
}

bool sameConsumption(const Run& a, const Run& b)
{
    if (!a.consumption || !b.consumption)
        return false;
    if (a.consumption->unit == b.consumption->unit)
        return a.consumption->value == b.consumption->value;
    const std::optional<double> left = lPer100km(a);
    const std::optional<double> right = lPer100km(b);
    return left && right && std::abs(*left - *right) <= 1e-9 * *left;
}

/// Names of columns are case-blind and their blanks equal underscores.
bool sameName(std::string a, std::string b)
{
    std::replace(a.begin(), a.end(), ' ', '_');
    std::replace(b.begin(), b.end(), ' ', '_');
    return sameWord(a, b);
}

std::map<std::string, double>::const_iterator switchedOn(const Run& run,
                                                         const TimedAccessory& accessory)
{
    return std::find_if(run.accessory_on_s.begin(), run.accessory_on_s.end(),
                        [&](const auto& entry) { return sameName(entry.first, accessory.name); });
}

/// One timed accessory: off at its switch-on plus its minutes.
void oneTimer(RunContext& context, const TimedAccessory& accessory)
{
    const Run& run = context.run();
    const auto noted = switchedOn(run, accessory);
    if (noted == run.accessory_on_s.end()) {
        context.notChecked(Rule::accessoryTimer, WhyNotChecked::noSetTime,
                           accessory.name + "_on_s");
        return;
    }
    const std::optional<double> end_s = duration_s(run);
    const double off_s = noted->second + accessory.minutes * 60.0;
    if (off_s > 0.0 && !end_s) {
        context.notChecked(Rule::accessoryTimer, WhyNotChecked::notNoted, "duration_s");
        return;
    }
    if (off_s > 0.0 && (noted->second >= *end_s || reaches(off_s, *end_s)))
        return;
    Finding& finding =
        context.found(Rule::accessoryTimer, Grade::spoils, -accessory.watts, std::nullopt, "W");
    finding.accessory = accessory.name;
    if (off_s >= 0.0 && end_s) {
        finding.from_s = off_s;
        finding.to_s = *end_s;
    }
}

} // namespace

void accessoryChangeFromSheet(RunContext& context)
{
    const Run& run = context.run();
    if (!run.accessory_w) {
        context.notNoted(Rule::accessoryChange, "accessory_w", "accessory_w");
        return;
    }
    const auto declared_w =
        context.neededLimit(Rule::accessoryChange, "accessory_change.declared_w");
    if (!declared_w)
        return;
    const double watts = context.limitWithDefault("accessory_change.watts");
    const double change_w = *run.accessory_w - *declared_w;
    if (reaches(std::abs(change_w), watts))
        context.found(Rule::accessoryChange, Grade::spoils, change_w, watts, "W");
}

std::optional<double> timerOff_s(const Run& run, const TimedAccessory& accessory)
{
    const auto noted = switchedOn(run, accessory);
    return noted == run.accessory_on_s.end()
               ? std::nullopt
               : std::optional(noted->second + accessory.minutes * 60.0);
}

void accessoryTimer(RunContext& context)
{
    const auto& declared = context.study.properties.timed_accessories;
    if (declared.empty())
        context.notChecked(Rule::accessoryTimer, WhyNotChecked::noLimit, "accessory_timer.NAME");
    for (const TimedAccessory& accessory : declared)
        oneTimer(context, accessory);
}

void overspeedFromSheet(RunContext& context)
{
    const Run& run = context.run();
    const std::vector<NotedPart> parts = notedParts(run, "rotor_rpm_max");
    const auto ask = [&](const std::optional<double>& noted_rpm) {
        const auto limit_rpm = context.neededLimit(Rule::overspeed, "overspeed.rpm");
        if (!limit_rpm)
            return;
        if (!noted_rpm)
            context.notNoted(Rule::overspeed, "rotor_rpm_max", "rotor_rpm");
        else if (*noted_rpm > *limit_rpm)
            context.found(Rule::overspeed, Grade::spoils, *noted_rpm, *limit_rpm, "rpm");
    };
    if (parts.empty() || run.rotor_rpm_max)
        ask(run.rotor_rpm_max);
    for (const NotedPart& noted : parts) {
        context.part = noted.part;
        ask(noted.value);
    }
    context.part.clear();
}

void stretchFromSheet(RunContext& context)
{
    const auto stretch_km = context.neededLimit(Rule::stretch, "stretch.km");
    if (!stretch_km)
        return;
    const Run& run = context.run();
    if (!run.distance_km) {
        context.notChecked(Rule::stretch, WhyNotChecked::notNoted, "distance_km");
        return;
    }
    const double pct = context.limitWithDefault("stretch.pct");
    const double off_pct = 100.0 * (*run.distance_km - *stretch_km) / *stretch_km;
    if (exceeds(std::abs(off_pct), pct))
        context.found(Rule::stretch, Grade::doubtful, off_pct, pct, "%");
}

void batteryBalance(RunContext& context)
{
    const Run& run = context.run();
    if (!run.battery_v_start || !run.battery_v_end) {
        context.notChecked(Rule::batteryBalance, WhyNotChecked::notNoted,
                           run.battery_v_start ? "battery_v_end" : "battery_v_start");
        return;
    }
    const double volts = context.limitWithDefault("battery_balance.volts");
    const double difference_v = *run.battery_v_end - *run.battery_v_start;
    // The rounding is that of the readings, not of their small difference.
    if (std::abs(difference_v) > volts + 1e-9 * *run.battery_v_start)
        context.found(Rule::batteryBalance, Grade::doubtful, difference_v, volts, "V");
}

void warmingUp(RunContext& context)
{
    const std::optional<Instant>& cold_start = context.study.properties.cold_start;
    if (!cold_start) {
        context.notChecked(Rule::warmingUp, WhyNotChecked::notNoted, "cold_start");
        return;
    }
    const double minutes = context.limitWithDefault("warming_up.minutes");
    const double since_min =
        static_cast<double>(between_us(*cold_start, context.run().start)) / 6e7;
    if (since_min >= 0.0 && since_min <= minutes)
        context.found(Rule::warmingUp, Grade::note, since_min, minutes, "min");
}

void sameRunTwice(RunContext& context)
{
    const Run& run = context.run();
    if (!run.consumption) {
        context.notChecked(Rule::sameRunTwice, WhyNotChecked::notNoted, "consumption");
        return;
    }
    // Runs are in order of start, so an earlier run with the same start is just before.
    const std::vector<Run>& runs = context.study.runs;
    const Run* earliest = nullptr;
    for (std::size_t i = context.place; i-- > 0 && runs[i].start.us == run.start.us;)
        if (sameWord(runs[i].direction, run.direction) && sameConsumption(runs[i], run))
            earliest = &runs[i];
    if (earliest)
        context.found(Rule::sameRunTwice, Grade::spoils, static_cast<double>(earliest->number),
                      std::nullopt, "");
}

} // namespace bothways::core::rules
