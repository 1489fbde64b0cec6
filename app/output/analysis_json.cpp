// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_json.h"

#include "app/output/json_text.h"
#include "app/output/version.h"
#include "app/wording/companions.h"
#include "app/wording/verdict.h"
#include "core/study/units.h"

namespace bothways::app {
namespace {

using core::pctFromLog;

Json pct(const std::optional<double>& log)
{
    return log ? Json(pctFromLog(*log)) : Json(nullptr);
}

Json optionsJson(const core::Analysis& analysis)
{
    const core::AnalysisOptions& options = analysis.options;
    const std::string& baseline = analysis.baseline.empty() ? options.baseline : analysis.baseline;
    return {{"margin_pct", options.margin_pct},
            {"confidence", options.confidence},
            {"max_gap_min", options.max_gap_min},
            {"baseline", baseline.empty() ? Json(nullptr) : Json(baseline)},
            {"seed", options.seed},
            {"claim_pct", orNull(options.claim_pct)},
            {"noise", options.noise ? Json{{"s", options.noise->s}, {"df", options.noise->df}}
                                    : Json(nullptr)}};
}

Json notesJson(const core::Analysis& analysis, const std::vector<std::string>& extra)
{
    Json notes = Json::array();
    for (const std::string& note : extra)
        notes.push_back(note);
    for (const core::Note& note : analysis.notes)
        notes.push_back(wording::noteSentence(Language::english(), note, wording::Names::ofFiles));
    return notes;
}

Json studyPartJson(const core::Analysis& analysis)
{
    Json blocks = Json::array();
    for (const core::Block& block : analysis.blocks)
        blocks.push_back({{"block", block.block},
                          {"configuration", block.configuration},
                          {"runs", block.runs},
                          {"pairs", block.pairs}});
    return {{"runs", analysis.runs},
            {"counted", analysis.counted},
            {"discarded", analysis.discarded},
            {"unpaired", analysis.unpaired},
            {"pairs", analysis.pairs.size()},
            {"design", analysis.design ? Json(core::name(*analysis.design)) : Json(nullptr)},
            {"days", analysis.days},
            {"blocks", std::move(blocks)}};
}

Json pairsJson(const core::Analysis& analysis)
{
    Json pairs = Json::array();
    for (const core::Pair& pair : analysis.pairs)
        pairs.push_back({{"runs", {pair.out_run, pair.return_run}},
                         {"block", pair.block},
                         {"configuration", pair.configuration},
                         {"time_h", pair.time_h},
                         {"l_per_100km", pair.l_per_100km},
                         {"log", pair.log},
                         {"mixed_setting", pair.mixed_setting}});
    return pairs;
}

Json headlineJson(const core::Analysis& analysis)
{
    Json json;
    for (const char* key :
         {"effect_pct", "low_pct", "high_pct", "effect_log", "se_log", "df", "t", "p", "s",
          "confidence", "drift_pct_per_h", "baseline_l_per_100km", "difference_l_per_100km"})
        json[key] = nullptr;
    if (!analysis.headline)
        return json;
    const core::Headline& headline = *analysis.headline;
    json["effect_pct"] = pctFromLog(headline.effect_log);
    json["low_pct"] = pctFromLog(headline.low_log);
    json["high_pct"] = pctFromLog(headline.high_log);
    json["effect_log"] = headline.effect_log;
    json["se_log"] = headline.se_log;
    json["df"] = headline.df;
    json["t"] = headline.t;
    json["p"] = headline.p;
    json["s"] = headline.s;
    json["confidence"] = headline.confidence;
    json["drift_pct_per_h"] = pct(headline.drift_log_per_h);
    json["baseline_l_per_100km"] = headline.baseline_l_per_100km;
    json["difference_l_per_100km"] = headline.difference_l_per_100km;
    return json;
}

Json claimJson(const std::optional<core::ClaimAnswer>& claim)
{
    if (!claim)
        return nullptr;
    return {{"pct", claim->pct}, {"state", core::name(claim->state)}, {"p", claim->p}};
}

Json verdictJson(const core::Analysis& analysis, wording::ShownUnit unit)
{
    const core::Verdict& verdict = analysis.verdict;
    Json qualifiers = Json::array();
    for (const core::Qualifier qualifier : verdict.qualifiers)
        qualifiers.push_back(core::name(qualifier));
    Json fragileBy = Json::array();
    for (const core::Companion companion : verdict.fragile_by)
        fragileBy.push_back(core::name(companion));
    std::optional<double> low, high;
    if (analysis.headline) {
        low = analysis.headline->low_equivalence_log;
        high = analysis.headline->high_equivalence_log;
    }
    return {{"class", core::name(verdict.cls)},
            {"reason", verdict.reason ? Json(core::name(*verdict.reason)) : Json(nullptr)},
            {"qualifiers", std::move(qualifiers)},
            {"fragile_by", std::move(fragileBy)},
            {"margin_pct", verdict.margin_pct},
            {"low_equivalence_pct", pct(low)},
            {"high_equivalence_pct", pct(high)},
            {"more_pairs_per_block", orNull(verdict.more_pairs_per_block)},
            {"claim", claimJson(verdict.claim)},
            {"looks", verdict.looks},
            {"sentence", wording::verdictSentence(Language::english(), analysis, unit)}};
}

Json intervalJson(const core::Interval& interval)
{
    return {{"effect_pct", pctFromLog(interval.effect_log)},
            {"low_pct", pctFromLog(interval.low_log)},
            {"high_pct", pctFromLog(interval.high_log)},
            {"df", interval.df},
            {"p", interval.p},
            {"class", core::name(interval.cls)}};
}

Json intervalJson(const std::optional<core::Interval>& interval)
{
    return interval ? intervalJson(*interval) : Json(nullptr);
}

Json companionsJson(const core::Companions& companions)
{
    Json json;
    json["bracket"] = intervalJson(companions.bracket);
    json["runs"] = intervalJson(companions.runs);
    json["blocks"] = intervalJson(companions.blocks);
    json["correlated"] = nullptr;
    if (companions.correlated) {
        json["correlated"] = intervalJson(*companions.correlated);
        json["correlated"]["rho"] = orNull(companions.correlated->rho);
    }
    json["labels"] = nullptr;
    if (companions.labels)
        json["labels"] = {{"p", companions.labels->p},
                          {"deals", companions.labels->deals},
                          {"exact", companions.labels->exact}};
    json["any_look"] = intervalJson(companions.any_look);
    json["curved"] = intervalJson(companions.curved);
    json["borrowed"] = nullptr;
    if (companions.borrowed) {
        json["borrowed"] = intervalJson(*companions.borrowed);
        json["borrowed"]["s"] = companions.borrowed->s;
        json["borrowed"]["from_s"] = companions.borrowed->from_s;
        json["borrowed"]["from_df"] = companions.borrowed->from_df;
        json["borrowed"]["ratio_p"] = companions.borrowed->ratio_p;
    }
    json["days"] = nullptr;
    for (const core::DayEffect& day : companions.days)
        json["days"].push_back({{"day", day.day},
                                {"pairs", day.pairs},
                                {"effect_pct", pctFromLog(day.effect_log)},
                                {"low_pct", pctFromLog(day.low_log)},
                                {"high_pct", pctFromLog(day.high_log)}});
    json["settings"] = nullptr;
    for (const core::SettingEffect& effect : companions.settings)
        json["settings"].push_back(
            {{"setting", effect.setting},
             {"pairs", effect.pairs},
             {"effect_pct", pctFromLog(effect.effect_log)},
             {"low_pct", pctFromLog(effect.low_log)},
             {"high_pct", pctFromLog(effect.high_log)},
             {"low_bonferroni_pct", pctFromLog(effect.low_bonferroni_log)},
             {"high_bonferroni_pct", pctFromLog(effect.high_bonferroni_log)}});
    return json;
}

Json checkJson(const core::Check& check)
{
    return {{"statistic", orNull(check.statistic)},
            {"p", orNull(check.p)},
            {"state", core::name(check.state)}};
}

/// Null as a whole where there is a verdict but no second baseline block, as in an open design.
Json baselineJson(const core::BaselineCheck& baseline, bool verdict)
{
    if (verdict && baseline.state == core::CheckState::notComputed)
        return nullptr;
    return {{"effect_pct", pct(baseline.effect_log)},
            {"low_pct", pct(baseline.low_log)},
            {"high_pct", pct(baseline.high_log)},
            {"df", orNull(baseline.df)},
            {"p", orNull(baseline.p)},
            {"state", core::name(baseline.state)}};
}

/// A t test of one term of the model.
template <class SomeCheck>
Json termJson(const SomeCheck& check)
{
    return {{"statistic", orNull(check.statistic)},
            {"effect_pct", pct(check.effect_log)},
            {"df", orNull(check.df)},
            {"p", orNull(check.p)},
            {"state", core::name(check.state)}};
}

Json checksJson(const core::Checks& checks, bool verdict)
{
    const core::DirectionCheck& direction = checks.direction;
    return {{"normal", checkJson(checks.normal)},
            {"outlier",
             {{"statistic", orNull(checks.outlier.statistic)},
              {"p", orNull(checks.outlier.p)},
              {"pair", orNull(checks.outlier.pair)},
              {"state", core::name(checks.outlier.state)}}},
            {"order",
             {{"statistic", orNull(checks.order.statistic)},
              {"lag1", orNull(checks.order.lag1)},
              {"p", orNull(checks.order.p)},
              {"state", core::name(checks.order.state)}}},
            {"curve", checkJson(checks.curve)},
            {"spread", checkJson(checks.spread)},
            {"baseline", baselineJson(checks.baseline, verdict)},
            {"direction",
             {{"statistic", orNull(direction.statistic)},
              {"slope_per_h", orNull(direction.slope_per_h)},
              {"df", orNull(direction.df)},
              {"p", orNull(direction.p)},
              {"state", core::name(direction.state)}}},
            {"ways", termJson(checks.ways)},
            {"settling", termJson(checks.settling)},
            {"days",
             {{"statistic", orNull(checks.days.statistic)},
              {"df1", orNull(checks.days.df1)},
              {"df2", orNull(checks.days.df2)},
              {"p", orNull(checks.days.p)},
              {"state", core::name(checks.days.state)}}},
            {"resolution",
             {{"step_pct", orNull(checks.resolution.step_pct)},
              {"state", core::name(checks.resolution.state)}}},
            {"air",
             {{"density_pct", orNull(checks.air.density_pct)},
              {"wind_pct", orNull(checks.air.wind_pct)},
              {"state", core::name(checks.air.state)}}}};
}

Json detectableJson(const std::optional<core::Detectable>& detectable)
{
    Json json = {
        {"power", nullptr}, {"log", nullptr}, {"less_pct", nullptr}, {"more_pct", nullptr}};
    if (detectable)
        json = {{"power", detectable->power},
                {"log", detectable->log},
                {"less_pct", -pctFromLog(-detectable->log)},
                {"more_pct", pctFromLog(detectable->log)}};
    return json;
}

Json leaveOneOutJson(const std::optional<core::LeaveOneOut>& leaveOneOut)
{
    Json json = {{"min_effect_pct", nullptr},
                 {"max_effect_pct", nullptr},
                 {"changes_class", nullptr},
                 {"without_verdict", nullptr},
                 {"turns", Json::array()}};
    if (!leaveOneOut)
        return json;
    json["min_effect_pct"] = pct(leaveOneOut->min_effect_log);
    json["max_effect_pct"] = pct(leaveOneOut->max_effect_log);
    json["changes_class"] = leaveOneOut->changes_class;
    json["without_verdict"] = leaveOneOut->without_verdict;
    for (const core::LeaveOneOutTurn& turn : leaveOneOut->turns)
        json["turns"].push_back({{"pair", turn.pair},
                                 {"effect_pct", pct(turn.effect_log)},
                                 {"class", core::name(turn.cls)}});
    return json;
}

Json discardsRestoredJson(const core::DiscardsRestored& restored)
{
    Json json = {
        {"all", nullptr}, {"each", Json::array()}, {"up", restored.up}, {"down", restored.down}};
    if (restored.all)
        json["all"] = {{"effect_pct", pct(restored.all->effect_log)},
                       {"low_pct", pct(restored.all->low_log)},
                       {"high_pct", pct(restored.all->high_log)},
                       {"class", core::name(restored.all->cls)}};
    for (const core::RestoredTurn& turn : restored.each)
        json["each"].push_back(
            {{"run", turn.run},
             {"effect_pct", pct(turn.effect_log)},
             {"class", turn.possible ? Json(core::name(turn.cls)) : Json(nullptr)}});
    return json;
}

} // namespace

std::string analysisJson(const core::Analysis& analysis, const core::Screening& screening,
                         std::string_view inputSha256, wording::ShownUnit unit,
                         const std::vector<std::string>& extraNotes)
{
    Json json;
    json["schema"] = "bothways.analysis/1";
    json["made_by"] = {{"version", kVersion}};
    json["input_sha256"] = inputSha256.empty() ? Json(nullptr) : Json(inputSha256);
    json["options"] = optionsJson(analysis);
    json["notes"] = notesJson(analysis, extraNotes);
    json["study"] = studyPartJson(analysis);
    json["pairs"] = pairsJson(analysis);
    json["headline"] = headlineJson(analysis);
    json["verdict"] = verdictJson(analysis, unit);
    json["companions"] = companionsJson(analysis.companions);
    json["checks"] = checksJson(analysis.checks, analysis.headline.has_value());
    json["detectable"] = detectableJson(analysis.detectable);
    json["leave_one_out"] = leaveOneOutJson(analysis.leave_one_out);
    json["discards_restored"] = discardsRestoredJson(analysis.discards_restored);
    json["findings"] = findingsArray(screening.findings);
    return jsonText(json);
}

} // namespace bothways::app
