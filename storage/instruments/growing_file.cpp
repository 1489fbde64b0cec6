// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/serial_open.h"
#include "storage/instruments/stream_port.h"

#include <algorithm>
#include <cerrno>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace bothways::storage {
namespace {

/// A file that grows. What it holds already was not read now: it is read from its end, but for the
/// header; and from its beginning once it is another one or shorter.
class GrowingFile final : public Port {
public:
    GrowingFile(asio::io_context& io, Address address, PortEvents events)
        : m_address(std::move(address)),
          m_events(std::move(events)),
          m_timer(io),
          m_buffer(kPortBuffer)
    {
    }
    void open() override
    {
        m_file = FileHandle(::open(m_address.path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
        if (!m_file) {
            m_isNew = errno == ENOENT; // what is in it when it comes is new
            return m_events.failed(openProblem(m_address.path, errno));
        }
        struct stat state {};
        ::fstat(m_file.get(), &state);
        if (!S_ISREG(state.st_mode)) {
            m_file = {};
            return m_events.failed(core::message(
                "{} is neither a file nor a pipe; a serial port is serial:PORT,BAUD"_t,
                m_address.path));
        }
        m_inode = state.st_ino;
        m_at = 0;
        m_events.opened(false);
        if (!m_isNew)
            skipToEnd(state.st_size);
        m_isNew = true;
        look();
    }
    void close() override
    {
        m_timer.cancel();
        m_file = {};
    }
    core::Message whySilent() const override
    {
        return core::message("nothing is added to {}; a recording that is whole is read with "
                             "replay:{}"_t,
                             m_address.path, m_address.path);
    }

private:
    /// To the last line's end; a first line without a number in it is a header.
    void skipToEnd(off_t size)
    {
        const off_t from = std::max<off_t>(0, size - static_cast<off_t>(m_buffer.size()));
        const ssize_t tail = ::pread(m_file.get(), m_buffer.data(), m_buffer.size(), from);
        const std::string_view end(m_buffer.data(),
                                   static_cast<std::size_t>(std::max<ssize_t>(tail, 0)));
        const std::size_t line = end.rfind('\n');
        m_at = line == std::string_view::npos ? (from == 0 ? 0 : size)
                                              : from + static_cast<off_t>(line) + 1;
        std::vector<char> first(4096);
        const ssize_t got = ::pread(m_file.get(), first.data(), first.size(), 0);
        const std::string_view head(first.data(),
                                    static_cast<std::size_t>(std::max<ssize_t>(got, 0)));
        const std::size_t headEnd = head.find('\n');
        const bool words = headEnd != std::string_view::npos &&
                           static_cast<off_t>(headEnd) < m_at &&
                           head.substr(0, headEnd).find_first_of("=$") == std::string_view::npos;
        if (words && isHeader(head.substr(0, headEnd)))
            m_events.came(head.substr(0, headEnd + 1));
    }
    static bool isHeader(std::string_view line)
    {
        return !line.empty() &&
               std::string_view("0123456789+-.").find(line.front()) == std::string_view::npos;
    }
    void look()
    {
        struct stat named {};
        struct stat open {};
        const bool there = ::stat(m_address.path.c_str(), &named) == 0;
        ::fstat(m_file.get(), &open);
        const ssize_t got = ::pread(m_file.get(), m_buffer.data(), m_buffer.size(), m_at);
        if (got > 0) {
            m_at += got;
            return wait(m_events.came({m_buffer.data(), static_cast<std::size_t>(got)}),
                        got == static_cast<ssize_t>(m_buffer.size()));
        }
        if (!there || named.st_ino != m_inode || open.st_size < m_at) {
            close();
            return m_events.lost(core::message("{} is another file now"_t, m_address.path));
        }
        wait(true, false);
    }
    void wait(bool room, bool more)
    {
        m_timer.expires_after(!room  ? kRoomPause
                              : more ? std::chrono::milliseconds(0)
                                     : kFilePause);
        m_timer.async_wait([this, room](const error_code& problem) {
            if (problem || !m_file)
                return;
            if (room)
                look();
            else
                wait(m_events.came({}), true);
        });
    }

    Address m_address;
    PortEvents m_events;
    asio::steady_timer m_timer;
    FileHandle m_file;
    ino_t m_inode = 0;
    off_t m_at = 0;
    bool m_isNew = false; ///< what it holds when it opens came since we began
    std::vector<char> m_buffer;
};

} // namespace

std::unique_ptr<Port> makeGrowingFile(boost::asio::io_context& io, const Address& address,
                                      PortEvents events)
{
    return std::make_unique<GrowingFile>(io, address, std::move(events));
}

} // namespace bothways::storage
