// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/clock.h"
#include "storage/bytes/csv.h"
#include "storage/sheet/run_columns.h"
#include "storage/sheet/run_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <string_view>
#include <unordered_map>

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

/// The one unit of all runs; litres where they differ, or where a control stands alone, which is
/// in litres.
ConsumptionUnit unitOf(const Study& study)
{
    std::set<ConsumptionUnit> units;
    for (const Run& run : study.runs)
        if (run.consumption)
            units.insert(run.consumption->unit);
    const bool controlAlone = std::ranges::any_of(
        study.runs, [](const Run& run) { return run.control && !run.consumption; });
    const bool one =
        units.size() == 1 && (!controlAlone || *units.begin() == ConsumptionUnit::kwhPer100km);
    return one ? *units.begin() : ConsumptionUnit::lPer100km;
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

/// The columns of one's own in an order that agrees with that of every run, where there is one: of
/// those that no other must precede, always the one that appeared first.
std::vector<std::string> extraNames(const Study& study)
{
    std::vector<std::string> names; // as they appear
    std::unordered_map<std::string_view, std::size_t> places;
    std::set<std::pair<std::size_t, std::size_t>> before;
    for (const Run& run : study.runs) {
        std::optional<std::size_t> last;
        for (const auto& [name, value] : run.extra) {
            const auto [at, isNew] = places.emplace(name, names.size());
            if (isNew)
                names.push_back(name);
            if (last)
                before.emplace(*last, at->second);
            last = at->second;
        }
    }
    std::vector<std::vector<std::size_t>> followers(names.size());
    std::vector<std::size_t> waitsFor(names.size());
    for (const auto& [first, second] : before) {
        followers[first].push_back(second);
        ++waitsFor[second];
    }
    std::set<std::size_t> waiting, ready;
    for (std::size_t i = 0; i < names.size(); ++i)
        (waitsFor[i] == 0 ? ready : waiting).insert(i);
    std::vector<std::string> ordered;
    while (!ready.empty() || !waiting.empty()) {
        std::set<std::size_t>& from = ready.empty() ? waiting : ready; // where runs disagree
        const std::size_t next = *from.begin();
        from.erase(from.begin());
        ordered.push_back(names[next]);
        for (const std::size_t follower : followers[next])
            if (--waitsFor[follower] == 0 && waiting.erase(follower) > 0)
                ready.insert(follower);
    }
    return ordered;
}

/// What runs have in columns of their own, found by name without going through them all.
class ExtraCells {
public:
    explicit ExtraCells(const Study& study) : m_first(study.runs.data())
    {
        m_sorted.resize(study.runs.size());
        for (std::size_t i = 0; i < study.runs.size(); ++i) {
            for (const auto& cell : study.runs[i].extra)
                m_sorted[i].push_back(&cell);
            std::stable_sort(m_sorted[i].begin(), m_sorted[i].end(),
                             [](const Cell* a, const Cell* b) { return a->first < b->first; });
        }
    }
    /// @param run  of the study
    [[nodiscard]] std::string at(const Run& run, const std::string& name) const
    {
        const auto& cells = m_sorted[static_cast<std::size_t>(&run - m_first)];
        const auto found = std::lower_bound(
            cells.begin(), cells.end(), name,
            [](const Cell* cell, const std::string& n) { return cell->first < n; });
        return found == cells.end() || (*found)->first != name ? std::string() : (*found)->second;
    }

private:
    using Cell = std::pair<std::string, std::string>;
    const Run* m_first;
    std::vector<std::vector<const Cell*>> m_sorted;
};

void addExtras(std::vector<WrittenColumn>& columns, const Study& study)
{
    const auto cells = std::make_shared<const ExtraCells>(study);
    for (const std::string& name : extraNames(study))
        columns.push_back({name, [name, cells](const Run& run) { return cells->at(run, name); }});
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

void appendLine(std::string& text, const std::vector<std::string>& cells, csv::Form form)
{
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0)
            text += ',';
        const bool isText = form == csv::Form::forSpreadsheet && !parseNumber(cells[i]);
        csv::appendField(text, isText ? csv::guarded(cells[i]) : cells[i], i == 0);
    }
    text += '\n';
}

} // namespace

std::string writeRunSheet(const Study& study, csv::Form form)
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
    appendLine(text, header, form);
    for (const std::vector<std::string>& line : lines)
        appendLine(text, line, form);
    return text;
}

} // namespace bothways::storage
