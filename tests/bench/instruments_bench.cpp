// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Instruments as fast as they come: 8 channels at 1 kHz through a pseudo-terminal and TCP at once,
// and as fast as a pipe gives them. Prints each figure beside its goal.
//   instruments_bench [SECONDS]

#include "storage/instruments/rig_reader.h"

#include <fmt/format.h>

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <thread>
#include <vector>

#include <arpa/inet.h>
#include <fcntl.h>
#include <netinet/in.h>
#include <pty.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <termios.h>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;
using namespace bothways::storage;
using Clock = std::chrono::steady_clock;

constexpr int kChannels = 8;

double seconds(Clock::time_point from)
{
    return std::chrono::duration<double>(Clock::now() - from).count();
}

double cpu_s()
{
    rusage use{};
    ::getrusage(RUSAGE_SELF, &use);
    const auto of = [](const timeval& t) {
        return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_usec) * 1e-6;
    };
    return of(use.ru_utime) + of(use.ru_stime);
}

double peak_mb()
{
    rusage use{};
    ::getrusage(RUSAGE_SELF, &use);
    return static_cast<double>(use.ru_maxrss) / 1024.0;
}

std::string line(long number)
{
    std::string text = fmt::format("{}", number);
    for (int i = 1; i < kChannels; ++i)
        text += fmt::format(",{:.1f}", 2950.0 + static_cast<double>((number * i) % 97) / 10.0);
    return text + "\n";
}

bool writeAll(int file, std::string_view bytes)
{
    while (!bytes.empty()) {
        const ssize_t sent = ::write(file, bytes.data(), bytes.size());
        if (sent <= 0)
            return false;
        bytes.remove_prefix(static_cast<std::size_t>(sent));
    }
    return true;
}

Instrument linesFrom(const std::string& name, const std::string& address)
{
    Instrument instrument;
    instrument.name = name;
    instrument.address = address;
    return instrument;
}

/// The board, in a process of its own so that its work is not counted: a line each millisecond.
pid_t board(int file, long lines)
{
    const pid_t process = ::fork();
    if (process != 0)
        return process;
    std::this_thread::sleep_for(std::chrono::milliseconds(500)); // until the port is open
    writeAll(file, "x\n");
    const auto begin = Clock::now();
    for (long i = 0; i < lines; ++i) {
        std::this_thread::sleep_until(begin + std::chrono::milliseconds(i));
        writeAll(file, line(i));
    }
    ::pause();
    std::_Exit(0);
}

int listenOnLoopback(int& port)
{
    const int listener = ::socket(AF_INET, SOCK_STREAM, 0);
    sockaddr_in here{};
    here.sin_family = AF_INET;
    here.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    ::bind(listener, reinterpret_cast<sockaddr*>(&here), sizeof here);
    ::listen(listener, 1);
    socklen_t size = sizeof here;
    ::getsockname(listener, reinterpret_cast<sockaddr*>(&here), &size);
    port = ntohs(here.sin_port);
    return listener;
}

void twoBoards(long lines)
{
    int master = -1, slave = -1, port = 0;
    char name[100] = "";
    ::openpty(&master, &slave, name, nullptr, nullptr);
    termios raw{};
    ::tcgetattr(slave, &raw);
    ::cfmakeraw(&raw);
    ::tcsetattr(slave, TCSANOW, &raw);
    ::close(slave);
    const int listener = listenOnLoopback(port);
    Rig rig{"bench", {}};
    rig.instruments.push_back(linesFrom("pty", fmt::format("serial:{},115200", name)));
    rig.instruments.push_back(linesFrom("tcp", fmt::format("tcp:127.0.0.1:{}", port)));
    const pid_t serial = board(master, lines);
    auto reader = RigReader::start(rig);
    const int caller = ::accept(listener, nullptr, nullptr);
    const pid_t net = board(caller, lines);

    const auto begin = Clock::now();
    const double before_s = cpu_s();
    const long expected = 2 * lines * kChannels;
    std::vector<Reading> readings;
    long got = 0;
    while (got < expected && seconds(begin) < 5.0 + static_cast<double>(lines) / 500.0) {
        std::this_thread::sleep_for(std::chrono::milliseconds(50));
        readings.clear();
        reader.value().take(readings);
        got += static_cast<long>(readings.size());
    }
    const double took_s = seconds(begin), share_pct = 100.0 * (cpu_s() - before_s) / took_s;
    fmt::print("{} channels at 1 kHz through pty and TCP, {:.1f} s: {} of {} readings lost (goal "
               "0), {:.1f} % of a core (goal 5), peak {:.1f} MB (goal 20)\n",
               kChannels, took_s, expected - got, expected, share_pct, peak_mb());
    for (const pid_t process : {serial, net}) {
        ::kill(process, SIGKILL);
        ::waitpid(process, nullptr, 0);
    }
}

void pipe(long lines)
{
    const std::string path =
        (fs::temp_directory_path() / fmt::format("bothways_bench_{}", ::getpid())).string();
    ::mkfifo(path.c_str(), 0600);
    std::string block;
    for (long i = 0; i < 1000; ++i)
        block += line(i);
    const pid_t writer = ::fork();
    if (writer == 0) {
        const int file = ::open(path.c_str(), O_WRONLY);
        for (long i = 0; i < lines / 1000; ++i)
            writeAll(file, block);
        ::_exit(0);
    }
    auto reader = RigReader::start({"bench", {linesFrom("pipe", "file:" + path)}});
    std::vector<Reading> readings;
    const long expected = lines * kChannels;
    long got = 0;
    auto begin = Clock::now();
    const double before_s = cpu_s();
    while (got < expected && seconds(begin) < 60.0) {
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
        readings.clear();
        reader.value().take(readings);
        if (got == 0)
            begin = Clock::now();
        got += static_cast<long>(readings.size());
    }
    const double took_s = seconds(begin);
    fmt::print("from a pipe: {} of {} readings lost (goal 0), {:.0f} readings/s (goal 300000), "
               "{:.2f} µs of processor each, peak {:.1f} MB\n",
               expected - got, expected, static_cast<double>(got) / took_s,
               1e6 * (cpu_s() - before_s) / static_cast<double>(got), peak_mb());
    ::waitpid(writer, nullptr, 0);
    fs::remove(path);
}

} // namespace

int main(int argc, char** argv)
{
    const long run_s = argc > 1 ? std::atol(argv[1]) : 20;
    twoBoards(run_s * 1000);
    pipe(1'000'000);
}
