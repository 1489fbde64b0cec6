// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/utf8.h"
#include "core/study/clock.h"
#include "core/study/properties.h"
#include "core/study/rule.h"
#include "storage/bytes/csv.h"
#include "storage/sheet/run_columns.h"
#include "storage/study/content.h"
#include "storage/study/query.h"
#include "storage/study/run_row.h"
#include "storage/study/study_rows.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <unordered_map>

namespace bothways::storage {
namespace {

using core::message;
using core::Run;
using core::RunId;
using namespace run_row;

/// 10^-300 L has that many, and nobody's display.
constexpr std::int64_t kMostDecimals = 400;
/// As the rules of a run have it.
constexpr double kLongestTime_s = 1e6;

[[noreturn]] void refuse(std::string_view column, std::int64_t run, std::string_view table)
{
    throw DamagedRow{message("{} of run {} in table {}"_t, column, run, table)};
}

bool isText(const Query& row, int column)
{
    const std::string_view text = row.bytes(column);
    return row.isText(column) && text.size() <= kLongestText && core::isStorableText(text);
}

/// One row of table run: takes its columns out, or says which cannot be one.
class RunReader {
public:
    explicit RunReader(const Query& row) : m_row(row) {}

    /// The row begins with storedColumns() and ends with the id.
    Run read()
    {
        Run run;
        m_number = m_row.integer(number);
        if (!m_row.isInteger(number) || m_number < 1 || m_number > kLargestRunNumber)
            wrong(number);
        run.number = static_cast<int>(m_number);
        run.configuration = name(configuration);
        run.setting = text(setting);
        run.direction = name(direction);
        const auto moment = core::parseDateTime(text(start));
        if (!moment)
            wrong(start);
        run.start = moment.value();
        run.consumption = consumptionIn();
        run.discard = discardIn();
        run.pair_mark = text(pair);
        run.accessories = text(accessories);
        run.trace = text(trace);
        run.notes = text(notes);
        int next = fieldCount;
        for (const NumberColumn& column : numberColumns())
            if (column.factor == 1.0)
                run.*column.field = numberIn(column, next++);
        // The tables forbid these too; SQLite does not look at that for a file that is only read.
        if (run.consumption && core::needsDistance(run.consumption->unit) && !run.distance_km)
            wrong(consumption);
        if (run.counted() && !run.consumption && run.trace.empty())
            wrong(consumption);
        run.id = RunId{m_row.integer(next)};
        return run;
    }

private:
    [[noreturn]] void wrong(Field field) const { refuse(kFields.at(field), m_number, "run"); }

    std::string text(Field field) const
    {
        if (!isText(m_row, field))
            wrong(field);
        return m_row.text(field);
    }
    std::string name(Field field) const
    {
        std::string text = this->text(field);
        if (csv::isBlankText(text))
            wrong(field);
        return text;
    }

    std::optional<double> numberIn(const NumberColumn& column, int at) const
    {
        if (m_row.isNull(at))
            return std::nullopt;
        const double value = m_row.real(at);
        if (!m_row.isReal(at) || !isPossible(column, value))
            refuse(column.name, m_number, "run");
        return value;
    }

    std::optional<core::Consumption> consumptionIn() const
    {
        if (m_row.isNull(consumption))
            return std::nullopt;
        const auto unit = core::unitFromName(text(consumptionUnit));
        if (!unit)
            wrong(consumptionUnit);
        const double value = m_row.real(consumption);
        if (!std::isfinite(value) || value <= 0.0)
            wrong(consumption);
        const std::int64_t decimals = m_row.integer(consumptionDecimals);
        if (!m_row.isInteger(consumptionDecimals) || decimals < 0 || decimals > kMostDecimals)
            wrong(consumptionDecimals);
        const std::string source = text(consumptionSource);
        if (source != "typed" && source != "trace")
            wrong(consumptionSource);
        return core::Consumption{value, *unit, static_cast<int>(decimals), source == "trace"};
    }

    std::optional<core::Discard> discardIn() const
    {
        const std::string state = text(status);
        if (state == "counted")
            return std::nullopt;
        if (state != "discarded")
            wrong(status);
        core::Discard discard{text(reason), text(evidence)};
        if (discard.reason != "other" && !core::ruleFromName(discard.reason))
            wrong(reason);
        if (discard.reason == "other" && csv::isBlankText(discard.evidence))
            wrong(evidence);
        return discard;
    }

    const Query& m_row;
    std::int64_t m_number = 0;
};

std::string selectRuns(std::string_view where)
{
    return fmt::format("SELECT {}, id FROM run {}", fmt::join(storedColumns(), ", "), where);
}

/// Where the lines of a run belong: by its id.
using RunsById = std::unordered_map<std::int64_t, Run*>;

Run& ownerOf(const Query& row, const RunsById& runs, std::string_view table)
{
    const auto at = runs.find(row.integer(0));
    if (at == runs.end())
        throw DamagedRow{message("a line in table {}, of a run that is not there,"_t, table)};
    return *at->second;
}

void readMarks(Query& rows, const RunsById& runs)
{
    while (rows.step()) {
        Run& run = ownerOf(rows, runs, "mark");
        const double at_s = rows.real(1);
        if (!std::isfinite(at_s))
            refuse("at_s", run.number, "mark");
        if (!isText(rows, 2) || rows.bytes(2).empty() ||
            rows.bytes(2).find_first_of(" \t\r\n") != std::string_view::npos)
            refuse("word", run.number, "mark");
        if (!isText(rows, 3))
            refuse("words", run.number, "mark");
        run.marks.push_back({at_s, rows.text(2), rows.text(3)});
    }
}

void readAccessories(Query& rows, const RunsById& runs)
{
    while (rows.step()) {
        Run& run = ownerOf(rows, runs, "accessory_on");
        const double on_s = rows.real(2);
        if (!isText(rows, 1) || rows.bytes(1).empty())
            refuse("accessory", run.number, "accessory_on");
        if (!(std::abs(on_s) <= kLongestTime_s))
            refuse("on_s", run.number, "accessory_on");
        run.accessory_on_s.emplace(rows.text(1), on_s);
    }
}

void readExtras(Query& rows, const RunsById& runs)
{
    while (rows.step()) {
        Run& run = ownerOf(rows, runs, "extra");
        if (!isText(rows, 1) || rows.bytes(1).empty())
            refuse("name", run.number, "extra");
        if (!isText(rows, 2))
            refuse("value", run.number, "extra");
        run.extra.emplace_back(rows.text(1), rows.text(2));
    }
}

/// `where` is "" or "WHERE run = ?" with the id that is bound to it.
void readDetails(SQLite::Database& database, const RunsById& runs, std::string_view where,
                 std::int64_t id)
{
    const auto read = [&](std::string_view columns, std::string_view order,
                          void (*take)(Query&, const RunsById&)) {
        Query rows(database,
                   fmt::format("SELECT run, {} {} ORDER BY run, {}", columns, where, order));
        if (!where.empty())
            rows.bind(1, id);
        take(rows, runs);
    };
    read("at_s, word, words FROM mark", "place", readMarks);
    read("accessory, on_s FROM accessory_on", "accessory", readAccessories);
    read("name, value FROM extra", "place", readExtras);
}

bool comesBefore(const Run& a, const Run& b)
{
    return a.start.us != b.start.us ? a.start.us < b.start.us : a.id < b.id;
}

/// Earlier versions took a confidence beyond what can be answered; it is then the highest.
constexpr const char* kHighestConfidence = "0.9999";

} // namespace

core::StudyProperties readProperties(SQLite::Database& database)
{
    core::StudyProperties properties;
    Query rows(database, "SELECT name, value FROM property ORDER BY name");
    while (rows.step()) {
        const std::string name = rows.text(0);
        std::string value(rows.bytes(1));
        if (name.ends_with("confidence") && value.starts_with(kHighestConfidence))
            value = kHighestConfidence;
        if (!isText(rows, 0) || !isText(rows, 1) || !core::setProperty(properties, name, value))
            throw DamagedRow{message("the property '{}'"_t, shownCell(name))};
    }
    return properties;
}

core::Study readStudy(SQLite::Database& database)
{
    core::Study study;
    study.properties = readProperties(database);
    study.runs.reserve(static_cast<std::size_t>(
        std::clamp<std::int64_t>(oneNumber(database, "SELECT count(*) FROM run"), 0, kMostRuns)));
    {
        Query rows(database, selectRuns("ORDER BY id"));
        while (rows.step()) {
            if (study.runs.size() == kMostRuns)
                throw RefusedContent{core::message(
                    "holds more runs than a study can have ({}); it is left as it is"_t,
                    kMostRuns)};
            study.runs.push_back(RunReader(rows).read());
        }
    }
    RunsById byId;
    byId.reserve(study.runs.size());
    for (Run& run : study.runs)
        byId.emplace(static_cast<std::int64_t>(run.id), &run);
    readDetails(database, byId, "", 0);
    if (!std::is_sorted(study.runs.begin(), study.runs.end(), comesBefore))
        core::sortByStart(study);
    checkTogether(study);
    return study;
}

void checkTogether(const core::Study& study)
{
    std::vector<std::string> configurations;
    std::vector<std::string> directions;
    const auto isThird = [](std::vector<std::string>& known, const std::string& name) {
        for (const std::string& one : known)
            if (core::sameWord(one, name))
                return false;
        known.push_back(name);
        return known.size() > 2;
    };
    for (const Run& run : study.runs) {
        if (isThird(configurations, run.configuration))
            refuse("configuration", run.number, "run");
        if (isThird(directions, run.direction))
            refuse("direction", run.number, "run");
        if (run.start.utc_offset_min.has_value() !=
            study.runs.front().start.utc_offset_min.has_value())
            refuse("start", run.number, "run");
    }
}

void checkAmong(const core::Study& study, RunId changed)
{
    const auto run = std::find_if(study.runs.begin(), study.runs.end(),
                                  [changed](const Run& one) { return one.id == changed; });
    if (run == study.runs.end())
        return; // what is left of a sound study is one
    const auto isUsed = [&](std::string Run::*name) {
        return std::any_of(study.runs.begin(), study.runs.end(), [&](const Run& other) {
            return other.id != changed && core::sameWord(other.*name, (*run).*name);
        });
    };
    const Run& other = study.runs[run == study.runs.begin() ? study.runs.size() - 1 : 0];
    if (!isUsed(&Run::configuration) || !isUsed(&Run::direction) ||
        run->start.utc_offset_min.has_value() != other.start.utc_offset_min.has_value())
        checkTogether(study);
}

void readRunAgain(SQLite::Database& database, RunId id, core::Study& study)
{
    std::vector<Run>& runs = study.runs;
    const auto old =
        std::find_if(runs.begin(), runs.end(), [id](const Run& run) { return run.id == id; });
    Query row(database, selectRuns("WHERE id = ?"));
    if (!row.bind(1, toColumn(id)).step()) {
        if (old != runs.end())
            runs.erase(old);
        return;
    }
    Run run = RunReader(row).read();
    readDetails(database, {{toColumn(id), &run}}, "WHERE run = ?", toColumn(id));
    if (old == runs.end()) {
        runs.insert(std::upper_bound(runs.begin(), runs.end(), run, comesBefore), std::move(run));
        return;
    }
    // In its place, and only those that it passed are moved: a study may have thousands.
    *old = std::move(run);
    const auto above = std::upper_bound(runs.begin(), old, *old, comesBefore);
    if (above != old) {
        std::rotate(above, old, old + 1);
        return;
    }
    const auto below = std::lower_bound(old + 1, runs.end(), *old, comesBefore);
    std::rotate(old, old + 1, below);
}

} // namespace bothways::storage
