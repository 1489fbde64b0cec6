// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/run_sheet.h"

#include "core/clock.h"
#include "storage/csv.h"
#include "storage/file_bytes.h"
#include "storage/run_columns.h"
#include "storage/run_rules.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>

namespace bothways::storage {
namespace {

using core::Error;
using core::ErrorCode;
using core::Run;
using core::Study;

constexpr std::int64_t kHour_us = std::int64_t{3600} * 1'000'000;
constexpr std::int64_t kDay_us = 24 * kHour_us;
constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

/// One column of the sheet at hand.
struct Column {
    std::string name;      ///< canonical
    std::string asWritten; ///< in the header
};

/// Reads one sheet; lives as long as that takes. Faults are gathered, nothing is given up at the
/// first one.
class SheetReader {
public:
    SheetReader(std::string_view text, std::string_view name, const SheetOptions& options,
                const Study* existing)
        : m_text(text), m_name(name), m_options(options)
    {
        if (existing)
            m_existing = existing;
        m_spellings = Spellings::of(*m_existing);
    }

    Result<RunSheet> read();

private:
    // What is wrong with the whole.
    std::optional<Error> refuseWhole();
    Error inFile(int line, std::string message) const;
    Result<RunSheet> failure();

    // The header.
    void chooseSeparator();
    void readHeader(const csv::Record& header);
    void checkHeader(int line);
    void requireOneOf(int line, std::initializer_list<std::string_view> names);
    [[nodiscard]] bool has(std::string_view column) const;

    // The lines.
    std::optional<Error> readRecords();
    void findDecimalComma();
    void readLine(const csv::Record& record);
    [[nodiscard]] std::string_view cell(std::string_view column) const;
    void fault(std::string_view column, std::string message);
    void readCells(Run& run);
    void readRunNumber(Run& run);
    void readNumbers(Run& run);
    void readConsumption(Run& run);
    void readGivenConsumption(Run& run);
    void readStatus(Run& run);
    void readStart(Run& run);
    void readExtras(Run& run);
    std::optional<GivenNumber> number(std::string_view column, std::string_view expected);
    [[nodiscard]] std::string placeOf(const RunFault& wrong, const Run& run) const;

    // The runs together.
    void takeDate();
    void renamePairMarks();
    void checkTogether();
    void checkBaseline();

    struct Placed {
        int line;
        std::size_t column;
        Error error;
    };
    void place(int line, std::string_view column, std::string message);

    std::string_view m_text;
    std::string m_name;
    const SheetOptions& m_options;
    const Study m_empty;
    const Study* m_existing = &m_empty;
    Spellings m_spellings;

    RunSheet m_sheet;
    int m_headerLine = 1;
    std::vector<Column> m_columns;
    std::map<std::string, std::size_t, std::less<>> m_places;
    std::optional<core::ConsumptionUnit> m_unit;
    std::vector<csv::Record> m_records;
    const csv::Record* m_record = nullptr;
    std::set<std::string, std::less<>> m_faultyHere; ///< columns of m_record

    std::vector<Run> m_runs;
    std::vector<int> m_lines; ///< of each run
    std::optional<bool> m_timesOfDay;
    bool m_dateKnown = false;
    std::int64_t m_day_us = 0;
    std::optional<std::int64_t> m_lastTime_us;
    std::vector<Placed> m_faults;
};

Error SheetReader::inFile(int line, std::string message) const
{
    return Error{ErrorCode::badInput, std::move(message), fmt::format("{}:{}", m_name, line)};
}

void SheetReader::place(int line, std::string_view column, std::string message)
{
    const auto at = m_places.find(column);
    const std::size_t order = at == m_places.end() ? m_columns.size() : at->second;
    // The column as the user wrote it, where there is one.
    const std::string shown =
        at == m_places.end() ? std::string(column) : m_columns[order].asWritten;
    m_faults.push_back({line, order,
                        Error{ErrorCode::badInput, std::move(message),
                              fmt::format("{}:{}: column {}", m_name, line, inQuotes(shown))}});
    if (m_record && m_record->line == line)
        m_faultyHere.emplace(column);
}

void SheetReader::fault(std::string_view column, std::string message)
{
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
        return inFile(1, "is UTF-16 text; expected UTF-8");
    if (m_text.starts_with(kByteOrderMark))
        m_text.remove_prefix(kByteOrderMark.size());
    if (const std::size_t zero = m_text.find('\0'); zero != std::string_view::npos)
        return inFile(1, "is no text (it holds zero bytes); expected a run sheet in CSV form");
    return std::nullopt;
}

/// The one under which most names in the header mean something.
void SheetReader::chooseSeparator()
{
    std::pair<std::size_t, std::size_t> best;
    for (const char separator : {',', ';', '\t'}) {
        const auto header = csv::Reader(m_text, separator).next();
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
        if (!csv::isUtf8(written))
            place(m_headerLine, fmt::format("{}", i + 1), "has a name that is not UTF-8 text");
        else if (!column.name.empty() && !m_places.emplace(column.name, i).second)
            place(m_headerLine, column.name, "is there twice; expected one of each name");
    }
}

void SheetReader::requireOneOf(int line, std::initializer_list<std::string_view> names)
{
    std::vector<std::string_view> present;
    std::copy_if(names.begin(), names.end(), std::back_inserter(present),
                 [this](std::string_view name) { return has(name); });
    for (std::size_t i = 1; i < present.size(); ++i)
        place(line, present[i],
              fmt::format("says the same as '{}'; expected one of the two", present[0]));
}

void SheetReader::checkHeader(int line)
{
    for (const std::string_view required : {"configuration", "direction", "start"})
        if (!has(required))
            place(line, required, "is missing; expected it in the header");
    requireOneOf(line, {"distance_km", "distance_mi"});
    requireOneOf(line, {"speed_kmh", "speed_mph"});
    for (const core::ConsumptionUnit unit : core::kConsumptionUnits) {
        const std::string_view column = core::unitName(unit);
        if (!has(column))
            continue;
        if (m_unit)
            place(line, column,
                  fmt::format("is a second consumption beside '{}'; expected exactly one",
                              core::unitName(*m_unit)));
        else
            m_unit = unit;
    }
    if (m_unit && core::needsDistance(*m_unit) && !has("distance_km") && !has("distance_mi"))
        place(line, core::unitName(*m_unit),
              "needs a distance; expected a column distance_km or distance_mi");
    if (!m_unit && !has("trace"))
        place(line, "l_per_100km",
              "is missing; expected exactly one of l_per_100km, mpg_us, mpg_imp, km_per_l, "
              "kwh_per_100km, fuel_l, fuel_gal_us");
}

std::optional<Error> SheetReader::readRecords()
{
    csv::Reader reader(m_text, m_sheet.dialect.separator);
    const auto header = reader.next();
    if (!header)
        return inFile(1, "is empty; expected a header line with the names of the columns");
    if (header->fault != csv::RecordFault::none)
        return inFile(header->line, "has a quote in the header that never closes, or text after "
                                    "one; expected names of columns");
    readHeader(*header);
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
                fmt::format("is one run too many; expected at most {} in a study", kMostRuns));
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

std::string_view SheetReader::cell(std::string_view column) const
{
    const auto at = m_places.find(column);
    if (at == m_places.end() || at->second >= m_record->fields.size())
        return {};
    return m_record->fields[at->second].text;
}

std::optional<GivenNumber> SheetReader::number(std::string_view column, std::string_view expected)
{
    const std::string_view text = csv::trimmed(cell(column));
    if (text.empty())
        return std::nullopt;
    const bool comma = m_sheet.dialect.decimalComma;
    if (const auto given = parseNumber(text, comma))
        return given;
    if (parseNumber(text, !comma))
        fault(column,
              fmt::format("{} has a decimal {}; the other numbers of this sheet have a "
                          "decimal {}",
                          inQuotes(text), comma ? "point" : "comma", comma ? "comma" : "point"));
    else
        fault(column,
              fmt::format("{} is not a finite number; expected {}", inQuotes(text), expected));
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
        fault("run", fmt::format("{} is no run number; expected a whole number from 1 to {}",
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
                  fmt::format("{} is impossible; expected {}",
                              inQuotes(csv::trimmed(cell(column.name))), expectedNumber(column)));
    }
    for (const auto& [name, at] : m_places)
        if (const std::string_view accessory = timedAccessoryOf(name); !accessory.empty())
            if (const auto given = number(name, "seconds from the run's start"))
                run.accessory_on_s.emplace(accessory, given->value);
}

void SheetReader::readConsumption(Run& run)
{
    if (!m_unit)
        return;
    const std::string_view column = core::unitName(*m_unit);
    const auto given = number(column, "a number above 0");
    if (!given)
        return;
    if (given->value > 0.0)
        run.consumption = core::Consumption{given->value, *m_unit, given->decimals, false};
    else
        fault(column, fmt::format("{} is not above 0; expected a number above 0",
                                  inQuotes(csv::trimmed(cell(column)))));
    const std::string source = canonicalColumn(cell("consumption_source"));
    if (source == "trace" && run.consumption)
        run.consumption->from_trace = true;
    else if (!source.empty() && source != "typed" && source != "trace")
        fault("consumption_source",
              fmt::format("{} is unknown; expected 'typed' or 'trace'", inQuotes(source)));
    readGivenConsumption(run);
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
    const bool known =
        value && value->value > 0.0 && unit && (!core::needsDistance(*unit) || run.distance_km);
    const auto asShown = core::lPer100km(run);
    const double given =
        known ? core::toLPer100km(value->value, *unit, run.distance_km.value_or(1.0)) : 0.0;
    if (!known || !asShown || std::abs(given - *asShown) > 1e-9 * *asShown) {
        fault("consumption_given",
              fmt::format("{} does not agree with the consumption; expected the same amount, as "
                          "a number and a unit",
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
        fault("status", fmt::format("{} is unknown; expected 'counted' or 'discarded'",
                                    inQuotes(cell("status"))));
        run.discard = core::Discard{"other", "-"}; // so that no consumption is missed as well
        return;
    }
    if (!reason.empty())
        fault("reason", fmt::format("{} is given for a counted run; expected status "
                                    "'discarded', or no reason",
                                    inQuotes(reason)));
    if (!csv::trimmed(cell("evidence")).empty())
        fault("evidence", "is given for a counted run; expected status 'discarded', or none");
}

/// A time of day is taken on the day of the line before, or the next after midnight.
void SheetReader::readStart(Run& run)
{
    std::string text(csv::trimmed(cell("start")));
    if (text.empty()) {
        if (has("start"))
            fault("start", "is empty; expected a date and time like 2026-05-09T05:40:00 or a time "
                           "of day like 05:40");
        return;
    }
    if (text.size() >= 4 && text[1] == ':')
        text.insert(0, 1, '0'); // 5:40
    const auto time = core::parseTimeOfDay_us(text);
    const auto moment = core::parseDateTime(text);
    if (!time && !moment) {
        fault("start", fmt::format("{} is no start; expected a date and time like "
                                   "2026-05-09T05:40:00 or a time of day like 05:40",
                                   inQuotes(text)));
        return;
    }
    if (!m_timesOfDay)
        m_timesOfDay = static_cast<bool>(time);
    if (*m_timesOfDay != static_cast<bool>(time)) {
        fault("start", fmt::format("{} is a {} where the lines before have a {}; expected one "
                                   "form throughout",
                                   inQuotes(text), time ? "time of day" : "date and time",
                                   time ? "date and time" : "time of day"));
        return;
    }
    if (!time) {
        run.start = moment.value();
        return;
    }
    if (m_lastTime_us && time.value() < *m_lastTime_us) {
        if (*m_lastTime_us - time.value() <= 12 * kHour_us) {
            fault("start", fmt::format("{} is earlier than the line before; expected times in "
                                       "driving order",
                                       inQuotes(text)));
            return;
        }
        m_day_us += kDay_us;
    }
    m_lastTime_us = time.value();
    run.start.us = m_day_us + time.value();
}

void SheetReader::readExtras(Run& run)
{
    for (std::size_t i = 0; i < std::min(m_columns.size(), m_record->fields.size()); ++i) {
        const Column& column = m_columns[i];
        const csv::Field& field = m_record->fields[i];
        if (field.text.empty() || isKnownColumn(column.name))
            continue;
        if (column.name.empty())
            m_faults.push_back(
                {m_headerLine, i,
                 Error{ErrorCode::badInput,
                       fmt::format("has no name but a value on line {}; expected a "
                                   "name in the header",
                                   m_record->line),
                       fmt::format("{}:{}: column {}", m_name, m_headerLine, i + 1)}});
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
        fault("marks", fmt::format("{} is no list of marks; expected seconds and a word for each, "
                                   "like: 31.2 passing_traffic lorry; 80 gust",
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
    const std::size_t count = record.fields.size();
    const auto unnamed = [&](std::size_t field, std::string message) {
        m_faults.push_back(
            {record.line, field,
             Error{ErrorCode::badInput, std::move(message),
                   fmt::format("{}:{}: column {}", m_name, record.line,
                               field < m_columns.size() ? "'" + m_columns[field].asWritten + "'"
                                                        : std::to_string(field + 1))}});
    };
    if (record.fault != csv::RecordFault::none) {
        unnamed(record.faultField, record.fault == csv::RecordFault::quoteNeverCloses
                                       ? "has a quote that never closes; expected a second one"
                                       : "has text after the closing quote; expected the next "
                                         "field (a quote within quotes is written twice)");
        return;
    }
    if (count > m_columns.size()) {
        unnamed(m_columns.size(),
                fmt::format("is beyond the header: {} fields, expected at most {}{}", count,
                            m_columns.size(),
                            m_sheet.dialect.separator == ','
                                ? " (a comma within a field needs quotes around it)"
                                : ""));
        return;
    }
    for (std::size_t i = 0; i < count; ++i)
        if (!csv::isUtf8(record.fields[i].text))
            unnamed(i, "is not UTF-8 text; expected the sheet to be saved as UTF-8");
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

/// For times of day.
void SheetReader::takeDate()
{
    const std::string& ofStudy = m_existing->properties.date;
    const std::string& date = !m_options.date.empty() ? m_options.date
                              : !ofStudy.empty()      ? ofStudy
                                                      : m_options.today;
    m_sheet.dateAssumed = m_options.date.empty() && ofStudy.empty();
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
}

void SheetReader::checkBaseline()
{
    const auto& names = m_spellings.configurations;
    const std::string& asked = m_options.baseline;
    const bool known = std::any_of(names.begin(), names.end(), [&](const std::string& name) {
        return core::sameWord(name, asked);
    });
    if (!asked.empty() && !known && names.size() == 2)
        place(m_headerLine, "configuration",
              fmt::format("has no baseline {}; expected {} or {}", inQuotes(asked),
                          inQuotes(names[0]), inQuotes(names[1])));
}

Result<RunSheet> SheetReader::read()
{
    if (auto error = refuseWhole())
        return *error;
    chooseSeparator();
    if (auto error = readRecords())
        return *error;
    findDecimalComma();
    takeDate();
    for (const csv::Record& record : m_records)
        readLine(record);
    checkTogether();
    checkBaseline();
    if (m_timesOfDay.value_or(false) && !m_dateKnown)
        place(m_headerLine, "start", "has times of day; expected a date (YYYY-MM-DD) with them");
    if (!m_faults.empty())
        return failure();
    m_sheet.dateAssumed = m_sheet.dateAssumed && m_timesOfDay.value_or(false);
    m_sheet.study.runs = std::move(m_runs);
    core::sortByStart(m_sheet.study);
    numberRuns(*m_existing, m_sheet.study.runs);
    return std::move(m_sheet);
}

} // namespace

Result<RunSheet> parseRunSheet(std::string_view text, std::string_view name,
                               const SheetOptions& options, const Study* existing)
{
    return SheetReader(text, name, options, existing).read();
}

Result<RunSheet> readRunSheet(const std::filesystem::path& file, const SheetOptions& options,
                              const Study* existing)
{
    constexpr std::uintmax_t kMostBytes = std::uintmax_t{64} << 20;
    const auto bytes = readWholeFile(file, kMostBytes, "a run sheet");
    if (!bytes)
        return bytes.error();
    return parseRunSheet(bytes.value(), file.string(), options, existing);
}

std::vector<Error> faultsOf(const Study& study, const Run& run)
{
    Study others = study;
    std::erase_if(others.runs,
                  [&](const Run& other) { return run.id != core::RunId{} && other.id == run.id; });
    Spellings spellings = Spellings::of(others);
    const Run whole = normalised(run, spellings);
    std::vector<RunFault> faults = ownFaults(whole);
    const auto among = faultsAmong(others, {&whole, 1});
    faults.insert(faults.end(), among.begin(), among.end());
    std::vector<Error> errors;
    for (const RunFault& wrong : faults)
        errors.push_back(Error{ErrorCode::badInput, wrong.message,
                               fmt::format("column {}", inQuotes(wrong.column))});
    return errors;
}

} // namespace bothways::storage
