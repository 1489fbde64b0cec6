// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one session after another, told as they are driven.
#include "app/desktop/roadside/roadside_session.h"
#include "app/desktop/roadside/roadside_words.h"
#include "storage/study/study_file.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/support/study_builder.h"

#include <QFile>
#include <SQLiteCpp/Database.h>

namespace bothways::app::tests {

using State = RoadsideSession::State;

/// One study, its session, and a clock that is moved by hand.
class RoadsideSessionTest : public DesktopTest {
protected:
    RoadsideSessionTest() { open({}); }

    void open(const core::StudyProperties& properties)
    {
        session.reset();
        document.reset();
        QFile::remove(path("day.bothways"));
        preferences.setRoadsideDraft(path("day.bothways"), {});
        auto made = StudyDocument::create(path("day.bothways"), properties);
        ASSERT_TRUE(made) << made.error().message.english();
        document = std::move(made).take();
        restart();
    }
    /// As after a crash: the study and the preferences are what is on disk.
    void restart() { session = std::make_unique<RoadsideSession>(*document, preferences, clock()); }
    void passSeconds(double seconds)
    {
        now = now.addMSecs(static_cast<qint64>(std::llround(1000.0 * seconds)));
    }
    void type(const char* keys)
    {
        for (const char* key = keys; *key; ++key)
            session->type(QChar(*key));
    }
    /// One whole run; the next may start after it. A question is answered with yes.
    void drive(const char* consumption, double seconds = 200.0)
    {
        ASSERT_EQ(session->start(), "");
        passSeconds(seconds);
        ASSERT_EQ(session->end(), "");
        type(consumption);
        ASSERT_EQ(session->save(), "");
        if (!session->questions().isEmpty()) {
            ASSERT_EQ(session->save(), "");
        }
        ASSERT_EQ(session->state(), State::written);
        passSeconds(180.0);
    }
    [[nodiscard]] const core::Study& study() const { return document->study(); }
    [[nodiscard]] const core::Run& last() const { return study().runs.back(); }

    std::unique_ptr<StudyDocument> document;
    std::unique_ptr<RoadsideSession> session;
};

namespace {

core::StudyProperties planned(const char* sequence, int pairs)
{
    core::StudyProperties properties;
    properties.plan = core::PlannedStudy{sequence, pairs, 1.0, 0.95};
    return properties;
}

core::StudyProperties withWindscreen()
{
    core::StudyProperties properties;
    properties.limits = {{"stretch.km", 5.0}, {"road_speed.target_kmh", 90.0}};
    properties.timed_accessories = {{"windscreen", 600.0, 10.0}};
    return properties;
}

} // namespace

TEST_F(RoadsideSessionTest, ARunGoesFromReadyToWrittenWithStartDurationAndMarks)
{
    EXPECT_EQ(session->state(), State::ready);
    const core::Instant begun = instantOf(study(), now);
    EXPECT_EQ(session->start(), "");
    EXPECT_EQ(session->state(), State::running);
    passSeconds(31.2);
    EXPECT_EQ(session->mark("passing_traffic"), "");
    passSeconds(48.8);
    EXPECT_EQ(session->mark("other"), "");
    EXPECT_EQ(session->describeMark("a heron"), "");
    passSeconds(120.5);
    EXPECT_EQ(session->end(), "");
    EXPECT_EQ(session->state(), State::ended);
    EXPECT_TRUE(study().runs.empty()) << "written without a number";
    type("8.41");
    EXPECT_EQ(session->save(), "");
    EXPECT_EQ(session->state(), State::written);

    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(last().number, 1);
    EXPECT_EQ(last().configuration, "A");
    EXPECT_EQ(last().direction, "out");
    EXPECT_EQ(last().start, begun);
    EXPECT_EQ(last().duration_s, 200.5);
    const std::vector<core::Mark> marks{{31.2, "passing_traffic", ""}, {80.0, "other", "a heron"}};
    EXPECT_EQ(last().marks, marks);
    const core::Consumption typed{8.41, core::ConsumptionUnit::lPer100km, 2, false};
    EXPECT_EQ(last().consumption, typed);
    // It is on disk.
    const auto stored = storage::StudyFile::open(path("day.bothways").toStdString(), true);
    ASSERT_TRUE(stored) << stored.error().message.english();
    EXPECT_EQ(stored.value().study().value().runs, study().runs);
}

TEST_F(RoadsideSessionTest, TheNextRunGoesTheOtherWay)
{
    drive("8.41");
    EXPECT_EQ(session->next().number, 2);
    EXPECT_EQ(session->next().direction, "return");
    drive("8.30");
    EXPECT_EQ(session->next().direction, "out");
    EXPECT_EQ(session->next().configuration, "A");
    EXPECT_EQ(pairTally(study()).done, 1);
}

TEST_F(RoadsideSessionTest, WithoutAPlanASwitchAndANewDayBeginABlock)
{
    drive("8.41");
    EXPECT_EQ(session->next().block, 1);
    session->chooseConfiguration();
    EXPECT_EQ(session->next().block, 2);
    EXPECT_EQ(session->next().pairs_in_block, 0);
    session->chooseConfiguration();
    EXPECT_EQ(session->next().block, 1);
    passSeconds(6.0 * 3600.0 - 380.0); // six hours after the start: still that day
    EXPECT_EQ(session->next().block, 1);
    passSeconds(1.0);
    EXPECT_EQ(session->next().block, 2);
    EXPECT_EQ(session->next().configuration, "A");
    ASSERT_EQ(session->start(), "");
    EXPECT_EQ(session->next().block, 2) << "while it is driven, too";
}

TEST_F(RoadsideSessionTest, AStepOutOfTurnIsRefusedWithASentence)
{
    EXPECT_NE(session->end(), "");
    EXPECT_NE(session->mark("gust"), "");
    EXPECT_NE(session->save(), "");
    EXPECT_NE(session->undo(), "");
    EXPECT_NE(session->forget(), "");
    EXPECT_NE(session->discard({"interrupted", ""}), "");
    session->type(u'8');
    session->backspace();
    EXPECT_EQ(session->state(), State::ready);
    ASSERT_EQ(session->start(), "");
    EXPECT_NE(session->start(), "");
    EXPECT_NE(session->save(), "");
    session->type(u'8');
    EXPECT_EQ(session->run()->typed, "");
    EXPECT_TRUE(study().runs.empty());
}

TEST_F(RoadsideSessionTest, ASecondPressAtOnceDoesNothing)
{
    ASSERT_EQ(session->start(), "");
    passSeconds(0.3);
    EXPECT_NE(session->start(), "");
    EXPECT_NE(session->end(), "") << "where Start was, End may be";
    EXPECT_NE(session->mark("gust"), "");
    EXPECT_EQ(session->state(), State::running);
    passSeconds(200);
    ASSERT_EQ(session->end(), "");
    EXPECT_NE(session->end(), "");
    type("8.41");
    ASSERT_EQ(session->save(), "");
    passSeconds(0.3);
    EXPECT_NE(session->save(), "");
    EXPECT_NE(session->start(), "") << "where OK was, Start may be";
    EXPECT_EQ(study().runs.size(), 1U);
    passSeconds(2);
    EXPECT_EQ(session->start(), "");
}

TEST_F(RoadsideSessionTest, ANumberThatCannotBeIsRefusedAndTheRunIsKept)
{
    ASSERT_EQ(session->start(), "");
    passSeconds(200);
    ASSERT_EQ(session->end(), "");
    EXPECT_NE(session->save(), "") << "empty";
    for (const char* keys : {"0", ".", "0.00", "0.00001"}) {
        while (!session->run()->typed.isEmpty())
            session->backspace();
        type(keys);
        EXPECT_NE(session->save(), "") << keys;
        EXPECT_EQ(session->state(), State::ended) << keys;
    }
    EXPECT_TRUE(study().runs.empty());
}

TEST_F(RoadsideSessionTest, TheNumberPadTakesOneDecimalSignAndNoMoreThanADisplayShows)
{
    ASSERT_EQ(session->start(), "");
    passSeconds(200);
    ASSERT_EQ(session->end(), "");
    type("8,4.1");
    EXPECT_EQ(session->run()->typed, "8.41");
    type("x-+e");
    EXPECT_EQ(session->run()->typed, "8.41");
    type("0000000000");
    EXPECT_EQ(session->run()->typed.size(), 8);
    for (int i = 0; i < 12; ++i)
        session->backspace();
    EXPECT_EQ(session->run()->typed, "");
    type(".5");
    EXPECT_EQ(session->run()->typed, "0.5");
}

TEST_F(RoadsideSessionTest, TheDecimalSignIsThatOfTheLocale)
{
    QLocale::setDefault(QLocale(QLocale::German));
    ASSERT_EQ(session->start(), "");
    passSeconds(200);
    ASSERT_EQ(session->end(), "");
    type("8.41");
    EXPECT_EQ(session->run()->typed, "8,41");
    EXPECT_EQ(session->save(), "");
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(last().consumption->value, 8.41);
}

TEST_F(RoadsideSessionTest, AnOddNumberIsQuestionedAndKeptOnlyWithAnAnswer)
{
    drive("8.41");
    drive("8.30");
    ASSERT_EQ(session->start(), "");
    passSeconds(200);
    ASSERT_EQ(session->end(), "");
    type("84.1");
    EXPECT_EQ(session->save(), "");
    ASSERT_EQ(session->questions().size(), 1);
    EXPECT_TRUE(session->questions().front().contains("Did you mean 8.41"))
        << session->questions().join(u' ').toStdString();
    EXPECT_EQ(session->state(), State::ended);
    EXPECT_EQ(study().runs.size(), 2U);
    session->backspace(); // another number is another question
    EXPECT_TRUE(session->questions().isEmpty());
    type("1");
    EXPECT_EQ(session->save(), "");
    EXPECT_FALSE(session->questions().isEmpty());
    EXPECT_EQ(session->save(), "");
    EXPECT_EQ(study().runs.size(), 2U) << "pressing OK again is no answer";
    EXPECT_EQ(session->keepTyped(), "");
    ASSERT_EQ(study().runs.size(), 3U);
    EXPECT_EQ(last().consumption->value, 84.1);
}

TEST_F(RoadsideSessionTest, WhatWasMeantIsTakenInOneStepAndTakenBackInAnother)
{
    drive("8.41");
    drive("8.30");
    ASSERT_EQ(session->start(), "");
    passSeconds(200);
    ASSERT_EQ(session->end(), "");
    type("715");
    EXPECT_NE(session->takeLikely(), "") << "nothing was asked yet";
    session->backspace();
    session->backspace();
    session->backspace();
    type("822");
    EXPECT_EQ(session->save(), "");
    ASSERT_TRUE(session->likely());
    EXPECT_EQ(session->takeLikely(), "");
    ASSERT_EQ(study().runs.size(), 3U);
    EXPECT_EQ(last().consumption, (core::Consumption{8.22, core::ConsumptionUnit::lPer100km, 2}));
    EXPECT_EQ(session->undo(), "");
    EXPECT_EQ(study().runs.size(), 2U);
}

TEST_F(RoadsideSessionTest, WhileConsumptionIsHiddenTheQuestionsSayNothingOfIt)
{
    drive("8.41");
    drive("8.30");
    ASSERT_TRUE(document->setBlind(true));
    ASSERT_EQ(session->start(), "");
    passSeconds(200);
    ASSERT_EQ(session->end(), "");
    type("12.0");
    EXPECT_EQ(session->save(), "");
    EXPECT_TRUE(session->questions().isEmpty());
    EXPECT_EQ(study().runs.size(), 3U);

    passSeconds(60);
    ASSERT_EQ(session->start(), "");
    passSeconds(200);
    ASSERT_EQ(session->end(), "");
    type("84.0"); // what the runs have in common is far away from this
    EXPECT_EQ(session->save(), "");
    EXPECT_EQ(study().runs.size(), 3U);
    const QString asked = session->questions().join(u' ');
    EXPECT_TRUE(asked.contains("Did you mean 8.40?")) << asked.toStdString();
    EXPECT_FALSE(asked.contains("8.41") || asked.contains("8.30") || asked.contains('%'))
        << asked.toStdString();
}

TEST_F(RoadsideSessionTest, ADurationFarFromTheExpectedIsQuestionedAndCanBeLeftOut)
{
    open(withWindscreen());
    EXPECT_EQ(session->expected_s(), 200.0); // 5 km at 90 km/h
    ASSERT_EQ(session->start(), "");
    passSeconds(900);
    ASSERT_EQ(session->end(), "");
    EXPECT_TRUE(session->isDurationOdd());
    type("8.41");
    EXPECT_EQ(session->save(), "");
    ASSERT_FALSE(session->questions().isEmpty());
    EXPECT_TRUE(session->questions().front().contains("15:00"))
        << session->questions().join(u' ').toStdString();
    session->setWithoutDuration(true);
    EXPECT_EQ(session->save(), "");
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_FALSE(last().duration_s);
}

TEST_F(RoadsideSessionTest, AClockThatIsSetBackDoesNotTurnTheRunAround)
{
    ASSERT_EQ(session->start(), "");
    passSeconds(60);
    EXPECT_EQ(session->elapsed_s(), 60.0);
    passSeconds(-3600);
    EXPECT_EQ(session->elapsed_s(), 60.0);
    EXPECT_TRUE(session->clockWasSetBack());
    passSeconds(30);
    ASSERT_EQ(session->mark("gust"), "");
    passSeconds(110);
    ASSERT_EQ(session->end(), "");
    type("8.41");
    EXPECT_EQ(session->save(), "");
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(last().duration_s, 200.0);
    EXPECT_EQ(last().marks.front().at_s, 90.0);
    ASSERT_EQ(session->discardable(), 1);
    passSeconds(60);
    ASSERT_EQ(session->start(), "");
    EXPECT_FALSE(session->clockWasSetBack()) << "that was another run";
}

TEST_F(RoadsideSessionTest, ARunUnderWaySurvivesACrashWithItsMarks)
{
    session->chooseConfiguration();
    session->chooseSetting("14");
    ASSERT_EQ(session->start(), "");
    passSeconds(40);
    ASSERT_EQ(session->mark("gust"), "");
    const RoadsideRun before = *session->run();
    passSeconds(60);
    restart();
    ASSERT_TRUE(session->wasResumed());
    EXPECT_EQ(session->state(), State::running);
    EXPECT_EQ(*session->run(), before);
    EXPECT_EQ(session->elapsed_s(), 100.0);
    session->goOn();
    EXPECT_EQ(session->undo(), ""); // the mark
    EXPECT_TRUE(session->run()->marks.empty());
    passSeconds(100);
    ASSERT_EQ(session->end(), "");
    type("8.0");
    restart(); // and once more, with half of the number
    EXPECT_EQ(session->state(), State::ended);
    EXPECT_EQ(session->run()->typed, "8.0");
    type("5");
    EXPECT_EQ(session->save(), "");
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(last().configuration, "B");
    EXPECT_EQ(last().setting, "14");
    EXPECT_EQ(last().duration_s, 200.0);
    EXPECT_EQ(last().consumption->value, 8.05);
    restart();
    EXPECT_FALSE(session->wasResumed());
    EXPECT_EQ(session->state(), State::ready);
}

TEST_F(RoadsideSessionTest, ARunThatIsForgottenLeavesNothing)
{
    ASSERT_EQ(session->start(), "");
    passSeconds(40);
    restart();
    ASSERT_TRUE(session->wasResumed());
    EXPECT_EQ(session->forget(), "");
    EXPECT_EQ(session->state(), State::ready);
    EXPECT_TRUE(study().runs.empty());
    EXPECT_TRUE(preferences.roadsideDraft(document->path()).isEmpty());
}

TEST_F(RoadsideSessionTest, AKeptRunThatIsDamagedIsAsIfThereWereNone)
{
    ASSERT_EQ(session->start(), "");
    const QByteArray good = preferences.roadsideDraft(document->path());
    ASSERT_TRUE(draftFrom(good));
    for (int cut = 0; cut < good.size(); ++cut) {
        preferences.setRoadsideDraft(document->path(), good.left(cut));
        restart();
        EXPECT_EQ(session->state(), State::ready) << cut;
    }
    for (const auto& [from, to] :
         {std::pair<const char*, const char*>{"\"version\":1", "\"version\":2"},
          {"\"start_ms\":", "\"start_ms\":\"x\",\"was\":"},
          {"l_per_100km", "furlongs"},
          {"\"configuration\":\"A\"", "\"configuration\":\"\""},
          {"2026-05-09", "2026-15-09"}}) {
        QByteArray bad = good;
        ASSERT_TRUE(bad.contains(from)) << from;
        EXPECT_FALSE(draftFrom(bad.replace(from, to))) << to;
    }
}

TEST_F(RoadsideSessionTest, DraftsComeBackAsTheyWere)
{
    RoadsideDraft draft;
    EXPECT_TRUE(toBytes(draft).isEmpty());
    draft.accessory_on_ms = {{"seat heating", 1'778'312'345'678}};
    draft.seen_ms = 1'778'312'400'123;
    draft.shift_ms = 3'600'000;
    EXPECT_EQ(draftFrom(toBytes(draft)), draft);
    RoadsideRun run;
    run.configuration = "mit Gerät";
    run.direction = "östlich";
    run.setting = "14°";
    run.start = {1'778'312'345'000'000, 120};
    run.start_ms = 1'778'312'345'678;
    run.end_ms = 1'778'312'545'678;
    run.marks = {{31.2, "gust", ""}, {80.0, "other", "\"heron\"; \\"}};
    run.typed = "8,4";
    run.unit = core::ConsumptionUnit::mpgUs;
    run.without_duration = true;
    draft.run = run;
    EXPECT_EQ(draftFrom(toBytes(draft)), draft);
}

TEST_F(RoadsideSessionTest, ADiscardedRunIsWrittenWithItsReasonAndNeedsNoNumber)
{
    ASSERT_EQ(session->start(), "");
    passSeconds(90);
    EXPECT_NE(session->discard({"other", "  "}), "");
    EXPECT_EQ(session->state(), State::running);
    EXPECT_EQ(session->discard({"interrupted", ""}), "");
    EXPECT_EQ(session->state(), State::written);
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(last().discard->reason, "interrupted");
    EXPECT_FALSE(last().consumption);
    passSeconds(60);
    drive("8.41");
    ASSERT_TRUE(last().counted());
    EXPECT_EQ(session->discardable(), 2); // the one before goes too, afterwards
    EXPECT_EQ(session->discard({"other", "a tractor"}), "");
    EXPECT_EQ(last().discard->evidence, "a tractor");
    EXPECT_EQ(last().consumption->value, 8.41);
    EXPECT_EQ(session->discardable(), 0);
}

TEST_F(RoadsideSessionTest, UndoGoesBackStepByStepFromTheWrittenRunToTheStart)
{
    ASSERT_EQ(session->start(), "");
    passSeconds(40);
    ASSERT_EQ(session->mark("gust"), "");
    passSeconds(160);
    ASSERT_EQ(session->end(), "");
    type("8.41");
    ASSERT_EQ(session->save(), "");
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_TRUE(session->undoWords().contains("run 1")) << session->undoWords().toStdString();
    EXPECT_EQ(session->undo(), "");
    EXPECT_TRUE(study().runs.empty());
    EXPECT_EQ(session->state(), State::ended);
    EXPECT_EQ(session->run()->typed, "8.41");
    EXPECT_EQ(session->undo(), "");
    EXPECT_EQ(session->state(), State::running);
    EXPECT_EQ(session->elapsed_s(), 200.0);
    EXPECT_EQ(session->undo(), "");
    EXPECT_TRUE(session->run()->marks.empty());
    EXPECT_EQ(session->undo(), "");
    EXPECT_EQ(session->state(), State::ready);
    EXPECT_EQ(session->undoWords(), "");
}

TEST_F(RoadsideSessionTest, UndoDoesNotTouchWhatSomebodyElseChangedSince)
{
    drive("8.41");
    core::Run changed = last();
    changed.notes = "from the run list";
    ASSERT_TRUE(document->updateRun(changed));
    EXPECT_NE(session->undo(), "");
    EXPECT_EQ(last().notes, "from the run list");
    EXPECT_EQ(session->state(), State::written);
}

TEST_F(RoadsideSessionTest, AStudyThatIsClosedOrLockedKeepsTheRunForLater)
{
    ASSERT_EQ(session->start(), "");
    passSeconds(200);
    ASSERT_EQ(session->end(), "");
    type("8.41");
    SQLite::Database other(path("day.bothways").toStdString(), SQLite::OPEN_READWRITE);
    other.exec("BEGIN IMMEDIATE"); // another program writes, and does not end
    const QString refusal = session->save();
    EXPECT_NE(refusal, "");
    EXPECT_EQ(session->state(), State::ended);
    EXPECT_EQ(session->run()->typed, "8.41");
    other.exec("ROLLBACK");
    const QString file = document->path();
    document.reset();
    EXPECT_NE(session->save(), "");
    EXPECT_NE(session->discard({"interrupted", ""}), "");
    EXPECT_NE(session->changeUnit(), "");
    EXPECT_EQ(session->next().number, 1);
    EXPECT_TRUE(session->timers().empty());
    auto again = StudyDocument::open(file);
    ASSERT_TRUE(again) << again.error().message.english();
    document = std::move(again).take();
    restart();
    EXPECT_EQ(session->state(), State::ended);
    EXPECT_EQ(session->save(), "");
    EXPECT_EQ(study().runs.size(), 1U);
}

TEST_F(RoadsideSessionTest, ThePlanSaysWhatIsNextUntilItIsDriven)
{
    open(planned("ABA", 1));
    UpNext next = session->next();
    EXPECT_EQ(next.because, UpNext::Because::plan);
    EXPECT_EQ(next.configuration, "A");
    EXPECT_EQ(next.block, 1);
    EXPECT_EQ(next.planned_blocks, 3);
    EXPECT_EQ(pairTally(study()).planned, 3);
    drive("8.41");
    EXPECT_EQ(session->next().configuration, "A") << "the way back belongs to the pair";
    drive("8.30");
    next = session->next();
    EXPECT_EQ(next.configuration, "B");
    EXPECT_TRUE(next.switchFirst);
    EXPECT_EQ(next.direction, "out");
    EXPECT_EQ(next.block, 2);
    EXPECT_EQ(next.pairs_in_block, 0);
    drive("8.05");
    ASSERT_EQ(session->start(), ""); // one run of the pair is lost: the pair is driven again
    passSeconds(100);
    ASSERT_EQ(session->discard({"interrupted", ""}), "");
    passSeconds(100);
    EXPECT_EQ(session->next().configuration, "B");
    EXPECT_EQ(session->next().direction, "out");
    drive("8.06");
    drive("7.99");
    EXPECT_EQ(session->next().block, 3);
    EXPECT_EQ(session->next().configuration, "A");
    drive("8.42");
    drive("8.29");
    next = session->next();
    EXPECT_EQ(next.because, UpNext::Because::planDone);
    EXPECT_FALSE(next.planned_blocks);
    EXPECT_EQ(pairTally(study()).done, 3);
}

TEST_F(RoadsideSessionTest, EqualLettersAreOneBlockAndADayOffThePlanIsSaidToBe)
{
    open(planned("ABBA", 1));
    drive("8.41");
    drive("8.30");
    EXPECT_EQ(session->next().planned_blocks, 3);
    EXPECT_EQ(session->next().planned_pairs_in_block, 2);
    session->chooseConfiguration(); // against the plan: A once more
    EXPECT_EQ(session->next().configuration, "A");
    session->chooseConfiguration();
    EXPECT_EQ(session->next().configuration, "B");
    open(planned("BAB", 1));
    session->chooseConfiguration();
    EXPECT_EQ(session->next().configuration, "A");
    drive("8.41");
    EXPECT_EQ(session->next().because, UpNext::Because::offThePlan);
}

// As the plan is judged (core::fulfils): a new day begins a new block, which has to be a whole one.
TEST(UpNextOfDays, ABlockLeftHalfwayIsNotGoneOnWithOnAnotherDay)
{
    constexpr double kNextDay_min = 24 * 60;
    const auto nextAfter = [](const std::string& sequence, const std::vector<double>& ofA_min,
                              const std::vector<double>& ofB_min) {
        bothways::tests::StudyBuilder builder;
        for (const double at_min : ofA_min)
            builder.addPair("A", at_min, 8.4, 8.3);
        for (const double at_min : ofB_min)
            builder.addPair("B", at_min, 8.1, 8.0);
        core::Study study = builder.build();
        study.properties.baseline = "A";
        study.properties.plan = core::PlannedStudy{};
        study.properties.plan->sequence = sequence;
        study.properties.plan->pairs_per_block = 2;
        return upNext(study);
    };
    UpNext next = nextAfter("ABA", {5, 15}, {});
    EXPECT_EQ(next.because, UpNext::Because::plan);
    EXPECT_EQ(next.configuration, "B");
    next = nextAfter("ABA", {5, kNextDay_min}, {});
    EXPECT_EQ(next.because, UpNext::Because::offThePlan) << "one pair a day is no block of two";
    next = nextAfter("ABBA", {5, 15}, {40, 50});
    EXPECT_EQ(next.configuration, "B");
    EXPECT_EQ(next.pairs_in_block, 2);
    EXPECT_EQ(next.planned_pairs_in_block, 4);
    next = nextAfter("ABBA", {5, 15}, {40, 50, kNextDay_min});
    EXPECT_EQ(next.because, UpNext::Because::plan);
    EXPECT_EQ(next.configuration, "B");
    EXPECT_EQ(next.block, 2);
    EXPECT_EQ(next.pairs_in_block, 1) << "of this day";
    EXPECT_EQ(next.planned_pairs_in_block, 2);
    next = nextAfter("ABBA", {5, 15}, {40, 50, kNextDay_min, kNextDay_min + 10});
    EXPECT_EQ(next.configuration, "A");
    EXPECT_EQ(next.block, 3);
}

TEST_F(RoadsideSessionTest, TheSettingIsThatOfTheLastRunInTheSameConfiguration)
{
    session->chooseConfiguration();
    session->chooseSetting("14");
    drive("8.05");
    drive("8.00");
    session->chooseConfiguration();
    EXPECT_EQ(session->next().configuration, "A");
    EXPECT_EQ(session->next().setting, "");
    drive("8.41");
    session->chooseConfiguration();
    EXPECT_EQ(session->next().setting, "14");
}

TEST_F(RoadsideSessionTest, ATimerCountsDownAndItsSwitchOnGoesIntoTheRun)
{
    open(withWindscreen());
    ASSERT_EQ(session->timers().size(), 1U);
    EXPECT_FALSE(session->timers().front().left_s);
    EXPECT_NE(session->switchAccessory("toaster"), "");
    EXPECT_EQ(session->switchAccessory("windscreen"), "");
    passSeconds(70);
    EXPECT_EQ(session->timers().front().left_s, 530.0);
    EXPECT_FALSE(session->timers().front().dropsOutInRun);
    drive("8.41");
    EXPECT_EQ(last().accessory_on_s.at("windscreen"), -70.0);
    EXPECT_EQ(session->timers().front().left_s, 150.0); // 70 + 200 + 180 s later
    EXPECT_TRUE(session->timers().front().dropsOutInRun) << "a run takes 200 s";
    restart();
    EXPECT_FALSE(session->wasResumed());
    EXPECT_EQ(session->timers().front().left_s, 150.0) << "a timer outlives the program too";
    passSeconds(160);
    EXPECT_EQ(session->timers().front().left_s, -10.0);
    EXPECT_EQ(session->switchAccessory("windscreen"), ""); // on again
    EXPECT_EQ(session->timers().front().left_s, 600.0);
    EXPECT_EQ(session->switchAccessory("windscreen"), ""); // off
    EXPECT_FALSE(session->timers().front().left_s);
    EXPECT_EQ(session->undo(), "");
    EXPECT_EQ(session->timers().front().left_s, 600.0);
}

TEST_F(RoadsideSessionTest, AnAccessorySwitchedDuringTheRunIsAMarkThatTheRulesKnow)
{
    open(withWindscreen());
    ASSERT_EQ(session->start(), "");
    passSeconds(50);
    EXPECT_EQ(session->switchAccessory("windscreen"), "");
    passSeconds(150);
    ASSERT_EQ(session->end(), "");
    type("8.41");
    ASSERT_EQ(session->save(), "");
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(last().accessory_on_s.at("windscreen"), 50.0);
    const std::vector<core::Mark> marks{{50.0, "accessory_change", "windscreen on"}};
    EXPECT_EQ(last().marks, marks);
    settle(*document);
    const auto& findings = document->result()->screening.findings;
    EXPECT_TRUE(std::any_of(findings.begin(), findings.end(), [](const core::Finding& finding) {
        return finding.rule == core::Rule::accessoryChange;
    }));
}

TEST_F(RoadsideSessionTest, AnAmountOfFuelTakesTheStretchAsItsDistance)
{
    preferences.setEntryUnit(core::ConsumptionUnit::fuelL);
    restart();
    ASSERT_EQ(session->start(), "");
    passSeconds(200);
    ASSERT_EQ(session->end(), "");
    type("0.42");
    EXPECT_NE(session->save(), "") << "the study has no stretch";
    EXPECT_EQ(session->changeUnit(), "");
    EXPECT_EQ(session->unit(), core::ConsumptionUnit::fuelGalUs);
    EXPECT_EQ(session->changeUnit(), "");
    EXPECT_EQ(session->unit(), core::ConsumptionUnit::lPer100km);
    open(withWindscreen());
    preferences.setEntryUnit(core::ConsumptionUnit::fuelL);
    drive("0.42");
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(last().distance_km, 5.0);
}

TEST(RoadsideWords, TimesAreMinutesAndSeconds)
{
    EXPECT_EQ(RoadsideWords::clock(0.0), "0:00");
    EXPECT_EQ(RoadsideWords::clock(187.9), "3:07");
    EXPECT_EQ(RoadsideWords::clock(3765.0), "1:02:45");
    EXPECT_EQ(RoadsideWords::clock(-5.0), "0:00");
}

} // namespace bothways::app::tests
