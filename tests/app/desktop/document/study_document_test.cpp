// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/study_document.h"

#include "app/desktop/document/paths.h"
#include "app/desktop/document/sheet_import.h"
#include "app/desktop/document/study_files.h"
#include "core/answer/analyse.h"
#include "core/study/properties.h"
#include "storage/recordings/trace_import.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/storage/study/study_builders.h"

#include <QFile>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>

namespace bothways::app::tests {

using bothways::tests::aRun;

class DocumentTest : public DesktopTest {
protected:
    DocumentTest() { document = std::move(StudyDocument::create(file, {})).take(); }
    void addMorning(int pairs = 2) const
    {
        for (int i = 0; i < 4 * pairs; ++i) {
            auto run = aRun().at_min(i * 7).consuming(8.4 + 0.03 * (i % 3));
            if (i >= 2 * pairs)
                run.device();
            if (i % 2 == 1)
                run.returning();
            ASSERT_TRUE(document->addRun(run));
        }
        settle(*document);
    }
    [[nodiscard]] bool hasLine(const std::string& kind) const
    {
        const auto lines = document->history();
        return std::any_of(lines.begin(), lines.end(),
                           [&](const auto& line) { return line.kind == kind; });
    }

    const QString file = path("study.bothways");
    std::unique_ptr<StudyDocument> document;
};

TEST_F(DocumentTest, TheAnswerIsThatOfCoreForTheSameStudy)
{
    addMorning();
    const core::Analysis expected = core::analyse(document->study(), document->options());
    const auto result = document->result();
    ASSERT_TRUE(result);
    EXPECT_EQ(result->study, document->study());
    ASSERT_TRUE(result->analysis.headline);
    EXPECT_EQ(result->analysis.headline->effect_log, expected.headline->effect_log);
    EXPECT_EQ(result->analysis.verdict.cls, expected.verdict.cls);
}

TEST_F(DocumentTest, ManyChangesInARowEndInOneAnswerAboutTheLast)
{
    addMorning();
    QSignalSpy answers(document.get(), &StudyDocument::analysisChanged);
    for (int i = 0; i < 10; ++i) {
        core::Run run = document->study().runs[0];
        run.consumption->value = 8.0 + 0.1 * i;
        ASSERT_TRUE(document->updateRun(run));
    }
    settle(*document);
    EXPECT_LE(answers.count(), 10);
    EXPECT_EQ(document->result()->study, document->study());
}

TEST_F(DocumentTest, AChangeThatTheFileRefusesLeavesTheStudyAndSaysWhy)
{
    addMorning();
    const core::Study before = document->study();
    QSignalSpy failed(document.get(), &StudyDocument::failed);
    core::Run third = aRun().at_min(99);
    third.configuration = "C";
    EXPECT_FALSE(document->addRun(third));
    ASSERT_EQ(failed.count(), 1);
    EXPECT_FALSE(failed[0][0].value<core::Error>().message.empty());
    EXPECT_EQ(document->study(), before);
}

TEST_F(DocumentTest, UndoTakesEverythingBackAndRedoDoesItAgain)
{
    addMorning();
    const core::Study full = document->study();
    int steps = 0;
    while (document->undoable() && steps < 100) {
        ASSERT_TRUE(document->undo());
        ++steps;
    }
    EXPECT_TRUE(document->study().runs.empty());
    while (document->redoable())
        ASSERT_TRUE(document->redo());
    EXPECT_EQ(document->study(), full);
}

TEST_F(DocumentTest, ManyRunsTaggedWithOneKeyAreOneStepBack)
{
    addMorning();
    std::vector<core::Run> runs = document->study().runs;
    for (core::Run& run : runs)
        run.notes = "fog";
    ASSERT_TRUE(document->updateRuns(runs));
    ASSERT_TRUE(document->undo());
    for (const core::Run& run : document->study().runs)
        EXPECT_EQ(run.notes, "");
}

TEST_F(DocumentTest, AnotherMarginIsShownAtOnceAndKeptOnceWhenItStandsStill)
{
    addMorning();
    const std::size_t lines = document->history().size();
    for (const double margin_pct : {1.5, 2.0, 2.5, 3.0})
        document->tryOptions({margin_pct, 0.95});
    EXPECT_EQ(document->study().properties.margin_pct, 1.0);
    settle(*document);
    EXPECT_EQ(document->result()->analysis.options.margin_pct, 3.0);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return document->study().properties.margin_pct == 3.0; }, 60'000));
    EXPECT_EQ(document->history().size(), lines + 1);
}

TEST_F(DocumentTest, AMarginThatWasNotYetKeptIsKeptOnClosing)
{
    document->tryOptions({2.0, 0.9});
    document.reset();
    const auto again = StudyDocument::open(file);
    ASSERT_TRUE(again);
    EXPECT_EQ(again.value()->study().properties.margin_pct, 2.0);
    EXPECT_EQ(again.value()->study().properties.confidence, 0.9);
}

TEST_F(DocumentTest, HidingConsumptionIsOnRecordAndOutlastsClosing)
{
    ASSERT_TRUE(document->setBlind(true));
    EXPECT_TRUE(hasLine("blind"));
    document.reset();
    auto again = StudyDocument::open(file);
    ASSERT_TRUE(again);
    EXPECT_TRUE(again.value()->isBlind());
}

TEST_F(DocumentTest, LooksAreOnRecordOnceForEachNumberOfPairsAndWithAPlanOnceForEachState)
{
    addMorning();
    const auto looks = [this] {
        const auto lines = document->history();
        return std::count_if(lines.begin(), lines.end(),
                             [](const auto& line) { return line.kind == "look"; });
    };
    document->recordLook();
    EXPECT_EQ(looks(), 1);
    core::StudyProperties renamed = document->study().properties;
    renamed.name = "another";
    ASSERT_TRUE(document->setProperties(renamed));
    settle(*document);
    document->recordLook();
    EXPECT_EQ(looks(), 1) << "as many pairs as before";
    core::StudyProperties properties = document->study().properties;
    properties.plan = core::PlannedStudy{"ABA", 4, 1.0, 0.95};
    ASSERT_TRUE(document->setProperties(properties));
    settle(*document);
    document->recordLook();
    document->recordLook();
    EXPECT_EQ(looks(), 2);
}

TEST_F(DocumentTest, ClosingWhileAnAnswerIsOnItsWayIsHarmless)
{
    for (int round = 0; round < 20; ++round) {
        addMorning(6);
        document->tryOptions({2.0 + round, 0.95});
        document.reset();
        auto opened = StudyDocument::open(file);
        ASSERT_TRUE(opened) << core::describe(opened.error());
        document = std::move(opened).take();
        while (!document->study().runs.empty() && document->undoable())
            ASSERT_TRUE(document->undo());
    }
}

TEST_F(DocumentTest, WhatIsNoStudyIsRefusedWithASentence)
{
    for (const QString& bad :
         {write("text.bothways", "hello"), path("missing.bothways"), folder.path()}) {
        const auto opened = StudyDocument::open(bad);
        ASSERT_FALSE(opened) << bad.toStdString();
        EXPECT_FALSE(opened.error().message.empty());
    }
}

TEST_F(DocumentTest, ACopyIsAStudyOfItsOwn)
{
    addMorning();
    const QString copy = path("copy.bothways");
    ASSERT_TRUE(copyStudy(file, copy));
    auto opened = StudyDocument::open(copy);
    ASSERT_TRUE(opened) << core::describe(opened.error());
    EXPECT_EQ(opened.value()->study(), document->study());
    EXPECT_FALSE(copyStudy(file, file));
    EXPECT_FALSE(copyStudy(file, path("no/such/folder/copy.bothways")));
}

TEST_F(DocumentTest, AnExportedSheetImportsToTheSameRuns)
{
    addMorning();
    const QString sheet = path("sheet.csv");
    ASSERT_TRUE(exportSheet(document->study(), sheet));
    auto again = makeStudyFromSheet(sheet, now.date());
    ASSERT_TRUE(again) << core::describe(again.error());
    ASSERT_EQ(again.value()->study().runs.size(), document->study().runs.size());
    EXPECT_EQ(again.value()->study().runs[3].consumption, document->study().runs[3].consumption);
    EXPECT_EQ(again.value()->path(), path("sheet.bothways"));
}

TEST_F(DocumentTest, ABadSheetLeavesNoStudyBehind)
{
    const QString sheet = write("bad.csv", "run,configuration\n1,A\n");
    EXPECT_FALSE(makeStudyFromSheet(sheet, now.date()));
    EXPECT_FALSE(QFile::exists(path("bad.bothways")));
}

TEST_F(DocumentTest, TheDemoIsTheStudyThatTheStartScriptMakes)
{
    const auto demo = makeDemoStudy();
    ASSERT_TRUE(demo) << core::describe(demo.error());
    QFile script(QString(BOTHWAYS_SOURCE_DIR) + "/app/run.sh");
    ASSERT_TRUE(script.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(script.readAll());
    for (const auto& [name, value] : core::propertiesAsText(demo.value()->study().properties)) {
        const QString plain = QString::fromStdString(name + '=' + value);
        const QString quoted = QString::fromStdString(name + "=\"" + value + '"');
        EXPECT_TRUE(text.contains(plain) || text.contains(quoted) || name == "margin")
            << plain.toStdString();
    }
    settle(*demo.value());
    EXPECT_TRUE(demo.value()->result()->analysis.headline);
    EXPECT_FALSE(demo.value()->result()->screening.findings.empty());
    EXPECT_TRUE(QString::fromStdString(demo.value()->study().properties.name).contains("invented"));
}

TEST_F(DocumentTest, TheDemoIsMadeAnewEachTime)
{
    {
        auto demo = std::move(makeDemoStudy()).take();
        ASSERT_TRUE(demo->removeRuns({demo->study().runs.front().id}));
    }
    const auto again = makeDemoStudy();
    ASSERT_TRUE(again) << core::describe(again.error());
    EXPECT_EQ(again.value()->study().runs.front().number, 1);
}

TEST_F(DocumentTest, ARunWithoutANumberTakesItFromItsRecording)
{
    const QString recording = write("run.csv", "time_s,road_speed_kmh,fuel_used_l\n"
                                               "0,90,0\n100,90,0.2\n200,90,0.4\n");
    core::Run run = aRun().at_min(0);
    run.consumption.reset();
    run.discard = core::Discard{"other", "the display died"};
    run.duration_s = 200.0;
    run.distance_km = 5.0;
    run.trace = "run.csv";
    const auto id = document->addRun(run);
    ASSERT_TRUE(id);
    document.reset();
    {
        auto opened = storage::StudyFile::open(toPath(file));
        ASSERT_TRUE(opened);
        storage::TraceImportOptions options;
        options.run = 1;
        auto study = std::move(opened).take();
        const auto report = storage::importTrace(study, toPath(recording), options);
        ASSERT_TRUE(report) << core::describe(report.error());
    }
    document = std::move(StudyDocument::open(file)).take();
    ASSERT_TRUE(document->countRuns({*id}));
    settle(*document);
    ASSERT_TRUE(document->isResultCurrent());
    const auto& filled = document->result()->study.runs[0].consumption;
    ASSERT_TRUE(filled);
    EXPECT_TRUE(filled->from_trace);
    EXPECT_NEAR(*core::lPer100km(document->result()->study.runs[0]), 8.0, 1e-9);
    EXPECT_FALSE(document->study().runs[0].consumption) << "nobody typed it";
}

} // namespace bothways::app::tests
