// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/clock.h"
#include "storage/bytes/csv.h"
#include "storage/sheet/run_columns.h"
#include "storage/sheet/run_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <set>

namespace bothways::storage {
namespace {

using core::ConsumptionUnit;
using core::Run;
using core::Study;

/// A column of the sheet being written: its name, and what a run has in it (empty: nothing).
struct WrittenColumn {
    std::string name;
    std::function<std::string(const Run&)> cell;
    bool always = false; ///< even where no run has anything in it
};

/// The one unit of all runs; litres where they differ.
ConsumptionUnit unitOf(const Study& study)
{
    std::set<ConsumptionUnit> units;
    for (const Run& run : study.runs)
        if (run.consumption)
            units.insert(run.consumption->unit);
    return units.size() == 1 ? *units.begin() : ConsumptionUnit::lPer100km;
}

std::string given(const core::Consumption& consumption)
{
    return formatNumber(consumption.value, consumption.decimals);
}

/// Where runs were noted in several units, their common column is converted and a second one has
/// what was noted.
void addConsumption(std::vector<WrittenColumn>& columns, ConsumptionUnit unit)
{
    columns.push_back({std::string(core::unitName(unit)),
                       [unit](const Run& run) -> std::string {
                           if (!run.consumption)
                               return {};
                           if (run.consumption->unit == unit)
                               return given(*run.consumption);
                           return formatNumber(core::lPer100km(run).value_or(0.0));
                       },
                       true});
    columns.push_back({"consumption_given", [unit](const Run& run) -> std::string {
                           if (!run.consumption || run.consumption->unit == unit)
                               return {};
                           return fmt::format("{} {}", given(*run.consumption),
                                              core::unitName(run.consumption->unit));
                       }});
    columns.push_back({"consumption_source", [](const Run& run) -> std::string {
                           return run.consumption && run.consumption->from_trace ? "trace" : "";
                       }});
}

void addDiscard(std::vector<WrittenColumn>& columns)
{
    columns.push_back(
        {"status",
         [](const Run& run) -> std::string { return run.counted() ? "counted" : "discarded"; },
         true});
    columns.push_back({"reason", [](const Run& run) -> std::string {
                           return run.discard ? run.discard->reason : "";
                       }});
    columns.push_back({"evidence", [](const Run& run) -> std::string {
                           return run.discard ? run.discard->evidence : "";
                       }});
}

void addNumber(std::vector<WrittenColumn>& columns, std::string_view name)
{
    for (const NumberColumn& column : numberColumns())
        if (column.name == name)
            columns.push_back({std::string(name), [field = column.field](const Run& run) {
                                   return run.*field ? formatNumber(*(run.*field)) : "";
                               }});
}

void addText(std::vector<WrittenColumn>& columns, std::string_view name, std::string Run::*field,
             bool always = false)
{
    columns.push_back({std::string(name), [field](const Run& run) { return run.*field; }, always});
}

void addTimedAccessories(std::vector<WrittenColumn>& columns, const Study& study)
{
    std::set<std::string> names;
    for (const Run& run : study.runs)
        for (const auto& [name, on_s] : run.accessory_on_s)
            names.insert(name);
    for (const std::string& name : names)
        columns.push_back({name + "_on_s", [name](const Run& run) -> std::string {
                               const auto at = run.accessory_on_s.find(name);
                               return at == run.accessory_on_s.end() ? ""
                                                                     : formatNumber(at->second);
                           }});
}

/// The columns of one's own in an order that agrees with that of every run, where there is one.
std::vector<std::string> extraNames(const Study& study)
{
    std::vector<std::string> names;
    std::set<std::pair<std::string, std::string>> before;
    for (const Run& run : study.runs)
        for (std::size_t i = 0; i < run.extra.size(); ++i) {
            if (std::find(names.begin(), names.end(), run.extra[i].first) == names.end())
                names.push_back(run.extra[i].first);
            if (i > 0)
                before.emplace(run.extra[i - 1].first, run.extra[i].first);
        }
    std::vector<std::string> ordered;
    while (!names.empty()) {
        const auto isFree = [&](const std::string& name) {
            return std::none_of(names.begin(), names.end(), [&](const std::string& other) {
                return before.contains({other, name});
            });
        };
        auto next = std::find_if(names.begin(), names.end(), isFree);
        if (next == names.end())
            next = names.begin(); // runs disagree: the order of first appearance
        ordered.push_back(*next);
        names.erase(next);
    }
    return ordered;
}

void addExtras(std::vector<WrittenColumn>& columns, const Study& study)
{
    for (const std::string& name : extraNames(study))
        columns.push_back({name, [name](const Run& run) -> std::string {
                               for (const auto& [column, value] : run.extra)
                                   if (column == name)
                                       return value;
                               return {};
                           }});
}

std::vector<WrittenColumn> columnsOf(const Study& study)
{
    std::vector<WrittenColumn> columns;
    columns.push_back({"run", [](const Run& run) { return std::to_string(run.number); }, true});
    addText(columns, "configuration", &Run::configuration, true);
    addText(columns, "setting", &Run::setting);
    addText(columns, "direction", &Run::direction, true);
    columns.push_back(
        {"start", [](const Run& run) { return core::formatDateTime(run.start); }, true});
    addNumber(columns, "duration_s");
    addNumber(columns, "distance_km");
    addNumber(columns, "speed_kmh");
    addConsumption(columns, unitOf(study));
    addNumber(columns, "control");
    addDiscard(columns);
    addText(columns, "pair", &Run::pair_mark);
    columns.push_back({"marks", [](const Run& run) { return formatMarks(run.marks); }});
    addNumber(columns, "accessory_w");
    addText(columns, "accessories", &Run::accessories);
    addTimedAccessories(columns, study);
    for (const std::string_view name :
         {"output_w", "rotor_rpm_max", "battery_v_start", "battery_v_end", "wind_ms",
          "wind_from_deg", "temperature_c", "pressure_hpa", "humidity_pct"})
        addNumber(columns, name);
    addText(columns, "trace", &Run::trace);
    addText(columns, "notes", &Run::notes);
    addExtras(columns, study);
    return columns;
}

void appendLine(std::string& text, const std::vector<std::string>& cells)
{
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0)
            text += ',';
        csv::appendField(text, cells[i], i == 0);
    }
    text += '\n';
}

} // namespace

std::string writeRunSheet(const Study& study)
{
    std::vector<std::string> header;
    std::vector<std::vector<std::string>> lines(study.runs.size());
    for (const WrittenColumn& column : columnsOf(study)) {
        std::vector<std::string> cells;
        cells.reserve(study.runs.size());
        for (const Run& run : study.runs)
            cells.push_back(column.cell(run));
        const bool anything = std::any_of(cells.begin(), cells.end(),
                                          [](const std::string& c) { return !c.empty(); });
        if (!anything && !column.always)
            continue;
        header.push_back(column.name);
        for (std::size_t i = 0; i < cells.size(); ++i)
            lines[i].push_back(std::move(cells[i]));
    }
    std::string text;
    appendLine(text, header);
    for (const std::vector<std::string>& line : lines)
        appendLine(text, line);
    return text;
}

} // namespace bothways::storage
