// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/content.h"

#include "storage/study/connection.h"
#include "storage/study/schema.h"
#include "storage/study/schema_check.h"
#include "storage/study/seal_version_1.h"
#include "storage/study/study_rows.h"

#include <SQLiteCpp/Exception.h>
#include <fmt/format.h>
#include <sqlite3.h>

namespace bothways::storage {
namespace {

/// Above it the pages of the traces are left to the sums of their chunks.
constexpr std::uintmax_t kCheckWholeBelow = std::uintmax_t{64} << 20;
/// An honest schema takes some 600 steps of SQLite's machine.
constexpr std::int64_t kSchemaSteps = 10'000;
/// Checking pages takes half a step for each byte, reading the rest less.
constexpr std::int64_t kLeastSteps = 2'000'000, kStepsPerByte = 10;

constexpr auto kNotOurs =
    "is damaged: its content is not what Bothways wrote last; restore it from a copy"_t;

bool passes(SQLite::Database& database, const std::string& sql)
{
    Query row(database, sql);
    return row.step() && row.bytes(0) == "ok";
}

bool pagesAreSound(SQLite::Database& database, std::uintmax_t bytes)
{
    if (bytes < kCheckWholeBelow)
        return passes(database, "PRAGMA integrity_check(1)");
    for (const std::string_view table : undoableTables())
        if (!passes(database, fmt::format("PRAGMA integrity_check({})", table)))
            return false;
    return passes(database, "PRAGMA integrity_check(history)");
}

[[noreturn]] void refuseTooMuch(const SQLite::Exception& problem, core::Message message)
{
    const int code = problem.getErrorCode() & 0xFF;
    if (code == SQLITE_INTERRUPT || code == SQLITE_TOOBIG)
        throw RefusedContent{std::move(message)};
    throw problem;
}

} // namespace

int checkedVersion(SQLite::Database& database)
{
    const Budget budget(database, kSchemaSteps);
    try {
        if (oneNumber(database, "PRAGMA application_id") != kApplicationId)
            throw RefusedContent{"is an SQLite database, but not a study; expected a file that "
                                 "Bothways made"_t};
        const auto version = static_cast<int>(oneNumber(database, "PRAGMA user_version"));
        if (version > kSchemaVersion)
            throw RefusedContent{
                core::message("was made by a newer Bothways (format {}; this one knows "
                              "formats up to {}); it is left as it is"_t,
                              version, kSchemaVersion)};
        if (version < 1)
            throw RefusedContent{"is damaged: it has no format number"_t};
        if (auto foreign = foreignSchema(database, version))
            throw RefusedContent{*std::move(foreign)};
        return version;
    } catch (const SQLite::Exception& problem) {
        refuseTooMuch(problem,
                      "holds more or larger tables than a study has; it is left as it is"_t);
    }
}

Content checkedContent(SQLite::Database& database, int version, std::uintmax_t bytes)
{
    const Budget budget(database, kLeastSteps + kStepsPerByte * static_cast<std::int64_t>(bytes));
    boundCache(database);
    try {
        if (!pagesAreSound(database, bytes))
            throw RefusedContent{
                "is damaged (SQLite finds broken pages); restore it from a copy"_t};
        if (Query(database, "PRAGMA foreign_key_check").step())
            throw RefusedContent{kNotOurs};
        return checkedRows(database, version);
    } catch (const SQLite::Exception& problem) {
        refuseTooMuch(problem, "is damaged: it holds more than a study of its size can; "
                               "restore it from a copy"_t);
    }
}

Content checkedRows(SQLite::Database& database, int version)
{
    Content content;
    bool fits = false;
    if (version == 1) {
        fits = firstSealFits(database);
    } else {
        content.seal.emplace(database);
        fits = storedSeal(database) == content.seal->top();
    }
    if (!fits || !historyFits(database))
        throw RefusedContent{kNotOurs};
    content.study = readStudy(database);
    checkOtherRows(database);
    return content;
}

} // namespace bothways::storage
