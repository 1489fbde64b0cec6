// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/made_days.h"

#include "tests/bench/made_run.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <string>

namespace bothways::bench {
namespace {

using core::Rule;

/// What is done to one run: `amount` and `length` are beyond the rule's limit, or (near misses)
/// one of them is short of it.
struct Work {
    Random& random;
    MadeRun& made;
    core::Run& run;
    bool near; ///< a near miss
    double distanceFactor = 1.0;

    double sign() { return random.chance(0.5) ? 1.0 : -1.0; }
    double at(double length_s) { return random.between(12.0, 168.0 - length_s); }
    /// Of a fault 1.3 to 4 times the limit; of a near miss 0.3 to 0.7 times.
    double amount(double limit)
    {
        return limit * (near ? random.between(0.3, 0.7) : random.between(1.3, 4.0));
    }
    /// Long enough to be sure at this rate; long also for near misses, which are too weak.
    double length(double limit_s)
    {
        return random.between(1.2 * limit_s + 2.0 / made.rate_hz(), 10.0 * limit_s + 4.0);
    }
};

using Do = std::function<Planted(Work&)>;

Planted spell(Work& work, Rule rule, const std::string& channel, double seconds, double amount,
              std::vector<Rule> implied = {})
{
    const double length = work.length(seconds), from = work.at(length);
    work.made.add_to(channel, from, from + length, amount);
    return {rule, work.run.number,   from, from + length - 1.0 / work.made.rate_hz(),
            true, std::move(implied)};
}

Planted accessoryChange(Work& w)
{
    const double watts = w.sign() * (w.near ? w.random.between(10, 35) : w.random.between(65, 170));
    const double from = w.at(60.0),
                 to = w.random.chance(0.5) ? 1e3 : from + w.random.between(9, 60);
    w.made.add_to("accessory_w", from, to, watts);
    return {Rule::accessoryChange, w.run.number, from, std::min(to, kDuration_s)};
}
Planted accessoryCreep(Work& w)
{
    const double watts = w.sign() * (w.near ? 30.0 : w.random.between(90, 200));
    const double from = w.random.between(20, 60), length = w.random.between(40, 90);
    w.made.change("accessory_w", from, 1e3, [=](double t, double value) {
        return value + watts * std::min(1.0, (t - from) / length);
    });
    return {Rule::accessoryChange, w.run.number, from + length * 50.0 / std::abs(watts),
            kDuration_s};
}
Planted accessoryTimer(Work& w)
{
    const double off_s = w.near ? kDuration_s + w.random.between(5, 100) : w.random.between(5, 175);
    w.run.accessory_on_s = {{"windscreen", off_s - 600.0}};
    return {Rule::accessoryTimer, w.run.number, off_s, kDuration_s};
}
Planted overspeed(Work& w)
{
    const bool tooShort = w.near && w.random.chance(0.5) && w.made.rate_hz() > 4.0;
    const double peak =
        w.near && !tooShort ? w.random.between(3000, 3120) : w.random.between(3260, 3800);
    const double length = tooShort ? 0.3 : w.length(0.5), from = w.at(length);
    for (const char* name : {"rotor_rpm", "generator_rpm"})
        w.made.change(name, from, from + length, [&](double, double value) {
            return (peak + 5.0 * w.random.normal()) * (value > 6000.0 ? 3.2 : 1.0);
        });
    return {Rule::overspeed, w.run.number, from, from + length - 1.0 / w.made.rate_hz()};
}
Planted loadLost(Work& w)
{
    const double share = w.near ? w.random.between(0.1, 0.3) : w.random.between(0.0, 0.03);
    const double length = w.length(2.0), from = w.at(length);
    w.made.scale("output_w", from, from + length, share);
    return {Rule::loadLost,
            w.run.number,
            from,
            from + length - 1.0 / w.made.rate_hz(),
            true,
            {Rule::outputDrop, Rule::sensorLost}}; // what little is left may be constant
}
Planted driveSlip(Work& w)
{
    const double pct = w.amount(3.0), length = w.length(1.0), from = w.at(length);
    w.made.scale("generator_rpm", from, from + length, 1.0 - pct / 100.0);
    return {Rule::driveSlip, w.run.number, from, from + length - 1.0 / w.made.rate_hz()};
}
Planted outputDrop(Work& w)
{
    const double share = w.near ? w.random.between(0.82, 0.95) : w.random.between(0.3, 0.68);
    const double from = w.random.between(40, 140);
    w.made.scale("output_w", from, 1e3, share);
    return {Rule::outputDrop, w.run.number, from, kDuration_s};
}
Planted settingMismatch(Work& w)
{
    return spell(w, Rule::settingMismatch, "setting", 2.0, w.sign() * w.amount(1.0));
}
Planted settingChanged(Work& w)
{
    const double degrees = w.sign() * (w.near ? 0.5 : w.random.between(1.5, 5.0));
    const double from = w.at(60.0), to = w.random.chance(0.6) ? 1e3 : from + w.length(1.0);
    w.made.add_to("setting_set", from, to, degrees);
    w.made.add_to("setting", from + 0.5, to + 0.5, degrees);
    return {Rule::settingChanged, w.run.number, from,
            std::min(to - 1.0 / w.made.rate_hz(), kDuration_s)};
}
Planted vibration(Work& w)
{
    const double more = w.near ? w.random.between(1.0, 2.0) : w.random.between(6.5, 12.0);
    return spell(w, Rule::vibration, "vibration_ms2", 1.0, more);
}
Planted roadSpeedSpell(Work& w)
{
    const double kmh = w.near ? w.random.between(1.0, 2.5) : w.random.between(6.5, 13.0);
    const double length = w.random.between(4.0, 14.0), from = w.at(length);
    w.made.add_to("road_speed_kmh", from, from + length, w.sign() * kmh);
    return {Rule::roadSpeed, w.run.number, from, from + length - 1.0 / w.made.rate_hz()};
}
Planted roadSpeedMean(Work& w)
{
    const double pct = w.sign() * (w.near ? w.random.between(0.4, 1.4) : w.random.between(2.6, 6));
    w.made.scale("road_speed_kmh", -1e3, 1e3, 1.0 + pct / 100.0);
    return {Rule::roadSpeed, w.run.number, 0.0,
            kDuration_s,     true,         {Rule::stretch, Rule::notCruising}};
}
Planted interrupted(Work& w)
{
    const double kmh = w.near ? w.random.between(35, 60) : w.random.between(0, 20);
    const double brake = 6.0, stand = w.random.between(3, 30), from = w.at(2 * brake + stand);
    w.made.change("road_speed_kmh", from, from + 2 * brake + stand, [=](double t, double value) {
        const double edge = std::min(t - from, from + 2 * brake + stand - t) / brake;
        return std::max(0.0, value + (kmh - kTarget_kmh) * std::min(1.0, edge));
    });
    const double below = brake * (0.7 * kTarget_kmh) / (kTarget_kmh - kmh);
    Planted planted{Rule::interrupted,
                    w.run.number,
                    from + below,
                    from + 2 * brake + stand - below,
                    true,
                    {Rule::roadSpeed, Rule::stretch}};
    if (w.near) { // slow enough for another rule: that is what is planted
        planted.rule = Rule::roadSpeed;
        planted.from_s = from + brake * 4.5 / (kTarget_kmh - kmh);
        planted.to_s = from + 2 * brake + stand - (planted.from_s - from);
    }
    return planted;
}
Planted notCruising(Work& w)
{
    const double until = w.near ? -6.0 : w.random.between(0.5, 9.0);
    const double perSecond = w.near ? 4.0 : w.random.between(3.0, 8.0);
    w.made.change("road_speed_kmh", -1e3, until,
                  [=](double t, double value) { return value - perSecond * (until - t); });
    return {Rule::notCruising,
            w.run.number,
            0.0,
            std::max(0.0, until - 0.03 * kTarget_kmh / perSecond),
            true,
            {Rule::roadSpeed}};
}
Planted stretchOff(Work& w)
{
    w.distanceFactor = 1.0 + w.sign() * w.amount(2.0) / 100.0;
    return {Rule::stretch, w.run.number, 0.0, kDuration_s};
}
Planted passingTraffic(Work& w)
{
    const bool wind = w.random.chance(0.6);
    const double sigma = wind ? 0.62 : 0.3;
    const double sigmas = w.near ? w.random.between(1.0, 2.0) : w.random.between(10.0, 20.0);
    return spell(w, Rule::passingTraffic, wind ? "wind_ms" : "yaw_deg_per_s", 0.5,
                 w.sign() * sigmas * sigma);
}
const char* aSensor(Work& w)
{
    return w.random.oneOf({"wind_ms", "fuel_rate_l_per_h", "accessory_w", "vibration_ms2",
                           "rotor_rpm", "yaw_deg_per_s"});
}
Planted sensorGap(Work& w)
{
    MadeChannel& channel = w.made.channel(aSensor(w));
    const double interval_s = static_cast<double>(channel.every) / w.made.rate_hz();
    const double longest = std::max(1.0, 3.0 * interval_s);
    const double length = w.near ? 0.5 * longest : w.random.between(1.5 * longest, 30.0);
    channel.lostFrom_s = w.at(length);
    channel.lostTo_s = channel.lostFrom_s + length;
    return {Rule::sensorLost, w.run.number, channel.lostFrom_s - 0.5 * interval_s,
            channel.lostTo_s + 0.5 * interval_s};
}
Planted sensorFrozen(Work& w)
{
    const double length = w.near ? w.random.between(1.0, 3.5) : w.random.between(6.5, 40.0);
    const double from = w.at(length);
    double held = std::nan("");
    const char* name = w.run.configuration == "B" ? aSensor(w) : "accessory_w";
    w.made.change(name, from, from + length,
                  [&](double, double value) { return held = std::isnan(held) ? value : held; });
    return {Rule::sensorLost, w.run.number, from, from + length - 1.0 / w.made.rate_hz(), true,
            {Rule::driveSlip}};
}
Planted traceEndsEarly(Work& w)
{
    const double missing = w.near ? w.random.between(0.2, 0.8) : w.random.between(4.0, 60.0);
    w.made.endAt(kDuration_s - missing);
    return {Rule::traceEndsEarly, w.run.number, kDuration_s - missing, kDuration_s};
}
Planted batteryBalance(Work& w)
{
    w.run.battery_v_start = 12.6;
    w.run.battery_v_end = 12.6 + std::round(100.0 * w.sign() * w.amount(0.2)) / 100.0;
    return {Rule::batteryBalance, w.run.number, 0.0, 0.0, false};
}
Planted adjusted(Work& w)
{
    const double at = w.at(0.0);
    w.run.marks.push_back({at, w.near ? "gust" : "adjusted", "belt"});
    return {Rule::adjusted, w.run.number, at, at};
}

} // namespace

MadeDay madeDay(std::uint64_t seed)
{
    const std::initializer_list<Do> anywhere = {
        accessoryChange, accessoryCreep, accessoryTimer, vibration,      roadSpeedSpell,
        roadSpeedMean,   interrupted,    notCruising,    stretchOff,     passingTraffic,
        sensorGap,       sensorFrozen,   traceEndsEarly, batteryBalance, adjusted};
    const std::initializer_list<Do> withDevice = {overspeed,  loadLost,        driveSlip,
                                                  outputDrop, settingMismatch, settingChanged};
    Random random(seed);
    MadeDay day;
    day.rate_hz = random.oneOf({1.0, 5.0, 10.0, 50.0});
    const double speedQuantum = random.oneOf({0.01, 0.1, 1.0});
    const double fuelQuantum = random.oneOf({0.0001, 0.01});
    day.study.properties.limits = {{"overspeed.rpm", 3200.0},
                                   {"road_speed.target_kmh", kTarget_kmh},
                                   {"vibration.ms2", 8.0},
                                   {"stretch.km", kTarget_kmh * kDuration_s / 3600.0}};
    day.study.properties.timed_accessories = {{"windscreen", 450.0, 10.0}};
    for (int number = 1; number <= 12; ++number) {
        const bool device = number > 4 && number <= 8;
        core::Run run;
        run.number = number;
        run.configuration = device ? "B" : "A";
        run.direction = number % 2 == 1 ? "out" : "return";
        run.start.us = std::int64_t{1'778'305'200'000'000} + number * std::int64_t{420'000'000};
        run.duration_s = kDuration_s;
        MadeRun made(random, day.rate_hz, device, speedQuantum);
        if (day.rate_hz >= 10.0)
            for (const char* slow : {"coolant_c", "battery_v", "setting_set", "fuel_rate_l_per_h"})
                made.channel(slow).every = static_cast<std::size_t>(day.rate_hz) / 5;
        const double what = random.between(0.0, 1.0);
        Work work{random, made, run, what > 0.45};
        if (what < 0.70) {
            const bool ofDevice = device && random.chance(0.7);
            const Planted planted =
                ofDevice ? random.oneOf(withDevice)(work) : random.oneOf(anywhere)(work);
            const bool otherRule = planted.rule == Rule::roadSpeed && !planted.implied.empty() &&
                                   planted.to_s < kDuration_s;
            if (!work.near || otherRule)
                day.planted.push_back(planted);
        }
        day.traces.emplace(number, made.recorded(work.distanceFactor, fuelQuantum));
        day.study.runs.push_back(std::move(run));
    }
    return day;
}

} // namespace bothways::bench
