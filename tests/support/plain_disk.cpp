// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/plain_disk.h"

#include <atomic>
#include <cerrno>
#include <cstdarg>

#include <fcntl.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace bothways::tests {
namespace {

std::atomic<bool> s_plain = false;

int openedAt(int folder, const char* path, int flags, mode_t mode)
{
    if (s_plain && (flags & O_TMPFILE) == O_TMPFILE) {
        errno = EOPNOTSUPP;
        return -1;
    }
    return static_cast<int>(::syscall(SYS_openat, folder, path, flags, mode));
}

} // namespace

PlainDisk::PlainDisk()
{
    s_plain = true;
}

PlainDisk::~PlainDisk()
{
    s_plain = false;
}

} // namespace bothways::tests

// Of two functions of one name the linker takes that of the program before that of the C library.
extern "C" {

int open(const char* path, int flags, ...)
{
    va_list rest;
    va_start(rest, flags);
    const auto mode = static_cast<mode_t>(va_arg(rest, unsigned));
    va_end(rest);
    return bothways::tests::openedAt(AT_FDCWD, path, flags, mode);
}

int openat(int folder, const char* path, int flags, ...)
{
    va_list rest;
    va_start(rest, flags);
    const auto mode = static_cast<mode_t>(va_arg(rest, unsigned));
    va_end(rest);
    return bothways::tests::openedAt(folder, path, flags, mode);
}

int linkat(int from, const char* old, int to, const char* name, int flags) noexcept
{
    if (bothways::tests::s_plain) {
        errno = EPERM;
        return -1;
    }
    return static_cast<int>(::syscall(SYS_linkat, from, old, to, name, flags));
}

int renameat2(int from, const char* old, int to, const char* name, unsigned flags) noexcept
{
    if (bothways::tests::s_plain && flags != 0) {
        errno = EINVAL;
        return -1;
    }
    return static_cast<int>(::syscall(SYS_renameat2, from, old, to, name, flags));
}
}
