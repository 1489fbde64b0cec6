// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/typed_columns.h"
#include "app/cli/verbs/verbs.h"
#include "app/cli/warnings.h"
#include "app/wording/runs.h"
#include "core/study/clock.h"
#include "storage/bytes/csv.h"
#include "storage/sheet/run_columns.h"
#include "storage/sheet/run_sheet.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

using RunPointers = std::vector<const core::Run*>;

struct EditOptions {
    std::string study;
    std::vector<std::string> words; ///< runs, then columns
};

/// The runs as a sheet of their own: what is typed replaces cells of it, and it is read as any
/// sheet is.
class EditedSheet {
public:
    explicit EditedSheet(const RunPointers& runs)
    {
        core::Study ours;
        for (const core::Run* run : runs) {
            ours.runs.push_back(*run);
            ours.runs.back().pair_mark.clear(); // its partner may not be among them
        }
        core::sortByStart(ours);
        for (const core::Run& run : ours.runs)
            m_runs.push_back(run);
        m_text = storage::writeRunSheet(ours);
        storage::csv::Reader reader(m_text, ',');
        while (auto record = reader.next()) {
            std::vector<std::string> line;
            for (const storage::csv::Field& field : record->fields)
                line.push_back(field.text);
            m_lines.push_back(std::move(line));
        }
    }

    /// The runs in the order of the lines.
    [[nodiscard]] const std::vector<core::Run>& runs() const { return m_runs; }

    void set(const std::string& typed, const std::string& value)
    {
        const std::string column = storage::canonicalColumn(typed);
        const std::size_t place = placeFor(column, typed);
        if (core::unitFromName(column))
            for (const char* other : {"consumption_given", "consumption_source"})
                if (const auto at = find(other))
                    fill(*at, {});
        if (column == "status" && core::sameWord(value, "counted"))
            for (const char* other : {"reason", "evidence"})
                if (const auto at = find(other))
                    fill(*at, {});
        for (std::size_t line = 1; line < m_lines.size(); ++line)
            cell(line, place) = column == "start" ? wholeStart(m_runs[line - 1], value) : value;
    }

    [[nodiscard]] std::string text() const
    {
        std::string text;
        for (const std::vector<std::string>& line : m_lines) {
            for (std::size_t i = 0; i < line.size(); ++i)
                text += (i == 0 ? "" : ",") + (line[i].empty() ? line[i] : csvCell(line[i]));
            text += "\n";
        }
        return text;
    }

private:
    [[nodiscard]] std::optional<std::size_t> find(std::string_view column) const
    {
        const std::vector<std::string>& header = m_lines.front();
        for (std::size_t i = 0; i < header.size(); ++i)
            if (storage::canonicalColumn(header[i]) == column)
                return i;
        return std::nullopt;
    }

    /// Columns that say the same in other units.
    [[nodiscard]] static bool areTwins(std::string_view a, std::string_view b)
    {
        const auto both = [&](std::string_view one, std::string_view other) {
            return (a == one && b == other) || (a == other && b == one);
        };
        return (core::unitFromName(a) && core::unitFromName(b)) ||
               both("distance_km", "distance_mi") || both("speed_kmh", "speed_mph");
    }

    /// Where the column is; one in another unit gets the new name, as every cell of it is new.
    std::size_t placeFor(const std::string& column, const std::string& typed)
    {
        std::vector<std::string>& header = m_lines.front();
        if (const auto at = find(column))
            return *at;
        for (std::size_t i = 0; i < header.size(); ++i)
            if (areTwins(storage::canonicalColumn(header[i]), column)) {
                header[i] = column;
                return i;
            }
        header.push_back(typed);
        return header.size() - 1;
    }

    std::string& cell(std::size_t line, std::size_t place)
    {
        if (m_lines[line].size() <= place)
            m_lines[line].resize(place + 1);
        return m_lines[line][place];
    }
    void fill(std::size_t place, const std::string& value)
    {
        for (std::size_t line = 1; line < m_lines.size(); ++line)
            cell(line, place) = value;
    }

    /// A time of day is meant on the run's own day.
    static std::string wholeStart(const core::Run& run, const std::string& value)
    {
        std::string text(storage::csv::trimmed(value));
        if (text.size() >= 4 && text[1] == ':')
            text.insert(0, 1, '0'); // 5:40
        const auto time = core::parseTimeOfDay_us(text);
        const auto day = core::parseDate_us(core::formatDate(run.start));
        if (!time || !day)
            return value;
        core::Instant start = run.start;
        const std::int64_t offset_us =
            std::int64_t{60} * core::kSecond_us * run.start.utc_offset_min.value_or(0);
        start.us = day.value() + time.value() - offset_us;
        return core::formatDateTime(start);
    }

    std::string m_text;
    std::vector<core::Run> m_runs;
    std::vector<std::vector<std::string>> m_lines; ///< the header first
};

/// "typed:3: column 'x'" is about a run of the study.
Error aboutRuns(Error error, const std::vector<core::Run>& runs)
{
    const auto ofRun = [&](core::Place& where) {
        if (where.file != kTyped)
            return;
        const auto line = static_cast<std::size_t>(std::max<std::int64_t>(where.line, 0));
        where.file.clear();
        where.run = line >= 2 && line - 2 < runs.size() ? runs[line - 2].number : 0;
        where.line = 0;
    };
    ofRun(error.where);
    for (Error& other : error.others)
        ofRun(other.where);
    return error;
}

Outcome checkColumns(const Assignments& columns, const RunPointers& runs)
{
    for (const auto& [column, value] : columns) {
        const std::string name = storage::canonicalColumn(column);
        if (name == "pair")
            return wrongUse("pairs are tied with 'bothways pair' and untied with 'bothways "
                            "unpair'"_t,
                            "pair");
        if (name == "run" && runs.size() > 1)
            return wrongUse("one number cannot be given to several runs"_t, "run");
        const auto unit = core::unitFromName(name);
        const bool withControl = std::ranges::any_of(runs, [&](const core::Run* run) {
            return run->control && run->consumption && unit && run->consumption->unit != *unit;
        });
        const bool controlGiven = std::ranges::any_of(columns, [](const auto& other) {
            return storage::canonicalColumn(other.first) == "control";
        });
        if (withControl && !controlGiven)
            return wrongUse("the control vehicle's consumption has the same unit; give control "
                            "as well"_t,
                            name);
    }
    return Done{};
}

/// The runs as they are to be, with what a sheet does not hold.
Result<std::vector<core::Run>> edited(const core::Study& study, const RunPointers& runs,
                                      const Assignments& columns, const std::string& today)
{
    core::Study others = study;
    std::erase_if(others.runs, [&](const core::Run& run) {
        return std::ranges::any_of(runs, [&](const core::Run* one) { return one->id == run.id; });
    });
    for (core::Run& run : others.runs)
        run.pair_mark.clear(); // ties stay as they are, and are looked at when the study changes
    EditedSheet sheet(runs);
    for (const auto& [column, value] : columns)
        sheet.set(column, value);
    storage::SheetOptions options;
    options.today = today;
    const auto read = storage::parseRunSheet(sheet.text(), kTyped, options, &others);
    if (!read)
        return aboutRuns(read.error(), sheet.runs());
    std::vector<core::Run> changed;
    for (const core::Run& run : read.value().study.runs) {
        const auto before = std::ranges::find_if(runs, [&](const core::Run* one) {
            return one->number == run.number || runs.size() == 1;
        });
        if (before == runs.end())
            continue;
        changed.push_back(run);
        changed.back().id = (*before)->id;
        changed.back().pair_mark = (*before)->pair_mark;
        if (changed.back().number == 0)
            changed.back().number = (*before)->number;
    }
    return changed;
}

/// The words in two: runs first, then columns.
Result<std::pair<RunWords, Assignments>> partsOf(const EditOptions& options)
{
    RunWords runs;
    std::vector<std::string> columns;
    for (const std::string& word : options.words) {
        const bool isColumn = word.find('=') != std::string::npos;
        if (!isColumn && !columns.empty())
            return wrongUse(core::message("'{}' is not COLUMN=VALUE"_t, word));
        (isColumn ? columns : runs).push_back(word);
    }
    if (runs.empty())
        return wrongUse("no run was named; expected numbers of runs before COLUMN=VALUE"_t);
    if (columns.empty())
        return wrongUse("nothing to change was named; expected COLUMN=VALUE after the runs"_t);
    auto assignments = assignmentsFrom(columns);
    if (!assignments)
        return assignments.error();
    return std::pair(std::move(runs), std::move(assignments).take());
}

std::string columnsText(const Assignments& columns)
{
    std::vector<std::string> parts;
    for (const auto& [column, value] : columns)
        parts.push_back(column + "=" + value);
    return fmt::format("{}", fmt::join(parts, ", "));
}

/// What is odd about the runs now; they are asked about again even where they were odd before.
void warnOfEdited(const storage::StudyFile& file, const core::Study& before,
                  const RunPointers& runs, Surroundings& io)
{
    const auto now = file.study();
    if (!now)
        return;
    core::Study others = before;
    std::erase_if(others.runs, [&](const core::Run& run) {
        return std::ranges::any_of(runs, [&](const core::Run* one) { return one->id == run.id; });
    });
    warnOfNewRuns(others, now.value(), io);
}

Outcome edit(const EditOptions& options, Surroundings& io)
{
    const auto parts = partsOf(options);
    if (!parts)
        return parts.error();
    const auto& [words, typed] = parts.value();
    return changeRuns(
        options.study, words,
        [&](storage::StudyFile& file, const core::Study& study, const RunPointers& runs) {
            const auto meant = asColumns(typed, study);
            if (!meant)
                return Outcome(meant.error());
            const Assignments& columns = meant.value();
            if (Outcome possible = checkColumns(columns, runs); !possible)
                return possible;
            const auto changed = edited(study, runs, columns, io.today);
            if (!changed)
                return Outcome(changed.error());
            const bool alike = std::ranges::all_of(changed.value(), [&](const core::Run& run) {
                return std::ranges::any_of(runs, [&](const core::Run* one) { return *one == run; });
            });
            const std::string names = app::wording::runsWords(io.language, numbersOf(runs));
            if (alike) {
                io.told() << io.language.say("{}: nothing to change"_t, names) << "\n";
                return Outcome(Done{});
            }
            if (Outcome updated = file.updateRuns(changed.value()); !updated)
                return updated;
            io.told() << io.language.say("changed {}: {}"_t, names, columnsText(columns)) << "\n";
            sayNearColumns(columns, io);
            warnOfEdited(file, study, runs, io);
            return Outcome(Done{});
        });
}

} // namespace

void describeEdit(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<EditOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_option(in.say("RUNS"_t), options->words,
                    in.say("Numbers of the runs (7, 7 9, 7-9,12), then what changes in each of "
                           "them, by the columns of a run sheet"_t))
        ->option_text(in.say("RUNS"_t) + " ... " + in.say("COLUMN=VALUE"_t) + " ... " +
                      in.say("REQUIRED"_t))
        ->required();
    addFooter(in, verb,
              "  bothways edit day.bothways 7 l_per_100km=7.15\n"
              "  bothways edit day.bothways 7-9,12 setting=20 notes='wet road'",
              in.say("The runs are checked as typed ones are, and change all or none; one 'undo' "
                     "takes it back. 'COLUMN=' empties a column."_t));
    onCall(verb, context, [options, &context] { return edit(*options, context.io); });
}

} // namespace bothways::cli
