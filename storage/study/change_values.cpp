// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/change_values.h"

#include "core/recording/trace_consumption.h"
#include "core/study/clock.h"
#include "storage/sheet/run_columns.h"
#include "storage/sheet/run_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace bothways::storage {
namespace {

std::string valueOf(const core::Consumption& consumption)
{
    return fmt::format("{:.{}f}", consumption.value, core::shownDecimals(consumption));
}

/// A cell of the history: a text, or the parts of a consumption.
using Cell = std::pair<std::string, HistoryValue::List>;

Cell consumptionCell(const core::Run& run)
{
    HistoryValue::List parts;
    if (run.consumption)
        parts = {valueOf(*run.consumption), core::unitName(run.consumption->unit)};
    if (run.consumption && run.consumption->from_trace)
        parts.push_back("trace");
    return {"consumption", parts};
}

/// The cells of a run as a sheet would have them, by column.
std::vector<Cell> cellsOf(const core::Run& run)
{
    std::vector<Cell> cells;
    const auto add = [&cells](std::string_view column, const std::string& text) {
        cells.push_back({std::string(column), {text}});
    };
    add("run", std::to_string(run.number));
    add("configuration", run.configuration);
    add("direction", run.direction);
    add("start", core::formatDateTime(run.start));
    cells.push_back(consumptionCell(run));
    add("status", run.counted() ? "counted" : "discarded");
    add("reason", run.discard ? run.discard->reason : "");
    add("evidence", run.discard ? run.discard->evidence : "");
    add("pair", run.pair_mark);
    add("marks", formatMarks(run.marks));
    for (const NumberColumn& column : numberColumns())
        if (column.factor == 1.0)
            add(column.name, run.*column.field ? formatNumber(*(run.*column.field)) : "");
    for (const TextColumn& column : textColumns())
        add(column.name, run.*column.field);
    std::string others;
    for (const auto& [name, on_s] : run.accessory_on_s)
        others += fmt::format("{}_on_s {} ", name, formatNumber(on_s));
    for (const auto& [name, value] : run.extra)
        others += fmt::format("{} {} ", name, value);
    add("other columns", others);
    return cells;
}

bool same(const HistoryValue::List& a, const HistoryValue::List& b)
{
    return std::equal(
        a.begin(), a.end(), b.begin(), b.end(),
        [](const HistoryValue& x, const HistoryValue& y) { return x.text() == y.text(); });
}

/// As long as a message bears; nobody looks up a whole page of notes in the history.
HistoryValue kept(const Cell& cell)
{
    if (cell.second.size() == 1)
        return shownCell(cell.second.front().text());
    return cell.second;
}

} // namespace

HistoryValue::List numbersOf(const std::vector<core::Run*>& runs)
{
    HistoryValue::List numbers;
    for (const core::Run* run : runs)
        numbers.emplace_back(run->number);
    return numbers;
}

HistoryValue factsOf(const core::Run& run)
{
    HistoryValue::List facts = {run.number, run.configuration, run.direction,
                                core::formatDateTime(run.start)};
    if (run.consumption) {
        facts.push_back(valueOf(*run.consumption));
        facts.push_back(core::unitName(run.consumption->unit));
    }
    return facts;
}

HistoryValue differences(const core::Run& before, const core::Run& after)
{
    HistoryValue::List changes = {before.number};
    const auto was = cellsOf(before);
    const auto is = cellsOf(after);
    for (std::size_t i = 0; i < was.size(); ++i)
        if (!same(was[i].second, is[i].second)) {
            changes.push_back(was[i].first);
            changes.push_back(kept(was[i]));
            changes.push_back(kept(is[i]));
        }
    return changes;
}

HistoryValue::List differences(const core::StudyProperties& before,
                               const core::StudyProperties& after)
{
    HistoryValue::List changed;
    const auto was = core::propertiesAsText(before);
    const auto is = core::propertiesAsText(after);
    const auto valueIn = [](const auto& texts, const std::string& name) {
        const auto at = std::find_if(texts.begin(), texts.end(),
                                     [&](const auto& t) { return t.first == name; });
        return at == texts.end() ? std::string() : at->second;
    };
    const auto add = [&changed](const std::string& name, const std::string& value) {
        changed.push_back(HistoryValue::List{name, shownCell(value)});
    };
    for (const auto& [name, value] : is)
        if (valueIn(was, name) != value)
            add(name, value);
    for (const auto& [name, value] : was)
        if (valueIn(is, name).empty() && !value.empty())
            add(name, {});
    return changed;
}

} // namespace bothways::storage
