// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/study/kill_rounds.h"

#include "storage/bytes/sha256.h"
#include "storage/sheet/study_digest.h"
#include "storage/study/study_file.h"
#include "tests/storage/study/random_edits.h"
#include "tests/storage/study/study_builders.h"

#include <fmt/format.h>

#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <ctime>
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
    return {taken(file.history()).size(), storage::sha256(words)};
}

/// Edits for ever; writes a line to `acknowledged` after each call that returned.
[[noreturn]] void edit(const fs::path& path, std::uint32_t seed, int acknowledged)
{
    RandomEdits edits(seed);
    StudyFile file = taken(StudyFile::open(path));
    while (true) {
        if (edits.random().oneIn(6)) {
            core::Study sheet;
            const core::Study study = taken(file.study());
            for (int i = 0; i < 60; ++i)
                sheet.runs.push_back(edits.random().run(study));
            core::sortByStart(sheet);
            static_cast<void>(file.importRuns(sheet, "long.csv"));
        } else {
            edits.apply(file);
        }
        const State state = stateOf(file);
        const std::string line = fmt::format("{} {}\n", state.lines, state.digest);
        if (::write(acknowledged, line.data(), line.size()) < 0)
            _exit(1);
        if (taken(file.study()).runs.size() > 1500)
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

/// Starts the editor, kills it after `wait_us`, and gives what it acknowledged.
std::string runAndKill(const fs::path& path, std::uint32_t seed, int wait_us)
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
    const timespec wait{wait_us / 1'000'000, 1000L * (wait_us % 1'000'000)};
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

/// Compares the file with what was acknowledged. Empty: as it should be.
std::string wrong(StudyFile& file, const State& expected, KillReport& report)
{
    const State found = stateOf(file);
    if (found == expected)
        return {};
    if (found.lines != expected.lines + 1)
        return fmt::format("{} lines of history, acknowledged were {}", found.lines,
                           expected.lines);
    ++report.oneAhead;
    if (!file.undo())
        return "a change that was not acknowledged cannot be taken back";
    const State before = stateOf(file);
    taken(file.redo());
    return before.digest == expected.digest ? "" : "without the last change it is another study";
}

} // namespace

KillReport killRounds(int rounds, std::uint32_t seed, const fs::path& folder)
{
    KillReport report;
    RandomStudies random(seed);
    const fs::path path = folder / "killed.bothways";
    fs::remove(path);
    State expected = stateOf(taken(StudyFile::create(path)));
    for (; report.rounds < rounds && report.failure.empty(); ++report.rounds) {
        const std::string acknowledged = runAndKill(
            path, seed + static_cast<std::uint32_t>(report.rounds), 1000 + random.below(250'000));
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
        if (taken(file.value().study()).runs.size() > 1000) {
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
