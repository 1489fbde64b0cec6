// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: each bench is one story, from making its samples to the line that it prints.
#include "core/watching/watcher.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <string>
#include <vector>

// What watching costs: eight channels at 1 kHz for an hour, put each tenth of a second and looked
// at each second; and how long after a rotor went over its limit the alarm was there. Prints
// processor time and memory; see README.md. An argument is the number of minutes.
namespace {

using namespace bothways::core;

constexpr double kRate_hz = 1000.0;
constexpr std::array kNames = {"road_speed_kmh", "rotor_rpm", "generator_rpm", "output_w",
                               "accessory_w",    "setting",   "setting_set",   "wind_ms"};
constexpr std::array kMeans = {90.0, 2800.0, 8960.0, 600.0, 180.0, 18.0, 18.0, 2.0};

double processor_s()
{
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

double residentMb()
{
    std::ifstream status("/proc/self/status");
    for (std::string word; status >> word;)
        if (word == "VmRSS:" && status >> word)
            return std::atof(word.c_str()) / 1024.0;
    return 0.0;
}

} // namespace

// Long: one drive, told in its order.
int main(int count, char** arguments)
{
    const int minutes = count > 1 ? std::atoi(arguments[1]) : 60;
    Study study;
    study.properties.limits = {{"overspeed.rpm", 3200.0},
                               {"road_speed.target_kmh", 90.0},
                               {"vibration.ms2", 8.0},
                               {"stretch.km", 5.0}};
    Watcher watcher(study);
    // What recorded the run has it; nothing is asked of it here.
    watcher.recordedBy([](const Run&) { return std::unique_ptr<RunTrace>(); });
    std::array<std::size_t, kNames.size()> places{};
    for (std::size_t k = 0; k < kNames.size(); ++k)
        places[k] = watcher.channel(kNames[k], "");
    RunUnderWay run;
    run.run.number = 1;
    run.run.configuration = "B";
    run.run.direction = "out";
    watcher.begin(run);

    std::uint64_t state = 88172645463325252;
    const auto noise = [&] {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        return std::ldexp(static_cast<double>(state >> 11), -52) - 1.0;
    };
    double putting_s = 0.0, looking_s = 0.0, longest_s = 0.0;
    std::size_t alarms = 0;
    std::vector<double> times(100), values(100);
    for (int tenth = 0; tenth < minutes * 600; ++tenth) {
        for (std::size_t i = 0; i < times.size(); ++i)
            times[i] = static_cast<double>(tenth) / 10.0 + static_cast<double>(i) / kRate_hz;
        for (std::size_t k = 0; k < kNames.size(); ++k) {
            // A rotor over its limit for 2 s in each tenth minute, from 0.3 s on.
            const double at_s = std::fmod(static_cast<double>(tenth) / 10.0, 600.0);
            const double more = k == 1 && at_s >= 300.3 && at_s < 302.3 ? 1.2 : 1.0;
            for (double& value : values)
                value = k == 6 ? kMeans[k] : more * kMeans[k] * (1.0 + 0.002 * noise());
            const double start_s = processor_s();
            watcher.put(places[k], times, values);
            putting_s += processor_s() - start_s;
        }
        if (tenth % 10 != 9)
            continue;
        const double now_s = static_cast<double>(tenth + 1) / 10.0;
        const double start_s = processor_s();
        const std::vector<Alarm> said = watcher.look(now_s);
        const double took_s = processor_s() - start_s;
        looking_s += took_s;
        longest_s = std::max(longest_s, took_s);
        for (const Alarm& alarm : said)
            if (alarm.kind == Alarm::Kind::finding && alarm.since_s == now_s)
                fmt::print("  said at {:.1f} s: {} from {:.2f} s, {:.2f} s after it could be "
                           "known\n",
                           now_s, ruleName(alarm.finding.rule), *alarm.finding.from_s,
                           now_s - *alarm.finding.from_s - 0.5);
        alarms = said.size();
        const double minute = now_s / 60.0;
        if (minute == 1.0 || minute == 10.0 || minute == 30.0 || minute == 60.0) {
            const double share = (putting_s + looking_s) / now_s;
            fmt::print("{:>3.0f} min: {:.2f} ms a look so far (longest {:.2f}), putting {:.2f} ms "
                       "a second, {:.2f} % of a core; {:.0f} MB\n",
                       minute, 1e3 * looking_s / now_s, 1e3 * longest_s, 1e3 * putting_s / now_s,
                       100.0 * share, residentMb());
        }
    }
    fmt::print("{} alarms at the end\n", alarms);
    return 0;
}
