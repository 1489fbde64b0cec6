// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/instrument_output.h"

#include "core/study/study.h"
#include "storage/loggers/trace_names.h"

#include <algorithm>
#include <cmath>

namespace bothways::storage {
namespace {

constexpr std::size_t kMostMarks = 10'000;
constexpr double kLongestPiece_s = 0.05;

/// As a header is matched: by itself, or without brackets, blanks and case.
bool isSource(std::string_view listed, std::string_view source)
{
    return listed == source || core::sameWord(listed, source) ||
           plainName(listed) == plainName(source);
}

} // namespace

std::uint32_t ChannelBook::add(ReadChannel channel)
{
    const std::lock_guard lock(m_mutex);
    m_names.insert(channel.channel.name);
    m_channels.push_back(std::move(channel));
    return static_cast<std::uint32_t>(m_channels.size() - 1);
}

std::string ChannelBook::freeName(const std::string& name, const std::string& instrument) const
{
    const std::lock_guard lock(m_mutex);
    if (!m_names.contains(name))
        return name;
    const std::string with = instrument + '_' + name;
    std::string free = with;
    for (int i = 2; m_names.contains(free); ++i)
        free = with + '_' + std::to_string(i);
    return free;
}

void ChannelBook::setDerived(std::uint32_t channel)
{
    const std::lock_guard lock(m_mutex);
    m_channels[channel].derived = true;
}

std::vector<ReadChannel> ChannelBook::all() const
{
    const std::lock_guard lock(m_mutex);
    return m_channels;
}

InstrumentOutput::InstrumentOutput(ChannelBook& book, std::uint32_t place,
                                   const Instrument& instrument)
    : m_book(book), m_place(place), m_name(instrument.name), m_lists(!instrument.channels.empty())
{
    for (const RigChannel& channel : instrument.channels)
        m_listed.push_back({channel.source, book.add({place, channel, false})});
}

std::vector<std::uint32_t> InstrumentOutput::find(std::string_view source, std::string_view name,
                                                  std::string_view unit,
                                                  const RigChannel& conversion, bool derived)
{
    std::vector<std::uint32_t> found;
    for (const Listed& listed : m_listed)
        if (isSource(listed.source, source))
            found.push_back(listed.channel);
    for (const std::uint32_t channel : found)
        if (derived)
            m_book.setDerived(channel);
    if (!found.empty() || (m_lists && !derived))
        return found;
    RigChannel channel;
    channel.source = source;
    channel.name = m_book.freeName(std::string(name), m_name);
    channel.unit = unit;
    channel.factor = conversion.factor;
    channel.offset = conversion.offset;
    m_listed.push_back({std::string(source), m_book.add({m_place, channel, derived})});
    return {m_listed.back().channel};
}

bool InstrumentOutput::isFull() const
{
    const std::lock_guard lock(m_mutex);
    return m_readings.size() > kMostWaiting - kMostInOnePiece;
}

std::size_t InstrumentOutput::put(std::span<const Reading> readings)
{
    const std::lock_guard lock(m_mutex);
    const std::size_t room = kMostWaiting - std::min(kMostWaiting, m_readings.size());
    const std::size_t taken = std::min(room, readings.size());
    m_readings.insert(m_readings.end(), readings.begin(),
                      readings.begin() + static_cast<std::ptrdiff_t>(taken));
    m_state.readings += static_cast<std::int64_t>(taken);
    if (taken > 0)
        m_state.last_s = readings[taken - 1].time_s;
    return taken;
}

void InstrumentOutput::putMark(double at_s, std::string words)
{
    const std::lock_guard lock(m_mutex);
    if (m_marks.size() < kMostMarks)
        m_marks.push_back({m_place, at_s, std::move(words)});
}

void InstrumentOutput::take(std::vector<Reading>& readings)
{
    const std::lock_guard lock(m_mutex);
    readings.insert(readings.end(), m_readings.begin(), m_readings.end());
    m_readings.clear();
}

void InstrumentOutput::takeMarks(std::vector<ReadMark>& marks)
{
    const std::lock_guard lock(m_mutex);
    marks.insert(marks.end(), m_marks.begin(), m_marks.end());
    m_marks.clear();
}

void InstrumentOutput::change(const std::function<void(InstrumentState&)>& change)
{
    const std::lock_guard lock(m_mutex);
    change(m_state);
}

InstrumentState InstrumentOutput::state() const
{
    const std::lock_guard lock(m_mutex);
    return m_state;
}

void PieceTimes::addLine(const ParsedLine& line)
{
    for (const ParsedValue& value : line.values)
        m_readings.push_back(
            {value.channel, 0.0, value.number.integer, value.number.decimals, value.number.odd});
    m_lines.push_back({line.values.size(), line.mark});
}

std::size_t PieceTimes::finish(double now_s, InstrumentOutput& output)
{
    const double from_s = std::max(m_lastPiece_s, now_s - kLongestPiece_s);
    const double step_s = std::max(now_s - from_s, 0.0) /
                          static_cast<double>(std::max<std::size_t>(m_lines.size(), 1));
    std::size_t at = 0;
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        const double time_s = now_s - step_s * static_cast<double>(m_lines.size() - 1 - i);
        m_last_us = std::max<std::int64_t>(std::llround(time_s * 1e6), m_last_us + 1);
        const double line_s = static_cast<double>(m_last_us) / 1e6;
        for (std::size_t k = 0; k < m_lines[i].values; ++k)
            m_readings[at++].time_s = line_s;
        if (!m_lines[i].mark.empty())
            output.putMark(line_s, std::move(m_lines[i].mark));
    }
    const std::size_t taken = output.put(m_readings);
    const std::size_t lost = m_readings.size() - taken;
    m_readings.clear();
    m_lines.clear();
    m_lastPiece_s = now_s;
    return lost;
}

} // namespace bothways::storage
