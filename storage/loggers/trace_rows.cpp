// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/trace_block.h"

#include <cassert>

namespace bothways::storage {
namespace {

void keepRows(ScaledColumn& column, std::uint32_t rows, const std::vector<bool>& keep,
              const std::vector<std::uint32_t>& place)
{
    for (std::uint32_t row = 0; row < rows; ++row)
        if (keep[row])
            column.scaled[place[row]] = column.scaled[row];
    std::size_t kept = 0;
    for (const std::uint32_t row : column.gaps)
        if (keep[row])
            column.gaps[kept++] = place[row];
    column.gaps.resize(kept);
    kept = 0;
    for (const auto& [row, value] : column.odd)
        if (keep[row])
            column.odd[kept++] = {place[row], value};
    column.odd.resize(kept);
}

} // namespace

void keepRows(TraceBlock& block, const std::vector<bool>& keep)
{
    assert(keep.size() == block.rows);
    std::vector<std::uint32_t> place(block.rows);
    std::uint32_t rows = 0;
    for (std::uint32_t row = 0; row < block.rows; ++row) {
        place[row] = rows;
        rows += keep[row];
    }
    keepRows(block.time, block.rows, keep, place);
    for (auto& channel : block.channels)
        keepRows(channel, block.rows, keep, place);
    std::erase_if(block.marks, [&](const auto& mark) { return !keep[mark.first]; });
    for (auto& mark : block.marks)
        mark.first = place[mark.first];
    block.rows = rows;
}

} // namespace bothways::storage
