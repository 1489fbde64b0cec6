// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later

// What the companions and checks are known to do, simulated with the program's own functions: 1 %
// noise a pair, 15 minutes a pair, no time for switches, nominal 0.95.
// Usage: looks_bench [repeats, default 40000]. Results: README.md here.

#include "core/checks/checks.h"
#include "core/companions/any_look.h"
#include "core/companions/borrowed.h"
#include "core/companions/companions.h"
#include "core/companions/curved.h"
#include "core/effect/effect_model.h"
#include "core/effect/headline.h"
#include "core/effect/verdict.h"
#include "tests/support/open_day.h"
#include "tests/support/simulated_day.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <random>
#include <string>
#include <vector>

namespace {

using namespace bothways;
using tests::Noise;
using tests::SimulatedDay;

constexpr std::uint64_t kSeed = 20260314;

/// Share of intervals that hold 0, and their mean half-width.
struct Share {
    double held = 0.0, half = 0.0;
    int all = 0;
    template <class I>
    void count(const std::optional<I>& interval)
    {
        if (!interval)
            return;
        ++all;
        held += interval->low_log <= 0.0 && interval->high_log >= 0.0 ? 1.0 : 0.0;
        half += 50.0 * (interval->high_log - interval->low_log);
    }
    [[nodiscard]] std::string text() const
    {
        return all == 0 ? std::string("-") : fmt::format("{:.4f} {:.3f}", held / all, half / all);
    }
};

void printCompanions(int repeats)
{
    fmt::print("coverage and mean half-width (100 x log)\n{:<24}{:>16}{:>16}{:>16}{:>16}\n", "",
               "headline", "curved", "any look", "borrowed");
    for (const bool bent : {false, true})
        for (const std::string sequence : {"ABA", "ABBA", "ABABA"})
            for (const int pairs : {2, 4, 8}) {
                Noise noise;
                noise.shared = true;
                if (bent)
                    noise.drift = [](double hours) { return 0.01 * hours * hours; };
                SimulatedDay day(sequence, pairs, kSeed);
                std::mt19937_64 random(kSeed);
                std::chi_squared_distribution<double> chi(21.0);
                Share headline, curved, anyLook, borrowed;
                for (int i = 0; i < repeats; ++i) {
                    day.draw(noise);
                    core::AnalysisOptions options;
                    options.noise = core::BorrowedNoise{0.01 * std::sqrt(chi(random) / 21.0), 21.0};
                    const auto fit =
                        std::get<core::HeadlineFit>(core::headlineOf(day.prepared(), options));
                    headline.count(std::optional(core::intervalOf(
                        fit.headline.effect_log, fit.headline.se_log, fit.headline.df, options)));
                    curved.count(core::curvedOf(core::curvedFitOf(day.prepared()), options));
                    anyLook.count(core::anyLookOf(day.prepared(), options));
                    borrowed.count(core::borrowedOf(fit.headline, options));
                }
                fmt::print("{:<24}{:>16}{:>16}{:>16}{:>16}\n",
                           fmt::format("{}, {}{}", sequence, pairs, bent ? ", 1 %/h^2" : ""),
                           headline.text(), curved.text(), anyLook.text(), borrowed.text());
            }
}

/// Shares of studies without an effect that are called less or more at one of the looks after each
/// block, by the usual interval and by any_look.
void printLooks(int repeats)
{
    fmt::print("\nfalse verdicts, looking after each block from the third to the ninth\n");
    for (const int pairs : {2, 4, 8}) {
        Noise noise;
        noise.shared = true;
        std::vector<SimulatedDay> looks;
        const std::string longest = "ABABABABA";
        for (std::size_t b = 3; b <= longest.size(); ++b)
            looks.emplace_back(longest.substr(0, b), pairs, kSeed);
        int usual = 0, anyLook = 0;
        for (int i = 0; i < repeats; ++i) {
            looks.back().draw(noise);
            bool wrong = false, wrongAnyLook = false;
            for (SimulatedDay& look : looks) {
                look.copyReadings(looks.back());
                const auto answer = core::headlineOf(look.prepared(), {});
                const auto& headline = std::get<core::HeadlineFit>(answer).headline;
                wrong = wrong || headline.high_log < 0.0 || headline.low_log > 0.0;
                const auto held = core::anyLookOf(look.prepared(), {});
                wrongAnyLook =
                    wrongAnyLook || (held && (held->high_log < 0.0 || held->low_log > 0.0));
            }
            usual += wrong ? 1 : 0;
            anyLook += wrongAnyLook ? 1 : 0;
        }
        fmt::print("  {} pairs a block: usual {:.4f}, any look {:.4f}\n", pairs,
                   static_cast<double>(usual) / repeats, static_cast<double>(anyLook) / repeats);
    }
}

void printOpenDay(int repeats)
{
    tests::OpenDayBesideClosedOnes study(kSeed);
    Share share;
    for (int i = 0; i < repeats; ++i)
        share.count(std::optional(study.draw()));
    fmt::print("\nclosed study with an open day under 1 %/h: {}\n", share.text());
}

core::PreparedStudy withEffect(const core::PreparedStudy& prepared, double effect_log)
{
    core::PreparedStudy moved = prepared;
    for (core::Pair& pair : moved.pairs)
        if (pair.device) {
            pair.log += effect_log;
            pair.l_per_100km *= std::exp(effect_log);
        }
    for (core::CodedRun& run : moved.runs)
        if (run.device)
            run.y += effect_log;
    for (core::DesignBlock& block : moved.design_blocks)
        if (block.device)
            block.m += effect_log;
    return moved;
}

/// Of true effects of two noise units those that are called fragile, and those that need
/// independence.
void printFragile(int repeats)
{
    fmt::print("\na true effect of 2 noise units: fragile, needs independence ({} repeats)\n",
               repeats);
    for (const std::string sequence : {"ABA", "ABABA"})
        for (const int pairs : {2, 4, 8}) {
            SimulatedDay day(sequence, pairs, kSeed);
            int fragile = 0, needs = 0;
            for (int i = 0; i < repeats; ++i) {
                day.draw({});
                const core::PreparedStudy moved = withEffect(day.prepared(), 0.02);
                const auto fit = std::get<core::HeadlineFit>(core::headlineOf(moved, {}));
                const core::Companions companions =
                    core::companionsOf(day.study(), moved, fit.headline, {});
                fragile += core::disagreeing(fit.headline, fit.cls, companions).empty() ? 0 : 1;
                needs += core::needsIndependence(fit.cls, companions) ? 1 : 0;
            }
            fmt::print("  {}, {}: {:.3f}, {:.3f}\n", sequence, pairs,
                       static_cast<double>(fragile) / repeats,
                       static_cast<double>(needs) / repeats);
        }
}

/// How often each check fails where nothing is wrong.
void printChecks(int repeats)
{
    fmt::print("\nchecks that fail in ideal noise, per cent ({} repeats; - not computed)\n",
               repeats);
    const std::array names = {"normal", "outlier",   "order", "curve",
                              "spread", "direction", "ways",  "settling"};
    fmt::print("{:<12}", "");
    for (const char* name : names)
        fmt::print("{:>10}", name);
    fmt::print("\n");
    for (const std::string sequence : {"ABA", "ABABA"})
        for (const int pairs : {2, 4, 8}) {
            SimulatedDay day(sequence, pairs, kSeed);
            std::array<int, names.size()> fails{}, computed{};
            for (int i = 0; i < repeats; ++i) {
                day.draw({});
                const auto fit = std::get<core::HeadlineFit>(core::headlineOf(day.prepared(), {}));
                const core::Checks c =
                    core::checksOf(day.study(), day.prepared(), fit.headline, {});
                const std::array states = {c.normal.state, c.outlier.state, c.order.state,
                                           c.curve.state,  c.spread.state,  c.direction.state,
                                           c.ways.state,   c.settling.state};
                for (std::size_t k = 0; k < states.size(); ++k) {
                    fails[k] += states[k] == core::CheckState::fails ? 1 : 0;
                    computed[k] += states[k] != core::CheckState::notComputed ? 1 : 0;
                }
            }
            fmt::print("{:<12}", fmt::format("{}, {}", sequence, pairs));
            for (std::size_t k = 0; k < names.size(); ++k)
                fmt::print("{:>10}", computed[k] == 0
                                         ? std::string("-")
                                         : fmt::format("{:.2f}", 100.0 * fails[k] / computed[k]));
            fmt::print("\n");
        }
}

} // namespace

int main(int argc, char** argv)
{
    const int repeats = argc > 1 ? std::max(100, std::atoi(argv[1])) : 40000;
    fmt::print("{} repeats, seed {}; standard error of a coverage {:.4f} at 0.95\n\n", repeats,
               kSeed, std::sqrt(0.95 * 0.05 / repeats));
    printCompanions(repeats);
    printLooks(repeats);
    printOpenDay(repeats);
    printFragile(std::max(100, repeats / 10));
    printChecks(std::max(100, repeats / 10));
}
