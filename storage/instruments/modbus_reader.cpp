// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/instrument_reader.h"
#include "storage/instruments/modbus_source.h"
#include "storage/instruments/reader_thread.h"
#include "storage/instruments/serial_open.h"

#include <fmt/format.h>
#include <modbus/modbus.h>

#include <cerrno>
#include <chrono>
#include <cmath>
#include <stop_token>
#include <string>

namespace bothways::storage {
namespace {

using Seconds = std::chrono::duration<double>;

constexpr std::uint32_t kAnswer_us = 300'000;
constexpr std::uint32_t kConnect_us = 800'000; ///< stopping waits for it
constexpr int kTimeoutsToReconnect = 3;        ///< rounds in which nothing was answered

struct ContextFree {
    void operator()(modbus_t* context) const
    {
        modbus_close(context);
        modbus_free(context);
    }
};

/// Registers of a device, asked for round after round in a thread of its own: libmodbus waits for
/// each answer.
class ModbusReader final : public InstrumentReader {
public:
    ModbusReader(const ReaderPlace& place, const Instrument& instrument, const Address& address)
        : m_clock(place.clock),
          m_output(place.output),
          m_instrument(instrument),
          m_address(address),
          m_pace(place.pace)
    {
        for (const RigChannel& channel : instrument.channels) {
            m_sources.push_back(parseModbusSource(channel.source).value()); // checkRig() saw it
            m_channels.push_back(m_output.listed(m_channels.size()));
        }
        m_requests = modbusRequests(m_sources);
    }
    ~ModbusReader() override { stop(); }
    void start() override
    {
        m_thread.begin([this](const std::stop_token& token) { run(token); });
    }
    void stop() override { m_thread.stop(); }

private:
    enum class Answer { values, declined, none, broken };

    void run(const std::stop_token& token);
    bool connect();
    void round(const std::stop_token& token);
    Answer ask(const ModbusRequest& request);
    void split(std::size_t request);
    void put(const ModbusRequest& request, const std::vector<std::uint16_t>& registers);
    void failed(core::Message why);
    void lost(core::Message why);
    std::string sourceNames(const ModbusRequest& request) const;

    const ReaderClock& m_clock;
    InstrumentOutput& m_output;
    Instrument m_instrument;
    Address m_address;
    RigPace m_pace;
    std::vector<ModbusSource> m_sources;
    std::vector<std::uint32_t> m_channels;
    std::vector<ModbusRequest> m_requests;
    std::unique_ptr<modbus_t, ContextFree> m_context;
    int m_silentRounds = 0;
    bool m_wasOpen = false, m_isNew = false; ///< connected again, and has not answered yet
    std::int64_t m_last_us = -1;
    ReaderThread m_thread; ///< the last: it uses all of the above
};

void ModbusReader::failed(core::Message why)
{
    m_context.reset();
    m_output.change([&](InstrumentState& state) {
        state.is = InstrumentState::Is::failed;
        state.trouble = std::move(why);
    });
}

void ModbusReader::lost(core::Message why)
{
    m_context.reset();
    m_output.change([&](InstrumentState& state) {
        state.is = InstrumentState::Is::opening;
        state.trouble = std::move(why);
    });
}

bool ModbusReader::connect()
{
    const bool serial = m_address.kind == Address::Kind::serial;
    if (serial) {
        if (core::Message why = serialTrouble(m_address); !why.empty()) {
            failed(std::move(why));
            return false;
        }
        const char parity = m_address.parity == Address::Parity::none   ? 'N'
                            : m_address.parity == Address::Parity::even ? 'E'
                                                                        : 'O';
        m_context.reset(
            modbus_new_rtu(m_address.path.c_str(), m_address.baud, parity, 8, m_address.stop_bits));
    } else {
        m_context.reset(
            modbus_new_tcp_pi(m_address.host.c_str(), std::to_string(m_address.port).c_str()));
    }
    if (!m_context || modbus_set_slave(m_context.get(), m_instrument.unit) != 0) {
        failed(core::message("unit {} is no number of a Modbus device"_t, m_instrument.unit));
        return false;
    }
    modbus_set_response_timeout(m_context.get(), 0, kConnect_us);
    if (modbus_connect(m_context.get()) != 0) {
        const int problem = errno;
        failed(serial ? openProblem(m_address.path, problem)
                      : core::message("{} port {} cannot be reached: {}"_t, m_address.host,
                                      m_address.port,
                                      core::Message::verbatim(modbus_strerror(problem))));
        return false;
    }
    if (serial && !lockSerial(modbus_get_socket(m_context.get()))) {
        failed(core::message("{} is in use by another program"_t, m_address.path));
        return false;
    }
    modbus_set_response_timeout(m_context.get(), 0, kAnswer_us);
    m_silentRounds = 0;
    m_isNew = m_wasOpen;
    m_wasOpen = true;
    m_output.change([&](InstrumentState& state) {
        if (state.is == InstrumentState::Is::silent) // until it answers
            return;
        state.is = InstrumentState::Is::reading;
        state.trouble = {};
    });
    return true;
}

void ModbusReader::run(const std::stop_token& token)
{
    double next_s = m_clock.elapsed_s();
    while (!token.stop_requested()) {
        if (!m_context && !connect()) {
            if (!m_thread.pause(Seconds(m_pace.try_again_s), token))
                return;
            continue;
        }
        round(token);
        if (!m_context)
            continue;
        next_s = std::max(next_s + m_instrument.poll_s, m_clock.elapsed_s());
        if (const double wait_s = next_s - m_clock.elapsed_s();
            wait_s > 0.0 && !m_thread.pause(Seconds(wait_s), token))
            return;
    }
}

std::string ModbusReader::sourceNames(const ModbusRequest& request) const
{
    std::string names;
    for (const std::size_t source : request.sources)
        names += (names.empty() ? "" : ", ") + m_instrument.channels[source].source;
    return names;
}

/// A device may decline several registers because of one of them: they are asked for one by one.
void ModbusReader::split(std::size_t request)
{
    std::vector<ModbusRequest> single;
    for (const std::size_t source : m_requests[request].sources)
        single.push_back({m_sources[source].table,
                          m_sources[source].address,
                          m_sources[source].registers(),
                          {source}});
    m_requests.erase(m_requests.begin() + static_cast<std::ptrdiff_t>(request));
    m_requests.insert(m_requests.begin() + static_cast<std::ptrdiff_t>(request), single.begin(),
                      single.end());
}

void ModbusReader::round(const std::stop_token& token)
{
    bool any = false;
    core::Message trouble;
    for (std::size_t i = 0; i < m_requests.size() && !token.stop_requested();) {
        const Answer answer = ask(m_requests[i]);
        if (answer == Answer::broken)
            return lost("the connection was lost"_t);
        if (answer == Answer::declined && m_requests[i].sources.size() > 1) {
            split(i);
            continue;
        }
        any |= answer != Answer::none;
        if (answer == Answer::declined)
            trouble = core::message("the device does not give {}: {}"_t, sourceNames(m_requests[i]),
                                    core::Message::verbatim(modbus_strerror(errno)));
        else if (answer == Answer::none)
            trouble =
                core::message("the device does not answer for {}"_t, sourceNames(m_requests[i]));
        ++i;
    }
    m_silentRounds = any ? 0 : m_silentRounds + 1;
    const bool silent = m_silentRounds >= kTimeoutsToReconnect;
    m_output.change([&](InstrumentState& state) {
        state.silences += silent && state.is == InstrumentState::Is::reading;
        state.reconnects += any && m_isNew;
        state.is = silent ? InstrumentState::Is::silent
                   : any  ? InstrumentState::Is::reading
                          : state.is;
        state.trouble = trouble;
    });
    m_isNew = m_isNew && !any;
    if (silent && m_address.kind == Address::Kind::tcp)
        m_context.reset(); // a device that was switched off does not say so
}

ModbusReader::Answer ModbusReader::ask(const ModbusRequest& request)
{
    std::vector<std::uint16_t> registers(static_cast<std::size_t>(request.registers));
    const int got = request.table == ModbusSource::Table::holding
                        ? modbus_read_registers(m_context.get(), request.address, request.registers,
                                                registers.data())
                        : modbus_read_input_registers(m_context.get(), request.address,
                                                      request.registers, registers.data());
    if (got == request.registers) {
        put(request, registers);
        return Answer::values;
    }
    const int problem = errno;
    if (problem > MODBUS_ENOBASE && problem <= EMBXGTAR) {
        m_output.change([](InstrumentState& state) { ++state.lines; });
        errno = problem;
        return Answer::declined;
    }
    if (problem == ETIMEDOUT)
        return Answer::none;
    if (problem == EMBBADCRC || problem == EMBBADDATA || problem == EMBBADEXC ||
        problem == EMBUNKEXC || problem == EMBMDATA || problem == EMBBADSLAVE) {
        modbus_flush(m_context.get());
        m_output.change([](InstrumentState& state) { ++state.garbage_lines; });
        return Answer::none;
    }
    return Answer::broken;
}

void ModbusReader::put(const ModbusRequest& request, const std::vector<std::uint16_t>& registers)
{
    m_last_us = std::max<std::int64_t>(std::llround(m_clock.elapsed_s() * 1e6), m_last_us + 1);
    std::vector<Reading> readings;
    for (const std::size_t source : request.sources) {
        const auto from = static_cast<std::size_t>(m_sources[source].address - request.address);
        const TypedNumber number =
            modbusValue(m_sources[source], std::span(registers).subspan(from));
        if (number.decimals < 0 && !std::isfinite(number.odd))
            continue; // how a device says that it has no value
        readings.push_back({m_channels[source], static_cast<double>(m_last_us) / 1e6,
                            number.integer, number.decimals, number.odd});
    }
    const std::size_t taken = m_output.put(readings);
    m_output.change([&](InstrumentState& state) {
        ++state.lines;
        state.bytes += 2 * static_cast<std::int64_t>(registers.size());
        state.lost_bytes += taken < readings.size() ? 2 * request.registers : 0;
    });
}

} // namespace

std::unique_ptr<InstrumentReader>
makeModbusReader(const ReaderPlace& place, const Instrument& instrument, const Address& address)
{
    return std::make_unique<ModbusReader>(place, instrument, address);
}

} // namespace bothways::storage
