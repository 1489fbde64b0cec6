// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/options.h"

#include "core/study/properties.h"
#include "storage/sheet/run_columns.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <charconv>

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

void addAssignments(CLI::App& app, const std::string& option, Overrides& overrides,
                    const std::string& description)
{
    app.add_option_function<std::vector<std::string>>(
           option,
           [&overrides, option](const std::vector<std::string>& texts) {
               for (const std::string& text : texts) {
                   auto assignment = splitAssignment(text);
                   if (!assignment)
                       throw CLI::ValidationError(option, assignment.error().message.english());
                   overrides.properties.push_back(assignment.value());
               }
           },
           description)
        ->type_name("NAME=VALUE")
        ->allow_extra_args(false); // one value each time, so that a file name may follow
}

} // namespace

Error wrongUse(std::string message, std::string where)
{
    return Error{ErrorCode::wrongUse, std::move(message), std::move(where)};
}

CLI::Option* addNumber(CLI::App& app, const std::string& option, std::optional<double>& value,
                       const NumberRange& range, const std::string& description)
{
    return app
        .add_option_function<std::string>(
            option,
            [&value, range, option](const std::string& text) {
                const auto number = storage::parseNumber(text);
                const bool fits =
                    number &&
                    (range.withLow ? number->value >= range.low : number->value > range.low) &&
                    (range.withHigh ? number->value <= range.high : number->value < range.high);
                if (!fits)
                    throw CLI::ValidationError(option,
                                               fmt::format("'{}' is not {}", text, range.expected));
                value = number->value;
            },
            description)
        ->type_name("NUMBER");
}

CLI::Option* addWhole(CLI::App& app, const std::string& option, std::optional<std::uint64_t>& value,
                      std::uint64_t low, std::uint64_t high, const std::string& description)
{
    return app
        .add_option_function<std::string>(
            option,
            [&value, low, high, option](const std::string& text) {
                std::uint64_t number = 0;
                const char* end = text.data() + text.size();
                const auto [rest, problem] = std::from_chars(text.data(), end, number);
                if (problem != std::errc() || rest != end || number < low || number > high)
                    throw CLI::ValidationError(
                        option,
                        fmt::format("'{}' is not a whole number from {} to {}", text, low, high));
                value = number;
            },
            description)
        ->type_name("N");
}

CLI::Option* addUnit(CLI::App& app, std::optional<app::english::ShownUnit>& unit)
{
    return app
        .add_option_function<std::string>(
            "--unit",
            [&unit](const std::string& text) {
                unit = app::english::shownUnitFromName(text);
                if (!unit)
                    throw CLI::ValidationError(
                        "--unit", fmt::format("'{}' is not one of l_per_100km, mpg_us, mpg_imp, "
                                              "km_per_l",
                                              text));
            },
            "Unit of consumption for people: l_per_100km, mpg_us, mpg_imp, km_per_l (default: "
            "that of the runs). JSON and CSV do not change")
        ->type_name("UNIT");
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

void addSheetOverrides(CLI::App& app, Overrides& overrides)
{
    addProperty(app, "--date", "date", "YYYY-MM-DD", overrides,
                "Date of a sheet that has times of day only");
    addProperty(app, "--baseline", "baseline", "NAME", overrides,
                "Which configuration is the baseline");
    addAssignments(app, "--limit", overrides,
                   "A limit of a screening rule for this call: overspeed.rpm=3200; or a timed "
                   "accessory: accessory_timer.windscreen=450,10 (watts, minutes)");
    addAssignments(app, "--set", overrides,
                   "Any other property of a study for this call: fuel=diesel");
}

void addAnalysisOverrides(CLI::App& app, Overrides& overrides)
{
    addProperty(app, "--margin", "margin", "PCT", overrides,
                "The smallest effect that you would care about, per cent (default 1)");
    addProperty(app, "--confidence", "confidence", "SHARE", overrides,
                "Confidence of the intervals, in (0.5, 1) (default 0.95)");
    addProperty(app, "--max-gap", "max_gap", "MIN", overrides,
                "Widest gap inside a pair, minutes (default 30)");
    addSheetOverrides(app, overrides);
}

Result<std::pair<std::string, std::string>> splitAssignment(const std::string& text)
{
    const std::size_t equals = text.find('=');
    if (equals == std::string::npos || equals == 0)
        return wrongUse(fmt::format("'{}' is not NAME=VALUE", text));
    return std::pair(text.substr(0, equals), text.substr(equals + 1));
}

void onCall(CLI::App& verb, Context& context, std::function<Outcome()> action)
{
    verb.callback([&context, action = std::move(action)] { context.result = action(); });
}

} // namespace bothways::cli
