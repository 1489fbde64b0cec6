// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/trace_block.h"

#include "storage/bytes/decimal.h"

#include <algorithm>
#include <cmath>
#include <cstring>

namespace bothways::storage {
namespace {

constexpr std::uint32_t kFirstCapacity = 4096;
constexpr int kSafeDigits = 15; ///< so many digits are always below 2^53

unsigned digitAt(const char* at)
{
    return static_cast<unsigned>(static_cast<unsigned char>(*at)) - '0';
}

bool isLineBreak(char c)
{
    return c == '\n' || c == '\r';
}

bool isBlankLine(const char* from, const char* to, std::size_t cells)
{
    return cells == 1 &&
           std::all_of(from, to, [](char c) { return c == ' ' || c == '\t' || isLineBreak(c); });
}

} // namespace

TraceBlockReader::TraceBlockReader(const TraceLayout& layout, const TracePlan& plan,
                                   std::int64_t clockBase_us)
    : m_plan(plan),
      m_clockBase_us(clockBase_us),
      m_separator(layout.separator),
      m_decimalPoint(layout.decimalComma ? ',' : '.'),
      m_lineEnd(layout.lineEnd)
{
    m_endsCell[static_cast<unsigned char>(m_separator)] = true;
    m_endsCell[static_cast<unsigned char>(m_lineEnd)] = true;
    m_endsCell['\r'] = true;
    m_columns.resize(plan.columns.size());
}

void TraceBlockReader::pointAt(TraceBlock& block)
{
    std::size_t channel = 0;
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        Column& column = m_columns[i];
        column.use = m_plan.columns[i].use;
        column.isNumber = column.use == CellUse::number || column.use == CellUse::seconds;
        if (column.use == CellUse::number) {
            column.column = &block.channels[channel];
            column.bad = &block.bad[channel++];
        } else if (i == m_plan.time) {
            column.column = &block.time;
        } else {
            continue;
        }
        column.column->scaled.resize(m_capacity);
        column.out = column.column->scaled.data();
    }
}

void TraceBlockReader::prepare(TraceBlock& block)
{
    block.channels.resize(static_cast<std::size_t>(
        std::count_if(m_plan.columns.begin(), m_plan.columns.end(),
                      [](const ColumnPlan& plan) { return plan.use == CellUse::number; })));
    block.bad.assign(block.channels.size(), 0);
    block.marks.clear();
    block.rows = 0;
    block.lines = block.short_rows = block.long_rows = block.bad_time_line = 0;
    block.utc_offset_min.reset();
    m_capacity = std::max(kFirstCapacity, static_cast<std::uint32_t>(block.time.scaled.size()));
    pointAt(block);
    for (Column& column : m_columns) {
        column.decimals = -1;
        if (column.column) {
            column.column->gaps.clear();
            column.column->odd.clear();
        }
    }
}

void TraceBlockReader::grow(TraceBlock& block)
{
    m_capacity += m_capacity / 2;
    pointAt(block);
}

void TraceBlockReader::read(std::string_view text, bool quotes, TraceBlock& block)
{
    prepare(block);
    m_quotes = quotes;
    const char* at = text.data();
    m_end = at + text.size();
    while (at < m_end) {
        if (*at == m_lineEnd) {
            ++at;
        } else if (*at == '\r' && at[1] == '\n') {
            at += 2;
        } else if (*at == '#') {
            at = skipLine(at);
        } else {
            if (block.rows == m_capacity)
                grow(block);
            at = readRow(at, block);
            continue; // it counts its own lines
        }
        ++block.lines;
    }
    for (Column& column : m_columns)
        if (column.column)
            column.column->decimals = std::max(column.decimals, 0);
    finishTime(block);
}

const char* TraceBlockReader::skipLine(const char* at) const
{
    // The byte behind the block is a line end, so there is one to find.
    const auto* end = static_cast<const char*>(
        std::memchr(at, m_lineEnd, static_cast<std::size_t>(m_end - at) + 1));
    return std::min(end + 1, m_end);
}

/// Goes past what is left of a line.
/// @param ended  its last cell was met
const char* TraceBlockReader::endRow(const char* at, bool ended, TraceBlock& block)
{
    if (ended)
        return std::min(at + (*at == '\r' && at[1] == '\n' ? 2 : 1), m_end);
    // A separator at the end of the line is a habit; more cells are a fault.
    block.long_rows += *at != m_lineEnd && *at != '\r';
    return skipLine(at);
}

void TraceBlockReader::leaveOut(std::uint32_t row, std::size_t fromColumn)
{
    for (std::size_t i = fromColumn; i < m_columns.size(); ++i)
        if (m_columns[i].column) {
            m_columns[i].out[row] = 0;
            m_columns[i].column->gaps.push_back(row);
        }
}

void TraceBlockReader::takeClock(Column& time, TraceBlock& block)
{
    const std::uint32_t row = block.rows;
    if (m_rowClock && (!m_plan.date || m_rowDate_us)) {
        time.out[row] = m_rowClock->us + m_rowDate_us.value_or(0) - m_clockBase_us;
        if (!block.utc_offset_min)
            block.utc_offset_min = m_rowClock->utc_offset_min;
    } else if (time.column->gaps.empty() || time.column->gaps.back() != row) {
        time.out[row] = 0;
        time.column->gaps.push_back(row);
    }
}

/// A line of blanks is no row.
void TraceBlockReader::takeBackRow(TraceBlock& block)
{
    for (Column& column : m_columns)
        if (column.column && !column.column->gaps.empty() &&
            column.column->gaps.back() == block.rows)
            column.column->gaps.pop_back();
    while (!block.marks.empty() && block.marks.back().first == block.rows)
        block.marks.pop_back();
}

/// The fast way over cells that are plain numbers: digits are gathered as an integer.
/// @param i  the column to begin with; afterwards the one that needs another way, or the end
/// @param ended  set where the line's end was met
const char* TraceBlockReader::readPlainNumbers(const char* at, std::size_t& i, std::uint32_t row,
                                               bool& ended)
{
    const char separator = m_separator;
    const char point = m_decimalPoint == separator ? '\0' : m_decimalPoint;
    const char lineEnd = m_lineEnd;
    Column* column = m_columns.data() + i;
    Column* const last = m_columns.data() + m_columns.size();
    for (; column != last && column->isNumber; ++column) {
        const char* s = at;
        while (*s == ' ')
            ++s;
        const bool negative = *s == '-';
        s += negative;
        const char* first = s;
        std::uint64_t integer = 0;
        unsigned digit = 0;
        while ((digit = digitAt(s)) < 10) {
            integer = integer * 10 + digit;
            ++s;
        }
        std::ptrdiff_t decimals = 0;
        if (*s == point) {
            ++first; // the point is no digit
            const char* const fraction = ++s;
            while ((digit = digitAt(s)) < 10) {
                integer = integer * 10 + digit;
                ++s;
            }
            decimals = s - fraction;
        }
        const std::ptrdiff_t digits = s - first;
        const bool endsLine = *s == lineEnd || *s == '\r';
        if (!(*s == separator || endsLine) || digits < 1 || digits > kSafeDigits ||
            (negative && integer == 0)) [[unlikely]]
            break;
        const auto magnitude = static_cast<std::int64_t>(integer);
        store(*column, row, negative ? -magnitude : magnitude, static_cast<int>(decimals));
        at = s + !endsLine;
        if (endsLine) {
            ended = true;
            ++column;
            break;
        }
    }
    i = static_cast<std::size_t>(column - m_columns.data());
    return at;
}

/// Reads the cells of a line. @return  how many columns it had cells for
std::size_t TraceBlockReader::readCells(const char*& at, TraceBlock& block, bool& ended)
{
    std::string_view text;
    std::size_t i = 0;
    while (i < m_columns.size() && !ended) {
        at = readPlainNumbers(at, i, block.rows, ended);
        if (ended || i == m_columns.size())
            break;
        Column& column = m_columns[i++];
        switch (column.use) {
        case CellUse::number:
        case CellUse::seconds: at = readOtherNumber(at, column, block.rows); break;
        case CellUse::clock: at = readClock(at, false); break;
        case CellUse::clockDate: at = readClock(at, true); break;
        case CellUse::mark: at = readMark(at, block); break;
        case CellUse::leftOut: at = cellText(at, text); break;
        }
        ended = *at != m_separator;
        at += !ended;
    }
    return i;
}

const char* TraceBlockReader::readRow(const char* at, TraceBlock& block)
{
    const char* const start = at;
    const std::uint32_t row = block.rows;
    bool ended = false;
    m_rowClock.reset();
    m_rowDate_us.reset();
    const std::size_t cells = readCells(at, block, ended);
    if (cells < m_columns.size()) [[unlikely]]
        leaveOut(row, cells);
    at = endRow(at, ended, block);

    Column& time = m_columns[m_plan.time];
    if (time.use == CellUse::clock)
        takeClock(time, block);
    const bool timeless = !time.column->gaps.empty() && time.column->gaps.back() == row;
    if (timeless && isBlankLine(start, at, cells)) {
        takeBackRow(block);
    } else {
        if (timeless && block.bad_time_line == 0) {
            block.bad_time_line = block.lines + 1;
            block.bad_time.assign(start, std::find_if(start, at, isLineBreak));
            block.bad_time.resize(std::min<std::size_t>(block.bad_time.size(), 60));
        }
        block.short_rows += cells < m_columns.size();
        ++block.rows;
    }
    block.lines += m_quotes ? std::max<std::int64_t>(std::count(start, at, m_lineEnd), 1) : 1;
    return at;
}

/// Turns the cells of time into seconds.
void TraceBlockReader::finishTime(TraceBlock& block)
{
    const Column& column = m_columns[m_plan.time];
    ScaledColumn& time = block.time;
    if (column.use == CellUse::clock) {
        time.decimals = 6;
        return;
    }
    const double divisor = kPowersOfTen[static_cast<std::size_t>(time.decimals)];
    const double unit =
        m_plan.timeFactor / kPowersOfTen[static_cast<std::size_t>(m_plan.timeDecimals)];
    for (auto& [row, value] : time.odd)
        value *= unit;
    if (m_plan.timeFactor == 1.0 && time.decimals + m_plan.timeDecimals <= kMaxDecimals) {
        time.decimals += m_plan.timeDecimals;
        return;
    }
    for (std::uint32_t row = 0; row < block.rows; ++row) {
        const double us = static_cast<double>(time.scaled[row]) / divisor * unit * 1e6;
        const double limit = static_cast<double>(kMaxScaled);
        time.scaled[row] = std::llround(std::clamp(us, -limit, limit));
    }
    time.decimals = 6;
}

} // namespace bothways::storage
