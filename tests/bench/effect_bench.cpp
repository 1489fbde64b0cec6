// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answer/analyse.h"
#include "core/effect/answer.h"
#include "core/pairing/pairing.h"
#include "core/planning/plan.h"
#include "core/study/units.h"
#include "tests/bench/best_of_five.h"
#include "tests/support/study_builder.h"

#include <fmt/core.h>

#include <algorithm>
#include <random>

// How long the effect takes: whole analyses from 40 to 10,000 runs with and without discards,
// pairing of long blocks, and the inverse plan over all sequences. Best of five, in milliseconds.
using namespace bothways;
using bench::best_ms;

namespace {

void benchAnalysis(const std::string& sequence, int pairs)
{
    core::Study study = tests::aDay(sequence, pairs);
    core::Analysis answer;
    const auto run = [&] { answer = core::analyse(study, {}); };
    const double all = best_ms(run);
    for (std::size_t k = 0; k < study.runs.size(); k += 10)
        study.runs[k].discard = core::Discard{"other", "bench"};
    fmt::print("analyse {:6} runs {:10.2f}   with every tenth discarded {:10.2f}\n",
               study.runs.size(), all, best_ms(run));
}

/// @param disorder  how far positions are from the order of time: 0 not at all, 1 neighbours change
/// places, 2 anyhow
void benchPairing(std::size_t runs, int disorder)
{
    std::mt19937_64 random(1);
    std::uniform_int_distribution<std::int64_t> moment(0,
                                                       static_cast<std::int64_t>(runs) * 420'000);
    std::vector<std::int64_t> times(runs);
    std::generate(times.begin(), times.end(), [&] { return moment(random); });
    std::sort(times.begin(), times.end());
    std::vector<std::size_t> positions(runs);
    for (std::size_t k = 0; k < runs; ++k)
        positions[k] = disorder == 1 ? k ^ 1U : k;
    if (disorder == 2)
        std::shuffle(positions.begin(), positions.end(), random);
    std::vector<core::PairingPoint> outs, returns;
    for (std::size_t k = 0; k < runs; ++k)
        (random() % 2 == 0 ? outs : returns).push_back({times[k], positions[k]});
    core::Matching matching;
    const double took = best_ms([&] { matching = core::matchRuns(outs, returns, 1'800'000); });
    fmt::print("pair    {:6} runs at random, disorder {} {:10.2f}   {} pairs\n", runs, disorder,
               took, matching.pairs.size());
}

void benchInversePlan(double want_pct)
{
    int sequences = 0, possible = 0;
    const double took = best_ms([&] {
        sequences = possible = 0;
        for (unsigned length = 2; length <= 8; ++length)
            for (unsigned bits = 1; bits < 1U << (length - 1); ++bits) {
                core::PlanOptions options;
                options.sequence = "A";
                for (unsigned k = 0; k + 1 < length; ++k)
                    options.sequence += (bits >> k & 1U) != 0 ? 'B' : 'A';
                ++sequences;
                possible += core::planFor(core::logFromPct(want_pct), options) ? 1 : 0;
            }
    });
    fmt::print("plan    for {} %, {} sequences, {} of them possible {:10.2f}\n", want_pct,
               sequences, possible, took);
}

} // namespace

int main()
{
    benchAnalysis("ABABA", 4);
    benchAnalysis("ABABA", 100);
    benchAnalysis("ABABA", 1'000);
    for (const int disorder : {0, 1, 2})
        benchPairing(10'000, disorder);
    for (const double want_pct : {2.0, 0.5, 0.1, 0.01})
        benchInversePlan(want_pct);
}
