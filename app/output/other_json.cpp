// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_json.h"

#include "app/output/json_text.h"
#include "app/wording/findings.h"
#include "core/study/fuel.h"
#include "core/study/units.h"

namespace bothways::app {
namespace {

using core::pctFromLog;

Json rangeJson(const core::Range& range)
{
    return {{"low", range.low}, {"middle", range.middle}, {"high", range.high}};
}

Json planKeys(const core::Plan& plan)
{
    const auto pct = [](const std::optional<double>& log) {
        return log ? Json(pctFromLog(*log)) : Json(nullptr);
    };
    Json json;
    json["sequence"] = plan.sequence;
    json["pairs_per_block"] = plan.pairs_per_block;
    json["pairs"] = plan.pairs;
    json["df"] = plan.df;
    json["half_width_pct"] = pctFromLog(plan.half_width_log);
    json["detectable_pct"] = pctFromLog(plan.detectable_log);
    json["curved_half_width_pct"] = pct(plan.curved_half_width_log);
    json["any_look_half_width_pct"] = pct(plan.any_look_half_width_log);
    json["borrowed_half_width_pct"] = pct(plan.borrowed_half_width_log);
    json["road_hours"] = plan.road_hours;
    json["distance_km"] = plan.distance_km;
    json["s"] = plan.options.s;
    json["s_upper80"] = orNull(plan.s_upper80);
    json["half_width_upper80_pct"] = pct(plan.half_width_upper80_log);
    json["detectable_upper80_pct"] = pct(plan.detectable_upper80_log);
    json["confidence"] = plan.options.confidence;
    json["power"] = plan.options.power;
    return json;
}

Json commonJson(const std::optional<core::CommonEffect>& common)
{
    if (!common)
        return nullptr;
    return {{"effect_pct", pctFromLog(common->effect_log)},
            {"low_pct", pctFromLog(common->low_log)},
            {"high_pct", pctFromLog(common->high_log)},
            {"df", common->df},
            {"p", common->p}};
}

Json agreementJson(const core::Agreement& agreement)
{
    const bool has = agreement.state != core::CheckState::notComputed;
    return {{"statistic", has ? Json(agreement.statistic) : Json(nullptr)},
            {"df1", has ? Json(agreement.df1) : Json(nullptr)},
            {"df2", has ? Json(agreement.df2) : Json(nullptr)},
            {"p", has ? Json(agreement.p) : Json(nullptr)},
            {"state", core::name(agreement.state)}};
}

const char* disturbanceName(core::Disturbance disturbance)
{
    switch (disturbance) {
    case core::Disturbance::none: return "none";
    case core::Disturbance::straightDrift: return "straight_drift";
    case core::Disturbance::curvedDrift: return "curved_drift";
    case core::Disturbance::blockChanges: return "block_changes";
    case core::Disturbance::correlatedNoise: return "correlated_noise";
    }
    return "";
}

} // namespace

std::string jsonText(const Json& json)
{
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

/// A part of the device; null where there is none.
Json partOrNull(const std::string& part)
{
    return part.empty() ? Json(nullptr) : Json(part);
}

/// What the device gave and how fast it turned, by setting.
Json deviceArray(const std::vector<core::SettingFigures>& device)
{
    Json json = Json::array();
    for (const core::SettingFigures& its : device)
        json.push_back({{"configuration", its.configuration},
                        {"setting", its.setting},
                        {"part", partOrNull(its.part)},
                        {"runs", its.runs},
                        {"mean_output_w", orNull(its.figures.mean_output_w)},
                        {"highest_output_w", orNull(its.figures.highest_output_w)},
                        {"mean_rotor_rpm", orNull(its.figures.mean_rotor_rpm)},
                        {"highest_rotor_rpm", orNull(its.figures.highest_rotor_rpm)}});
    return json;
}

Json patternJson(const core::OverspeedPattern& pattern)
{
    return {{"first_output_w", pattern.first_output_w},
            {"reached", pattern.reached},
            {"oversped", pattern.oversped},
            {"share", pattern.share},
            {"low", pattern.low},
            {"high", pattern.high},
            {"part", partOrNull(pattern.part)}};
}

Json findingsArray(const std::vector<core::Finding>& findings)
{
    Json json = Json::array();
    for (const core::Finding& finding : findings)
        json.push_back({{"rule", core::ruleName(finding.rule)},
                        {"run", finding.run},
                        {"from_s", orNull(finding.from_s)},
                        {"to_s", orNull(finding.to_s)},
                        {"value", orNull(finding.value)},
                        {"limit", orNull(finding.limit)},
                        {"unit", finding.unit.empty() ? Json(nullptr) : Json(finding.unit)},
                        {"grade", core::gradeName(finding.grade)},
                        {"part", partOrNull(finding.part)},
                        {"sentence", wording::findingSentence(Language::english(), finding)}});
    return json;
}

std::string findingsJson(const core::Screening& screening)
{
    Json json;
    json["schema"] = "bothways.findings/1";
    json["findings"] = findingsArray(screening.findings);
    json["not_checked"] = Json::array();
    for (const core::NotChecked& notChecked : screening.not_checked)
        json["not_checked"].push_back(
            {{"run", notChecked.run},
             {"rule", core::ruleName(notChecked.rule)},
             {"why",
              wording::whyNotChecked(Language::english(), notChecked, wording::Names::ofFiles)},
             {"what", notChecked.what.empty() ? Json() : Json(notChecked.what)},
             {"part", partOrNull(notChecked.part)}});
    json["pattern"] = nullptr;
    if (screening.pattern)
        json["pattern"] = patternJson(*screening.pattern);
    json["device"] = deviceArray(screening.device);
    json["part_patterns"] = Json::array();
    for (const core::OverspeedPattern& pattern : screening.part_patterns)
        json["part_patterns"].push_back(patternJson(pattern));
    return jsonText(json);
}

std::string planJson(const core::Plan& plan, std::span<const NoiseOfStudy> noises,
                     std::string_view stretch_from)
{
    Json json;
    json["schema"] = "bothways.plan/1";
    json.update(planKeys(plan));
    json["s_df"] = orNull(plan.options.s_df);
    json["stretch_km"] = plan.options.stretch_km;
    json["stretch_from"] = stretch_from;
    json["noise_from"] = Json::array();
    for (const NoiseOfStudy& study : noises)
        json["noise_from"].push_back(
            {{"name", study.name}, {"s", study.noise.s}, {"df", study.noise.df}});
    return jsonText(json);
}

std::string plansJson(std::span<const core::Plan> plans,
                      std::span<const core::SequenceWeakness> weakness)
{
    Json json;
    json["schema"] = "bothways.plans/1";
    json["plans"] = Json::array();
    for (std::size_t i = 0; i < plans.size() && i < weakness.size(); ++i) {
        Json plan = planKeys(plans[i]);
        for (std::size_t k = 0; k < core::kDisturbances.size(); ++k)
            plan["coverage"][disturbanceName(core::kDisturbances[k])] = weakness[i].coverage[k];
        json["plans"].push_back(std::move(plan));
    }
    return jsonText(json);
}

std::string ledgerJson(const core::Ledger& ledger, std::optional<double> watts_to_see,
                       const LedgerSources& sources)
{
    Json json;
    json["schema"] = "bothways.ledger/1";
    json["unit"] = core::unitName(ledger.options.fuel == core::Fuel::electric
                                      ? core::ConsumptionUnit::kwhPer100km
                                      : core::ConsumptionUnit::lPer100km);
    json["relief_l_per_100km"] = rangeJson(ledger.relief_l_per_100km);
    json["cost_l_per_100km"] = rangeJson(ledger.cost_l_per_100km);
    json["net_l_per_100km"] = rangeJson(ledger.net_l_per_100km);
    json["net_pct"] = rangeJson(ledger.net_pct);
    json["watts_to_see"] = orNull(watts_to_see);
    json["fuel"] = core::fuelName(ledger.options.fuel);
    json["output_w"] = ledger.options.output_w;
    json["speed_kmh"] = ledger.options.speed_kmh;
    json["consumption_l_per_100km"] = ledger.options.consumption_l_per_100km;
    json["from"] = {{"output_w", sources.output_w},
                    {"speed_kmh", sources.speed_kmh},
                    {"consumption", sources.consumption}};
    return jsonText(json);
}

std::string pooledJson(const Several& together)
{
    const std::optional<core::Pooled>& pooled = together.pooled;
    Json json;
    json["schema"] = "bothways.pooled/1";
    json["studies"] = Json::array();
    for (const StudyRow& row : together.studies) {
        const bool has = row.effect.has_value();
        json["studies"].push_back(
            {{"name", row.name},
             {"baseline", row.baseline},
             {"device", row.device},
             {"effect_log", has ? Json(row.effect->effect_log) : Json(nullptr)},
             {"se_log", has ? Json(row.effect->se_log) : Json(nullptr)},
             {"df", has ? Json(row.effect->df) : Json(nullptr)},
             {"class", core::name(row.cls)},
             {"baseline_l_per_100km", orNull(row.baseline_l_per_100km)}});
    }
    Json& answer = json["pooled"];
    for (const char* key :
         {"effect_pct", "low_pct", "high_pct", "df", "p", "tau", "i2", "common", "agreement"})
        answer[key] = nullptr;
    if (pooled)
        answer = {{"effect_pct", pctFromLog(pooled->effect_log)},
                  {"low_pct", pctFromLog(pooled->low_log)},
                  {"high_pct", pctFromLog(pooled->high_log)},
                  {"df", pooled->df},
                  {"p", pooled->p},
                  {"tau", pooled->tau},
                  {"i2", pooled->i2},
                  {"common", commonJson(pooled->common)},
                  {"agreement", agreementJson(pooled->agreement)}};
    answer["class"] =
        core::name(pooled ? core::classOfPooled(*pooled, together.confidence, together.margin_pct)
                          : core::VerdictClass::none);
    answer["margin_pct"] = together.margin_pct;
    answer["confidence"] = together.confidence;
    return jsonText(json);
}

} // namespace bothways::app
