// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/answer/answer.h"

#include "app/answer/looks.h"
#include "core/answer/analyse.h"
#include "core/answer/spoiled_runs.h"
#include "core/recording/trace_consumption.h"
#include "core/recording/unreadable_recording.h"
#include "core/screening/screening.h"
#include "storage/sheet/study_digest.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace bothways::app {
namespace {

bool isEnergy(const core::Consumption& consumption)
{
    return consumption.unit == core::ConsumptionUnit::kwhPer100km;
}

/// What each recording says that its run used, by the run's number.
std::map<int, core::Consumption> recordedConsumption(const Material& material,
                                                     const std::stop_token& stop)
{
    std::map<int, core::Consumption> recorded;
    if (!material.traces)
        return recorded;
    for (const core::Run& run : material.study.runs) {
        if (stop.stop_requested())
            break;
        const auto trace = material.traces(run);
        const auto consumption = trace ? core::consumptionFromTrace(run, *trace) : std::nullopt;
        if (consumption &&
            (!run.consumption || isEnergy(*run.consumption) == isEnergy(*consumption)))
            recorded[run.number] = *consumption;
    }
    return recorded;
}

std::vector<core::LeftOut> leftOut(const core::Study& study, const std::vector<int>& numbers)
{
    std::vector<core::LeftOut> runs;
    for (const core::Run& run : study.runs)
        if (std::find(numbers.begin(), numbers.end(), run.number) != numbers.end())
            runs.push_back({run.number, run.discard->reason});
    return runs;
}

void addRuns(std::vector<core::Note>& notes, core::NoteKind kind, const std::vector<int>& runs)
{
    if (runs.empty())
        return;
    const std::string numbers = fmt::format("{}", fmt::join(runs, ", "));
    notes.push_back({kind, runs.size() == 1 ? core::message("run {}"_t, numbers)
                                            : core::message("runs {}"_t, numbers)});
}

} // namespace

Material materialOf(core::Study study, std::vector<storage::Overruled> overruled,
                    const std::vector<storage::HistoryEntry>& history)
{
    Material material;
    material.looked_at_pairs = pairsLookedAt(history);
    material.plan_record = planRecordOf(history, study.properties);
    material.study = std::move(study);
    material.overruled = std::move(overruled);
    return material;
}

core::Outcome takeRecordedConsumption(Material& material)
{
    if (material.filled)
        return core::Done{};
    const auto filled = core::readingRecordings(
        [&] { return core::takeConsumptionFromTraces(material.study, material.traces); });
    if (!filled)
        return filled.error();
    material.filled = true;
    addRuns(material.notes, core::NoteKind::consumptionFromTrace, filled.value().taken);
    addRuns(material.notes, core::NoteKind::consumptionLacking, filled.value().lacking);
    return core::Done{};
}

namespace {

/// Throws where a recording cannot be read.
core::Result<std::shared_ptr<const ResultSet>> answerFrom(Material material,
                                                          const AnswerOptions& options)
{
    const core::Error stopped{core::ErrorCode::stopped, "stopped before the end"_t, {}};
    auto set = std::make_shared<ResultSet>();
    set->sha256 = material.sha256.empty() ? storage::sha256OfStudy(material.study)
                                          : std::move(material.sha256);
    if (options.recorded)
        set->recorded = recordedConsumption(material, options.stop);
    if (const core::Outcome taken = takeRecordedConsumption(material); !taken)
        return taken.error();
    set->screening = core::screen(material.study, material.traces, options.progress, options.stop);
    if (options.stop.stop_requested())
        return stopped;
    const core::Screening standing = storage::withoutOverruled(set->screening, material.overruled);
    if (options.apply_screening)
        material.notes.push_back(
            {core::NoteKind::discardedByScreening,
             {},
             leftOut(material.study, core::applyScreening(material.study, standing))});
    core::AnalysisOptions asked = options.analysis;
    asked.looked_at_pairs = material.looked_at_pairs;
    asked.plan_record = material.plan_record;
    set->analysis = core::analyse(material.study, asked);
    set->analysis.notes.insert(set->analysis.notes.begin(), material.notes.begin(),
                               material.notes.end());
    set->spoiled = core::spoiledButCounted(set->analysis, standing);
    set->odd = core::oddRuns(material.study);
    set->study = std::move(material.study);
    return std::shared_ptr<const ResultSet>(std::move(set));
}

} // namespace

core::Result<std::shared_ptr<const ResultSet>> answer(Material material,
                                                      const AnswerOptions& options)
{
    auto made = core::readingRecordings([&] { return answerFrom(std::move(material), options); });
    return made ? std::move(made).take() : made.error();
}

} // namespace bothways::app
