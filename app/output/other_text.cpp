// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_text.h"

#include "app/output/text_layout.h"
#include "app/wording/alike_findings.h"
#include "app/wording/findings.h"
#include "app/wording/ledger.h"
#include "app/wording/numbers.h"
#include "app/wording/plan.h"
#include "app/wording/pooled.h"
#include "app/wording/runs.h"
#include "app/wording/units.h"
#include "app/wording/verdict.h"
#include "core/study/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

namespace bothways::app {
namespace {

using core::pctFromLog;

std::string sized(const Language& in, double log)
{
    return in.say("{} %"_t, significant(in, pctFromLog(log), 3));
}

/// What was not checked, a line for each rule and reason with the runs that it concerns. A rule
/// keeps its name of the files here: it is what 'discard', 'overrule' and limits are given.
std::string notCheckedText(const Language& in, const core::Screening& screening)
{
    std::map<std::tuple<core::Rule, std::string>, std::vector<int>> runs;
    std::set<int> all;
    for (const core::NotChecked& notChecked : screening.not_checked) {
        runs[{notChecked.rule, wording::whyNotChecked(in, notChecked)}].push_back(notChecked.run);
        all.insert(notChecked.run);
    }
    std::string text;
    for (const auto& [what, numbers] : runs) {
        const std::string whom =
            numbers.size() == all.size() && numbers.size() > 1
                ? std::string()
                : in.say(", {}##the runs that it concerns"_t, wording::runsWords(in, numbers));
        text += wrapped(fmt::format("  {:<18}{}{}", core::ruleName(std::get<0>(what)),
                                    std::get<1>(what), whom),
                        20) +
                "\n";
    }
    return text;
}

std::string rangeText(const Language& in, const core::Range& range, int decimals)
{
    return fmt::format("{} / {} / {}", fixed(in, range.low, decimals),
                       fixed(in, range.middle, decimals), fixed(in, range.high, decimals));
}

std::string findingLine(const Language& in, const wording::AlikeFindings& alike, const Paint& paint)
{
    const core::Finding& finding = *alike.first;
    std::size_t width = 0;
    for (const core::Grade grade : {core::Grade::note, core::Grade::doubtful, core::Grade::spoils})
        width = std::max(width, columnsOf(wording::gradeWord(in, grade)) + 1);
    const std::string grade = padded(wording::gradeWord(in, finding.grade), width);
    std::string line = wrapped(
        fmt::format("{}{} ({})", grade, alike.sentence(in), core::ruleName(finding.rule)), width);
    if (finding.grade == core::Grade::spoils)
        line.replace(0, grade.size(), paint.alarm(grade));
    return line + "\n";
}

std::string paragraph(const std::string& sentence)
{
    return sentence.empty() ? sentence : wrapped("  " + sentence, 2) + "\n";
}

} // namespace

std::string screeningText(const Language& in, const core::Screening& screening, bool colour,
                          const core::Study& study)
{
    const Paint paint(colour);
    std::vector<core::Finding> open, settled;
    for (const core::Finding& finding : screening.findings) {
        const auto run =
            std::find_if(study.runs.begin(), study.runs.end(),
                         [&](const core::Run& one) { return one.number == finding.run; });
        const bool discarded = run != study.runs.end() && !run->counted();
        (discarded ? settled : open).push_back(finding);
    }
    const auto lines = [&](const std::vector<core::Finding>& findings) {
        std::string all;
        for (const wording::AlikeFindings& alike : wording::alikeFindings(in, findings))
            all += findingLine(in, alike, paint);
        return all;
    };
    std::string text = lines(open);
    if (screening.findings.empty())
        text = in.say("Nothing was found in what could be checked."_t) + "\n";
    else if (open.empty())
        text = in.say("Nothing was found on a run that counts, in what could be checked."_t) + "\n";
    if (!settled.empty())
        text += heading(in.say("On runs that are discarded already: {}"_t,
                               counted(in, static_cast<long long>(settled.size()), "finding"_t,
                                       "findings"_t)),
                        paint) +
                lines(settled);
    if (screening.pattern)
        text += "\n" + wrapped(wording::patternSentence(in, *screening.pattern), 0) + "\n";
    for (const core::OverspeedPattern& pattern : screening.part_patterns)
        text += "\n" + wrapped(wording::patternSentence(in, pattern), 0) + "\n";
    if (!screening.not_checked.empty())
        text += heading(in.say("Not checked (which is not the same as passed)"_t), paint) +
                notCheckedText(in, screening);
    return text;
}

std::string planText(const Language& in, const core::Plan& plan,
                     std::span<const NoiseOfStudy> noises)
{
    std::string text =
        wording::planSentence(in, plan, in.say("{} km"_t, grouped(in, plan.distance_km))) + "\n";
    const auto line = [&](const std::string& what, const std::string& value) {
        text += "  " + padded(what, 24) + value + "\n";
    };
    line(in.say("one pair scatters by"_t),
         in.say("{} %"_t, significant(in, 100.0 * plan.options.s, 3)));
    for (const NoiseOfStudy& study : noises)
        line("  " + in.say(noises.size() == 1 ? "as in"_t : "pooled from"_t),
             in.say("{}: {} % ({} degrees of freedom)"_t, study.name,
                    significant(in, 100.0 * study.noise.s, 3), shortest(in, study.noise.df)));
    line(in.say("{} interval"_t, intervalPercent(in, plan.options.confidence)),
         in.say("plus or minus {}"_t, sized(in, plan.half_width_log)));
    if (plan.curved_half_width_log)
        line(in.say("  if the drift bends"_t),
             in.say("plus or minus {}"_t, sized(in, *plan.curved_half_width_log)));
    if (plan.any_look_half_width_log)
        line(in.say("  if you look as you go"_t),
             in.say("plus or minus {}"_t, sized(in, *plan.any_look_half_width_log)));
    if (plan.borrowed_half_width_log && !noises.empty())
        line(in.say("  with that noise known"_t),
             in.say("plus or minus {}"_t, sized(in, *plan.borrowed_half_width_log)));
    line(in.say("found {} times in 100"_t, shortest(in, 100.0 * plan.options.power)),
         in.say("an effect of {} or more"_t, sized(in, plan.detectable_log)));
    return text + paragraph(wording::uncertainNoise(in, plan)) +
           paragraph(wording::planCaution(in, plan.sequence));
}

std::string plansText(const Language& in, std::span<const core::Plan> plans,
                      std::span<const core::SequenceWeakness> weakness)
{
    std::vector<std::string> heads = {in.say("sequence"_t), in.say("pairs"_t), in.say("hours"_t),
                                      "km", in.say("finds"_t)};
    for (std::string& head : wording::weaknessHeads(in))
        heads.push_back(std::move(head));
    TextTable table(std::move(heads));
    for (std::size_t i = 0; i < plans.size() && i < weakness.size(); ++i) {
        const core::Plan& plan = plans[i];
        std::vector<std::string> row = {plan.sequence, in.say("{} a block"_t, plan.pairs_per_block),
                                        fixed(in, plan.road_hours, 1),
                                        grouped(in, plan.distance_km),
                                        sized(in, plan.detectable_log)};
        for (const double coverage : weakness[i].coverage)
            row.push_back(in.say("{} %"_t, fixed(in, 100.0 * coverage, 0)));
        table.add(std::move(row));
    }
    std::vector<std::string> widthHeads = wording::planWidthHeads(in);
    widthHeads.insert(widthHeads.begin(), in.say("sequence"_t));
    TextTable widths(std::move(widthHeads));
    for (const core::Plan& plan : plans) {
        const wording::PlanWidths width = wording::planWidths(in, plan);
        widths.add({plan.sequence, width.straight, width.curved, width.any_look});
    }
    return table.text(0) + "\n" + wrapped(wording::weaknessExplained(in), 0) + "\n\n" +
           widths.text(0) + "\n" + wrapped(wording::planWidthsExplained(in), 0) + "\n";
}

std::string ledgerText(const Language& in, const core::Ledger& ledger,
                       std::optional<double> watts_to_see)
{
    const core::Fuel fuel = ledger.options.fuel;
    TextTable table({wording::ledgerUnit(in, fuel), in.say("low / middle / high"_t)});
    for (const wording::LedgerRow& row : wording::ledgerRows(in, ledger))
        table.add({row.name, rangeText(in, row.range, row.decimals)});
    std::string text = in.say("What {} W at {} km/h should change, from first principles (not from "
                              "runs):"_t,
                              grouped(in, ledger.options.output_w),
                              shortest(in, std::round(10.0 * ledger.options.speed_kmh) / 10.0)) +
                       "\n";
    text += table.text();
    text += paragraph(wording::ledgerExplained(in, fuel));
    if (watts_to_see)
        text += "  " +
                in.say("To be seen by the study it would have to deliver {} W."_t,
                       significant(in, *watts_to_see)) +
                "\n";
    return text;
}

std::pair<std::string, std::string> consumptionsOf(const Language& in, const StudyRow& study,
                                                   wording::ShownUnit unit)
{
    if (!study.effect || !study.baseline_l_per_100km)
        return {"-", "-"};
    const auto shown = [&](double l_per_100km) {
        return fmt::format("{} {}",
                           wording::consumptionText(in, l_per_100km, unit, 2, study.electric),
                           wording::unitText(in, unit, study.electric));
    };
    return {shown(*study.baseline_l_per_100km),
            shown(*study.baseline_l_per_100km * std::exp(study.effect->effect_log))};
}

std::string pooledText(const Language& in, const Several& together, wording::ShownUnit unit)
{
    const std::optional<core::Pooled>& pooled = together.pooled;
    TextTable table({in.say("study"_t), in.say("effect"_t), in.say("standard error"_t),
                     in.say("df##degrees of freedom"_t), in.say("without##the device"_t),
                     in.say("with##the device"_t), in.say("says##verdict"_t)});
    for (const StudyRow& row : together.studies) {
        const auto [without, with] = consumptionsOf(in, row, unit);
        if (!row.effect) {
            table.add({row.name, "-", "-", "-", without, with, wording::classWords(in, row.cls)});
            continue;
        }
        const int decimals = decimalsFor(100.0 * row.effect->se_log);
        table.add({row.name, change(in, pctFromLog(row.effect->effect_log), decimals),
                   in.say("{} %"_t, fixed(in, 100.0 * row.effect->se_log, decimals)),
                   shortest(in, row.effect->df), without, with, wording::classWords(in, row.cls)});
    }
    std::string text = table.text(0);
    text += "\n" + wrapped(wording::pooledSentence(in, pooled, together.confidence), 0) + "\n";
    if (pooled)
        text +=
            wrapped(wording::pooledVerdict(in, pooled, together.confidence, together.margin_pct),
                    0) +
            "\n";
    if (pooled)
        text += wrapped(wording::pooledCaution(in, pooled), 0) + "\n";
    return text;
}

} // namespace bothways::app
