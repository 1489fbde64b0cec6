// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/serial_open.h"
#include "storage/instruments/stream_port.h"

#include <boost/asio/ip/tcp.hpp>
#include <boost/asio/posix/stream_descriptor.hpp>

#include <algorithm>
#include <cerrno>
#include <chrono>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace bothways::storage {
namespace {

class SerialPort final : public StreamPort<asio::posix::stream_descriptor> {
public:
    using StreamPort::StreamPort;
    void open() override
    {
        OpenedSerial opened = openSerial(m_address);
        if (!opened.port)
            return m_events.failed(std::move(opened.why));
        m_stream.assign(::fcntl(opened.port.get(), F_DUPFD_CLOEXEC, 0));
        begin(true);
    }
    bool waits() const override { return false; }

private:
    void ended(const error_code&) override
    {
        lose(core::message("{} was unplugged"_t, m_address.path));
    }
};

/// A named pipe, whose writers come and go.
class PipePort final : public StreamPort<asio::posix::stream_descriptor> {
public:
    using StreamPort::StreamPort;
    void open() override
    {
        const int file = ::open(m_address.path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC);
        if (file < 0)
            return m_events.failed(openProblem(m_address.path, errno));
        m_stream.assign(file);
        begin(false);
    }
    core::Message whySilent() const override
    {
        return core::message("nothing is written to {}"_t, m_address.path);
    }

private:
    /// No writer, or none any more. The next one's lines begin whole.
    void ended(const error_code& problem) override
    {
        if (problem != asio::error::eof)
            return lose(core::message("nothing is written to {}"_t, m_address.path));
        if (m_sawBytes && !m_sawEnd)
            m_events.ended(whySilent());
        m_sawEnd = m_sawBytes;
        m_timer.expires_after(kFilePause);
        m_timer.async_wait([this](const error_code& stopped) {
            if (!stopped)
                read();
        });
    }
    void beforeBytes() override
    {
        m_sawBytes = true;
        if (m_sawEnd)
            m_events.opened(false);
        m_sawEnd = false;
    }
    bool m_sawBytes = false, m_sawEnd = false;
};

class TcpPort final : public StreamPort<asio::ip::tcp::socket> {
public:
    TcpPort(asio::io_context& io, Address address, PortEvents events, bool prompt)
        : StreamPort(io, std::move(address), std::move(events), prompt), m_resolver(io)
    {
    }
    void open() override
    {
        const unsigned attempt = ++m_attempt;
        m_timer.expires_after(std::chrono::milliseconds(1500));
        m_timer.async_wait([this, attempt](const error_code& problem) {
            if (!problem && attempt == m_attempt)
                give("nobody answers"_t);
        });
        m_resolver.async_resolve(m_address.host, std::to_string(m_address.port),
                                 [this, attempt](const error_code& problem, const auto& found) {
                                     if (attempt != m_attempt ||
                                         problem == asio::error::operation_aborted)
                                         return;
                                     if (problem)
                                         return give("there is no such host"_t);
                                     connect(attempt, found, found.begin());
                                 });
    }
    void close() override
    {
        ++m_attempt;
        m_resolver.cancel();
        StreamPort::close();
    }

private:
    using Found = asio::ip::tcp::resolver::results_type;
    void connect(unsigned attempt, const Found& found, Found::const_iterator at)
    {
        error_code ignored;
        m_stream.close(ignored);
        m_stream.async_connect(
            at->endpoint(), [this, attempt, found, at](const error_code& problem) {
                if (attempt != m_attempt || problem == asio::error::operation_aborted)
                    return;
                if (problem && std::next(at) != found.end())
                    return connect(attempt, found, std::next(at));
                if (problem)
                    return give(core::systemProblem(problem.value()));
                m_timer.cancel();
                error_code ignore;
                m_stream.set_option(asio::socket_base::keep_alive(true), ignore);
                m_stream.set_option(asio::ip::tcp::no_delay(true), ignore);
                begin(true);
            });
    }
    void give(core::Message why)
    {
        close();
        m_events.failed(core::message("{} port {} cannot be reached: {}"_t, m_address.host,
                                      m_address.port, std::move(why)));
    }
    void ended(const error_code&) override
    {
        lose(core::message("{} port {} closed the connection"_t, m_address.host, m_address.port));
    }

    asio::ip::tcp::resolver m_resolver;
    unsigned m_attempt = 0;
};

/// A file or a pipe, whichever stands there when it is opened.
class FilePort final : public Port {
public:
    FilePort(asio::io_context& io, Address address, const PortEvents& events, bool prompt)
        : m_path(address.path),
          m_file(makeGrowingFile(io, address, events)),
          m_pipe(io, address, events, prompt)
    {
    }
    void open() override
    {
        struct stat state {};
        const bool pipe = ::stat(m_path.c_str(), &state) == 0 && S_ISFIFO(state.st_mode);
        m_now = pipe ? static_cast<Port*>(&m_pipe) : m_file.get();
        m_now->open();
    }
    void close() override { m_now->close(); }
    core::Message whySilent() const override { return m_now->whySilent(); }

private:
    std::string m_path;
    std::unique_ptr<Port> m_file;
    PipePort m_pipe;
    Port* m_now = m_file.get();
};

} // namespace

std::unique_ptr<Port> makePort(boost::asio::io_context& io, const Address& address,
                               PortEvents events, bool prompt)
{
    switch (address.kind) {
    case Address::Kind::serial:
        return std::make_unique<SerialPort>(io, address, std::move(events), prompt);
    case Address::Kind::tcp:
        return std::make_unique<TcpPort>(io, address, std::move(events), prompt);
    case Address::Kind::udp: return makeUdpPort(io, address, std::move(events));
    case Address::Kind::file: break;
    }
    return std::make_unique<FilePort>(io, address, events, prompt);
}

} // namespace bothways::storage
