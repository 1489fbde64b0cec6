// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number_text.h"
#include "core/study/study.h"
#include "storage/bytes/csv.h"
#include "storage/bytes/decimal.h"
#include "storage/loggers/trace_block.h"

#include <algorithm>

/// The slow way: cells with quotes, blanks, signs, exponents, many digits, words or nothing.
namespace bothways::storage {
namespace {

/// Ways to write that there is no value; what else is not a number is a bad cell.
bool saysNothing(std::string_view text)
{
    if (!text.empty() && (text.front() == '-' || text.front() == '+') && text.size() > 1)
        text.remove_prefix(1);
    for (const std::string_view word :
         {"", "-", "--", "na", "n/a", "nan", "#n/a", "null", "none", "nil", "inf", "infinity"})
        if (core::sameWord(text, word))
            return true;
    return false;
}

/// Digits with at most one point: the integer and the digits after the point. Nothing for other
/// forms, for minus zero and for integers past 2^53.
std::optional<std::pair<std::int64_t, int>> plainDecimal(std::string_view text)
{
    const bool negative = text.front() == '-';
    if (negative || text.front() == '+')
        text.remove_prefix(1);
    std::int64_t integer = 0;
    int decimals = -1;
    int digits = 0;
    for (const char c : text) {
        if (c == '.' && decimals < 0) {
            decimals = 0;
            continue;
        }
        if (c < '0' || c > '9' || integer > kMaxScaled / 10)
            return std::nullopt;
        integer = integer * 10 + (c - '0');
        ++digits;
        decimals += decimals >= 0;
    }
    if (digits == 0 || integer > kMaxScaled || decimals > kMaxDecimals ||
        (negative && integer == 0))
        return std::nullopt;
    return std::pair(negative ? -integer : integer, std::max(decimals, 0));
}

} // namespace

void TraceBlockReader::storeOtherDecimals(Column& column, std::uint32_t row, std::int64_t integer,
                                          int decimals)
{
    if (column.decimals < 0) { // the first of the block
        std::fill(column.out, column.out + row, 0);
        column.decimals = decimals;
        column.out[row] = integer;
        return;
    }
    if (decimals < column.decimals) {
        if (const auto scaled = withMoreDecimals(integer, column.decimals - decimals)) {
            column.out[row] = *scaled;
            return;
        }
    } else {
        const int more = decimals - column.decimals;
        bool fits = true;
        for (std::uint32_t i = 0; i < row && fits; ++i)
            fits = withMoreDecimals(column.out[i], more).has_value();
        if (fits) {
            for (std::uint32_t i = 0; i < row; ++i)
                column.out[i] *= kIntegerPowersOfTen[static_cast<std::size_t>(more)];
            column.decimals = decimals;
            column.out[row] = integer;
            return;
        }
    }
    column.out[row] = 0;
    column.column->odd.emplace_back(row, static_cast<double>(integer) /
                                             kPowersOfTen[static_cast<std::size_t>(decimals)]);
}

/// The text of a cell without blanks around it, or what its quotes hold.
/// @return  the separator or line end after it
const char* TraceBlockReader::cellText(const char* at, std::string_view& text)
{
    const char* s = at;
    while (*s == ' ' || (*s == '\t' && m_separator != '\t'))
        ++s;
    if (*s == '"') {
        m_quoted.clear();
        for (++s; s < m_end; ++s) {
            if (*s == '"' && *++s != '"')
                break;
            m_quoted += *s;
        }
        text = csv::trimmed(m_quoted);
        while (s < m_end && !m_endsCell[static_cast<unsigned char>(*s)])
            ++s;
        return std::min(s, m_end);
    }
    const char* const first = s;
    while (s < m_end && !(*s == m_separator || *s == m_lineEnd || (*s == '\r' && s[1] == '\n')))
        ++s;
    text = csv::trimmed({first, static_cast<std::size_t>(s - first)});
    return s;
}

const char* TraceBlockReader::readOtherNumber(const char* at, Column& column, std::uint32_t row)
{
    std::string_view text;
    at = cellText(at, text);
    takeNumberText(text, column, row);
    return at;
}

void TraceBlockReader::takeNumberText(std::string_view text, Column& column, std::uint32_t row)
{
    column.out[row] = 0;
    if (!text.empty() && m_decimalPoint != '.') {
        m_number = text;
        std::replace(m_number.begin(), m_number.end(), m_decimalPoint, '.');
        text = m_number;
    }
    if (!text.empty()) {
        if (const auto decimal = plainDecimal(text)) {
            store(column, row, decimal->first, decimal->second);
            return;
        }
        const std::string_view digits = text.front() == '+' ? text.substr(1) : text;
        if (const auto value = core::finiteNumber(digits)) {
            column.column->odd.emplace_back(row, *value);
            return;
        }
    }
    column.column->gaps.push_back(row);
    if (column.bad && !saysNothing(text))
        ++*column.bad;
}

const char* TraceBlockReader::readClock(const char* at, bool date)
{
    std::string_view text;
    at = cellText(at, text);
    if (!date) {
        m_rowClock = m_clock.parse(text, m_plan.clockForm);
    } else if (const auto day = m_dateClock.parse(text, ClockForm::date)) {
        m_rowDate_us = day->us;
    }
    return at;
}

const char* TraceBlockReader::readMark(const char* at, TraceBlock& block)
{
    std::string_view text;
    at = cellText(at, text);
    if (!text.empty() && text != "0")
        block.marks.emplace_back(block.rows, std::string(text));
    return at;
}

} // namespace bothways::storage
