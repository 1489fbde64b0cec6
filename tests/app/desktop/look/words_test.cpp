// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/words.h"

#include "tests/app/desktop/support/analysis_builder.h"
#include "tests/app/desktop/support/page_fixture.h"

#include <gmock/gmock.h>

using namespace bothways;
using namespace bothways::app;
using bothways::test::AnalysisBuilder;
using core::VerdictClass;

namespace {

/// A text with its no-break spaces made plain, so that expectations can be read.
QString plain(QString text)
{
    return text.replace(QChar(0x00a0), u' ');
}

QString verdictOf(const core::Analysis& analysis, const UnitsShown& units = {})
{
    return plain(Words(analysis, units).verdict());
}

TEST(WordsOfTheVerdict, SayHowMuchLess)
{
    EXPECT_EQ(verdictOf(AnalysisBuilder()),
              "B used 1.20 % less fuel than A (95 % interval: 0.50 to 1.90 % less).");
}

TEST(WordsOfTheVerdict, SayHowMuchMore)
{
    EXPECT_EQ(verdictOf(AnalysisBuilder().interval(2.6, 3.3, 4.1).cls(VerdictClass::more)),
              "B used 3.30 % more fuel than A (95 % interval: 2.60 to 4.10 % more).");
}

TEST(WordsOfTheVerdict, SpeakOfEnergyWithElectricDrive)
{
    AnalysisBuilder builder;
    builder.raw().electric = true;
    EXPECT_THAT(verdictOf(builder).toStdString(), ::testing::HasSubstr("less energy than A"));
    EXPECT_THAT(plain(Words(builder, {}).inUnits()).toStdString(),
                ::testing::HasSubstr("kWh/100 km"));
}

TEST(WordsOfTheVerdict, SayThatNoDifferenceIsAsLargeAsTheMargin)
{
    EXPECT_EQ(verdictOf(AnalysisBuilder().interval(-0.5, 0.1, 0.7).cls(VerdictClass::equivalent)),
              "No difference as large as 1 % between B and A: the effect lies between 0.38 % less "
              "and 0.58 % more (90 % interval).");
}

TEST(WordsOfTheVerdict, SayThatTheRunsCannotTell)
{
    EXPECT_EQ(verdictOf(AnalysisBuilder().interval(-0.06, 0.81, 1.69).cls(VerdictClass::undecided)),
              "These runs cannot tell B from A: the effect lies between 0.06 % less and 1.69 % "
              "more (95 % interval).");
}

TEST(WordsOfTheVerdict, ShowOnWhichSideOfZeroAnEndLies)
{
    EXPECT_EQ(verdictOf(AnalysisBuilder().interval(-2.4, -1.2, -0.003)),
              "B used 1.2 % less fuel than A (95 % interval: 0.003 to 2.4 % less).");
}

TEST(WordsOfTheVerdict, NameWhatIsMissingForEveryReason)
{
    const auto missing = [](core::NoVerdict reason) {
        return verdictOf(AnalysisBuilder().without(reason)).toStdString();
    };
    using ::testing::StartsWith;
    EXPECT_THAT(missing(core::NoVerdict::noRuns), StartsWith("No verdict: every run is discarded"));
    EXPECT_THAT(missing(core::NoVerdict::oneConfiguration),
                StartsWith("No verdict: only A has runs that count"));
    EXPECT_THAT(missing(core::NoVerdict::tooFewPairs), StartsWith("No verdict: effect and drift"));
    EXPECT_THAT(missing(core::NoVerdict::noTimeSpread), StartsWith("No verdict: by their times"));
    EXPECT_THAT(missing(core::NoVerdict::noVariation),
                StartsWith("No verdict: the readings agree"));
}

TEST(WordsOfTheVerdict, CountThePairsThatAreThereWhenTheyAreTooFew)
{
    AnalysisBuilder builder;
    builder.without(core::NoVerdict::tooFewPairs);
    builder.raw().pairs.resize(4); // three of A, one of B
    EXPECT_THAT(verdictOf(builder).toStdString(), ::testing::HasSubstr("3 pairs of A and 1 of B"));
}

TEST(WordsOfTheVerdict, QuoteNamesLongerThanALetter)
{
    AnalysisBuilder builder;
    builder.raw().device = "roof box";
    EXPECT_THAT(verdictOf(builder).toStdString(), ::testing::StartsWith("“roof box” used"));
}

TEST(WordsOfTheVerdict, UseTheLocalesDecimalSign)
{
    UnitsShown german;
    german.locale = QLocale(QLocale::German, QLocale::Germany);
    EXPECT_EQ(verdictOf(AnalysisBuilder(), german),
              "B used 1,20 % less fuel than A (95 % interval: 0,50 to 1,90 % less).");
}

TEST(WordsInUnits, TurnTheEffectIntoConsumption)
{
    EXPECT_EQ(plain(Words(AnalysisBuilder(), {}).inUnits()),
              "That is 8.220 in place of 8.320 L/100 km.");
}

TEST(WordsInUnits, GoUpInMilesAGallonWhenConsumptionGoesDown)
{
    UnitsShown units;
    units.consumption = core::ConsumptionUnit::mpgUs; // 235.2146 / 8.32 = 28.27; / 8.220 = 28.61
    EXPECT_EQ(plain(Words(AnalysisBuilder(), units).inUnits()),
              "That is 28.61 in place of 28.27 mpg (US).");
}

TEST(WordsInUnits, AreSilentWithAControlVehicle)
{
    AnalysisBuilder builder;
    builder.raw().notes.push_back({core::NoteKind::controlUsed, {}});
    EXPECT_EQ(Words(builder, {}).inUnits(), "");
}

TEST(WordsOnWhatItTakes, AreSilentUnlessUndecided)
{
    EXPECT_EQ(Words(AnalysisBuilder(), {}).whatItWouldTake(), "");
}

TEST(WordsOnWhatItTakes, TellTheThreeCasesApart)
{
    const auto take = [](std::optional<int> more) {
        return plain(Words(AnalysisBuilder().cls(VerdictClass::undecided).morePairs(more), {})
                         .whatItWouldTake())
            .toStdString();
    };
    using ::testing::HasSubstr;
    EXPECT_THAT(take(3), HasSubstr("They could have shown 1.2 % or more; 3 more"));
    EXPECT_THAT(take(0), HasSubstr("driving it once more is worth while"));
    EXPECT_THAT(take({}), HasSubstr("more pairs alone would hardly show 1 %"));
}

TEST(WordsOfQualifiers, NameTheCompanionThatDisagrees)
{
    AnalysisBuilder builder;
    core::Interval runs;
    runs.cls = VerdictClass::undecided;
    builder.raw().companions.runs = runs;
    builder.raw().verdict.fragile_by = {core::Companion::runs};
    EXPECT_EQ(Words(builder, {}).qualifier(core::Qualifier::fragile),
              "Fragile: another honest way to the same number disagrees: single runs (cannot "
              "tell).");
}

TEST(WordsOfQualifiers, NameThePairsThatDecide)
{
    AnalysisBuilder builder;
    core::LeaveOneOut turns;
    for (int pair = 1; pair <= 9; ++pair)
        turns.turns.push_back(
            {pair, -0.01, pair == 3 || pair == 7 ? VerdictClass::undecided : VerdictClass::less});
    builder.raw().leave_one_out = turns;
    EXPECT_EQ(Words(builder, {}).qualifier(core::Qualifier::sensitive),
              "Sensitive: the verdict hangs on single pairs. It changes when pair 3 (cannot tell) "
              "or 7 (cannot tell) is left out.");
}

TEST(WordsOfQualifiers, NameTheChecksThatFail)
{
    AnalysisBuilder builder;
    builder.raw().checks.order.state = core::CheckState::fails;
    builder.raw().checks.air.state = core::CheckState::fails;
    EXPECT_THAT(Words(builder, {}).qualifier(core::Qualifier::assumptions).toStdString(),
                ::testing::HasSubstr("(independent pairs and same air)"));
}

TEST(WordsOfQualifiers, HaveASentenceForEachOfThem)
{
    const core::Analysis analysis = AnalysisBuilder();
    const Words words(analysis, {});
    for (const core::Qualifier qualifier :
         {core::Qualifier::openDesign, core::Qualifier::fragile, core::Qualifier::sensitive,
          core::Qualifier::assumptions, core::Qualifier::smallerThanMargin,
          core::Qualifier::interim}) {
        EXPECT_TRUE(words.qualifier(qualifier).endsWith(u'.'))
            << words.qualifier(qualifier).toStdString();
        EXPECT_FALSE(Words::qualifierName(qualifier).isEmpty());
    }
}

TEST(WordsOfChecks, SayThatAnEmptyCheckIsNotComputed)
{
    const core::Analysis analysis = AnalysisBuilder();
    const Words words(analysis, {});
    for (const CheckKind kind : kCheckKinds)
        EXPECT_TRUE(words.check(kind).startsWith(QLatin1String("Not computed:")))
            << words.check(kind).toStdString();
}

TEST(WordsOfChecks, GrowFirmerFromNoteToFailure)
{
    AnalysisBuilder builder;
    core::Check& normal = builder.raw().checks.normal;
    normal.statistic = 0.8;
    normal.p = 0.03;
    normal.state = core::CheckState::note;
    EXPECT_THAT(Words(builder, {}).check(CheckKind::normal).toStdString(),
                ::testing::HasSubstr("perhaps"));
    normal.p = 0.004;
    normal.state = core::CheckState::fails;
    EXPECT_THAT(Words(builder, {}).check(CheckKind::normal).toStdString(),
                ::testing::Not(::testing::HasSubstr("perhaps")));
}

TEST(WordsOfChecks, TellResemblanceFromSwinging)
{
    AnalysisBuilder builder;
    core::OrderCheck& order = builder.raw().checks.order;
    order.statistic = 0.7;
    order.p = 0.002;
    order.lag1 = 0.6;
    order.state = core::CheckState::fails;
    EXPECT_THAT(Words(builder, {}).check(CheckKind::order).toStdString(),
                ::testing::HasSubstr("resemble each other"));
    order.lag1 = -0.6;
    EXPECT_THAT(Words(builder, {}).check(CheckKind::order).toStdString(),
                ::testing::HasSubstr("swing to and fro"));
}

TEST(WordsOfFindings, AreSentencesForEveryRuleWithAndWithoutNumbers)
{
    const FindingWords words{UnitsShown{}};
    for (const core::Rule rule : core::allRules()) {
        core::Finding bare;
        bare.rule = rule;
        core::Finding full = bare;
        full.value = -12.5;
        full.limit = 10.0;
        full.unit = "W";
        full.from_s = 61.2;
        full.to_s = 63.0;
        full.detail = "windscreen";
        full.length_s = 1.8;
        full.output_w = 812.0;
        for (const core::Finding& finding : {bare, full}) {
            const QString text = words.finding(finding);
            EXPECT_GT(text.size(), 10) << core::ruleName(rule);
            EXPECT_FALSE(test::hasNonsense(text)) << text.toStdString();
        }
        EXPECT_THAT(words.finding(full).toStdString(), ::testing::HasSubstr("61.2"));
        EXPECT_FALSE(FindingWords::ruleName(rule).isEmpty());
        EXPECT_EQ(FindingWords::reasonName(std::string(core::ruleName(rule))),
                  FindingWords::ruleName(rule));
    }
    EXPECT_EQ(FindingWords::reasonName("other"), "other reason");
}

TEST(WordsOfNumbers, NeverShowWhatIsNoNumber)
{
    const NumberWords words{UnitsShown{}};
    const double none = std::nan("");
    for (const QString& text : {words.fixed(none, 2), words.shortest(none), words.significant(none),
                                words.change(none, 2), words.range(none, none, 2),
                                words.signedRange(none, none, 2), words.p(none)})
        EXPECT_FALSE(test::hasNonsense(text)) << text.toStdString();
}

TEST(WordsOfNumbers, GiveAnIntervalTwoSignificantDigits)
{
    EXPECT_EQ(NumberWords::decimalsOfRange(std::log(0.98), std::log(1.02)), 1); // half width 2 %
    EXPECT_EQ(NumberWords::decimalsOfRange(std::log(0.995), std::log(1.005)), 2);
    EXPECT_EQ(NumberWords::decimalsFor(12.0), 0);
    EXPECT_EQ(NumberWords::decimalsFor(0.0), 2);
}

TEST(WordsOfNumbers, RoundSmallProbabilitiesToASign)
{
    const NumberWords words{UnitsShown{}};
    EXPECT_EQ(words.p(0.0637), "p = 0.064");
    EXPECT_EQ(words.p(1e-7), "p < 0.001");
    EXPECT_EQ(words.significant(3410.0), "3400");
    EXPECT_EQ(words.joined({"A", "B", "C"}), "A, B and C");
}

} // namespace
