// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/cut_import.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/numbers.h"
#include "storage/run_columns.h"
#include "storage/run_sheet.h"
#include "storage/traces.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <csignal>
#include <memory>
#include <ostream>
#include <sstream>
#include <stop_token>

namespace bothways::cli {
namespace {

struct ImportOptions {
    std::string study, sheet, trace, date, cut, gates, configuration;
    std::optional<std::uint64_t> run;
    std::vector<std::string> channels;
};

// Ctrl-C during a long import: the flag is all that a signal handler may touch.
volatile std::sig_atomic_t interrupted = 0;

void interrupt(int)
{
    interrupted = 1;
}

/// Ctrl-C asks the import to stop while this lives, and is what it was before afterwards.
class StopOnInterrupt {
public:
    StopOnInterrupt() : m_before(std::signal(SIGINT, interrupt)) { interrupted = 0; }
    ~StopOnInterrupt() { std::signal(SIGINT, m_before); }
    StopOnInterrupt(const StopOnInterrupt&) = delete;
    StopOnInterrupt& operator=(const StopOnInterrupt&) = delete;

private:
    void (*m_before)(int);
};

/// "COLUMN=CHANNEL[,FACTOR[,OFFSET]]"
Result<storage::ChannelMapping> mappingFrom(const std::string& text)
{
    const auto bad = [&] {
        return wrongUse(fmt::format("'{}' is not COLUMN=CHANNEL[,FACTOR[,OFFSET]]", text),
                        "--channel");
    };
    auto assignment = splitAssignment(text);
    if (!assignment)
        return bad();
    storage::ChannelMapping mapping;
    mapping.column = assignment.value().first;
    std::string rest = assignment.value().second;
    const std::size_t comma = std::min(rest.find(','), rest.size());
    mapping.channel = rest.substr(0, comma);
    rest.erase(0, std::min(comma + 1, rest.size()));
    for (double* number : {&mapping.factor, &mapping.offset}) {
        if (rest.empty())
            break;
        const std::size_t end = std::min(rest.find(','), rest.size());
        const auto value = storage::parseNumber(rest.substr(0, end));
        if (!value)
            return bad();
        *number = value->value;
        rest.erase(0, std::min(end + 1, rest.size()));
    }
    return rest.empty() ? Result<storage::ChannelMapping>(mapping) : bad();
}

void sayWhatWasMet(const storage::TraceReport& report, const std::string& name, Surroundings& io)
{
    using app::counted;
    io.out << fmt::format("imported {}: {}, {} s, channels {}\n", name,
                          counted(report.rows, "row", "rows"), app::grouped(report.length_s),
                          fmt::join(report.channels, ", "));
    const auto met = [&](long long n, const char* one, const char* many) {
        if (n > 0)
            io.out << "  " << counted(n, one, many) << "\n";
    };
    met(report.missing_cells, "empty cell", "empty cells");
    met(report.repeated_times, "time given twice", "times given twice");
    met(report.backward_times, "time that went backwards", "times that went backwards");
    met(report.clock_changes, "change of the clock", "changes of the clock");
    if (report.half_last_line)
        io.out << "  the last line is cut short and was left out\n";
}

/// An Error where the recording has no such column as a mapping names.
Outcome checkColumns(const std::filesystem::path& trace,
                     const std::vector<storage::ChannelMapping>& mapping)
{
    if (mapping.empty())
        return Done{};
    const auto preview = storage::previewTrace(trace);
    if (!preview)
        return preview.error();
    const std::vector<std::string>& columns = preview.value().columns;
    for (const storage::ChannelMapping& one : mapping) {
        if (std::any_of(columns.begin(), columns.end(), [&](const std::string& column) {
                return core::sameWord(column, one.column);
            }))
            continue;
        return wrongUse(
            columns.empty()
                ? fmt::format("a {} recording has no columns to name", preview.value().format)
                : fmt::format("{} has no column '{}'; expected one of '{}'",
                              trace.filename().string(), one.column, fmt::join(columns, "', '")),
            "--channel");
    }
    return Done{};
}

/// @param run  that it belongs to; none: not yet cut
Result<storage::TraceReport> importRecording(storage::StudyFile& file,
                                             const std::filesystem::path& trace,
                                             std::optional<int> run,
                                             const std::vector<storage::ChannelMapping>& mapping,
                                             Surroundings& io)
{
    if (const Outcome known = checkColumns(trace, mapping); !known)
        return known.error();
    StopOnInterrupt guard;
    std::stop_source stop;
    storage::TraceImportOptions options;
    options.run = run;
    options.mapping = mapping;
    options.stop = stop.get_token();
    options.progress = [&](double done, double bytesPerSecond) {
        if (interrupted != 0)
            stop.request_stop();
        if (io.errIsTerminal)
            io.err << fmt::format("\r{}: {:.0f} %, {:.0f} MB/s \033[K", trace.filename().string(),
                                  100.0 * done, bytesPerSecond / 1e6)
                   << std::flush;
    };
    auto report = storage::importTrace(file, trace, options);
    if (io.errIsTerminal)
        io.err << "\r\033[K" << std::flush;
    return report;
}

std::string nameOf(const std::string& trace)
{
    return std::filesystem::path(trace).filename().string();
}

/// A recording that cannot be cut as told does not come in.
Outcome importAndCut(storage::StudyFile& file, const ImportOptions& options,
                     const std::vector<storage::ChannelMapping>& mapping, Surroundings& io)
{
    const auto order = cutOrderFrom(options.cut, options.gates, options.configuration);
    if (!order)
        return order.error();
    const auto imported = importRecording(file, options.trace, std::nullopt, mapping, io);
    if (!imported)
        return imported.error();
    std::ostringstream said; // goes after the line that it stays
    Outcome cut = cutImported(file, imported.value().recording, order.value(), said);
    if (cut)
        sayWhatWasMet(imported.value(), nameOf(options.trace), io);
    io.out << said.str();
    if (!cut) {
        if (const auto undone = file.undo(); undone)
            io.out << "the recording was taken out again: the study is as it was\n";
    }
    return cut;
}

/// The recordings that the sheet's column 'trace' names. When one fails, the runs go too: a sheet
/// comes in whole or not at all.
Outcome importTracesOfSheet(storage::StudyFile& file, const std::filesystem::path& sheet,
                            const core::Study& runs, Surroundings& io)
{
    for (const core::Run& run : runs.runs) {
        if (run.trace.empty())
            continue;
        const auto imported =
            importRecording(file, sheet.parent_path() / run.trace, run.number, {}, io);
        if (!imported) {
            const auto undone = file.undo();
            return imported.error();
        }
        sayWhatWasMet(imported.value(), nameOf(run.trace), io);
    }
    return Done{};
}

Outcome importSheet(const ImportOptions& options, storage::StudyFile& file, Surroundings& io)
{
    const auto study = file.study();
    if (!study)
        return study.error();
    storage::SheetOptions sheetOptions;
    sheetOptions.date = options.date.empty() ? study.value().properties.date : options.date;
    sheetOptions.today = io.today;
    const auto read = storage::readRunSheet(options.sheet, sheetOptions, &study.value());
    if (!read)
        return read.error();
    const storage::RunSheet& sheet = read.value();
    const bool hasTraces = std::any_of(sheet.study.runs.begin(), sheet.study.runs.end(),
                                       [](const core::Run& run) { return !run.trace.empty(); });
    if (hasTraces) // every recording must be there before anything is written
        if (const auto traces = storage::tracesOfSheet(options.sheet, sheet.study); !traces)
            return traces.error();
    const std::string name = std::filesystem::path(options.sheet).filename().string();
    if (Outcome imported = file.importRuns(sheet.study, name); !imported)
        return imported;
    io.out << fmt::format(
        "imported {} from {}\n",
        app::counted(static_cast<long long>(sheet.study.runs.size()), "run", "runs"), name);
    if (sheet.dateAssumed)
        io.out << fmt::format("the sheet has times of day only; {} was taken as its date\n",
                              sheetOptions.date.empty() ? io.today : sheetOptions.date);
    return importTracesOfSheet(file, options.sheet, sheet.study, io);
}

Outcome import(const ImportOptions& options, Surroundings& io)
{
    std::vector<storage::ChannelMapping> mapping;
    for (const std::string& word : {options.study, options.sheet})
        if (!options.channels.empty() && word.find('=') != std::string::npos &&
            !std::filesystem::exists(word))
            return wrongUse(fmt::format("'{}' stands alone; repeat --channel for each", word),
                            "--channel");
    for (const std::string& text : options.channels) {
        auto one = mappingFrom(text);
        if (!one)
            return one.error();
        mapping.push_back(one.value());
    }
    if (options.sheet.empty() == options.trace.empty())
        return wrongUse("expected either a run sheet or --trace FILE", "bothways import");
    auto file = openForChange(options.study);
    if (!file)
        return file.error();
    if (!options.sheet.empty())
        return importSheet(options, file.value(), io);
    if (!options.cut.empty())
        return importAndCut(file.value(), options, mapping, io);
    std::optional<int> run;
    if (options.run) {
        run = static_cast<int>(*options.run);
        const auto study = file.value().study();
        if (!study)
            return study.error();
        if (const auto id = runByNumber(study.value(), *run, options.study); !id)
            return id.error();
    }
    const auto imported = importRecording(file.value(), options.trace, run, mapping, io);
    if (!imported)
        return imported.error();
    sayWhatWasMet(imported.value(), nameOf(options.trace), io);
    if (!run)
        io.out << "  it belongs to no run yet; import it with --run N, or with --cut times, marks, "
                  "position or speed, to give it to runs\n";
    return Done{};
}

} // namespace

void addImport(CLI::App& program, Context& context)
{
    auto options = std::make_shared<ImportOptions>();
    CLI::App* verb = program.add_subcommand(
        "import", "Bring a run sheet, or a data logger's recording, into a study");
    verb->add_option("STUDY", options->study, "The study")->required();
    verb->add_option("SHEET", options->sheet, "A run sheet (CSV)");
    verb->add_option("--date", options->date, "Date of a sheet that has times of day only")
        ->type_name("YYYY-MM-DD");
    CLI::Option* trace =
        verb->add_option("--trace", options->trace, "A recording: CSV, GPX 1.1 or NMEA 0183")
            ->type_name("FILE");
    CLI::Option* ofRun = addWhole(*verb, "--run", options->run, 1, storage::kLargestRunNumber,
                                  "The run that the recording belongs to");
    ofRun->needs(trace);
    CLI::Option* cut =
        verb->add_option("--cut", options->cut,
                         "Cut the recording into runs: by the run sheet's times, marks in it "
                         "(\"start\", \"end\"), gates passed, or a speed that was held: the "
                         "study's road_speed.target_kmh, else the one held longest, which is said")
            ->check(CLI::IsMember({"times", "marks", "position", "speed"}))
            ->needs(trace)
            ->excludes(ofRun);
    verb->add_option("--gates", options->gates,
                     "Where a stretch starts and ends, for --cut position, and how far the gates "
                     "reach to each side (50 m)")
        ->type_name("LAT,LON,LAT,LON[,METRES]")
        ->needs(cut);
    verb->add_option("--configuration", options->configuration,
                     "Configuration of the parts that are no run of the study yet")
        ->type_name("NAME")
        ->needs(cut);
    verb->add_option("--channel", options->channels,
                     "What a column of the recording is, with factor and offset to our unit; kept "
                     "for the next recording with this header; once for each column")
        ->type_name("COLUMN=CHANNEL[,FACTOR[,OFFSET]]")
        ->allow_extra_args(false)
        ->needs(trace);
    verb->footer(
        "Example:\n  bothways import day.bothways morning.csv\n"
        "  bothways import day.bothways --trace logger.csv --run 9 --channel "
        "'Speed mph=road_speed_kmh,1.609344'\n  bothways import day.bothways --trace drive.gpx "
        "--cut position --gates 47.5061,9.4213,47.5299,9.3871 --configuration A\n\nA "
        "part is given to the run of the study with which it overlaps most in time, and only if "
        "they overlap by at least half of the shorter of the two (to a run without duration: if "
        "its start lies within the part or at most 60 s before its beginning); never two parts to "
        "one run. The run takes start and duration of the part; with --cut times runs stay as "
        "they are. Other parts are new runs. A recording that cannot be cut does not come in.\nA "
        "sheet with a bad line is "
        "refused whole, "
        "and every bad line is listed.");
    onCall(*verb, context, [options, &context] { return import(*options, context.io); });
}

} // namespace bothways::cli
