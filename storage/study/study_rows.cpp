// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/study_rows.h"

#include "core/study/clock.h"
#include "core/study/properties.h"
#include "storage/sheet/run_columns.h"
#include "storage/study/run_row.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>

namespace bothways::storage {
namespace {

using core::Run;
using core::RunId;
using namespace run_row;

void bindOptional(SQLite::Statement& row, int at, const std::optional<double>& value)
{
    if (value)
        row.bind(at, *value);
    else
        row.bind(at);
}

/// Binds the columns of storedColumns() from parameter 1 on.
/// @return  the number of the next parameter
int bindRun(SQLite::Statement& row, const Run& run)
{
    const auto at = [](Field field) { return static_cast<int>(field) + 1; };
    row.bind(at(number), run.number);
    row.bind(at(configuration), run.configuration);
    row.bind(at(setting), run.setting);
    row.bind(at(direction), run.direction);
    row.bind(at(start), core::formatDateTime(run.start));
    if (run.consumption) {
        row.bind(at(consumption), run.consumption->value);
        row.bind(at(consumptionUnit), std::string(core::unitName(run.consumption->unit)));
        row.bind(at(consumptionDecimals), run.consumption->decimals);
        row.bind(at(consumptionSource), run.consumption->from_trace ? "trace" : "typed");
    }
    row.bind(at(status), run.counted() ? "counted" : "discarded");
    if (run.discard) {
        row.bind(at(reason), run.discard->reason);
        row.bind(at(evidence), run.discard->evidence);
    }
    row.bind(at(pair), run.pair_mark);
    row.bind(at(accessories), run.accessories);
    row.bind(at(trace), run.trace);
    row.bind(at(notes), run.notes);
    int next = at(fieldCount);
    for (const NumberColumn& column : numberColumns())
        if (column.factor == 1.0)
            bindOptional(row, next++, run.*column.field);
    return next;
}

void insertDetails(SQLite::Database& database, const Run& run, RunId id)
{
    SQLite::Statement mark(
        database, "INSERT INTO mark (run, place, at_s, word, words) VALUES (?, ?, ?, ?, ?)");
    for (std::size_t i = 0; i < run.marks.size(); ++i) {
        mark.bind(1, toColumn(id));
        mark.bind(2, static_cast<std::int64_t>(i));
        mark.bind(3, run.marks[i].at_s);
        mark.bind(4, run.marks[i].word);
        mark.bind(5, run.marks[i].words);
        mark.exec();
        mark.reset();
    }
    SQLite::Statement on(database,
                         "INSERT INTO accessory_on (run, accessory, on_s) VALUES (?, ?, ?)");
    for (const auto& [name, on_s] : run.accessory_on_s) {
        on.bind(1, toColumn(id));
        on.bind(2, name);
        on.bind(3, on_s);
        on.exec();
        on.reset();
    }
    SQLite::Statement extra(database,
                            "INSERT INTO extra (run, place, name, value) VALUES (?, ?, ?, ?)");
    for (std::size_t i = 0; i < run.extra.size(); ++i) {
        extra.bind(1, toColumn(id));
        extra.bind(2, static_cast<std::int64_t>(i));
        extra.bind(3, run.extra[i].first);
        extra.bind(4, run.extra[i].second);
        extra.exec();
        extra.reset();
    }
}

void deleteWhereRun(SQLite::Database& database, std::initializer_list<const char*> statements,
                    RunId id)
{
    for (const char* sql : statements) {
        SQLite::Statement statement(database, sql);
        statement.bind(1, toColumn(id));
        statement.exec();
    }
}

void deleteDetails(SQLite::Database& database, RunId id)
{
    deleteWhereRun(database,
                   {"DELETE FROM mark WHERE run = ?", "DELETE FROM accessory_on WHERE run = ?",
                    "DELETE FROM extra WHERE run = ?"},
                   id);
}

} // namespace

std::vector<std::string_view> run_row::storedColumns()
{
    std::vector<std::string_view> names(kFields.begin(), kFields.end());
    for (const NumberColumn& column : numberColumns())
        if (column.factor == 1.0)
            names.push_back(column.name);
    return names;
}

RunId insertRun(SQLite::Database& database, const Run& run)
{
    const auto columns = storedColumns();
    const std::vector<std::string_view> values(columns.size(), "?");
    SQLite::Statement row(database, fmt::format("INSERT INTO run ({}) VALUES ({})",
                                                fmt::join(columns, ", "), fmt::join(values, ", ")));
    bindRun(row, run);
    row.exec();
    const RunId id{database.getLastInsertRowid()};
    insertDetails(database, run, id);
    return id;
}

void rewriteRun(SQLite::Database& database, const Run& run)
{
    SQLite::Statement row(database, fmt::format("UPDATE run SET {} = ? WHERE id = ?",
                                                fmt::join(storedColumns(), " = ?, ")));
    const int next = bindRun(row, run);
    row.bind(next, toColumn(run.id));
    row.exec();
    deleteDetails(database, run.id);
    insertDetails(database, run, run.id);
}

void deleteRun(SQLite::Database& database, RunId run)
{
    deleteDetails(database, run);
    deleteWhereRun(database,
                   {"DELETE FROM overruled WHERE run = ?", "DELETE FROM run_trace WHERE run = ?",
                    "DELETE FROM run WHERE id = ?"},
                   run);
}

void assignRunTrace(SQLite::Database& database, core::RunId run, core::RecordingId recording,
                    double offset_s)
{
    SQLite::Statement row(database,
                          "INSERT INTO run_trace (run, recording, offset_s) VALUES (?, ?, ?) "
                          "ON CONFLICT (run) DO UPDATE SET recording = excluded.recording, "
                          "offset_s = excluded.offset_s");
    row.bind(1, toColumn(run));
    row.bind(2, static_cast<std::int64_t>(recording));
    row.bind(3, offset_s);
    row.exec();
}

void rewriteProperties(SQLite::Database& database, const core::StudyProperties& properties)
{
    database.exec("DELETE FROM property");
    SQLite::Statement row(database, "INSERT INTO property (name, value) VALUES (?, ?)");
    for (const auto& [name, value] : core::propertiesAsText(properties)) {
        row.bind(1, name);
        row.bind(2, value);
        row.exec();
        row.reset();
    }
}

} // namespace bothways::storage
