// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one recorder, tried in every way that it is used.
#include "storage/live/live_recorder.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"
#include "tests/storage/study/study_builders.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>
#include <gtest/gtest.h>

#include <atomic>
#include <cmath>
#include <csignal>
#include <random>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace bothways::tests {
namespace {

using storage::LiveRecorder;
using storage::ReadChannel;
using storage::Reading;

ReadChannel channelCalled(const std::string& name, double factor = 1.0, double offset = 0.0)
{
    return {0, {name, name, "", factor, offset}, false};
}

Reading readingOf(std::uint32_t channel, double time_s, std::int64_t integer, int decimals)
{
    Reading reading;
    reading.channel = channel;
    reading.time_s = time_s;
    reading.integer = integer;
    reading.decimals = static_cast<std::int16_t>(decimals);
    return reading;
}

Reading oddReading(std::uint32_t channel, double time_s, double value)
{
    Reading reading = readingOf(channel, time_s, 0, -1);
    reading.odd = value;
    return reading;
}

class LiveStudy {
public:
    LiveStudy() : m_study(taken(storage::StudyFile::create(m_folder / "day.bothways"))) {}
    storage::StudyFile& study() { return m_study; }
    LiveRecorder recorder(int channels)
    {
        LiveRecorder recorder = taken(LiveRecorder::begin(
            m_study, {"morning", {1'778'305'200'000'000, std::nullopt}, "{\"rig\":1}"}));
        std::vector<ReadChannel> list;
        for (int i = 0; i < channels; ++i)
            list.push_back(channelCalled("c" + std::to_string(i)));
        recorder.setChannels(list);
        return recorder;
    }
    core::Samples channel(storage::StudyFile& study, const std::string& name)
    {
        return taken(
            storage::readChannel(study, taken(storage::recordings(study)).back().id, name));
    }
    std::filesystem::path file() const { return m_folder / "day.bothways"; }
    void reopen() // as the next program would
    {
        m_study = taken(storage::StudyFile::create(m_folder / "other.bothways"));
        m_study = taken(storage::StudyFile::open(file()));
        std::filesystem::remove(m_folder / "other.bothways");
    }

private:
    TemporaryFolder m_folder;
    storage::StudyFile m_study;
};

void expectSame(const core::Samples& got, const std::vector<double>& times,
                const std::vector<double>& values)
{
    ASSERT_EQ(got.size(), values.size());
    for (std::size_t i = 0; i < values.size(); ++i) {
        ASSERT_EQ(got.time_s[i], times[i]) << i;
        ASSERT_EQ(got.value[i], values[i]) << i;
    }
}

TEST(LiveRecorder, IsAWholeRecordingAfterEachCommit)
{
    LiveStudy live;
    LiveRecorder recorder = live.recorder(2);
    EXPECT_FALSE(recorder.recording());
    std::vector<double> times, values;
    for (int second = 0; second < 200; ++second) {
        for (int i = 0; i < 3; ++i) {
            const double time_s = second + i * 0.25;
            recorder.put(std::vector{readingOf(0, time_s, 1000 + second * i, 2)});
            times.push_back(std::round(time_s * 1e6) / 1e6);
            values.push_back((1000 + second * i) / 100.0);
        }
        ASSERT_TRUE(recorder.commit(second + 1.0));
        ASSERT_TRUE(storage::checkRecordings(live.study()));
        expectSame(live.channel(live.study(), "c0"), times, values);
    }
    ASSERT_TRUE(recorder.stop({}));
    ASSERT_TRUE(storage::checkRecordings(live.study()));
    const auto list = taken(storage::recordings(live.study()));
    ASSERT_EQ(list.size(), 1U);
    EXPECT_EQ(list[0].name, "morning");
    EXPECT_EQ(list[0].rows, 600);
    ASSERT_EQ(list[0].channels.size(), 1U) << "nothing came of the other";
    expectSame(live.channel(live.study(), "c0"), times, values);
}

TEST(LiveRecorder, KeepsEveryValueToTheLastBitWhateverComes)
{
    for (unsigned seed = 1; seed <= 20; ++seed) {
        LiveStudy live;
        std::mt19937 random(seed);
        const int channels = 1 + static_cast<int>(random() % 5);
        LiveRecorder recorder = live.recorder(channels);
        std::vector<std::vector<double>> times(static_cast<std::size_t>(channels)), values = times;
        double time_s = 0.0;
        const int rows = 200 + static_cast<int>(random() % 3000);
        for (int row = 0; row < rows; ++row) {
            time_s += (1 + static_cast<double>(random() % 4000)) / 1e6;
            for (int c = 0; c < channels; ++c) {
                if (random() % 3 == 0)
                    continue;
                const auto place = static_cast<std::size_t>(c);
                Reading reading;
                if (random() % 17 == 0)
                    reading = oddReading(
                        static_cast<std::uint32_t>(c), time_s,
                        random() % 2 == 0 ? -0.0 : 1.0 / static_cast<double>(1 + random() % 7));
                else
                    reading = readingOf(static_cast<std::uint32_t>(c), time_s,
                                        static_cast<std::int64_t>(random()) - 2'000'000'000,
                                        static_cast<int>(random() % (seed % 4 == 0 ? 18 : 6)));
                recorder.put({&reading, 1});
                times[place].push_back(std::round(time_s * 1e6) / 1e6);
                values[place].push_back(reading.value());
            }
            if (random() % 40 == 0) {
                ASSERT_TRUE(recorder.commit(time_s + 1e-6));
            }
        }
        ASSERT_TRUE(recorder.stop({}));
        ASSERT_TRUE(storage::checkRecordings(live.study()));
        EXPECT_EQ(recorder.late(), 0);
        for (int c = 0; c < channels; ++c)
            expectSame(live.channel(live.study(), "c" + std::to_string(c)),
                       times[static_cast<std::size_t>(c)], values[static_cast<std::size_t>(c)]);
    }
}

TEST(LiveRecorder, CutsALongRecordingIntoGroupsAsAnImportDoes)
{
    LiveStudy live;
    LiveRecorder recorder = live.recorder(1);
    std::vector<Reading> readings;
    for (int i = 0; i < 150'000; ++i)
        readings.push_back(readingOf(0, i * 1e-3, i % 977, 1));
    for (std::size_t at = 0; at < readings.size(); at += 1500) {
        recorder.put(std::span(readings).subspan(at, 1500));
        ASSERT_TRUE(recorder.commit(readings[at + 1499].time_s + 1e-3));
    }
    ASSERT_TRUE(recorder.stop({}));
    ASSERT_TRUE(storage::checkRecordings(live.study()));
    EXPECT_EQ(live.channel(live.study(), "c0").size(), 150'000U);
}

TEST(LiveRecorder, IsSmallWhileItGrowsAndAsSmallAsAnImportAfterwards)
{
    LiveStudy live;
    LiveRecorder recorder = live.recorder(4);
    std::mt19937 random(3);
    double worst = 0.0;
    std::int64_t now = 0;
    std::vector<double> ratios;
    for (int second = 0; second < 1000; ++second) { // at 4 Hz
        for (int i = 0; i < 4; ++i)
            for (std::uint32_t c = 0; c < 4; ++c)
                recorder.put(std::vector{
                    readingOf(c, second + i * 0.25, 5000 + static_cast<int>(random() % 100), 1)});
        ASSERT_TRUE(recorder.commit(second + 1.0));
        now = recorder.bytes();
    }
    ASSERT_TRUE(recorder.stop({}));
    worst = static_cast<double>(now) / static_cast<double>(recorder.bytes());
    EXPECT_LE(worst, 1.5);
    EXPECT_LE(recorder.bytes(), 4'000 * 4 * 2) << "less than two bytes a sample, times and all";
}

TEST(LiveRecorder, LeavesAWholeStudyWhenNobodyStopsItAndSaysSoOnce)
{
    LiveStudy live;
    std::vector<double> times, values;
    {
        LiveRecorder recorder = live.recorder(1);
        for (int i = 0; i < 50; ++i) {
            recorder.put(std::vector{readingOf(0, i, i, 0)});
            times.push_back(i);
            values.push_back(i);
            ASSERT_TRUE(recorder.commit(i + 0.5));
        }
        recorder.put(std::vector{readingOf(0, 60, 60, 0)}); // never committed
    }
    live.reopen();
    ASSERT_TRUE(storage::checkRecordings(live.study()));
    expectSame(live.channel(live.study(), "c0"), times, values);
    const auto recovered = taken(storage::sayRecovered(live.study()));
    ASSERT_EQ(recovered.size(), 1U);
    EXPECT_EQ(recovered[0].name, "morning");
    EXPECT_EQ(recovered[0].length_s, 49.0);
    EXPECT_TRUE(taken(storage::sayRecovered(live.study())).empty());
    const auto record = taken(storage::liveRecord(live.study(), recovered[0].recording));
    ASSERT_TRUE(record);
    EXPECT_FALSE(record->ended);
    EXPECT_EQ(record->rig, "{\"rig\":1}");
}

TEST(LiveRecorder, RecordsWithWhichRigAndWhatWentWrong)
{
    LiveStudy live;
    LiveRecorder recorder = live.recorder(1);
    recorder.put(std::vector{readingOf(0, 1.0, 1, 0)});
    storage::LiveCounts counts{"board", 8170, 3, 12, 2, 1, -0.25};
    ASSERT_TRUE(recorder.stop({counts}));
    const auto record = taken(storage::liveRecord(live.study(), *recorder.recording()));
    ASSERT_TRUE(record);
    EXPECT_TRUE(record->ended);
    EXPECT_EQ(record->counts, std::vector{counts});
    EXPECT_FALSE(taken(storage::liveRecord(live.study(), core::RecordingId{99})));
    EXPECT_TRUE(taken(storage::sayRecovered(live.study())).empty());
}

TEST(LiveRecorder, LetsPeopleEditCutAndUndoMeanwhile)
{
    LiveStudy live;
    storage::StudyFile other = taken(live.study().another());
    LiveRecorder recorder = live.recorder(1);
    double time_s = 0.0;
    const auto record = [&] {
        for (int i = 0; i < 300; ++i)
            recorder.put(std::vector{readingOf(0, time_s += 1.0, i, 0)});
        ASSERT_TRUE(recorder.commit(time_s + 0.5));
    };
    record();
    core::Run run = aRun();
    run.duration_s = 210.0;
    storage::Cut cut;
    cut.run = run;
    cut.offset_s = 30.0;
    ASSERT_TRUE(storage::cutRecording(other, *recorder.recording(), {cut}));
    record();
    const auto trace = storage::tracesOf(other)(taken(other.study()).runs.front());
    ASSERT_TRUE(trace);
    EXPECT_EQ(trace->samples("c0")->time_s.front(), 1.0 - 30.0);
    EXPECT_TRUE(other.undo());
    EXPECT_TRUE(taken(other.study()).runs.empty());
    record();
    EXPECT_TRUE(other.redo());
    record();
    EXPECT_EQ(taken(storage::assignedTraces(other)).size(), 1U);
    ASSERT_TRUE(recorder.stop({}));
    ASSERT_TRUE(storage::checkRecordings(other));
    EXPECT_TRUE(other.undo());
    EXPECT_EQ(live.channel(other, "c0").size(), 1200U) << "undo takes the run, not the recording";
}

TEST(LiveRecorder, SaysThatItsRecordingWasTakenOut)
{
    LiveStudy live;
    storage::StudyFile other = taken(live.study().another());
    LiveRecorder recorder = live.recorder(1);
    recorder.put(std::vector{readingOf(0, 1.0, 1, 0)});
    ASSERT_TRUE(recorder.commit(2.0));
    ASSERT_TRUE(storage::dropRecording(other, *recorder.recording()));
    recorder.put(std::vector{readingOf(0, 3.0, 1, 0)});
    EXPECT_FALSE(recorder.commit(4.0));
    ASSERT_TRUE(storage::checkRecordings(other));
}

TEST(LiveRecorder, TakesAlongWhatACommitCouldNotWrite)
{
    LiveStudy live;
    LiveRecorder recorder = live.recorder(1);
    recorder.put(std::vector{readingOf(0, 1.0, 7, 0)});
    ASSERT_TRUE(recorder.commit(2.0));
    recorder.put(std::vector{readingOf(0, 3.0, 8, 0)});
    storage::StudyFile::setWaiting({}, std::chrono::milliseconds(0));
    {
        SQLite::Database foreign(live.file(), SQLite::OPEN_READWRITE);
        SQLite::Transaction holds(foreign, SQLite::TransactionBehavior::IMMEDIATE);
        EXPECT_FALSE(recorder.commit(4.0));
        recorder.put(std::vector{readingOf(0, 5.0, 9, 0)});
        EXPECT_FALSE(recorder.commit(6.0));
        EXPECT_EQ(recorder.waiting(), 2);
    }
    storage::StudyFile::setWaiting({}, std::chrono::seconds(10));
    ASSERT_TRUE(recorder.commit(6.0));
    EXPECT_EQ(recorder.waiting(), 0);
    ASSERT_TRUE(recorder.stop({}));
    expectSame(live.channel(live.study(), "c0"), {1.0, 3.0, 5.0}, {7.0, 8.0, 9.0});
    ASSERT_TRUE(storage::checkRecordings(live.study()));
}

TEST(LiveRecorder, PutsInstrumentsInOrderAndCountsWhatComesTooLate)
{
    LiveStudy live;
    LiveRecorder recorder = live.recorder(2);
    recorder.put(std::vector{readingOf(0, 1.0, 1, 0), readingOf(0, 3.0, 3, 0)});
    recorder.put(std::vector{readingOf(1, 2.0, 2, 0), readingOf(1, 3.0, 4, 0)});
    ASSERT_TRUE(recorder.commit(2.5));
    recorder.put(std::vector{readingOf(1, 1.5, 5, 0)});
    ASSERT_TRUE(recorder.commit(10.0));
    EXPECT_EQ(recorder.late(), 1);
    ASSERT_TRUE(recorder.stop({}));
    expectSame(live.channel(live.study(), "c0"), {1.0, 3.0}, {1.0, 3.0});
    expectSame(live.channel(live.study(), "c1"), {2.0, 3.0}, {2.0, 4.0});
}

TEST(LiveRecorder, GivesTwoOfOneMicrosecondAMicrosecondEach)
{
    LiveStudy live;
    LiveRecorder recorder = live.recorder(2);
    recorder.put(std::vector{readingOf(0, 1.0, 1, 0), readingOf(1, 1.0, 10, 0),
                             readingOf(0, 1.0, 2, 0), readingOf(0, 1.0000004, 3, 0)});
    ASSERT_TRUE(recorder.stop({}));
    expectSame(live.channel(live.study(), "c0"), {1.0, 1.000001, 1.000002}, {1.0, 2.0, 3.0});
    expectSame(live.channel(live.study(), "c1"), {1.0}, {10.0});
    EXPECT_EQ(recorder.late(), 0);
}

TEST(LiveRecorder, NamesEachChannelOnceAndConvertsAsTheRigSays)
{
    LiveStudy live;
    LiveRecorder recorder = live.recorder(0);
    recorder.setChannels({channelCalled("rpm", 2.0, 1.0), channelCalled("rpm"), channelCalled("")});
    recorder.put(std::vector{readingOf(0, 1.0, 10, 0), readingOf(1, 1.0, 20, 0),
                             readingOf(2, 1.0, 30, 0), readingOf(7, 1.0, 40, 0)});
    ASSERT_TRUE(recorder.stop({}));
    EXPECT_EQ(live.channel(live.study(), "rpm").value.front(), 21.0);
    EXPECT_EQ(live.channel(live.study(), "rpm_2").value.front(), 20.0);
    EXPECT_EQ(live.channel(live.study(), "channel").value.front(), 30.0);
    EXPECT_EQ(recorder.late(), 1) << "of a channel that nobody named";
}

TEST(LiveRecorder, KeepsMarksInTheRecording)
{
    LiveStudy live;
    LiveRecorder recorder = live.recorder(1);
    recorder.put(std::vector{readingOf(0, 1.0, 1, 0)});
    recorder.mark(0.5, "lorry");
    ASSERT_TRUE(recorder.commit(2.0));
    recorder.mark(3.0, "windscreen off");
    ASSERT_TRUE(recorder.stop({}));
    const auto marks = taken(storage::readMarks(live.study(), *recorder.recording()));
    ASSERT_EQ(marks.size(), 2U);
    EXPECT_EQ(marks[1].words, "windscreen off");
}

TEST(LiveRecorder, IsReadWholeByOthersWhileItIsWritten)
{
    LiveStudy live;
    storage::StudyFile other = taken(live.study().another());
    std::atomic<bool> done = false;
    std::atomic<std::int64_t> committed = 0;
    std::thread writer([&] {
        LiveRecorder recorder = live.recorder(2);
        for (int i = 0; i < 400; ++i) {
            recorder.put(std::vector{readingOf(0, i, i, 0), readingOf(1, i, -i, 0)});
            if (!recorder.commit(i + 0.5))
                break;
            committed = i + 1;
        }
        static_cast<void>(recorder.stop({}));
        done = true;
    });
    std::size_t reads = 0;
    while (!done) {
        const std::int64_t before = committed;
        if (before == 0)
            continue;
        const auto list = taken(storage::recordings(other));
        ASSERT_EQ(list.size(), 1U);
        const auto trace = taken(storage::openRecording(other, list[0].id));
        const auto a = trace->samples("c0"), b = trace->samples("c1");
        ASSERT_GE(static_cast<std::int64_t>(a->size()), before);
        ASSERT_GE(b->size(), a->size()) << "read later";
        for (std::size_t i = 0; i < a->size(); ++i) {
            ASSERT_EQ(a->value[i], static_cast<double>(i));
            ASSERT_EQ(b->value[i], -static_cast<double>(i));
        }
        ASSERT_TRUE(storage::checkRecordings(other));
        ++reads;
    }
    writer.join();
    EXPECT_GT(reads, 0U);
}

/// Records as fast as it can, and tells how many rows are surely on the disk.
[[noreturn]] void recordUntilKilled(const std::filesystem::path& file, int told)
{
    auto study = storage::StudyFile::open(file);
    if (!study)
        _exit(1);
    auto recorder =
        LiveRecorder::begin(study.value(), {"day", {1'778'305'200'000'000, std::nullopt}, "{}"});
    if (!recorder)
        _exit(1);
    recorder.value().setChannels({channelCalled("a"), channelCalled("b")});
    for (int i = 0;; ++i) {
        recorder.value().put(
            std::vector{readingOf(0, i * 0.1, i, 0), readingOf(1, i * 0.1, 2 * i, 1)});
        if (i % 3 == 2) {
            if (!recorder.value().commit(i * 0.1 + 0.05))
                _exit(1);
            const std::int64_t rows = i + 1;
            static_cast<void>(!write(told, &rows, sizeof rows));
        }
    }
}

TEST(LiveRecorder, LosesNothingThatWasCommittedWhenItIsKilled)
{
    std::mt19937 random(20261130);
    for (int round = 0; round < 25; ++round) {
        TemporaryFolder folder;
        const std::filesystem::path file = folder / "day.bothways";
        taken(storage::StudyFile::create(file));
        int ends[2];
        ASSERT_EQ(pipe(ends), 0);
        const pid_t child = fork();
        if (child == 0)
            recordUntilKilled(file, ends[1]);
        close(ends[1]);
        std::int64_t acknowledged = 0, rows = 0;
        const int commits = 1 + static_cast<int>(random() % 60);
        for (int i = 0; i < commits && read(ends[0], &rows, sizeof rows) == sizeof rows; ++i)
            acknowledged = rows;
        usleep(static_cast<useconds_t>(random() % 3000));
        kill(child, SIGKILL);
        waitpid(child, nullptr, 0);
        while (read(ends[0], &rows, sizeof rows) == sizeof rows)
            acknowledged = rows;
        close(ends[0]);
        ASSERT_GT(acknowledged, 0);
        storage::StudyFile study = taken(storage::StudyFile::open(file));
        ASSERT_TRUE(storage::checkRecordings(study));
        const auto list = taken(storage::recordings(study));
        ASSERT_EQ(list.size(), 1U);
        EXPECT_GE(list[0].rows, acknowledged);
        EXPECT_LE(list[0].rows, acknowledged + 3);
        EXPECT_EQ(taken(storage::sayRecovered(study)).size(), 1U);
    }
}

} // namespace
} // namespace bothways::tests
