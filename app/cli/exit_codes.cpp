// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/exit_codes.h"

#include <fmt/format.h>

#include <array>
#include <csignal>
#include <exception>
#include <new>
#include <ostream>
#include <string_view>

#include <fcntl.h>
#include <unistd.h>

namespace bothways::cli {
namespace {

struct ExitCode {
    int code;
    core::Text<0> meaning;
};
constexpr std::array<ExitCode, 5> kExitCodes{
    {{0, "done (also with no verdict)"_t},
     {static_cast<int>(ErrorCode::wrongUse), "wrong use"_t},
     {static_cast<int>(ErrorCode::badInput), "the input is bad"_t},
     {static_cast<int>(ErrorCode::studyFile),
      "a file cannot be opened, read or written, or the program cannot go on"_t},
     {static_cast<int>(ErrorCode::stopped), "stopped by the user"_t}}};

constexpr int kCannotGoOn = static_cast<int>(ErrorCode::studyFile);

int cannotGoOn(const Surroundings& io, const core::Message& why)
{
    io.err << io.language.say("bothways: stopped by a fault of its own: {}"_t, why) << std::endl;
    return kCannotGoOn;
}

/// Of a thread, or while another exception is on its way: nothing but the plainest is safe here.
[[noreturn]] void endPlainly()
{
    constexpr std::string_view kWords = "bothways: stopped by a fault of its own\n";
    [[maybe_unused]] const auto said = ::write(STDERR_FILENO, kWords.data(), kWords.size());
    ::_exit(kCannotGoOn);
}

} // namespace

std::string exitCodesText(const Language& in)
{
    std::string text = in.say("Exit codes:"_t) + "\n";
    for (const ExitCode& exit : kExitCodes)
        text += fmt::format("  {}  {}\n", exit.code, in.say(exit.meaning));
    return text;
}

int guarded(const std::function<int()>& program, const Surroundings& io)
{
    try {
        return program();
    } catch (const std::bad_alloc&) {
        return cannotGoOn(io, "there is not enough memory"_t);
    } catch (const std::exception& problem) {
        return cannotGoOn(io, core::Message::verbatim(problem.what()));
    } catch (...) {
        return cannotGoOn(io, "of an unknown kind"_t);
    }
}

void prepareProcess()
{
    std::set_terminate(endPlainly);
    std::signal(SIGPIPE, SIG_IGN);
    std::signal(SIGXFSZ, SIG_IGN);
    // A stream that is closed gets one that can be neither read nor written.
    for (const int stream : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO})
        if (::fcntl(stream, F_GETFD) < 0)
            if (::open("/dev/null", stream == STDIN_FILENO ? O_WRONLY : O_RDONLY) != stream)
                ::_exit(kCannotGoOn);
}

} // namespace bothways::cli
