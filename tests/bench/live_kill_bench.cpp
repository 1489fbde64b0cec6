// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/live/live_recorder.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"
#include "tests/storage/study/study_builders.h"

#include <fmt/format.h>

#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <cstdlib>
#include <ctime>
#include <random>

// A recording under way, killed at a random moment, again and again: what was acknowledged must be
// in the study.

using namespace bothways;
using storage::LiveRecorder;
using storage::Reading;
using storage::StudyFile;
using tests::taken;

namespace {

constexpr std::uint32_t kChannels = 8;
constexpr int kRowsPerCommit = 25; // 50 Hz, twice a second
constexpr double kStep_s = 0.02;

/// What row i of a channel holds, so that a lost or changed one is seen.
std::int64_t valueAt(std::int64_t row, std::uint32_t channel)
{
    return row * 7919 % 100'003 * (channel % 2 == 0 ? 1 : -1) + channel;
}

LiveRecorder recorderOf(StudyFile& study)
{
    LiveRecorder recorder =
        taken(LiveRecorder::begin(study, {"day", {1'778'305'200'000'000, std::nullopt}, "{}"}));
    std::vector<storage::ReadChannel> channels;
    for (std::uint32_t c = 0; c < kChannels; ++c) {
        const std::string name = fmt::format("c{}", c);
        channels.push_back({0, {name, name, "", 1.0, 0.0}, false});
    }
    recorder.setChannels(channels);
    return recorder;
}

/// Half seconds of recording as fast as the disk takes them; tells the rows of each commit.
[[noreturn]] void recordFor(const std::filesystem::path& file, int told)
{
    StudyFile study = taken(StudyFile::open(file));
    LiveRecorder recorder = recorderOf(study);
    std::vector<Reading> readings;
    for (std::int64_t row = 0;;) {
        readings.clear();
        for (int i = 0; i < kRowsPerCommit; ++i, ++row)
            for (std::uint32_t c = 0; c < kChannels; ++c) {
                Reading reading;
                reading.channel = c;
                reading.time_s = static_cast<double>(row) * kStep_s;
                reading.integer = valueAt(row, c);
                reading.decimals = 0;
                readings.push_back(reading);
            }
        recorder.put(readings);
        if (!recorder.commit(static_cast<double>(row) * kStep_s - kStep_s / 2))
            _exit(1);
        if (::write(told, &row, sizeof row) != sizeof row)
            _exit(1);
    }
}

/// The rows that were acknowledged before the kill.
std::int64_t recordAndKill(const std::filesystem::path& file, long wait_us)
{
    std::array<int, 2> ends{};
    if (::pipe(ends.data()) != 0)
        throw std::runtime_error("no pipe");
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        recordFor(file, ends[1]);
    }
    ::close(ends[1]);
    std::int64_t rows = 0;
    std::int64_t acknowledged = 0;
    if (::read(ends[0], &rows, sizeof rows) == sizeof rows) // it has begun
        acknowledged = rows;
    const timespec wait{wait_us / 1'000'000, 1000L * (wait_us % 1'000'000)};
    ::nanosleep(&wait, nullptr);
    ::kill(child, SIGKILL);
    ::waitpid(child, nullptr, 0);
    while (::read(ends[0], &rows, sizeof rows) == sizeof rows)
        acknowledged = rows;
    ::close(ends[0]);
    return acknowledged;
}

/// Empty: the study is whole, and every row that was acknowledged is in it as it was recorded.
std::string lostOf(const std::filesystem::path& file, std::int64_t acknowledged)
{
    auto opened = StudyFile::open(file);
    if (!opened)
        return core::describe(opened.error());
    const StudyFile& study = opened.value();
    if (const auto whole = storage::checkRecordings(study); !whole)
        return core::describe(whole.error());
    const auto list = taken(storage::recordings(study));
    if (list.empty())
        return acknowledged == 0 ? "" : "the recording is not there";
    if (list.size() != 1 || list[0].rows < acknowledged)
        return fmt::format("{} rows of {}", list[0].rows, acknowledged);
    for (std::uint32_t c = 0; c < kChannels; ++c) {
        const auto samples = storage::readChannel(study, list[0].id, fmt::format("c{}", c));
        if (!samples)
            return core::describe(samples.error());
        for (std::size_t i = 0; i < samples.value().size(); ++i)
            if (samples.value().value[i] !=
                static_cast<double>(valueAt(static_cast<std::int64_t>(i), c)))
                return fmt::format("row {} of channel {} is another", i, c);
        if (samples.value().size() < static_cast<std::size_t>(acknowledged))
            return fmt::format("{} samples of channel {}", samples.value().size(), c);
    }
    return {};
}

} // namespace

/// live_kill_bench [ROUNDS [SEED [FOLDER]]]
int main(int argc, char** argv)
{
    const int rounds = argc > 1 ? std::atoi(argv[1]) : 1000;
    const auto seed = static_cast<std::uint32_t>(argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 1);
    const tests::TemporaryFolder inMemory;
    const std::filesystem::path folder =
        argc > 3 ? std::filesystem::path(argv[3]) : inMemory.path();
    const std::filesystem::path file = folder / "killed_live.bothways";
    std::mt19937 random(seed);
    std::int64_t rows = 0;
    int lost = 0;
    for (int round = 0; round < rounds; ++round) {
        std::filesystem::remove(file);
        {
            const StudyFile made = taken(StudyFile::create(file));
        }
        const std::int64_t acknowledged = recordAndKill(file, 1 + random() % 60'000);
        rows += acknowledged;
        if (const std::string why = lostOf(file, acknowledged); !why.empty()) {
            ++lost;
            fmt::print("round {}: {}\n", round, why);
        }
    }
    std::filesystem::remove(file);
    fmt::print("{} rounds killed, {} rows of {} channels acknowledged ({:.0f} s of recording), "
               "{} rounds lost something\n",
               rounds, rows, kChannels, static_cast<double>(rows) * kStep_s, lost);
    return lost == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
