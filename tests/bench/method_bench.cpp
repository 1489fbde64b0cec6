// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later

// What the method is known to do (method, section 12), simulated anew with the program's own
// functions: 1 % noise a pair, 15 minutes a pair, no time for switches, nominal 0.95.
// Usage: method_bench [repeats, default 40000]. Results: README.md here.

#include "core/companions/companions.h"
#include "core/companions/correlated.h"
#include "core/effect/effect_model.h"
#include "core/effect/headline.h"
#include "tests/support/simulated_day.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <functional>
#include <string>
#include <vector>

namespace {

using namespace bothways;
using tests::Noise;
using tests::SimulatedDay;

constexpr std::uint64_t kSeed = 20260314;

core::Headline headlineOf(const SimulatedDay& day)
{
    return std::get<core::HeadlineFit>(core::headlineOf(day.prepared(), {})).headline;
}

bool holds(const core::Headline& headline)
{
    return headline.low_log <= 0.0 && headline.high_log >= 0.0;
}

struct Result {
    double coverage = 0.0;
    double half_width_pct = 0.0; ///< mean, 100 x log
};

Result headlines(const std::string& sequence, int pairs, Noise noise, int repeats)
{
    noise.shared = true; // the method's figures are for noise of a pair
    SimulatedDay day(sequence, pairs, kSeed);
    Result result;
    for (int i = 0; i < repeats; ++i) {
        day.draw(noise);
        const core::Headline headline = headlineOf(day);
        result.coverage += holds(headline) ? 1.0 / repeats : 0.0;
        result.half_width_pct += 50.0 * (headline.high_log - headline.low_log) / repeats;
    }
    return result;
}

/// The companion itself, as the program calls it.
Result correlated(const std::string& sequence, int pairs, double rho, int repeats)
{
    Noise noise;
    noise.shared = true;
    noise.rho = rho;
    SimulatedDay day(sequence, pairs, kSeed);
    Result result;
    const auto observations = core::pairObservations(day.prepared());
    const core::Columns design = core::effectColumns(observations, day.prepared().sloped());
    core::Columns x(design.rows()); // the effect last
    for (std::size_t j = 1; j <= design.count(); ++j)
        x.addFrom(design, j % design.count());
    const std::vector<std::size_t> begins = {0};
    for (int i = 0; i < repeats; ++i) {
        day.draw(noise);
        std::vector<double> y;
        for (const core::Pair& pair : day.prepared().pairs)
            y.push_back(pair.log - day.prepared().pairs.front().log);
        const auto interval = core::correlatedInterval({x, y, begins}, {});
        result.coverage +=
            interval->low_log <= 0.0 && interval->high_log >= 0.0 ? 1.0 / repeats : 0;
        result.half_width_pct += 50.0 * (interval->high_log - interval->low_log) / repeats;
    }
    return result;
}

struct Alarms {
    double less = 0.0, either = 0.0;
};

/// Shares of studies that say *less*, or *less* or *more*, at one of the looks after each block
/// from the `first` on.
Alarms alarmsOfLooking(int first, int blocks, int pairs, int repeats)
{
    Noise noise;
    noise.shared = true;
    std::string longest;
    for (int b = 0; b < blocks; ++b)
        longest += b % 2 == 0 ? 'A' : 'B';
    std::vector<SimulatedDay> looks;
    for (int b = first; b <= blocks; ++b)
        looks.emplace_back(longest.substr(0, static_cast<std::size_t>(b)), pairs, kSeed);
    Alarms alarms;
    for (int i = 0; i < repeats; ++i) {
        looks.back().draw(noise);
        bool less = false, more = false;
        for (SimulatedDay& look : looks) {
            look.copyReadings(looks.back());
            const core::Headline headline = headlineOf(look);
            less = less || headline.high_log < 0.0;
            more = more || headline.low_log > 0.0;
        }
        alarms.less += less ? 1.0 / repeats : 0.0;
        alarms.either += less || more ? 1.0 / repeats : 0.0;
    }
    return alarms;
}

void printHeadlines(int repeats)
{
    Noise heavy, some, much, curved, straight;
    heavy.t_df = 3.0;
    some.rho = 0.3;
    much.rho = 0.6;
    curved.drift = [](double hours) { return 0.01 * hours * hours; };
    straight.drift = [](double hours) { return 0.01 * hours; };
    const std::string sequences[] = {"ABA", "ABBA", "ABABA"};
    fmt::print("{:<44}{:>9}{:>9}{:>9}\n", "coverage, 4 pairs a block", "A/B/A", "A/B/B/A",
               "A/B/A/B/A");
    const auto row = [&](const char* what, const Noise& noise) {
        fmt::print("{:<44}", what);
        for (const std::string& sequence : sequences)
            fmt::print("{:>9.4f}", headlines(sequence, 4, noise, repeats).coverage);
        fmt::print("\n");
    };
    row("independent", {});
    row("t noise, 3 df", heavy);
    row("rho 0.3", some);
    row("rho 0.6", much);
    row("curved drift, 1 %/h^2", curved);
    row("straight drift, 1 %/h", straight);
    for (const int pairs : {2, 4, 8}) {
        fmt::print("{:<44}", fmt::format("half-width (100 x log), {} pairs a block", pairs));
        for (const std::string& sequence : sequences)
            fmt::print("{:>9.3f}", headlines(sequence, pairs, {}, repeats).half_width_pct);
        fmt::print("\n");
    }
    fmt::print("open A/B under 1 %/h: {:.4f} with 4 pairs a block, {:.4f} with 8\n",
               headlines("AB", 4, straight, repeats).coverage,
               headlines("AB", 8, straight, repeats).coverage);
}

void printCorrelated(int repeats)
{
    fmt::print("\ncorrelated: coverage and mean half-width (standard deviations of a pair)\n");
    for (const std::string sequence : {"ABA", "ABABA"})
        for (const int pairs : {2, 4, 8}) {
            fmt::print("{:<44}", fmt::format("{}, {} pairs a block", sequence, pairs));
            for (const double rho : {0.0, 0.3, 0.6}) {
                const Result result = correlated(sequence, pairs, rho, repeats);
                fmt::print("  {:.4f} {:5.2f}", result.coverage, result.half_width_pct);
            }
            fmt::print("\n");
        }
}

} // namespace

int main(int argc, char** argv)
{
    const int repeats = argc > 1 ? std::max(100, std::atoi(argv[1])) : 40000;
    fmt::print(
        "{} repeats, seed {}; standard error of a coverage {:.4f} at 0.95, {:.4f} at 0.8\n\n",
        repeats, kSeed, std::sqrt(0.95 * 0.05 / repeats), std::sqrt(0.16 / repeats));
    printHeadlines(repeats);
    fmt::print(
        "\nfalse alarms of a look after each block, A/B/A to nine blocks, 4 pairs a block:\n");
    for (const int first : {3, 2}) {
        const Alarms alarms = alarmsOfLooking(first, 9, 4, repeats);
        fmt::print("  from block {}: \"less\" {:.4f}, \"less\" or \"more\" {:.4f}\n", first,
                   alarms.less, alarms.either);
    }
    printCorrelated(repeats);
}
