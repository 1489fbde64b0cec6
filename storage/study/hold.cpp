// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/hold.h"

#include "storage/study/process_name.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <chrono>
#include <map>
#include <mutex>
#include <string_view>
#include <thread>
#include <utility>
#include <vector>

namespace bothways::storage {
namespace {

namespace fs = std::filesystem;
using core::Error;
using core::ErrorCode;

/// Beyond what a file can have: it locks nothing that anybody reads.
constexpr off_t kOurByte = off_t{1} << 62;
// SQLite's (os.h there): a writer has kReservedByte, a reader one or all of kSharedFirst on.
constexpr off_t kReservedByte = 0x40000001, kSharedFirst = 0x40000002, kSharedCount = 510;

/// The files that this process has open, each with its descriptors that wait for being closed.
class OpenFiles {
public:
    using Key = std::pair<dev_t, ino_t>;
    void add(int descriptor)
    {
        const std::lock_guard lock(m_mutex);
        ++m_files[keyOf(descriptor)].users;
    }
    void remove(int descriptor)
    {
        const std::lock_guard lock(m_mutex);
        const auto at = m_files.find(keyOf(descriptor));
        at->second.idle.push_back(descriptor);
        if (--at->second.users > 0)
            return;
        for (const int idle : at->second.idle)
            ::close(idle);
        m_files.erase(at);
    }
    bool has(const Key& key)
    {
        const std::lock_guard lock(m_mutex);
        return m_files.contains(key);
    }

private:
    struct File {
        int users = 0;
        std::vector<int> idle;
    };
    static Key keyOf(int descriptor)
    {
        struct stat status {};
        ::fstat(descriptor, &status);
        return {status.st_dev, status.st_ino};
    }
    std::mutex m_mutex;
    std::map<Key, File> m_files;
};

OpenFiles& openFiles()
{
    static OpenFiles files;
    return files;
}

struct flock lockOn(short type, off_t first, off_t count)
{
    struct flock lock {};
    lock.l_type = type;
    lock.l_whence = SEEK_SET;
    lock.l_start = first;
    lock.l_len = count;
    return lock;
}

Error notAStudy(const fs::path& file, core::Message message)
{
    return {ErrorCode::studyFile, std::move(message), file.string()};
}

/// What can be said of an open file before SQLite looks at it.
std::optional<core::Message> refuseContent(int descriptor)
{
    struct stat status {};
    if (::fstat(descriptor, &status) != 0)
        return core::message("cannot be read: {}; expected a study"_t, core::systemProblem(errno));
    if (S_ISDIR(status.st_mode))
        return "is a directory; expected a study"_t;
    if (!S_ISREG(status.st_mode))
        return "is a pipe or a device; expected a study"_t;
    constexpr std::string_view kHead("SQLite format 3\0", 16);
    std::array<char, kHead.size()> head{};
    const ssize_t count = ::pread(descriptor, head.data(), head.size(), 0);
    if (count == 0)
        return "is empty; expected a study"_t;
    if (count < 0)
        return core::message("cannot be read: {}; expected a study"_t, core::systemProblem(errno));
    if (std::string_view(head.data(), static_cast<std::size_t>(count)) != kHead)
        return "is no study; expected a file that Bothways made"_t;
    return std::nullopt;
}

core::Message refusalToOpen(int problem, bool writing)
{
    if (problem == ENOENT || problem == ENOTDIR)
        return "there is no such file; expected a study"_t;
    if (problem == EISDIR)
        return "is a directory; expected a study"_t;
    if (problem == ENXIO)
        return "is a pipe or a device; expected a study"_t;
    if (problem == EACCES && !writing)
        return "cannot be read (no permission?); expected a study"_t;
    if (problem == EACCES || problem == EROFS || problem == EPERM)
        return "is read-only; make it writable, or copy it to another place"_t;
    return core::message("cannot be read: {}; expected a study"_t, core::systemProblem(problem));
}

enum class Lock { taken, held, impossible };

Lock lockOurByte(int descriptor)
{
    constexpr int kTries = 10;
    constexpr auto kPause = std::chrono::milliseconds(50);
    for (int i = 0; i < kTries; ++i) {
        struct flock lock = lockOn(F_WRLCK, kOurByte, 1);
        if (::fcntl(descriptor, F_OFD_SETLK, &lock) == 0)
            return Lock::taken;
        if (errno != EAGAIN && errno != EACCES)
            return Lock::impossible;
        std::this_thread::sleep_for(kPause);
    }
    return Lock::held;
}

} // namespace

Hold::Hold(int descriptor, bool locked) : m_descriptor(descriptor), m_locked(locked) {}

Hold::~Hold()
{
    struct flock lock = lockOn(F_UNLCK, kOurByte, 1);
    ::fcntl(m_descriptor, F_OFD_SETLK, &lock);
    openFiles().remove(m_descriptor);
}

core::Result<std::shared_ptr<Hold>> Hold::take(const fs::path& file, bool writing)
{
    // A pipe is not waited for.
    const int descriptor =
        ::open(file.c_str(), (writing ? O_RDWR : O_RDONLY) | O_CLOEXEC | O_NONBLOCK | O_NOCTTY);
    if (descriptor < 0) {
        const int problem = errno;
        // What is no study is said before what may not be written.
        if (writing && problem != ENOENT)
            if (const auto reading = take(file, false); !reading)
                return reading.error();
        return notAStudy(file, refusalToOpen(problem, writing));
    }
    openFiles().add(descriptor);
    const std::shared_ptr<Hold> hold(new Hold(descriptor, false));
    if (auto why = refuseContent(descriptor))
        return notAStudy(file, *std::move(why));
    if (!writing)
        return hold;
    const Lock lock = lockOurByte(descriptor);
    if (lock == Lock::held)
        return notAStudy(
            file, core::message("is being written by {}; close it there, or open it for reading"_t,
                                nameOfHolder(descriptor).value_or("another program"_t)));
    hold->m_locked = lock == Lock::taken;
    return hold;
}

std::optional<Hold::Other> Hold::other() const
{
    for (const auto& [first, count] :
         {std::pair{kReservedByte, off_t{1}}, std::pair{kSharedFirst, kSharedCount}}) {
        struct flock lock = lockOn(F_WRLCK, first, count);
        if (::fcntl(m_descriptor, F_GETLK, &lock) == 0 && lock.l_type != F_UNLCK)
            return Other{first == kSharedFirst && lock.l_type == F_RDLCK,
                         nameOfProcess(lock.l_pid).value_or("another program"_t)};
    }
    return std::nullopt;
}

bool Hold::isOpenHere(const fs::path& file)
{
    struct stat status {};
    return ::stat(file.c_str(), &status) == 0 && openFiles().has({status.st_dev, status.st_ino});
}

} // namespace bothways::storage
