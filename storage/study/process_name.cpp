// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/process_name.h"

#include "core/base/number_text.h"
#include "storage/study/study_database.h"

#include <fmt/format.h>

#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>
#include <string>

namespace bothways::storage {
namespace {

namespace fs = std::filesystem;

std::string contentOfSmall(const fs::path& file)
{
    std::ifstream stream(file);
    return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

/// Seconds from 1970 on; 0 where the system does not say.
long long startOf(pid_t process)
{
    const std::string whole = contentOfSmall(fmt::format("/proc/{}/stat", process));
    // The name in parentheses may hold anything; the 20th word after it is the start in ticks.
    const std::size_t end = whole.rfind(')');
    std::istringstream words(end == std::string::npos ? "" : whole.substr(end + 1));
    std::string word;
    for (int i = 0; i < 20; ++i)
        words >> word;
    const auto ticks = core::wholeNumber<long long>(word);
    const std::string system = contentOfSmall("/proc/stat");
    const std::size_t boot = system.find("btime ");
    if (!ticks || boot == std::string::npos)
        return 0;
    return std::atoll(system.c_str() + boot + 6) + *ticks / ::sysconf(_SC_CLK_TCK);
}

/// True when a line of fdinfo tells of such a lock on the file.
bool hasLock(const fs::path& fdinfo, const struct stat& file)
{
    const std::string inode = fmt::format(":{} ", file.st_ino);
    std::istringstream lines(contentOfSmall(fdinfo));
    for (std::string line; std::getline(lines, line);)
        if (line.starts_with("lock:") && line.find("OFDLCK") != std::string::npos &&
            line.find(inode) != std::string::npos)
            return true;
    return false;
}

} // namespace

std::optional<core::Message> nameOfProcess(pid_t process)
{
    if (process <= 0)
        return std::nullopt;
    std::string name = contentOfSmall(fmt::format("/proc/{}/comm", process));
    while (!name.empty() && name.back() == '\n')
        name.pop_back();
    const long long start = startOf(process);
    if (name.empty() || start == 0)
        return std::nullopt;
    return core::message("{} (process {}, since {})"_t, name, process, asUtc(start));
}

std::optional<core::Message> nameOfHolder(int descriptor)
{
    struct stat file {};
    if (::fstat(descriptor, &file) != 0)
        return std::nullopt;
    std::error_code problem;
    for (const auto& process : fs::directory_iterator("/proc", problem)) {
        const auto id = core::wholeNumber<pid_t>(process.path().filename().native());
        if (!id)
            continue;
        std::error_code none;
        for (fs::directory_iterator at(process.path() / "fdinfo", none), last; !none && at != last;
             at.increment(none))
            if (hasLock(at->path(), file))
                return nameOfProcess(*id);
    }
    return std::nullopt;
}

} // namespace bothways::storage
