// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/worked_example.h"

using namespace bothways;
using nlohmann::json;

namespace {

class WorkedExample : public tests::AWorkedExample {};

} // namespace

TEST_P(WorkedExample, CountsRunsAndFormsBlocks)
{
    const json& study = m_expected["study"];
    EXPECT_EQ(m_analysis.runs, study["runs"].get<int>());
    EXPECT_EQ(m_analysis.counted, study["counted"].get<int>());
    EXPECT_EQ(m_analysis.discarded, study["discarded"].get<int>());
    EXPECT_EQ(m_analysis.unpaired, study["unpaired"].get<std::vector<int>>());
    ASSERT_TRUE(m_analysis.design);
    EXPECT_EQ(core::name(*m_analysis.design), study["design"].get<std::string>());
    ASSERT_EQ(m_analysis.blocks.size(), study["blocks"].size());
    for (std::size_t k = 0; k < m_analysis.blocks.size(); ++k) {
        EXPECT_EQ(m_analysis.blocks[k].block, study["blocks"][k]["block"].get<int>());
        EXPECT_EQ(m_analysis.blocks[k].runs, study["blocks"][k]["runs"].get<int>());
        EXPECT_EQ(m_analysis.blocks[k].pairs, study["blocks"][k]["pairs"].get<int>());
    }
}

TEST_P(WorkedExample, FormsThePairs)
{
    const json& pairs = m_expected["pairs"];
    ASSERT_EQ(m_analysis.pairs.size(), pairs.size());
    for (std::size_t k = 0; k < pairs.size(); ++k) {
        const core::Pair& pair = m_analysis.pairs[k];
        const std::string what = "pair " + std::to_string(k + 1);
        EXPECT_EQ((std::vector{pair.out_run, pair.return_run}),
                  pairs[k]["runs"].get<std::vector<int>>())
            << what;
        EXPECT_EQ(pair.number, static_cast<int>(k) + 1);
        EXPECT_EQ(pair.block, pairs[k]["block"].get<int>()) << what;
        EXPECT_EQ(pair.mixed_setting, pairs[k]["mixed_setting"].get<bool>()) << what;
        expectNumber(pairs[k]["time_h"], pair.time_h, what + " time_h");
        expectNumber(pairs[k]["l_per_100km"], pair.l_per_100km, what + " l_per_100km");
        expectNumber(pairs[k]["log"], pair.log, what + " log");
    }
}

TEST_P(WorkedExample, EstimatesTheHeadline)
{
    const json& expected = m_expected["headline"];
    ASSERT_EQ(m_analysis.headline.has_value(), !expected["effect_log"].is_null());
    if (!m_analysis.headline)
        return;
    const core::Headline& h = *m_analysis.headline;
    expectNumber(expected["effect_pct"], pct(h.effect_log), "effect_pct");
    expectNumber(expected["low_pct"], pct(h.low_log), "low_pct");
    expectNumber(expected["high_pct"], pct(h.high_log), "high_pct");
    expectNumber(expected["effect_log"], h.effect_log, "effect_log");
    expectNumber(expected["se_log"], h.se_log, "se_log");
    expectNumber(expected["df"], h.df, "df");
    expectNumber(expected["t"], h.t, "t");
    expectNumber(expected["p"], h.p, "p");
    expectNumber(expected["s"], h.s, "s");
    expectNumber(expected["confidence"], h.confidence, "confidence");
    expectNumber(expected["drift_pct_per_h"], pct(h.drift_log_per_h), "drift_pct_per_h");
    expectNumber(expected["baseline_l_per_100km"], h.baseline_l_per_100km, "baseline");
    expectNumber(expected["difference_l_per_100km"], h.difference_l_per_100km, "difference");
    const json& verdict = m_expected["verdict"];
    expectNumber(verdict["low_equivalence_pct"], pct(h.low_equivalence_log), "low_equivalence");
    expectNumber(verdict["high_equivalence_pct"], pct(h.high_equivalence_log), "high_equivalence");
}

TEST_P(WorkedExample, ReachesTheVerdict)
{
    const json& expected = m_expected["verdict"];
    EXPECT_EQ(core::name(m_analysis.verdict.cls), expected["class"].get<std::string>());
    EXPECT_EQ(m_analysis.verdict.reason.has_value(), !expected["reason"].is_null());
    if (m_analysis.verdict.reason) {
        EXPECT_EQ(core::name(*m_analysis.verdict.reason), expected["reason"].get<std::string>());
    }
    EXPECT_EQ(m_analysis.verdict.looks, expected["looks"].get<int>());
    const json& more = expected["more_pairs_per_block"];
    EXPECT_EQ(m_analysis.verdict.more_pairs_per_block,
              more.is_null() ? std::nullopt : std::optional(more.get<int>()));
    ASSERT_EQ(m_analysis.verdict.claim.has_value(), !expected["claim"].is_null());
    if (const auto& claim = m_analysis.verdict.claim) {
        EXPECT_EQ(claim->pct, expected["claim"]["pct"].get<double>());
        EXPECT_EQ(core::name(claim->state), expected["claim"]["state"].get<std::string>());
        expectNumber(expected["claim"]["p"], claim->p, "claim p");
    }
}

TEST_P(WorkedExample, QualifiesTheVerdict)
{
    std::vector<std::string> names;
    for (const core::Qualifier qualifier : m_analysis.verdict.qualifiers)
        names.emplace_back(core::name(qualifier));
    EXPECT_EQ(names, m_expected["verdict"].value("qualifiers", std::vector<std::string>{}));
}

TEST_P(WorkedExample, SaysWhatItCouldHaveSeen)
{
    if (!m_expected.contains("detectable")) {
        EXPECT_FALSE(m_analysis.detectable);
        return;
    }
    ASSERT_TRUE(m_analysis.detectable);
    const json& expected = m_expected["detectable"];
    expectNumber(expected["power"], m_analysis.detectable->power, "power");
    expectNumber(expected["log"], m_analysis.detectable->log, "log");
    expectNumber(expected["less_pct"], -core::pctFromLog(-m_analysis.detectable->log), "less_pct");
    expectNumber(expected["more_pct"], core::pctFromLog(m_analysis.detectable->log), "more_pct");
}

TEST_P(WorkedExample, LeavesEachPairOut)
{
    if (!m_expected.contains("leave_one_out")) {
        EXPECT_FALSE(m_analysis.leave_one_out);
        return;
    }
    ASSERT_TRUE(m_analysis.leave_one_out);
    const core::LeaveOneOut& actual = *m_analysis.leave_one_out;
    const json& expected = m_expected["leave_one_out"];
    expectNumber(expected["min_effect_pct"], pct(actual.min_effect_log), "min_effect_pct");
    expectNumber(expected["max_effect_pct"], pct(actual.max_effect_log), "max_effect_pct");
    EXPECT_EQ(actual.changes_class, expected["changes_class"].get<bool>());
    EXPECT_EQ(actual.without_verdict, expected["without_verdict"].get<int>());
    ASSERT_EQ(actual.turns.size(), expected["turns"].size());
    for (std::size_t k = 0; k < actual.turns.size(); ++k) {
        const json& turn = expected["turns"][k];
        EXPECT_EQ(actual.turns[k].pair, turn["pair"].get<int>());
        expectNumber(turn["effect_pct"], pct(actual.turns[k].effect_log),
                     "turn " + std::to_string(k + 1));
        EXPECT_EQ(core::name(actual.turns[k].cls), turn["class"].get<std::string>());
    }
}

TEST_P(WorkedExample, PutsDiscardsBack)
{
    const core::DiscardsRestored& actual = m_analysis.discards_restored;
    if (!m_expected.contains("discards_restored"))
        return;
    const json& expected = m_expected["discards_restored"];
    EXPECT_EQ(actual.all.has_value(), expected.contains("all"));
    if (actual.all) {
        expectNumber(expected["all"]["effect_pct"], pct(actual.all->effect_log), "all");
        expectNumber(expected["all"]["low_pct"], pct(actual.all->low_log), "all, low");
        expectNumber(expected["all"]["high_pct"], pct(actual.all->high_log), "all, high");
        EXPECT_EQ(core::name(actual.all->cls), expected["all"]["class"].get<std::string>());
    }
    ASSERT_EQ(actual.each.size(), expected["each"].size());
    for (std::size_t k = 0; k < actual.each.size(); ++k) {
        EXPECT_EQ(actual.each[k].run, expected["each"][k]["run"].get<int>());
        expectNumber(expected["each"][k]["effect_pct"], pct(actual.each[k].effect_log), "each");
        EXPECT_EQ(core::name(actual.each[k].cls), expected["each"][k]["class"].get<std::string>());
    }
}

INSTANTIATE_TEST_SUITE_P(Published, WorkedExample,
                         ::testing::Values("morning", "roof_box_open", "too_few", "two_days",
                                           "claim"),
                         tests::exampleName);
