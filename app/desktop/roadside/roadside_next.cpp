// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/roadside/roadside_next.h"

#include "app/desktop/document/run_draft.h"
#include "core/effect/prepared_study.h"
#include "core/effect/verdict.h"

#include <algorithm>
#include <array>
#include <vector>

namespace bothways::app {
namespace {

/// Consecutive pairs in one configuration, planned or driven.
struct Stage {
    bool device = false;
    int pairs = 0;
};

std::vector<Stage> stagesOf(const core::PlannedStudy& plan)
{
    std::vector<Stage> stages;
    for (const char letter : plan.sequence) {
        const bool device = letter == 'B' || letter == 'b';
        if (stages.empty() || stages.back().device != device)
            stages.push_back({device, 0});
        stages.back().pairs += plan.pairs_per_block;
    }
    return stages;
}

/// The last block counts though all of its runs were discarded: that is where the vehicle is now.
std::vector<Stage> stagesOf(const core::PreparedStudy& driven)
{
    std::vector<Stage> stages;
    for (const core::Block& block : driven.blocks) {
        if (block.runs == 0 && block.block != driven.blocks.back().block)
            continue;
        if (stages.empty() || stages.back().device != block.device)
            stages.push_back({block.device, 0});
        stages.back().pairs += block.pairs;
    }
    return stages;
}

bool isUsable(const std::optional<core::PlannedStudy>& plan)
{
    return plan && !plan->sequence.empty() && plan->pairs_per_block > 0;
}

bool startsWith(const std::vector<Stage>& planned, const std::vector<Stage>& driven)
{
    if (driven.size() > planned.size())
        return false;
    for (std::size_t i = 0; i < driven.size(); ++i)
        if (driven[i].device != planned[i].device)
            return false;
    return true;
}

/// The setting that the configuration was last driven with.
std::string settingOf(const core::Study& study, const std::string& configuration)
{
    for (auto run = study.runs.rbegin(); run != study.runs.rend(); ++run)
        if (core::sameWord(run->configuration, configuration))
            return run->setting;
    return {};
}

core::PreparedStudy prepared(const core::Study& study)
{
    return core::prepareStudy(study, core::AnalysisOptions::of(study.properties));
}

void followPlan(const core::Study& study, const core::PreparedStudy& driven, UpNext& next)
{
    const core::PlannedStudy& plan = *study.properties.plan;
    const std::vector<Stage> planned = stagesOf(plan);
    const std::vector<Stage> done = stagesOf(driven);
    if (core::fulfils(plan, driven.design_blocks)) {
        next.because = UpNext::Because::planDone;
        return;
    }
    if (!startsWith(planned, done)) {
        next.because = UpNext::Because::offThePlan;
        return;
    }
    next.because = UpNext::Because::plan;
    next.planned_blocks = static_cast<int>(planned.size());
    std::size_t stage = done.empty() ? 0 : done.size() - 1;
    const bool atTheStart = study.runs.empty() || !core::sameWord(study.runs.back().direction,
                                                                  core::directions(study).front());
    if (!done.empty() && done[stage].pairs >= planned[stage].pairs && atTheStart &&
        stage + 1 < planned.size())
        ++stage;
    next.block = static_cast<int>(stage) + 1;
    next.planned_pairs_in_block = planned[stage].pairs;
    next.pairs_in_block = stage < done.size() ? done[stage].pairs : 0;
    next.device = planned[stage].device;
    next.configuration = next.device ? deviceName(study) : baselineToDrive(study);
}

} // namespace

std::string baselineToDrive(const core::Study& study)
{
    const std::string name = core::baselineName(study);
    return name.empty() ? "A" : name;
}

std::string deviceName(const core::Study& study)
{
    std::string baseline = core::baselineName(study);
    for (const std::string& name : core::configurations(study))
        if (!core::sameWord(name, baseline))
            return name;
    constexpr std::array<std::pair<const char*, const char*>, 3> kOpposites{
        {{"off", "on"}, {"without", "with"}, {"B", "A"}}};
    for (const auto& [one, other] : kOpposites)
        if (core::sameWord(baseline, one))
            return other;
    return "B";
}

UpNext upNext(const core::Study& study)
{
    const core::Run usual = nextRun(study, QDateTime());
    UpNext next;
    next.configuration = usual.configuration;
    next.direction = usual.direction;
    for (const core::Run& run : study.runs)
        next.number = std::max(next.number, run.number + 1);
    const core::PreparedStudy driven = prepared(study);
    if (!driven.blocks.empty()) {
        next.block = static_cast<int>(driven.blocks.size());
        next.pairs_in_block = driven.blocks.back().pairs;
    }
    if (isUsable(study.properties.plan))
        followPlan(study, driven, next);
    const std::string baseline = core::baselineName(study);
    next.device = !baseline.empty() && !core::sameWord(next.configuration, baseline);
    next.switchFirst =
        !study.runs.empty() && !core::sameWord(next.configuration, study.runs.back().configuration);
    next.setting = settingOf(study, next.configuration);
    return next;
}

PairTally pairTally(const core::Study& study)
{
    PairTally tally;
    tally.done = static_cast<int>(prepared(study).pairs.size());
    if (isUsable(study.properties.plan))
        tally.planned = static_cast<int>(study.properties.plan->sequence.size()) *
                        study.properties.plan->pairs_per_block;
    return tally;
}

std::optional<double> expectedDuration_s(const core::Study& study)
{
    const core::Limits& limits = study.properties.limits;
    const auto km = limits.find("stretch.km");
    const auto kmh = limits.find("road_speed.target_kmh");
    if (km != limits.end() && kmh != limits.end() && km->second > 0.0 && kmh->second > 0.0)
        return 3600.0 * km->second / kmh->second;
    std::vector<double> durations_s;
    for (const core::Run& run : study.runs)
        if (const auto duration_s = core::duration_s(run); duration_s && run.counted())
            durations_s.push_back(*duration_s);
    if (durations_s.size() < 2)
        return std::nullopt;
    const auto middle = durations_s.begin() + static_cast<std::ptrdiff_t>(durations_s.size() / 2);
    std::nth_element(durations_s.begin(), middle, durations_s.end());
    return *middle;
}

} // namespace bothways::app
