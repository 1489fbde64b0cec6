// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/change_words.h"

#include "core/recording/trace_consumption.h"
#include "core/study/clock.h"
#include "storage/sheet/run_columns.h"
#include "storage/sheet/run_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace bothways::storage {
namespace {

std::string wordsOf(const core::Consumption& consumption)
{
    return fmt::format("{:.{}f} {}", consumption.value, core::shownDecimals(consumption),
                       core::unitName(consumption.unit));
}

/// The cells of a run as a sheet would have them, by column.
std::vector<std::pair<std::string, std::string>> cellsOf(const core::Run& run)
{
    std::vector<std::pair<std::string, std::string>> cells = {
        {"run", std::to_string(run.number)},
        {"configuration", run.configuration},
        {"direction", run.direction},
        {"start", core::formatDateTime(run.start)},
        {"consumption", run.consumption ? wordsOf(*run.consumption) +
                                              (run.consumption->from_trace ? " from trace" : "")
                                        : std::string()},
        {"status", run.counted() ? "counted" : "discarded"},
        {"reason", run.discard ? run.discard->reason : ""},
        {"evidence", run.discard ? run.discard->evidence : ""},
        {"pair", run.pair_mark},
        {"marks", formatMarks(run.marks)}};
    for (const NumberColumn& column : numberColumns())
        if (column.factor == 1.0)
            cells.emplace_back(column.name,
                               run.*column.field ? formatNumber(*(run.*column.field)) : "");
    for (const TextColumn& column : textColumns())
        cells.emplace_back(column.name, run.*column.field);
    std::string others;
    for (const auto& [name, on_s] : run.accessory_on_s)
        others += fmt::format("{}_on_s {} ", name, formatNumber(on_s));
    for (const auto& [name, value] : run.extra)
        others += fmt::format("{} {} ", name, value);
    cells.emplace_back("other columns", others);
    return cells;
}

} // namespace

std::string numbersOf(const std::vector<core::Run*>& runs)
{
    std::string text = runs.size() == 1 ? "run" : "runs";
    for (std::size_t i = 0; i < runs.size(); ++i)
        text += fmt::format("{} {}", i == 0 ? "" : ",", runs[i]->number);
    return text;
}

std::string factsOf(const core::Run& run)
{
    std::string text = fmt::format("run {}: {} {} {}", run.number, run.configuration, run.direction,
                                   core::formatDateTime(run.start));
    if (run.consumption)
        text += ", " + wordsOf(*run.consumption);
    return text;
}

std::string differences(const core::Run& before, const core::Run& after)
{
    std::string text = fmt::format("run {}:", before.number);
    const auto was = cellsOf(before);
    const auto is = cellsOf(after);
    for (std::size_t i = 0; i < was.size(); ++i)
        if (was[i].second != is[i].second)
            text += fmt::format("{} {} {} -> {}", text.back() == ':' ? "" : ",", was[i].first,
                                inQuotes(was[i].second), inQuotes(is[i].second));
    return text;
}

std::string differences(const core::StudyProperties& before, const core::StudyProperties& after)
{
    std::string text;
    const auto was = core::propertiesAsText(before);
    const auto is = core::propertiesAsText(after);
    const auto valueIn = [](const auto& texts, const std::string& name) {
        const auto at = std::find_if(texts.begin(), texts.end(),
                                     [&](const auto& t) { return t.first == name; });
        return at == texts.end() ? std::string() : at->second;
    };
    const auto add = [&text](std::string_view name, const std::string& value) {
        text += fmt::format("{}{}={}", text.empty() ? "" : ", ", name, inQuotes(value));
    };
    for (const auto& [name, value] : is)
        if (valueIn(was, name) != value)
            add(name, value);
    for (const auto& [name, value] : was)
        if (valueIn(is, name).empty() && !value.empty())
            add(name, {});
    return text;
}

} // namespace bothways::storage
