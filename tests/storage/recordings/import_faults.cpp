// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/recordings/import_faults.h"

#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"
#include "storage/recordings/sheet_import.h"
#include "storage/recordings/trace_import.h"
#include "storage/sheet/run_sheet.h"
#include "storage/study/study_file.h"
#include "tests/storage/study/faulty_copies.h"
#include "tests/storage/study/study_builders.h"
#include "tests/support/forgetful_disk.h"
#include "tests/support/read_sheet.h"

#include <fmt/format.h>

#include <fstream>
#include <tuple>
#include <utility>
#include <vector>

namespace bothways::tests {
namespace {

namespace fs = std::filesystem;
using storage::StudyFile;
using Fault = ForgetfulDisk::Fault;

/// What a person sees: runs, properties, recordings, which run has which, and how long the history
/// is.
struct ImportSeen {
    core::Study study;
    std::vector<std::pair<std::string, std::int64_t>> recordings; ///< name, samples
    std::size_t assigned = 0, lines = 0;
    friend bool operator==(const ImportSeen&, const ImportSeen&) = default;
};

ImportSeen seenOf(const StudyFile& file)
{
    ImportSeen seen;
    seen.study = taken(file.study());
    for (const auto& one : taken(storage::recordings(file)))
        seen.recordings.emplace_back(one.name, one.samples);
    seen.assigned = taken(storage::assignedTraces(file)).size();
    seen.lines = taken(file.history()).size();
    return seen;
}

constexpr int kRecordings = 3;

class FaultBench : public FaultyCopies {
public:
    FaultBench(FaultyImport import, const fs::path& folder, int rows)
        : FaultyCopies(folder), m_import(import), m_folder(folder)
    {
        std::string text = "run,configuration,direction,start,duration_s,l_per_100km,trace\n";
        for (int run = 1; run <= kRecordings; ++run) {
            writeRecording(run, rows);
            text += fmt::format("{},A,{},2026-05-09T06:{}:00,210,8.{},run{}.csv\n", 100 + run,
                                run % 2 == 1 ? "out" : "return", 30 + 7 * run, run, run);
        }
        std::ofstream(m_folder / "sheet.csv") << text;
        m_sheet =
            taken(tests::readRunSheet(m_folder / "sheet.csv", {"2026-05-09", "2026-05-09"})).study;
        StudyFile file = taken(StudyFile::create(original()));
        for (int i = 0; i < 4; ++i)
            taken(file.addRun(aRun().at_min(7 * i)));
    }
    [[nodiscard]] core::Outcome import(StudyFile& file) const
    {
        if (m_import == FaultyImport::recording) {
            storage::TraceImportOptions options;
            options.run = 2;
            options.mapping = {{"n", "speed_kmh", 1.0, 0.0}};
            return outcomeOf(storage::importTrace(file, m_folder / "run1.csv", options));
        }
        return outcomeOf(storage::importSheet(file, m_sheet, m_folder / "sheet.csv"));
    }

private:
    template <class T>
    static core::Outcome outcomeOf(const core::Result<T>& result)
    {
        return result ? core::Outcome(core::Done{}) : core::Outcome(result.error());
    }
    void writeRecording(int run, int rows) const
    {
        std::ofstream stream(m_folder / fmt::format("run{}.csv", run));
        stream << "time_s,n\n";
        for (int i = 0; i < rows; ++i)
            stream << i << ',' << (i * 7919LL + run * 104'729LL) % 100'003 << '\n';
    }

    FaultyImport m_import;
    fs::path m_folder;
    core::Study m_sheet;
};

/// Before and after an import that nothing hinders, and what it asks of the disk.
struct ImportCourse {
    ImportSeen before, after;
    long calls = 0;
};

ImportCourse courseOf(const FaultBench& bench)
{
    bench.freshCopy();
    ForgetfulDisk disk;
    StudyFile file = taken(StudyFile::open(bench.study()));
    ImportCourse course{seenOf(file), {}, 0};
    disk.failAt(0, Fault::error);
    taken(bench.import(file));
    course.calls = disk.calls();
    course.after = seenOf(file);
    return course;
}

/// Empty, or what is wrong with the study, which the next program opens and imports into.
std::string wrongIn(const fs::path& study, const FaultBench& bench, const ImportCourse& course,
                    bool acknowledged, FaultSweep& sweep)
{
    auto opened = StudyFile::open(study);
    if (!opened)
        return core::describe(opened.error());
    StudyFile& file = opened.value();
    if (const auto whole = storage::checkRecordings(file); !whole)
        return core::describe(whole.error());
    const ImportSeen seen = seenOf(file);
    if (seen == course.after) {
        sweep.inAfterAll += acknowledged ? 0 : 1;
        return {};
    }
    if (acknowledged)
        return "lost what was acknowledged";
    if (seen != course.before)
        return "holds neither before nor after";
    if (const core::Outcome again = bench.import(file); !again)
        return "cannot be imported into: " + core::describe(again.error());
    return seenOf(file) == course.after ? "" : "the second try is not what the first would be";
}

/// One call that fails; the program goes on.
std::string atFailingCall(const FaultBench& bench, const ImportCourse& course, long call,
                          Fault fault, FaultSweep& sweep)
{
    bench.freshCopy();
    bool acknowledged = false;
    {
        ForgetfulDisk disk;
        StudyFile file = taken(StudyFile::open(bench.study()));
        disk.failAt(call, fault);
        const core::Outcome outcome = bench.import(file);
        if (!disk.failed())
            return "the call was not met";
        disk.failAt(0, fault);
        acknowledged = static_cast<bool>(outcome);
        const bool isIn = outcome || outcome.error().message.english().starts_with(
                                         "the change is in the study, but the disk did not");
        if (seenOf(file) != (isIn ? course.after : course.before))
            return "says what is not so: " +
                   (outcome ? std::string("done") : core::describe(outcome.error()));
    }
    sweep.acknowledged += acknowledged ? 1 : 0;
    return wrongIn(bench.study(), bench, course, acknowledged, sweep);
}

/// The power goes with the call.
std::string atPowerFailure(const FaultBench& bench, const ImportCourse& course, long call,
                           std::uint32_t seed, FaultSweep& sweep)
{
    bench.freshCopy();
    bool acknowledged = false;
    {
        ForgetfulDisk disk;
        StudyFile file = taken(StudyFile::open(bench.study()));
        disk.failAt(call, Fault::dead);
        acknowledged = static_cast<bool>(bench.import(file));
        disk.survive(bench.survivor().parent_path(), seed);
    }
    sweep.acknowledged += acknowledged ? 1 : 0;
    return wrongIn(bench.survivor(), bench, course, acknowledged, sweep);
}

} // namespace

FaultSweep sweepFaults(FaultyImport import, const fs::path& folder, long every, int forgotten,
                       int rows)
{
    FaultSweep sweep;
    const FaultBench bench(import, folder, rows);
    const ImportCourse course = courseOf(bench);
    sweep.calls = course.calls;
    for (long call = 1; call <= course.calls + 1; call += every) {
        const auto note = [&](const char* what, const std::string& wrong) {
            ++sweep.tried;
            if (!wrong.empty())
                sweep.failure = fmt::format("call {}, {}: {}", call, what, wrong);
            return wrong.empty();
        };
        if (call <= course.calls &&
            (!note("error", atFailingCall(bench, course, call, Fault::error, sweep)) ||
             !note("full", atFailingCall(bench, course, call, Fault::full, sweep))))
            return sweep;
        for (int i = 0; i < forgotten; ++i) {
            const auto seed = static_cast<std::uint32_t>(i + 97 * call);
            if (!note("power", atPowerFailure(bench, course, call, seed, sweep)))
                return sweep;
        }
    }
    return sweep;
}

} // namespace bothways::tests
