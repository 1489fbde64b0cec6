// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_text.h"

#include "app/wording/history.h"
#include "tests/app/output/analysis_builder.h"

#include <gmock/gmock.h>

#include <sstream>

namespace bothways::app {
namespace {

using bothways::tests::AnAnalysis;
using core::Analysis;
using core::VerdictClass;
using ::testing::HasSubstr;
using ::testing::Not;

AnAnalysis undecided()
{
    return AnAnalysis().effect(0.81, -0.063, 1.69).verdict(VerdictClass::undecided);
}

std::size_t columns(const std::string& line)
{
    return static_cast<std::size_t>(
        std::count_if(line.begin(), line.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

TEST(AnalysisText, BeginsWithTheVerdict)
{
    const Analysis analysis = undecided();
    EXPECT_THAT(analysisText(analysis, {}),
                ::testing::StartsWith("These runs cannot tell B from A"));
}

TEST(AnalysisText, StaysInsideItsWidthSoThatATerminalNeedNotBreakIt)
{
    std::istringstream lines(analysisText(undecided(), {}));
    for (std::string line; std::getline(lines, line);)
        EXPECT_LE(columns(line), 96U) << line;
}

TEST(AnalysisText, IsPlainUnlessColourIsAskedFor)
{
    EXPECT_THAT(analysisText(undecided(), {}), Not(HasSubstr("\033")));
    TextOptions options;
    options.colour = true;
    EXPECT_THAT(analysisText(undecided(), {}, options), HasSubstr("\033[1m"));
}

TEST(AnalysisText, OfNoVerdictSaysWhatIsMissingAndShowsNoTable)
{
    const std::string text =
        analysisText(AnAnalysis().noVerdict(core::NoVerdict::oneConfiguration), {});
    EXPECT_THAT(text, ::testing::StartsWith("No verdict: "));
    EXPECT_THAT(text, Not(HasSubstr("Ways to the number")));
    EXPECT_THAT(text, Not(HasSubstr("nan")));
}

TEST(AnalysisText, ShowsWhatPuttingEachDiscardBackWouldDo)
{
    const std::string text = analysisText(undecided().with([](Analysis& a) {
        a.discarded = 2;
        a.discards_restored.all =
            core::RestoredAll{0.003, -0.0045, 0.0107, VerdictClass::equivalent};
        a.discards_restored.each = {{9, 0.0081, VerdictClass::undecided, true},
                                    {12, std::nullopt, VerdictClass::none, false}};
    }),
                                          {});
    EXPECT_THAT(text, HasSubstr("with run 9: 0.81 % more, cannot tell"));
    EXPECT_THAT(text, HasSubstr("with run 12: has no consumption, so it cannot be put back"));
}

TEST(ScreeningText, SaysThatNotCheckedIsNotPassed)
{
    core::Screening screening;
    for (const int run : {1, 2})
        screening.not_checked.push_back(
            {run, core::Rule::vibration, core::WhyNotChecked::noLimit, "vibration.ms2"});
    const std::string text = screeningText(Language::english(), screening);
    EXPECT_THAT(text, HasSubstr("Nothing was found in what could be checked."));
    EXPECT_THAT(text, HasSubstr("Not checked (which is not the same as passed)"));
    EXPECT_THAT(text, HasSubstr("vibration         no limit is set (vibration.ms2)\n"));
}

TEST(ScreeningText, SetsTheFindingsOfDiscardedRunsApart)
{
    core::Study study;
    study.runs.resize(2);
    study.runs[0].number = 1;
    study.runs[1].number = 2;
    study.runs[1].discard = core::Discard{"overspeed", ""};
    core::Screening screening;
    for (const int run : {1, 2}) {
        core::Finding finding;
        finding.rule = core::Rule::overspeed;
        finding.run = run;
        finding.value = 3410.0;
        finding.limit = 3200.0;
        finding.unit = "rpm";
        finding.grade = core::Grade::spoils;
        screening.findings.push_back(std::move(finding));
    }
    const std::string text = screeningText(Language::english(), screening, false, study);
    const std::size_t heading = text.find("On runs that are discarded already: 1 finding\n");
    ASSERT_NE(heading, std::string::npos) << text;
    EXPECT_LT(text.find("run 1: rotor"), heading);
    EXPECT_GT(text.find("run 2: rotor"), heading);
    study.runs[0].discard = study.runs[1].discard;
    EXPECT_THAT(screeningText(Language::english(), screening, false, study),
                HasSubstr("Nothing was found on a run that counts"));
}

TEST(RunsText, RoundsAConsumptionThatARecordingGave)
{
    core::Study study;
    study.runs.resize(1);
    study.runs[0].number = 1;
    study.runs[0].consumption =
        core::Consumption{36.06773648648654, core::ConsumptionUnit::lPer100km, 14, true};
    EXPECT_THAT(runsText(Language::english(), study, AnAnalysis(), {}),
                HasSubstr("  36.07 L/100 km"));
}

TEST(HistorySentence, SaysTheKindInWordsAlsoOfWhatWasUndone)
{
    EXPECT_EQ(wording::historySentence(Language::english(), "add_run", "run 13: A out"),
              "Run added: run 13: A out");
    EXPECT_EQ(wording::historySentence(Language::english(), "undo", "import s.csv: 3 runs"),
              "Undone: Run sheet imported: s.csv: 3 runs");
    EXPECT_EQ(wording::historySentence(Language::english(), "redo", "new "),
              "Done again: Study made");
    EXPECT_EQ(wording::historySentence(Language::english(), "unheard_of", ""), "unheard_of");
}

TEST(RunsText, ShowsADiscardWithItsReasonAndAPairByItsNumber)
{
    core::Study study;
    study.runs.resize(2);
    for (int i = 0; i < 2; ++i) {
        core::Run& run = study.runs[static_cast<std::size_t>(i)];
        run.number = i + 1;
        run.configuration = "A";
        run.direction = i == 0 ? "out" : "return";
        run.consumption = core::Consumption{8.4, core::ConsumptionUnit::lPer100km, 2};
    }
    study.runs[1].discard = core::Discard{"overspeed", "3410 rpm"};
    const std::string text = runsText(Language::english(), study, AnAnalysis(), {});
    EXPECT_THAT(text, HasSubstr("8.40 L/100 km"));
    EXPECT_THAT(text, HasSubstr("discarded: over-speed, 3410 rpm"));
}

TEST(PooledText, WarnsOfTheDrawer)
{
    const std::vector<StudyRow> rows = {
        {"one", core::StudyEffect{"one", 0.010, 0.002, 6.0}, VerdictClass::more},
        {"two", core::StudyEffect{"two", 0.012, 0.003, 9.0}, VerdictClass::more}};
    core::Pooled pooled{0.0107, 0.001, 0.0204, 1.0, 0.04, 0.0, 0.0, 0.3, {}, {}};
    EXPECT_THAT(pooledText(Language::english(), {rows, pooled}), HasSubstr("drawer"));
    EXPECT_THAT(pooledText(Language::english(), {rows, std::nullopt}),
                HasSubstr("Nothing to pool"));
    // With few studies the one effect for all leads.
    pooled.common = core::CommonEffect{0.011, 0.004, 0.018, 14.2, 0.004};
    pooled.agreement = {0.4, 1.0, 12.0, 0.54, core::CheckState::holds};
    const std::string text = pooledText(Language::english(), {rows, pooled});
    EXPECT_THAT(text, HasSubstr("One effect for all studies"));
    EXPECT_LT(text.find("One effect for all"), text.find("an effect of its own"));
    EXPECT_THAT(text, HasSubstr("The studies agree with that (F = 0.400, p = 0.54)."));
}

} // namespace
} // namespace bothways::app
