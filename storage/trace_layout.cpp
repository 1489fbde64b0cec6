// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/trace_layout.h"

#include "storage/csv.h"

#include <fast_float/fast_float.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

namespace bothways::storage {
namespace {

using core::Error;
using core::ErrorCode;

constexpr std::size_t kSampleRows = 100;
constexpr std::size_t kMaxPreamble = 200; ///< lines before the header
/// In order of preference: a comma may be a decimal comma inside the others.
constexpr std::array<char, 4> kSeparators = {'\t', ';', '|', ','};

struct SampleRecord {
    std::int64_t line = 0;
    std::size_t begin = 0; ///< byte
    std::vector<std::string> cells;
};

bool isNumber(std::string_view cell, bool decimalComma)
{
    std::string text(cell);
    if (decimalComma)
        std::replace(text.begin(), text.end(), ',', '.');
    if (!text.empty() && text.front() == '+')
        text.erase(0, 1);
    double value = 0.0;
    const auto [end, problem] =
        fast_float::from_chars(text.data(), text.data() + text.size(), value);
    return problem == std::errc() && end == text.data() + text.size();
}

bool isEither(std::string_view cell)
{
    return isNumber(cell, false) || isNumber(cell, true) || clockFormOf(cell).has_value();
}

Error bad(std::string_view name, std::int64_t line, std::string message)
{
    return Error{ErrorCode::badInput, std::move(message),
                 line > 0 ? fmt::format("{}:{}", name, line) : std::string(name)};
}

/// What the bytes are, where they are clearly no text; empty where they may be text.
std::string_view binaryKind(std::string_view head)
{
    using namespace std::string_view_literals;
    if (head.starts_with("PK\x03\x04"sv))
        return "a spreadsheet or an archive";
    if (head.starts_with("\xff\xfe"sv) || head.starts_with("\xfe\xff"sv))
        return "text in UTF-16";
    if (head.starts_with("SQLite format 3"sv))
        return "a database";
    const std::string_view start = head.substr(0, 4096);
    std::size_t controls = 0;
    for (const char c : start)
        controls += static_cast<unsigned char>(c) < 0x20 && c != '\n' && c != '\r' && c != '\t' &&
                    c != '\f' && c != '\x1a' && c != '\0';
    // A file that was never filled is all zeros; one cut by a power loss ends with them.
    const std::size_t zero = start.find('\0');
    const bool zeroInside = zero != std::string_view::npos &&
                            start.find_first_not_of('\0', zero) != std::string_view::npos;
    return controls > start.size() / 100 || zeroInside || zero == 0 ? "not text" : "";
}

std::vector<SampleRecord> records(std::string_view text, char separator, std::size_t offset,
                                  std::size_t most)
{
    std::vector<SampleRecord> result;
    csv::Reader reader(text, separator);
    while (result.size() < most) {
        auto record = reader.next();
        if (!record)
            break;
        SampleRecord sample{record->line, 0, {}};
        for (auto& field : record->fields)
            sample.cells.emplace_back(csv::trimmed(field.text));
        sample.begin = offset + record->begin;
        result.push_back(std::move(sample));
    }
    return result;
}

/// The number of fields that most lines have, two at least, and how many lines have it.
struct Shape {
    std::size_t fields = 0;
    std::size_t lines = 0;
};

Shape shapeOf(const std::vector<SampleRecord>& lines)
{
    std::map<std::size_t, std::size_t> counts;
    for (const auto& line : lines)
        ++counts[line.cells.size()];
    Shape best;
    for (const auto& [fields, count] : counts)
        if (fields >= 2 && count >= best.lines)
            best = {fields, count};
    return best;
}

/// Lines that are alike in shape: the longest tail counts, for a preamble has any shape.
char separatorOf(std::string_view text)
{
    char best = ',';
    double bestShare = 0.0;
    for (const char separator : kSeparators) {
        auto lines = records(text, separator, 0, kMaxPreamble + kSampleRows);
        if (lines.size() > 2) // the tail alone: it is data
            lines.erase(lines.begin(),
                        lines.begin() + static_cast<std::ptrdiff_t>(lines.size() / 2));
        const Shape shape = shapeOf(lines);
        const double share =
            lines.empty() ? 0.0
                          : static_cast<double>(shape.lines) / static_cast<double>(lines.size());
        if (share > bestShare + 0.2) {
            best = separator;
            bestShare = share;
        }
    }
    return best;
}

bool looksLikeData(const std::vector<std::string>& cells)
{
    std::size_t filled = 0, numbers = 0;
    for (const auto& cell : cells) {
        filled += !cell.empty();
        numbers += !cell.empty() && isEither(cell);
    }
    return numbers > 0 && numbers * 2 >= filled;
}

bool looksLikeUnits(const std::vector<std::string>& cells)
{
    bool any = false;
    for (const auto& cell : cells) {
        if (cell.size() > 16 || (!cell.empty() && isEither(cell)))
            return false;
        any = any || !cell.empty();
    }
    return any;
}

enum class TimeName { none, seconds, milliseconds, microseconds, clock, date };

TimeName timeName(std::string_view header, std::string_view unit)
{
    static const std::map<std::string_view, TimeName> names = {
        {"time_s", TimeName::seconds},
        {"t_s", TimeName::seconds},
        {"elapsed_s", TimeName::seconds},
        {"seconds", TimeName::seconds},
        {"time_sec", TimeName::seconds},
        {"time_ms", TimeName::milliseconds},
        {"t_ms", TimeName::milliseconds},
        {"elapsed_ms", TimeName::milliseconds},
        {"milliseconds", TimeName::milliseconds},
        {"millis", TimeName::milliseconds},
        {"time_us", TimeName::microseconds},
        {"t_us", TimeName::microseconds},
        {"microseconds", TimeName::microseconds},
        {"micros", TimeName::microseconds},
        {"time", TimeName::clock},
        {"timestamp", TimeName::clock},
        {"date_time", TimeName::clock},
        {"datetime", TimeName::clock},
        {"time_utc", TimeName::clock},
        {"time_of_day", TimeName::clock},
        {"elapsed_time", TimeName::clock},
        {"t", TimeName::clock},
        {"date", TimeName::date},
    };
    const auto found = names.find(plainName(header));
    if (found == names.end())
        return TimeName::none;
    if (found->second == TimeName::clock) {
        if (unit == "ms")
            return TimeName::milliseconds;
        if (unit == "us" || unit == "\u00b5s" || unit == "\u03bcs")
            return TimeName::microseconds;
        if (unit == "s" || unit == "sec")
            return TimeName::seconds;
    }
    return found->second;
}

/// FNV-1a, 64 bits (Fowler, Noll, Vo). Over plain names, so that blanks and capitals do not matter.
std::string keyOf(const std::vector<std::string>& header)
{
    std::uint64_t hash = 0xcbf29ce484222325;
    const auto take = [&hash](char c) {
        hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3;
    };
    for (const auto& name : header) {
        for (const char c : name)
            take(c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c == ' ' ? '_' : c);
        take('\x1f');
    }
    return fmt::format("{:016x}", hash);
}

void nameColumns(TraceLayout& layout, const std::vector<std::string>& cells)
{
    std::set<std::string> used;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        std::string name = cells[i].empty() ? fmt::format("column {}", i + 1) : cells[i];
        for (int n = 2; !used.insert(name).second; ++n)
            name = fmt::format("{} {}", cells[i].empty() ? "column" : cells[i], n);
        layout.nameless.push_back(cells[i].empty());
        layout.units.push_back(bracketUnit(name));
        layout.header.push_back(std::move(name));
    }
    layout.headerKey = keyOf(layout.header);
}

/// Place of the header among the lines; nothing where there is none.
std::optional<std::size_t> headerAmong(const std::vector<SampleRecord>& lines)
{
    const std::size_t last = std::min(lines.size(), kMaxPreamble);
    for (std::size_t i = 0; i < last; ++i)
        for (const auto& cell : lines[i].cells)
            if (lines[i].cells.size() >= 2 && timeName(cell, bracketUnit(cell)) != TimeName::none &&
                !looksLikeData(lines[i].cells))
                return i;
    for (std::size_t i = 0; i + 1 < last; ++i)
        if (lines[i].cells.size() >= 2 && !looksLikeData(lines[i].cells) &&
            (looksLikeData(lines[i + 1].cells) ||
             (i + 2 < lines.size() && looksLikeUnits(lines[i + 1].cells) &&
              looksLikeData(lines[i + 2].cells))))
            return i;
    return std::nullopt;
}

/// A decimal comma: cells like "12,5" and none like "12.5".
bool hasDecimalComma(const TraceLayout& layout)
{
    std::size_t commas = 0, points = 0;
    for (const auto& row : layout.rows)
        for (const auto& cell : row) {
            const bool asPoint = isNumber(cell, false), asComma = isNumber(cell, true);
            commas += asComma && !asPoint;
            points += asPoint && cell.find('.') != std::string::npos;
        }
    return commas > points;
}

/// The head without the last line where that may be cut.
std::string_view wholeLines(std::string_view head, bool whole, char lineEnd)
{
    head = head.substr(0, head.find('\0')); // zeros at the end: space never filled
    const std::size_t end = head.rfind(lineEnd);
    return whole || end == std::string_view::npos ? head : head.substr(0, end + 1);
}

} // namespace

std::string plainName(std::string_view header)
{
    std::string name;
    for (const char c : header.substr(0, header.find_first_of("[(")))
        name += c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c == ' ' ? '_' : c;
    while (!name.empty() && name.back() == '_')
        name.pop_back();
    return name;
}

std::string bracketUnit(std::string_view header)
{
    const std::size_t open = header.find_first_of("[(");
    if (open == std::string_view::npos)
        return {};
    const std::size_t close = header.find(header[open] == '[' ? ']' : ')', open);
    if (close == std::string_view::npos)
        return {};
    return std::string(csv::trimmed(header.substr(open + 1, close - open - 1)));
}

std::string_view channelUnit(std::string_view channel)
{
    static const std::map<std::string_view, std::string_view> units = {
        {"road_speed_kmh", "km/h"}, {"distance_m", "m"},        {"lat_deg", "°"},
        {"lon_deg", "°"},           {"altitude_m", "m"},        {"fuel_rate_l_per_h", "L/h"},
        {"fuel_used_l", "L"},       {"energy_used_kwh", "kWh"}, {"power_kw", "kW"},
        {"accessory_w", "W"},       {"output_w", "W"},          {"rotor_rpm", "rpm"},
        {"generator_rpm", "rpm"},   {"setting", "°"},           {"setting_set", "°"},
        {"vibration_ms2", "m/s²"},  {"wind_ms", "m/s"},         {"yaw_deg_per_s", "°/s"},
        {"battery_v", "V"},
    };
    const auto found = units.find(channel);
    return found == units.end() ? std::string_view() : found->second;
}

const ChannelMapping* mappingOf(const std::vector<ChannelMapping>& mapping, std::string_view header)
{
    for (const ChannelMapping& column : mapping)
        if (column.column == header)
            return &column;
    for (const ChannelMapping& column : mapping)
        if (core::sameWord(column.column, header))
            return &column;
    return nullptr;
}

core::Result<TraceLayout> layoutOf(std::string_view head, bool whole, std::string_view name)
{
    if (head.empty())
        return bad(name, 0, "is empty; expected a recording in CSV");
    if (const auto kind = binaryKind(head); !kind.empty())
        return bad(name, 0,
                   fmt::format("is {}; expected a recording in CSV, plain text in UTF-8", kind));
    TraceLayout layout;
    std::size_t start = head.starts_with("\xef\xbb\xbf") ? 3 : 0;
    std::int64_t firstLine = 1;
    if (head.find('\n') == std::string_view::npos && head.find('\r') != std::string_view::npos)
        layout.lineEnd = '\r';
    const std::size_t firstEnd = head.find(layout.lineEnd);
    if (!whole && firstEnd == std::string_view::npos) {
        const auto separators = static_cast<std::size_t>(std::count_if(
            head.begin(), head.end(), [](char c) { return c == ',' || c == ';' || c == '\t'; }));
        return bad(name, 1,
                   separators > kMaxTraceColumns
                       ? fmt::format("more than {} columns; expected {} at most", separators,
                                     kMaxTraceColumns)
                       : fmt::format("a line of more than {} MB; expected a recording in CSV",
                                     kTraceHeadSize >> 20));
    }
    std::optional<char> declared; // "sep=;" as spreadsheets write it
    if (head.substr(start).starts_with("sep=") && firstEnd != std::string_view::npos &&
        firstEnd > start + 4) {
        declared = head[start + 4];
        start = firstEnd + 1;
        firstLine = 2;
    }
    const std::string_view text = wholeLines(head, whole, layout.lineEnd).substr(start);
    layout.separator = declared.value_or(separatorOf(text));
    auto lines = records(text, layout.separator, start, kMaxPreamble + kSampleRows);
    for (auto& line : lines)
        line.line += firstLine - 1;

    const auto header = headerAmong(lines);
    if (!header)
        return bad(
            name, lines.empty() ? 0 : lines.front().line,
            "no header line with a column of time; expected names like 'time_s' (seconds) or "
            "'time' (date and time), and channels");
    const auto& titles = lines[*header].cells;
    if (titles.size() > kMaxTraceColumns)
        return bad(name, lines[*header].line,
                   fmt::format("{} columns; expected {} at most", titles.size(), kMaxTraceColumns));
    layout.headerLine = lines[*header].line;
    nameColumns(layout, titles);
    std::size_t data = *header + 1;
    if (data < lines.size() && looksLikeUnits(lines[data].cells) && data + 1 < lines.size() &&
        looksLikeData(lines[data + 1].cells)) {
        for (std::size_t i = 0; i < std::min(titles.size(), lines[data].cells.size()); ++i)
            if (!lines[data].cells[i].empty())
                layout.units[i] = lines[data].cells[i];
        ++data;
    }
    if (data >= lines.size())
        return bad(name, layout.headerLine, "a header and no rows; expected a recording");
    layout.dataOffset = lines[data].begin;
    layout.dataLine = lines[data].line;
    for (; data < lines.size() && layout.rows.size() < kSampleRows; ++data) {
        layout.rows.push_back(std::move(lines[data].cells));
        layout.rowLines.push_back(lines[data].line);
    }
    layout.decimalComma = hasDecimalComma(layout);
    return layout;
}

namespace {

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
                return bad(m_name, m_layout.headerLine,
                           fmt::format("two columns for the channel '{}'", column.channel));
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
        return bad(
            m_name, m_layout.headerLine,
            fmt::format("no column of time among {}{}; expected 'time_s' (seconds) or 'time' "
                        "(date and time), or a mapping that names it",
                        names, m_layout.header.size() > 6 ? ", ..." : ""));
    }
    m_plan.time = best->column;
    const auto [cell, row] = firstCell(best->column);
    const bool numeric = isNumber(cell, m_layout.decimalComma);
    const auto form = clockFormOf(cell);
    if (best->name == TimeName::date && form != ClockForm::dateTime)
        return bad(m_name, m_layout.headerLine,
                   "a column of dates and none of the time; expected 'time' beside 'date'");
    const bool clock = best->name == TimeName::clock || best->name == TimeName::date;
    if (clock && form && !(numeric && form != ClockForm::epoch)) {
        m_plan.clockForm = *form;
        m_plan.columns[m_plan.time].use = CellUse::clock;
        if (form == ClockForm::timeOfDay)
            joinDate();
        return std::nullopt;
    }
    if (!numeric)
        return bad(
            m_name, m_layout.rowLines.empty() ? m_layout.dataLine : m_layout.rowLines[row],
            fmt::format("column '{}': '{}' is no time; expected seconds like 12.5, or a date "
                        "and time like 2026-05-09T05:40:00",
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
        return bad(name, layout.headerLine, "no channel beside the time; expected one at least");
    return plan;
}

} // namespace bothways::storage
