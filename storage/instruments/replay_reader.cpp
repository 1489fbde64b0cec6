// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/instrument_reader.h"
#include "storage/instruments/reader_thread.h"
#include "storage/loggers/trace_open.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <stop_token>

namespace bothways::storage {
namespace {

constexpr std::chrono::milliseconds kStep{5};
constexpr std::size_t kMostAtOnce = 8192; ///< readings that are handed over together

/// A recording that comes as if it came now, in a thread of its own.
class ReplayReader final : public InstrumentReader {
public:
    ReplayReader(const ReaderPlace& place, const Instrument& instrument, const Address& address,
                 ReplayStart& start, std::size_t replay, bool alone)
        : m_clock(place.clock),
          m_output(place.output),
          m_instrument(instrument),
          m_path(address.path),
          m_start(start),
          m_replay(replay),
          m_alone(alone)
    {
    }
    ~ReplayReader() override { stop(); }
    void start() override
    {
        m_thread.begin([this](const std::stop_token& token) { run(token); });
    }
    void stop() override { m_thread.stop(); }

private:
    struct Column {
        std::vector<std::uint32_t> channels;
        std::size_t gap = 0, odd = 0; ///< places in the block's lists
    };

    void run(const std::stop_token& token);
    core::Outcome begin(TraceFile& trace);
    core::Outcome takeBlock(const TraceFile& trace, const TraceBlock& block,
                            const std::vector<double>& time_s, const std::stop_token& token);
    void takeRow(const TraceBlock& block, std::uint32_t row, double at_s);
    bool handOver(const std::stop_token& token);
    bool waitUntil(double at_s, const std::stop_token& token);
    void end(core::Message why, InstrumentState::Is is);

    const ReaderClock& m_clock;
    InstrumentOutput& m_output;
    Instrument m_instrument;
    std::string m_path;
    ReplayStart& m_start;
    std::size_t m_replay;
    bool m_alone;

    std::vector<Column> m_columns;
    std::size_t m_mark = 0; ///< place in the block's list
    std::vector<Reading> m_readings;
    std::optional<double> m_first_s; ///< time of the first row
    double m_offset_s = 0.0, m_last_s = 0.0;
    double m_lead_s = 0.0; ///< in a rig with others: when the replays began by the reader's clock
    std::int64_t m_last_us = -1;
    bool m_isReady = false;
    ReaderThread m_thread; ///< the last: it uses all of the above
};

/// In the common time of the replays.
bool ReplayReader::waitUntil(double at_s, const std::stop_token& token)
{
    for (;;) {
        const double due_s = m_start.due_s();
        if (due_s >= at_s)
            return !token.stop_requested();
        if (!handOver(token))
            return false;
        m_start.reached(m_replay, due_s, false);
        if (!m_thread.pause(kStep, token))
            return false;
    }
}

bool ReplayReader::handOver(const std::stop_token& token)
{
    std::span<const Reading> rest(m_readings);
    while (!rest.empty()) {
        rest = rest.subspan(m_output.put(rest));
        if (!rest.empty() && !m_thread.pause(kStep, token))
            return false;
    }
    m_readings.clear();
    m_start.reached(m_replay, m_last_s, false);
    return true;
}

core::Outcome ReplayReader::begin(TraceFile& trace)
{
    std::vector<ChannelMapping> mapping;
    if (const core::Outcome planned = trace.plan(mapping); !planned)
        return planned;
    for (const TraceChannel& channel : trace.channels()) {
        const RigChannel conversion{{}, {}, {}, channel.factor, channel.offset};
        const std::string& source = channel.column.empty() ? channel.name : channel.column;
        Column column;
        if (!channel.nameless)
            column.channels = m_output.find(source, channel.name, channel.unit, conversion);
        if (column.channels.empty() && source != channel.name && !channel.nameless)
            column.channels = m_output.find(channel.name, channel.name, channel.unit, conversion);
        m_columns.push_back(std::move(column));
    }
    return core::Done{};
}

void ReplayReader::takeRow(const TraceBlock& block, std::uint32_t row, double at_s)
{
    const double shown_s = m_alone ? at_s : m_lead_s + at_s / m_start.speed();
    m_last_us = std::max<std::int64_t>(std::llround(shown_s * 1e6), m_last_us + 1);
    const double time_s = static_cast<double>(m_last_us) / 1e6;
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        const ScaledColumn& cells = block.channels[i];
        Column& column = m_columns[i];
        while (column.gap < cells.gaps.size() && cells.gaps[column.gap] < row)
            ++column.gap;
        while (column.odd < cells.odd.size() && cells.odd[column.odd].first < row)
            ++column.odd;
        if (column.gap < cells.gaps.size() && cells.gaps[column.gap] == row)
            continue;
        Reading reading{0, time_s, cells.scaled[row], static_cast<std::int16_t>(cells.decimals),
                        0.0};
        if (column.odd < cells.odd.size() && cells.odd[column.odd].first == row) {
            reading.decimals = -1;
            reading.integer = 0;
            reading.odd = cells.odd[column.odd].second;
        }
        for (const std::uint32_t channel : column.channels) {
            reading.channel = channel;
            m_readings.push_back(reading);
        }
    }
    for (; m_mark < block.marks.size() && block.marks[m_mark].first <= row; ++m_mark)
        m_output.putMark(time_s, block.marks[m_mark].second);
}

core::Outcome ReplayReader::takeBlock(const TraceFile& trace, const TraceBlock& block,
                                      const std::vector<double>& time_s,
                                      const std::stop_token& token)
{
    const core::Error stopped{core::ErrorCode::stopped, "stopped"_t, {}};
    if (!m_first_s && block.rows > 0) {
        m_first_s = time_s[0];
        const auto zero = trace.zero(ReadTotals{}, "1970-01-01");
        std::optional<double> clock_s;
        if (zero && zero.value())
            clock_s = static_cast<double>(zero.value()->us) / 1e6 + time_s[0];
        m_start.ready(m_replay, clock_s);
        m_isReady = true;
        while (!m_start.begun())
            if (!m_thread.pause(kStep, token))
                return stopped;
        m_offset_s = m_start.offset_s(m_replay);
        m_lead_s = m_clock.elapsed_s() - m_start.due_s() / m_start.speed();
        m_output.change([](InstrumentState& state) { state.is = InstrumentState::Is::reading; });
    }
    for (Column& column : m_columns)
        column.gap = column.odd = 0;
    m_mark = 0;
    for (std::uint32_t row = 0; row < block.rows; ++row) {
        const double at_s = time_s[row] - *m_first_s + m_offset_s;
        // Rows that are due are handed over together.
        if (at_s > m_start.due_s() && !waitUntil(at_s, token))
            return stopped;
        takeRow(block, row, at_s);
        m_last_s = at_s;
        if (m_readings.size() >= kMostAtOnce && !handOver(token))
            return stopped;
    }
    m_output.change([&](InstrumentState& state) { state.lines += block.lines; });
    return core::Done{};
}

void ReplayReader::end(core::Message why, InstrumentState::Is is)
{
    if (!m_isReady)
        m_start.ready(m_replay, std::nullopt);
    m_start.reached(m_replay, m_last_s, true);
    m_output.change([&](InstrumentState& state) {
        state.is = is;
        state.trouble = std::move(why);
    });
}

void ReplayReader::run(const std::stop_token& token)
{
    auto trace = openTrace(m_path);
    if (!trace)
        return end(trace.error().message, InstrumentState::Is::failed);
    if (const core::Outcome begun = begin(*trace.value()); !begun)
        return end(begun.error().message, InstrumentState::Is::failed);
    const auto totals =
        trace.value()->take([&](const TraceBlock& block, const std::vector<double>& time_s) {
            return takeBlock(*trace.value(), block, time_s, token);
        });
    if (!totals && totals.error().code != core::ErrorCode::stopped)
        return end(totals.error().message, InstrumentState::Is::failed);
    if (totals && !handOver(token))
        return;
    if (totals && !m_first_s)
        return end("no row with a time; expected a recording"_t, InstrumentState::Is::failed);
    end({}, InstrumentState::Is::ended);
}

} // namespace

std::unique_ptr<InstrumentReader> makeReplayReader(const ReaderPlace& place,
                                                   const Instrument& instrument,
                                                   const Address& address, ReplayStart& start,
                                                   std::size_t replay, bool alone)
{
    return std::make_unique<ReplayReader>(place, instrument, address, start, replay, alone);
}

} // namespace bothways::storage
