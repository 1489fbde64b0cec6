// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/options.h"

#include "core/base/nearest_word.h"
#include "core/base/number_text.h"
#include "core/study/properties.h"
#include "core/study/property_values.h"
#include "storage/sheet/run_columns.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>

namespace bothways::cli {
namespace {

CLI::Option* addProperty(CLI::App& app, const std::string& option, const std::string& property,
                         const std::string& type, Overrides& overrides,
                         const std::string& description)
{
    return app
        .add_option_function<std::string>(
            option,
            [&overrides, property](const std::string& value) {
                overrides.properties.emplace_back(property, value);
            },
            description)
        ->type_name(type);
}

void addAssignments(const Language& in, CLI::App& app, const std::string& option,
                    Overrides& overrides, core::Text<0> description)
{
    app.add_option_function<std::vector<std::string>>(
           option,
           [&in, &overrides, option](const std::vector<std::string>& texts) {
               for (const std::string& text : texts) {
                   auto assignment = splitAssignment(text);
                   if (!assignment)
                       throw CLI::ValidationError(option, in.say(assignment.error().message));
                   overrides.properties.push_back(assignment.value());
               }
           },
           in.say(description))
        ->type_name(in.say("NAME=VALUE"_t))
        ->allow_extra_args(false); // one value each time, so that a file name may follow
}

} // namespace

Error wrongUse(core::Message message, core::Place where)
{
    return Error{ErrorCode::wrongUse, std::move(message), std::move(where)};
}

core::Message strayValue(const std::string& word, const std::string& option)
{
    return core::message("'{}' was not expected; repeat {} for each"_t, word, option);
}

core::Message withNearest(core::Message message, std::string_view typed,
                          std::span<const std::string_view> known)
{
    const std::string_view nearest = core::nearestWord(core::inSmallLetters(typed), known);
    return nearest.empty() || nearest == typed ? message
                                               : core::didYouMean(std::move(message), nearest);
}

std::string quotedList(const Language& in, const std::vector<std::string>& names)
{
    std::string list;
    for (const std::string& name : names)
        list += (list.empty() ? "" : ", ") + in.say("'{}'"_t, name);
    return list;
}

void addFooter(const Language& in, CLI::App& app, const std::string& commands,
               const std::string& words)
{
    app.footer(in.say("Example:"_t) + "\n" + commands + (words.empty() ? "" : "\n\n") + words);
}

CLI::Validator oneOf(const Language& in, const std::vector<std::string>& words)
{
    const std::string set = fmt::format("{{{}}}", fmt::join(words, ","));
    return CLI::Validator(
        [&in, set, words](const std::string& word) {
            const bool known = std::find(words.begin(), words.end(), word) != words.end();
            const std::vector<std::string_view> all(words.begin(), words.end());
            return known
                       ? std::string()
                       : in.say(withNearest(core::message("{} not in {}"_t, word, set), word, all));
        },
        set);
}

CLI::Option* addNumber(const Language& in, CLI::App& app, const std::string& option,
                       std::optional<double>& value, const NumberRange& range,
                       core::Text<0> description)
{
    return app
        .add_option_function<std::string>(
            option,
            [&in, &value, range, option](const std::string& text) {
                const auto number =
                    storage::parseNumber(core::withDecimalPoint(core::inUnit(text, range.unit)));
                const bool fits =
                    number &&
                    (range.withLow ? number->value >= range.low : number->value > range.low) &&
                    (range.withHigh ? number->value <= range.high : number->value < range.high);
                if (!fits)
                    throw CLI::ValidationError(option,
                                               in.say("'{}' is not {}"_t, text, range.expected));
                value = number->value;
            },
            in.say(description))
        ->type_name(in.say("NUMBER"_t));
}

CLI::Option* addWhole(const Language& in, CLI::App& app, const std::string& option,
                      std::optional<std::uint64_t>& value, std::uint64_t low, std::uint64_t high,
                      core::Text<0> description)
{
    return app
        .add_option_function<std::string>(
            option,
            [&in, &value, low, high, option](const std::string& text) {
                const auto number = core::wholeNumber<std::uint64_t>(text);
                if (!number || *number < low || *number > high)
                    throw CLI::ValidationError(
                        option, in.say("'{}' is not a whole number from {} to {}"_t, text,
                                       std::to_string(low), std::to_string(high)));
                value = *number;
            },
            in.say(description))
        ->type_name("N");
}

CLI::Option* addUnit(const Language& in, CLI::App& app,
                     std::optional<app::wording::ShownUnit>& unit)
{
    return app
        .add_option_function<std::string>(
            "--unit",
            [&in, &unit](const std::string& text) {
                unit = app::wording::shownUnitFromName(text);
                if (!unit)
                    throw CLI::ValidationError(
                        "--unit",
                        in.say("'{}' is not one of l_per_100km, mpg_us, mpg_imp, km_per_l"_t,
                               text));
            },
            in.say("Unit of consumption for people: l_per_100km, mpg_us, mpg_imp, km_per_l "
                   "(default: that of the runs). JSON and CSV do not change"_t))
        ->type_name(in.say("UNIT"_t));
}

Outcome Overrides::applyTo(core::StudyProperties& target) const
{
    for (const auto& [property, value] : properties)
        if (Outcome outcome = core::setProperty(target, property, value); !outcome)
            return outcome;
    return Done{};
}

std::optional<std::string> Overrides::given(std::string_view property) const
{
    std::optional<std::string> last;
    for (const auto& [name, value] : properties)
        if (core::sameWord(name, property))
            last = value;
    return last;
}

void addSpreadsheetOptions(const Language& in, CLI::App& app, storage::SheetOptions& options)
{
    app.add_option_function<std::vector<std::string>>(
           "--column",
           [&in, &options](const std::vector<std::string>& texts) {
               for (const std::string& text : texts) {
                   auto mapping = storage::parseColumnMapping(text);
                   if (!mapping)
                       throw CLI::ValidationError("--column", in.say(mapping.error().message));
                   options.columns.push_back(std::move(mapping).take());
               }
           },
           in.say("What a column of the sheet is, where its name does not say it; 'bothways "
                  "columns' lists what there is; once for each column"_t))
        ->type_name(in.say("HEADER=COLUMN"_t))
        ->allow_extra_args(false);
    app.add_option_function<std::string>(
           "--dates",
           [&options](const std::string& word) {
               options.dates = word == "day-first" ? storage::DateOrder::dayFirst
                                                   : storage::DateOrder::monthFirst;
           },
           in.say("What stands first in a date like 5/9/2026"_t))
        ->type_name(in.say("ORDER"_t))
        ->check(oneOf(in, {"day-first", "month-first"}));
    app.add_option("--sheet", options.sheet, in.say("Which sheet of a workbook"_t))
        ->type_name("NAME");
}

void addTraces(const Language& in, CLI::App& app, storage::SheetTraces& traces)
{
    app.add_option("--traces", traces.folder,
                   in.say("Where recordings of a run sheet are looked for that are not where the "
                          "sheet has them"_t))
        ->type_name(in.say("FOLDER"_t));
}

void addShift(const Language& in, CLI::App& app, std::optional<double>& shift_s)
{
    constexpr double kLargest_s = 90'000.0; // a day and an hour, as in the window
    addNumber(
        in, app, "--shift", shift_s,
        {-kLargest_s, kLargest_s, true, true, "a number of seconds, at most 90000 either way"_t},
        "Seconds to add to the times of a recorder's clock that is wrong: 600 where it is ten "
        "minutes slow, -600 where it is fast"_t)
        ->type_name(in.say("SECONDS"_t));
}

void addSheetOverrides(const Language& in, CLI::App& app, Overrides& overrides)
{
    addProperty(app, "--date", "date", in.say("YYYY-MM-DD"_t), overrides,
                in.say("Date of a sheet that has times of day only"_t));
    addProperty(app, "--baseline", "baseline", "NAME", overrides,
                in.say("Which configuration is the baseline"_t));
    addAssignments(in, app, "--limit", overrides,
                   "A limit of a screening rule for this call: overspeed.rpm=3200; or a timed "
                   "accessory: accessory_timer.windscreen=450,10 (watts, minutes)"_t);
    addAssignments(in, app, "--set", overrides,
                   "Any other property of a study for this call: fuel=diesel"_t);
    addSpreadsheetOptions(in, app, overrides.sheet);
    addTraces(in, app, overrides.traces);
    addShift(in, app, overrides.shift_s);
}

void addAnalysisOverrides(const Language& in, CLI::App& app, Overrides& overrides)
{
    addProperty(app, "--margin", "margin", in.say("PCT"_t), overrides,
                in.say("The smallest effect that you would care about, per cent (default 1)"_t));
    addProperty(app, "--confidence", "confidence", in.say("SHARE"_t), overrides,
                in.say("Confidence of the intervals, above 0.5, at most 0.9999 (default 0.95)"_t));
    addProperty(app, "--claim", "claim", in.say("PCT"_t), overrides,
                in.say("What someone says that the device saves, per cent; negative for less"_t));
    addProperty(app, "--max-gap", "max_gap", in.say("MIN##minutes"_t), overrides,
                in.say("Widest gap inside a pair, minutes (default 30)"_t));
    addSheetOverrides(in, app, overrides);
}

Result<std::pair<std::string, std::string>> splitAssignment(const std::string& text)
{
    const std::size_t equals = text.find('=');
    if (equals == std::string::npos || equals == 0)
        return wrongUse(core::message("'{}' is not NAME=VALUE"_t, text));
    return std::pair(text.substr(0, equals), text.substr(equals + 1));
}

Outcome assignProperties(core::StudyProperties& properties,
                         const std::vector<std::string>& assignments)
{
    for (const std::string& text : assignments) {
        const auto assignment = splitAssignment(text);
        if (!assignment)
            return assignment.error();
        const auto& [property, value] = assignment.value();
        if (Outcome set = core::setProperty(properties, property, value); !set)
            return set;
    }
    return Done{};
}

void onCall(CLI::App& verb, Context& context, std::function<Outcome()> action)
{
    verb.callback([&context, action = std::move(action)] {
        if (context.io.begin)
            context.io.begin();
        context.result = action();
    });
}

} // namespace bothways::cli
