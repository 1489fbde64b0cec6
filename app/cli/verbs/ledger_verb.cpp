// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/analysis_json.h"
#include "app/output/analysis_text.h"
#include "app/wording/ledger.h"
#include "app/wording/numbers.h"
#include "core/answer/analyse.h"
#include "core/effect/answer.h"
#include "core/planning/known_of_study.h"
#include "core/planning/ledger.h"
#include "core/study/fuel.h"
#include "core/study/units.h"
#include "storage/sheet/run_columns.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <limits>
#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

/// Whence the numbers are that nobody typed.
struct LedgerKnown {
    std::optional<core::KnownNumber> output_w, speed_kmh;
    std::optional<double> consumption; ///< of the baseline
    std::optional<core::Fuel> fuel;
};

struct LedgerVerbOptions {
    std::string file, only;
    std::optional<core::Fuel> fuel;
    std::optional<double> output_w, speed_kmh, consumption, induction, heating_mj_per_l, see_pct;
    std::optional<core::Range> alternator, marginal, generator, drive;
    bool json = false;
    Overrides overrides;
};

/// "LOW,MIDDLE,HIGH", or one number for all three.
std::optional<core::Range> rangeFrom(const std::string& text)
{
    std::vector<double> numbers;
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t comma = std::min(text.find(',', from), text.size());
        const auto number = storage::parseNumber(text.substr(from, comma - from));
        if (!number)
            return std::nullopt;
        numbers.push_back(number->value);
        from = comma + 1;
    }
    if (numbers.size() == 1)
        return core::Range{numbers[0], numbers[0], numbers[0]};
    if (numbers.size() == 3 && numbers[0] <= numbers[1] && numbers[1] <= numbers[2])
        return core::Range{numbers[0], numbers[1], numbers[2]};
    return std::nullopt;
}

void addRange(const Language& in, CLI::App& app, const std::string& option,
              std::optional<core::Range>& range, core::Text<0> description)
{
    app.add_option_function<std::string>(
           option,
           [&in, &range, option](const std::string& text) {
               range = rangeFrom(text);
               if (!range)
                   throw CLI::ValidationError(
                       option, in.say("'{}' is not LOW,MIDDLE,HIGH in rising order"_t, text));
           },
           in.say(description))
        ->type_name(in.say("L,M,H##low, middle, high"_t));
}

/// What a study knows: output and speed of its runs, its consumption, its fuel, and what it could
/// have shown.
/// @param analysis  of its runs
Outcome takeFromStudy(LedgerVerbOptions& given, LedgerKnown& known, core::Analysis& analysis,
                      const Surroundings& io)
{
    auto input = readInput(given.file, given.overrides, io);
    if (!input)
        return input.error();
    const core::Study& study = input.value().study;
    analysis = core::analyse(study, core::AnalysisOptions::of(study.properties));
    // Litre factors never meet kilowatt-hours.
    const bool electric = core::isElectric(study);
    if (given.fuel && !core::checkFuel(study, *given.fuel))
        return wrongUse(electric
                            ? "its consumption is in kWh, which is no fuel's; leave --fuel out"_t
                            : "its consumption is that of a fuel; --fuel electric is for kWh"_t,
                        given.file);
    known.fuel = core::fuelOf(study);
    const core::KnownOfStudy numbers = core::knownOf(study);
    known.output_w = numbers.output_w;
    known.speed_kmh = numbers.speed_kmh;
    if (analysis.headline)
        known.consumption = analysis.headline->baseline_l_per_100km;
    if (analysis.detectable && !given.see_pct)
        given.see_pct = core::pctFromLog(analysis.detectable->log);
    return Done{};
}

double valueOf(const std::optional<double>& typed, const std::optional<core::KnownNumber>& known,
               double byDefault)
{
    return typed.value_or(known ? known->value : byDefault);
}

core::LedgerOptions ledgerOptions(const LedgerVerbOptions& given, const LedgerKnown& known)
{
    core::LedgerOptions options =
        core::LedgerOptions::forFuel(given.fuel.value_or(known.fuel.value_or(core::Fuel::petrol)));
    options.output_w = valueOf(given.output_w, known.output_w, options.output_w);
    options.speed_kmh = valueOf(given.speed_kmh, known.speed_kmh, options.speed_kmh);
    options.consumption_l_per_100km =
        given.consumption.value_or(known.consumption.value_or(options.consumption_l_per_100km));
    options.induction = given.induction.value_or(options.induction);
    options.heating_value_mj_per_l =
        given.heating_mj_per_l.value_or(options.heating_value_mj_per_l);
    options.alternator = given.alternator.value_or(options.alternator);
    options.marginal = given.marginal.value_or(options.marginal);
    options.generator = given.generator.value_or(options.generator);
    options.drive = given.drive.value_or(options.drive);
    options.relief = given.only != "cost";
    options.cost = given.only != "relief";
    return options;
}

/// "an output of 540 W (the median of 12 runs)"
std::string knownPart(const Language& in, const core::KnownNumber& known, core::Text<1> number,
                      const char* setName)
{
    const std::string words = in.say(number, app::significant(in, known.value, 3));
    if (known.runs == 0)
        return in.say("{} ({})##a number, and whence it is"_t, words, setName);
    return in.sayCount(known.runs, "{} ({} run says it)"_t, "{} (the median of {} runs)"_t, words,
                       known.runs);
}

/// What nobody typed and the study says.
std::string takenText(const Language& in, const LedgerVerbOptions& given, const LedgerKnown& known,
                      const core::LedgerOptions& options)
{
    std::vector<std::string> taken;
    if (!given.output_w && known.output_w)
        taken.push_back(knownPart(in, *known.output_w, "output {} W"_t, "output_w"));
    if (!given.speed_kmh && known.speed_kmh)
        taken.push_back(
            knownPart(in, *known.speed_kmh, "road speed {} km/h"_t, "road_speed.target_kmh"));
    if (!given.consumption && known.consumption)
        taken.push_back(in.say(options.fuel == core::Fuel::electric
                                   ? "consumption {} kWh/100 km (of the baseline)"_t
                                   : "consumption {} L/100 km (of the baseline)"_t,
                               app::significant(in, *known.consumption, 3)));
    if (taken.empty())
        return {};
    return app::wrapped("  " + in.say("Taken from the study: {}."_t,
                                      fmt::format("{}", fmt::join(taken, "; "))),
                        2) +
           "\n";
}

/// What neither the call nor the study said.
std::string assumedText(const Language& in, const LedgerVerbOptions& given,
                        const LedgerKnown& known, const core::LedgerOptions& options)
{
    std::string assumed;
    const auto add = [&](bool said, core::Text<1> words, double number) {
        if (!said)
            assumed += (assumed.empty() ? "" : "; ") + in.say(words, number);
    };
    add(given.output_w || known.output_w, "an output of {} W (--output-w)"_t, options.output_w);
    add(given.speed_kmh || known.speed_kmh,
        "a road speed of {} km/h (--speed-kmh, or the study's road_speed.target_kmh)"_t,
        options.speed_kmh);
    add(given.consumption || known.consumption,
        options.fuel == core::Fuel::electric ? "a consumption of {} kWh/100 km (--consumption)"_t
                                             : "a consumption of {} L/100 km (--consumption)"_t,
        options.consumption_l_per_100km);
    if (assumed.empty())
        return {};
    return app::wrapped("  " + in.say("Assumed, as nothing says otherwise: {}."_t, assumed), 2) +
           "\n";
}

/// For programs: whence each number is.
app::LedgerSources sourcesOf(const LedgerVerbOptions& given, const LedgerKnown& known)
{
    const auto source = [](bool typed, const std::optional<core::KnownNumber>& number) {
        return typed ? "option" : !number ? "default" : number->runs > 0 ? "runs" : "limit";
    };
    return {source(given.output_w.has_value(), known.output_w),
            source(given.speed_kmh.has_value(), known.speed_kmh),
            given.consumption   ? "option"
            : known.consumption ? "runs"
                                : "default"};
}

Outcome ledger(LedgerVerbOptions given, Surroundings& io)
{
    core::Analysis analysis;
    LedgerKnown known;
    if (!given.file.empty())
        if (Outcome taken = takeFromStudy(given, known, analysis, io); !taken)
            return taken;
    const core::LedgerOptions options = ledgerOptions(given, known);
    const auto made = core::makeLedger(options);
    if (!made)
        return made.error();
    const std::optional<double> watts =
        given.see_pct ? core::wattsToSee(options, *given.see_pct) : std::nullopt;
    if (given.json) {
        io.out << app::ledgerJson(made.value(), watts, sourcesOf(given, known));
        return Done{};
    }
    io.out << app::ledgerText(io.language, made.value(), watts)
           << takenText(io.language, given, known, options)
           << assumedText(io.language, given, known, options);
    const std::string beside =
        app::wording::measuredBesideLedger(io.language, analysis, made.value());
    if (!beside.empty())
        io.out << app::wrapped("  " + beside, 2) << "\n";
    return Done{};
}

void addFactors(const Language& in, CLI::App& verb, LedgerVerbOptions& options)
{
    addRange(in, verb, "--alternator", options.alternator, "Efficiency of the alternator"_t);
    addRange(in, verb, "--marginal", options.marginal,
             "Efficiency of the engine for a little more work"_t);
    addRange(in, verb, "--generator", options.generator, "Efficiency of the device's generator"_t);
    addRange(in, verb, "--drive", options.drive, "Efficiency from the engine to the wheels"_t);
    addNumber(in, verb, "--induction", options.induction,
              {0.0, 0.5, true, true, "a number from 0 to 0.5"_t},
              "How far the rotor slows the air (default 1/3)"_t);
    addNumber(in, verb, "--heating-value", options.heating_mj_per_l,
              {0.0, kNoLimit, false, false, "MJ/L above 0"_t},
              "Lower heating value of the fuel, MJ/L; electric: MJ/kWh"_t);
}

/// What the device gives, and the car that carries it.
void addCarOptions(const Language& in, CLI::App& verb, LedgerVerbOptions& options)
{
    addNumber(in, verb, "--output-w", options.output_w,
              {0.0, kNoLimit, false, false, "watts above 0"_t},
              "Electrical output (default: that of the study's runs, else 600)"_t);
    addNumber(in, verb, "--speed-kmh", options.speed_kmh,
              {0.0, kNoLimit, false, false, "km/h above 0, or mph like '55 mph'"_t, "km/h"},
              "Road speed, km/h; '55 mph' is taken too (default: that of the study, else 100)"_t);
    addNumber(
        in, verb, "--consumption", options.consumption,
        {0.0, kNoLimit, false, false, "L/100 km above 0"_t},
        "Consumption of the baseline, L/100 km (default 8); electric: kWh/100 km (default 18)"_t);
    verb.add_option_function<std::string>(
            "--fuel",
            [&in, &options](const std::string& text) {
                options.fuel = core::fuelFromName(text);
                if (!options.fuel)
                    throw CLI::ValidationError(
                        "--fuel", in.say("'{}' is not petrol, e10, diesel or electric"_t, text));
            },
            in.say("petrol, e10, diesel or electric (default: that of the study, else petrol)"_t))
        ->type_name(in.say("FUEL"_t));
}

} // namespace

void describeLedger(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<LedgerVerbOptions>();
    verb.add_option(
        in.say("FILE"_t), options->file,
        in.say("A study or run sheet: gives consumption, and the effect that it could show"_t));
    addCarOptions(in, verb, *options);
    verb.add_option("--only", options->only,
                    in.say("relief or cost: an accessory has one of them"_t))
        ->check(oneOf(in, {"relief", "cost"}))
        ->type_name(in.say("TERM"_t));
    addNumber(in, verb, "--see", options->see_pct,
              {0.0, 100.0, false, false, "a per cent above 0 and below 100"_t},
              "The effect to be seen, per cent: how many watts is that? (default: the study's)"_t);
    addFactors(in, verb, *options);
    addSheetOverrides(in, verb, options->overrides);
    verb.add_flag("--json", options->json, in.say("As JSON, for programs"_t));
    addFooter(in, verb, "  bothways ledger --output-w 600 --speed-kmh 100 --consumption 8");
    onCall(verb, context, [options, &context] { return ledger(*options, context.io); });
}

} // namespace bothways::cli
