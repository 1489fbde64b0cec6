// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// How a recording in CSV is laid out, found from its first bytes.
namespace bothways::storage {

/// More columns than any logger has: a file with more was not written by one.
inline constexpr std::size_t kMaxTraceColumns = 4096;

struct TraceLayout {
    char separator = ',';
    bool decimalComma = false;
    char lineEnd = '\n';        ///< '\r' in files of old
    std::size_t dataOffset = 0; ///< byte where the first data row begins
    std::int64_t headerLine = 1;
    std::int64_t dataLine = 2;       ///< line of that byte
    std::vector<std::string> header; ///< trimmed, no two alike, none empty
    std::vector<bool> nameless;      ///< a column each: its header cell is empty
    std::vector<std::string> units;  ///< a column each: from brackets, a line of units, or empty
    std::vector<std::vector<std::string>> rows; ///< the first data rows, trimmed
    std::vector<std::int64_t> rowLines;
    /// Stands for the header in the table of mappings: 16 hexadecimal digits.
    std::string headerKey;
};

/// @param head  the first bytes of the file, up to kTraceHeadSize; @param whole  they are all of it
[[nodiscard]] core::Result<TraceLayout> layoutOf(std::string_view head, bool whole,
                                                 std::string_view name);
inline constexpr std::size_t kTraceHeadSize = std::size_t{1} << 20;

} // namespace bothways::storage
