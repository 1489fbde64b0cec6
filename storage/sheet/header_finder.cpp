// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/header_finder.h"

#include "storage/sheet/run_columns.h"

#include <algorithm>
#include <array>
#include <set>

namespace bothways::storage {
namespace {

constexpr std::size_t kHeaderWithin = 60; // lines in which a header is looked for
constexpr std::array<std::string_view, 3> kNeeded = {"configuration", "direction", "start"};

} // namespace

bool isNeededColumn(std::string_view column)
{
    return std::find(kNeeded.begin(), kNeeded.end(), column) != kNeeded.end();
}

ColumnMeaning givenMeaning(std::string_view header, std::string_view unit,
                           const SheetOptions& options, bool& mapped)
{
    const std::string_view written = csv::trimmedLines(header);
    for (const ColumnMapping& mapping : options.columns)
        if (core::sameWord(mapping.column, written)) {
            mapped = true;
            return mapping.ours.empty() ? ColumnMeaning{} : meaningOf(mapping.ours);
        }
    return meaningOf(written, unit);
}

HeaderScore scoreOf(const Row& row, const SheetOptions& options)
{
    std::set<std::string, std::less<>> known;
    HeaderScore score;
    for (const Cell& cell : row.cells) {
        if (cell.kind != CellKind::text || cell.text.size() > kMostNameBytes)
            continue;
        bool mapped = false;
        const ColumnMeaning meaning = givenMeaning(cell.text, {}, options, mapped);
        if (meaning.mentioned() || mapped)
            known.insert(meaning.known() ? meaning.column : cell.text);
    }
    score.known = known.size();
    score.needed = static_cast<std::size_t>(
        std::count_if(kNeeded.begin(), kNeeded.end(),
                      [&](std::string_view column) { return known.contains(column); }));
    return score;
}

std::optional<std::size_t> findHeader(const Table& table, const SheetOptions& options)
{
    std::optional<std::size_t> best;
    HeaderScore highest;
    for (std::size_t i = 0; i < std::min(table.rows.size(), kHeaderWithin); ++i) {
        const HeaderScore score = scoreOf(table.rows[i], options);
        if (score.enough() && (!best || score > highest)) {
            highest = score;
            best = i;
        }
    }
    return best;
}

} // namespace bothways::storage
