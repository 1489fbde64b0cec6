// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/now.h"
#include "app/cli/options.h"
#include "app/cli/record/line_input.h"
#include "app/cli/record/record_desk.h"
#include "app/cli/verbs/cut_import.h"
#include "app/cli/verbs/verbs.h"
#include "app/cli/warnings.h"
#include "app/wording/numbers.h"
#include "core/base/unstoppable.h"
#include "core/study/clock.h"
#include "storage/instruments/rigs.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <unistd.h>

#include <chrono>
#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct RecordOptions {
    std::string study, rig, cut, gates, configuration;
    std::vector<std::string> from;
    std::optional<double> minutes;
};

Result<storage::Rig> rigOf(const RecordOptions& options)
{
    if (options.rig.empty() && options.from.empty())
        return wrongUse("expected --rig NAME or --from KIND:ADDRESS"_t, "bothways record");
    storage::Rig rig;
    if (!options.rig.empty()) {
        auto read = storage::rigByWord(storage::rigsFolder(), options.rig);
        if (!read)
            return read.error();
        rig = std::move(read).take();
    }
    for (const std::string& text : options.from) {
        auto instrument = storage::instrumentFromText(text);
        if (!instrument)
            return instrument.error();
        instrument.value().name = text.substr(0, text.find(','));
        const std::string wanted = instrument.value().name;
        const auto isTaken = [&] {
            return std::any_of(rig.instruments.begin(), rig.instruments.end(),
                               [&](const auto& i) { return i.name == instrument.value().name; });
        };
        for (int number = 2; isTaken(); ++number)
            instrument.value().name = fmt::format("{} {}", wanted, number);
        rig.instruments.push_back(std::move(instrument).take());
    }
    return rig;
}

/// What an earlier recording left that nobody stopped.
Outcome sayWhatWasRecovered(storage::StudyFile& file, Surroundings& io)
{
    const auto recovered = storage::sayRecovered(file);
    if (!recovered)
        return recovered.error();
    for (const storage::RecoveredRecording& one : recovered.value())
        warn(io.language.say("the recording {} was not stopped; its {} min up to the last second "
                             "are in the study"_t,
                             one.name, app::fixed(io.language, one.length_s / 60.0, 1)),
             io);
    return Done{};
}

/// Until it is stopped: orders, alarms, the line that a terminal shows.
int watch(const RecordOptions& options, storage::StudyFile& file, app::LiveSession& session,
          Surroundings& io)
{
    using Clock = std::chrono::steady_clock;
    RecordDesk desk(file, session, options.configuration, io);
    LineInput input(STDIN_FILENO);
    Clock::time_point shown{};
    while (!desk.isStopping() && !io.stop.stop_requested()) {
        for (const std::string& line : input.wait(std::chrono::milliseconds(100)))
            desk.order(line);
        desk.announce();
        const app::LiveSnapshot snapshot = session.snapshot();
        const bool over = options.minutes && snapshot.now_s >= *options.minutes * 60.0;
        if (over || (snapshot.finished && input.ended()))
            break; // whoever types may still end a run, or discard it
        if (Clock::now() - shown >= std::chrono::seconds(1)) {
            desk.showStatus();
            shown = Clock::now();
        }
    }
    desk.finishRuns();
    if (desk.isUnderWay())
        warn(io.language.say("the run under way was not ended: it is in the recording alone, from "
                             "its mark 'start' on"_t),
             io);
    return desk.written();
}

/// The whole recording into runs, as an import does.
Outcome cutWhole(const CutOrder& order, storage::StudyFile& file, const std::string& name,
                 Surroundings& io)
{
    const auto study = file.study();
    if (!study)
        return study.error();
    const auto recording = recordingNamed(io.language, file, name);
    if (!recording)
        return recording.error();
    CutWords words;
    const auto cuts = cutsOf(io.language, file, recording.value(), study.value(), order, words);
    io.told() << words.parts.str();
    if (!cuts)
        return cuts.error();
    if (const Outcome done = storage::cutRecording(file, recording.value().id, cuts.value()); !done)
        return done;
    io.told() << words.done;
    return Done{};
}

void sayDone(const app::LiveSession& session, int runs, Surroundings& io)
{
    const app::LiveSnapshot last = session.snapshot();
    io.told() << io.language.say("recorded {} samples in {} min as '{}'; runs: {}"_t,
                                 app::grouped(io.language, static_cast<double>(last.samples)),
                                 app::fixed(io.language, last.now_s / 60.0, 1), session.name(),
                                 runs)
              << "\n";
}

/// With what the first instrument complained of.
Error nothingRecorded(const app::LiveSnapshot& last, const std::string& study)
{
    for (std::size_t i = 0; i < last.instruments.size(); ++i)
        if (!last.instruments[i].trouble.empty())
            return Error{ErrorCode::badInput,
                         core::message("nothing was recorded: {}: {}"_t, last.instrument_names[i],
                                       last.instruments[i].trouble),
                         study};
    return Error{ErrorCode::badInput, "nothing was recorded: no instrument said anything"_t, study};
}

Outcome record(const RecordOptions& options, Surroundings& io)
{
    std::optional<CutOrder> order;
    if (!options.cut.empty() || !options.gates.empty()) {
        auto cut = cutOrderFrom(options.cut, options.gates, options.configuration);
        if (!cut)
            return cut.error();
        order = std::move(cut).take();
    }
    auto rig = rigOf(options);
    if (!rig)
        return rig.error();
    auto file = openForChange(options.study);
    if (!file)
        return file.error();
    if (const Outcome said = sayWhatWasRecovered(file.value(), io); !said)
        return said;
    const auto study = file.value().study();
    if (!study)
        return study.error();
    if (order) {
        rig.value().runs = runsBy(*order);
        if (app::lacksTarget(rig.value().runs, study.value()))
            rig.value().runs = {}; // the speed that was held longest is known at the end
        else
            order.reset();
    }
    auto connection = file.value().another();
    if (!connection)
        return connection.error();
    const core::Instant first = nowBy(study.value());
    const std::string name = core::formatDateTime(first);
    auto session = app::LiveSession::start(std::move(connection).take(), rig.value(), first, name);
    if (!session)
        return session.error();
    io.told() << io.language.say("recording '{}'; 'help' says what can be typed"_t, name) << "\n";
    io.out.flush();
    const int runs = watch(options, file.value(), *session.value(), io);
    {
        const core::Unstoppable packing;
        if (const Outcome stopped = session.value()->stop(); !stopped)
            return stopped;
    }
    if (session.value()->snapshot().samples == 0)
        return nothingRecorded(session.value()->snapshot(), options.study);
    sayDone(*session.value(), runs, io);
    return order && session.value()->recording() ? cutWhole(*order, file.value(), name, io)
                                                 : Outcome(Done{});
}

} // namespace

void describeRecord(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<RecordOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_option("--rig", options->rig, in.say("A rig's name or file; see 'bothways rig'"_t))
        ->option_text(in.say("NAME"_t));
    verb.add_option("--from", options->from,
                    in.say("An instrument, once for each: lines, nmea, modbus, obd or replay, and "
                           "where it is"_t))
        ->option_text(in.say("KIND:ADDRESS"_t));
    addNumber(in, verb, "--for", options->minutes,
              {0.0, kNoLimit, false, false, "a number of minutes above 0"_t},
              "Ends by itself after so many minutes"_t);
    addLiveCut(in, verb, options->cut, options->gates,
               "Begin and end runs by what is recorded: by marks, position or speed; without "
               "road_speed.target_kmh the speed that was held longest cuts at the end"_t);
    verb.add_option(
        "--configuration", options->configuration,
        in.say("Of the runs that the recording begins; without it, as they come next"_t));
    addFooter(in, verb, "  bothways record day.bothways --from replay:logger.csv,x100 --for 4",
              in.say("While it goes on, lines that are typed (or come on standard input) are "
                     "orders:"_t) +
                  "\n" + recordOrdersText(in) + "\n" +
                  in.say("The driver drives; the companion types."_t));
    onCall(verb, context, [options, &context] { return record(*options, context.io); });
}

} // namespace bothways::cli
