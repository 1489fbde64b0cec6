// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Several studies pooled: coverage and width of both intervals, and how often agreement is denied,
// for studies of few degrees of freedom, noise alike or threefold apart.
// Usage: pooled_bench [repeats, default 20000]. Results: README.md here.

#include "core/answer/pooled.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <random>
#include <vector>

namespace {

using namespace bothways;

constexpr std::uint64_t kSeed = 20260314;

struct Setting {
    int studies = 3;
    double df = 2.0;
    double apart = 1.0;   ///< the noisiest study's noise over the quietest's
    double between = 0.0; ///< true scatter, in standard errors of the middle study
};

std::vector<core::StudyEffect> drawn(const Setting& setting, std::mt19937_64& random)
{
    std::normal_distribution<double> normal;
    std::chi_squared_distribution<double> chi(setting.df);
    std::vector<core::StudyEffect> studies;
    for (int i = 0; i < setting.studies; ++i) {
        const double place = static_cast<double>(i) / (setting.studies - 1) - 0.5;
        const double noise = 0.01 * std::pow(setting.apart, place);
        const double effect = noise * normal(random) + 0.01 * setting.between * normal(random);
        const double s = noise * std::sqrt(chi(random) / setting.df);
        studies.push_back({"study", effect, s, setting.df, s});
    }
    return studies;
}

struct Result {
    double usual = 0.0, usualHalf = 0.0, random = 0.0, randomHalf = 0.0, common = 0.0,
           commonHalf = 0.0, denied = 0.0;
};

Result simulate(const Setting& setting, int repeats)
{
    std::mt19937_64 random(kSeed);
    Result result;
    for (int i = 0; i < repeats; ++i) {
        std::vector<core::StudyEffect> studies = drawn(setting, random);
        const auto pooled = core::pool(studies);
        for (core::StudyEffect& study : studies)
            study.s = 0.0; // unknown: Hartung and Knapp's variance, not below the plain one
        const auto usual = core::pool(studies);
        const auto count = [&](const auto& interval, double& held, double& half) {
            held += interval.low_log <= 0.0 && interval.high_log >= 0.0 ? 1.0 / repeats : 0.0;
            half += 50.0 * (interval.high_log - interval.low_log) / repeats;
        };
        count(*usual, result.usual, result.usualHalf);
        count(*pooled, result.random, result.randomHalf);
        count(*pooled->common, result.common, result.commonHalf);
        result.denied += pooled->agreement.state == core::CheckState::fails ? 1.0 / repeats : 0.0;
    }
    return result;
}

} // namespace

int main(int argc, char** argv)
{
    const int repeats = argc > 1 ? std::max(100, std::atoi(argv[1])) : 20000;
    fmt::print("{} repeats, seed {}; coverage and mean half-width (100 x log)\n", repeats, kSeed);
    fmt::print("{:<32}{:>16}{:>16}{:>7}{:>16}{:>10}\n", "studies, df, apart, between", "usual",
               "kept", "ratio", "common", "denied %");
    double worst = 1.0, widest = 0.0;
    for (const int studies : {3, 4, 5, 8, 10})
        for (const double df : {2.0, 3.0, 5.0, 9.0})
            for (const double apart : {1.0, 3.0})
                for (const double between : {0.0, 1.0, 2.0}) {
                    const Result r = simulate({studies, df, apart, between}, repeats);
                    const double ratio = r.randomHalf / r.usualHalf;
                    worst = std::min(worst, r.random);
                    if (r.usual >= 0.945)
                        widest = std::max(widest, ratio);
                    fmt::print("{:<32}{:>9.4f} {:6.3f}{:>9.4f} {:6.3f}{:>7.2f}{:>9.4f} {:6.3f}"
                               "{:>10.2f}\n",
                               fmt::format("{}, {}, {}, {}", studies, df, apart, between), r.usual,
                               r.usualHalf, r.random, r.randomHalf, ratio, r.common, r.commonHalf,
                               100.0 * r.denied);
                }
    fmt::print("kept: worst coverage {:.4f}; widest ratio where the usual one covers {:.3f}\n",
               worst, widest);
}
