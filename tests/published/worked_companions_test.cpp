// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/worked_example.h"

// Companions and checks of the worked examples, by R 4.2.2 from the definitions alone (lm,
// shapiro.test, pt, complete enumeration). Tolerance 1e-8 for the Durbin-Watson p, which the method
// promises to that.

using namespace bothways;
using nlohmann::json;

namespace {

class WorkedCompanions : public tests::AWorkedExample {
protected:
    static void expectInterval(const json& expected, const std::optional<core::Interval>& actual,
                               const std::string& what)
    {
        ASSERT_EQ(actual.has_value(), !expected.is_null()) << what;
        if (!actual)
            return;
        expectNumber(expected["effect_pct"], pct(actual->effect_log), what + " effect_pct");
        expectNumber(expected["low_pct"], pct(actual->low_log), what + " low_pct");
        expectNumber(expected["high_pct"], pct(actual->high_log), what + " high_pct");
        expectNumber(expected["df"], actual->df, what + " df");
        expectNumber(expected["p"], actual->p, what + " p");
        EXPECT_EQ(core::name(actual->cls), expected["class"].get<std::string>()) << what;
    }

    void expectCheck(const std::string& name, const core::Check& actual, double pTolerance = 2e-9)
    {
        const json& expected = m_expected["checks"][name];
        expectNumber(expected["statistic"], actual.statistic, name + " statistic");
        expectNumber(expected["p"], actual.p, name + " p", pTolerance);
        EXPECT_EQ(core::name(actual.state), expected["state"].get<std::string>()) << name;
    }
};

} // namespace

TEST_P(WorkedCompanions, OtherWaysToTheSameNumber)
{
    const json& expected = m_expected["companions"];
    const core::Companions& companions = m_analysis.companions;
    expectInterval(expected["bracket"], companions.bracket, "bracket");
    expectInterval(expected["runs"], companions.runs, "runs");
    expectInterval(expected["blocks"], companions.blocks, "blocks");
    expectInterval(expected["any_look"], companions.any_look, "any_look");
    expectInterval(expected["curved"], companions.curved, "curved");
    expectInterval(expected["borrowed"], companions.borrowed, "borrowed");
    if (companions.borrowed)
        for (const auto& [key, value] : {std::pair{"s", companions.borrowed->s},
                                         std::pair{"from_s", companions.borrowed->from_s},
                                         std::pair{"from_df", companions.borrowed->from_df},
                                         std::pair{"ratio_p", companions.borrowed->ratio_p}})
            expectNumber(expected["borrowed"][key], value, std::string("borrowed ") + key);
    EXPECT_TRUE(companions.settings.empty());
    ASSERT_TRUE(companions.labels);
    expectNumber(expected["labels"]["p"], companions.labels->p, "labels p");
    EXPECT_EQ(companions.labels->deals, expected["labels"]["deals"].get<long long>());
    EXPECT_EQ(companions.labels->exact, expected["labels"]["exact"].get<bool>());
}

TEST_P(WorkedCompanions, EachDayForItself)
{
    const json& expected = m_expected["companions"]["days"];
    const std::vector<core::DayEffect>& days = m_analysis.companions.days;
    ASSERT_EQ(days.size(), expected.size()); // null has size 0
    for (std::size_t i = 0; i < days.size(); ++i) {
        EXPECT_EQ(days[i].day, expected[i]["day"].get<int>());
        EXPECT_EQ(days[i].pairs, expected[i]["pairs"].get<int>());
        expectNumber(expected[i]["effect_pct"], pct(days[i].effect_log), "effect_pct");
        expectNumber(expected[i]["low_pct"], pct(days[i].low_log), "low_pct");
        expectNumber(expected[i]["high_pct"], pct(days[i].high_log), "high_pct");
    }
}

TEST_P(WorkedCompanions, ChecksOfTheAssumptions)
{
    const core::Checks& checks = m_analysis.checks;
    expectCheck("normal", checks.normal);
    expectCheck("outlier", checks.outlier);
    EXPECT_EQ(checks.outlier.pair, m_expected["checks"]["outlier"]["pair"].get<int>());
    expectCheck("order", checks.order, 1e-8);
    expectNumber(m_expected["checks"]["order"]["lag1"], checks.order.lag1, "lag1");
    expectCheck("curve", checks.curve);
    expectCheck("spread", checks.spread);
    expectCheck("direction", checks.direction);
    const json& direction = m_expected["checks"]["direction"];
    expectNumber(direction["slope_per_h"], checks.direction.slope_per_h, "slope_per_h");
    expectNumber(direction["df"], checks.direction.df, "direction df");
    expectCheck("ways", checks.ways);
    const json& ways = m_expected["checks"]["ways"];
    expectNumber(ways["effect_pct"], pct(checks.ways.effect_log), "ways effect_pct");
    expectNumber(ways["df"], checks.ways.df, "ways df");
    expectCheck("settling", checks.settling);
    const json& settling = m_expected["checks"]["settling"];
    expectNumber(settling["effect_pct"], pct(checks.settling.effect_log), "settling effect_pct");
    expectNumber(settling["df"], checks.settling.df, "settling df");
    expectCheck("days", checks.days);
    expectNumber(m_expected["checks"]["days"]["df1"], checks.days.df1, "days df1");
    expectNumber(m_expected["checks"]["days"]["df2"], checks.days.df2, "days df2");
    const json& resolution = m_expected["checks"]["resolution"];
    expectNumber(resolution["step_pct"], checks.resolution.step_pct, "resolution step_pct");
    EXPECT_EQ(core::name(checks.resolution.state), resolution["state"].get<std::string>());
}

TEST_P(WorkedCompanions, HowFarTheDayItselfMoved)
{
    const json& expected = m_expected["checks"]["baseline"];
    const core::BaselineCheck& actual = m_analysis.checks.baseline;
    ASSERT_EQ(actual.effect_log.has_value(), !expected.is_null());
    if (!actual.effect_log)
        return;
    expectNumber(expected["effect_pct"], pct(actual.effect_log), "effect_pct");
    expectNumber(expected["low_pct"], pct(actual.low_log), "low_pct");
    expectNumber(expected["high_pct"], pct(actual.high_log), "high_pct");
    expectNumber(expected["df"], actual.df, "df");
    expectNumber(expected["p"], actual.p, "p");
}

INSTANTIATE_TEST_SUITE_P(Published, WorkedCompanions,
                         ::testing::Values("morning", "roof_box_open", "two_days", "claim"),
                         tests::exampleName);

TEST(WorkedCompanions, TheMorningIsSensitive)
{
    const core::Analysis morning = core::analyse(
        tests::PlainSheet::read(BOTHWAYS_SOURCE_DIR "/tests/published/data/examples/morning.csv"),
        {});
    EXPECT_TRUE(morning.verdict.fragile_by.empty()); // undecided, so none need be told
    EXPECT_EQ(morning.verdict.qualifiers, std::vector{core::Qualifier::sensitive});
}

TEST(WorkedCompanions, NoVerdictHasNeitherCompanionsNorChecks)
{
    const core::Analysis few = core::analyse(
        tests::PlainSheet::read(BOTHWAYS_SOURCE_DIR "/tests/published/data/examples/too_few.csv"),
        {});
    EXPECT_FALSE(few.headline);
    EXPECT_FALSE(few.companions.bracket || few.companions.runs || few.companions.blocks ||
                 few.companions.labels || few.companions.correlated);
    EXPECT_EQ(few.checks.normal.state, core::CheckState::notComputed);
}
