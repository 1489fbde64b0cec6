// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/answer/looks.h"
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "app/cli/warnings.h"
#include "app/wording/numbers.h"
#include "app/wording/visible_text.h"
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
        io.out << property << "=" << app::visibleText(value) << "\n";
    return Done{};
}

/// A plan is tied before the first run. One that comes later is taken, and is said to be late.
void warnOfALatePlan(const storage::StudyFile& file, const core::Study& study, Surroundings& io)
{
    const auto history = file.history();
    if (study.runs.empty() || !study.properties.plan || !history)
        return;
    const core::PlanRecord record = app::planRecordOf(history.value(), study.properties);
    const auto runs = static_cast<long long>(study.runs.size());
    if (record.after_look)
        warn(io.language.say("the verdict was looked at before: the plan comes late, which the "
                             "verdict says; a smaller one does not end what a look began"_t),
             io);
    else
        warn(io.language.sayCount(
                 runs,
                 "the study has {} run already: the plan comes late, which the verdict says"_t,
                 "the study has {} runs already: the plan comes late, which the verdict says"_t,
                 app::grouped(io.language, static_cast<double>(runs))),
             io);
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
    const core::StudyProperties before = properties;
    if (Outcome set = assignProperties(properties, options.properties); !set)
        return set;
    if (properties.baseline != before.baseline)
        if (const Outcome known = core::checkBaseline(study.value()); !known)
            return wrongUse(known.error().message, options.study);
    const std::string detail = fmt::format("{}", fmt::join(options.properties, ", "));
    if (Outcome set = file.value().setProperties(properties, {}); !set)
        return set;
    io.told() << io.language.say("set {}"_t, detail) << "\n";
    if (properties.plan != before.plan)
        warnOfALatePlan(file.value(), study.value(), io);
    return Done{};
}

/// Every name that may be set, with unit and default where it has them.
std::string settableNames(const Language& in)
{
    std::string text =
        in.say("Without NAME=VALUE the properties that differ from their defaults are listed; "
               "'NAME=' goes back to the default."_t) +
        "\n\n" +
        in.say("Names: name, date, baseline, margin (per cent), confidence, max_gap (min), "
               "aero_share,\nfuel (petrol, e10, diesel, electric), bearing_deg, cold_start, "
               "claim (per cent,\nnegative for less), noise (per cent and degrees of freedom, like "
               "0.9,21), noise.from,\nnotes, walk_round (lines, with ; between), plan.sequence, "
               "plan.pairs, plan.margin,\nplan.confidence, "
               "accessory_timer.NAME=WATTS,MINUTES, and the limits of the screening rules:"_t) +
        "\n";
    for (const core::LimitInfo& limit : core::allLimits())
        text += fmt::format("  {:<28}{:<6}{}\n", limit.name, limit.unit,
                            limit.byDefault // as it would be typed
                                ? in.say("default {}"_t, fmt::format("{}", *limit.byDefault))
                                : in.say("not checked until set"_t));
    return text;
}

} // namespace

void describeSet(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<SetOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_option(in.say("PROPERTIES"_t), options->properties, in.say("What to set"_t))
        ->option_text(in.say("NAME=VALUE"_t) + " ...");
    addFooter(in, verb,
              "  bothways set day.bothways overspeed.rpm=3200 accessory_timer.windscreen=450,10",
              settableNames(in));
    onCall(verb, context, [options, &context] { return setProperties(*options, context.io); });
}

} // namespace bothways::cli
