// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/help.h"
#include "app/cli/options.h"
#include "app/cli/verbs/cut_import.h"
#include "app/cli/verbs/rig_words.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/rig_output.h"
#include "app/wording/instruments.h"
#include "app/wording/numbers.h"
#include "storage/instruments/address.h"
#include "storage/instruments/rigs.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <chrono>
#include <memory>
#include <ostream>
#include <thread>

namespace bothways::cli {
namespace {

struct RigOptions {
    std::vector<std::string> words; ///< rigs, KIND:ADDRESS
    std::string name;
    std::vector<std::string> channels, points;
    std::string channel, fuel, cut, gates;
    std::optional<double> seconds, poll_s;
    std::optional<std::uint64_t> unit;
    bool json = false, replace = false;
};

Outcome tryRig(const RigOptions& options, Surroundings& io)
{
    constexpr double kUsually_s = 5.0;
    constexpr auto kStep = std::chrono::milliseconds(50);
    auto rig = rigOfWords(options.words);
    if (!rig)
        return rig.error();
    auto trial = storage::RigTrial::start(rig.value());
    if (!trial)
        return trial.error();
    const auto begin = std::chrono::steady_clock::now();
    const auto passed_s = [&] {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    };
    while (passed_s() < options.seconds.value_or(kUsually_s) && !io.stop.stop_requested() &&
           !trial.value().ended()) {
        std::this_thread::sleep_for(kStep);
        trial.value().look();
    }
    trial.value().look();
    const app::TriedRig tried{rig.value(), passed_s(), trial.value().channels(),
                              trial.value().states()};
    io.out << (options.json ? app::triedRigJson(tried) : app::triedRigText(io.language, tried));
    io.out.flush();
    for (std::size_t i = 0; i < tried.states.size(); ++i)
        if (tried.states[i].readings == 0)
            return Error{
                ErrorCode::badInput,
                core::message("instrument '{}' gave no reading"_t, tried.rig.instruments[i].name),
                {}};
    return Done{};
}

Outcome showRig(const RigOptions& options, Surroundings& io)
{
    const auto rig = storage::rigByWord(storage::rigsFolder(), options.name);
    if (!rig)
        return rig.error();
    io.out << (options.json ? storage::rigText(rig.value())
                            : app::rigDescription(io.language, rig.value()));
    return Done{};
}

Outcome listRigs(const RigOptions& options, Surroundings& io)
{
    const auto names = storage::rigNames(storage::rigsFolder());
    if (options.json) {
        io.out << app::rigNamesJson(names);
        return Done{};
    }
    for (const std::string& name : names)
        io.out << io.language.say(core::Message::verbatim(name)) << "\n";
    if (names.empty())
        io.told() << io.language.say("There is no rig yet. Make one with: bothways rig new NAME "
                                     "KIND:ADDRESS"_t)
                  << "\n";
    return Done{};
}

Outcome newRig(const RigOptions& options, Surroundings& io)
{
    const auto file = storage::rigFileByWord(storage::rigsFolder(), options.name);
    if (!file)
        return file.error();
    auto rig = rigOfAddresses(options.words);
    if (!rig)
        return rig.error();
    rig.value().name = file.value().stem().string();
    if (!options.cut.empty() || !options.gates.empty()) {
        const auto order = cutOrderFrom(options.cut, options.gates, {});
        if (!order)
            return order.error();
        rig.value().runs = runsBy(order.value());
    }
    std::error_code ignored;
    const std::filesystem::path here = std::filesystem::current_path(ignored);
    for (storage::Instrument& instrument : rig.value().instruments) {
        instrument.address = storage::withWholePath(instrument.address, here);
        instrument.poll_s = options.poll_s.value_or(instrument.poll_s);
        instrument.unit = static_cast<int>(options.unit.value_or(1));
        if (instrument.kind == storage::InstrumentKind::obd)
            instrument.fuel = options.fuel;
    }
    for (const std::string& channel : options.channels)
        if (Outcome added = addRigChannel(rig.value(), channel); !added)
            return added;
    if (!options.replace && std::filesystem::exists(file.value(), ignored))
        return wrongUse(core::message(
            "there is a rig '{}' already; to replace it, give --replace"_t, options.name));
    if (Outcome saved = storage::saveRig(file.value(), rig.value(), options.replace); !saved)
        return saved;
    io.told() << io.language.say("wrote {}"_t, file.value().string()) << "\n";
    return Done{};
}

Outcome calibrateRig(const RigOptions& options, Surroundings& io)
{
    const auto file = storage::rigFileByWord(storage::rigsFolder(), options.name);
    if (!file)
        return file.error();
    auto rig = storage::rigByWord(storage::rigsFolder(), options.name);
    if (!rig)
        return rig.error();
    std::vector<storage::CalibrationPoint> points;
    for (const std::string& text : options.points) {
        const auto point = calibrationPoint(text);
        if (!point)
            return point.error();
        points.push_back(point.value());
    }
    const auto found = storage::calibrated(points[0], points[1]);
    if (!found)
        return found.error();
    storage::RigChannel* channel = nullptr;
    std::string names;
    for (storage::Instrument& instrument : rig.value().instruments)
        for (storage::RigChannel& one : instrument.channels) {
            names += (names.empty() ? "" : ", ") + one.name;
            if (one.name == options.channel)
                channel = &one;
        }
    if (!channel)
        return wrongUse(
            names.empty() ? core::message("the rig lists no channels; name them with 'bothways rig "
                                          "new' and --channel"_t)
                          : core::message("there is no channel '{}'; expected one of {}"_t,
                                          options.channel, names));
    *channel = storage::corrected(*channel, found.value());
    if (Outcome saved = storage::saveRig(file.value(), rig.value(), true); !saved)
        return saved;
    io.told() << io.language.say("{} is {} now"_t, channel->name,
                                 app::wording::conversionWords(io.language, *channel))
              << "\n";
    return Done{};
}

Outcome listPorts(const RigOptions& options, Surroundings& io)
{
    const auto ports = storage::serialPorts();
    io.out << (options.json ? app::serialPortsJson(ports)
                            : app::serialPortsText(io.language, ports));
    return Done{};
}

using RigAction = Outcome (*)(const RigOptions&, Surroundings&);

/// One of the things to do with a rig.
CLI::App* addTask(CLI::App& verb, Context& context, const std::shared_ptr<RigOptions>& options,
                  const char* name, core::Text<0> what, RigAction action)
{
    const Language& in = context.io.language;
    CLI::App* task = verb.add_subcommand(name, in.say(what));
    task->group(in.say("Tasks##of a verb"_t));
    onCall(*task, context, [options, action, &context] { return action(*options, context.io); });
    return task;
}

void addRigName(const Language& in, CLI::App& task, RigOptions& options, const std::string& word,
                core::Text<0> what)
{
    task.add_option(word, options.name, in.say(what))->required();
}

void addJson(const Language& in, CLI::App& task, RigOptions& options)
{
    task.add_flag("--json", options.json, in.say("As JSON, for programs"_t));
}

void addTry(CLI::App& verb, Context& context, const std::shared_ptr<RigOptions>& options)
{
    const Language& in = context.io.language;
    CLI::App* task =
        addTask(verb, context, options, "try",
                "Read a rig for some seconds: values, rates, and which rules read them"_t, tryRig);
    task->add_option("RIG", options->words, in.say("A rig's name or file, or KIND:ADDRESS"_t))
        ->required();
    addNumber(in, *task, "--for", options->seconds,
              {0.1, 86'400.0, true, true, "a number of seconds from 0.1 to 86400"_t},
              "Seconds to read for (default: 5)"_t);
    addJson(in, *task, *options);
    addFooter(in, *task,
              "  bothways rig try lines:serial:/dev/ttyUSB0,115200 nmea:tcp:192.168.1.7:2000");
    nameTypes(in, *task);
}

void addNew(CLI::App& verb, Context& context, const std::shared_ptr<RigOptions>& options)
{
    const Language& in = context.io.language;
    CLI::App* task = addTask(verb, context, options, "new",
                             "Keep the instruments of a car under a name"_t, newRig);
    addRigName(in, *task, *options, in.say("NAME"_t), "Of the rig; or a file, NAME.json"_t);
    task->add_option(in.say("INSTRUMENT"_t), options->words,
                     in.say("KIND:ADDRESS. Kinds: lines, nmea, modbus, obd, replay. Addresses: "
                            "serial:PORT,BAUD, "
                            "tcp:HOST:PORT, udp:*:PORT, file:PATH"_t))
        ->required();
    task->add_option("--channel", options->channels,
                     in.say("SOURCE=CHANNEL*FACTOR+OFFSET UNIT: what a source is called here; with "
                            "several instruments INSTRUMENT/SOURCE=…"_t))
        ->expected(1)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll)
        ->allow_extra_args(false);
    addNumber(in, *task, "--poll", options->poll_s,
              {0.0, 3600.0, true, true, "a number of seconds from 0 to 3600"_t},
              "modbus, obd: seconds from one round to the next (default: 0.25)"_t);
    addWhole(in, *task, "--unit", options->unit, 0, 255,
             "modbus: the device's number (default: 1)"_t);
    task->add_option(
        "--fuel", options->fuel,
        in.say("obd: petrol, e10 or diesel, for fuel from air mass where the car gives "
               "no fuel rate"_t));
    addLiveCut(in, *task, options->cut, options->gates,
               "What begins and ends runs while it records: marks, position or speed (default: "
               "whoever types)"_t);
    task->add_flag("--replace", options->replace, in.say("Over the rig that is there"_t));
    addFooter(in, *task,
              "  bothways rig new car lines:serial:/dev/ttyUSB0,115200 --channel "
              "'rpm=rotor_rpm*0.5 rpm' --channel 'w=output_w W'\n"
              "  bothways rig new meter modbus:tcp:192.168.1.7:502 --channel "
              "'holding:3:u16=output_w*0.1 W'");
    nameTypes(in, *task);
}

void addCalibrate(CLI::App& verb, Context& context, const std::shared_ptr<RigOptions>& options)
{
    const Language& in = context.io.language;
    CLI::App* task =
        addTask(verb, context, options, "calibrate",
                "Factor and offset of a channel from two readings of a true meter"_t, calibrateRig);
    addRigName(in, *task, *options, "RIG", "A rig's name or file"_t);
    task->add_option("CHANNEL", options->channel, in.say("As the rig calls it"_t))->required();
    task->add_option(
            in.say("READINGS"_t), options->points,
            in.say("SHOWN=TRUE twice: what the channel shows, and what the true meter shows"_t))
        ->required()
        ->expected(2);
    addFooter(in, *task, "  bothways rig calibrate car rotor_rpm 1480=1500 2950=3000");
    nameTypes(in, *task);
}

void addSmallTasks(CLI::App& verb, Context& context, const std::shared_ptr<RigOptions>& options)
{
    const Language& in = context.io.language;
    CLI::App* show =
        addTask(verb, context, options, "show", "The instruments and channels of a rig"_t, showRig);
    addRigName(in, *show, *options, "RIG", "A rig's name or file"_t);
    addJson(in, *show, *options);
    addFooter(in, *show, "  bothways rig show car --json > car.json");
    nameTypes(in, *show);
    CLI::App* list = addTask(verb, context, options, "list", "The rigs that you keep"_t, listRigs);
    addJson(in, *list, *options);
    addFooter(in, *list, "  bothways rig list");
    CLI::App* ports =
        addTask(verb, context, options, "ports", "The serial ports of this computer"_t, listPorts);
    addJson(in, *ports, *options);
    addFooter(in, *ports, "  bothways rig ports");
}

} // namespace

void describeRig(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<RigOptions>();
    addTry(verb, context, options);
    addNew(verb, context, options);
    addCalibrate(verb, context, options);
    addSmallTasks(verb, context, options);
    verb.require_subcommand(0, 1);
    addFooter(in, verb,
              "  bothways rig try lines:serial:/dev/ttyUSB0,115200\n"
              "  bothways rig new car lines:serial:/dev/ttyUSB0,115200 --channel "
              "'rpm=rotor_rpm rpm'\n  bothways rig try car",
              in.say("Ask a task for more with: bothways rig try --help"_t));
    onCall(verb, context, [&context]() -> Outcome {
        if (context.result) // a task has run
            return *context.result;
        return wrongUse(
            "what about the rig? Expected one of try, new, show, list, calibrate, ports"_t);
    });
}

} // namespace bothways::cli
