// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/noise.h"
#include "app/cli/output.h"
#include "app/cli/several.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/analysis_json.h"
#include "app/output/analysis_text.h"
#include "app/output/run_card.h"
#include "app/output/text_layout.h"
#include "app/wording/numbers.h"
#include "core/planning/known_of_study.h"
#include "core/planning/plan.h"
#include "core/planning/sequence_study.h"
#include "core/study/limits.h"
#include "core/study/units.h"

#include <CLI/CLI.hpp>

#include <limits>
#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct PlanVerbOptions {
    std::vector<std::string> files, noise_from;
    std::string sequence, card, begin;
    std::optional<std::uint64_t> pairs;
    std::optional<double> noise_pct, pair_min, switch_min, stretch_km, want_pct, power, confidence,
        hours;
    bool json = false, replace = false;
    Overrides overrides;
};

/// Length of the stretch of the first study, if that says one: as it is set, else as it was driven.
std::optional<core::KnownNumber> stretchOf(const std::vector<Input>& files)
{
    return files.empty() ? std::nullopt : core::knownOf(files.front().study).stretch_km;
}

/// "option", "limit", "runs" or "default"
std::string_view stretchFrom(const PlanVerbOptions& given, const std::vector<Input>& files)
{
    const auto known = stretchOf(files);
    return given.stretch_km ? "option" : !known ? "default" : known->runs > 0 ? "runs" : "limit";
}

/// Whence the length of the stretch is, where nobody typed it.
std::string stretchText(const Language& in, const PlanVerbOptions& given,
                        const std::vector<Input>& files, const core::PlanOptions& options)
{
    if (given.stretch_km)
        return {};
    const std::string km = app::shortest(in, options.stretch_km);
    const auto known = stretchOf(files);
    std::string words;
    if (!known)
        words =
            in.say("Assumed, as nothing says otherwise: a stretch of {} km (--stretch-km)."_t, km);
    else if (known->runs == 0)
        words = in.say("Taken from the study: a stretch of {} km (stretch.km)."_t, km);
    else
        words = in.sayCount(
            known->runs, "Taken from the study: a stretch of {} km ({} run says it)."_t,
            "Taken from the study: a stretch of {} km (the median of {} runs)."_t, km, known->runs);
    return app::wrapped("  " + words, 2) + "\n";
}

/// @param files   what was read of FILE
/// @param noises  the studies whose noise is taken are appended here
Result<core::PlanOptions> planOptions(const PlanVerbOptions& given, const std::vector<Input>& files,
                                      const Surroundings& io,
                                      std::vector<app::NoiseOfStudy>& noises)
{
    core::PlanOptions options;
    if (!given.sequence.empty())
        options.sequence = given.sequence;
    if (given.pairs)
        options.pairs_per_block = static_cast<int>(*given.pairs);
    options.pair_min = given.pair_min.value_or(options.pair_min);
    options.switch_min = given.switch_min.value_or(options.switch_min);
    const auto known = stretchOf(files);
    options.stretch_km = given.stretch_km.value_or(known ? known->value : options.stretch_km);
    options.power = given.power.value_or(options.power);
    options.confidence = given.confidence.value_or(options.confidence);
    if (given.noise_pct) {
        options.s = core::noiseFromPct(*given.noise_pct);
        return options;
    }
    const auto others = readInputs(given.noise_from, given.overrides, io);
    if (!others)
        return others.error();
    auto found = noisesOf(given.noise_from.empty() ? files : others.value(), true);
    if (!found)
        return found.error();
    noises = std::move(found).take();
    if (noises.empty())
        return options;
    const core::Noise pooled = app::pooledNoiseOf(noises);
    options.s = pooled.s;
    options.s_df = pooled.df;
    return options;
}

Outcome whatFits(const PlanVerbOptions& given, const core::PlanOptions& options, Surroundings& io)
{
    const auto plans = core::sequencesFor(*given.hours, options);
    if (!plans)
        return plans.error();
    std::vector<core::SequenceWeakness> weakness;
    for (const core::Plan& plan : plans.value()) {
        core::PlanOptions its = options;
        its.sequence = plan.sequence;
        its.pairs_per_block = plan.pairs_per_block;
        const auto simulated = core::simulateWeakness(its);
        if (!simulated)
            return simulated.error();
        weakness.push_back(simulated.value());
    }
    io.out << (given.json ? app::plansJson(plans.value(), weakness)
                          : app::plansText(io.language, plans.value(), weakness));
    return Done{};
}

/// The run card: with the names, limits and timed accessories of the study that is given.
Outcome writeCard(const PlanVerbOptions& given, const std::vector<Input>& files,
                  const core::Plan& plan, Surroundings& io)
{
    std::vector<std::filesystem::path> inputs(given.noise_from.begin(), given.noise_from.end());
    for (const Input& file : files)
        for (std::filesystem::path& read : file.filesRead())
            inputs.push_back(std::move(read));
    const core::Study none;
    app::RunCardInput card = app::runCardOf(files.empty() ? none : files.front().study, plan);
    card.language = io.language;
    if (!given.begin.empty())
        card.begin = given.begin;
    const auto html = app::runCardHtml(card);
    if (!html)
        return html.error();
    if (Outcome written =
            writeTo(given.card, "--card", given.replace, html.value(), inputs, app::kRunCardMark);
        !written)
        return written;
    io.told(io.err) << io.language.say("wrote the run card: {}"_t, given.card) << "\n";
    return Done{};
}

Outcome plan(const PlanVerbOptions& given, Surroundings& io)
{
    const auto files = readInputs(given.files, given.overrides, io);
    if (!files)
        return files.error();
    std::vector<app::NoiseOfStudy> noises;
    const auto options = planOptions(given, files.value(), io, noises);
    if (!options)
        return options.error();
    if (given.hours)
        return whatFits(given, options.value(), io);
    const auto made = given.want_pct
                          ? core::planFor(core::logFromPct(*given.want_pct), options.value())
                          : core::makePlan(options.value());
    if (!made)
        return made.error();
    if (!given.card.empty())
        if (Outcome written = writeCard(given, files.value(), made.value(), io); !written)
            return written;
    if (given.json)
        io.out << app::planJson(made.value(), noises, stretchFrom(given, files.value()));
    else
        io.out << app::planText(io.language, made.value(), noises)
               << stretchText(io.language, given, files.value(), options.value());
    return Done{};
}

/// The day that is planned.
void addDayOptions(const Language& in, CLI::App& verb, PlanVerbOptions& options)
{
    verb.add_option("--sequence", options.sequence,
                    in.say("Blocks in driving order (default ABA)"_t))
        ->type_name("AB...");
    addWhole(in, verb, "--pairs", options.pairs, 1, core::kMostPairsPerBlock,
             "Pairs a block (default 4)"_t);
    addNumber(in, verb, "--noise", options.noise_pct,
              {0.0, 100.0, false, false, "a per cent above 0 and below 100"_t},
              "Scatter of a pair, per cent (default 1)"_t)
        ->excludes(verb.get_option("--noise-from"));
    addNumber(in, verb, "--pair-min", options.pair_min,
              {0.0, kNoLimit, false, false, "minutes above 0"_t}, "Minutes a pair (default 15)"_t);
    addNumber(in, verb, "--switch-min", options.switch_min,
              {0.0, kNoLimit, true, false, "minutes, 0 or more"_t},
              "Minutes a switch (default 20)"_t);
    addNumber(
        in, verb, "--stretch-km", options.stretch_km,
        {0.0, kNoLimit, false, false, "kilometres above 0, or miles like '4 mi'"_t, "km"},
        "Length of the stretch, km; '4 mi' is taken too (default: that of the study, else 5)"_t);
}

/// What it is to show.
void addAimOptions(const Language& in, CLI::App& verb, PlanVerbOptions& options)
{
    addNumber(in, verb, "--want", options.want_pct,
              {0.0, 100.0, false, false, "a per cent above 0 and below 100"_t},
              "Find the fewest pairs a block that show this effect, per cent"_t)
        ->excludes(verb.get_option("--pairs"));
    addNumber(in, verb, "--power", options.power,
              {0.0, 1.0, false, false, "a share between 0 and 1"_t},
              "How often it should be found (default 0.8)"_t);
    addNumber(in, verb, "--confidence", options.confidence,
              {0.5, core::kHighestConfidence, false, true, "a share above 0.5, at most 0.9999"_t},
              "Confidence of the interval (default 0.95)"_t);
}

} // namespace

void describePlan(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<PlanVerbOptions>();
    verb.add_option(in.say("FILE"_t), options->files,
                    in.say("Studies or run sheets to take the noise of a pair from"_t));
    verb.add_option("--noise-from", options->noise_from,
                    in.say("Studies or run sheets whose noise is pooled (default: the FILEs)"_t))
        ->type_name(in.say("FILE"_t) + "...");
    addDayOptions(in, verb, *options);
    addAimOptions(in, verb, *options);
    CLI::Option* hours = addNumber(in, verb, "--hours", options->hours,
                                   {0.0, kNoLimit, false, false, "hours above 0"_t},
                                   "Which sequence fits, and what is each weak against?"_t);
    verb.add_option("--card", options->card,
                    in.say("Write the run card, a page to print for the roadside"_t))
        ->type_name("HTML")
        ->excludes(hours);
    verb.add_flag(
            "--replace", options->replace,
            in.say("With --card: put it in the place of a file that is there. Without it only "
                   "a run card that Bothways wrote is replaced"_t))
        ->needs(verb.get_option("--card"));
    verb.add_option("--begin", options->begin,
                    in.say("Time of the first run on the card (default 06:00)"_t))
        ->type_name("HH:MM");
    addSheetOverrides(in, verb, options->overrides);
    verb.add_flag("--json", options->json, in.say("As JSON, for programs"_t));
    addFooter(in, verb, "  bothways plan --sequence ABA --noise 1 --want 1",
              in.say("To tie a plan to a study before its first run:"_t) +
                  "\n  bothways set day.bothways plan.sequence=ABA plan.pairs=4");
    onCall(verb, context, [options, &context] { return plan(*options, context.io); });
}

} // namespace bothways::cli
