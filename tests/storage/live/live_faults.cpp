// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/live/live_faults.h"

#include "storage/live/live_recorder.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"
#include "tests/storage/study/faulty_copies.h"
#include "tests/storage/study/study_builders.h"
#include "tests/support/forgetful_disk.h"

#include <fmt/format.h>

#include <vector>

namespace bothways::tests {
namespace {

namespace fs = std::filesystem;
using storage::LiveRecorder;
using storage::StudyFile;
using DiskFault = ForgetfulDisk::Fault;

constexpr int kCommits = 10, kRowsEach = 30;

std::int64_t liveValue(std::int64_t row)
{
    return row * 7919 % 100'003;
}

/// How a recording went.
struct Recorded {
    std::int64_t acknowledged = 0; ///< rows
    long refused = 0;
    bool stopped = false;
};

Recorded recordThrough(StudyFile& study)
{
    Recorded recorded;
    LiveRecorder recorder =
        taken(LiveRecorder::begin(study, {"day", {1'778'305'200'000'000, std::nullopt}, "{}"}));
    recorder.setChannels({{0, {"n", "n", "", 1.0, 0.0}, false}});
    std::int64_t row = 0;
    for (int commit = 0; commit < kCommits; ++commit) {
        for (int i = 0; i < kRowsEach; ++i, ++row) {
            storage::Reading reading;
            reading.time_s = static_cast<double>(row);
            reading.integer = liveValue(row);
            recorder.put(std::vector{reading});
        }
        if (recorder.commit(static_cast<double>(row)))
            recorded.acknowledged = row;
        else
            ++recorded.refused;
    }
    recorded.stopped = static_cast<bool>(recorder.stop({}));
    if (recorded.stopped)
        recorded.acknowledged = row;
    return recorded;
}

/// Empty, or what is missing of the rows that were acknowledged.
std::string missingIn(const fs::path& file, const Recorded& recorded)
{
    const auto study = StudyFile::open(file);
    if (!study)
        return core::describe(study.error());
    if (const auto whole = storage::checkRecordings(study.value()); !whole)
        return core::describe(whole.error());
    const auto list = taken(storage::recordings(study.value()));
    if (list.empty())
        return recorded.acknowledged == 0 ? "" : "the recording is not there";
    const auto samples = taken(storage::readChannel(study.value(), list.front().id, "n"));
    for (std::size_t i = 0; i < samples.size(); ++i)
        if (samples.value[i] != static_cast<double>(liveValue(static_cast<std::int64_t>(i))))
            return fmt::format("row {} is another", i);
    if (samples.size() < static_cast<std::size_t>(recorded.acknowledged))
        return fmt::format("{} rows of {}", samples.size(), recorded.acknowledged);
    return {};
}

long callsOf(const FaultyCopies& live)
{
    live.freshCopy();
    ForgetfulDisk disk;
    StudyFile study = taken(StudyFile::open(live.study()));
    disk.failAt(0, DiskFault::error);
    static_cast<void>(recordThrough(study));
    return disk.calls();
}

std::string withFault(const FaultyCopies& live, long call, DiskFault fault, std::uint32_t seed,
                      LiveFaultSweep& sweep)
{
    live.freshCopy();
    Recorded recorded;
    const bool dead = fault == DiskFault::dead;
    {
        ForgetfulDisk disk;
        StudyFile study = taken(StudyFile::open(live.study()));
        disk.failAt(call, fault);
        recorded = recordThrough(study);
        if (dead)
            disk.survive(live.survivor().parent_path(), seed);
        else
            disk.failAt(0, fault);
    }
    ++sweep.tried;
    sweep.refused += recorded.refused;
    return missingIn(dead ? live.survivor() : live.study(), recorded);
}

} // namespace

LiveFaultSweep sweepLiveFaults(const fs::path& folder, long every, int forgotten)
{
    LiveFaultSweep sweep;
    const FaultyCopies live(folder);
    {
        const StudyFile made = taken(StudyFile::create(live.original()));
    }
    sweep.calls = callsOf(live);
    for (long call = 1; call <= sweep.calls; call += every) {
        for (const DiskFault fault : {DiskFault::error, DiskFault::full, DiskFault::dead})
            for (int i = 0; i < (fault == DiskFault::dead ? forgotten : 1); ++i) {
                const auto wrong =
                    withFault(live, call, fault, static_cast<std::uint32_t>(i + 97 * call), sweep);
                if (!wrong.empty()) {
                    sweep.failure =
                        fmt::format("call {}, fault {}: {}", call, static_cast<int>(fault), wrong);
                    return sweep;
                }
            }
    }
    return sweep;
}

} // namespace bothways::tests
