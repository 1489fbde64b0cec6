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
#include <thread>

// What a recording does to an answer when it is damaged, resets its counter, or is asked to stop.

namespace bothways::tests {
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

/// That `child` has `file` open; false where it ended before.
bool seenReading(pid_t child, const std::string& file)
{
    const std::string open_files = fmt::format("/proc/{}/fd", child);
    siginfo_t ended{};
    while (waitid(P_PID, static_cast<id_t>(child), &ended, WEXITED | WNOHANG | WNOWAIT) == 0 &&
           ended.si_pid == 0) {
        std::error_code gone; // files come and go while they are looked at
        for (auto at = std::filesystem::directory_iterator(open_files, gone);
             !gone && at != std::filesystem::directory_iterator(); at.increment(gone))
            if (std::filesystem::read_symlink(at->path(), gone) == file)
                return true;
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
    }
    return false;
}

/// The exit code of the program when it gets `signal` while it reads `file`, later by `after_ms`.
int signalledWhileReading(const std::string& file, const std::vector<std::string>& words,
                          int signal, int after_ms)
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
    EXPECT_TRUE(seenReading(child, file));
    std::this_thread::sleep_for(std::chrono::milliseconds(after_ms));
    kill(child, signal);
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

TEST_F(CliDamage, CtrlCEndsAnImportBeforeItsEndAndChangesNothing)
{
    const std::string recording = std::filesystem::canonical(m_folder.path()) / "long.csv";
    writeLongRecording(recording);
    const std::string before = bothwaysProgram({"history", study}).out;
    for (const int signal : {SIGINT, SIGTERM})
        for (const int after_ms : {0, 50}) {
            EXPECT_EQ(signalledWhileReading(recording, {"import", study, "--trace", recording},
                                            signal, after_ms),
                      5)
                << "stopped by the user";
            EXPECT_EQ(bothwaysProgram({"history", study}).out, before);
        }
    // The same, when it is read for an answer without a study.
    m_folder.write("long_sheet.csv",
                   "run,configuration,direction,start,duration_s,l_per_100km,trace\n"
                   "1,A,out,2026-05-09T05:40:00,200,8.0,long.csv\n");
    EXPECT_EQ(signalledWhileReading(recording, {"runs", m_folder / "long_sheet.csv"}, SIGINT, 0),
              5);
}

} // namespace
} // namespace bothways::tests
