// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/now.h"
#include "app/cli/options.h"
#include "app/cli/verbs/verbs.h"
#include "app/cli/warnings.h"
#include "app/live/next_run.h"
#include "app/wording/history.h"
#include "app/wording/numbers.h"
#include "app/wording/runs.h"
#include "app/wording/visible_text.h"
#include "core/base/number_text.h"
#include "core/study/clock.h"
#include "core/study/properties.h"
#include "core/study/property_values.h"
#include "storage/study/walk_rounds.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct WalkOptions {
    std::string study, list;
    std::vector<std::string> ticks;
};

using Lines = std::vector<core::WalkLine>;

Error noLine(const std::string& word, const Lines& lines)
{
    return wrongUse(core::message(
        "'{}' is no line of the walk-round; expected all, 1 to {}, a range like 2-4, or 3=230"_t,
        word, lines.size()));
}

std::optional<std::size_t> lineNumber(std::string_view text, const Lines& lines)
{
    const auto number = core::wholeNumber<std::size_t>(text);
    return number && *number >= 1 && *number <= lines.size() ? std::optional(*number - 1)
                                                             : std::nullopt;
}

/// "3=230": a number for a line that asks for one.
Outcome takeNumber(const std::string& word, std::size_t equals, const Lines& lines,
                   core::WalkRound& round)
{
    const auto place = lineNumber(std::string_view(word).substr(0, equals), lines);
    if (!place)
        return noLine(word, lines);
    const core::WalkLine& line = lines[*place];
    if (line.unit.empty())
        return wrongUse(
            core::message("line {} of the walk-round asks for no number"_t, *place + 1));
    const auto number = core::typedNumber(std::string_view(word).substr(equals + 1));
    if (!number)
        return wrongUse(core::message("'{}' is no number; expected one in {}"_t,
                                      word.substr(equals + 1), line.unit));
    round.ticks[*place].ticked = true;
    round.ticks[*place].number = *number;
    return Done{};
}

Outcome take(const std::string& word, const Lines& lines, core::WalkRound& round)
{
    if (const std::size_t equals = word.find('='); equals != std::string::npos)
        return takeNumber(word, equals, lines, round);
    std::optional<std::size_t> first = 0;
    std::optional<std::size_t> last = lines.size() - 1;
    if (!core::sameWord(word, "all")) {
        const std::size_t dash = std::min(word.find('-'), word.size());
        first = lineNumber(std::string_view(word).substr(0, dash), lines);
        last =
            dash < word.size() ? lineNumber(std::string_view(word).substr(dash + 1), lines) : first;
        if (!first || !last || *last < *first)
            return noLine(word, lines);
    }
    for (std::size_t i = *first; i <= *last; ++i)
        round.ticks[i].ticked = true;
    return Done{};
}

void list(const Language& in, const Lines& lines, const storage::StudyFile& file, Surroundings& io)
{
    int number = 0;
    for (const core::WalkLine& line : lines) {
        io.out << fmt::format("{:3}  ", ++number) << app::visibleText(line.words);
        if (!line.unit.empty())
            io.out << ": " << app::visibleText(line.unit);
        if (line.tolerance)
            io.out << " ± " << app::shortest(in, *line.tolerance);
        io.out << "\n";
    }
    const auto history = file.history();
    for (const storage::HistoryEntry& entry :
         history ? history.value() : std::vector<storage::HistoryEntry>())
        if (entry.kind == "walk_round")
            io.out << entry.at << " " << app::wording::historyLine(in, entry) << "\n";
}

/// The study's own list from now on.
Outcome takeList(const std::string& list, storage::StudyFile& file)
{
    const auto study = file.study();
    if (!study)
        return study.error();
    core::StudyProperties properties = study.value().properties;
    if (const Outcome set = core::setProperty(properties, "walk_round", list); !set)
        return set;
    return file.setProperties(properties, {});
}

Outcome walk(const WalkOptions& options, Surroundings& io)
{
    auto file = openForChange(options.study);
    if (!file)
        return file.error();
    if (!options.list.empty())
        if (const Outcome taken = takeList(options.list, file.value()); !taken)
            return taken;
    const auto study = file.value().study();
    if (!study)
        return study.error();
    const auto lines = core::walkLines(study.value().properties.walk_round);
    if (!lines)
        return lines.error();
    if (lines.value().empty())
        return wrongUse(
            core::message(
                "has no walk-round yet; give it one: --list 'no loose nut; belts on; tyre "
                "pressure = kPa +- 10'"_t),
            options.study);
    if (options.ticks.empty()) {
        list(io.language, lines.value(), file.value(), io);
        return Done{};
    }
    core::WalkRound round =
        core::blankRound(lines.value(), nowBy(study.value()), app::nextNumber(study.value()));
    for (const std::string& word : options.ticks)
        if (const Outcome taken = take(word, lines.value(), round); !taken)
            return taken;
    const auto before = storage::walkRounds(file.value());
    if (!before)
        return before.error();
    if (const Outcome noted = storage::noteWalkRound(file.value(), round); !noted)
        return noted;
    for (const core::WalkDifference& one :
         core::differencesOf(lines.value(), before.value(), round))
        warn(app::wording::walkDifference(io.language, one), io);
    io.told() << app::wording::walkRoundMade(io.language, round) << "\n";
    return Done{};
}

} // namespace

void describeWalk(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<WalkOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_option(in.say("LINES"_t), options->ticks,
                    in.say("What is in order: all, line numbers, ranges; 3=230 gives line 3 its "
                           "number. Without them: the list"_t))
        ->option_text(in.say("LINES"_t) + " ...");
    verb.add_option("--list", options->list,
                    in.say("The study's list from now on: lines parted by ';', one that asks for a "
                           "number with '= UNIT +- TOLERANCE'"_t))
        ->option_text(in.say("LINES"_t));
    addFooter(in, verb,
              "  bothways walk day.bothways --list 'no loose nut; belts on; tyre pressure = kPa +- "
              "10' 1-2 3=230",
              in.say("It stands in the history and the report, its numbers in the run that is "
                     "driven next."_t));
    onCall(verb, context, [options, &context] { return walk(*options, context.io); });
}

} // namespace bothways::cli
