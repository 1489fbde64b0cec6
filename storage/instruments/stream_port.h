// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/port.h"

#include <boost/asio/buffer.hpp>
#include <boost/asio/error.hpp>
#include <boost/asio/steady_timer.hpp>
#include <boost/asio/write.hpp>

#include <chrono>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace bothways::storage {

namespace asio = boost::asio;
using boost::system::error_code;

inline constexpr std::size_t kPortBuffer = 64 * 1024;
/// In one piece: the source is fast, so read on at once.
inline constexpr std::size_t kMuchInOnePiece = 2048;
inline constexpr std::size_t kMostUnsent = 4096;
inline constexpr std::chrono::milliseconds kReadPause{4}, kRoomPause{2}, kFilePause{20};

/// What ports with a stream have in common: reading, waiting for room, writing.
template <class Stream>
class StreamPort : public Port {
public:
    StreamPort(asio::io_context& io, Address address, PortEvents events, bool prompt)
        : m_address(std::move(address)),
          m_events(std::move(events)),
          m_stream(io),
          m_timer(io),
          m_prompt(prompt),
          m_buffer(kPortBuffer)
    {
    }
    void close() override
    {
        error_code ignored;
        m_stream.close(ignored);
        m_timer.cancel();
        m_unsent.clear();
        m_sending.clear();
    }
    void write(std::string_view bytes) override
    {
        if (m_unsent.size() + bytes.size() > kMostUnsent)
            return;
        m_unsent += bytes;
        if (m_sending.empty())
            send();
    }

protected:
    void begin(bool inTheMiddle)
    {
        m_events.opened(inTheMiddle);
        read();
    }
    void read()
    {
        if (!m_stream.is_open())
            return;
        m_stream.async_read_some(asio::buffer(m_buffer),
                                 [this](const error_code& problem, std::size_t size) {
                                     if (problem == asio::error::operation_aborted)
                                         return;
                                     if (problem)
                                         return ended(problem);
                                     beforeBytes();
                                     took(m_events.came({m_buffer.data(), size}), size);
                                 });
    }
    void took(bool room, std::size_t size)
    {
        if (room && (m_prompt || size >= kMuchInOnePiece))
            return read();
        m_timer.expires_after(room ? kReadPause : kRoomPause);
        m_timer.async_wait([this, room](const error_code& problem) {
            if (problem)
                return;
            if (room)
                read();
            else
                took(m_events.came({}), kMuchInOnePiece);
        });
    }
    virtual void ended(const error_code& problem) = 0;
    virtual void beforeBytes() {}
    void lose(core::Message why)
    {
        close();
        m_events.lost(std::move(why));
    }
    void send()
    {
        m_sending.swap(m_unsent);
        asio::async_write(m_stream, asio::buffer(m_sending),
                          [this](const error_code& problem, std::size_t) {
                              if (problem)
                                  return; // reading sees it, too
                              m_sending.clear();
                              if (!m_unsent.empty())
                                  send();
                          });
    }

    Address m_address;
    PortEvents m_events;
    Stream m_stream;
    asio::steady_timer m_timer;

private:
    bool m_prompt;
    std::vector<char> m_buffer;
    std::string m_unsent, m_sending;
};

[[nodiscard]] std::unique_ptr<Port> makeUdpPort(boost::asio::io_context& io, const Address& address,
                                                PortEvents events);
[[nodiscard]] std::unique_ptr<Port> makeGrowingFile(boost::asio::io_context& io,
                                                    const Address& address, PortEvents events);

} // namespace bothways::storage
