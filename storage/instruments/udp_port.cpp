// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/stream_port.h"

#include <boost/asio/ip/udp.hpp>
#include <boost/asio/ip/v6_only.hpp>

namespace bothways::storage {
namespace {

/// Datagrams from anybody; those that are there are taken together.
class UdpPort final : public Port {
public:
    UdpPort(asio::io_context& io, Address address, PortEvents events)
        : m_address(std::move(address)),
          m_events(std::move(events)),
          m_socket(io),
          m_timer(io),
          m_buffer(kPortBuffer)
    {
    }
    void open() override
    {
        error_code problem;
        asio::ip::udp::endpoint here(asio::ip::udp::v6(), m_address.port);
        if (m_address.host != "*") {
            const auto host = asio::ip::make_address(m_address.host, problem);
            if (problem)
                return m_events.failed(core::message(
                    "'{}' is no address of this computer; expected udp:*:PORT"_t, m_address.host));
            here = {host, m_address.port};
        }
        m_socket.open(here.protocol(), problem);
        if (problem && m_address.host == "*") { // without IPv6
            here = {asio::ip::udp::v4(), m_address.port};
            m_socket.open(here.protocol(), problem);
        } else if (m_address.host == "*") {
            m_socket.set_option(asio::ip::v6_only(false), problem);
        }
        if (!problem)
            m_socket.bind(here, problem);
        if (problem) {
            close();
            return m_events.failed(
                problem == asio::error::address_in_use
                    ? core::message("UDP port {} is in use by another program"_t, m_address.port)
                    : core::message("UDP port {} cannot be listened on: {}"_t, m_address.port,
                                    core::systemProblem(problem.value())));
        }
        error_code ignored;
        m_socket.set_option(asio::socket_base::receive_buffer_size(1 << 20), ignored);
        m_socket.non_blocking(true, ignored);
        m_events.opened(false);
        read();
    }
    void close() override
    {
        error_code ignored;
        m_socket.close(ignored);
        m_timer.cancel();
    }
    bool isDatagrams() const override { return true; }
    bool waits() const override { return false; }

private:
    void read()
    {
        m_socket.async_wait(asio::socket_base::wait_read, [this](const error_code& problem) {
            if (problem)
                return;
            drain();
            m_timer.expires_after(kReadPause);
            m_timer.async_wait([this](const error_code& stopped) {
                if (!stopped)
                    read();
            });
        });
    }
    void drain()
    {
        for (int i = 0; i < 64; ++i) {
            error_code problem;
            const std::size_t size = m_socket.receive(asio::buffer(m_buffer), 0, problem);
            if (problem)
                return;
            m_events.came({m_buffer.data(), size});
        }
    }

    Address m_address;
    PortEvents m_events;
    asio::ip::udp::socket m_socket;
    asio::steady_timer m_timer;
    std::vector<char> m_buffer;
};

} // namespace

std::unique_ptr<Port> makeUdpPort(boost::asio::io_context& io, const Address& address,
                                  PortEvents events)
{
    return std::make_unique<UdpPort>(io, address, std::move(events));
}

} // namespace bothways::storage
