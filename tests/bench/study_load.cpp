// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/study_file.h"
#include "tests/bench/noted_run.h"
#include "tests/storage/study/study_builders.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <ctime>
#include <functional>
#include <vector>

// Times of a study file with many runs and a long history: processor time, in memory.

using namespace bothways;
using storage::StudyFile;
using tests::aRun;
using tests::taken;

namespace {

double processor_ms(const std::function<void()>& work)
{
    const std::clock_t begun = std::clock();
    work();
    return 1000.0 * static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC;
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values.at(values.size() / 2);
}

core::Run runAt(int i)
{
    auto run = aRun().at_min(7 * i);
    if (i / 2 % 3 == 1)
        run.device();
    if (i % 2 == 1)
        run.returning();
    return bench::notedRun(run, i);
}

struct Times {
    double open_ms = 0.0, edit_ms = 0.0, undo_ms = 0.0, note_ms = 0.0, add_ms = 0.0;
};

/// Of a study with so many runs and at least so many lines of history.
Times timesOf(const std::filesystem::path& path, int runs, int lines)
{
    Times times;
    {
        StudyFile file = taken(StudyFile::create(path));
        core::Study sheet;
        for (int i = 0; i < runs; ++i)
            sheet.runs.push_back(runAt(i));
        taken(file.importRuns(sheet, "long.csv"));
        const auto id = taken(file.study()).runs.front().id;
        for (int i = 0; 2 * i < lines; ++i) {
            taken(file.discard({id}, {"adjusted", "by hand"}));
            taken(file.count({id}));
        }
    }
    std::vector<double> open, edit, undo, note, add;
    for (int i = 0; i < 5; ++i)
        open.push_back(processor_ms([&] { taken(StudyFile::open(path)); }));
    StudyFile file = taken(StudyFile::open(path));
    const auto id = taken(file.study()).runs.at(static_cast<std::size_t>(runs / 2)).id;
    for (int i = 0; i < 51; ++i) {
        edit.push_back(processor_ms([&] { taken(file.discard({id}, {"adjusted", "by hand"})); }));
        undo.push_back(processor_ms([&] { taken(file.undo()); }));
        note.push_back(processor_ms([&] { taken(file.note("look", "at it")); }));
        if (runs < 10'000)
            add.push_back(processor_ms([&] { taken(file.addRun(runAt(runs + i))); }));
    }
    times = {median(open), median(edit), median(undo), median(note), add.empty() ? 0 : median(add)};
    return times;
}

void printRow(int runs, int lines, const Times& times)
{
    fmt::print("{:>6} {:>6} {:>8.2f} {:>8.3f} {:>8.3f} {:>8.3f} {:>8.3f}\n", runs, lines,
               times.open_ms, times.edit_ms, times.undo_ms, times.note_ms, times.add_ms);
}

/// A study of so many runs, made in one import.
StudyFile studyOf(const std::filesystem::path& path, int runs)
{
    StudyFile file = taken(StudyFile::create(path));
    core::Study sheet;
    for (int i = 0; i < runs; ++i)
        sheet.runs.push_back(runAt(i));
    taken(file.importRuns(sheet, "long.csv"));
    return file;
}

/// The edits of a person, of the run in the middle, and how long each took.
class Editor {
public:
    Editor(const std::filesystem::path& path, int runs) : m_file(studyOf(path, runs)), m_runs(runs)
    {
    }
    void turn()
    {
        core::Run run = taken(m_file.study()).runs.at(static_cast<std::size_t>(m_runs / 2));
        run.notes = fmt::format("turn {}", m_times[0].size());
        m_times[0].push_back(processor_ms([&] { taken(m_file.updateRun(run)); }));
        m_times[1].push_back(processor_ms([&] {
            taken(m_file.discard({run.id}, {"adjusted", "by hand"}));
        }));
        m_times[2].push_back(processor_ms([&] { taken(m_file.count({run.id})); }));
        m_times[3].push_back(processor_ms([&] { taken(m_file.undo()); }));
        m_times[4].push_back(processor_ms([&] { taken(m_file.undo()); }));
        m_times[5].push_back(processor_ms([&] { taken(m_file.note("look", "at it")); }));
    }
    static constexpr const char* kNames[] = {"edit", "discard", "count", "undo", "undo", "note"};
    [[nodiscard]] const std::vector<double>& times_ms(std::size_t i) const { return m_times[i]; }

private:
    StudyFile m_file;
    int m_runs;
    std::array<std::vector<double>, std::size(kNames)> m_times;
};

/// One edit in a study of 20 and of 5,000 runs, in turn, so that a busy machine slows both.
void compareSizes(const std::filesystem::path& folder, int turns)
{
    Editor few(folder / "few.bothways", 20);
    Editor many(folder / "many.bothways", 5000);
    for (int i = 0; i < turns; ++i) {
        few.turn();
        many.turn();
    }
    fmt::print("5,000 runs beside 20, {} turns: processor time in ms, medians\n", turns);
    for (std::size_t i = 0; i < std::size(Editor::kNames); ++i) {
        const double a = median(few.times_ms(i));
        const double b = median(many.times_ms(i));
        fmt::print("{:>8} {:>8.3f} {:>8.3f} {:>6.2f} times\n", Editor::kNames[i], a, b, b / a);
    }
}

} // namespace

/// study_load [TURNS]: with TURNS, one edit in a long study beside one in a short one alone.
int main(int argc, char** argv)
{
    const tests::TemporaryFolder folder;
    compareSizes(folder.path(), argc > 1 ? std::atoi(argv[1]) : 101);
    if (argc > 1)
        return 0;
    fmt::print("processor time in ms, medians\n  runs  lines     open     edit     undo     note"
               "      add\n");
    for (const auto& [runs, lines] :
         {std::pair{20, 20}, {1000, 500}, {5000, 20}, {5000, 5000}, {10'000, 5000}}) {
        const Times times =
            timesOf(folder / fmt::format("{}_{}.bothways", runs, lines), runs, lines);
        printRow(runs, lines, times);
    }
    constexpr int kAdds = 2000, kPart = 100;
    StudyFile file = taken(StudyFile::create(folder / "adds.bothways"));
    std::vector<double> adds;
    for (int i = 0; i < kAdds; ++i)
        adds.push_back(processor_ms([&] { taken(file.addRun(runAt(i))); }));
    const double first = median({adds.begin(), adds.begin() + kPart});
    const double last = median({adds.end() - kPart, adds.end()});
    fmt::print("{} adds: the first {} take {:.3f} ms each, the last {:.3f} ms, {:.2f} times\n",
               kAdds, kPart, first, last, last / first);
    return 0;
}
