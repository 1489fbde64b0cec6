// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/hold.h"

#include <fmt/format.h>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <optional>
#include <regex>
#include <thread>

namespace bothways::storage {
namespace {

namespace fs = std::filesystem;

/// A folder of the user's own that ends with the session; else one below the temporary folder.
std::optional<fs::path> noteFolder()
{
    struct stat status {};
    const auto isOurs = [&status](const fs::path& folder) {
        return ::lstat(folder.c_str(), &status) == 0 && S_ISDIR(status.st_mode) &&
               status.st_uid == ::geteuid() && (status.st_mode & 022U) == 0;
    };
    if (const char* runtime = std::getenv("XDG_RUNTIME_DIR"); runtime && isOurs(runtime))
        return fs::path(runtime);
    std::error_code problem;
    const fs::path folder =
        fs::temp_directory_path(problem) / fmt::format("bothways-{}", ::geteuid());
    if (problem)
        return std::nullopt;
    ::mkdir(folder.c_str(), 0700);
    if (!isOurs(folder))
        return std::nullopt;
    return folder;
}

std::string readNote(int descriptor)
{
    std::array<char, 400> text{};
    const ssize_t count = ::pread(descriptor, text.data(), text.size(), 0);
    return std::string(text.data(), count > 0 ? static_cast<std::size_t>(count) : 0);
}

void writeNote(int descriptor, const std::string& since)
{
    const std::string note = fmt::format("{} (process {}, since {})",
                                         ::program_invocation_short_name, ::getpid(), since);
    if (::ftruncate(descriptor, 0) != 0 || ::pwrite(descriptor, note.data(), note.size(), 0) < 0) {
        // The lock stands all the same; the holder will only not be named.
    }
}

/// Who wrote a note: what writeNote() writes, taken apart.
core::Message holderIn(const std::string& note)
{
    if (note.empty())
        return "another program"_t;
    static const std::regex form(R"((.+) \(process (\d+), since (\S+)\))");
    std::smatch parts;
    if (!std::regex_match(note, parts, form))
        return core::Message::verbatim(note);
    return core::message("{} (process {}, since {})"_t, parts[1].str(), parts[2].str(),
                         parts[3].str());
}

/// True when `descriptor` is still what lies under the name (its last holder may have removed it).
bool isStillThere(int descriptor, const fs::path& note)
{
    struct stat ours {};
    struct stat there {};
    return ::fstat(descriptor, &ours) == 0 && ::stat(note.c_str(), &there) == 0 &&
           ours.st_dev == there.st_dev && ours.st_ino == there.st_ino;
}

} // namespace

Hold::Hold(int descriptor, fs::path note) : m_descriptor(descriptor), m_note(std::move(note)) {}

Hold::~Hold()
{
    ::unlink(m_note.c_str());
    ::close(m_descriptor);
}

core::Result<std::shared_ptr<Hold>> Hold::take(const fs::path& file, const std::string& since)
{
    constexpr int kTries = 10;
    constexpr auto kPause = std::chrono::milliseconds(50);
    const std::shared_ptr<Hold> none;
    struct stat status {};
    const auto folder = noteFolder();
    if (!folder || ::stat(file.c_str(), &status) != 0)
        return none;
    const fs::path note =
        *folder / fmt::format("bothways-{}-{}.lock", status.st_dev, status.st_ino);

    std::string holder;
    for (int i = 0; i < kTries; ++i) {
        const int descriptor =
            ::open(note.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600);
        if (descriptor < 0)
            return none;
        if (::flock(descriptor, LOCK_EX | LOCK_NB) == 0) {
            if (isStillThere(descriptor, note)) {
                writeNote(descriptor, since);
                return std::shared_ptr<Hold>(new Hold(descriptor, note));
            }
            ::close(descriptor);
            continue;
        }
        const bool held = errno == EWOULDBLOCK;
        holder = readNote(descriptor);
        ::close(descriptor);
        if (!held)
            return none; // a file system without such locks
        std::this_thread::sleep_for(kPause);
    }
    return core::Error{
        core::ErrorCode::studyFile,
        core::message("is being written by {}; close it there, or open it for reading"_t,
                      holderIn(holder)),
        file.string()};
}

} // namespace bothways::storage
