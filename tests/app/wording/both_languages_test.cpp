// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: every kind of sentence once, in both languages.
#include "app/output/analysis_text.h"
#include "app/output/report_html.h"
#include "app/output/run_card.h"
#include "app/wording/checks.h"
#include "app/wording/companions.h"
#include "app/wording/findings.h"
#include "app/wording/history.h"
#include "app/wording/ledger.h"
#include "app/wording/runs.h"
#include "app/wording/verdict.h"
#include "core/answer/pooled.h"
#include "core/planning/ledger.h"
#include "core/planning/plan.h"
#include "tests/app/output/analysis_builder.h"

#include <gmock/gmock.h>

#include <functional>
#include <regex>

// Whatever is said, is said in both languages.
namespace bothways::app::wording {
namespace {

using bothways::tests::AnAnalysis;
using core::Analysis;
using core::CheckState;
using ::testing::HasSubstr;
using ::testing::Not;

/// German with no sign between thousands, so that a point between digits is an English one.
Language germanOfTests()
{
    Language language = Language::named("de").value();
    language.setNumbers({",", "'"});
    return language;
}

/// The first "1.5" in a German text; thousands in fixed words ("5.000 Paare") are none.
std::string englishNumberIn(const std::string& text)
{
    static const std::regex number(R"(\d\.\d+)");
    for (std::sregex_iterator at(text.begin(), text.end(), number), end; at != end; ++at)
        if (at->str() != "5.000" && at->str() != "1.100")
            return at->str();
    return {};
}

class BothLanguages : public ::testing::Test {
protected:
    using Sentence = std::function<std::string(const Language&)>;

    void expectBoth(const Sentence& sentence, bool mayBeAlike = false)
    {
        const std::string here = sentence(english);
        const std::string there = sentence(german);
        EXPECT_NE(here, "");
        EXPECT_NE(there, "") << here;
        EXPECT_TRUE(mayBeAlike || here != there) << "no German for: " << here;
        EXPECT_EQ(englishNumberIn(there), "") << there;
        for (const std::string& text : {here, there}) {
            EXPECT_THAT(text, Not(HasSubstr("{}")));
            EXPECT_THAT(text, Not(HasSubstr("##")));
            EXPECT_FALSE(std::regex_search(text, std::regex(R"(\b(nan|inf)\b)"))) << text;
        }
    }

    const Language english;
    const Language german = germanOfTests();
};

core::Finding bare(core::Rule rule)
{
    core::Finding finding;
    finding.rule = rule;
    finding.run = 9;
    return finding;
}

core::Finding measured(core::Rule rule, double value)
{
    core::Finding finding = bare(rule);
    finding.value = value;
    finding.limit = 0.75;
    finding.unit = "rpm";
    finding.from_s = 61.25;
    finding.to_s = 63.5;
    finding.length_s = 1.25;
    finding.output_w = 640.0;
    return finding;
}

core::Finding marked(core::Rule rule)
{
    core::Finding finding = bare(rule);
    finding.from_s = finding.to_s = 31.25;
    finding.words = {"heater off"};
    return finding;
}

TEST_F(BothLanguages, HaveASentenceForEveryRule)
{
    for (const core::Rule rule : core::allRules()) {
        for (const core::Finding& finding :
             {bare(rule), measured(rule, -12.5), measured(rule, 12.5), marked(rule)}) {
            expectBoth([&](const Language& in) { return findingSentence(in, finding); });
            expectBoth([&](const Language& in) { return findingWords(in, finding); });
        }
        expectBoth([&](const Language& in) { return ruleName(in, rule); });
        expectBoth(
            [&](const Language& in) { return reasonName(in, std::string(core::ruleName(rule))); });
    }
    expectBoth([](const Language& in) { return reasonName(in, "other"); });
    expectBoth([](const Language& in) { return reasonWord(in, "other"); });
    EXPECT_EQ(reasonWord(german, "rain"), "rain");
}

TEST_F(BothLanguages, SayHowASensorWasLostAndWhatElseHappened)
{
    using How = core::LostSensor::How;
    const std::vector<core::LostSensor> all{
        {"wind_ms", How::gap}, {"output_w", How::frozen}, {"rpm", How::zero}, {"a", How::fell}};
    for (std::size_t first = 0; first < all.size(); ++first) {
        core::Finding lost = measured(core::Rule::sensorLost, 15.0);
        lost.lost.assign(all.begin() + static_cast<std::ptrdiff_t>(first), all.end());
        expectBoth([&](const Language& in) { return findingSentence(in, lost); });
        EXPECT_THAT(findingSentence(german, lost), Not(HasSubstr("_ms")));
    }
    core::Finding mean = measured(core::Rule::roadSpeed, -3.5);
    mean.of_mean = true;
    expectBoth([&](const Language& in) { return findingSentence(in, mean); });
}

TEST_F(BothLanguages, SayASpeedInTheReadersUnits)
{
    const core::Finding crawled = measured(core::Rule::interrupted, 20.0);
    EXPECT_THAT(findingWords(english, crawled), HasSubstr("down to 20 km/h"));
    EXPECT_THAT(findingWords(english, crawled, {ShownUnit::mpgUs, true, false}),
                HasSubstr("down to 12 mph"));
    EXPECT_THAT(findingWords(german, crawled, {ShownUnit::mpgUs, true, false}),
                HasSubstr("bis hinab auf 12 mph"));
}

TEST_F(BothLanguages, SayWhyARuleWasNotChecked)
{
    for (const auto why : {core::WhyNotChecked::noTrace, core::WhyNotChecked::noChannel,
                           core::WhyNotChecked::noLimit, core::WhyNotChecked::notNoted,
                           core::WhyNotChecked::recordedTooSlowly, core::WhyNotChecked::noSpread,
                           core::WhyNotChecked::noSetTime})
        for (const char* what : {"", "overspeed.rpm"}) {
            const core::NotChecked notChecked{3, core::Rule::overspeed, why, what};
            expectBoth([&](const Language& in) { return notCheckedSentence(in, notChecked); });
            expectBoth([&](const Language& in) { return whyNotChecked(in, notChecked); });
        }
    for (const int oversped : {1, 2})
        for (const int reached : {1, 2}) {
            const core::OverspeedPattern pattern{640.5, reached, oversped, 0.5, 0.125, 0.875};
            expectBoth([&](const Language& in) { return patternSentence(in, pattern); });
        }
    for (const std::vector<int>& runs : {std::vector{3}, std::vector{3, 5}})
        expectBoth([&](const Language& in) { return spoiledRunsSentence(in, runs); });
}

TEST_F(BothLanguages, NameGradesAndMarks)
{
    for (const auto grade : {core::Grade::note, core::Grade::doubtful, core::Grade::spoils}) {
        expectBoth([&](const Language& in) { return gradeName(in, grade); });
        expectBoth([&](const Language& in) { return gradeWord(in, grade); });
        EXPECT_EQ(gradeWord(english, grade), core::gradeName(grade));
    }
    for (const char* word : {"passing_traffic", "gust", "adjusted", "other"})
        expectBoth([&](const Language& in) { return markName(in, word); });
    EXPECT_EQ(markName(german, "tail_wind"), "tail wind");
}

/// Everything that a check can have, in one state.
void setChecks(Analysis& a, CheckState state, double sign)
{
    for (core::Check* check : {&a.checks.normal, &a.checks.curve, &a.checks.spread})
        *check = {1.25, 0.0125, state};
    a.checks.outlier.pair = 4;
    for (core::Check* check :
         {static_cast<core::Check*>(&a.checks.outlier), static_cast<core::Check*>(&a.checks.order),
          static_cast<core::Check*>(&a.checks.direction)})
        *check = {2.5 * sign, 0.0005, state};
    a.checks.order.lag1 = 0.25 * sign;
    a.checks.direction.slope_per_h = 0.0125 * sign;
    a.checks.baseline = {0.0125, -0.0025, 0.0275, 6.5, 0.25, state};
    for (core::Check* check :
         {static_cast<core::Check*>(&a.checks.ways), static_cast<core::Check*>(&a.checks.settling),
          static_cast<core::Check*>(&a.checks.days)})
        *check = {2.5 * sign, 0.0005, state};
    a.checks.ways.effect_log = a.checks.settling.effect_log = 0.0125 * sign;
    a.checks.resolution = {0.125, 0.0625, state};
    a.checks.air.density_pct = -0.35;
    a.checks.air.wind_pct = 0.125;
    a.checks.air.state = state;
}

TEST_F(BothLanguages, HaveASentenceForEveryCheckInEveryState)
{
    for (const CheckState state :
         {CheckState::holds, CheckState::note, CheckState::fails, CheckState::notComputed}) {
        expectBoth([&](const Language& in) { return stateWords(in, state); });
        for (const double sign : {-1.0, 1.0}) {
            Analysis analysis = AnAnalysis().effect(0.81, -0.06, 1.69);
            setChecks(analysis, state, sign);
            analysis.checks.air.outside_range = sign > 0.0;
            for (const CheckKind kind : kCheckKinds) {
                EXPECT_EQ(stateOf(analysis.checks, kind), state);
                expectBoth([&](const Language& in) { return checkSentence(in, kind, analysis); });
            }
            EXPECT_EQ(checkWords(german, analysis).size(), kCheckKinds.size());
        }
    }
    Analysis wind = AnAnalysis().effect(0.81, -0.06, 1.69);
    wind.checks.air.wind_pct = 0.125;
    wind.checks.air.state = CheckState::holds;
    expectBoth([&](const Language& in) { return airSentence(in, wind); });
    for (const CheckKind kind : kCheckKinds) {
        expectBoth([&](const Language& in) { return checkName(in, kind); });
        expectBoth([&](const Language& in) { return checkWord(in, kind); });
    }
    for (const std::size_t pairs : {4u, 9u}) {
        Analysis few = AnAnalysis().effect(0.81, -0.06, 1.69);
        few.pairs.resize(pairs);
        expectBoth([&](const Language& in) { return checksPowerSentence(in, few); });
    }
}

TEST_F(BothLanguages, HaveASentenceForEveryVerdict)
{
    for (const auto cls : {core::VerdictClass::less, core::VerdictClass::more,
                           core::VerdictClass::equivalent, core::VerdictClass::undecided})
        for (const bool electric : {false, true})
            for (const std::optional<int> more :
                 {std::optional<int>(), std::optional(0), std::optional(1), std::optional(2)}) {
                Analysis analysis = AnAnalysis().effect(-1.25, -2.05, -0.45).verdict(cls);
                analysis.electric = electric;
                analysis.verdict.more_pairs_per_block = more;
                expectBoth([&](const Language& in) { return verdictSentence(in, analysis); });
                expectBoth([&](const Language& in) { return shortVerdict(in, analysis); });
                expectBoth([&](const Language& in) { return inUnits(in, analysis); });
                if (cls == core::VerdictClass::undecided)
                    expectBoth([&](const Language& in) { return whatItWouldTake(in, analysis); });
                else
                    EXPECT_EQ(whatItWouldTake(german, analysis), "");
            }
    for (const auto cls :
         {core::VerdictClass::less, core::VerdictClass::more, core::VerdictClass::equivalent,
          core::VerdictClass::undecided, core::VerdictClass::none})
        expectBoth([&](const Language& in) { return classWords(in, cls); });
}

TEST_F(BothLanguages, SayWhyThereIsNoVerdict)
{
    for (const auto reason :
         {core::NoVerdict::noRuns, core::NoVerdict::oneConfiguration, core::NoVerdict::tooFewPairs,
          core::NoVerdict::noTimeSpread, core::NoVerdict::noVariation})
        for (const std::vector<int>& unpaired :
             {std::vector<int>(), std::vector{9}, std::vector{9, 11}})
            for (const std::size_t pairs : {1u, 4u, 9u}) {
                Analysis analysis = AnAnalysis().noVerdict(reason);
                analysis.options.max_gap_min = 7.5;
                analysis.unpaired = unpaired;
                analysis.pairs.resize(pairs);
                expectBoth([&](const Language& in) { return verdictSentence(in, analysis); });
                analysis.runs = 0;
                expectBoth([&](const Language& in) { return verdictSentence(in, analysis); });
            }
}

TEST_F(BothLanguages, HaveASentenceForEveryQualifier)
{
    Analysis analysis = AnAnalysis().effect(0.81, -0.06, 1.69).verdict(core::VerdictClass::more);
    setChecks(analysis, CheckState::fails, 1.0);
    analysis.options.margin_pct = analysis.verdict.margin_pct = 1.5;
    analysis.verdict.fragile_by = {core::Companion::bracket, core::Companion::runs,
                                   core::Companion::blocks, core::Companion::labels,
                                   core::Companion::correlated};
    analysis.companions.runs = core::Interval{0.008, 0.001, 0.015, 14.0, 0.028};
    for (const int turns : {0, 1, 2, 9}) {
        analysis.verdict.looks = turns;
        if (turns == 2)
            analysis.companions.any_look = core::Interval{0.008, -0.01, 0.026, 14.0, 0.2};
        if (turns == 9) {
            analysis.companions.correlated.emplace();
            analysis.companions.correlated->cls = core::VerdictClass::equivalent;
        }
        analysis.leave_one_out = core::LeaveOneOut{0.006, 0.0125, true, 0, {}};
        for (int pair = 1; pair <= turns; ++pair)
            analysis.leave_one_out->turns.push_back({pair, 0.0125, core::VerdictClass::undecided});
        for (const auto qualifier :
             {core::Qualifier::openDesign, core::Qualifier::fragile,
              core::Qualifier::needsIndependence, core::Qualifier::sensitive,
              core::Qualifier::assumptions, core::Qualifier::smallerThanMargin,
              core::Qualifier::looked, core::Qualifier::interim, core::Qualifier::planLate}) {
            expectBoth(
                [&](const Language& in) { return qualifierSentence(in, qualifier, analysis); });
            expectBoth([&](const Language& in) { return qualifierName(in, qualifier); });
        }
    }
}

TEST_F(BothLanguages, HaveASentenceForEveryCompanion)
{
    Analysis with = AnAnalysis().effect(0.81, -0.06, 1.69).verdict(core::VerdictClass::undecided);
    const core::Interval interval{0.008, -0.001, 0.015, 14.5, 0.028};
    with.companions.bracket = with.companions.runs = with.companions.blocks = interval;
    with.companions.correlated = core::CorrelatedInterval{interval, 0.25};
    with.companions.labels = core::LabelsTest{0.0714, 14, true};
    with.companions.curved = with.companions.any_look = interval;
    with.companions.borrowed = core::BorrowedInterval{interval, 0.004, 0.005, 21.0, 0.4};
    with.companions.days = {{1, 9, 0.008, -0.001, 0.017}, {2, 9, -0.004, -0.02, 0.012}};
    Analysis drawn = with;
    drawn.companions.borrowed->ratio_p = 0.01;
    drawn.companions.days.resize(9, drawn.companions.days.front());
    drawn.companions.labels->exact = false;
    const Analysis without = AnAnalysis().noVerdict(core::NoVerdict::tooFewPairs);
    for (const auto companion :
         {core::Companion::bracket, core::Companion::runs, core::Companion::blocks,
          core::Companion::curved, core::Companion::labels, core::Companion::correlated,
          core::Companion::anyLook, core::Companion::borrowed, core::Companion::days}) {
        for (const Analysis& analysis : {with, drawn, without})
            expectBoth(
                [&](const Language& in) { return companionSentence(in, companion, analysis); });
        expectBoth([&](const Language& in) { return companionName(in, companion); });
        expectBoth([&](const Language& in) { return companionWord(in, companion); });
        EXPECT_EQ(companionWord(english, companion), core::name(companion));
    }
}

TEST_F(BothLanguages, SayHowSureTheAnswerIs)
{
    Analysis analysis = AnAnalysis().effect(0.81, -0.06, 1.69).verdict(core::VerdictClass::more);
    const Analysis none = AnAnalysis().noVerdict(core::NoVerdict::tooFewPairs);
    for (const Analysis& one : {analysis, none}) {
        expectBoth([&](const Language& in) { return detectableSentence(in, one); });
        expectBoth([&](const Language& in) { return leaveOneOutSentence(in, one); });
        expectBoth([&](const Language& in) { return discardsRestoredSentence(in, one); });
        expectBoth([&](const Language& in) { return tally(in, one); });
    }
    for (const bool changes : {false, true})
        for (const int without : {0, 1, 2, 3}) {
            analysis.leave_one_out = core::LeaveOneOut{
                0.006, 0.0125, changes, without, {{1, 0.006, {}}, {2, {}, {}}, {3, {}, {}}}};
            expectBoth([&](const Language& in) { return leaveOneOutSentence(in, analysis); });
        }
    for (const double claim : {-5.0, 5.0})
        for (const auto state :
             {core::ClaimState::borneOut, core::ClaimState::refuted, core::ClaimState::open}) {
            analysis.verdict.claim = core::ClaimAnswer{claim, state, 0.03};
            expectBoth([&](const Language& in) { return claimSentence(in, analysis); });
        }
    for (const int discarded : {1, 2}) {
        analysis.discarded = discarded;
        analysis.discards_restored = {};
        expectBoth([&](const Language& in) { return discardsRestoredSentence(in, analysis); });
        expectBoth([&](const Language& in) { return tally(in, analysis); });
        analysis.discards_restored.all = core::RestoredAll{};
        expectBoth([&](const Language& in) { return discardsRestoredSentence(in, analysis); });
        analysis.discards_restored.all =
            core::RestoredAll{0.0125, -0.0025, 0.0275, core::VerdictClass::undecided};
        for (const int up : {0, 1, 2}) {
            analysis.discards_restored.up = up;
            analysis.discards_restored.down = 2 - up;
            expectBoth([&](const Language& in) { return discardsRestoredSentence(in, analysis); });
        }
    }
}

TEST_F(BothLanguages, HaveASentenceForEveryNote)
{
    for (const auto kind :
         {core::NoteKind::discardedByScreening, core::NoteKind::controlUsed,
          core::NoteKind::controlIncomplete, core::NoteKind::pairMarkIgnored,
          core::NoteKind::mixedUnits, core::NoteKind::dateAssumed, core::NoteKind::sheetDialect,
          core::NoteKind::densityOutsideRange, core::NoteKind::consumptionFromTrace,
          core::NoteKind::consumptionLacking, core::NoteKind::pairingNotExact})
        expectBoth([&](const Language& in) {
            return noteSentence(in, {kind, core::Message::verbatim("3"), {{9, "overspeed"}}});
        });
}

TEST_F(BothLanguages, AskAboutOddRuns)
{
    core::Study study;
    study.runs.resize(1);
    for (const auto unit : {core::ConsumptionUnit::lPer100km, core::ConsumptionUnit::kwhPer100km,
                            core::ConsumptionUnit::mpgUs}) {
        study.runs[0].consumption = core::Consumption{8.25, unit, 2};
        core::OddRun odd;
        odd.run = 3;
        odd.other = 2;
        odd.times = 2.5;
        odd.l_per_100km = 20.5;
        odd.usual_l_per_100km = 8.25;
        for (const auto what :
             {core::OddRun::What::stillDriving, core::OddRun::What::consumption}) {
            odd.what = what;
            expectBoth([&](const Language& in) { return oddRunSentence(in, odd, study); });
        }
    }
}

TEST_F(BothLanguages, NameEveryKindOfChange)
{
    for (const char* kind : {"new",           "add_run",        "edit_run",
                             "edit_runs",     "remove_runs",    "discard",
                             "count",         "pair",           "unpair",
                             "set",           "rename",         "import",
                             "import_trace",  "assign_trace",   "unassign_trace",
                             "cut_recording", "drop_recording", "overrule",
                             "look",          "blind",          "undo",
                             "redo"}) {
        expectBoth([&](const Language& in) { return historyKind(in, kind); });
        expectBoth([&](const Language& in) { return historySentence(in, kind, "x"); });
    }
}

core::Study exampleDay()
{
    core::Study study;
    study.properties.name = "day";
    study.properties.limits["overspeed.rpm"] = 3200.5;
    // Whole numbers: a property stands in the report as it is typed, with a point.
    study.properties.timed_accessories.push_back({"heated_windscreen", 180.0, 7.0});
    for (int i = 0; i < 18; ++i) {
        core::Run run;
        run.number = i + 1;
        run.configuration = i / 6 == 1 ? "B" : "A";
        run.direction = i % 2 == 0 ? "out" : "return";
        run.start.us = 1'773'500'000'000'000 + 600'000'000LL * i;
        run.consumption = core::Consumption{8.25, core::ConsumptionUnit::lPer100km, 2};
        run.distance_km = 5.25;
        study.runs.push_back(run);
    }
    study.runs[3].discard = core::Discard{"overspeed", "seen"};
    return study;
}

Analysis exampleAnswer()
{
    Analysis analysis =
        AnAnalysis().effect(0.81, -0.06, 1.69).verdict(core::VerdictClass::undecided);
    setChecks(analysis, CheckState::note, 1.0);
    const core::Interval interval{0.008, -0.001, 0.015, 14.5, 0.028};
    analysis.companions.bracket = interval;
    analysis.companions.labels = core::LabelsTest{0.0714, 84, true};
    analysis.companions.settings.push_back({"", 4, 0.0125, -0.0025, 0.0275, -0.0035, 0.0285});
    analysis.verdict.qualifiers = {core::Qualifier::interim};
    analysis.leave_one_out = core::LeaveOneOut{
        0.006,
        0.0125,
        true,
        0,
        {{1, 0.006, core::VerdictClass::undecided}, {2, 0.0125, core::VerdictClass::more}}};
    analysis.discarded = 1;
    analysis.discards_restored = {
        core::RestoredAll{0.0125, -0.0025, 0.0275, core::VerdictClass::undecided},
        {{4, 0.0125, core::VerdictClass::undecided, true}, {5, {}, {}, false}, {6, {}, {}, true}},
        1,
        0};
    analysis.unpaired = {9};
    analysis.days = 2;
    analysis.notes.push_back({core::NoteKind::mixedUnits, {}});
    return analysis;
}

core::Screening exampleScreening()
{
    core::Screening screening;
    screening.findings = {measured(core::Rule::overspeed, 3410.5), bare(core::Rule::adjusted)};
    screening.findings[0].grade = core::Grade::spoils;
    screening.not_checked = {
        {3, core::Rule::vibration, core::WhyNotChecked::noLimit, "vibration.ms2"}};
    screening.pattern = core::OverspeedPattern{640.5, 2, 1, 0.5, 0.125, 0.875};
    return screening;
}

/// Words of English that no German text of ours has.
std::string englishWordIn(const std::string& text)
{
    static const std::regex word(
        R"(\b(the|and|of|with|runs?|pairs?|none|counted|discarded|less|more|from|is|are|not)\b)");
    std::smatch found;
    if (!std::regex_search(text, found, word))
        return {};
    return found.str() + " in ..." + text.substr(std::max<long>(found.position() - 40, 0), 90);
}

TEST(GermanText, HasNoEnglishWordAndNoEnglishNumber)
{
    const Language in = germanOfTests();
    const core::Study study = exampleDay();
    const Analysis analysis = exampleAnswer();
    const core::Screening screening = exampleScreening();
    TextOptions options;
    options.language = in;
    core::PlanOptions asked;
    core::Plan plan = core::makePlan(asked).value();
    plan.s_upper80 = plan.half_width_upper80_log = plan.detectable_upper80_log = 0.0125;
    const std::vector<core::Plan> plans{plan};
    const std::vector<core::SequenceWeakness> weakness(1);
    const core::Ledger ledger = core::makeLedger(core::LedgerOptions{}).value();
    const std::vector<StudyRow> rows{{"x", core::StudyEffect{"x", 0.01, 0.0025, 6.5}},
                                     {"y", {}, core::VerdictClass::none}};
    const core::Pooled pooled =
        core::pool(std::vector{*rows[0].effect, *rows[0].effect}, 0.95).value();
    const std::vector<NoiseOfStudy> noises{{"x", {0.0125, 6.5}}};
    for (const std::string& text :
         {analysisText(analysis, screening, options), screeningText(in, screening, false, study),
          runsText(in, study, analysis, screening), planText(in, plan, noises),
          plansText(in, plans, weakness), ledgerText(in, ledger, 250.5),
          pooledText(in, {rows, pooled}), pooledText(in, {rows, {}}),
          measuredBesideLedger(in, analysis, ledger)}) {
        EXPECT_EQ(englishNumberIn(std::regex_replace(text, std::regex(R"(\w+\.\w+\))"), "")), "")
            << text;
        EXPECT_EQ(englishWordIn(text), "") << text;
    }
}

/// What a reader of the page sees, without style sheet, tags and places in pictures.
std::string seenOn(const std::string& html)
{
    std::string text = html.substr(html.find("<body>"));
    text = std::regex_replace(text, std::regex("<[^>]*>"), " ");
    return text;
}

TEST(GermanPage, OfTheReportHasNoEnglishWordAndSaysItsLanguage)
{
    const core::Study study = exampleDay();
    const Analysis analysis = exampleAnswer();
    const core::Screening screening = exampleScreening();
    ReportInput input{study, analysis, screening, {}, "00ff", "tag.csv"};
    input.madeBy = "Bothways";
    const std::string english = reportHtml(input);
    input.language = germanOfTests();
    const std::string html = reportHtml(input);
    EXPECT_THAT(english, HasSubstr("<html lang=\"en\">"));
    EXPECT_THAT(html, HasSubstr("<html lang=\"de\">"));
    EXPECT_EQ(
        englishWordIn(std::regex_replace(seenOn(html), std::regex(R"(\bout\b|\breturn\b)"), "")),
        "");
    EXPECT_EQ(
        englishNumberIn(std::regex_replace(seenOn(html), std::regex(R"([a-z_]+\.[a-z_]+)"), "")),
        "");
}

TEST(GermanPage, OfTheRunCardHasNoEnglishWordAndSaysItsLanguage)
{
    const core::Study study = exampleDay();
    core::PlanOptions asked;
    RunCardInput card{study.properties, core::makePlan(asked).value()};
    card.language = germanOfTests();
    const std::string html = runCardHtml(card).take();
    EXPECT_THAT(html, HasSubstr("<html lang=\"de\">"));
    EXPECT_THAT(html, HasSubstr("<td>A</td><td>hin</td>"));
    EXPECT_EQ(englishWordIn(seenOn(html)), "");
    EXPECT_EQ(englishNumberIn(seenOn(html)), "");
}

} // namespace
} // namespace bothways::app::wording
