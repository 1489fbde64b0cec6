// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/noise.h"

#include "app/answer/same_runs.h"
#include "app/cli/warnings.h"
#include "core/answer/analyse.h"
#include "core/effect/answer.h"
#include "core/planning/plan.h"

#include <CLI/CLI.hpp>

#include <utility>

namespace bothways::cli {

Result<std::vector<app::NoiseOfStudy>> noisesOf(const std::vector<Input>& inputs, bool mayBeTyped)
{
    std::vector<app::NoiseOfStudy> noises;
    for (const Input& input : inputs) {
        const core::Analysis analysis =
            core::analyse(input.study, core::AnalysisOptions::of(input.study.properties));
        auto noise = app::noiseOf(input.name(), analysis, input.path.string(), mayBeTyped);
        if (!noise)
            return noise.error();
        noises.push_back(std::move(noise).take());
    }
    return noises;
}

void addNoiseFrom(const Language& in, CLI::App& app, std::vector<std::string>& files)
{
    app.add_option("--noise-from", files,
                   in.say("A study or run sheet of this vehicle whose noise is borrowed; repeat "
                          "for more"_t))
        ->type_name(in.say("FILE"_t))
        ->allow_extra_args(false);
}

namespace {

Outcome borrowNoise(Input& input, const std::vector<std::string>& files, const Overrides& overrides,
                    const Surroundings& io)
{
    // Names and limits of one study are not those of another; only how times of day are read.
    Overrides forOthers;
    if (const auto date = overrides.given("date"))
        forOthers.properties.emplace_back("date", *date);
    std::vector<Input> others;
    std::string names;
    app::GivenRuns given; // a study has its own noise already
    core::Message remark;
    static_cast<void>(given.take(app::givenStudy(input), remark));
    for (const std::string& file : files) {
        auto other = readInput(file, forOthers, io);
        if (!other)
            return other.error();
        if (const Outcome once = given.take(app::givenStudy(other.value()), remark); !once)
            return once.error();
        if (!remark.empty())
            warn(io.language.say(std::exchange(remark, {})), io);
        names += (names.empty() ? "" : ", ") + other.value().name();
        others.push_back(std::move(other).take());
    }
    const auto noises = noisesOf(others, false);
    if (!noises)
        return noises.error();
    const core::Noise noise = app::pooledNoiseOf(noises.value());
    input.study.properties.noise = core::KnownNoise{100.0 * noise.s, noise.df};
    input.study.properties.noise_from = names;
    return Done{};
}

} // namespace

Result<Input> readWithNoiseFrom(const std::vector<std::string>& files, const std::string& asked,
                                const Overrides& overrides, const Surroundings& io)
{
    auto input = readInput(asked, overrides, io);
    if (!input || files.empty())
        return input;
    if (const Outcome borrowed = borrowNoise(input.value(), files, overrides, io); !borrowed)
        return borrowed.error();
    return input;
}

} // namespace bothways::cli
