// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/live/next_run.h"

#include "core/effect/prepared_study.h"
#include "core/effect/verdict.h"

#include <algorithm>
#include <array>
#include <optional>
#include <span>
#include <vector>

namespace bothways::app {
namespace {

constexpr std::array<std::pair<const char*, const char*>, 7> kWaysBack{{{"out", "return"},
                                                                        {"out", "back"},
                                                                        {"east", "west"},
                                                                        {"north", "south"},
                                                                        {"up", "down"},
                                                                        {"there", "back"},
                                                                        {"hin", "zurück"}}};

std::string otherDirection(const core::Study& study, const std::string& last,
                           const UsualDirections& usual)
{
    for (const std::string& known : core::directions(study))
        if (!core::sameWord(known, last))
            return known;
    return wayBack(last, usual);
}

/// Of the plan: letters alike that follow one another, with the first at `from`.
struct Stretch {
    std::size_t letters = 0;
    int pairs = 0;
};

Stretch alikeFrom(const core::PlannedStudy& plan, std::size_t from)
{
    Stretch stretch;
    while (from + stretch.letters < plan.sequence.size() &&
           core::isDeviceLetter(plan, from + stretch.letters) == core::isDeviceLetter(plan, from))
        ++stretch.letters;
    stretch.pairs = static_cast<int>(stretch.letters) * plan.pairs_per_block;
    return stretch;
}

/// Of the planned block that the letter belongs to, from 1; equal letters are one block.
int blockOfLetter(const core::PlannedStudy& plan, std::size_t letter)
{
    int block = 1;
    for (std::size_t i = 1; i <= letter; ++i)
        block += core::isDeviceLetter(plan, i) != core::isDeviceLetter(plan, i - 1) ? 1 : 0;
    return block;
}

/// Where in the plan the vehicle is: at a letter, with so many pairs done of what begins there.
struct PlaceInPlan {
    std::size_t letter = 0;
    int pairs = 0;
};

/// The last block counts though all of its runs were discarded: that is where the vehicle is now.
/// Nothing: the blocks are not those of the plan.
std::optional<PlaceInPlan> placeIn(const core::PlannedStudy& plan,
                                   const core::PreparedStudy& driven)
{
    if (driven.blocks.empty())
        return PlaceInPlan{};
    const core::Block& now = driven.blocks.back();
    std::span<const core::DesignBlock> before = driven.design_blocks;
    PlaceInPlan place;
    if (!before.empty() && before.back().device == now.device && before.back().day == now.day) {
        place.pairs = static_cast<int>(before.back().pairs.size());
        before = before.first(before.size() - 1);
    }
    const std::vector<bool> reached = core::lettersDriven(plan, before);
    for (std::size_t letter = plan.sequence.size(); letter-- > 0;)
        if (reached[letter] && core::isDeviceLetter(plan, letter) == now.device) {
            place.letter = letter;
            return place;
        }
    return std::nullopt;
}

bool isUsable(const std::optional<core::PlannedStudy>& plan)
{
    return plan && !plan->sequence.empty() && plan->pairs_per_block > 0;
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
    if (core::fulfils(plan, driven.design_blocks)) {
        next.because = UpNext::Because::planDone;
        return;
    }
    auto place = placeIn(plan, driven);
    if (!place) {
        next.because = UpNext::Because::offThePlan;
        return;
    }
    const bool atTheStart = study.runs.empty() || !core::sameWord(study.runs.back().direction,
                                                                  core::directions(study).front());
    const Stretch here = alikeFrom(plan, place->letter);
    if (place->pairs >= here.pairs && atTheStart &&
        place->letter + here.letters < plan.sequence.size())
        place = PlaceInPlan{place->letter + here.letters, 0};
    next.because = UpNext::Because::plan;
    next.planned_blocks = blockOfLetter(plan, plan.sequence.size() - 1);
    next.block = blockOfLetter(plan, place->letter);
    next.planned_pairs_in_block = alikeFrom(plan, place->letter).pairs;
    next.pairs_in_block = place->pairs;
    next.device = core::isDeviceLetter(plan, place->letter);
    next.configuration = next.device ? deviceName(study) : baselineToDrive(study);
}

/// What out and back are called in the study. The first run may have been one back.
UsualDirections waysOf(const core::Study& study, const UsualDirections& usual)
{
    const auto known = core::directions(study);
    if (known.empty())
        return usual;
    const std::string& first = known.front();
    std::string other = known.size() > 1 ? known[1] : wayBack(first, usual);
    if (other.empty())
        other = usual[1];
    const auto isFirst = [&](std::string_view word) { return core::sameWord(first, word); };
    const bool isBack = isFirst(usual[1]) || isFirst("return") || isFirst("back");
    return isBack ? UsualDirections{other, first} : UsualDirections{first, other};
}

} // namespace

BegunAs begunAs(const core::FoundBound& found, const core::Study& study,
                const UsualDirections& usual)
{
    BegunAs begun;
    begun.direction = found.direction;
    if (found.outward)
        begun.direction = waysOf(study, usual)[*found.outward ? 0 : 1];
    auto ours = core::configurations(study);
    ours.push_back(baselineToDrive(study)); // of a study without runs
    ours.push_back(deviceName(study));
    for (const std::string& word : found.words) {
        for (const std::string& direction : usual) // a study without runs has none of its own
            if (begun.direction.empty() && core::sameWord(word, direction))
                begun.direction = direction;
        for (const std::string& own : ours)
            if (core::sameWord(word, own))
                begun.configuration = own;
    }
    return begun;
}

std::string wayBack(const std::string& direction, const UsualDirections& usual)
{
    for (const std::size_t way : {0U, 1U})
        if (core::sameWord(direction, usual[way]))
            return usual[1 - way];
    for (const auto& [one, other] : kWaysBack) {
        if (core::sameWord(direction, one))
            return other;
        if (core::sameWord(direction, other))
            return one;
    }
    return {};
}

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

core::Run runAfterLast(const core::Study& study, const UsualDirections& usual)
{
    core::Run next;
    if (study.runs.empty()) {
        next.configuration = study.properties.baseline.empty() ? "A" : study.properties.baseline;
        next.direction =
            core::directions(study).empty() ? usual[0] : core::directions(study).front();
        return next;
    }
    const core::Run& last = study.runs.back();
    next.configuration = last.configuration;
    next.setting = last.setting;
    next.direction = otherDirection(study, last.direction, usual);
    return next;
}

int nextNumber(const core::Study& study)
{
    int next = 1;
    for (const core::Run& run : study.runs)
        next = std::max(next, run.number + 1);
    return next;
}

UpNext upNext(const core::Study& study, const UsualDirections& directions)
{
    const core::Run usual = runAfterLast(study, directions);
    UpNext next;
    next.configuration = usual.configuration;
    next.direction = usual.direction;
    next.number = nextNumber(study);
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

bool beginsBlock(const core::Study& study, std::string_view configuration, core::Instant now)
{
    return core::beginsBlock(study.runs.empty() ? nullptr : &study.runs.back(), configuration, now);
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
