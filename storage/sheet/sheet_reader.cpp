// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/sheet_reader.h"

#include "core/base/utf8.h"
#include "core/study/clock.h"
#include "storage/sheet/column_names.h"
#include "storage/sheet/known_runs.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace bothways::storage {

using core::Error;
using core::ErrorCode;
using core::Run;

namespace {

constexpr std::size_t kMostFaults = 1000; // that anyone would read
constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

} // namespace

core::Place SheetReader::placeIn(int line) const
{
    core::Place place(m_name);
    place.line = line;
    return place;
}

Error SheetReader::inFile(int line, core::Message message) const
{
    return Error{ErrorCode::badInput, std::move(message), placeIn(line)};
}

void SheetReader::place(int line, std::string_view column, core::Message message)
{
    const auto at = m_places.find(column);
    const std::size_t order = at == m_places.end() ? m_columns.size() : at->second;
    // The column as the user wrote it, where there is one.
    core::Place where = placeIn(line);
    where.column = shownCell(at == m_places.end() ? column : m_columns[order].asWritten);
    m_faults.push_back(
        {line, order, Error{ErrorCode::badInput, std::move(message), std::move(where)}});
    if (m_record && m_record->line == line)
        m_faultyHere.emplace(column);
}

void SheetReader::fault(std::string_view column, core::Message message)
{
    if (m_prepared && m_faultyHere.contains(column))
        return; // what was wrong with the cell is said
    place(m_record->line, column, std::move(message));
}

Result<RunSheet> SheetReader::failure()
{
    std::stable_sort(m_faults.begin(), m_faults.end(), [](const Placed& a, const Placed& b) {
        return std::pair(a.line, a.column) < std::pair(b.line, b.column);
    });
    Error error = std::move(m_faults.front().error);
    for (std::size_t i = 1; i < m_faults.size(); ++i)
        error.others.push_back(std::move(m_faults[i].error));
    return error;
}

std::optional<Error> SheetReader::refuseWhole()
{
    if (m_text.starts_with("\xFF\xFE") || m_text.starts_with("\xFE\xFF"))
        return inFile(1, "is UTF-16 text; expected UTF-8"_t);
    if (m_text.starts_with(kByteOrderMark))
        m_text.remove_prefix(kByteOrderMark.size());
    if (const std::size_t zero = m_text.find('\0'); zero != std::string_view::npos)
        return inFile(1, "is no text (it holds zero bytes); expected a run sheet in CSV form"_t);
    if (const std::size_t first = m_text.find_first_not_of(" \t\r\n");
        first != std::string_view::npos && std::string_view("{[<").find(m_text[first]) < 3)
        return inFile(1, core::message("looks like {}; expected a run sheet in CSV form"_t,
                                       m_text[first] == '<' ? "XML or HTML"_t : "JSON"_t));
    return std::nullopt;
}

/// The one under which most names in the header mean something.
void SheetReader::chooseSeparator()
{
    std::pair<std::size_t, std::size_t> best;
    for (const char separator : {',', ';', '\t'}) {
        const auto header = csv::Reader(m_text, separator, kMostColumns).next();
        if (!header)
            return;
        const auto known =
            std::count_if(header->fields.begin(), header->fields.end(), [](const csv::Field& f) {
                return isKnownColumn(canonicalColumn(f.text));
            });
        const std::pair score(static_cast<std::size_t>(known), header->fields.size());
        if (score > best) {
            best = score;
            m_sheet.dialect.separator = separator;
        }
    }
}

bool SheetReader::has(std::string_view column) const
{
    return m_places.contains(column);
}

void SheetReader::readHeader(const csv::Record& header)
{
    m_headerLine = header.line;
    for (std::size_t i = 0; i < header.fields.size(); ++i) {
        const std::string written(csv::trimmed(header.fields[i].text));
        Column column{canonicalColumn(written), written};
        m_columns.push_back(column);
        if (!column.name.empty() && !m_places.emplace(column.name, i).second)
            place(m_headerLine, column.name, "is there twice; expected one of each name"_t);
    }
}

void SheetReader::requireOneOf(int line, std::initializer_list<std::string_view> names)
{
    std::vector<std::string_view> present;
    std::copy_if(names.begin(), names.end(), std::back_inserter(present),
                 [this](std::string_view name) { return has(name); });
    for (std::size_t i = 1; i < present.size(); ++i)
        place(line, present[i],
              core::message("says the same as '{}'; expected one of the two"_t, present[0]));
}

core::Message SheetReader::missing(std::string_view column) const
{
    if (m_prepared)
        return core::message("is missing; expected a column for it, or to be told which it is: "
                             "--column 'HEADER={}'"_t,
                             column);
    return "is missing; expected it in the header"_t;
}

void SheetReader::checkHeader(int line)
{
    for (const std::string_view required : {"configuration", "direction", "start"})
        if (!has(required))
            place(line, required, missing(required));
    requireOneOf(line, {"distance_km", "distance_mi"});
    requireOneOf(line, {"speed_kmh", "speed_mph"});
    for (const Column& column : m_columns) {
        const auto unit = core::unitFromName(column.name);
        if (unit && !m_unit)
            m_unit = unit;
        else if (unit && unit != m_unit)
            place(line, column.name,
                  core::message("is a second consumption beside '{}'; expected exactly one"_t,
                                core::unitName(*m_unit)));
    }
    if (m_unit && core::needsDistance(*m_unit) && !has("distance_km") && !has("distance_mi"))
        place(line, core::unitName(*m_unit),
              "needs a distance; expected a column distance_km or distance_mi"_t);
    if (!m_unit && !has("trace") && !(m_prepared && m_prepared->consumptionUnclear))
        place(line, "l_per_100km",
              "is missing; expected exactly one of l_per_100km, mpg_us, mpg_imp, km_per_l, "
              "kwh_per_100km, fuel_l, fuel_gal_us"_t);
}

/// Before anything is done with the names: how many there are, and how long.
std::optional<Error> SheetReader::refuseWidth(const csv::Record& header) const
{
    Error error{ErrorCode::badInput, {}, placeIn(header.line)};
    const auto tooLong =
        std::find_if(header.fields.begin(), header.fields.end(), [](const csv::Field& f) {
            return csv::trimmed(f.text).size() > kMostNameBytes;
        });
    if (header.fault == csv::RecordFault::tooManyFields) {
        error.where.column_number = static_cast<std::int64_t>(kMostColumns) + 1;
        error.message =
            core::message("is one column too many; expected at most {}"_t, kMostColumns);
    } else if (tooLong != header.fields.end()) {
        error.where.column_number = tooLong - header.fields.begin() + 1;
        error.message = core::message("has a name of {} bytes; expected at most {}"_t,
                                      csv::trimmed(tooLong->text).size(), kMostNameBytes);
    } else {
        return std::nullopt;
    }
    return error;
}

std::optional<Error> SheetReader::readRecords()
{
    csv::Reader reader(m_text, m_sheet.dialect.separator, kMostColumns);
    const auto header = reader.next();
    if (!header)
        return inFile(1, "is empty; expected a header line with the names of the columns"_t);
    if (auto error = refuseWidth(*header))
        return error;
    if (header->fault != csv::RecordFault::none)
        return inFile(header->line, "has a quote in the header that never closes, or text after "
                                    "one; expected names of columns"_t);
    if (!std::all_of(header->fields.begin(), header->fields.end(),
                     [](const csv::Field& f) { return core::isUtf8(f.text); }))
        return inFile(header->line, "is not UTF-8 text; expected a run sheet saved as UTF-8"_t);
    readHeader(*header);
    if (!has("configuration") && !has("direction") && !has("start"))
        return inFile(header->line, "is no header of a run sheet; expected names of columns like "
                                    "configuration, direction, start, l_per_100km"_t);
    checkHeader(header->line);
    while (auto record = reader.next()) {
        const bool empty = record->fault == csv::RecordFault::none &&
                           std::all_of(record->fields.begin(), record->fields.end(),
                                       [](const csv::Field& f) { return f.text.empty(); });
        if (empty)
            continue;
        if (m_records.size() + m_existing->runs.size() == kMostRuns)
            return inFile(
                record->line,
                core::message("is one run too many; expected at most {} in a study"_t, kMostRuns));
        m_records.push_back(std::move(*record));
    }
    return std::nullopt;
}

/// Numbers are in columns of numbers; settings and words may hold any comma.
void SheetReader::findDecimalComma()
{
    int commas = 0;
    int points = 0;
    const auto count = [&](std::string_view text) {
        const bool comma = text.find(',') != std::string_view::npos;
        const bool point = text.find('.') != std::string_view::npos;
        if (comma && !point && parseNumber(text, true))
            ++commas;
        else if (point && !comma && parseNumber(text))
            ++points;
    };
    std::vector<std::size_t> places;
    for (const auto& [name, at] : m_places) {
        const bool isNumber =
            core::unitFromName(name) || !timedAccessoryOf(name).empty() ||
            std::any_of(numberColumns().begin(), numberColumns().end(),
                        [&name = name](const NumberColumn& c) { return c.name == name; });
        if (isNumber)
            places.push_back(at);
    }
    for (const csv::Record& record : m_records)
        for (const std::size_t at : places)
            if (at < record.fields.size())
                count(record.fields[at].text);
    m_sheet.dialect.decimalComma = commas > points;
}

/// What the sheet itself says comes before what the study does.
bool SheetReader::usesTitleDate() const
{
    return m_options.date.empty() && m_prepared && !m_prepared->titleDate.empty();
}

/// For times of day.
void SheetReader::takeDate()
{
    const std::string& ofStudy = m_existing->properties.date;
    const std::string& date = !m_options.date.empty() ? m_options.date
                              : usesTitleDate()       ? m_prepared->titleDate
                              : !ofStudy.empty()      ? ofStudy
                                                      : m_options.today;
    m_sheet.dateAssumed = m_options.date.empty() && ofStudy.empty() && !usesTitleDate();
    const auto day = core::parseDate_us(date);
    m_dateKnown = static_cast<bool>(day);
    if (day)
        m_day_us = day.value();
}

/// Marks of another sheet may be the same words; these runs are tied among themselves alone.
void SheetReader::renamePairMarks()
{
    std::set<std::string> taken;
    for (const Run& run : m_existing->runs)
        taken.insert(run.pair_mark);
    std::set<std::string> ours;
    for (const Run& run : m_runs)
        ours.insert(run.pair_mark);
    std::map<std::string, std::string> renamed;
    for (const std::string& mark : ours) {
        if (mark.empty() || !taken.contains(mark))
            continue;
        std::string name;
        for (int i = 2; name.empty() || taken.contains(name) || ours.contains(name); ++i)
            name = fmt::format("{}-{}", mark, i);
        taken.insert(name);
        renamed.emplace(mark, name);
    }
    for (Run& run : m_runs)
        if (const auto to = renamed.find(run.pair_mark); to != renamed.end())
            run.pair_mark = to->second;
}

void SheetReader::checkTogether()
{
    renamePairMarks();
    for (RunFault& wrong : faultsAmong(*m_existing, m_runs, m_lines))
        place(m_lines[wrong.run], wrong.column, std::move(wrong.message));
    if (m_existing != &m_empty) // alone, the sheet's own bound is enough
        if (auto wrong = tooManyOwnColumns(*m_existing, m_runs))
            place(m_headerLine, wrong->column, std::move(wrong->message));
    std::set<int> numbers;
    for (const Run& run : m_existing->runs)
        numbers.insert(run.number);
    const auto taken = std::count_if(m_runs.begin(), m_runs.end(),
                                     [&](const Run& run) { return numbers.contains(run.number); });
    if (taken > 1)
        place(m_headerLine, "run",
              core::message("has {} numbers that the study has already; without this column the "
                            "runs are numbered on from its last"_t,
                            taken));
}

void SheetReader::findOwnColumns()
{
    std::set<std::string_view> used;
    for (const Run& run : m_sheet.study.runs)
        for (const auto& [name, value] : run.extra)
            used.insert(name);
    for (const Column& column : m_columns) {
        if (isKnownColumn(column.name) || !used.contains(column.asWritten))
            continue;
        std::string nearest = nearestColumn(column.name);
        const ColumnMeaning meaning = meaningOf(column.asWritten);
        if (nearest.empty() && meaning.mentioned())
            nearest = meaning.known() ? meaning.column : meaning.candidates.front();
        if (has(nearest))
            nearest.clear(); // it has its column already
        m_sheet.own_columns.push_back({column.asWritten, std::move(nearest)});
    }
}

Result<RunSheet> SheetReader::read()
{
    if (m_prepared) {
        if (auto error = takePrepared())
            return *error;
    } else {
        if (auto error = refuseWhole())
            return *error;
        chooseSeparator();
        if (auto error = readRecords())
            return *error;
        findDecimalComma();
    }
    takeDate();
    for (const csv::Record& record : m_records) {
        if (m_faults.size() >= kMostFaults) {
            m_faults.push_back({record.line, 0,
                                inFile(record.line, core::message("is as far as was read: there "
                                                                  "are {} faults before it"_t,
                                                                  m_faults.size()))});
            return failure();
        }
        readLine(record);
    }
    checkTogether();
    if (m_timesOfDay.value_or(false) && !m_dateKnown)
        place(m_headerLine, "start", "has times of day; expected a date (YYYY-MM-DD) with them"_t);
    if (!m_faults.empty())
        return failure();
    m_sheet.dateAssumed = m_sheet.dateAssumed && m_timesOfDay.value_or(false);
    m_sheet.already_there = alreadyThere(*m_existing, m_runs);
    m_sheet.study.runs = std::move(m_runs);
    core::sortByStart(m_sheet.study);
    numberRuns(*m_existing, m_sheet.study.runs);
    findOwnColumns();
    if (m_prepared) {
        m_sheet.dialect = m_prepared->dialect;
        m_sheet.found = m_prepared->found;
        m_sheet.lacking = m_prepared->lacking;
        if (usesTitleDate() && m_timesOfDay.value_or(false))
            m_sheet.found.push_back(message("{} of line {} as its date"_t, m_prepared->titleDate,
                                            m_prepared->titleLine));
    }
    return std::move(m_sheet);
}

} // namespace bothways::storage
