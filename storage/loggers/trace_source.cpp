// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/trace_source.h"

#include "storage/bytes/csv.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <system_error>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace bothways::storage {
namespace {

using core::Error;
using core::ErrorCode;

constexpr std::uint64_t kFewestBytesRead = std::uint64_t{1} << 16;
constexpr std::size_t kBehind = 64; ///< bytes behind a block that may be looked at

Error unreadable(const std::filesystem::path& file, const core::Message& why)
{
    return Error{ErrorCode::badInput,
                 core::message("{}; expected a recording in CSV, GPX or NMEA 0183"_t, why),
                 file.string()};
}

core::Message cannotBeRead(int number)
{
    return core::message("cannot be read: {}"_t, core::systemProblem(number));
}

/// Digits after the decimal point of the last cell; -1 where it is no plain number.
int decimalsOfLastCell(const csv::Record& record, char point)
{
    if (record.fields.empty())
        return -1;
    const std::string_view cell = record.fields.back().text;
    const std::size_t at = cell.find(point);
    if (cell.empty() || cell.find_first_not_of("0123456789-+.,") != std::string_view::npos)
        return -1;
    return at == std::string_view::npos ? 0 : static_cast<int>(cell.size() - at - 1);
}

} // namespace

core::Result<TraceSource> TraceSource::open(const std::filesystem::path& file)
{
    TraceSource source;
    // Without O_NONBLOCK a pipe that nobody writes to would be waited for.
    source.m_file = ::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
    if (source.m_file < 0)
        return unreadable(file, errno == ENOENT ? core::Message("there is no such file"_t)
                                                : cannotBeRead(errno));
    struct stat status {};
    if (::fstat(source.m_file, &status) != 0)
        return unreadable(file, cannotBeRead(errno));
    if (S_ISDIR(status.st_mode))
        return unreadable(file, "is a directory"_t);
    if (!S_ISREG(status.st_mode))
        return unreadable(file, "is a pipe, a socket or a device"_t);
    source.m_size = static_cast<std::uint64_t>(std::max<off_t>(status.st_size, 0));
    ::posix_fadvise(source.m_file, 0, 0, POSIX_FADV_SEQUENTIAL);
    source.m_head.resize(std::min<std::uint64_t>(source.m_size + 1, kTraceHeadSize));
    std::size_t have = 0;
    while (have < source.m_head.size()) {
        const ssize_t got =
            ::read(source.m_file, source.m_head.data() + have, source.m_head.size() - have);
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0)
            return unreadable(file, cannotBeRead(errno));
        source.m_headIsWhole = got == 0;
        if (got == 0)
            break;
        have += static_cast<std::size_t>(got);
    }
    source.m_head.resize(have);
    return source;
}

TraceSource::TraceSource(TraceSource&& other) noexcept
    : m_file(std::exchange(other.m_file, -1)),
      m_size(other.m_size),
      m_head(std::move(other.m_head)),
      m_headIsWhole(other.m_headIsWhole),
      m_blockSize(other.m_blockSize),
      m_separator(other.m_separator),
      m_lineEnd(other.m_lineEnd),
      m_decimalPoint(other.m_decimalPoint),
      m_carry(std::move(other.m_carry)),
      m_lastLine(std::move(other.m_lastLine)),
      m_atEnd(other.m_atEnd),
      m_halfLastLine(other.m_halfLastLine),
      m_consumed(other.m_consumed)
{
}

TraceSource::~TraceSource()
{
    if (m_file >= 0)
        ::close(m_file);
}

void TraceSource::start(const TraceLayout& layout, std::size_t blockSize)
{
    m_separator = layout.separator;
    m_lineEnd = layout.lineEnd;
    m_decimalPoint = layout.decimalComma ? ',' : '.';
    // A small file needs no large blocks. (One that grows meanwhile gets more of them.)
    const std::uint64_t rest = std::max<std::uint64_t>(m_size, m_head.size()) - m_consumed;
    m_blockSize = std::min<std::uint64_t>(blockSize, std::max(rest + 1, kFewestBytesRead));
    m_carry = m_head.substr(layout.dataOffset); // what was read already
    m_consumed = layout.dataOffset;
    m_atEnd = m_headIsWhole;
    m_head.clear();
    m_head.shrink_to_fit();
}

core::Result<std::size_t> TraceSource::fill(TextBlock& block, std::size_t have)
{
    while (have < m_blockSize && !m_atEnd) {
        const ssize_t got = ::read(m_file, block.bytes.data() + have, m_blockSize - have);
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0)
            return Error{ErrorCode::badInput, cannotBeRead(errno), {}};
        m_atEnd = got == 0;
        have += static_cast<std::size_t>(got);
    }
    return have;
}

core::Result<std::size_t> TraceSource::readRaw(char* buffer, std::size_t size)
{
    if (m_consumed < m_head.size()) {
        const std::size_t count =
            std::min<std::size_t>(size, m_head.size() - static_cast<std::size_t>(m_consumed));
        std::memcpy(buffer, m_head.data() + m_consumed, count);
        m_consumed += count;
        return count;
    }
    for (;;) {
        const ssize_t got = ::read(m_file, buffer, size);
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0)
            return Error{ErrorCode::badInput, cannotBeRead(errno), {}};
        m_consumed += static_cast<std::size_t>(got);
        return static_cast<std::size_t>(got);
    }
}

/// Size of the whole lines that `text` begins with. A line end within quotes ends none.
std::size_t TraceSource::wholeLines(std::string_view text, bool quotes) const
{
    if (!quotes) {
        const std::size_t end = text.rfind(m_lineEnd);
        return end == std::string_view::npos ? 0 : end + 1;
    }
    enum class At { lineStart, cellStart, cell, quoted };
    At at = At::lineStart;
    std::size_t whole = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (at == At::quoted) {
            if (c == '"' && i + 1 < text.size() && text[i + 1] == '"')
                ++i;
            else if (c == '"')
                at = At::cell;
        } else if (c == m_lineEnd) {
            whole = i + 1;
            at = At::lineStart;
        } else if (at == At::lineStart && c == '#') {
            const std::size_t end = text.find(m_lineEnd, i);
            if (end == std::string_view::npos)
                break;
            i = end - 1;
            at = At::cell;
        } else if (c == m_separator) {
            at = At::cellStart;
        } else if (c == '"' && at != At::cell) {
            at = At::quoted;
        } else if (c != ' ' && (c != '\t' || m_separator == '\t')) {
            at = At::cell;
        }
    }
    return whole;
}

/// A last line without its end may be cut: it has fewer cells than the one before, or fewer
/// decimals in its last cell.
bool TraceSource::isWholeLine(std::string_view previous, std::string_view line) const
{
    if (line.find('\0') != std::string_view::npos)
        return false;
    const auto last = csv::Reader(line, m_separator).next();
    if (!last || last->fault != csv::RecordFault::none)
        return !last; // a comment, or blanks
    const auto before = csv::Reader(previous, m_separator).next();
    if (!before)
        return true;
    return last->fields.size() >= before->fields.size() &&
           decimalsOfLastCell(*last, m_decimalPoint) >= decimalsOfLastCell(*before, m_decimalPoint);
}

/// @param zerosFollow  where the space was set aside, so that the last line lacks its end for sure
core::Result<bool> TraceSource::finish(TextBlock& block, std::size_t have, std::size_t wholeSize,
                                       bool zerosFollow)
{
    const std::string_view text(block.bytes.data(), have);
    const std::size_t before = wholeSize > 1 ? text.rfind(m_lineEnd, wholeSize - 2) : text.npos;
    const std::string_view previous = wholeSize == 0 ? std::string_view(m_lastLine)
                                      : before == text.npos
                                          ? text.substr(0, wholeSize)
                                          : text.substr(before + 1, wholeSize - before - 1);
    const std::string_view tail = text.substr(wholeSize);
    if (tail.find(m_lineEnd) != std::string_view::npos)
        return Error{
            ErrorCode::badInput, "a quote that is never closed; expected a '\"' at its end"_t, {}};
    block.size = wholeSize;
    if (!tail.empty() && !zerosFollow && isWholeLine(previous, tail)) {
        block.size = have + 1;
        block.bytes[have] = m_lineEnd;
    } else if (!tail.empty()) {
        m_halfLastLine = true;
    }
    block.bytes[block.size] = m_lineEnd;
    m_consumed += have;
    m_carry.clear();
    return block.size > 0;
}

core::Result<bool> TraceSource::next(TextBlock& block)
{
    if (m_atEnd && m_carry.empty())
        return false;
    block.bytes.resize(m_blockSize + kBehind);
    std::size_t have = std::min(m_carry.size(), m_blockSize);
    std::memcpy(block.bytes.data(), m_carry.data(), have);
    m_carry.erase(0, have);
    if (m_carry.empty()) {
        const auto filled = fill(block, have);
        if (!filled)
            return filled.error();
        have = filled.value();
    }
    const bool atEnd = m_atEnd && m_carry.empty();
    std::string_view text(block.bytes.data(), have);
    block.quotes = text.find('"') != std::string_view::npos;
    std::size_t whole = wholeLines(text, block.quotes);
    if (atEnd) {
        // Space that a logger had set aside and never filled: zeros.
        while (!text.empty() && text.back() == '\0')
            text.remove_suffix(1);
        return finish(block, text.size(), std::min(whole, text.size()), text.size() < have);
    }
    if (whole == 0) {
        const std::size_t zero = text.find('\0');
        if (zero != std::string_view::npos &&
            text.find_first_not_of('\0', zero) == std::string_view::npos) {
            m_atEnd = true;
            m_carry.clear();
            return finish(block, zero, 0, true);
        }
        return Error{
            ErrorCode::badInput,
            core::message("a line of more than {} KB, or a quote that is never closed; expected a "
                          "recording in CSV"_t,
                          m_blockSize >> 10),
            {}};
    }
    const std::size_t end = whole > 1 ? text.rfind(m_lineEnd, whole - 2) : text.npos;
    m_lastLine = end == text.npos ? text.substr(0, whole) : text.substr(end + 1, whole - end - 1);
    m_carry.insert(0, text.substr(whole));
    m_consumed += whole;
    block.size = whole;
    block.bytes[whole] = m_lineEnd; // its byte is in m_carry
    return true;
}

} // namespace bothways::storage
