// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/file_bytes.h"

#include "core/base/number_text.h"

#include <array>
#include <cerrno>
#include <string_view>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

namespace bothways::storage {
namespace {

core::Error unreadable(const std::string& name, core::Message why)
{
    return {core::ErrorCode::badInput, std::move(why), name};
}

core::Message cannotBeRead(int problem)
{
    return core::message("cannot be read: {}"_t, core::systemProblem(problem));
}

/// What is said of a thing that is no ordinary file; empty for one that is.
core::Message wrongKind(mode_t mode, core::Text<0> expected)
{
    if (S_ISREG(mode))
        return {};
    if (S_ISDIR(mode))
        return core::message("is a directory; expected {}"_t, expected);
    if (S_ISFIFO(mode))
        return core::message("is a pipe; expected {}"_t, expected);
    if (S_ISSOCK(mode))
        return core::message("is a socket; expected {}"_t, expected);
    return core::message("is a device; expected {}"_t, expected);
}

/// Opened without waiting, whatever it is: what was handed to us, else what has that name.
FileHandle openWithoutWaiting(const std::filesystem::path& file, Streams streams)
{
    if (streams == Streams::taken) {
        if (file == kStandardInputWord)
            return FileHandle(::fcntl(STDIN_FILENO, F_DUPFD_CLOEXEC, 3));
        if (const auto handed = handedFile(file))
            return FileHandle(::fcntl(*handed, F_DUPFD_CLOEXEC, 3));
    }
    return FileHandle(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY));
}

/// How many bytes came; 0 at the end, -1 with errno. Of a stream it waits for some.
ssize_t readSome(int file, char* buffer, std::size_t size)
{
    for (;;) {
        const ssize_t count = ::read(file, buffer, size);
        if (count >= 0 || (errno != EAGAIN && errno != EINTR))
            return count;
        if (errno == EAGAIN) {
            pollfd waiting{file, POLLIN, 0};
            ::poll(&waiting, 1, -1);
        }
    }
}

} // namespace

FileHandle::~FileHandle()
{
    if (m_file >= 0)
        ::close(m_file);
}

FileHandle& FileHandle::operator=(FileHandle&& other) noexcept
{
    std::swap(m_file, other.m_file);
    return *this;
}

std::optional<int> handedFile(const std::filesystem::path& file)
{
    constexpr std::array<std::pair<std::string_view, int>, 3> kNamed{
        {{"/dev/stdin", 0}, {"/dev/stdout", 1}, {"/dev/stderr", 2}}};
    const std::string name = file.lexically_normal().string();
    for (const auto& [known, number] : kNamed)
        if (name == known)
            return number;
    for (const std::string_view folder : {"/dev/fd/", "/proc/self/fd/"}) {
        if (!name.starts_with(folder))
            continue;
        const auto number = core::wholeNumber<int>(name.substr(folder.size()));
        if (number && *number >= 0)
            return number;
    }
    return std::nullopt;
}

core::Outcome checkOrdinary(const std::filesystem::path& file, core::Text<0> expected)
{
    struct stat found {};
    if (::stat(file.c_str(), &found) != 0)
        return core::Done{};
    if (core::Message wrong = wrongKind(found.st_mode, expected); !wrong.empty())
        return unreadable(file.string(), std::move(wrong));
    return core::Done{};
}

core::Result<std::string> readWholeFile(const std::filesystem::path& file, std::uintmax_t most,
                                        core::Text<0> expected, Streams streams)
{
    const bool standard = streams == Streams::taken && file == kStandardInputWord;
    const std::string name = standard ? kStandardInput : file.string();
    const FileHandle opened = openWithoutWaiting(file, streams);
    if (!opened && errno == ENOENT)
        return unreadable(name, core::message("there is no such file; expected {}"_t, expected));
    struct stat found {};
    if (!opened || ::fstat(opened.get(), &found) != 0)
        return unreadable(name, errno == ENXIO
                                    ? core::message("is a socket; expected {}"_t, expected)
                                    : cannotBeRead(errno));
    if (streams == Streams::refused || S_ISDIR(found.st_mode) || S_ISBLK(found.st_mode))
        if (core::Message wrong = wrongKind(found.st_mode, expected); !wrong.empty())
            return unreadable(name, std::move(wrong));
    if (S_ISFIFO(found.st_mode)) { // opened before its writer was there, perhaps
        pollfd waiting{opened.get(), POLLIN, 0};
        while (::poll(&waiting, 1, -1) < 0 && errno == EINTR) {
        }
    }
    std::string bytes;
    std::array<char, 1 << 16> buffer{};
    for (;;) {
        const ssize_t count = readSome(opened.get(), buffer.data(), buffer.size());
        if (count < 0)
            return unreadable(name, cannotBeRead(errno));
        if (count == 0)
            return bytes;
        if (bytes.size() + static_cast<std::size_t>(count) > most)
            return unreadable(
                name, core::message("is larger than {} MB; expected {}"_t, most >> 20, expected));
        bytes.append(buffer.data(), static_cast<std::size_t>(count));
    }
}

std::string headOf(const std::filesystem::path& file, std::size_t count)
{
    const FileHandle opened = openWithoutWaiting(file, Streams::refused);
    struct stat found {};
    std::string head(count, '\0');
    std::size_t got = 0;
    if (opened && ::fstat(opened.get(), &found) == 0 && S_ISREG(found.st_mode)) {
        while (got < count) {
            const ssize_t more = readSome(opened.get(), head.data() + got, count - got);
            if (more <= 0)
                break;
            got += static_cast<std::size_t>(more);
        }
    }
    head.resize(got);
    return head;
}

} // namespace bothways::storage
