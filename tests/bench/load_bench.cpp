// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/answer/input.h"
#include "storage/recordings/trace_import.h"
#include "storage/study/study_file.h"
#include "tests/bench/noted_run.h"
#include "tests/storage/study/study_builders.h"

#include <fmt/format.h>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <fstream>
#include <functional>

// Time and peak memory of every verb, and of what the window does beside drawing, on the largest
// study that is reasonable and on a tenth of it: what grows by more than ten is not linear.

using namespace bothways;
namespace fs = std::filesystem;
using storage::StudyFile;
using tests::aRun;
using tests::taken;

namespace {

struct Size {
    int runs, recordings, rows, lines;
};
constexpr Size kWhole{9'700, 500, 20'000, 5000}; // and room for what is added: 10,000 at most
constexpr int kChannels = 10;

struct Cost {
    double wall_s = 0.0, processor_s = 0.0;
    long memory_kb = 0;
    int code = -1;
};

/// `work` in a process of its own.
Cost costOf(const std::function<int()>& work)
{
    std::fflush(stdout);
    const auto begun = std::chrono::steady_clock::now();
    const pid_t child = ::fork();
    if (child == 0)
        _exit(work());
    int state = 0;
    rusage usage{};
    ::wait4(child, &state, 0, &usage);
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begun;
    return {took.count(),
            static_cast<double>(usage.ru_utime.tv_sec + usage.ru_stime.tv_sec) +
                static_cast<double>(usage.ru_utime.tv_usec + usage.ru_stime.tv_usec) / 1e6,
            usage.ru_maxrss, WIFEXITED(state) ? WEXITSTATUS(state) : -1};
}

/// bothways with these arguments; what it says goes nowhere.
int runVerb(const std::string& program, std::vector<std::string> arguments)
{
    std::vector<char*> list = {const_cast<char*>(program.c_str())};
    for (std::string& one : arguments)
        list.push_back(one.data());
    list.push_back(nullptr);
    if (!std::freopen("/dev/null", "w", stdout))
        return 126;
    ::execv(program.c_str(), list.data());
    return 127;
}

core::Run loadRun(int i)
{
    constexpr int kADay = 40;
    const int minute = i / kADay * 24 * 60 + i % kADay * 7;
    auto run = aRun().at_min(minute).consuming(8.0 + 0.01 * (i * 37 % 41));
    if (i / 8 % 2 == 1)
        run.device();
    if (i % 2 == 1)
        run.returning();
    core::Run made = bench::notedRun(run, i);
    made.distance_km = 5.2;
    return made;
}

/// 100 Hz of channels that the rules read.
void writeRecording(const fs::path& file, int rows)
{
    std::ofstream stream(file);
    stream << "time_s,rotor_rpm,output_w,road_speed_kmh,wind_ms,battery_v,coolant_c,a,b,c,d\n";
    for (int i = 0; i < rows; ++i) {
        const int n = i * 7919 % 1009;
        stream << fmt::format("{:.2f},{},{},{:.1f},{:.2f},{:.2f},{:.1f},{},{},{},{}\n", i * 0.01,
                              2500 + n % 37, 580 + n % 23, 88.0 + n % 9 * 0.1, 1.0 + n % 50 * 0.01,
                              12.5 + n % 10 * 0.01, 86.0 + n % 5 * 0.1, n, n * 3 % 997, n * 7 % 991,
                              n * 11 % 983);
    }
}

void makeStudy(const fs::path& file, const fs::path& recording, const Size& size)
{
    StudyFile study = taken(StudyFile::create(file));
    core::Study sheet;
    for (int i = 0; i < size.runs; ++i)
        sheet.runs.push_back(loadRun(i));
    taken(study.importRuns(sheet, "load.csv"));
    const auto id = taken(study.study()).runs.front().id;
    for (int i = 0; 2 * i < size.lines; ++i) {
        taken(study.discard({id}, {"adjusted", "by hand"}));
        taken(study.count({id}));
    }
    for (int i = 0; i < size.recordings; ++i) {
        storage::TraceImportOptions options;
        options.run = 1 + i * (size.runs / size.recordings);
        taken(storage::importTrace(study, recording, options));
    }
}

using Work = std::function<int()>;
struct Action {
    std::string name;
    Work work;
};

/// What the window does: everything but the drawing.
std::vector<Action> windowActions(const fs::path& file)
{
    const auto read = [file] { return taken(app::readInput(file, {})); };
    const auto answered = [](const app::Input& input) { return app::answerTo(input) ? 0 : 1; };
    return {{"window: open", [read] { return read().file ? 0 : 1; }},
            {"window: open, answer", [read, answered] { return answered(read()); }},
            {"window: open, edit 20 runs",
             [file] {
                 StudyFile study = taken(StudyFile::open(file));
                 for (int i = 0; i < 20; ++i) {
                     core::Run run = taken(study.study()).runs.at(static_cast<std::size_t>(i) * 7);
                     run.notes = "edited";
                     taken(study.updateRun(run));
                 }
                 return 0;
             }},
            {"window: open, answer 5 times", [read, answered] {
                 const app::Input input = read();
                 int failed = 0;
                 for (int i = 0; i < 5; ++i)
                     failed += answered(input);
                 return failed;
             }}};
}

std::vector<Action> actions(const std::string& program, const fs::path& file,
                            const fs::path& folder)
{
    const std::string study = file.string();
    const auto verb = [&](const std::string& name, std::vector<std::string> arguments) {
        return Action{name, [program, arguments] { return runVerb(program, arguments); }};
    };
    std::vector<Action> list = {
        verb("analyse", {"analyse", study}),
        verb("analyse --json", {"analyse", study, "--json"}),
        verb("screen", {"screen", study}),
        verb("runs", {"runs", study}),
        verb("report", {"report", study, "--output", folder / "load.html", "--replace"}),
        verb("export", {"export", study}),
        verb("export --json", {"export", study, "--json"}),
        verb("history", {"history", study}),
        verb("add", {"add", study, "configuration=A", "direction=out", "start=2030-01-01 06:00",
                     "l_per_100km=8.4"}),
        verb("edit", {"edit", study, "7", "notes=edited"}),
        verb("undo", {"undo", study}),
        verb("import a sheet of 200 runs", {"import", study, folder / "more.csv"}),
        verb("import a recording", {"import", study, "--trace", folder / "drive.csv"})};
    for (Action& one : windowActions(file))
        list.push_back(std::move(one));
    return list;
}

void writeMore(const fs::path& file)
{
    std::ofstream stream(file);
    stream << "configuration,direction,start,l_per_100km\n";
    for (int i = 0; i < 200; ++i)
        stream << fmt::format("A,{},2031-01-{:02}T06:{:02}:00,8.4\n", i % 2 == 0 ? "out" : "return",
                              1 + i / 8, i % 8 * 7);
}

std::vector<Cost> costsAt(const std::string& program, const fs::path& folder, const Size& size,
                          std::vector<std::string>& names)
{
    const fs::path file = folder / fmt::format("load_{}.bothways", size.runs);
    fs::remove(file);
    std::vector<Cost> costs = {costOf([&] {
        makeStudy(file, folder / "drive.csv", size);
        return 0;
    })};
    names = {"make it: imports, edits"};
    for (const Action& action : actions(program, file, folder)) {
        names.push_back(action.name);
        costs.push_back(costOf(action.work));
    }
    fmt::print("{} runs, {} recordings, {:.1f} M samples, {} lines of history: {:.0f} MB\n",
               size.runs, size.recordings, 1e-6 * size.recordings * size.rows * kChannels,
               size.lines, 1e-6 * static_cast<double>(fs::file_size(file)));
    fs::remove(file);
    return costs;
}

} // namespace

/// load_bench BOTHWAYS FOLDER [SHARE]: SHARE of the whole size, 1 where it is left out. FOLDER
/// needs 2 GB.
int main(int argc, char** argv)
{
    if (argc < 3) {
        fmt::print(stderr, "load_bench BOTHWAYS FOLDER [SHARE]\n");
        return EXIT_FAILURE;
    }
    const fs::path folder = argv[2];
    const double share = argc > 3 ? std::atof(argv[3]) : 1.0;
    const auto sized = [&](double part) {
        const auto of = [&](int whole) { return std::max(1, static_cast<int>(whole * part)); };
        return Size{of(kWhole.runs), of(kWhole.recordings), kWhole.rows, of(kWhole.lines)};
    };
    writeRecording(folder / "drive.csv", kWhole.rows);
    writeMore(folder / "more.csv");
    std::vector<std::string> names;
    const auto tenth = costsAt(argv[1], folder, sized(share / 10), names);
    const auto whole = costsAt(argv[1], folder, sized(share), names);
    fmt::print("| what | a tenth: s | processor | MB | whole: s | processor | MB | times |\n"
               "|---|---|---|---|---|---|---|---|\n");
    for (std::size_t i = 0; i < names.size(); ++i)
        fmt::print("| {} | {:.2f} | {:.2f} | {} | {:.2f} | {:.2f} | {} | {:.1f}{} |\n", names[i],
                   tenth[i].wall_s, tenth[i].processor_s, tenth[i].memory_kb / 1024,
                   whole[i].wall_s, whole[i].processor_s, whole[i].memory_kb / 1024,
                   whole[i].processor_s / tenth[i].processor_s,
                   whole[i].code == 0 ? "" : fmt::format(", exit {}", whole[i].code));
    fs::remove(folder / "drive.csv");
    fs::remove(folder / "more.csv");
    fs::remove(folder / "load.html");
    return EXIT_SUCCESS;
}
