// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/sheet_reader.h"

#include "core/base/utf8.h"
#include "core/study/clock.h"

#include <algorithm>
#include <cmath>

namespace bothways::storage {

using core::Error;
using core::ErrorCode;
using core::message;
using core::Run;

namespace {

constexpr std::int64_t kHour_us = std::int64_t{3600} * 1'000'000;
constexpr std::int64_t kDay_us = 24 * kHour_us;

} // namespace

std::string_view SheetReader::cell(std::string_view column) const
{
    const auto at = m_places.find(column);
    if (at == m_places.end() || at->second >= m_record->fields.size())
        return {};
    return m_record->fields[at->second].text;
}

std::optional<GivenNumber> SheetReader::number(std::string_view column,
                                               const core::Message& expected)
{
    const std::string_view text = csv::trimmed(cell(column));
    if (text.empty())
        return std::nullopt;
    const bool comma = m_sheet.dialect.decimalComma;
    if (const auto given = parseNumber(text, comma))
        return given;
    if (parseNumber(text, !comma))
        fault(column,
              message(comma ? "{} has a decimal point; the other numbers of this sheet have a "
                              "decimal comma"_t
                            : "{} has a decimal comma; the other numbers of this sheet have a "
                              "decimal point"_t,
                      inQuotes(text)));
    else
        fault(column,
              message("{} is not a finite number; expected {}"_t, inQuotes(text), expected));
    return std::nullopt;
}

void SheetReader::readRunNumber(Run& run)
{
    const std::string_view text = csv::trimmed(cell("run"));
    if (text.empty())
        return;
    const auto given = parseNumber(text);
    if (given && given->value >= 1.0 && given->value <= kLargestRunNumber &&
        given->value == static_cast<int>(given->value))
        run.number = static_cast<int>(given->value);
    else
        fault("run", message("{} is no run number; expected a whole number from 1 to {}"_t,
                             inQuotes(text), kLargestRunNumber));
}

void SheetReader::readNumbers(Run& run)
{
    for (const NumberColumn& column : numberColumns()) {
        const auto given = number(column.name, expectedNumber(column));
        if (!given)
            continue;
        if (isPossible(column, given->value))
            run.*column.field = given->value * column.factor;
        else
            fault(column.name,
                  message("{} is impossible; expected {}"_t,
                          inQuotes(csv::trimmed(cell(column.name))), expectedNumber(column)));
    }
    for (const auto& [name, at] : m_places)
        if (const std::string_view accessory = timedAccessoryOf(name); !accessory.empty())
            if (const auto given = number(name, "seconds from the run's start"_t))
                run.accessory_on_s.emplace(accessory, given->value);
}

void SheetReader::readConsumption(Run& run)
{
    if (!m_unit)
        return;
    const std::string_view column = core::unitName(*m_unit);
    const auto given = number(column, "a number above 0"_t);
    if (!given)
        return readControlAlone(run);
    if (given->value > 0.0)
        run.consumption = core::Consumption{given->value, *m_unit, given->decimals, false};
    else
        fault(column, message("{} is not above 0; expected a number above 0"_t,
                              inQuotes(csv::trimmed(cell(column)))));
    const std::string source = canonicalColumn(cell("consumption_source"));
    if (source == "trace" && run.consumption)
        run.consumption->from_trace = true;
    else if (!source.empty() && source != "typed" && source != "trace")
        fault("consumption_source",
              message("{} is unknown; expected 'typed' or 'trace'"_t, inQuotes(source)));
    readGivenConsumption(run);
}

/// The control is in the sheet's unit. Where the run's own consumption comes from its recording,
/// which knows no miles a gallon, it is kept as what that will be: L/100 km, or kWh/100 km.
void SheetReader::readControlAlone(Run& run)
{
    if (!run.control)
        return;
    if (!core::needsDistance(*m_unit) || run.distance_km)
        run.control = core::toLPer100km(*run.control, *m_unit, run.distance_km.value_or(1.0));
    else
        fault("control", message("cannot be told in L/100 km; {} needs a distance"_t,
                                 core::unitName(*m_unit)));
}

/// "31.9 mpg_us": how a run was noted that the sheet's own column has converted.
void SheetReader::readGivenConsumption(Run& run)
{
    const std::string_view text = csv::trimmed(cell("consumption_given"));
    if (text.empty() || !run.consumption)
        return;
    const std::size_t blank = std::min(text.find(' '), text.size());
    const auto value = parseNumber(text.substr(0, blank));
    const auto unit = core::unitFromName(csv::trimmed(text.substr(blank)));
    const bool known = value && value->value > 0.0 && unit &&
                       (!core::needsDistance(*unit) || run.distance_km.value_or(0.0) > 0.0);
    const auto asShown = core::lPer100km(run);
    const double given =
        known ? core::toLPer100km(value->value, *unit, run.distance_km.value_or(1.0)) : 0.0;
    if (!known || !asShown || std::abs(given - *asShown) > 1e-9 * *asShown) {
        fault("consumption_given",
              message("{} does not agree with the consumption; expected the same amount, as "
                      "a number and a unit"_t,
                      inQuotes(text)));
        return;
    }
    run.consumption->value = value->value;
    run.consumption->unit = *unit;
    run.consumption->decimals = value->decimals;
}

void SheetReader::readStatus(Run& run)
{
    const std::string status = canonicalColumn(cell("status"));
    const std::string_view reason = csv::trimmed(cell("reason"));
    if (status == "discarded") {
        run.discard = core::Discard{std::string(reason), std::string(cell("evidence"))};
        return;
    }
    if (!status.empty() && status != "counted") {
        fault("status", message("{} is unknown; expected 'counted' or 'discarded'"_t,
                                inQuotes(cell("status"))));
        run.discard = core::Discard{"other", "-"}; // so that no consumption is missed as well
        return;
    }
    if (!reason.empty())
        fault("reason", message("{} is given for a counted run; expected status "
                                "'discarded', or no reason"_t,
                                inQuotes(reason)));
    if (!csv::trimmed(cell("evidence")).empty())
        fault("evidence", "is given for a counted run; expected status 'discarded', or none"_t);
}

/// A time of day is taken on the day of the line before, or the next after midnight.
void SheetReader::readStart(Run& run)
{
    std::string text(csv::trimmed(cell("start")));
    if (text.empty()) {
        if (has("start"))
            fault("start", "is empty; expected a date and time like 2026-05-09T05:40:00 or a time "
                           "of day like 05:40"_t);
        return;
    }
    if (text.size() >= 4 && text[1] == ':')
        text.insert(0, 1, '0'); // 5:40
    const auto time = core::parseTimeOfDay_us(text);
    const auto moment = core::parseDateTime(text);
    if (!time && !moment) {
        fault("start", message("{} is no start; expected a date and time like "
                               "2026-05-09T05:40:00 or a time of day like 05:40"_t,
                               inQuotes(text)));
        return;
    }
    if (!m_timesOfDay)
        m_timesOfDay = static_cast<bool>(time);
    if (*m_timesOfDay != static_cast<bool>(time)) {
        fault("start",
              message(time ? "{} is a time of day where the lines before have a date and time; "
                             "expected one form throughout"_t
                           : "{} is a date and time where the lines before have a time of day; "
                             "expected one form throughout"_t,
                      inQuotes(text)));
        return;
    }
    if (!time) {
        run.start = moment.value();
        return;
    }
    if (m_lastTime_us && time.value() < *m_lastTime_us) {
        if (*m_lastTime_us - time.value() <= 12 * kHour_us) {
            fault("start", message("{} is earlier than the line before; expected times in "
                                   "driving order"_t,
                                   inQuotes(text)));
            return;
        }
        m_day_us += kDay_us;
    }
    m_lastTime_us = time.value();
    run.start.us = m_day_us + time.value();
}

/// A fault of a column that has no name.
void SheetReader::placeAt(int line, std::size_t column, core::Message message)
{
    core::Place where = placeIn(line);
    where.column_number = static_cast<std::int64_t>(column) + 1;
    m_faults.push_back(
        {line, column, Error{ErrorCode::badInput, std::move(message), std::move(where)}});
}

void SheetReader::readExtras(Run& run)
{
    for (std::size_t i = 0; i < std::min(m_columns.size(), m_record->fields.size()); ++i) {
        const Column& column = m_columns[i];
        const csv::Field& field = m_record->fields[i];
        if (field.text.empty() || isKnownColumn(column.name))
            continue;
        if (column.name.empty())
            placeAt(m_headerLine, i,
                    message("has no name but a value on line {}; expected a name in the header"_t,
                            m_record->line));
        else
            run.extra.emplace_back(column.asWritten, field.text);
    }
}

void SheetReader::readCells(Run& run)
{
    readRunNumber(run);
    run.configuration = cell("configuration");
    run.direction = cell("direction");
    run.pair_mark = cell("pair");
    for (const TextColumn& column : textColumns())
        run.*column.field = cell(column.name);
    if (m_sheet.dialect.decimalComma)
        if (const auto setting = parseNumber(run.setting, true))
            run.setting = formatNumber(setting->value, setting->decimals);
    if (const auto marks = parseMarks(cell("marks"), m_sheet.dialect.decimalComma))
        run.marks = *marks;
    else
        fault("marks", message("{} is no list of marks; expected seconds and a word for each, "
                               "like: 31.2 passing_traffic lorry; 80 gust"_t,
                               inQuotes(cell("marks"))));
    readNumbers(run);
    readConsumption(run);
    readStatus(run);
    readStart(run);
    readExtras(run);
}

/// The column of this sheet that a fault belongs to; empty where the header's faults say it.
std::string SheetReader::placeOf(const RunFault& wrong, const Run& run) const
{
    std::string column = wrong.column;
    if (column == "l_per_100km" && !run.consumption) {
        if (!m_unit)
            return has("trace") ? "trace" : "";
        column = core::unitName(*m_unit);
    }
    if (column == "distance_km" && !has(column))
        return has("distance_mi") ? "distance_mi" : "";
    const bool required = column == "configuration" || column == "direction";
    return required && !has(column) ? "" : column;
}

void SheetReader::readLine(const csv::Record& record)
{
    m_record = &record;
    m_faultyHere.clear();
    takePreparedFaults();
    const std::size_t count = record.fields.size();
    const auto faultIn = [&](std::size_t field, core::Message why) {
        if (field < m_columns.size() && !m_columns[field].name.empty())
            fault(m_columns[field].name, std::move(why));
        else
            placeAt(record.line, field, std::move(why));
    };
    if (record.fault == csv::RecordFault::tooManyFields) {
        faultIn(m_columns.size(),
                message("is beyond the header: more than {} fields, expected at most {}"_t,
                        kMostColumns, m_columns.size()));
        return;
    }
    if (record.fault != csv::RecordFault::none) {
        faultIn(record.faultField, record.fault == csv::RecordFault::quoteNeverCloses
                                       ? "has a quote that never closes; expected a second one"_t
                                       : "has text after the closing quote; expected the next "
                                         "field (a quote within quotes is written twice)"_t);
        return;
    }
    if (count > m_columns.size()) {
        faultIn(m_columns.size(),
                message(m_sheet.dialect.separator == ','
                            ? "is beyond the header: {} fields, expected at most {} (a comma "
                              "within a field needs quotes around it)"_t
                            : "is beyond the header: {} fields, expected at most {}"_t,
                        count, m_columns.size()));
        return;
    }
    for (std::size_t i = 0; i < count; ++i)
        if (!core::isUtf8(record.fields[i].text))
            faultIn(i, "is not UTF-8 text; expected the sheet to be saved as UTF-8"_t);
    Run run;
    run.start.us = kUnknownStart_us;
    readCells(run);
    run = normalised(std::move(run), m_spellings);
    for (RunFault& wrong : ownFaults(run))
        if (const std::string column = placeOf(wrong, run);
            !column.empty() && !m_faultyHere.contains(column))
            fault(column, std::move(wrong.message));
    m_runs.push_back(std::move(run));
    m_lines.push_back(record.line);
}

} // namespace bothways::storage
