// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_fields.h"

#include "app/desktop/document/run_draft.h"
#include "app/desktop/runs/common_notes.h"
#include "app/desktop/runs/run_tags.h"
#include "core/study/clock.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/storage/study/study_builders.h"

using namespace bothways;
using namespace bothways::app;
using bothways::tests::aRun;
using core::ConsumptionUnit;

namespace {

QString wrote(RunField field, const QString& text, core::Run& run, const UnitsShown& units = {})
{
    return writeField(field, text, units, ConsumptionUnit::lPer100km, run);
}

std::string startOf(const core::Run& run)
{
    return core::formatDateTime(run.start);
}

QDateTime moment(int hour, int minute)
{
    return {QDate(2026, 5, 9), QTime(hour, minute, 12)};
}

} // namespace

TEST(RunFields, WhatStandsInAFieldGivesTheSameRunBack)
{
    core::Run full = aRun().full();
    for (const RunField field : allRunFields()) {
        core::Run run = full;
        const QString text = fieldText(field, run, {});
        ASSERT_FALSE(text.isEmpty()) << fieldName(field).toStdString();
        if (field == RunField::consumption)
            continue; // it stands there in the unit shown, see below
        EXPECT_EQ(wrote(field, text, run), "") << text.toStdString();
        EXPECT_EQ(run, full) << fieldName(field).toStdString() << ": " << text.toStdString();
    }
}

TEST(RunFields, AClockTimeIsTypedInAnyUsualWay)
{
    core::Run run = aRun();
    for (const char* text : {"6:05", "06:05", "605", "0605", "6:05:00"}) {
        run.start.us += 1000;
        ASSERT_EQ(wrote(RunField::start, text, run), "") << text;
        EXPECT_EQ(startOf(run), "2026-05-09T06:05:00") << text;
    }
    EXPECT_EQ(wrote(RunField::start, "2026-05-10 07:30", run), "");
    EXPECT_EQ(startOf(run), "2026-05-10T07:30:00");
    EXPECT_EQ(wrote(RunField::start, "11.5.2026 07:30", run), "");
    EXPECT_EQ(startOf(run), "2026-05-11T07:30:00");
    EXPECT_EQ(wrote(RunField::start, "10.05.2026 07:30", run), "");
    for (const char* text : {"25:00", "6", "six", "06:61"})
        EXPECT_NE(wrote(RunField::start, text, run), "") << text;
    EXPECT_EQ(startOf(run), "2026-05-10T07:30:00") << "a refused time changed the run";
}

TEST(RunFields, AClockTimeIsThatOfTheRunsOwnOffset)
{
    core::Run run = aRun();
    run.start = core::parseDateTime("2026-05-09T00:30:00+02:00").value();
    EXPECT_EQ(fieldText(RunField::start, run, {}), "00:30");
    ASSERT_EQ(wrote(RunField::start, "1:15", run), "");
    EXPECT_EQ(startOf(run), "2026-05-09T01:15:00+02:00");
}

TEST(RunFields, DurationsAreMinutesAndSecondsOrSeconds)
{
    core::Run run = aRun();
    ASSERT_EQ(wrote(RunField::duration, "3:05", run), "");
    EXPECT_EQ(run.duration_s, 185.0);
    ASSERT_EQ(wrote(RunField::duration, "185,5", run), "");
    EXPECT_EQ(fieldText(RunField::duration, run, {}), "3:05.5");
    EXPECT_NE(wrote(RunField::duration, "3:75", run), "");
    EXPECT_NE(wrote(RunField::duration, "3.5:10", run), "");
    ASSERT_EQ(wrote(RunField::duration, "", run), "");
    EXPECT_FALSE(run.duration_s);
}

TEST(RunFields, ConsumptionMustBeAbovenothingAndKeepsItsDigits)
{
    core::Run run = aRun();
    EXPECT_NE(wrote(RunField::consumption, "0", run), "");
    EXPECT_NE(wrote(RunField::consumption, "-8.4", run), "");
    EXPECT_NE(wrote(RunField::consumption, "much", run), "");
    EXPECT_EQ(run, core::Run(aRun()));
    ASSERT_EQ(writeField(RunField::consumption, "28.10", {}, ConsumptionUnit::mpgUs, run), "");
    EXPECT_EQ(run.consumption, (core::Consumption{28.1, ConsumptionUnit::mpgUs, 2, false}));
}

TEST(RunFields, TimedAccessoriesAreANameAndSeconds)
{
    core::Run run = aRun();
    ASSERT_EQ(
        wrote(RunField::accessoryOn, QString::fromUtf8("Heated windscreen −120; fan 30"), run), "");
    EXPECT_EQ(run.accessory_on_s,
              (std::map<std::string, double>{{"heated_windscreen", -120.0}, {"fan", 30.0}}));
    EXPECT_NE(wrote(RunField::accessoryOn, "120", run), "");
}

TEST(RunDraft, TheNextRunGoesTheOtherWayInTheSameConfiguration)
{
    core::Study study;
    study.runs = {aRun().device().at_min(0)};
    study.runs[0].setting = "18";
    const core::Run next = nextRun(study, moment(5, 50));
    EXPECT_EQ(next.configuration, "B");
    EXPECT_EQ(next.setting, "18");
    EXPECT_EQ(next.direction, "return");
    EXPECT_EQ(startOf(next), "2026-05-09T05:50:12");
    EXPECT_FALSE(next.consumption);
    EXPECT_EQ(next.number, 0);
}

TEST(RunDraft, AKnownDirectionWinsOverTheUsualOpposite)
{
    core::Study study;
    study.runs = {aRun().at_min(0), aRun().at_min(7)};
    study.runs[0].direction = "Lake";
    study.runs[1].direction = "Town";
    EXPECT_EQ(nextRun(study, moment(6, 0)).direction, "Lake");
    study.runs.resize(1);
    EXPECT_EQ(nextRun(study, moment(6, 0)).direction, "") << "nobody can guess it";
    study.runs[0].direction = "East";
    EXPECT_EQ(nextRun(study, moment(6, 0)).direction, "west");
}

TEST(RunDraft, TheFirstRunIsABaselineRunOut)
{
    const core::Run first = nextRun({}, moment(6, 0));
    EXPECT_EQ(first.configuration, "A");
    EXPECT_EQ(first.direction, "out");
}

TEST(RunDraft, TheStartHasAnOffsetWhereTheStudyHas)
{
    core::Study study;
    study.runs = {aRun()};
    study.runs[0].start = core::parseDateTime("2026-05-09T05:00:00+02:00").value();
    const QDateTime now(QDate(2026, 5, 9), QTime(5, 30), Qt::OffsetFromUTC, 7200);
    EXPECT_EQ(startOf(nextRun(study, now)), "2026-05-09T05:30:00+02:00");
}

TEST(RunDraft, SomeoneWithANotebookGetsTheUsualGap)
{
    core::Study study;
    study.runs = {aRun().at_min(0), aRun().at_min(7), aRun().at_min(14), aRun().at_min(40)};
    core::Run next;
    next.start = nextStartFromNotebook(study);
    EXPECT_EQ(startOf(next), "2026-05-09T06:27:00");
}

TEST(RunTags, SayWhatMayHaveMovedTheRun)
{
    QStringList words;
    for (const RunTag& tag : tagsOf(aRun().full(), {}))
        words += tag.text;
    EXPECT_TRUE(words.contains("traffic"));
    EXPECT_TRUE(words.contains(QString::fromUtf8("8.4\u00a0°C")));
    EXPECT_TRUE(words.contains("heated windscreen on")) << words.join('|').toStdString();
}

TEST(RunTags, AnAccessoryThatDropsOutWithinTheRunSaysSoInMinutes)
{
    core::Run run = aRun();
    run.duration_s = 200.0;
    const std::vector<core::TimedAccessory> timed{{"windscreen", 600.0, 10.0}};
    const auto said = [&](double on_s) {
        run.accessory_on_s = {{"windscreen", on_s}};
        const RunTags tags = tagsOf(run, {}, timed);
        return tags.empty() ? RunTag() : tags.front();
    };
    EXPECT_EQ(said(-400.0).text, "windscreen on"); // out of the run's end at 600 s exactly
    EXPECT_FALSE(said(-400.0).loud);
    EXPECT_EQ(said(-518.0).text,
              QString::fromUtf8("windscreen on 8½ min before: too early for its 10 minutes"));
    EXPECT_TRUE(said(-518.0).loud);
    EXPECT_EQ(said(12.0).text, "windscreen on only at 12 s");
    EXPECT_TRUE(said(12.0).loud);
}

TEST(CommonNotes, WhatIsAlikeStandsOnceAndARunSaysWhereItDiffers)
{
    core::Study study;
    for (int number = 1; number <= 5; ++number) {
        core::Run run = aRun().number(number).at_min(7 * number);
        run.accessory_w = 900.0;
        run.notes = "own words";
        study.runs.push_back(run);
    }
    const CommonNotes alike(study, {});
    EXPECT_TRUE(alike.words().startsWith("In every run: load 900"));
    EXPECT_TRUE(alike.tagsOf(study.runs[0]).empty());
    study.runs[2].accessory_w = 600.0;
    study.runs[3].accessory_w.reset();
    const CommonNotes mostly(study, {});
    EXPECT_TRUE(mostly.words().startsWith("In every run that says nothing else: load 900"));
    EXPECT_TRUE(mostly.tagsOf(study.runs[0]).empty());
    ASSERT_EQ(mostly.tagsOf(study.runs[2]).size(), 1U);
    EXPECT_TRUE(mostly.tagsOf(study.runs[2]).front().text.startsWith("load 600"));
    ASSERT_EQ(mostly.tagsOf(study.runs[3]).size(), 1U);
    EXPECT_TRUE(mostly.tagsOf(study.runs[3]).front().text.startsWith("not noted: load 900"));
    study.runs[1].accessory_w = 500.0; // two of five: nothing is usual
    EXPECT_EQ(CommonNotes(study, {}).words(), "");
    study.runs.resize(2);
    EXPECT_EQ(CommonNotes(study, {}).words(), "") << "two runs have nothing in common";
}

TEST(RunTags, AMarkIsSetOnceAndTakenAwayWhole)
{
    core::Run run = aRun();
    setMark(run, kTrafficMark, true);
    setMark(run, kTrafficMark, true);
    EXPECT_EQ(run.marks.size(), 1U);
    setMark(run, kTrafficMark, false);
    EXPECT_FALSE(hasMark(run, kTrafficMark));
}
