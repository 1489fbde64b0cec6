// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/study_file.h"

#include "core/study/fuel.h"
#include "core/study/properties.h"
#include "storage/bytes/file_bytes.h"
#include "storage/bytes/written_file.h"
#include "storage/study/change_values.h"
#include "storage/study/opening.h"
#include "storage/study/study_database.h"
#include "storage/study/study_rows.h"
#include "storage/study/unfinished_traces.h"

#include <SQLiteCpp/Transaction.h>

namespace bothways::storage {

using core::Done;
using core::Study;

namespace {

/// The properties in the form in which they are kept; an Error where one is not permitted.
Result<core::StudyProperties> checked(const core::StudyProperties& given)
{
    core::StudyProperties kept;
    for (const auto& [name, value] : core::propertiesAsText(given))
        if (const Outcome outcome = core::setProperty(kept, name, value); !outcome)
            return outcome.error();
    return kept;
}

} // namespace

StudyFile::StudyFile(std::unique_ptr<Private> p) : d(std::move(p)) {}
StudyFile::StudyFile(StudyFile&&) noexcept = default;
StudyFile& StudyFile::operator=(StudyFile&&) noexcept = default;
StudyFile::~StudyFile() = default;

Result<StudyFile> StudyFile::create(const std::filesystem::path& file,
                                    const core::StudyProperties& properties)
{
    const auto kept = checked(properties);
    if (!kept)
        return kept.error();
    if (const Outcome made = createFile(file, kept.value(), nowInUtc()); !made)
        return made.error();
    return open(file);
}

Result<StudyFile> StudyFile::open(const std::filesystem::path& file, bool readOnly)
{
    auto hold = Hold::take(file, !readOnly);
    if (!hold)
        return hold.error();
    auto p = std::make_unique<Private>();
    p->file = file;
    p->readOnly = readOnly;
    p->now = nowInUtc;
    p->hold = hold.value();
    if (const Outcome opened = openDatabase(*p); !opened)
        return opened.error();
    if (!readOnly && p->hold->isProof())
        if (const Outcome tidied = removeUnfinishedTraces(*p); !tidied)
            return tidied.error();
    return StudyFile(std::move(p));
}

Result<StudyFile> StudyFile::another() const
{
    auto p = std::make_unique<Private>();
    p->file = d->file;
    p->readOnly = d->readOnly;
    p->now = d->now;
    p->hold = d->hold;
    if (const Outcome opened = openDatabase(*p); !opened)
        return opened.error();
    return StudyFile(std::move(p));
}

void StudyFile::setWaiting(WaitingSaid said, std::chrono::milliseconds atMost)
{
    Waiting::setSaid(std::move(said), atMost);
}

bool StudyFile::isStudyFile(const std::filesystem::path& file)
{
    if (file.extension() == kStudyEnding)
        return true;
    if (Hold::isOpenHere(file))
        return true;                         // and closing a descriptor would drop SQLite's locks
    return beginsAsAStudy(headOf(file, 15)); // never waits for a pipe
}

const std::filesystem::path& StudyFile::path() const
{
    return d->file;
}

void StudyFile::setClock(std::function<std::string()> now)
{
    d->now = std::move(now);
}

Result<Study> StudyFile::study() const
{
    return d->guarded<Study>([&]() -> Result<Study> {
        const SQLite::Transaction oneState(*d->database);
        return d->current(*d->database);
    });
}

Outcome StudyFile::setProperties(const core::StudyProperties& properties, std::string_view words)
{
    const auto kept = checked(properties);
    if (!kept)
        return kept.error();
    HistoryDetail detail;
    return d->change("set", detail, [&](SQLite::Database& db) -> Outcome {
        const Study& study = d->current(db);
        if (kept.value().fuel != study.properties.fuel)
            if (const Outcome fits = core::checkFuel(study, kept.value().fuel); !fits)
                return d->error(fits.error().code, fits.error().message);
        detail = words.empty()
                     ? HistoryDetail{"properties", differences(study.properties, kept.value())}
                     : HistoryDetail{"words", {words}};
        rewriteProperties(db, kept.value());
        return Done{};
    });
}

} // namespace bothways::storage
