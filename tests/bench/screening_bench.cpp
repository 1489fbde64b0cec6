// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/trace.h"
#include "core/screening/screening.h"
#include "core/statistics/events.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <memory>
#include <string>
#include <vector>

// What screening costs: every rule over ten channels of one run at 100 Hz, for growing lengths;
// and one threshold beside R's rle(x > limit). Prints medians of five, of processor time, so that a
// busy machine shows less; see README.md.
namespace {

using namespace bothways::core;

constexpr double kRate_hz = 100.0;

class Random {
public:
    double even()
    {
        m_state ^= m_state << 13;
        m_state ^= m_state >> 7;
        m_state ^= m_state << 17;
        return std::ldexp(static_cast<double>(m_state >> 11), -52) - 1.0;
    }
    /// Roughly normal, standard deviation 1, as a logger writes it: `decimals` digits.
    double normal() { return (even() + even() + even()) * 1.0; }

private:
    std::uint64_t m_state = 88172645463325252;
};

double rounded(double value, double step)
{
    return std::round(value / step) * step;
}

/// Ten channels that share their times; with `faults`, each rule has something to find.
MemoryTrace recording(std::size_t count, bool faults)
{
    Random random;
    std::vector<double> times(count);
    std::vector<std::vector<double>> c(10, std::vector<double>(count));
    double speed = 90.0, gust = 0.0;
    const auto within = [&](std::size_t i, double from, double to) {
        return faults && i >= static_cast<std::size_t>(from * static_cast<double>(count)) &&
               i < static_cast<std::size_t>(to * static_cast<double>(count));
    };
    for (std::size_t i = 0; i < count; ++i) {
        times[i] = static_cast<double>(i) / kRate_hz;
        speed += (90.0 - speed) * 0.001 + 0.01 * random.normal();
        gust += -0.01 * gust + 0.1 * random.normal();
        const double rotor = 2800.0 + 20.0 * gust + 4.0 * random.normal();
        c[0][i] = within(i, 0.30, 0.31) ? 0.0 : rounded(speed, 0.001);
        c[1][i] = rounded(25.0 * times[i], 0.01);
        c[2][i] = rounded(7.2 + 0.1 * random.normal(), 0.0001);
        c[3][i] = rounded((within(i, 0.5, 1.0) ? 40.0 : 180.0) + 3.0 * random.normal(), 0.1);
        c[4][i] =
            rounded((within(i, 0.8, 1.0) ? 400.0 : 600.0) + 5.0 * gust + random.normal(), 0.01);
        c[5][i] = rounded(within(i, 0.6, 0.601) ? 3300.0 : rotor, 0.1);
        c[6][i] = rounded((within(i, 0.7, 0.71) ? 3.0 : 3.2) * rotor + random.normal(), 0.1);
        c[7][i] = rounded((within(i, 0.2, 0.21) ? 15.0 : 18.0) + 0.1 * random.normal(), 0.01);
        c[8][i] = within(i, 0.9, 1.0) ? 20.0 : 18.0;
        c[9][i] = rounded(2.0 + 0.3 * random.normal() + (within(i, 0.4, 0.401) ? 9.0 : 0.0), 0.01);
    }
    constexpr const char* kNames[] = {
        "road_speed_kmh", "distance_m",    "fuel_rate_l_per_h", "accessory_w", "output_w",
        "rotor_rpm",      "generator_rpm", "setting",           "setting_set", "wind_ms"};
    const SampleTimes shared(std::move(times));
    MemoryTrace trace;
    for (std::size_t k = 0; k < c.size(); ++k)
        trace.add(kNames[k], "", Samples{shared, std::move(c[k])});
    return trace;
}

template <class Work>
double medianSeconds(Work work)
{
    std::vector<double> seconds;
    for (int repeat = 0; repeat < 5; ++repeat) {
        const std::clock_t start = std::clock();
        work();
        seconds.push_back(static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
    }
    std::sort(seconds.begin(), seconds.end());
    return seconds[2];
}

void allRulesAt(std::size_t count, bool faults)
{
    const MemoryTrace trace = recording(count, faults);
    Study study;
    study.properties.limits = {{"overspeed.rpm", 3200.0},
                               {"road_speed.target_kmh", 90.0},
                               {"vibration.ms2", 8.0},
                               {"stretch.km", 5.0}};
    Run run;
    run.number = 1;
    run.configuration = "B";
    run.direction = "out";
    run.duration_s = static_cast<double>(count) / kRate_hz;
    study.runs = {run};
    std::size_t found = 0;
    const double seconds = medianSeconds([&] {
        found = screen(study, [&](const Run&) {
                    return std::make_unique<MemoryTrace>(trace);
                }).findings.size();
    });
    fmt::print("{:>10} samples x 10 channels, {:<8} {:>8.1f} ms  {:>5.2f} ns a sample and channel, "
               "{} findings\n",
               count, faults ? "faulty" : "healthy", 1e3 * seconds,
               1e9 * seconds / static_cast<double>(10 * count), found);
}

/// Seconds that R needs for rle(x > limit), or nothing where there is no R.
double secondsOfR(const std::filesystem::path& data)
{
    const std::filesystem::path script = data.string() + ".R";
    std::ofstream(script)
        << "x <- readBin('" << data.string() << "', 'double', 1e8)\n"
        << "t <- sapply(1:5, function(i) system.time(rle(x > 2860))[['user.self']])\n"
        << "cat(median(t))\n";
    const std::string command = "Rscript --vanilla '" + script.string() + "' 2>/dev/null";
    std::FILE* pipe = popen(command.c_str(), "r");
    double seconds = 0.0;
    const bool read = pipe && std::fscanf(pipe, "%lf", &seconds) == 1;
    if (pipe)
        pclose(pipe);
    std::filesystem::remove(script);
    return read ? seconds : 0.0;
}

void thresholdBesideR(std::size_t count)
{
    const MemoryTrace trace = recording(count, false);
    const auto rotor = trace.samples("rotor_rpm");
    std::size_t events = 0;
    const double ours = medianSeconds([&] {
        const auto& rpm = rotor->value;
        events = stretches(std::span(rotor->time_s.data(), rpm.size()), 0.0, [&](std::size_t i) {
                     return rpm[i] > 2860.0;
                 }).size();
    });
    fmt::print("threshold with events, {} samples: {:.1f} ms, {} stretches\n", count, 1e3 * ours,
               events);
    const auto file = std::filesystem::temp_directory_path() /
                      fmt::format("bothways_bench_{}.bin", std::filesystem::hash_value("rotor"));
    std::ofstream(file, std::ios::binary)
        .write(reinterpret_cast<const char*>(rotor->value.data()),
               static_cast<std::streamsize>(8 * count));
    const double theirs = secondsOfR(file);
    std::filesystem::remove(file);
    if (theirs > 0.0)
        fmt::print("R rle(x > limit) on the same: {:.1f} ms, {:.0f} times as long\n", 1e3 * theirs,
                   theirs / ours);
    else
        fmt::print("no Rscript here: the comparison with rle(x > limit) is left out\n");
}

} // namespace

int main(int argc, char** argv)
{
    if (argc > 1) { // for a profiler: one length
        allRulesAt(std::strtoul(argv[1], nullptr, 10), argc > 2);
        return EXIT_SUCCESS;
    }
    for (const bool faults : {false, true})
        for (const std::size_t count : {100'000UL, 1'000'000UL, 4'200'000UL, 10'000'000UL})
            allRulesAt(count, faults);
    thresholdBesideR(4'200'000);
    return EXIT_SUCCESS;
}
