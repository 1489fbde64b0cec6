// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>
#include <gmock/gmock.h>

#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <filesystem>
#include <functional>
#include <thread>

// What a recording does to an answer when it is damaged, resets its counter, or is asked to stop.

namespace bothways::test {
namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;

/// 200 s at a reading a second; the device runs too fast between 80 and 90 s.
std::string overspeeding()
{
    std::string csv = "time_s,rotor_rpm,output_w\n";
    for (int s = 0; s <= 200; ++s)
        csv += fmt::format("{},{},{}\n", s, 1500 + s % 5 + (s >= 80 && s <= 90 ? 2000 : 0),
                           400 + s % 7);
    return csv;
}

class CliDamage : public ::testing::Test {
protected:
    CliDamage()
    {
        m_folder.write("fast.csv", overspeeding());
        m_folder.write(
            "sheet.csv",
            "run,configuration,direction,start,duration_s,l_per_100km,trace\n"
            "1,A,out,2026-05-09T05:40:00,200,8.0,\n2,A,return,2026-05-09T05:45:00,200,8.1,\n"
            "3,B,out,2026-05-09T06:10:00,200,7.8,fast.csv\n"
            "4,B,return,2026-05-09T06:15:00,200,7.9,\n"
            "5,A,out,2026-05-09T06:40:00,200,8.1,\n6,A,return,2026-05-09T06:45:00,200,8.0,\n");
        for (const auto& words : std::vector<std::vector<std::string>>{
                 {"new", study, "overspeed.rpm=3000", "overspeed.seconds=5"},
                 {"import", study, m_folder / "sheet.csv"}}) {
            const Ran ran = bothwaysProgram(words);
            if (ran.code != 0)
                throw std::runtime_error(ran.err);
        }
    }
    /// Flips a bit in the middle of a chunk of channel `place`.
    void flipABit(int place)
    {
        SQLite::Database database(study, SQLite::OPEN_READWRITE);
        std::string bytes;
        {
            SQLite::Statement row(database, "SELECT bytes FROM chunk WHERE place = ?");
            row.bind(1, place);
            row.executeStep();
            bytes = row.getColumn(0).getString();
        }
        bytes[bytes.size() / 2] = static_cast<char>(bytes[bytes.size() / 2] ^ 16);
        SQLite::Statement row(database, "UPDATE chunk SET bytes = ? WHERE place = ?");
        row.bind(1, bytes.data(), static_cast<int>(bytes.size()));
        row.bind(2, place);
        row.exec();
    }
    TempFolder m_folder;
    std::string study = m_folder / "day.bothways";
};

TEST_F(CliDamage, IsAnErrorOfEveryVerbThatAnswersAndChangesNothing)
{
    EXPECT_THAT(bothwaysProgram({"screen", study}).out, HasSubstr("run 3"));
    for (const auto& [place, channel] : {std::pair{0, "time"}, {1, "rotor_rpm"}, {2, "output_w"}}) {
        const std::string sound = readFile(study);
        flipABit(place);
        const std::string damaged = readFile(study);
        for (const auto& words :
             std::vector<std::vector<std::string>>{{"screen", study},
                                                   {"screen", study, "--apply"},
                                                   {"screen", study, "--json"},
                                                   {"analyse", study},
                                                   {"analyse", study, study, "--json"},
                                                   {"runs", study},
                                                   {"report", study},
                                                   {"export", study},
                                                   {"export", study, "--pairs"}}) {
            const Ran ran = bothwaysProgram(words);
            EXPECT_EQ(ran.code, 4) << words[0] << " " << channel << ran.out;
            EXPECT_THAT(ran.err, AllOf(HasSubstr("the recording fast.csv (run 3) is damaged"),
                                       HasSubstr(fmt::format("channel {}", channel))))
                << words[0];
            EXPECT_EQ(ran.out, "") << words[0];
        }
        EXPECT_EQ(readFile(study), damaged) << "--apply changed something";
        m_folder.write("day.bothways", sound);
    }
    EXPECT_EQ(bothwaysProgram({"screen", study}).code, 0);
}

/// A recording of some 100 MB, that takes seconds to read.
void writeLongRecording(const std::string& file)
{
    std::FILE* stream = std::fopen(file.c_str(), "wb");
    std::fputs("time_s,n,m\n", stream);
    std::string block;
    for (int i = 0; i < 4'000'000; ++i) {
        block += fmt::format("{},{},{}\n", i, (i * 7919LL) % 1'000'003, (i * 104'729LL) % 999'983);
        if (block.size() > 1'000'000) {
            std::fwrite(block.data(), 1, block.size(), stream);
            block.clear();
        }
    }
    std::fwrite(block.data(), 1, block.size(), stream);
    std::fclose(stream);
}

struct Signalled {
    int code = -1;
    double seconds = 0.0; ///< from the signal to the end
};

Signalled runAndSignal(const std::vector<std::string>& words, int signal, int after_ms)
{
    std::vector<std::string> all = words;
    all.insert(all.begin(), BOTHWAYS_PROGRAM);
    std::vector<char*> pointers;
    for (std::string& word : all)
        pointers.push_back(word.data());
    pointers.push_back(nullptr);
    const pid_t child = fork();
    if (child == 0) {
        std::signal(signal, SIG_DFL); // ignored where the tests were started in the background
        if (!std::freopen("/dev/null", "w", stdout) || !std::freopen("/dev/null", "w", stderr))
            _exit(126);
        execv(BOTHWAYS_PROGRAM, pointers.data());
        _exit(127);
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(after_ms));
    const auto asked = std::chrono::steady_clock::now();
    kill(child, signal);
    int status = 0;
    waitpid(child, &status, 0);
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - asked;
    return {WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status), took.count()};
}

/// Asked to end ever earlier, until it was not done before: machines and builds differ. `fresh`
/// makes what a run that was done has changed.
Signalled endedBeforeItsEnd(const std::vector<std::string>& words, int signal,
                            const std::function<void()>& fresh)
{
    Signalled ended{};
    for (const int after_ms : {300, 150, 80, 40}) {
        fresh();
        ended = runAndSignal(words, signal, after_ms);
        if (ended.code != 0)
            break;
    }
    return ended;
}

TEST_F(CliDamage, CtrlCEndsAnImportSoonAndChangesNothing)
{
    const std::string recording = m_folder / "long.csv";
    writeLongRecording(recording);
    const std::string before = bothwaysProgram({"history", study}).out;
    const std::string kept = m_folder / "kept.bothways";
    std::filesystem::copy_file(study, kept);
    for (const int signal : {SIGINT, SIGTERM}) {
        const Signalled ended =
            endedBeforeItsEnd({"import", study, "--trace", recording}, signal, [&] {
                std::filesystem::copy_file(kept, study,
                                           std::filesystem::copy_options::overwrite_existing);
            });
        EXPECT_EQ(ended.code, 5) << "stopped by the user";
        EXPECT_LT(ended.seconds, 3.0) << "a second, and some for a busy machine";
        EXPECT_EQ(bothwaysProgram({"history", study}).out, before);
    }
    // The same, when it is read for an answer without a study.
    m_folder.write("long_sheet.csv",
                   "run,configuration,direction,start,duration_s,l_per_100km,trace\n"
                   "1,A,out,2026-05-09T05:40:00,200,8.0,long.csv\n");
    const Signalled ended = endedBeforeItsEnd({"runs", m_folder / "long_sheet.csv"}, SIGINT, [] {});
    EXPECT_EQ(ended.code, 5);
    EXPECT_LT(ended.seconds, 3.0);
}

} // namespace
} // namespace bothways::test
