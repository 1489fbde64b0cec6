// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/screening.h"
#include "tests/bench/made_days.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <set>

// How good the screening rules are on recordings that nobody has seen: precision, recall and the
// errors of the spans, by rule, over made days with known faults and near misses.
//
//   screening_quality [DAYS [SEED [-v]]]      400 days, seed 1; -v lists what was missed or wrong
using namespace bothways;
using bench::MadeDay;
using bench::Planted;
using core::Finding;
using core::Rule;

namespace {

struct Score {
    int planted = 0, seen = 0, notChecked = 0; // events that were put in
    int named = 0, right = 0, implied = 0;     // findings
    int runsNamed = 0, runsRight = 0;          // runs
    int runsPlanted = 0, runsSeen = 0;
    std::vector<double> fromErrors_s, toErrors_s;
};

bool overlap(const Finding& finding, const Planted& planted, double slack_s)
{
    if (!planted.hasSpan || !finding.from_s)
        return true;
    return *finding.from_s <= planted.to_s + slack_s && *finding.to_s >= planted.from_s - slack_s;
}

std::string median(std::vector<double> values)
{
    if (values.empty())
        return "";
    std::sort(values.begin(), values.end());
    return fmt::format("{:.2f}", values[values.size() / 2]);
}

std::string share(int part, int whole)
{
    return whole > 0 ? fmt::format("{:.3f}", static_cast<double>(part) / whole) : "";
}

void tell(const char* what, std::uint64_t seed, double hz, Rule rule, int run, double from,
          double to, const std::string& detail = {})
{
    fmt::print("{} seed {} ({} Hz): {} run {}, {:.2f} to {:.2f} s {}\n", what, seed, hz,
               core::ruleName(rule), run, from, to, detail);
}

// Long: one day, fault by fault.
void scoreDay(std::uint64_t seed, std::map<Rule, Score>& scores, bool verbose)
{
    const MadeDay day = bench::madeDay(seed);
    const core::Screening screening = core::screen(day.study, [&](const core::Run& run) {
        return std::make_unique<core::MemoryTrace>(day.traces.at(run.number));
    });
    const double slack_s = 1.5 / day.rate_hz;
    std::vector<bool> seen(day.planted.size());
    std::map<Rule, std::set<int>> planted, named, excused;
    for (const Finding& finding : screening.findings) {
        bool right = false, implied = false;
        for (std::size_t k = 0; k < day.planted.size(); ++k) {
            const Planted& fault = day.planted[k];
            if (fault.run != finding.run || !overlap(finding, fault, slack_s))
                continue;
            if (fault.rule == finding.rule) {
                if (!seen[k] && fault.hasSpan && finding.from_s) {
                    Score& score = scores[finding.rule];
                    score.fromErrors_s.push_back(std::abs(*finding.from_s - fault.from_s));
                    score.toErrors_s.push_back(std::abs(*finding.to_s - fault.to_s));
                }
                seen[k] = right = true;
            }
            implied = implied || std::find(fault.implied.begin(), fault.implied.end(),
                                           finding.rule) != fault.implied.end();
        }
        Score& score = scores[finding.rule];
        if (!right && implied) {
            ++score.implied;
            excused[finding.rule].insert(finding.run);
            continue;
        }
        ++score.named;
        score.right += right ? 1 : 0;
        named[finding.rule].insert(finding.run);
        if (!right && verbose)
            tell("wrong ", seed, day.rate_hz, finding.rule, finding.run,
                 finding.from_s.value_or(-1), finding.to_s.value_or(-1), detailOf(finding));
    }
    for (std::size_t k = 0; k < day.planted.size(); ++k) {
        const Planted& fault = day.planted[k];
        Score& score = scores[fault.rule];
        const bool skipped =
            !seen[k] && std::any_of(screening.not_checked.begin(), screening.not_checked.end(),
                                    [&](const core::NotChecked& not_checked) {
                                        return not_checked.run == fault.run &&
                                               not_checked.rule == fault.rule;
                                    });
        score.notChecked += skipped ? 1 : 0;
        if (skipped)
            continue;
        ++score.planted;
        score.seen += seen[k] ? 1 : 0;
        planted[fault.rule].insert(fault.run);
        if (!seen[k] && verbose)
            tell("missed", seed, day.rate_hz, fault.rule, fault.run, fault.from_s, fault.to_s);
    }
    for (const Rule rule : core::allRules()) {
        Score& score = scores[rule];
        score.runsPlanted += static_cast<int>(planted[rule].size());
        score.runsNamed += static_cast<int>(named[rule].size());
        for (const int run : named[rule])
            score.runsRight += planted[rule].contains(run) ? 1 : 0;
        for (const int run : planted[rule])
            score.runsSeen += named[rule].contains(run) || excused[rule].contains(run) ? 1 : 0;
    }
}

} // namespace

int main(int argc, char** argv)
{
    const int days = argc > 1 ? std::atoi(argv[1]) : 400;
    const std::uint64_t seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1;
    std::map<Rule, Score> scores;
    for (int day = 0; day < days; ++day)
        scoreDay(seed + static_cast<std::uint64_t>(day), scores, argc > 3);
    fmt::print("{} days of 12 runs, seeds from {}\n\n", days, seed);
    fmt::print("| rule | planted | not checked | recall | precision | runs: recall | precision | "
               "from_s off by | to_s |\n|---|---|---|---|---|---|---|---|---|\n");
    for (const Rule rule : core::allRules()) {
        const Score& score = scores[rule];
        if (score.planted + score.named + score.notChecked == 0)
            continue;
        fmt::print("| `{}` | {} | {} | {} | {} | {} | {} | {} | {} |\n", core::ruleName(rule),
                   score.planted + score.notChecked, score.notChecked,
                   share(score.seen, score.planted), share(score.right, score.named),
                   share(score.runsSeen, score.runsPlanted),
                   share(score.runsRight, score.runsNamed), median(score.fromErrors_s),
                   median(score.toErrors_s));
    }
}
