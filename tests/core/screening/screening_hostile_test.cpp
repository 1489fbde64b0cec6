// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/trace_totals.h"
#include "core/screening/screening.h"
#include "tests/core/recording/trace_builders.h"
#include "tests/core/screening/screening_builders.h"

#include <gtest/gtest.h>

#include <limits>
#include <random>

using namespace bothways;
using namespace bothways::core;
using namespace bothways::core::tests;

// Whatever a logger wrote: an answer, finite numbers, spans inside the run, in order.

namespace {

constexpr double kOdd[] = {0.0,
                           -0.0,
                           1.0,
                           -1.0,
                           1e308,
                           -1e308,
                           5e-324,
                           1e-300,
                           std::numeric_limits<double>::infinity(),
                           -std::numeric_limits<double>::infinity(),
                           std::numeric_limits<double>::quiet_NaN()};

Samples oddSamples(std::mt19937& random)
{
    Samples samples;
    std::vector<double> times;
    double time_s = -static_cast<double>(random() % 30);
    const std::size_t count = random() % 4 == 0 ? random() % 4 : random() % 400;
    for (std::size_t i = 0; i < count; ++i) {
        time_s += random() % 9 == 0 ? 12.0 * std::ldexp(random(), -32) : 0.1;
        times.push_back(time_s);
        const bool odd = random() % 3 == 0;
        samples.value.push_back(odd ? kOdd[random() % std::size(kOdd)]
                                    : 3000.0 * std::ldexp(random(), -32));
    }
    samples.time_s = SampleTimes(std::move(times));
    return samples;
}

MemoryTrace oddTrace(std::mt19937& random)
{
    MemoryTrace trace;
    for (const std::string& name : aHealthyTrace(1.0).names())
        if (random() % 5 != 0)
            trace.add(name, "", oddSamples(random));
    for (const char* name : {"lat_deg", "lon_deg", "fuel_used_l", "own"})
        if (random() % 2 == 0)
            trace.add(name, "", oddSamples(random));
    trace.addMark(20.0 * std::ldexp(random(), -32), random() % 2 ? "adjusted" : "  ");
    return trace;
}

} // namespace

TEST(ScreeningHostile, EveryRecordingGetsAFiniteAnswer)
{
    std::mt19937 random(20261125);
    for (int repeat = 0; repeat < 300; ++repeat) {
        std::vector<core::Run> runs;
        std::vector<MemoryTrace> traces;
        for (int number = 1; number <= 3; ++number) {
            core::Run run = aRun(number);
            run.configuration = random() % 2 ? "A" : "B";
            run.consumption->from_trace = random() % 2;
            run.duration_s = random() % 3 == 0 ? std::nullopt : std::optional(25.0);
            runs.push_back(run);
            traces.push_back(oddTrace(random));
        }
        const Study study = studyOf(runs, allLimitsSet());
        const Screening screening = screen(study, [&](const core::Run& run) {
            return std::make_unique<MemoryTrace>(traces[static_cast<std::size_t>(run.number - 1)]);
        });
        for (const Finding& finding : screening.findings) {
            EXPECT_TRUE(std::isfinite(finding.value.value_or(0.0))) << ruleName(finding.rule);
            EXPECT_TRUE(std::isfinite(finding.limit.value_or(0.0))) << ruleName(finding.rule);
            EXPECT_TRUE(std::isfinite(finding.output_w.value_or(0.0)));
            EXPECT_GE(finding.from_s.value_or(0.0), 0.0) << ruleName(finding.rule);
            EXPECT_GE(finding.to_s.value_or(0.0), finding.from_s.value_or(0.0));
            if (study.runs[static_cast<std::size_t>(finding.run - 1)].duration_s) {
                EXPECT_LE(finding.to_s.value_or(0.0), 25.0 + 1e-6) << ruleName(finding.rule);
            }
        }
        for (const MemoryTrace& trace : traces) {
            const auto fuel = fuelFromTrace(trace, 25.0);
            EXPECT_TRUE(!fuel || std::isfinite(fuel->fuel_l));
            EXPECT_TRUE(std::isfinite(distanceFromTrace_km(trace, 25.0).value_or(0.0)));
        }
    }
}

TEST(ScreeningHostile, AnEmptyStudyHasNoFindings)
{
    EXPECT_TRUE(screen(Study{}).findings.empty());
    EXPECT_TRUE(screen(Study{}, [](const core::Run&) { return nullptr; }).not_checked.empty());
}
