// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/study/kill_rounds.h"

#include "storage/bytes/sha256.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"
#include "storage/recordings/sheet_import.h"
#include "storage/recordings/trace_import.h"
#include "storage/sheet/study_digest.h"
#include "storage/study/study_file.h"
#include "tests/storage/study/random_edits.h"
#include "tests/storage/study/study_builders.h"

#include <fmt/format.h>

#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <ctime>
#include <fstream>
#include <optional>

namespace bothways::tests {
namespace {

namespace fs = std::filesystem;
using storage::StudyFile;

/// What a commit left: length of the history, and a digest of what the study says.
struct State {
    std::size_t lines = 0;
    std::string digest;
    friend bool operator==(const State&, const State&) = default;
};

State stateOf(const StudyFile& file)
{
    std::string words = storage::sha256OfStudy(taken(file.study()));
    for (const storage::Overruled& one : taken(file.overruled()))
        words += fmt::format("|{}|{}|{}", one.run, one.rule, one.words);
    for (const storage::RecordingInfo& one : taken(storage::recordings(file)))
        words += fmt::format("|{}|{}", one.name, one.samples);
    for (const storage::RunTraceInfo& one : taken(storage::assignedTraces(file)))
        words += fmt::format("|{}|{}", static_cast<std::int64_t>(one.run), one.offset_s);
    return {taken(file.history()).size(), storage::sha256(words)};
}

constexpr const char* kRecording = "drive.csv";
constexpr int kMostSteps = 4; ///< of undo that one call may have made: a sheet with 3 recordings

/// A recording without a clock, so that it fits every run.
void writeRecording(const fs::path& folder)
{
    std::ofstream stream(folder / kRecording);
    stream << "time_s,n\n";
    for (int i = 0; i < 4000; ++i)
        stream << i << ',' << i * 7919LL % 100'003 << '\n';
}

core::Study randomSheet(RandomEdits& edits, const StudyFile& file, int runs)
{
    core::Study sheet;
    const core::Study study = taken(file.study());
    for (int i = 0; i < runs; ++i)
        sheet.runs.push_back(edits.random().run(study));
    core::sortByStart(sheet);
    return sheet;
}

/// One thing that a person does. What the study refuses is part of it.
void doSomething(RandomEdits& edits, StudyFile& file, const fs::path& folder)
{
    RandomStudies& random = edits.random();
    if (random.oneIn(8)) {
        static_cast<void>(file.importRuns(randomSheet(edits, file, 60), "long.csv"));
    } else if (random.oneIn(8)) {
        static_cast<void>(storage::importTrace(file, folder / kRecording));
    } else if (random.oneIn(8)) {
        core::Study sheet = randomSheet(edits, file, kMostSteps - 1);
        for (std::size_t i = 0; i < sheet.runs.size(); ++i) {
            sheet.runs[i].number = 900'000'000 +
                                   static_cast<int>(taken(file.history()).size()) * 4 +
                                   static_cast<int>(i);
            sheet.runs[i].trace = kRecording;
        }
        static_cast<void>(storage::importSheet(file, sheet, folder / "traced.csv"));
    } else if (random.oneIn(6)) {
        static_cast<void>(random.oneIn(3) ? file.redo() : file.undo());
    } else if (random.oneIn(12)) {
        static_cast<void>(storage::compact(file));
    } else {
        edits.apply(file);
    }
}

/// Edits for ever; writes a line to `acknowledged` after each call that returned.
[[noreturn]] void edit(const fs::path& path, std::uint32_t seed, int acknowledged)
{
    RandomEdits edits(seed);
    StudyFile file = taken(StudyFile::open(path));
    while (true) {
        doSomething(edits, file, path.parent_path());
        const State state = stateOf(file);
        const std::string line = fmt::format("{} {}\n", state.lines, state.digest);
        if (::write(acknowledged, line.data(), line.size()) < 0)
            _exit(1);
        if (taken(file.study()).runs.size() > 450)
            _exit(0);
    }
}

std::string readAll(int descriptor)
{
    std::string text;
    char buffer[4096];
    for (ssize_t n = 0; (n = ::read(descriptor, buffer, sizeof buffer)) > 0;)
        text.append(buffer, static_cast<std::size_t>(n));
    return text;
}

/// The last whole line.
std::optional<State> lastOf(const std::string& text)
{
    const std::size_t end = text.rfind('\n');
    if (end == std::string::npos)
        return std::nullopt;
    const std::size_t before = end == 0 ? std::string::npos : text.rfind('\n', end - 1);
    const std::size_t begin = before == std::string::npos ? 0 : before + 1;
    const std::size_t blank = text.find(' ', begin);
    return State{std::stoul(text.substr(begin, blank - begin)),
                 text.substr(blank + 1, end - blank - 1)};
}

/// When the editor is killed.
struct Kill {
    bool afterCommit; ///< counted from its first acknowledgement, else from its start
    int wait_us;
};

/// Starts the editor, kills it, and gives what it acknowledged.
std::string runAndKill(const fs::path& path, std::uint32_t seed, const Kill& kill)
{
    int ends[2] = {};
    if (::pipe(ends) != 0)
        throw std::runtime_error("no pipe");
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        edit(path, seed, ends[1]);
    }
    ::close(ends[1]);
    if (kill.afterCommit) {
        constexpr int kTooLong_ms = 60'000;
        pollfd first{ends[0], POLLIN, 0};
        ::poll(&first, 1, kTooLong_ms);
    }
    const timespec wait{kill.wait_us / 1'000'000, 1000L * (kill.wait_us % 1'000'000)};
    ::nanosleep(&wait, nullptr);
    ::kill(child, SIGKILL);
    ::waitpid(child, nullptr, 0);
    std::string acknowledged = readAll(ends[0]);
    ::close(ends[0]);
    return acknowledged;
}

bool hasJournal(const fs::path& path)
{
    std::error_code none;
    const auto size = fs::file_size(path.string() + "-journal", none);
    return !none && size > 0;
}

/// One call had committed and was not acknowledged any more: without it the study is the expected.
bool isOneAhead(StudyFile& file, const State& expected)
{
    if (file.redo()) { // it was an undo
        const bool same = stateOf(file).digest == expected.digest;
        static_cast<void>(taken(file.undo()));
        if (same)
            return true;
    }
    int steps = 0;
    bool same = false;
    while (!same && steps < kMostSteps && file.undo()) {
        ++steps;
        same = stateOf(file).digest == expected.digest;
    }
    for (; steps > 0; --steps)
        static_cast<void>(taken(file.redo()));
    return same;
}

/// Compares the file with what was acknowledged. Empty: as it should be.
std::string wrong(StudyFile& file, const State& expected, KillReport& report)
{
    if (const auto whole = storage::checkRecordings(file); !whole)
        return core::describe(whole.error());
    if (stateOf(file).digest == expected.digest)
        return {};
    ++report.oneAhead;
    return isOneAhead(file, expected) ? ""
                                      : "it is not what was acknowledged, with one change more";
}

} // namespace

KillReport killRounds(int rounds, std::uint32_t seed, const fs::path& folder, int most_us)
{
    KillReport report;
    RandomStudies random(seed);
    const fs::path path = folder / "killed.bothways";
    fs::remove(path);
    writeRecording(folder);
    State expected = stateOf(taken(StudyFile::create(path)));
    for (; report.rounds < rounds && report.failure.empty(); ++report.rounds) {
        const std::string acknowledged =
            runAndKill(path, seed + static_cast<std::uint32_t>(report.rounds),
                       {report.rounds % 2 == 1, 1000 + random.below(most_us)});
        report.commits +=
            static_cast<int>(std::count(acknowledged.begin(), acknowledged.end(), '\n'));
        report.rolledBack += hasJournal(path) ? 1 : 0;
        expected = lastOf(acknowledged).value_or(expected);
        // A reader comes first every other time: it has to recover the file as well.
        if (random.oneIn(2))
            if (const auto reader = StudyFile::open(path, true); !reader)
                report.failure = core::describe(reader.error());
        auto file = StudyFile::open(path);
        if (!file) {
            report.failure = core::describe(file.error());
            break;
        }
        report.failure += wrong(file.value(), expected, report);
        expected = stateOf(file.value());
        if (taken(file.value().study()).runs.size() > 300) {
            file = core::Error{};
            fs::remove(path);
            expected = stateOf(taken(StudyFile::create(path)));
        }
    }
    if (!report.failure.empty())
        report.failure = fmt::format("round {}, seed {}: {}", report.rounds, seed, report.failure);
    return report;
}

} // namespace bothways::tests
