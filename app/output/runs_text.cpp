// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_text.h"

#include "app/output/text_layout.h"
#include "app/wording/alike_findings.h"
#include "app/wording/findings.h"
#include "app/wording/numbers.h"
#include "app/wording/runs.h"
#include "core/recording/trace_consumption.h"
#include "core/study/clock.h"

#include <fmt/format.h>

#include <map>

namespace bothways::app {
namespace {

std::string consumptionCell(const Language& in, const core::Run& run)
{
    if (!run.consumption)
        return "-";
    return fmt::format("{} {}",
                       fixed(in, run.consumption->value, core::shownDecimals(*run.consumption)),
                       wording::unitText(in, run.consumption->unit));
}

std::string stateCell(const Language& in, const core::Run& run)
{
    if (run.counted())
        return in.say("counted"_t);
    std::string text = in.say("discarded: {}"_t, wording::reasonWord(in, run.discard->reason));
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
    std::string text =
        odd.empty() ? std::string() : heading(in.say("To look at again"_t), Paint(colour));
    for (const core::OddRun& one : odd)
        text += wrapped("  - " + wording::oddRunSentence(in, one, study), 4) + "\n";
    return text;
}

std::string runsText(const Language& in, const core::Study& study, const core::Analysis& analysis,
                     const core::Screening& screening, bool colour)
{
    if (study.runs.empty())
        return in.say("No runs yet."_t) + "\n";
    const std::map<int, int> pairs = pairOfRun(analysis);
    TextTable table({in.say("run"_t), in.say("start"_t), in.say("configuration"_t),
                     in.say("setting"_t), in.say("direction"_t), in.say("consumption"_t),
                     in.say("pair"_t), in.say("state"_t)});
    std::string date;
    for (const core::Run& run : study.runs) {
        const std::string itsDate = core::formatDate(run.start);
        const std::string start =
            (itsDate == date ? std::string() : itsDate + " ") + core::formatTimeOfDay(run.start);
        date = itsDate;
        const auto pair = pairs.find(run.number);
        table.add({std::to_string(run.number), start, run.configuration, run.setting, run.direction,
                   consumptionCell(in, run),
                   pair == pairs.end() ? "-" : std::to_string(pair->second), stateCell(in, run)});
    }
    std::string text = table.text(0);
    if (!screening.findings.empty()) {
        text += heading(in.say("Findings"_t), Paint(colour));
        for (const wording::AlikeFindings& alike : wording::alikeFindings(in, screening.findings))
            text += wrapped(fmt::format("  - {} [{}]", alike.sentence(in),
                                        wording::gradeWord(in, alike.first->grade)),
                            4) +
                    "\n";
    }
    return text + oddRunsText(in, study, colour);
}

} // namespace bothways::app
