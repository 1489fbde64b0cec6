// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_text.h"

#include "app/output/text_layout.h"
#include "app/wording/findings.h"
#include "app/wording/numbers.h"
#include "app/wording/verdict.h"
#include "core/study/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace bothways::app {
namespace {

using core::pctFromLog;

std::string sized(double log)
{
    return significant(pctFromLog(log), 3) + " %";
}

/// What was not checked, a line for each rule and reason with the runs that it concerns.
std::string notCheckedText(const core::Screening& screening)
{
    std::map<std::tuple<core::Rule, std::string>, std::vector<int>> runs;
    std::set<int> all;
    for (const core::NotChecked& notChecked : screening.not_checked) {
        runs[{notChecked.rule, wording::whyNotChecked(Language::english(), notChecked)}].push_back(
            notChecked.run);
        all.insert(notChecked.run);
    }
    std::string text;
    for (const auto& [what, numbers] : runs) {
        const std::string whom = numbers.size() == all.size() && numbers.size() > 1
                                     ? std::string()
                                     : fmt::format(", run {}", fmt::join(numbers, ", "));
        text += wrapped(fmt::format("  {:<18}{}{}", core::ruleName(std::get<0>(what)),
                                    std::get<1>(what), whom),
                        20) +
                "\n";
    }
    return text;
}

std::string rangeText(const core::Range& range, int decimals)
{
    return fmt::format("{} / {} / {}", fixed(range.low, decimals), fixed(range.middle, decimals),
                       fixed(range.high, decimals));
}

std::string findingLine(const core::Finding& finding, const Paint& paint)
{
    const std::string grade = fmt::format("{:<9}", core::gradeName(finding.grade));
    std::string line = wrapped(fmt::format("{}{} ({})", grade,
                                           wording::findingSentence(Language::english(), finding),
                                           core::ruleName(finding.rule)),
                               9);
    if (finding.grade == core::Grade::spoils)
        line.replace(0, grade.size(), paint.alarm(grade));
    return line + "\n";
}

} // namespace

std::string screeningText(const Language& in, const core::Screening& screening, bool colour,
                          const core::Study& study)
{
    const Paint paint(colour);
    std::string open, settled;
    long long settledCount = 0;
    for (const core::Finding& finding : screening.findings) {
        const auto run =
            std::find_if(study.runs.begin(), study.runs.end(),
                         [&](const core::Run& one) { return one.number == finding.run; });
        const bool discarded = run != study.runs.end() && !run->counted();
        settledCount += discarded ? 1 : 0;
        (discarded ? settled : open) += findingLine(finding, paint);
    }
    std::string text = open;
    if (screening.findings.empty())
        text = "Nothing was found in what could be checked.\n";
    else if (open.empty())
        text = "Nothing was found on a run that counts, in what could be checked.\n";
    if (settledCount > 0)
        text += heading(fmt::format("On runs that are discarded already: {}",
                                    counted(settledCount, "finding", "findings")),
                        paint) +
                settled;
    if (screening.pattern)
        text += "\n" +
                wrapped(wording::patternSentence(Language::english(), *screening.pattern), 0) +
                "\n";
    if (!screening.not_checked.empty())
        text += heading("Not checked (which is not the same as passed)", paint) +
                notCheckedText(screening);
    return text;
}

std::string planText(const Language& in, const core::Plan& plan,
                     std::span<const NoiseOfStudy> noises)
{
    std::string text = fmt::format("{} with {} a block: {}, {} h on the road, {} km.\n",
                                   plan.sequence, counted(plan.pairs_per_block, "pair", "pairs"),
                                   counted(plan.pairs, "pair", "pairs"), fixed(plan.road_hours, 1),
                                   grouped(plan.distance_km));
    const auto line = [&](const std::string& what, const std::string& value) {
        text += fmt::format("  {:<24}{}\n", what, value);
    };
    line("one pair scatters by", significant(100.0 * plan.options.s, 3) + " %");
    for (const NoiseOfStudy& study : noises)
        line(noises.size() == 1 ? "  as in" : "  pooled from",
             fmt::format("{}: {} % ({} degrees of freedom)", study.name,
                         significant(100.0 * study.noise.s, 3), shortest(study.noise.df)));
    line(percentText(plan.options.confidence) + " interval",
         "plus or minus " + sized(plan.half_width_log));
    line(fmt::format("found {} times in 100", shortest(100.0 * plan.options.power)),
         "an effect of " + sized(plan.detectable_log) + " or more");
    if (plan.s_upper80)
        text +=
            wrapped(fmt::format("  The noise was measured on few pairs and may well be {}; then "
                                "the interval is plus or minus {} and {} or more is found.",
                                sized(*plan.s_upper80),
                                sized(plan.half_width_upper80_log.value_or(0.0)),
                                sized(plan.detectable_upper80_log.value_or(0.0))),
                    2) +
            "\n";
    if (plan.sequence == "AB" || plan.sequence == "BA")
        text += wrapped("  Caution: one switch only. Whatever drifts over the day is taken for an "
                        "effect, and more pairs do not help.",
                        2) +
                "\n";
    else if (plan.sequence == "ABBA" || plan.sequence == "ABA")
        text += wrapped(plan.sequence == "ABBA"
                            ? "  Caution: short on the road, but the design that a curved drift "
                              "(an engine that is not warm yet) fools most."
                            : "  Caution: a straight drift is taken out, a curved one (an engine "
                              "that is not warm yet) is not.",
                        2) +
                "\n";
    return text;
}

std::string plansText(const Language& in, std::span<const core::Plan> plans,
                      std::span<const core::SequenceWeakness> weakness)
{
    TextTable table({"sequence", "pairs", "hours", "km", "finds", "still day", "straight drift",
                     "curved drift", "changes at switches", "pairs alike"});
    for (std::size_t i = 0; i < plans.size() && i < weakness.size(); ++i) {
        const core::Plan& plan = plans[i];
        std::vector<std::string> row = {
            plan.sequence, fmt::format("{} a block", plan.pairs_per_block),
            fixed(plan.road_hours, 1), grouped(plan.distance_km), sized(plan.detectable_log)};
        for (const double coverage : weakness[i].coverage)
            row.push_back(fixed(100.0 * coverage, 0) + " %");
        table.add(std::move(row));
    }
    return table.text(0) + "\n" +
           wrapped(
               "Finds: the smallest effect that would be found with the power asked for. The "
               "last five columns: how often an interval that promises the confidence asked for "
               "keeps it, simulated with a fixed seed: on a still day; with a drift of 1 % an "
               "hour; with one that bends by 1 % an hour squared; when each switch changes the "
               "level by some 0.5 %; when a pair resembles the one before (0.6).",
               0) +
           "\n";
}

std::string ledgerText(const Language& in, const core::Ledger& ledger,
                       std::optional<double> watts_to_see)
{
    TextTable table({"L/100 km", "low / middle / high"});
    if (ledger.options.relief)
        table.add({"relief of the alternator", rangeText(ledger.relief_l_per_100km, 3)});
    if (ledger.options.cost)
        table.add({"cost of the drag", rangeText(ledger.cost_l_per_100km, 3)});
    table.add({"net", rangeText(ledger.net_l_per_100km, 3)});
    table.add({"net, per cent", rangeText(ledger.net_pct, 2)});
    std::string text =
        fmt::format("What {} W at {} km/h should change, from first principles (not from runs):\n",
                    grouped(ledger.options.output_w), shortest(ledger.options.speed_kmh));
    text += table.text();
    text += "  Positive: more fuel. Low and high are the smallest and largest over all corners of "
            "the\n  efficiencies, which are factors in use, not measurements of this vehicle.\n";
    if (watts_to_see)
        text += fmt::format("  To be seen by the study it would have to deliver {} W.\n",
                            significant(*watts_to_see));
    return text;
}

std::string pooledText(const Language& in, std::span<const StudyRow> studies,
                       const std::optional<core::Pooled>& pooled, double confidence)
{
    TextTable table({"study", "effect", "standard error", "df", "says"});
    for (const StudyRow& row : studies) {
        if (!row.effect) {
            table.add({row.name, "-", "-", "-", wording::classWords(Language::english(), row.cls)});
            continue;
        }
        const int decimals = decimalsFor(100.0 * row.effect->se_log);
        table.add({row.name, change(pctFromLog(row.effect->effect_log), decimals),
                   fixed(100.0 * row.effect->se_log, decimals) + " %", shortest(row.effect->df),
                   wording::classWords(Language::english(), row.cls)});
    }
    std::string text = table.text(0);
    if (!pooled)
        return text + "\nNothing to pool: it takes two studies with an effect.\n";
    const double low = pctFromLog(pooled->low_log);
    const double high = pctFromLog(pooled->high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    text += "\n" +
            wrapped(fmt::format("Pooled, if they ask the same question: {} ({} interval: {}; {}).",
                                change(pctFromLog(pooled->effect_log), decimals),
                                percentText(confidence), changeRange(low, high, decimals),
                                pText(pooled->p)),
                    0) +
            "\n";
    text += wrapped(fmt::format("Between the studies the true effect scatters by {} % (I² = {} %). "
                                "With few studies neither is known well, and a study left in the "
                                "drawer is in no table.",
                                significant(100.0 * pooled->tau), significant(100.0 * pooled->i2)),
                    0) +
            "\n";
    return text;
}

} // namespace bothways::app
