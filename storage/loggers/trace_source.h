// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "storage/loggers/trace_layout.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

/// A recording's file, handed out in blocks of whole lines.
namespace bothways::storage {

/// Bytes of whole lines with a line end behind them. Reused: its memory is asked for once.
struct TextBlock {
    std::vector<char> bytes;
    std::size_t size = 0;
    bool quotes = false; ///< whether any quote is in it
    [[nodiscard]] std::string_view text() const { return {bytes.data(), size}; }
};

class TraceSource {
public:
    /// An Error (badInput) for what cannot be read as a file.
    static core::Result<TraceSource> open(const std::filesystem::path& file);
    TraceSource(TraceSource&& other) noexcept;
    TraceSource& operator=(TraceSource&&) = delete;
    ~TraceSource();

    /// The first bytes, up to kTraceHeadSize. To be called before start().
    [[nodiscard]] std::string_view head() const { return m_head; }
    [[nodiscard]] bool headIsWhole() const { return m_headIsWhole; }
    [[nodiscard]] std::uint64_t size() const { return m_size; }

    /// Goes to the first data row. @param blockSize  bytes; a longer line is an Error
    void start(const TraceLayout& layout, std::size_t blockSize);
    /// The next lines. @return  false at the end; an Error (its place is the block's first line,
    /// which the source does not know) where a line does not fit or the file cannot be read
    [[nodiscard]] core::Result<bool> next(TextBlock& block);

    /// Bytes as they come, from the first on. @return  how many; 0 at the end
    [[nodiscard]] core::Result<std::size_t> readRaw(char* buffer, std::size_t size);

    [[nodiscard]] std::uint64_t consumed() const { return m_consumed; }
    /// Whether the last line was half-written and left out.
    [[nodiscard]] bool halfLastLine() const { return m_halfLastLine; }

private:
    TraceSource() = default;
    core::Result<std::size_t> fill(TextBlock& block, std::size_t have);
    core::Result<bool> finish(TextBlock& block, std::size_t have, std::size_t wholeSize,
                              bool zerosFollow);
    std::size_t wholeLines(std::string_view text, bool quotes) const;
    bool isWholeLine(std::string_view previous, std::string_view line) const;

    int m_file = -1;
    std::uint64_t m_size = 0;
    std::string m_head;
    bool m_headIsWhole = false;
    std::size_t m_blockSize = 0;
    char m_separator = ',', m_lineEnd = '\n', m_decimalPoint = '.';
    std::string m_carry;    ///< the beginning of a line
    std::string m_lastLine; ///< the last whole one before the block at hand
    bool m_atEnd = false;
    bool m_halfLastLine = false;
    std::uint64_t m_consumed = 0;
};

} // namespace bothways::storage
