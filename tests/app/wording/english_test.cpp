// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/alike_findings.h"
#include "app/wording/checks.h"
#include "app/wording/companions.h"
#include "app/wording/findings.h"
#include "app/wording/runs.h"
#include "app/wording/verdict.h"

#include "tests/app/output/analysis_builder.h"

#include <gmock/gmock.h>

namespace bothways::app::wording {
namespace {

using bothways::tests::AnAnalysis;
using core::Analysis;
using core::CheckState;
using core::VerdictClass;
using ::testing::HasSubstr;
using ::testing::Not;

const Language english;

std::string said(const Analysis& analysis, ShownUnit unit = ShownUnit::lPer100km)
{
    return verdictSentence(english, analysis, unit);
}

TEST(VerdictSentence, SaysLessInPerCentAndInLitres)
{
    EXPECT_EQ(said(AnAnalysis().effect(-1.2, -2.0, -0.4).verdict(VerdictClass::less)),
              "B used 1.20 % less fuel than A (95 % interval: 0.40 % to 2.00 % less): "
              "7.904 L/100 km in place of 8.000. That is at least 0.40 % less.");
}

TEST(VerdictSentence, SaysItInMilesAGallonToo)
{
    EXPECT_EQ(
        said(
            AnAnalysis().effect(3.6, 1.6, 5.6).verdict(VerdictClass::more).names("off", "roof box"),
            ShownUnit::mpgUs),
        "'roof box' used 3.6 % more fuel than 'off' (95 % interval: 1.6 % to 5.6 % more): "
        "28.38 mpg (US) in place of 29.40. That is at least 1.6 % more.");
}

TEST(VerdictSentence, SaysEnergyWithElectricDrive)
{
    const std::string text = said(
        AnAnalysis().effect(-1.2, -2.0, -0.4).verdict(VerdictClass::less).with([](Analysis& a) {
            a.electric = true;
        }),
        ShownUnit::mpgUs);
    EXPECT_THAT(text, HasSubstr("less energy than A"));
    EXPECT_THAT(text, HasSubstr("kWh/100 km"));
}

TEST(VerdictSentence, GivesNoLitresWhereOnlyARatioToTheControlVehicleIsKnown)
{
    EXPECT_EQ(
        said(
            AnAnalysis().effect(-1.2, -2.0, -0.4).verdict(VerdictClass::less).with([](Analysis& a) {
                a.notes.push_back({core::NoteKind::controlUsed, {}});
            })),
        "B used 1.20 % less fuel than A (95 % interval: 0.40 % to 2.00 % less). That is at least "
        "0.40 % less.");
}

TEST(VerdictSentence, OfEquivalenceUsesTheIntervalThatDecidedIt)
{
    EXPECT_EQ(said(AnAnalysis().effect(0.1, -0.5, 0.7).verdict(VerdictClass::equivalent)),
              "No difference as large as 1 % between B and A: the effect lies between 0.38 % less "
              "and 0.58 % more (90 % interval).");
}

TEST(VerdictSentence, OfDoubtSaysWhatWasInReachAndWhatItWouldTake)
{
    const Analysis analysis =
        AnAnalysis().effect(0.81, -0.063, 1.69).verdict(VerdictClass::undecided).with([](auto& a) {
            a.verdict.more_pairs_per_block = 2;
        });
    EXPECT_EQ(
        said(analysis),
        "These runs cannot tell B from A: the effect lies between 0.06 % less and 1.69 % "
        "more (95 % interval). They could have shown 1.2 % or more; 2 more pairs a block would "
        "show 1 %.");
}

TEST(VerdictSentence, NeverSignsAPercentage)
{
    for (const VerdictClass cls : {VerdictClass::less, VerdictClass::undecided})
        EXPECT_THAT(said(AnAnalysis().effect(-1.2, -2.0, -0.4).verdict(cls)), Not(HasSubstr("-")));
}

TEST(NoVerdict, SaysWhatIsMissing)
{
    const auto none = [](core::NoVerdict reason, auto change) {
        return said(AnAnalysis().noVerdict(reason).with(change));
    };
    EXPECT_EQ(none(core::NoVerdict::noRuns, [](Analysis& a) { a.runs = 0; }),
              "No verdict: there are no runs yet.");
    EXPECT_EQ(none(core::NoVerdict::noRuns, [](Analysis& a) { a.counted = 0; }),
              "No verdict: every run is discarded.");
    EXPECT_THAT(none(core::NoVerdict::oneConfiguration, [](Analysis& a) { a.blocks.resize(1); }),
                HasSubstr("only A has runs that count"));
    EXPECT_EQ(none(core::NoVerdict::tooFewPairs,
                   [](Analysis& a) {
                       a.pairs.resize(4);
                       a.unpaired = {9};
                   }),
              "No verdict: 3 pairs of A and 1 of B. Each needs at least 2 pairs, out and back in "
              "one block. Run 9 has no partner within 30 minutes.");
    EXPECT_THAT(none(core::NoVerdict::noVariation, [](Analysis&) {}),
                HasSubstr("agree to the last digit"));
}

TEST(Qualifiers, NameTheCompanionThatDisagrees)
{
    const Analysis analysis = AnAnalysis().effect(0.81, -0.06, 1.69).with([](Analysis& a) {
        a.verdict.fragile_by = {core::Companion::runs, core::Companion::labels};
        a.companions.runs = core::Interval{0.008, 0.001, 0.015, 14.0, 0.028, VerdictClass::more};
        a.companions.labels = core::LabelsTest{0.031, 84, true};
    });
    EXPECT_EQ(qualifierSentence(english, core::Qualifier::fragile, analysis),
              "Fragile: another honest way to the same number disagrees: single runs (more) and "
              "dealing the labels (p = 0.031).");
}

TEST(Qualifiers, NameThePairsOnWhichTheVerdictHangs)
{
    const Analysis analysis =
        AnAnalysis().effect(0.81, -0.06, 1.69).verdict(VerdictClass::undecided).with([](auto& a) {
            a.leave_one_out = core::LeaveOneOut{
                0.006,
                0.01,
                true,
                0,
                {{1, 0.0087, VerdictClass::undecided}, {3, 0.0093, VerdictClass::more}}};
        });
    EXPECT_EQ(qualifierSentence(english, core::Qualifier::sensitive, analysis),
              "Sensitive: the verdict hangs on single pairs. It changes when pair 3 (more) is left "
              "out.");
    Analysis two = analysis;
    two.leave_one_out->turns.push_back({4, 0.0094, VerdictClass::more});
    EXPECT_THAT(qualifierSentence(english, core::Qualifier::sensitive, two),
                HasSubstr("when pair 3 (more) or 4 (more) is left out."));
}

TEST(Qualifiers, NameTheAssumptionThatIsNotMetSoThatItReadsRight)
{
    const Analysis analysis =
        AnAnalysis().with([](auto& a) { a.checks.outlier.state = core::CheckState::fails; });
    EXPECT_EQ(
        qualifierSentence(english, core::Qualifier::assumptions, analysis),
        "An assumption is not met (outlier: no outlying pair): read that check before you trust "
        "the interval.");
    EXPECT_EQ(stateWords(english, core::CheckState::fails), "not met");
}

TEST(Labels, SayThatTheLabelsWereNotDrawnByLot)
{
    const Analysis analysis = AnAnalysis().effect(0.81, -0.06, 1.69).with([](Analysis& a) {
        a.companions.labels = core::LabelsTest{0.0714, 84, true};
    });
    const std::string text = companionSentence(english, core::Companion::labels, analysis);
    EXPECT_THAT(text, HasSubstr("p = 0.071, over all 84 deals"));
    EXPECT_THAT(text, HasSubstr("not drawn by lot"));
}

TEST(Checks, SayThatPassingIsNoProof)
{
    const Analysis analysis = AnAnalysis().effect(0.81, -0.06, 1.69).with([](Analysis& a) {
        a.checks.order.statistic = 2.956;
        a.checks.order.lag1 = -0.592;
        a.checks.order.p = 0.38;
        a.checks.order.state = CheckState::holds;
    });
    EXPECT_THAT(orderSentence(english, analysis), HasSubstr("passing is no proof"));
    EXPECT_EQ(checksPowerSentence(english, analysis),
              "With 9 pairs these checks see gross faults only.");
}

TEST(Checks, AllSayWhyTheyAreNotComputed)
{
    const Analysis none = AnAnalysis().noVerdict(core::NoVerdict::tooFewPairs);
    for (const auto& sentence :
         {normalSentence(english, none), outlierSentence(english, none),
          orderSentence(english, none), curveSentence(english, none), spreadSentence(english, none),
          baselineSentence(english, none), directionSentence(english, none),
          resolutionSentence(english, none), airSentence(english, none)})
        EXPECT_THAT(sentence, HasSubstr("Not computed: it takes"));
    EXPECT_EQ(checksPowerSentence(english, none), "");
}

TEST(Checks, OfTheAirSayWhichWayItPushed)
{
    const Analysis analysis = AnAnalysis().effect(0.81, -0.06, 1.69).with([](Analysis& a) {
        a.checks.air.density_pct = -0.35;
        a.checks.air.wind_pct = 0.12;
        a.checks.air.state = CheckState::holds;
    });
    EXPECT_EQ(airSentence(english, analysis),
              "By the air alone, B would have used 0.35 % less (density) and "
              "0.120 % more (wind): little beside the interval. No "
              "correction is made.");
}

core::Finding finding(core::Rule rule, double value, std::optional<double> limit = {})
{
    core::Finding made;
    made.rule = rule;
    made.run = 9;
    made.value = value;
    made.limit = limit;
    return made;
}

core::Finding during(core::Finding made, double from_s, double to_s)
{
    made.from_s = from_s;
    made.to_s = to_s;
    return made;
}

TEST(Findings, SayWhatHappenedWhenAndAgainstWhichLimit)
{
    EXPECT_EQ(
        findingSentence(english, during(finding(core::Rule::overspeed, 3410, 3200), 61.2, 63.0)),
        "run 9: rotor at 3,410 rpm from 61.2 s to 63.0 s, above the limit of 3,200 rpm");
    EXPECT_EQ(findingSentence(english, finding(core::Rule::overspeed, 3410, 3200)),
              "run 9: rotor at 3,410 rpm, above the limit of 3,200 rpm");
    EXPECT_EQ(findingSentence(english, finding(core::Rule::sameRunTwice, 4)),
              "run 9: same start, direction and consumption as run 4: typed twice?");
}

TEST(Findings, OfATimerSayWhetherItWentOffInTheRunOrBefore)
{
    core::Finding timer = finding(core::Rule::accessoryTimer, -200);
    timer.accessory = "windscreen";
    EXPECT_EQ(findingSentence(english, timer),
              "run 9: windscreen (200 W) had switched itself off before the run");
    EXPECT_EQ(findingSentence(english, during(timer, 96, 96)),
              "run 9: windscreen (200 W) switched itself off at 96.0 s");
}

bool signedRule(core::Rule rule)
{
    return rule != core::Rule::overspeed && rule != core::Rule::loadLost &&
           rule != core::Rule::sameRunTwice;
}

TEST(Findings, HaveASentenceForEveryRuleWithAndWithoutNumbers)
{
    for (const core::Rule rule : core::allRules()) {
        core::Finding bare;
        bare.rule = rule;
        bare.run = 3;
        const std::string without = findingSentence(english, bare);
        const std::string with = findingSentence(
            english, during(finding(rule, signedRule(rule) ? -12.5 : 12.5, 4.0), 1.0, 2.0));
        EXPECT_THAT(without, HasSubstr("run 3: "));
        EXPECT_THAT(with, HasSubstr("run 9: "));
        for (const std::string& text : {without, with}) {
            EXPECT_THAT(text, Not(HasSubstr("nan")));
            EXPECT_THAT(text, Not(HasSubstr("-12"))); // sizes in words, not signed
            EXPECT_THAT(text, Not(HasSubstr("_"))) << "a rule's bare name is no sentence";
        }
    }
}

TEST(Findings, OfALostSensorSayWhichAndHow)
{
    core::Finding lost = during(finding(core::Rule::sensorLost, 15, 1), 80, 95);
    lost.lost = {{"wind_ms", core::LostSensor::How::gap},
                 {"output_w", core::LostSensor::How::frozen},
                 {"rotor_rpm", core::LostSensor::How::gap}};
    EXPECT_EQ(findingSentence(english, lost),
              "run 9: no samples of wind and 2 more channels from 80.0 s to 95.0 s");
    lost.lost = {{"output_w", core::LostSensor::How::frozen}};
    EXPECT_EQ(findingSentence(english, lost),
              "run 9: output frozen at one value from 80.0 s to 95.0 s "
              "while the vehicle's speed moved");
    lost.lost = {{"rotor_rpm", core::LostSensor::How::zero}};
    EXPECT_EQ(findingSentence(english, lost),
              "run 9: rotor speed read 0 from 80.0 s to 95.0 s while the device gave power");
}

TEST(Findings, OfAMarkSayThatAPersonMadeIt)
{
    core::Finding mark = during(finding(core::Rule::accessoryChange, 0), 31.2, 31.2);
    mark.value.reset();
    mark.words = {"heater off"};
    EXPECT_EQ(findingSentence(english, mark),
              "run 9: accessory load changed, noted by hand at 31.2 s (heater off)");
}

TEST(NotChecked, NamesWhatIsMissing)
{
    EXPECT_EQ(notCheckedSentence(english, {3, core::Rule::vibration, core::WhyNotChecked::noLimit,
                                           "vibration.ms2"}),
              "run 3: vibration not checked: no limit is set (vibration.ms2)");
}

TEST(Pattern, IsAHintAndNotAFact)
{
    core::OverspeedPattern pattern{640.0, 4, 4, 1.0, 0.3976, 1.0};
    EXPECT_THAT(patternSentence(english, pattern), HasSubstr("a hint, not a fact"));
    pattern.oversped = 2;
    EXPECT_THAT(patternSentence(english, pattern), HasSubstr("Not each time"));
}

TEST(ShownUnit, IsThatOfTheRuns)
{
    core::Study study;
    EXPECT_EQ(shownUnitOf(study), ShownUnit::lPer100km);
    study.runs.resize(2); // the first has no consumption
    study.runs[1].consumption = core::Consumption{30.1, core::ConsumptionUnit::mpgUs, 1};
    EXPECT_EQ(shownUnitOf(study), ShownUnit::mpgUs);
    EXPECT_EQ(shownUnitFromName("km_per_l"), ShownUnit::kmPerL);
    EXPECT_FALSE(shownUnitFromName("kwh_per_100km"));
}

TEST(English, DrawsNeighbouringRunsTogether)
{
    EXPECT_EQ(runList({2, 3, 5, 6, 7, 8, 9}), "2, 3, 5–9");
    EXPECT_EQ(runList({9, 8}), "9, 8");
    EXPECT_EQ(runList({7, 7, 8, 9}), "7–9");
    EXPECT_EQ(runList({}), "");
    EXPECT_EQ(runsWords(english, {4}), "run 4");
    EXPECT_EQ(runsWords(english, {4, 5}), "runs 4, 5");
}

TEST(English, SaysFindingsThatAreAlikeOnce)
{
    std::vector<core::Finding> findings;
    for (const int run : {1, 2, 3, 7}) {
        findings.push_back(finding(core::Rule::adjusted, 0, 0));
        findings.back().run = run;
    }
    findings.push_back(finding(core::Rule::overspeed, 3410, 3200));
    const auto alike = alikeFindings(english, findings);
    ASSERT_EQ(alike.size(), 2U);
    EXPECT_TRUE(alike[0].sentence(english).starts_with("runs 1–3, 7: "));
    EXPECT_EQ(alike[1].sentence(english), findingSentence(english, findings.back()));
}

} // namespace
} // namespace bothways::app::wording
