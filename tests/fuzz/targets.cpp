// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one function for each reader, and the list of them.
#include "tests/fuzz/targets.h"

#include "core/recording/unreadable_recording.h"
#include "core/screening/screening.h"
#include "core/study/properties.h"
#include "storage/chunks/chunk_codec.h"
#include "storage/instruments/line_parser.h"
#include "storage/instruments/line_splitter.h"
#include "storage/instruments/obd_dialogue.h"
#include "storage/instruments/rig.h"
#include "storage/loggers/channel_mapping.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"
#include "storage/recordings/trace_import.h"
#include "storage/sheet/ordinary_sheet.h"
#include "storage/sheet/run_sheet.h"
#include "storage/study/changeset_check.h"
#include "storage/study/recording_sums.h"
#include "storage/study/seal.h"
#include "storage/study/study_database.h"
#include "storage/study/study_file.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>
#include <zstd.h>

#include <algorithm>
#include <cmath>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include <unistd.h>

namespace bothways::tests {
namespace {

namespace fs = std::filesystem;
using namespace bothways::storage;

constexpr std::string_view kFine;

/// A file in memory where there is such a place; one for each process.
class FuzzFile {
public:
    explicit FuzzFile(std::string_view bytes) { std::ofstream(path(), std::ios::binary) << bytes; }
    ~FuzzFile()
    {
        std::error_code ignored;
        fs::remove(path(), ignored);
        fs::remove(path().string() + "-journal", ignored);
    }
    FuzzFile(const FuzzFile&) = delete;
    FuzzFile& operator=(const FuzzFile&) = delete;
    static const fs::path& path()
    {
        static const fs::path file = [] {
            std::error_code problem;
            const fs::path memory = "/dev/shm";
            const fs::path folder =
                fs::is_directory(memory, problem) ? memory : fs::temp_directory_path();
            return folder / fmt::format("bothways_fuzz_{}", ::getpid());
        }();
        return file;
    }
};

std::string_view feedChunk(std::string_view bytes)
{
    static ChunkDecoder decoder;
    const std::span data(reinterpret_cast<const std::byte*>(bytes.data()), bytes.size());
    std::vector<double> values;
    const auto chunk = decoder.decode(data, values);
    const bool sound = !decoder.check(data, {}).has_value();
    if (static_cast<bool>(chunk) != sound)
        return "check() and decode() do not agree";
    if (!chunk)
        return values.empty() ? kFine : "a refused chunk left values";
    return values.size() == chunk.value().samples && chunk.value().samples <= chunk.value().rows
               ? kFine
               : "not as many values as samples";
}

/// What is packed in a chunk: its checksum would keep every change of a whole one from the reader.
std::string_view feedChunkContent(std::string_view bytes)
{
    static ZSTD_CCtx* const context = [] {
        ZSTD_CCtx* made = ZSTD_createCCtx();
        ZSTD_CCtx_setParameter(made, ZSTD_c_checksumFlag, 1);
        return made;
    }();
    std::string packed(ZSTD_compressBound(bytes.size()), '\0');
    const std::size_t size =
        ZSTD_compress2(context, packed.data(), packed.size(), bytes.data(), bytes.size());
    if (ZSTD_isError(size) != 0)
        return "cannot be packed";
    packed.resize(size);
    return feedChunk(packed);
}

std::string_view feedRecording(std::string_view bytes)
{
    const FuzzFile file(bytes);
    core::Run run;
    run.number = 1;
    const auto trace = readTraceFile(FuzzFile::path(), run);
    if (!trace)
        return trace.error().message.empty() ? "an Error without words" : kFine;
    for (const core::ChannelInfo& channel : trace.value()->channels()) {
        const auto samples = trace.value()->samples(channel.name);
        for (std::size_t i = 1; samples && i < samples->size(); ++i)
            if (!(samples->time_s[i] > samples->time_s[i - 1]))
                return "times that do not ascend";
    }
    return kFine;
}

std::string_view feedSheet(std::string_view bytes)
{
    const auto sheet = parseRunSheet(bytes, "fuzz.csv", {"2026-05-09", "2026-05-09"});
    if (!sheet)
        return sheet.error().message.empty() ? "an Error without words" : kFine;
    const auto again = parseRunSheet(writeRunSheet(sheet.value().study), "again.csv",
                                     {"2026-05-09", "2026-05-09"});
    return again && again.value().study.runs.size() == sheet.value().study.runs.size()
               ? kFine
               : "a sheet that was written is not what was read";
}

/// Workbooks and texts of all kinds, as a dialog and an import look at them.
std::string_view feedSpreadsheet(std::string_view bytes)
{
    const auto preview = previewSheet(bytes, "fuzz.xlsx");
    if (!preview && preview.error().message.empty())
        return "an Error without words";
    if (preview && preview.value().rows.size() != preview.value().lines.size())
        return "a line without its number";
    static_cast<void>(sheetHeaderKey(bytes, "fuzz.xlsx", {}));
    const std::string_view said = feedSheet(bytes);
    const bool comesIn =
        parseRunSheet(bytes, "fuzz.xlsx", {"2026-05-09", "2026-05-09"}).operator bool();
    return comesIn && !preview ? "a sheet comes in that cannot be shown" : said;
}

std::string_view feedMapping(std::string_view bytes)
{
    const auto mapping = parseMapping(bytes);
    if (!mapping)
        return kFine;
    const auto again = parseMapping(formatMapping(mapping.value()));
    return again && again.value() == mapping.value() ? kFine : "a mapping is not what was written";
}

std::string_view feedStudy(std::string_view bytes)
{
    const FuzzFile file(bytes);
    const auto study = StudyFile::open(FuzzFile::path(), true);
    if (!study)
        return study.error().message.empty() ? "an Error without words" : kFine;
    const auto runs = study.value().study();
    static_cast<void>(study.value().history());
    static_cast<void>(recordings(study.value()));
    const auto whole = checkRecordings(study.value());
    if (!runs || !whole)
        return kFine;
    const auto screening = core::readingRecordings(
        [&] { return core::screen(runs.value(), tracesOf(study.value())); });
    return screening ? kFine : "a recording that was found whole cannot be read";
}

core::Run fuzzRun(int number)
{
    core::Run run;
    run.number = number;
    run.configuration = number < 3 ? "A" : "B";
    run.direction = number % 2 == 1 ? "out" : "return";
    run.start.us = 1'778'305'200'000'000 + number * 420'000'000LL;
    run.duration_s = 210.0;
    run.consumption = core::Consumption{8.4, core::ConsumptionUnit::lPer100km, 2, false};
    run.marks = {{31.2, "passing_traffic", "lorry"}};
    run.accessory_on_s = {{"seat", 3}};
    run.extra = {{"Driver", "Ada"}};
    return run;
}

/// A study with something in every table.
std::string fullStudy()
{
    const FuzzFile recording("time_s,rotor_rpm\n0,2500\n1,2501\n2,2502\n210,2500\n");
    const fs::path path = FuzzFile::path().string() + ".bothways";
    std::error_code ignored;
    fs::remove(path, ignored);
    {
        auto made = StudyFile::create(path);
        StudyFile study = std::move(made).take();
        for (int number = 1; number <= 4; ++number)
            static_cast<void>(study.addRun(fuzzRun(number)));
        static_cast<void>(study.overrule(Overruled{1, "adjusted", "looked at"}));
        TraceImportOptions options;
        options.run = 1;
        options.mapping = {{"rotor_rpm", "rotor_rpm", 1.0, 0.0}};
        static_cast<void>(importTrace(study, FuzzFile::path(), options));
        static_cast<void>(study.undo());
        static_cast<void>(study.redo());
    }
    std::ifstream stream(path, std::ios::binary);
    std::string bytes{std::istreambuf_iterator<char>(stream), {}};
    fs::remove(path, ignored);
    return bytes;
}

void bindValue(SQLite::Statement& row, std::string_view value)
{
    const std::string text(value.substr(value.empty() ? 0 : 1));
    switch (value.empty() ? 'n' : value.front()) {
    case 'i':
        row.bind(1, static_cast<std::int64_t>(std::strtoll(text.c_str(), nullptr, 10)));
        break;
    case 'r': row.bind(1, std::strtod(text.c_str(), nullptr)); break;
    case 't': row.bind(1, text); break;
    case 'b': row.bind(1, text.data(), static_cast<int>(text.size())); break;
    default: row.bind(1);
    }
}

/// "TABLE COLUMN ROW VALUE", the first three by number: what the tables do not take is left out.
void changeRow(SQLite::Database& database, std::string_view line)
{
    constexpr std::array kTables = {"property",  "run",       "mark",           "accessory_on",
                                    "extra",     "overruled", "trace_data",     "chunk",
                                    "recording", "channel",   "recording_mark", "run_trace",
                                    "mapping",   "history",   "sqlite_sequence"};
    std::array<std::size_t, 3> numbers{};
    for (std::size_t& number : numbers) {
        const std::size_t end = std::min(line.find(' '), line.size());
        number = static_cast<std::size_t>(
            std::strtoul(std::string(line.substr(0, end)).c_str(), nullptr, 10));
        line.remove_prefix(std::min(end + 1, line.size()));
    }
    const std::string table = kTables.at(numbers[0] % kTables.size());
    try {
        std::vector<std::string> columns;
        SQLite::Statement names(database, "SELECT name FROM pragma_table_info('" + table + "')");
        while (names.executeStep())
            columns.push_back(names.getColumn(0).getString());
        SQLite::Statement row(
            database, fmt::format("UPDATE {0} SET \"{1}\" = ? WHERE rowid = (SELECT rowid FROM {0} "
                                  "LIMIT 1 OFFSET {2})",
                                  table, columns.at(numbers[1] % columns.size()), numbers[2] % 8));
        bindValue(row, line);
        row.exec();
    } catch (const std::exception&) {
        return;
    }
}

/// Rows that somebody changed who knows the format: every sum fits.
std::string_view feedRows(std::string_view bytes)
{
    static const std::string full = fullStudy();
    const FuzzFile file(full);
    try {
        SQLite::Database database(FuzzFile::path().string(), SQLite::OPEN_READWRITE);
        database.exec("PRAGMA synchronous = OFF; PRAGMA ignore_check_constraints = ON; BEGIN");
        for (int lines = 0; !bytes.empty() && lines < 32; ++lines) {
            const std::size_t end = std::min(bytes.find('\n'), bytes.size());
            changeRow(database, bytes.substr(0, end));
            bytes.remove_prefix(std::min(end + 1, bytes.size()));
        }
        completeRecording(database, 1);
        SQLite::Statement lines(database, "SELECT at, kind, detail, changeset, id FROM history");
        SQLite::Statement sum(database, "UPDATE history SET checksum = ? WHERE id = ?");
        while (lines.executeStep()) {
            sum.bind(
                1, checksumOfEntry(lines.getColumn(0).getString(), lines.getColumn(1).getString(),
                                   lines.getColumn(2).getString(), lines.getColumn(3).getString()));
            sum.bind(2, lines.getColumn(4).getInt64());
            sum.exec();
            sum.reset();
        }
        storeSeal(database, Seal(database).top());
        database.exec("COMMIT");
    } catch (const std::exception&) {
        return kFine; // SQLite itself does not take it
    }
    std::ifstream stream(FuzzFile::path(), std::ios::binary);
    const std::string forged{std::istreambuf_iterator<char>(stream), {}};
    const std::string_view said = feedStudy(forged);
    const FuzzFile again(forged);
    auto study = StudyFile::open(FuzzFile::path());
    if (!study)
        return said;
    for (int i = 0; i < 8 && study.value().undo(); ++i)
        if (!study.value().study())
            return "a study cannot be read after undo";
    for (int i = 0; i < 8 && study.value().redo(); ++i)
        if (!study.value().study())
            return "a study cannot be read after redo";
    return said;
}

std::string_view feedChangeset(std::string_view bytes)
{
    static const StudyFile study = [] {
        const FuzzFile name(std::string_view{});
        std::error_code ignored;
        fs::remove(FuzzFile::path(), ignored);
        auto made = StudyFile::create(FuzzFile::path());
        return std::move(made).take();
    }();
    static_cast<void>(isPossibleChangeset(*study.database().database, bytes));
    return kFine;
}

/// "name=value"
std::string_view feedProperty(std::string_view bytes)
{
    const std::size_t equals = std::min(bytes.find('='), bytes.size());
    core::StudyProperties properties;
    const auto set = core::setProperty(properties, bytes.substr(0, equals),
                                       bytes.substr(std::min(equals + 1, bytes.size())));
    if (!set)
        return kFine;
    core::StudyProperties again;
    for (const auto& [name, value] : core::propertiesAsText(properties))
        if (!core::setProperty(again, name, value))
            return "a property that was set is refused as it is written";
    return again == properties ? kFine : "a property is not what was written";
}

/// All that lines of an instrument say, in order.
struct SaidByLines {
    std::vector<TypedNumber> numbers;
    std::size_t garbage = 0, lines = 0;
    friend bool operator==(const SaidByLines&, const SaidByLines&) = default;
};
SaidByLines saidByLines(std::string_view bytes, std::size_t cut)
{
    SaidByLines said;
    std::uint32_t channels = 0;
    const auto parser =
        makeNumbersParser([&](std::string_view, std::string_view, std::string_view) {
            return std::vector<std::uint32_t>{channels++};
        });
    LineSplitter splitter;
    ParsedLine parsed;
    for (std::size_t at = 0; at < bytes.size(); at += cut)
        splitter.feed(bytes.substr(at, cut), [&](std::string_view line, bool suspect) {
            parser->take(line, suspect, parsed);
            ++said.lines;
            said.garbage += parsed.is == ParsedLine::Is::garbage;
            for (const ParsedValue& value : parsed.values)
                said.numbers.push_back(value.number);
        });
    return said;
}

std::string_view feedLines(std::string_view bytes)
{
    const SaidByLines whole = saidByLines(bytes, std::max<std::size_t>(bytes.size(), 1));
    if (!(saidByLines(bytes, 1) == whole) || !(saidByLines(bytes, 7) == whole))
        return "lines say something else when they come in other pieces";
    for (const TypedNumber& number : whole.numbers)
        if (!std::isfinite(number.value()))
            return "a number that is none";
    return kFine;
}

std::string_view feedObd(std::string_view bytes)
{
    std::string_view fault;
    Instrument instrument;
    instrument.fuel = "petrol";
    ObdDialogue dialogue(
        instrument,
        [&](const ObdRequest& request) {
            const std::string& asked = request.bytes();
            if (!asked.starts_with("AT") && !(asked.starts_with("01") && asked.size() == 5))
                fault = "something that is not on the list was sent";
        },
        [](std::string_view, std::string_view, std::string_view, bool) {
            return std::vector<std::uint32_t>{0};
        });
    std::vector<ParsedLine> said;
    double now_s = 0.0;
    dialogue.begin(now_s);
    while (!bytes.empty()) {
        const std::size_t size = std::min<std::size_t>(bytes.size(), 16);
        dialogue.take(bytes.substr(0, size), now_s, said);
        dialogue.look(now_s += 0.5);
        bytes.remove_prefix(size);
    }
    for (const ParsedLine& line : said)
        for (const ParsedValue& value : line.values)
            if (!std::isfinite(value.number.value()))
                fault = "a number that is none";
    return fault;
}

std::string_view feedRig(std::string_view bytes)
{
    const auto rig = rigFromText(bytes, "fuzz.json");
    if (!rig)
        return rig.error().message.empty() ? "an Error without words" : kFine;
    const auto again = rigFromText(rigText(rig.value()), "again.json");
    return again && again.value() == rig.value() ? kFine : "a rig is not what was written";
}

constexpr FuzzTarget kTargets[] = {
    {"lines", feedLines},
    {"obd", feedObd},
    {"rig", feedRig},
    {"chunk", feedChunk},
    {"csv", feedRecording},
    {"gpx", feedRecording},
    {"nmea", feedRecording},
    {"sheet", feedSheet},
    {"mapping", feedMapping},
    {"study", feedStudy},
    {"property", feedProperty},
    {"changeset", feedChangeset},
    {"spreadsheet", feedSpreadsheet},
    {"chunk_content", feedChunkContent},
    {"rows", feedRows},
};

} // namespace

std::span<const FuzzTarget> fuzzTargets()
{
    return kTargets;
}

} // namespace bothways::tests
