// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/trace_plan.h"

#include "storage/loggers/trace_names.h"

#include <fast_float/fast_float.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace bothways::storage {
namespace {

using core::Error;

/// Finds the columns of time and the channels, by names and by a mapping.
class Planner {
public:
    Planner(const TraceLayout& layout, std::string_view name) : m_layout(layout), m_name(name)
    {
        m_plan.columns.resize(layout.header.size());
    }

    core::Result<TracePlan> plan(const std::vector<ChannelMapping>& mapping)
    {
        std::set<std::string> channels;
        for (std::size_t i = 0; i < m_layout.header.size(); ++i) {
            nameColumn(i, mappingOf(mapping, m_layout.header[i]));
            ColumnPlan& column = m_plan.columns[i];
            if (column.use == CellUse::number && !channels.insert(column.channel).second)
                return faultAt(m_name, m_layout.headerLine,
                               core::message("two columns for the channel '{}'"_t, column.channel));
        }
        if (const auto fault = chooseTime())
            return *fault;
        return std::move(m_plan);
    }

private:
    void nameColumn(std::size_t i, const ChannelMapping* mapping)
    {
        const std::string& header = m_layout.header[i];
        ColumnPlan& column = m_plan.columns[i];
        column.unit = m_layout.units[i];
        const std::string target = mapping ? mapping->channel : header;
        TimeName time = timeName(target, mapping ? std::string() : column.unit);
        if (mapping) {
            column.factor = mapping->factor;
            column.offset = mapping->offset;
            if (target.empty())
                return;
        }
        if (time != TimeName::none) {
            m_times.push_back({i, time, mapping != nullptr});
            return;
        }
        const std::string plain = plainName(target);
        if (plain == "mark") {
            column.use = CellUse::mark;
            return;
        }
        column.use = CellUse::number;
        const std::string_view known = channelUnit(plain);
        column.channel = known.empty() ? target : plain;
        if (!known.empty())
            column.unit = known;
        else if (mapping && (mapping->factor != 1.0 || mapping->offset != 0.0))
            column.unit.clear();
    }

    std::string_view sample(std::size_t row, std::size_t column) const
    {
        return column < m_layout.rows[row].size() ? m_layout.rows[row][column] : std::string_view();
    }

    /// The first cell of a column that is not empty, and its row.
    std::pair<std::string_view, std::size_t> firstCell(std::size_t column) const
    {
        for (std::size_t row = 0; row < m_layout.rows.size(); ++row)
            if (!sample(row, column).empty())
                return {sample(row, column), row};
        return {{}, 0};
    }

    struct TimeColumn {
        std::size_t column;
        TimeName name;
        bool mapped;
    };

    std::optional<Error> chooseTime();
    std::optional<Error> chooseSeconds(const TimeColumn& time);
    std::optional<Error> chooseClock(const TimeColumn& time);
    void joinDate();
    void noteClockBesideSeconds();

    const TraceLayout& m_layout;
    std::string_view m_name;
    TracePlan m_plan;
    std::vector<TimeColumn> m_times;
};

std::optional<Error> Planner::chooseTime()
{
    // A mapping outranks names; seconds outrank clocks, which are often cut to whole seconds.
    const auto rank = [](const TimeColumn& time) {
        return (time.mapped ? 0 : 10) + (time.name == TimeName::date    ? 5
                                         : time.name == TimeName::clock ? 1
                                                                        : 0);
    };
    const auto best = std::min_element(
        m_times.begin(), m_times.end(),
        [&](const TimeColumn& a, const TimeColumn& b) { return rank(a) < rank(b); });
    if (best == m_times.end()) {
        std::string names;
        for (std::size_t i = 0; i < std::min<std::size_t>(m_layout.header.size(), 6); ++i)
            names += fmt::format("{}'{}'", i > 0 ? ", " : "", m_layout.header[i]);
        if (m_layout.header.size() > 6)
            names += ", ...";
        return faultAt(m_name, m_layout.headerLine,
                       core::message("no column of time among {}; expected 'time_s' (seconds) or "
                                     "'time' (date and time), or a mapping that names it"_t,
                                     names));
    }
    m_plan.time = best->column;
    const auto [cell, row] = firstCell(best->column);
    const bool numeric = isNumber(cell, m_layout.decimalComma);
    const auto form = clockFormOf(cell);
    if (best->name == TimeName::date && form != ClockForm::dateTime)
        return faultAt(m_name, m_layout.headerLine,
                       "a column of dates and none of the time; expected 'time' beside 'date'"_t);
    const bool clock = best->name == TimeName::clock || best->name == TimeName::date;
    if (clock && form && !(numeric && form != ClockForm::epoch)) {
        m_plan.clockForm = *form;
        m_plan.columns[m_plan.time].use = CellUse::clock;
        if (form == ClockForm::timeOfDay)
            joinDate();
        return std::nullopt;
    }
    if (!numeric)
        return faultAt(
            m_name, m_layout.rowLines.empty() ? m_layout.dataLine : m_layout.rowLines[row],
            core::message("column '{}': '{}' is no time; expected seconds like 12.5, or a date "
                          "and time like 2026-05-09T05:40:00"_t,
                          m_layout.header[m_plan.time], cell));
    m_plan.columns[m_plan.time].use = CellUse::seconds;
    const double factor = m_plan.columns[m_plan.time].factor;
    if (best->name == TimeName::milliseconds || factor == 0.001)
        m_plan.timeDecimals = 3;
    else if (best->name == TimeName::microseconds || factor == 0.000001)
        m_plan.timeDecimals = 6;
    else
        m_plan.timeFactor = factor;
    noteClockBesideSeconds();
    return std::nullopt;
}

void Planner::joinDate()
{
    for (const auto& time : m_times) {
        const auto form = clockFormOf(firstCell(time.column).first);
        if (time.column != m_plan.time && time.name == TimeName::date && form == ClockForm::date) {
            m_plan.date = time.column;
            m_plan.columns[time.column].use = CellUse::clockDate;
            return;
        }
    }
}

/// Where the first row has a date and time as well, that dates the whole recording.
void Planner::noteClockBesideSeconds()
{
    ClockParser parser;
    std::string seconds(m_layout.rows.empty() ? std::string_view() : sample(0, m_plan.time));
    std::replace(seconds.begin(), seconds.end(), ',', '.');
    double first = 0.0;
    if (fast_float::from_chars(seconds.data(), seconds.data() + seconds.size(), first).ec !=
        std::errc())
        return;
    first *= m_plan.timeFactor;
    for (int decimals = m_plan.timeDecimals; decimals > 0; --decimals)
        first /= 10.0;
    for (const auto& time : m_times) {
        if (time.column == m_plan.time || !(std::abs(first) < 1e10))
            continue;
        for (const ClockForm form : {ClockForm::dateTime, ClockForm::epoch})
            if (const auto at = parser.parse(sample(0, time.column), form)) {
                m_plan.zero = core::Instant{at->us - std::llround(first * 1e6), at->utc_offset_min};
                return;
            }
    }
}

} // namespace

core::Result<TracePlan> planColumns(const TraceLayout& layout,
                                    const std::vector<ChannelMapping>& mapping,
                                    std::string_view name)
{
    auto plan = Planner(layout, name).plan(mapping);
    if (!plan)
        return plan;
    const bool any =
        std::any_of(plan.value().columns.begin(), plan.value().columns.end(),
                    [](const ColumnPlan& column) { return column.use == CellUse::number; });
    if (!any)
        return faultAt(name, layout.headerLine,
                       "no channel beside the time; expected one at least"_t);
    return plan;
}

} // namespace bothways::storage
