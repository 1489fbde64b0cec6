// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/history_message.h"

#include "storage/recordings/recordings.h"
#include "storage/study/history_detail.h"
#include "storage/study/renaming.h"
#include "tests/storage/recordings/trace_builders.h"
#include "tests/storage/study/study_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using storage::HistoryDetail;
using storage::HistoryEntry;
using storage::HistoryValue;
using storage::StudyFile;
using testing::ElementsAre;
using testing::StartsWith;
using tests::aRun;
using tests::taken;

namespace {

std::string told(const std::string& kind, const std::string& detail)
{
    return storage::historyDetail({0, {}, kind, detail, false}).english();
}

/// "kind: detail" of each line from `first` on.
std::vector<std::string> toldBy(const StudyFile& file, std::size_t first = 0)
{
    const auto history = taken(file.history());
    std::vector<std::string> lines;
    for (std::size_t i = first; i < history.size(); ++i)
        lines.push_back(history[i].kind + ": " + storage::historyDetail(history[i]).english());
    return lines;
}

class HistoryMessage : public testing::Test {
protected:
    core::RunId add(const core::Run& run) { return taken(file.addRun(run)); }
    core::Run first() { return taken(file.study()).runs.at(0); }
    /// What was noted since the study was made.
    std::vector<std::string> lines() { return toldBy(file, 1); }

    tests::TemporaryFolder folder;
    StudyFile file = taken(StudyFile::create(folder / "day.bothways"));
};

} // namespace

TEST_F(HistoryMessage, SaysWhoMadeTheStudy)
{
    EXPECT_THAT(toldBy(file), ElementsAre(StartsWith("new: made by Bothways ")));
}

TEST_F(HistoryMessage, SaysTheFactsOfRunsThatCameAndWent)
{
    core::Run traced = aRun().returning().at_min(7);
    traced.consumption.reset();
    traced.trace = "drive.csv";
    const core::RunId one = add(aRun());
    const core::RunId two = add(traced);
    taken(file.removeRuns({one, two}));
    EXPECT_THAT(lines(),
                ElementsAre("add_run: run 1: A out 2026-05-09T05:40:00, 8.41 L/100 km",
                            "add_run: run 2: A return 2026-05-09T05:47:00",
                            "remove_runs: run 1: A out 2026-05-09T05:40:00, 8.41 L/100 km; "
                            "run 2: A return 2026-05-09T05:47:00"));
}

TEST_F(HistoryMessage, SaysEveryCellThatWasChanged)
{
    add(aRun());
    core::Run run = first();
    run.duration_s = 211.5;
    run.consumption = core::Consumption{8.4, core::ConsumptionUnit::lPer100km, 2, true};
    run.notes = "two\nlines, it's wet";
    run.extra = {{"driver", "Kim"}};
    run.accessory_on_s = {{"windscreen", -40.0}};
    taken(file.updateRun(run));
    run = first();
    run.discard = core::Discard{"overspeed", ""};
    run.consumption.reset();
    run.notes = std::string(70, 'x');
    taken(file.updateRun(run));
    EXPECT_EQ(lines().at(1),
              "edit_run: run 1: consumption '8.41 L/100 km' -> '8.40 L/100 km from trace', "
              "duration (s) '' -> '211.5', notes '' -> 'two\\nlines, it's wet', "
              "columns of your own '' -> 'windscreen_on_s -40 driver Kim '");
    EXPECT_EQ(lines().at(2), "edit_run: run 1: consumption '8.40 L/100 km from trace' -> '', "
                             "status 'counted' -> 'discarded', reason '' -> 'over-speed', "
                             "notes 'two\\nlines, it's wet' -> '" +
                                 std::string(60, 'x') + "...'");
}

TEST_F(HistoryMessage, SaysWhyRunsWereDiscardedAndWhichCountAgain)
{
    const core::RunId one = add(aRun());
    const core::RunId two = add(aRun().returning().at_min(7));
    taken(file.discard({one, two}, {"Overspeed", "rotor 3410 rpm"}));
    taken(file.count({one, two}));
    taken(file.discardEach({{one, {"other", "a dog"}}, {two, {"load_lost", ""}}}));
    taken(file.count({two}));
    taken(file.pair(one, two));
    taken(file.unpair(two));
    const auto said = lines();
    EXPECT_EQ(said.at(2), "discard: runs 1, 2: over-speed, rotor 3410 rpm");
    EXPECT_EQ(said.at(3), "count: runs 1, 2");
    EXPECT_EQ(said.at(4), "discard: run 1: other, a dog; run 2: load lost");
    EXPECT_EQ(said.at(5), "count: run 2");
    EXPECT_EQ(said.at(6), "pair: runs 1, 2");
    EXPECT_EQ(said.at(7), "unpair: runs 2, 1");
}

TEST_F(HistoryMessage, SaysPropertiesNamesSheetsAndFindings)
{
    core::StudyProperties properties;
    properties.margin_pct = 0.5;
    properties.fuel = core::Fuel::diesel;
    taken(file.setProperties(properties, {}));
    taken(file.setProperties({}, {}));
    taken(file.setProperties(properties, "margin=0.5, fuel=diesel"));
    core::Study sheet;
    sheet.runs = {aRun(), aRun().device().returning().at_min(7)};
    taken(file.importRuns(sheet, "morning.csv"));
    taken(file.overrule({{1, "overspeed", "wrong counter"}, {2, "stretch", "detour"}}));
    taken(storage::rename(file, {{storage::NameOf::configuration, "b", " box "},
                                 {storage::NameOf::direction, "out", "east"}}));
    EXPECT_THAT(
        lines(),
        ElementsAre("set: margin='0.5', fuel='diesel'", "set: margin='', fuel=''",
                    "set: margin=0.5, fuel=diesel", "import: morning.csv: 2 runs",
                    "overrule: run 1: over-speed, wrong counter; run 2: wrong distance, detour",
                    "rename: configuration 'b' -> 'box', direction 'out' -> 'east'"));
}

TEST_F(HistoryMessage, SaysWhatWasLookedAtAndBlinded)
{
    taken(file.note("look", HistoryDetail{"look", {9, "undecided"}}.written()));
    taken(file.note("look", "B used less."));
    taken(file.note("blind", "on"));
    taken(file.note("blind", "off"));
    EXPECT_THAT(lines(), ElementsAre("look: 9 pairs: undecided", "look: B used less.", "blind: on",
                                     "blind: off"));
}

TEST_F(HistoryMessage, SaysWhatWasUndoneAndDoneAgain)
{
    const core::RunId id = add(aRun());
    taken(file.discard({id}, {"overspeed", "rotor 3410 rpm"}));
    taken(file.undo());
    taken(file.redo());
    EXPECT_EQ(lines().at(2), "undo: discard run 1: over-speed, rotor 3410 rpm");
    EXPECT_EQ(lines().at(3), "redo: discard run 1: over-speed, rotor 3410 rpm");
    const auto change = storage::changeBehind(taken(file.history()).back());
    ASSERT_TRUE(change);
    EXPECT_EQ(change->kind, "discard");
    EXPECT_EQ(storage::historyDetail(*change).english(), "run 1: over-speed, rotor 3410 rpm");
    EXPECT_FALSE(storage::changeBehind(*change));
}

TEST(HistoryMessageOfRecordings, SaysRowsChannelsPartsAndWhose)
{
    tests::TraceBench bench("time_s,road_speed_kmh\n0,80\n1,81\n2,82\n700,80\n");
    storage::TraceImportOptions options;
    options.run = 1;
    bench.import(options);
    const core::RecordingId id = taken(storage::recordings(bench.m_study)).at(0).id;
    taken(bench.m_study.note("unassign_trace", HistoryDetail{"runs", {1}}.written()));
    taken(bench.m_study.note("assign_trace",
                             HistoryDetail{"assign", {2, "drive.csv", "1.500"}}.written()));
    storage::Cut cut;
    cut.existing = bench.m_first;
    cut.offset_s = 0.5;
    cut.duration_s = 190.25;
    taken(storage::cutRecording(bench.m_study, id, {cut}));
    taken(storage::dropRecording(bench.m_study, id));
    options.run.reset();
    bench.import(options);
    storage::Cut other = cut;
    other.existing = bench.m_second;
    other.duration_s.reset();
    cut.duration_s = 201.0;
    options.cuts = [&](const storage::RecordingInfo&) {
        return core::Result<std::vector<storage::Cut>>(std::vector{cut, other});
    };
    bench.import(options);
    EXPECT_THAT(
        toldBy(bench.m_study, 3),
        ElementsAre("import_trace: drive.csv: 4 rows, 1 channel, run 1", "unassign_trace: run 1",
                    "assign_trace: run 2: drive.csv from 1.500 s",
                    "cut_recording: drive.csv: run 1; run 1: duration (s) '210' -> '190.25'",
                    "drop_recording: drive.csv", "import_trace: drive.csv: 4 rows, 1 channel",
                    "import_trace: drive.csv: 4 rows, 1 channel; runs 1, 2; "
                    "run 1: duration (s) '190.25' -> '201'"));
}

TEST(HistoryMessageOfOldLines, ReadsThemAsTheyStandThere)
{
    for (const auto& [kind, detail] : std::vector<std::pair<std::string, std::string>>{
             {"new", "made by Bothways 0.1.0"},
             {"edit_run", "run 9: duration (s) '211' -> '213'"},
             {"pair", "runs 3, 4"},
             {"set", "name='run 5: fast'"},
             {"import", "/1[\"sheet\",3].csv: 12 runs"},
             {"undo", "discard run 9: overspeed, rotor 3410 rpm"},
             {"redo", "pair "},
             {"undo", "pair"},
             {"look", "B used less than A: 1.2 % less."},
             {"a kind of tomorrow", "anything {} at {0} all"}})
        EXPECT_EQ(told(kind, detail), detail) << kind;
    EXPECT_TRUE(storage::historyDetail({0, {}, "pair", "", false}).empty());
    const auto change = storage::changeBehind({0, {}, "undo", "discard run 9: wet", false});
    ASSERT_TRUE(change);
    EXPECT_EQ(change->kind + "|" + change->detail, "discard|run 9: wet");
}

TEST(HistoryDetails, KeepAnyTextAndNumber)
{
    const std::string nasty = "a\"b\\c\n\t\x01{}\xC3\xA4\xFF[,]";
    const HistoryDetail detail{"words", {nasty, "", -12, HistoryValue::List{}, 1LL << 62}};
    const auto read = HistoryDetail::read(detail.written());
    ASSERT_TRUE(read);
    EXPECT_EQ(read->form, "words");
    ASSERT_EQ(read->values.size(), 5u);
    EXPECT_EQ(read->values[0].text(), nasty);
    EXPECT_EQ(read->values[1].text(), "");
    EXPECT_EQ(read->values[2].number(), -12);
    EXPECT_TRUE(read->values[3].isList());
    EXPECT_EQ(read->values[4].number(), 1LL << 62);
    EXPECT_EQ(told("drop_recording", detail.written()), nasty);
}

TEST(HistoryDetails, WhatIsNotWholeOrNotKnownIsOnlyText)
{
    for (const char* text :
         {"", "/1", "/1[", "/1[]", "/1[3]", "/1[\"runs\",3", "/1[\"runs\",3]x", "/1[\"runs\",]",
          "/1[\"runs\" 3]", "/1[\"ru\\qns\"]", "/1[\"runs", "/1[\"\\u0041\"]", "/1[\"\\u00",
          "/1[\"runs\",99999999999999999999]", "/1[\"x\",[[[[[[1]]]]]]]", "/2[\"runs\",3]",
          "[\"runs\",3]", "/1[\"a form of tomorrow\",3]"}) {
        EXPECT_EQ(told("count", text), text);
    }
    EXPECT_EQ(told("count", "/1[\"runs\",3]"), "run 3");
}

TEST(HistoryDetails, OfAnotherShapeThanOursDoNoHarm)
{
    for (const char* form : {"runs", "facts", "edit", "discard", "overrule", "properties", "rename",
                             "sheet", "recording", "cut", "assign", "words", "made", "look"})
        for (const HistoryValue::List& values :
             {HistoryValue::List{}, HistoryValue::List{"x"}, HistoryValue::List{1, 2, 3, 4, 5, 6},
              HistoryValue::List{HistoryValue::List{}, HistoryValue::List{"a", "b", "c"}}})
            EXPECT_FALSE(told("count", HistoryDetail{form, values}.written()).starts_with("/1["))
                << form;
}

TEST(HistoryDetails, OfTenThousandRunsAreSaidWhole)
{
    HistoryDetail detail{"facts"};
    for (int i = 1; i <= 10'000; ++i)
        detail.values.push_back(HistoryValue::List{i, "A", "out", "2026-05-09T05:40:00"});
    const std::string text = told("remove_runs", detail.written());
    EXPECT_THAT(text, StartsWith("run 1: A out 2026-05-09T05:40:00; run 2: A out"));
    EXPECT_TRUE(text.ends_with("; run 10000: A out 2026-05-09T05:40:00"));
}

// A reader that follows each bracket ends by a signal.
TEST(HistoryDetails, OfAnyDepthAreOnlyText)
{
    constexpr std::size_t kDeep = 300'000;
    for (const std::string& detail :
         {"/1" + std::string(kDeep, '['), "/1[\"edit\"," + std::string(kDeep, '['),
          "/1[\"runs\"," + std::string(kDeep, '[') + "1" + std::string(kDeep, ']') + "]"}) {
        EXPECT_EQ(told("edit_run", detail), detail);
        EXPECT_EQ(told("undo", "edit_run " + detail), "edit_run " + detail);
    }
    std::string undone;
    for (int i = 0; i < 50'000; ++i)
        undone += "undo ";
    EXPECT_EQ(told("undo", undone), undone);
}
