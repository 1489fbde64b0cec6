// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "core/study/limits.h"
#include "core/study/properties.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct SetOptions {
    std::string study;
    std::vector<std::string> properties;
};

Outcome listProperties(const SetOptions& options, Surroundings& io)
{
    auto file = storage::StudyFile::open(options.study, true);
    if (!file)
        return file.error();
    const auto study = file.value().study();
    if (!study)
        return study.error();
    for (const auto& [property, value] : core::propertiesAsText(study.value().properties))
        io.out << property << "=" << value << "\n";
    return Done{};
}

Outcome setProperties(const SetOptions& options, Surroundings& io)
{
    if (options.properties.empty())
        return listProperties(options, io);
    auto file = openForChange(options.study);
    if (!file)
        return file.error();
    auto study = file.value().study();
    if (!study)
        return study.error();
    core::StudyProperties& properties = study.value().properties;
    const std::string baseline = properties.baseline;
    for (const std::string& text : options.properties) {
        auto assignment = splitAssignment(text);
        if (!assignment)
            return assignment.error();
        const auto& [property, value] = assignment.value();
        if (Outcome set = core::setProperty(properties, property, value); !set)
            return set;
    }
    if (properties.baseline != baseline)
        if (const Outcome known = core::checkBaseline(study.value()); !known)
            return wrongUse(known.error().message.english(), options.study);
    const std::string detail = fmt::format("{}", fmt::join(options.properties, ", "));
    if (Outcome set = file.value().setProperties(properties, detail); !set)
        return set;
    io.out << "set " << detail << "\n";
    return Done{};
}

/// Every name that may be set, with unit and default where it has them.
std::string footer()
{
    std::string text =
        "Example:\n  bothways set day.bothways overspeed.rpm=3200 "
        "accessory_timer.windscreen=450,10\n\n"
        "Without NAME=VALUE the properties that differ from their defaults are "
        "listed; 'NAME=' goes back to the default.\n\n"
        "Names: name, date, baseline, margin (per cent), confidence, max_gap (min), "
        "aero_share,\nfuel (petrol, e10, diesel, electric), bearing_deg, cold_start, "
        "notes,\nplan.sequence, plan.pairs, plan.margin, plan.confidence,\n"
        "accessory_timer.NAME=WATTS,MINUTES, and the limits of the screening rules:\n";
    for (const core::LimitInfo& limit : core::allLimits())
        text += fmt::format("  {:<28}{:<6}{}\n", limit.name, limit.unit,
                            limit.byDefault ? fmt::format("default {}", *limit.byDefault)
                                            : std::string("not checked until set"));
    return text;
}

} // namespace

void addSet(CLI::App& program, Context& context)
{
    auto options = std::make_shared<SetOptions>();
    CLI::App* verb = program.add_subcommand("set", "Set a study's properties and limits");
    verb->add_option("STUDY", options->study, "The study")->required();
    verb->add_option("PROPERTIES", options->properties, "What to set")
        ->option_text("NAME=VALUE ...");
    verb->footer(footer());
    onCall(*verb, context, [options, &context] { return setProperties(*options, context.io); });
}

} // namespace bothways::cli
