// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_json.h"

#include "tests/app/output/analysis_builder.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <set>

namespace bothways::app {
namespace {

using bothways::tests::AnAnalysis;
using core::Analysis;
using core::VerdictClass;
using ::testing::HasSubstr;
using Json = nlohmann::ordered_json;

Json written(const Analysis& analysis, const core::Screening& screening = {})
{
    return Json::parse(analysisJson(analysis, screening, "abc"));
}

void collectKeys(const Json& json, const std::string& path, std::set<std::string>& keys)
{
    if (!json.is_object())
        return;
    for (const auto& [key, value] : json.items()) {
        keys.insert(path + "/" + key);
        collectKeys(value, path + "/" + key, keys);
    }
}

/// Every promised key of objects that are always there.
const std::set<std::string>& promisedKeys()
{
    static const std::set<std::string> keys = [] {
        const Json form = Json::parse(R"({
            "schema":0, "made_by":{"version":0}, "input_sha256":0,
            "options":{"margin_pct":0,"confidence":0,"max_gap_min":0,"baseline":0,"seed":0,
                       "claim_pct":0,"noise":0},
            "notes":0,
            "study":{"runs":0,"counted":0,"discarded":0,"unpaired":0,"pairs":0,"design":0,"days":0,
                     "blocks":0},
            "pairs":0,
            "headline":{"effect_pct":0,"low_pct":0,"high_pct":0,"effect_log":0,"se_log":0,"df":0,
                        "t":0,"p":0,"s":0,"confidence":0,"drift_pct_per_h":0,
                        "baseline_l_per_100km":0,"difference_l_per_100km":0},
            "verdict":{"class":0,"reason":0,"qualifiers":0,"fragile_by":0,"margin_pct":0,
                       "low_equivalence_pct":0,"high_equivalence_pct":0,"more_pairs_per_block":0,
                       "claim":0,"looks":0,"sentence":0},
            "companions":{"bracket":0,"runs":0,"blocks":0,"correlated":0,"labels":0,"settings":0,
                          "any_look":0,"curved":0,"borrowed":0,"days":0},
            "checks":{"normal":{"statistic":0,"p":0,"state":0},
                      "outlier":{"statistic":0,"p":0,"pair":0,"state":0},
                      "order":{"statistic":0,"lag1":0,"p":0,"state":0},
                      "curve":{"statistic":0,"p":0,"state":0},
                      "spread":{"statistic":0,"p":0,"state":0},
                      "baseline":{"effect_pct":0,"low_pct":0,"high_pct":0,"df":0,"p":0,"state":0},
                      "direction":{"statistic":0,"slope_per_h":0,"df":0,"p":0,"state":0},
                      "ways":{"statistic":0,"effect_pct":0,"df":0,"p":0,"state":0},
                      "settling":{"statistic":0,"effect_pct":0,"df":0,"p":0,"state":0},
                      "days":{"statistic":0,"df1":0,"df2":0,"p":0,"state":0},
                      "resolution":{"step_pct":0,"state":0},
                      "air":{"density_pct":0,"wind_pct":0,"state":0}},
            "detectable":{"power":0,"log":0,"less_pct":0,"more_pct":0},
            "leave_one_out":{"min_effect_pct":0,"max_effect_pct":0,"changes_class":0,
                             "without_verdict":0,"turns":0},
            "discards_restored":{"all":0,"each":0,"up":0,"down":0},
            "findings":0})");
        std::set<std::string> found;
        collectKeys(form, "", found);
        return found;
    }();
    return keys;
}

void closedDay(Analysis& analysis)
{
    analysis.checks.baseline = {-0.006, -0.017, 0.006, 5.0, 0.25, core::CheckState::holds};
}

TEST(AnalysisJson, HasEveryPromisedKeyWithAVerdictAndWithout)
{
    for (const Analysis& analysis :
         {Analysis(
              AnAnalysis()
                  .effect(0.8, -0.1, 1.7)
                  .verdict(VerdictClass::undecided)
                  .with([](Analysis& a) { a.checks.baseline.state = core::CheckState::holds; })),
          Analysis(AnAnalysis().noVerdict(core::NoVerdict::tooFewPairs)), Analysis()}) {
        std::set<std::string> keys;
        collectKeys(written(analysis), "", keys);
        EXPECT_EQ(keys, promisedKeys());
    }
}

TEST(AnalysisJson, WritesNullAndNotComputedWhereThereIsNoVerdict)
{
    const Json json = written(AnAnalysis().noVerdict(core::NoVerdict::tooFewPairs));
    EXPECT_EQ(json["schema"], "bothways.analysis/1");
    EXPECT_EQ(json["verdict"]["class"], "none");
    EXPECT_EQ(json["verdict"]["reason"], "too_few_pairs");
    for (const auto& [key, value] : json["headline"].items())
        EXPECT_TRUE(value.is_null()) << key;
    for (const auto& [key, value] : json["companions"].items())
        EXPECT_TRUE(value.is_null()) << key;
    for (const auto& [key, check] : json["checks"].items())
        EXPECT_EQ(check["state"], "not_computed") << key;
}

TEST(AnalysisJson, WritesNullForTheBaselineWhereThereIsNoSecondBaselineBlock)
{
    EXPECT_TRUE(written(AnAnalysis().effect(0.8, -0.1, 1.7))["checks"]["baseline"].is_null());
}

TEST(AnalysisJson, GivesBackEveryDigit)
{
    const double effect_log = 0.00807133326812682;
    const Json json = written(AnAnalysis().effect(0.8, -0.1, 1.7).with([&](Analysis& a) {
        a.headline->effect_log = effect_log;
    }));
    EXPECT_EQ(json["headline"]["effect_log"].get<double>(), effect_log);
    EXPECT_EQ(json["headline"]["effect_pct"].get<double>(), core::pctFromLog(effect_log));
}

TEST(AnalysisJson, WritesDetectableLossesAsASize)
{
    const Json json = written(AnAnalysis().effect(0.8, -0.1, 1.7));
    EXPECT_NEAR(json["detectable"]["less_pct"].get<double>(), 1.19282871,
                1e-8); // 100(1 - exp(-0.012)), by its series
    EXPECT_NEAR(json["detectable"]["more_pct"].get<double>(), 1.20722889,
                1e-8); // by the series of exp(0.012) - 1
}

TEST(AnalysisJson, WritesTheBaselinesOwnMovementWhereThereIsOne)
{
    const Json json = written(AnAnalysis().effect(0.8, -0.1, 1.7).with(closedDay));
    const Json& baseline = json["checks"]["baseline"];
    EXPECT_EQ(baseline["effect_pct"].get<double>(), core::pctFromLog(-0.006));
    EXPECT_EQ(baseline["df"], 5.0);
    EXPECT_EQ(baseline["state"], "holds");
}

TEST(AnalysisJson, MarksADiscardThatCannotBePutBack)
{
    const Json json = written(AnAnalysis().effect(0.8, -0.1, 1.7).with([](Analysis& a) {
        a.discarded = 2;
        a.discards_restored.each = {{9, 0.008, VerdictClass::undecided, true},
                                    {12, std::nullopt, VerdictClass::none, false}};
    }));
    EXPECT_EQ(json["discards_restored"]["each"][0]["class"], "undecided");
    EXPECT_TRUE(json["discards_restored"]["each"][1]["effect_pct"].is_null());
    EXPECT_TRUE(json["discards_restored"]["each"][1]["class"].is_null());
}

TEST(AnalysisJson, ListsFindingsWithTheirSentence)
{
    core::Screening screening;
    core::Finding finding;
    finding.rule = core::Rule::overspeed;
    finding.run = 9;
    finding.value = 3410.0;
    finding.limit = 3200.0;
    finding.unit = "rpm";
    finding.grade = core::Grade::spoils;
    screening.findings.push_back(finding);
    const Json json = written(AnAnalysis().effect(0.8, -0.1, 1.7), screening)["findings"][0];
    EXPECT_EQ(json["rule"], "overspeed");
    EXPECT_TRUE(json["from_s"].is_null());
    EXPECT_EQ(json["value"], 3410.0);
    EXPECT_EQ(json["grade"], "spoils");
    EXPECT_THAT(json["sentence"].get<std::string>(), HasSubstr("3,410 rpm"));
}

TEST(AnalysisJson, ReplacesBytesThatAreNoUtf8)
{
    const Analysis analysis =
        AnAnalysis().effect(0.8, -0.1, 1.7).names("A", "B\xff").verdict(VerdictClass::more);
    const std::string text = written(analysis).dump();
    EXPECT_NE(text.find("B\xEF\xBF\xBD"), std::string::npos) << "U+FFFD in place of the byte";
    EXPECT_EQ(text.find('\xff'), std::string::npos);
}

TEST(AnalysisJson, NeverWritesInfinityOrNotANumber)
{
    const Json json = written(AnAnalysis().effect(0.8, -0.1, 1.7).with([](Analysis& a) {
        a.headline->t = std::numeric_limits<double>::infinity();
        a.headline->p = std::numeric_limits<double>::quiet_NaN();
    }));
    EXPECT_TRUE(json["headline"]["t"].is_null());
    EXPECT_TRUE(json["headline"]["p"].is_null());
}

TEST(FindingsJson, SaysWhyARuleWasNotChecked)
{
    core::Screening screening;
    screening.not_checked.push_back(
        {1, core::Rule::vibration, core::WhyNotChecked::noChannel, "vibration_ms2"});
    const Json json = Json::parse(findingsJson(screening));
    EXPECT_EQ(json["schema"], "bothways.findings/1");
    EXPECT_EQ(json["findings"], Json::array());
    EXPECT_EQ(json["not_checked"][0]["why"], "not recorded (vibration_ms2)");
    EXPECT_EQ(json["not_checked"][0]["what"], "vibration_ms2") << "as files call it";
    EXPECT_TRUE(json["pattern"].is_null());
}

TEST(PooledJson, ListsAStudyWithoutAVerdictWithNulls)
{
    const std::vector<StudyRow> rows = {{"one",
                                         core::StudyEffect{"one", 0.01, 0.002, 6.0},
                                         VerdictClass::more,
                                         {},
                                         false,
                                         "A",
                                         "B"},
                                        {"two", std::nullopt, VerdictClass::none}};
    const Json json = Json::parse(pooledJson({rows, std::nullopt}));
    EXPECT_EQ(json["studies"].size(), 2U);
    EXPECT_TRUE(json["studies"][1]["effect_log"].is_null());
    EXPECT_EQ(json["studies"][0]["baseline"], "A");
    EXPECT_EQ(json["studies"][0]["device"], "B");
    EXPECT_TRUE(json["pooled"]["effect_pct"].is_null());
}

TEST(PairsCsv, HasALineAPair)
{
    const std::string csv = pairsCsv(AnAnalysis().effect(0.8, -0.1, 1.7));
    EXPECT_EQ(std::count(csv.begin(), csv.end(), '\n'), 10);
    EXPECT_THAT(csv, HasSubstr("1,1,2,1,1,A,0.25,8,2.0794415416798357,0,2.0794,0\n"));
}

} // namespace
} // namespace bothways::app
