// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/line_parser.h"
#include "storage/instruments/rig_reader.h"

#include <functional>
#include <mutex>
#include <set>
#include <span>
#include <string>
#include <vector>

/// Where an instrument leaves what it read, for whoever takes it from another thread.
namespace bothways::storage {

/// The channels of all instruments; only grows.
class ChannelBook {
public:
    std::uint32_t add(ReadChannel channel);
    /// A name that no channel has yet: itself, or with the instrument's before it.
    [[nodiscard]] std::string freeName(const std::string& name,
                                       const std::string& instrument) const;
    void setDerived(std::uint32_t channel);
    [[nodiscard]] std::vector<ReadChannel> all() const;

private:
    mutable std::mutex m_mutex;
    std::vector<ReadChannel> m_channels;
    std::set<std::string> m_names;
};

class InstrumentOutput {
public:
    /// As many readings wait to be taken at most: half a second of what a pipe can give.
    static constexpr std::size_t kMostWaiting = std::size_t{1} << 18;
    /// As many are in one piece at most: 64 KB, and a reading has two bytes at least.
    static constexpr std::size_t kMostInOnePiece = std::size_t{1} << 15;

    InstrumentOutput(ChannelBook& book, std::uint32_t place, const Instrument& instrument);

    /// Places of the channels that a source fills. Without a list of channels it gets one of its
    /// own.
    std::vector<std::uint32_t> find(std::string_view source, std::string_view name,
                                    std::string_view unit, const RigChannel& conversion = {},
                                    bool derived = false);
    /// Place of the channel that stands there in the rig's list.
    [[nodiscard]] std::uint32_t listed(std::size_t place) const { return m_listed[place].channel; }

    /// What comes in one piece might not fit any more.
    [[nodiscard]] bool isFull() const;
    /// @return  how many were taken; fewer than given where it is full
    std::size_t put(std::span<const Reading> readings);
    void putMark(double at_s, std::string words);
    void take(std::vector<Reading>& readings);
    void takeMarks(std::vector<ReadMark>& marks);

    void change(const std::function<void(InstrumentState&)>& change);
    [[nodiscard]] InstrumentState state() const;

private:
    struct Listed {
        std::string source;
        std::uint32_t channel;
    };
    ChannelBook& m_book;
    std::uint32_t m_place;
    std::string m_name;
    bool m_lists;
    std::vector<Listed> m_listed;

    mutable std::mutex m_mutex;
    std::vector<Reading> m_readings;
    std::vector<ReadMark> m_marks;
    InstrumentState m_state;
};

/// Gives the lines of one piece their times, and their readings to the output.
class PieceTimes {
public:
    /// @param begin_s  when the source was opened
    void begin(double begin_s) { m_lastPiece_s = begin_s; }
    void addLine(const ParsedLine& line);
    /// @return  how many readings had no room
    std::size_t finish(double now_s, InstrumentOutput& output);

private:
    struct Line {
        std::size_t values = 0;
        std::string mark;
    };
    double m_lastPiece_s = 0.0;
    std::int64_t m_last_us = -1;
    std::vector<Reading> m_readings;
    std::vector<Line> m_lines;
};

} // namespace bothways::storage
