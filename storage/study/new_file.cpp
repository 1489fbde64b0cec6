// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/new_file.h"

#include <fmt/format.h>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>

namespace bothways::storage {
namespace {

namespace fs = std::filesystem;
using core::Done;
using core::Outcome;

constexpr mode_t kForEveryone = 0666; // as the umask permits

class Descriptor {
public:
    explicit Descriptor(int number) : m_number(number) {}
    ~Descriptor()
    {
        if (m_number >= 0)
            ::close(m_number);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    explicit operator bool() const { return m_number >= 0; }
    [[nodiscard]] int number() const { return m_number; }

private:
    int m_number;
};

core::Error notMade(const fs::path& file, int problem)
{
    core::Message message =
        problem == EEXIST ? core::Message("exists already; expected a name that is free"_t)
        : problem == ENOSPC || problem == EDQUOT || problem == EFBIG
            ? core::Message("cannot be made: the disk is full"_t)
            : core::message("cannot be made: {}"_t, core::systemProblem(problem));
    return {core::ErrorCode::studyFile, std::move(message), file.string()};
}

/// 0, or what went wrong.
int written(int descriptor, std::string_view bytes)
{
    while (!bytes.empty()) {
        const ssize_t count = ::write(descriptor, bytes.data(), bytes.size());
        if (count < 0 && errno != EINTR)
            return errno;
        if (count > 0)
            bytes.remove_prefix(static_cast<std::size_t>(count));
    }
    return ::fsync(descriptor) == 0 ? 0 : errno;
}

/// The name is on disk too. Where a folder cannot be synced, it is nobody's fault.
void syncFolder(const fs::path& folder)
{
    const Descriptor directory(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (directory)
        ::fsync(directory.number());
}

/// For a file system that has no files without a name. Removes what it made itself, if it has to.
int madeByName(const fs::path& file, std::string_view bytes)
{
    const Descriptor made(
        ::open(file.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, kForEveryone));
    if (!made)
        return errno;
    const int problem = written(made.number(), bytes);
    if (problem != 0)
        ::unlink(file.c_str());
    return problem;
}

} // namespace

Outcome makeNewFile(const fs::path& file, std::string_view bytes)
{
    const fs::path folder = fs::absolute(file).parent_path();
    int problem = 0;
    {
        const Descriptor nameless(
            ::open(folder.c_str(), O_TMPFILE | O_RDWR | O_CLOEXEC, kForEveryone));
        problem = nameless ? written(nameless.number(), bytes) : errno;
        if (nameless && problem == 0 &&
            ::linkat(AT_FDCWD, fmt::format("/proc/self/fd/{}", nameless.number()).c_str(), AT_FDCWD,
                     file.c_str(), AT_SYMLINK_FOLLOW) != 0)
            problem = errno;
    }
    if (problem == EOPNOTSUPP || problem == EISDIR || problem == ENOENT || problem == EINVAL ||
        problem == EPERM)
        problem = madeByName(file, bytes);
    if (problem != 0)
        return notMade(file, problem);
    syncFolder(folder);
    return Done{};
}

} // namespace bothways::storage
