// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/cut_import.h"
#include "app/cli/verbs/sheet_import.h"
#include "app/cli/verbs/trace_import.h"
#include "app/cli/verbs/verbs.h"
#include "app/cli/warnings.h"
#include "core/study/clock.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/trace_import.h"
#include "storage/sheet/run_columns.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct ImportOptions {
    std::string study, sheet, trace, recording, date, cut, gates, configuration, start;
    std::optional<double> shift_s;
    storage::SheetTraces traces = {};
    std::optional<std::uint64_t> run;
    std::vector<std::string> channels;
    storage::SheetOptions spreadsheet = {};
};

/// What the parser cannot see: options that go together.
Outcome checkOptions(const ImportOptions& options)
{
    for (const std::string& word : {options.study, options.sheet})
        if (!options.channels.empty() && word.find('=') != std::string::npos &&
            !std::filesystem::exists(word))
            return wrongUse(strayValue(word, "--channel"));
    const int given = static_cast<int>(!options.sheet.empty()) +
                      static_cast<int>(!options.trace.empty()) +
                      static_cast<int>(!options.recording.empty());
    if (given != 1)
        return wrongUse("expected one of a run sheet, --trace FILE and --recording NAME"_t,
                        "bothways import");
    if (!options.cut.empty() && !options.sheet.empty())
        return wrongUse("--cut goes with --trace FILE or --recording NAME"_t, "bothways import");
    if (options.cut.empty() && !options.recording.empty())
        return wrongUse("--recording NAME is there to be cut; expected --cut"_t, "bothways import");
    if (!options.start.empty() && !options.sheet.empty())
        return wrongUse(
            "--start goes with --trace FILE or --recording NAME; in a sheet a recording "
            "without a clock begins with its run"_t,
            "bothways import");
    if (!options.traces.folder.empty() && options.sheet.empty())
        return wrongUse("--traces goes with a run sheet"_t, "bothways import");
    if (!options.date.empty() && !core::parseDate_us(options.date))
        return wrongUse(core::message("'{}' is no date; expected YYYY-MM-DD, a day that there is"_t,
                                      options.date),
                        "--date");
    return Done{};
}

/// @param before  the study without it
Outcome importTrace(const ImportOptions& options, storage::StudyFile& file,
                    const core::Study& before, Surroundings& io)
{
    RecordingOrder order{options.trace, {}, {}, {}, options.shift_s.value_or(0.0), options.start};
    auto mapping = mappingFrom(options.channels);
    if (!mapping)
        return mapping.error();
    order.mapping = std::move(mapping).take();
    if (options.run) {
        order.run = static_cast<int>(*options.run);
        if (const auto id = runByNumber(before, *order.run, options.study); !id)
            return id.error();
    }
    CutWords words;
    if (!options.cut.empty()) {
        const auto cut = cutOrderFrom(options.cut, options.gates, options.configuration);
        if (!cut)
            return cut.error();
        order.cuts = [&, how = cut.value()](const storage::RecordingInfo& recording) {
            return cutsOf(io.language, file, recording, before, how, words);
        };
    }
    const auto imported = importRecording(file, order, io);
    if (!imported) {
        io.told() << words.parts.str();
        return imported.error();
    }
    io.told() << whatWasMet(io.language, imported.value(), order.file.filename().string())
              << words.parts.str() << words.done;
    for (const std::string& warning : words.warnings)
        warn(warning, io);
    if (!order.run && !order.cuts)
        io.told() << "  "
                  << io.language.say(
                         "it belongs to no run yet; cut it into runs with 'bothways import STUDY "
                         "--recording NAME --cut times' (or marks, position, speed), or import it "
                         "with --run N instead"_t)
                  << "\n";
    warnOfASecondCopy(file, imported.value().recording, io);
    return Done{};
}

/// Of a recording that the study has: what is said of its clock, for this cut.
Outcome setClock(const ImportOptions& options, const core::Study& study, CutOrder& how,
                 storage::RecordingInfo& recording)
{
    if (!options.start.empty()) {
        if (recording.first)
            return wrongUse(
                "the recording has a clock of its own, which says when it began; expected "
                "only by how much it is wrong"_t,
                recording.name);
        const auto start = storage::recordingStart(options.start, study);
        if (!start)
            return wrongUse(start.error().message, "--start");
        recording.first = start.value();
    }
    if (!recording.first && options.shift_s)
        return wrongUse("the recording has no clock that could be wrong; expected when it began"_t,
                        recording.name);
    how.clock.ahead_s = -options.shift_s.value_or(0.0);
    return Done{};
}

/// A recording that the study has already.
Outcome cutKnown(const ImportOptions& options, storage::StudyFile& file, const core::Study& before,
                 Surroundings& io)
{
    auto how = cutOrderFrom(options.cut, options.gates, options.configuration);
    if (!how)
        return how.error();
    auto recording = recordingNamed(io.language, file, options.recording);
    if (!recording)
        return recording.error();
    if (Outcome set = setClock(options, before, how.value(), recording.value()); !set)
        return set;
    CutWords words;
    const auto cuts = cutsOf(io.language, file, recording.value(), before, how.value(), words);
    io.told() << words.parts.str();
    if (!cuts)
        return cuts.error();
    if (Outcome cut = storage::cutRecording(file, recording.value().id, cuts.value()); !cut)
        return cut;
    io.told() << words.done;
    for (const std::string& warning : words.warnings)
        warn(warning, io);
    return Done{};
}

Outcome import(const ImportOptions& options, Surroundings& io)
{
    if (Outcome checked = checkOptions(options); !checked)
        return checked;
    auto file = openForChange(options.study);
    if (!file)
        return file.error();
    if (!options.sheet.empty()) {
        storage::SheetTraces traces = options.traces;
        traces.shift_s = options.shift_s.value_or(0.0);
        return importSheet(file.value(), options.sheet, options.date, options.spreadsheet, traces,
                           io);
    }
    const auto before = file.value().study();
    if (!before)
        return before.error();
    Outcome done = options.trace.empty() ? cutKnown(options, file.value(), before.value(), io)
                                         : importTrace(options, file.value(), before.value(), io);
    if (!done) {
        if (options.cut.empty())
            return done;
        Error why = done.error(); // after parts were listed, it is worth saying
        why.message = core::message("{}; the study is as it was"_t, why.message);
        return why;
    }
    const auto now = file.value().study();
    if (!now)
        return now.error();
    warnOfNewRuns(before.value(), now.value(), io);
    return Done{};
}

/// A recording, new or known, and what belongs to it.
void addRecordingOptions(const Language& in, CLI::App& verb, ImportOptions& options)
{
    CLI::Option* trace = verb.add_option("--trace", options.trace,
                                         in.say("A recording: CSV, GPX 1.1 or NMEA 0183"_t))
                             ->type_name(in.say("FILE"_t));
    addWhole(in, verb, "--run", options.run, 1, storage::kLargestRunNumber,
             "The run that the recording belongs to"_t)
        ->needs(trace);
    verb.add_option("--recording", options.recording,
                    in.say("A recording that the study has, by its file's name, to be cut"_t))
        ->type_name("NAME")
        ->excludes(trace);
}

void addClockOptions(const Language& in, CLI::App& verb, ImportOptions& options)
{
    addShift(in, verb, options.shift_s);
    verb.add_option(
            "--start", options.start,
            in.say("When time 0 of a recording without a clock was: date and time, or a time "
                   "of day of the study's date"_t))
        ->type_name(in.say("TIME"_t));
    addTraces(in, verb, options.traces);
}

void addCutOptions(const Language& in, CLI::App& verb, ImportOptions& options)
{
    CLI::Option* cut =
        verb.add_option(
                "--cut", options.cut,
                in.say("Cut the recording into runs: by the run sheet's times, marks in it "
                       "(\"start\", \"end\"), gates passed, or a speed that was held: the "
                       "study's road_speed.target_kmh, else the one held longest, which is said"_t))
            ->type_name(in.say("TEXT"_t))
            ->check(oneOf(in, {"times", "marks", "position", "speed"}))
            ->excludes(verb.get_option("--run"));
    verb.add_option("--gates", options.gates,
                    in.say("Where a stretch starts and ends, for --cut position, and how far the "
                           "gates reach to each side (50 m)"_t))
        ->type_name(in.say("LAT,LON,LAT,LON[,METRES]"_t))
        ->needs(cut);
    verb.add_option("--configuration", options.configuration,
                    in.say("Configuration of the parts that are no run of the study yet"_t))
        ->type_name("NAME")
        ->needs(cut);
    verb.add_option("--channel", options.channels,
                    in.say("What a column of the recording is, with factor and offset to our unit; "
                           "kept for the next recording with this header; once for each column"_t))
        ->type_name(in.say("COLUMN=CHANNEL[,FACTOR[,OFFSET]]"_t))
        ->allow_extra_args(false)
        ->needs(verb.get_option("--trace"));
}

} // namespace

void describeImport(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<ImportOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_option(in.say("SHEET"_t), options->sheet, in.say("A run sheet: CSV, .xlsx or .ods"_t));
    verb.add_option("--date", options->date, in.say("Date of a sheet that has times of day only"_t))
        ->type_name(in.say("YYYY-MM-DD"_t));
    addSpreadsheetOptions(in, verb, options->spreadsheet);
    addRecordingOptions(in, verb, *options);
    addCutOptions(in, verb, *options);
    addClockOptions(in, verb, *options);
    addFooter(
        in, verb,
        "  bothways import day.bothways morning.csv\n"
        "  bothways import day.bothways fahrten.xlsx --column 'Verbrauch=l_per_100km'\n"
        "  bothways import day.bothways --trace logger.csv --run 9 --channel "
        "'Speed mph=road_speed_kmh,1.609344'\n  bothways import day.bothways --trace drive.gpx "
        "--cut position --gates 47.5061,9.4213,47.5299,9.3871 --configuration A\n"
        "  bothways import day.bothways --recording drive.gpx --cut times --shift 5\n"
        "  bothways import day.bothways morning.csv --traces /media/card/logs",
        in.say("A part is given to the run of the study with which it overlaps most in time, and "
               "only if they overlap by at least half of the shorter of the two (to a run without "
               "duration: if its start lies within the part or at most 60 s before its beginning); "
               "never two parts to one run. The run takes start and duration of the part; with "
               "--cut times runs stay as they are. Other parts are new runs. A recording that "
               "cannot be cut does not come in."_t) +
            "\n" +
            in.say("A sheet with a bad line is refused whole, and every bad line is listed."_t));
    onCall(verb, context, [options, &context] { return import(*options, context.io); });
}

} // namespace bothways::cli
