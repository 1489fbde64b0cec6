// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/serial_open.h"

#include "core/base/number_text.h"
#include "storage/instruments/folder_entries.h"
#include "storage/study/process_name.h"

#include <fmt/format.h>

#include <cerrno>
#include <filesystem>
#include <optional>
#include <string>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <grp.h>
#include <sys/file.h>
#include <sys/ioctl.h>
#include <sys/stat.h>
#include <termios.h>
#include <unistd.h>

namespace bothways::storage {
namespace {

namespace fs = std::filesystem;

std::optional<speed_t> speedOf(int baud)
{
    static constexpr std::pair<int, speed_t> speeds[] = {
        {300, B300},         {600, B600},         {1200, B1200},       {2400, B2400},
        {4800, B4800},       {9600, B9600},       {19200, B19200},     {38400, B38400},
        {57600, B57600},     {115200, B115200},   {230400, B230400},   {460800, B460800},
        {500000, B500000},   {576000, B576000},   {921600, B921600},   {1000000, B1000000},
        {1152000, B1152000}, {1500000, B1500000}, {2000000, B2000000}, {2500000, B2500000},
        {3000000, B3000000}, {3500000, B3500000}, {4000000, B4000000}};
    for (const auto& [number, speed] : speeds)
        if (number == baud)
            return speed;
    return std::nullopt;
}

/// Whether a process has the device open, as far as the system shows it.
bool hasOpen(const fs::path& process, const struct stat& device)
{
    bool found = false;
    eachEntry(process / "fd", [&](const fs::directory_entry& file) {
        struct stat open {};
        std::error_code problem;
        // Asked of devices alone: a file on a network may answer late.
        found = found || (fs::read_symlink(file.path(), problem).string().starts_with("/dev/") &&
                          ::stat(file.path().c_str(), &open) == 0 && S_ISCHR(open.st_mode) &&
                          open.st_rdev == device.st_rdev);
    });
    return found;
}

/// Another process that has the device open.
std::optional<core::Message> otherUser(int port)
{
    struct stat device {};
    if (::fstat(port, &device) != 0)
        return std::nullopt;
    std::optional<core::Message> found;
    eachEntry("/proc", [&](const fs::directory_entry& process) {
        const auto number = core::wholeNumber<pid_t>(process.path().filename().native());
        if (number && *number != ::getpid() && !found && hasOpen(process.path(), device))
            found = nameOfProcess(*number);
    });
    return found;
}

core::Message heldBy(const std::string& path, const std::optional<core::Message>& who)
{
    if (who)
        return core::message("{} is in use by {}"_t, path, *who);
    return core::message("{} is in use by another program"_t, path);
}

/// 8 bits, nothing changed on the way, whatever the port was used for before.
bool makeRaw(int port, const Address& address)
{
    termios settings{};
    if (::tcgetattr(port, &settings) != 0)
        return false;
    ::cfmakeraw(&settings);
    settings.c_cflag |= CLOCAL | CREAD;
    settings.c_cflag &= ~static_cast<tcflag_t>(CRTSCTS | CSTOPB | PARENB | PARODD | HUPCL);
    if (address.parity != Address::Parity::none)
        settings.c_cflag |= PARENB;
    if (address.parity == Address::Parity::odd)
        settings.c_cflag |= PARODD;
    if (address.stop_bits == 2)
        settings.c_cflag |= CSTOPB;
    settings.c_cc[VMIN] = 1;
    settings.c_cc[VTIME] = 0;
    const speed_t speed = speedOf(address.baud).value_or(B9600);
    ::cfsetispeed(&settings, speed);
    ::cfsetospeed(&settings, speed);
    return ::tcsetattr(port, TCSANOW, &settings) == 0;
}

} // namespace

core::Message openProblem(const std::string& path, int problem)
{
    struct stat file {};
    if (problem == ENOENT)
        return core::message("there is no {}"_t, path);
    if (problem == EBUSY)
        return heldBy(path, std::nullopt);
    if (problem != EACCES && problem != EPERM)
        return core::message("{} cannot be opened: {}"_t, path, core::systemProblem(problem));
    if (::stat(path.c_str(), &file) != 0 || (file.st_mode & S_IRGRP) == 0)
        return core::message("no permission to read {}"_t, path);
    const group* owner = ::getgrgid(file.st_gid); // read on this thread alone
    const std::string name = owner ? owner->gr_name : fmt::format("{}", file.st_gid);
    return core::message("no permission to read {}: it belongs to the group {}. Join it with: sudo "
                         "usermod -aG {} $USER, then log in again"_t,
                         path, name, name);
}

bool lockSerial(int port)
{
    if (::flock(port, LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK)
        return false;
    ::ioctl(port, TIOCEXCL);
    return true;
}

OpenedSerial openSerial(const Address& address)
{
    OpenedSerial opened;
    FileHandle port(::open(address.path.c_str(), O_RDWR | O_NOCTTY | O_NONBLOCK | O_CLOEXEC));
    if (!port) {
        opened.why = openProblem(address.path, errno);
        return opened;
    }
    if (::isatty(port.get()) == 0) {
        opened.why = core::message("{} is no serial port"_t, address.path);
        return opened;
    }
    const auto other = otherUser(port.get());
    if (other || !lockSerial(port.get())) {
        opened.why = heldBy(address.path, other);
        return opened;
    }
    if (!makeRaw(port.get(), address)) {
        opened.why = core::message("{} does not take {} baud: {}"_t, address.path, address.baud,
                                   core::systemProblem(errno));
        return opened;
    }
    opened.port = std::move(port);
    return opened;
}

core::Message serialTrouble(const Address& address)
{
    return openSerial(address).why;
}

} // namespace bothways::storage
