// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_text.h"

#include "app/output/text_layout.h"
#include "app/wording/findings.h"
#include "app/wording/numbers.h"
#include "app/wording/runs.h"
#include "core/recording/trace_consumption.h"
#include "core/study/clock.h"

#include <fmt/format.h>

#include <map>

namespace bothways::app {
namespace {

std::string unitWords(core::ConsumptionUnit unit)
{
    switch (unit) {
    case core::ConsumptionUnit::lPer100km: return "L/100 km";
    case core::ConsumptionUnit::mpgUs: return "mpg (US)";
    case core::ConsumptionUnit::mpgImp: return "mpg (imperial)";
    case core::ConsumptionUnit::kmPerL: return "km/L";
    case core::ConsumptionUnit::kwhPer100km: return "kWh/100 km";
    case core::ConsumptionUnit::fuelL: return "L";
    case core::ConsumptionUnit::fuelGalUs: return "gal (US)";
    }
    return {};
}

std::string consumptionCell(const core::Run& run)
{
    if (!run.consumption)
        return "-";
    return fmt::format("{} {}",
                       fixed(run.consumption->value, core::shownDecimals(*run.consumption)),
                       unitWords(run.consumption->unit));
}

std::string stateCell(const core::Run& run)
{
    if (run.counted())
        return "counted";
    std::string text = "discarded: " + run.discard->reason;
    if (!run.discard->evidence.empty())
        text += ", " + run.discard->evidence;
    return text;
}

std::map<int, int> pairOfRun(const core::Analysis& analysis)
{
    std::map<int, int> pairs;
    for (const core::Pair& pair : analysis.pairs) {
        pairs[pair.out_run] = pair.number;
        pairs[pair.return_run] = pair.number;
    }
    return pairs;
}

} // namespace

std::string oddRunsText(const Language& in, const core::Study& study, bool colour)
{
    const auto odd = core::oddRuns(study);
    std::string text = odd.empty() ? std::string() : heading("To look at again", Paint(colour));
    for (const core::OddRun& one : odd)
        text +=
            wrapped("  - " + wording::oddRunSentence(Language::english(), one, study), 4) + "\n";
    return text;
}

std::string runsText(const Language& in, const core::Study& study, const core::Analysis& analysis,
                     const core::Screening& screening, bool colour)
{
    if (study.runs.empty())
        return "No runs yet.\n";
    const std::map<int, int> pairs = pairOfRun(analysis);
    TextTable table(
        {"run", "start", "configuration", "setting", "direction", "consumption", "pair", "state"});
    std::string date;
    for (const core::Run& run : study.runs) {
        const std::string itsDate = core::formatDate(run.start);
        const std::string start =
            (itsDate == date ? std::string() : itsDate + " ") + core::formatTimeOfDay(run.start);
        date = itsDate;
        const auto pair = pairs.find(run.number);
        table.add({std::to_string(run.number), start, run.configuration, run.setting, run.direction,
                   consumptionCell(run), pair == pairs.end() ? "-" : std::to_string(pair->second),
                   stateCell(run)});
    }
    std::string text = table.text(0);
    if (!screening.findings.empty()) {
        text += heading("Findings", Paint(colour));
        for (const core::Finding& finding : screening.findings)
            text += wrapped(fmt::format("  - {} [{}]",
                                        wording::findingSentence(Language::english(), finding),
                                        core::gradeName(finding.grade)),
                            4) +
                    "\n";
    }
    return text + oddRunsText(in, study, colour);
}

} // namespace bothways::app
