// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/clock.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"
#include "storage/study/history_message.h"
#include "tests/storage/recordings/trace_builders.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

namespace bothways::storage {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::SizeIs;
using tests::taken;
using tests::TraceBench;

/// 15 minutes from 05:39, a row a second: runs 1 and 2 are at 60 s and 480 s.
std::string aMorning(bool clock = true)
{
    std::string text = clock ? "time,road_speed_kmh\n" : "time_s,road_speed_kmh\n";
    for (int i = 0; i < 900; ++i)
        text += (clock ? fmt::format("2026-05-09T05:{:02}:{:02}", 39 + i / 60, i % 60)
                       : std::to_string(i)) +
                ",90\n";
    return text;
}

class RecordingCuts : public testing::Test {
protected:
    explicit RecordingCuts(bool clock = true) : bench(aMorning(clock))
    {
        bench.import();
        recording = taken(recordings(bench.m_study)).front();
    }
    core::Study study() { return taken(bench.m_study.study()); }
    core::Run run(int number) { return study().runs[static_cast<std::size_t>(number - 1)]; }
    Cut forRun(core::RunId id, double from_s, double to_s, bool timed = true)
    {
        return cutForRun(id, {from_s, to_s, {}, {}, {}, {}}, recording, study(), {}, timed);
    }
    Outcome cut(const std::vector<Cut>& cuts)
    {
        return cutRecording(bench.m_study, recording.id, cuts);
    }

    TraceBench bench;
    RecordingInfo recording;
};

TEST_F(RecordingCuts, ARunThatIsThereTakesStartAndDurationOfItsPartInOneStep)
{
    const std::string before = bench.content();
    ASSERT_TRUE(cut({forRun(bench.m_first, 72.5, 262.7), forRun(bench.m_second, 480.0, 690.0)}));
    EXPECT_EQ(core::formatDateTime(run(1).start), "2026-05-09T05:40:12.5");
    EXPECT_EQ(run(1).duration_s, 190.2);
    EXPECT_EQ(core::formatDateTime(run(2).start), "2026-05-09T05:47:00") << "its part is its own";
    EXPECT_EQ(run(2).duration_s, 210.0);
    ASSERT_THAT(taken(assignedTraces(bench.m_study)), SizeIs(2));
    EXPECT_EQ(taken(assignedTraces(bench.m_study))[0].offset_s, 72.5);
    const auto last = taken(bench.m_study.history()).back();
    EXPECT_EQ(last.kind, "cut_recording");
    EXPECT_THAT(historyDetail(last).english(),
                AllOf(HasSubstr("drive.csv: runs 1, 2; run 1: start"),
                      HasSubstr("duration (s) '210' -> '190.2'")));
    ASSERT_TRUE(bench.m_study.undo());
    EXPECT_EQ(run(1).duration_s, 210.0);
    EXPECT_EQ(core::formatDateTime(run(1).start), "2026-05-09T05:40:00");
    EXPECT_THAT(taken(assignedTraces(bench.m_study)), SizeIs(0));
}

TEST_F(RecordingCuts, WhatWasNotedInSecondsKeepsItsMomentWhenTheStartMoves)
{
    core::Run noted = run(1);
    noted.marks = {{31.2, "gust", ""}};
    noted.accessory_on_s = {{"windscreen", -40.0}};
    ASSERT_TRUE(bench.m_study.updateRun(noted));
    ASSERT_TRUE(cut({forRun(bench.m_first, 70.0, 270.0)}));
    EXPECT_EQ(run(1).marks[0].at_s, 21.2);
    EXPECT_EQ(run(1).accessory_on_s.at("windscreen"), -50.0);
}

TEST_F(RecordingCuts, ARunMayKeepItsOwnTimes)
{
    ASSERT_TRUE(cut({forRun(bench.m_first, 72.5, 262.7, false)}));
    EXPECT_EQ(run(1).duration_s, 210.0);
    EXPECT_EQ(core::formatDateTime(run(1).start), "2026-05-09T05:40:00");
    EXPECT_EQ(taken(assignedTraces(bench.m_study))[0].offset_s, 72.5);
}

TEST_F(RecordingCuts, NewRunsComeWithTheirTimesOrNotAtAll)
{
    Cut made = taken(cutForNewRun({700.0, 850.0, true, {}, 3.75, {}}, recording, study(), {}));
    made.run.configuration = "B";
    ASSERT_TRUE(cut({made}));
    EXPECT_EQ(core::formatDateTime(run(3).start), "2026-05-09T05:50:40");
    EXPECT_EQ(run(3).duration_s, 150.0);
    EXPECT_EQ(run(3).distance_km, 3.75);
    EXPECT_EQ(run(3).trace, "drive.csv");
    const std::string before = bench.content();
    made.run.configuration = "C"; // a third one
    EXPECT_FALSE(cut({forRun(bench.m_first, 72.5, 262.7), made}));
    EXPECT_EQ(bench.content(), before);
    EXPECT_EQ(run(1).duration_s, 210.0);
}

TEST_F(RecordingCuts, RefusesTwoPartsForOneRunAndAPartWithoutLength)
{
    const std::string before = bench.content();
    const auto two = cut({forRun(bench.m_first, 60, 100), forRun(bench.m_first, 100, 160)});
    ASSERT_FALSE(two);
    EXPECT_THAT(two.error().message.english(), HasSubstr("run 1 is given two parts"));
    EXPECT_FALSE(cut({forRun(bench.m_first, 100, 100)}));
    EXPECT_FALSE(cut({forRun(core::RunId{99}, 60, 100)}));
    EXPECT_FALSE(cut({}));
    EXPECT_EQ(bench.content(), before);
}

class RecordingCutsWithoutAClock : public RecordingCuts {
protected:
    RecordingCutsWithoutAClock() : RecordingCuts(false) {}
};

TEST_F(RecordingCutsWithoutAClock, ARunThatIsThereTakesTheDurationAlone)
{
    ASSERT_TRUE(cut({forRun(bench.m_first, 72.5, 262.7)}));
    EXPECT_EQ(run(1).duration_s, 190.2);
    EXPECT_EQ(core::formatDateTime(run(1).start), "2026-05-09T05:40:00");
    EXPECT_FALSE(cutForNewRun({700.0, 850.0, {}, {}, {}, {}}, recording, study(), {}));
}

} // namespace
} // namespace bothways::storage
