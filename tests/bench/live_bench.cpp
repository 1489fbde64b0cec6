// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/live/live_session.h"
#include "core/study/clock.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"
#include "tests/storage/study/study_builders.h"

#include <arpa/inet.h>
#include <fcntl.h>
#include <fmt/core.h>
#include <netinet/in.h>
#include <pty.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <termios.h>
#include <unistd.h>

#include <atomic>
#include <chrono>
#include <cmath>
#include <csignal>
#include <cstring>
#include <fstream>
#include <string>
#include <thread>

// What recording while it is driven costs, each figure beside its goal:
//   live_bench            pipe, ports, alarm
//   live_bench ports      8 channels at 1 kHz through a pseudo-terminal and TCP, by `bothways
//   record` live_bench pipe       as fast as it can from a pipe live_bench alarm      from a sample
//   to its alarm live_bench hours      twelve hours of 8 channels at 10 Hz, replayed at 100 times
//   the speed (7 min)
using namespace bothways;
using Clock = std::chrono::steady_clock;

namespace {

double since(Clock::time_point begin)
{
    return std::chrono::duration<double>(Clock::now() - begin).count();
}

std::unique_ptr<app::LiveSession> sessionOn(storage::StudyFile& study, const storage::Rig& rig)
{
    return tests::taken(app::LiveSession::start(tests::taken(study.another()), rig,
                                                {1'778'305'200'000'000, std::nullopt}, "bench"));
}

storage::Rig rigOf(const std::string& text)
{
    storage::Rig rig;
    rig.name = "bench";
    rig.instruments.push_back(tests::taken(storage::instrumentFromText(text)));
    rig.instruments.back().name = "board";
    return rig;
}

std::string lineOf(long i)
{
    return fmt::format("{},{},{:.2f},{:.1f},{},{:.3f},{:.1f},{}\n", 2600 + i % 13, 2590 + i % 11,
                       90.0 + static_cast<double>(i % 17) * 0.01,
                       612.5 + static_cast<double>(i % 5), 900 + i % 3,
                       7.6 + static_cast<double>(i % 7) * 0.001,
                       14.0 + static_cast<double>(i % 2) * 0.1, 230 + i % 2);
}

void pipeBench()
{
    tests::TemporaryFolder folder;
    const std::string fifo = (folder / "board").string();
    if (mkfifo(fifo.c_str(), 0600) != 0)
        return;
    storage::StudyFile study = tests::taken(storage::StudyFile::create(folder / "day.bothways"));
    constexpr long kLines = 400'000;
    constexpr std::int64_t kSamples = kLines * 8;
    std::thread writer([&] {
        const int file = open(fifo.c_str(), O_WRONLY);
        std::string text = "a,b,c,d,e,f,g,h\n";
        for (long i = 0; i < kLines; ++i) {
            text += lineOf(i);
            if (text.size() > 60'000 || i + 1 == kLines) {
                std::string_view rest = text;
                while (!rest.empty()) {
                    const ssize_t wrote = write(file, rest.data(), rest.size());
                    if (wrote <= 0)
                        break;
                    rest.remove_prefix(static_cast<std::size_t>(wrote));
                }
                text.clear();
            }
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(200));
        close(file);
    });
    const auto begin = Clock::now();
    const auto session = sessionOn(study, rigOf("lines:file:" + fifo));
    while (session->snapshot().samples < kSamples && since(begin) < 40.0)
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    const app::LiveSnapshot last = session->snapshot();
    static_cast<void>(session->stop());
    const double took = since(begin);
    writer.join();
    for (const storage::InstrumentState& state : last.instruments)
        if (state.readings != kSamples)
            fmt::print("       {} lines, {} readings, {} lost bytes, {} unreadable lines, "
                       "{} reconnects\n",
                       state.lines, state.readings, state.lost_bytes, state.garbage_lines,
                       state.reconnects);
    const auto list = tests::taken(storage::recordings(study));
    fmt::print("pipe   {:>10.0f} samples/s into the file (goal 300000), {} of {} there\n",
               static_cast<double>(kSamples) / took, list.empty() ? 0 : list[0].samples, kSamples);
}

/// Lines of four channels at 1 kHz for `seconds`.
void feed(int file, double seconds, std::atomic<std::int64_t>& sent)
{
    const auto begin = Clock::now();
    for (long i = 0; since(begin) < seconds; ++i) {
        const std::string line = fmt::format("{},{},{:.2f},{:.1f}\n", 2600 + i % 13, 2590 + i % 11,
                                             90.0 + static_cast<double>(i % 17) * 0.01,
                                             612.5 + static_cast<double>(i % 5));
        if (write(file, line.data(), line.size()) < 0)
            break;
        sent += 4;
        std::this_thread::sleep_until(begin + std::chrono::microseconds((i + 1) * 1000));
    }
}

// Long: one story, from the ports to the line that is printed.
void portsBench()
{
    constexpr double kSeconds = 20.0;
    tests::TemporaryFolder folder;
    const std::string file = (folder / "day.bothways").string();
    static_cast<void>(tests::taken(storage::StudyFile::create(file)));
    int master = -1, slave = -1;
    char name[256] = {};
    termios raw{};
    cfmakeraw(&raw);
    if (openpty(&master, &slave, name, &raw, nullptr) != 0)
        return;
    close(slave); // a port that somebody holds is not read
    const int listener = socket(AF_INET, SOCK_STREAM, 0);
    sockaddr_in place{};
    place.sin_family = AF_INET;
    place.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t length = sizeof place;
    if (bind(listener, reinterpret_cast<sockaddr*>(&place), sizeof place) != 0 ||
        listen(listener, 1) != 0 ||
        getsockname(listener, reinterpret_cast<sockaddr*>(&place), &length) != 0)
        return;
    const std::string serial = fmt::format("lines:serial:{},115200", name);
    const std::string tcp = fmt::format("lines:tcp:127.0.0.1:{}", ntohs(place.sin_port));
    const pid_t child = fork();
    if (child == 0) {
        const int nothing = open("/dev/null", O_RDWR);
        dup2(nothing, STDIN_FILENO);
        dup2(nothing, STDOUT_FILENO);
        dup2(nothing, STDERR_FILENO);
        execl(BOTHWAYS_PROGRAM, "bothways", "record", file.c_str(), "--from", serial.c_str(),
              "--from", tcp.c_str(), static_cast<char*>(nullptr));
        _exit(127);
    }
    const int connection = accept(listener, nullptr, nullptr);
    std::this_thread::sleep_for(std::chrono::milliseconds(500));
    std::atomic<std::int64_t> sent = 0;
    std::thread one([&] { feed(master, kSeconds, sent); });
    std::thread two([&] { feed(connection, kSeconds, sent); });
    one.join();
    two.join();
    std::this_thread::sleep_for(std::chrono::seconds(1));
    kill(child, SIGTERM);
    int status = 0;
    rusage used{};
    wait4(child, &status, 0, &used);
    const auto study = tests::taken(storage::StudyFile::open(file, true));
    const auto list = tests::taken(storage::recordings(study));
    const double cpu = static_cast<double>(used.ru_utime.tv_sec + used.ru_stime.tv_sec) +
                       static_cast<double>(used.ru_utime.tv_usec + used.ru_stime.tv_usec) / 1e6;
    const std::int64_t there = list.empty() ? 0 : list[0].samples;
    fmt::print(
        "ports  {} of {} samples there (a line may be cut when it connects; goal: none lost), "
        "{:.1f} % of a core (goal 5), {:.0f} MB (goal 20)\n",
        there, sent.load(), 100.0 * cpu / kSeconds, static_cast<double>(used.ru_maxrss) / 1024.0);
    close(master);
    close(connection);
    close(listener);
}

// Long: one story, from the board to the line that is printed.
void alarmBench()
{
    tests::TemporaryFolder folder;
    const std::string fifo = (folder / "board").string();
    if (mkfifo(fifo.c_str(), 0600) != 0)
        return;
    core::StudyProperties properties;
    properties.limits["overspeed.rpm"] = 3200;
    storage::StudyFile study =
        tests::taken(storage::StudyFile::create(folder / "day.bothways", properties));
    std::atomic<bool> over = false, done = false;
    std::thread writer([&] {
        const int file = open(fifo.c_str(), O_WRONLY);
        const auto begin = Clock::now();
        std::string header = "rotor_rpm,output_w\n";
        if (write(file, header.data(), header.size()) < 0)
            return;
        for (long i = 0; !done; ++i) {
            const std::string line =
                fmt::format("{},{}\n", (over ? 3400 : 2600) + i % 7, 600 + i % 5);
            if (write(file, line.data(), line.size()) < 0)
                break;
            std::this_thread::sleep_until(begin + std::chrono::microseconds((i + 1) * 1000));
        }
        close(file);
    });
    const auto session = sessionOn(study, rigOf("lines:file:" + fifo));
    std::this_thread::sleep_for(std::chrono::seconds(1));
    core::RunUnderWay run;
    run.run.number = 1;
    run.run.configuration = "on";
    run.run.direction = "out";
    run.start_s = session->clock_s();
    session->begin(run);
    double worst = 0.0;
    for (int round = 0; round < 5; ++round) {
        std::this_thread::sleep_for(std::chrono::milliseconds(6700 + 130 * round));
        const std::size_t before = session->snapshot().alarms.size();
        const auto begin = Clock::now();
        over = true;
        const auto said = [&] {
            for (const core::Alarm& alarm : session->snapshot().alarms)
                if (alarm.finding.rule == core::Rule::overspeed &&
                    alarm.kind == core::Alarm::Kind::finding)
                    return true;
            return false;
        };
        while (!said() && since(begin) < 10.0)
            std::this_thread::sleep_for(std::chrono::milliseconds(5));
        worst = std::max(worst, since(begin));
        static_cast<void>(before);
        over = false;
        session->forget();
        std::this_thread::sleep_for(std::chrono::milliseconds(300));
        run.start_s = session->clock_s();
        session->begin(run);
    }
    done = true;
    writer.join();
    static_cast<void>(session->stop());
    fmt::print(
        "alarm  {:.2f} s at worst from the first sample over the limit at 1 kHz to the alarm "
        "(goal 1.2 from when the finding stands)\n",
        worst);
}

std::int64_t residentKiB()
{
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmRSS:"))
            return std::stoll(line.substr(6));
    return 0;
}

void hoursBench()
{
    tests::TemporaryFolder folder;
    const std::string csv = (folder / "day.csv").string();
    {
        std::ofstream file(csv);
        file << "time_s,a,b,c,d,e,f,g,h\n";
        for (long i = 0; i < 12L * 36'000; ++i)
            file << fmt::format("{:.1f},", static_cast<double>(i) / 10.0) << lineOf(i);
    }
    storage::StudyFile study = tests::taken(storage::StudyFile::create(folder / "day.bothways"));
    const auto session = sessionOn(study, rigOf("replay:" + csv + ",x100"));
    const auto begin = Clock::now();
    std::int64_t early = 0, most = 0;
    double worst = 0.0;
    const auto csvBytes = static_cast<double>(std::filesystem::file_size(csv));
    while (!session->snapshot().finished && since(begin) < 900.0) {
        std::this_thread::sleep_for(std::chrono::seconds(1));
        const std::int64_t now = residentKiB();
        if (since(begin) < 40.0)
            early = std::max(early, now);
        most = std::max(most, now);
        const app::LiveSnapshot shown = session->snapshot();
        if (shown.now_s > 3600.0)
            worst = std::max(worst, static_cast<double>(shown.bytes) /
                                        (csvBytes * shown.now_s / 43'200.0));
    }
    static_cast<void>(session->stop());
    const auto list = tests::taken(storage::recordings(study));
    fmt::print(
        "hours  {} samples; memory {:.0f} MB after the first hour, {:.0f} MB at most; chunks "
        "{:.3f} of the CSV at the end (goal 0.20), {:.3f} at most before (goal 0.30)\n",
        list.empty() ? 0 : list[0].samples, static_cast<double>(early) / 1024.0,
        static_cast<double>(most) / 1024.0,
        list.empty() ? 0.0 : static_cast<double>(list[0].bytes) / csvBytes, worst);
}

} // namespace

int main(int argc, char** argv)
{
    const std::string which = argc > 1 ? argv[1] : "";
    std::signal(SIGPIPE, SIG_IGN);
    if (which.empty() || which == "pipe")
        pipeBench();
    if (which.empty() || which == "ports")
        portsBench();
    if (which.empty() || which == "alarm")
        alarmBench();
    if (which == "hours")
        hoursBench();
    return 0;
}
