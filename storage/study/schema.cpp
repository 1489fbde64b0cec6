// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/schema.h"

#include "storage/study/recording_sums.h"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include <array>

namespace bothways::storage {
namespace {

// Version 1. Once released it is never edited: a later version is a step in migrate(). Columns are
// named as in the run sheet. No ON DELETE actions: undo works row by row, and so do we.
constexpr const char* kVersion1 = R"sql(
CREATE TABLE property (
    name  TEXT NOT NULL PRIMARY KEY CHECK (name <> ''),
    value TEXT NOT NULL
) STRICT;

CREATE TABLE run (
    id                   INTEGER PRIMARY KEY AUTOINCREMENT,
    run                  INTEGER NOT NULL UNIQUE CHECK (run BETWEEN 1 AND 999999999),
    configuration        TEXT NOT NULL CHECK (trim(configuration) <> ''),
    setting              TEXT NOT NULL DEFAULT '',
    direction            TEXT NOT NULL CHECK (trim(direction) <> ''),
    start                TEXT NOT NULL CHECK (start GLOB '????-??-??T??:??:*'),
    duration_s           REAL CHECK (duration_s > 0),
    distance_km          REAL CHECK (distance_km > 0),
    speed_kmh            REAL CHECK (speed_kmh > 0),
    consumption          REAL CHECK (consumption > 0),
    consumption_unit     TEXT CHECK (consumption_unit IN ('l_per_100km', 'mpg_us', 'mpg_imp',
                             'km_per_l', 'kwh_per_100km', 'fuel_l', 'fuel_gal_us')),
    consumption_decimals INTEGER CHECK (consumption_decimals >= 0),
    consumption_source   TEXT CHECK (consumption_source IN ('typed', 'trace')),
    control              REAL CHECK (control > 0),
    status               TEXT NOT NULL CHECK (status IN ('counted', 'discarded')),
    reason               TEXT CHECK (reason <> ''),
    evidence             TEXT,
    pair                 TEXT NOT NULL DEFAULT '',
    accessory_w          REAL,
    accessories          TEXT NOT NULL DEFAULT '',
    output_w             REAL,
    rotor_rpm_max        REAL,
    battery_v_start      REAL,
    battery_v_end        REAL,
    wind_ms              REAL,
    wind_from_deg        REAL,
    temperature_c        REAL,
    pressure_hpa         REAL,
    humidity_pct         REAL,
    trace                TEXT NOT NULL DEFAULT '',
    notes                TEXT NOT NULL DEFAULT '',
    CHECK ((consumption IS NULL) = (consumption_unit IS NULL)),
    CHECK ((consumption IS NULL) = (consumption_decimals IS NULL)),
    CHECK ((consumption IS NULL) = (consumption_source IS NULL)),
    CHECK (consumption_unit NOT IN ('fuel_l', 'fuel_gal_us') OR distance_km IS NOT NULL),
    CHECK (status = 'discarded' OR consumption IS NOT NULL OR trace <> ''),
    CHECK ((status = 'discarded') = (reason IS NOT NULL)),
    CHECK ((reason IS NULL) = (evidence IS NULL)),
    CHECK (reason <> 'other' OR trim(evidence) <> '')
) STRICT;

CREATE TABLE mark (
    run   INTEGER NOT NULL REFERENCES run (id),
    place INTEGER NOT NULL,
    at_s  REAL NOT NULL,
    word  TEXT NOT NULL CHECK (word <> ''),
    words TEXT NOT NULL,
    PRIMARY KEY (run, place)
) STRICT;

CREATE TABLE accessory_on (
    run       INTEGER NOT NULL REFERENCES run (id),
    accessory TEXT NOT NULL CHECK (accessory <> ''),
    on_s      REAL NOT NULL,
    PRIMARY KEY (run, accessory)
) STRICT;

CREATE TABLE extra (
    run   INTEGER NOT NULL REFERENCES run (id),
    place INTEGER NOT NULL,
    name  TEXT NOT NULL CHECK (name <> ''),
    value TEXT NOT NULL,
    PRIMARY KEY (run, place)
) STRICT;

CREATE TABLE overruled (
    run   INTEGER NOT NULL REFERENCES run (id),
    rule  TEXT NOT NULL,
    words TEXT NOT NULL CHECK (trim(words) <> ''),
    PRIMARY KEY (run, rule)
) STRICT;

CREATE TABLE trace_data (
    id    INTEGER PRIMARY KEY AUTOINCREMENT,
    state TEXT NOT NULL CHECK (state IN ('unfinished', 'complete'))
) STRICT;

CREATE TABLE chunk (
    data      INTEGER NOT NULL REFERENCES trace_data (id),
    place     INTEGER NOT NULL CHECK (place >= 0),
    first_row INTEGER NOT NULL,
    rows      INTEGER NOT NULL,
    samples   INTEGER NOT NULL,
    minimum   REAL,
    maximum   REAL,
    bytes     BLOB NOT NULL,
    PRIMARY KEY (data, place, first_row)
) STRICT;

CREATE TABLE recording (
    id             INTEGER PRIMARY KEY,
    name           TEXT NOT NULL,
    format         TEXT NOT NULL CHECK (format IN ('csv', 'gpx', 'nmea')),
    clock_start_us INTEGER,
    utc_offset_min INTEGER,
    from_s         REAL NOT NULL,
    to_s           REAL NOT NULL,
    rows           INTEGER NOT NULL
) STRICT;

CREATE TABLE channel (
    recording INTEGER NOT NULL REFERENCES recording (id),
    place     INTEGER NOT NULL CHECK (place > 0),
    name      TEXT NOT NULL CHECK (name <> ''),
    unit      TEXT NOT NULL DEFAULT '',
    factor    REAL NOT NULL DEFAULT 1,
    "offset"  REAL NOT NULL DEFAULT 0,
    samples   INTEGER NOT NULL,
    PRIMARY KEY (recording, place),
    UNIQUE (recording, name)
) STRICT;

CREATE TABLE recording_mark (
    recording INTEGER NOT NULL REFERENCES recording (id),
    place     INTEGER NOT NULL,
    at_s      REAL NOT NULL,
    words     TEXT NOT NULL CHECK (words <> ''),
    PRIMARY KEY (recording, place)
) STRICT;

CREATE TABLE run_trace (
    run       INTEGER NOT NULL PRIMARY KEY REFERENCES run (id),
    recording INTEGER NOT NULL REFERENCES recording (id),
    offset_s  REAL NOT NULL
) STRICT;

CREATE TABLE mapping (
    header    TEXT NOT NULL,
    place     INTEGER NOT NULL,
    name      TEXT NOT NULL,
    channel   TEXT NOT NULL,
    factor    REAL NOT NULL,
    "offset"  REAL NOT NULL,
    PRIMARY KEY (header, place)
) STRICT;

CREATE TABLE history (
    id        INTEGER PRIMARY KEY AUTOINCREMENT,
    at        TEXT NOT NULL,
    kind      TEXT NOT NULL CHECK (kind <> ''),
    detail    TEXT NOT NULL,
    state     TEXT NOT NULL CHECK (state IN ('note', 'stands', 'undone', 'gone')),
    changeset BLOB,
    checksum  TEXT NOT NULL,
    CHECK ((state = 'note') = (changeset IS NULL))
) STRICT;

CREATE TABLE seal (
    id     INTEGER PRIMARY KEY CHECK (id = 1),
    sha256 TEXT NOT NULL
) STRICT;

CREATE VIEW run_list AS
SELECT run, configuration, setting, direction, start, duration_s, distance_km, speed_kmh,
       CASE consumption_unit
           WHEN 'l_per_100km' THEN consumption
           WHEN 'mpg_us' THEN 112903.0 / 480.0 / consumption
           WHEN 'mpg_imp' THEN 56826125.0 / 201168.0 / consumption
           WHEN 'km_per_l' THEN 100.0 / consumption
           WHEN 'fuel_l' THEN 100.0 * consumption / distance_km
           WHEN 'fuel_gal_us' THEN 378.5411784 * consumption / distance_km
       END AS l_per_100km,
       CASE consumption_unit WHEN 'kwh_per_100km' THEN consumption END AS kwh_per_100km,
       consumption AS given, consumption_unit AS given_unit, status, reason, evidence, pair, notes
FROM run ORDER BY start, id;
)sql";

// Version 2: recordings are under the seal, and a line of the history is found by its state.
// A chunk's sum has a table of its own, so that it is read without the bytes and old chunks stay
// where they lie.
constexpr const char* kVersion2 = R"sql(
ALTER TABLE trace_data ADD COLUMN chunks INTEGER NOT NULL DEFAULT 0;
ALTER TABLE trace_data ADD COLUMN sha256 TEXT NOT NULL DEFAULT '';

CREATE TABLE chunk_sum (
    data      INTEGER NOT NULL REFERENCES trace_data (id),
    place     INTEGER NOT NULL,
    first_row INTEGER NOT NULL,
    sha256    TEXT NOT NULL,
    PRIMARY KEY (data, place, first_row)
) STRICT, WITHOUT ROWID;

CREATE INDEX history_state ON history (state);
)sql";

constexpr std::array<std::string_view, 10> kUndoable = {
    "property",  "run",       "mark",    "accessory_on",   "extra",
    "overruled", "recording", "channel", "recording_mark", "run_trace"};

} // namespace

void createSchema(SQLite::Database& database, int version)
{
    database.exec(fmt::format("PRAGMA application_id = {}", kApplicationId));
    database.exec(kVersion1);
    database.exec("PRAGMA user_version = 1");
    if (version > 1)
        migrate(database, 1);
}

void migrate(SQLite::Database& database, int from)
{
    // One `if (from < n) { ... }` a version, in order.
    if (from < 2) {
        database.exec(kVersion2);
        sumOldRecordings(database);
    }
    database.exec(fmt::format("PRAGMA user_version = {}", kSchemaVersion));
}

std::span<const std::string_view> undoableTables()
{
    return kUndoable;
}

} // namespace bothways::storage
