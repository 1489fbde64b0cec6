// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/verbs/cut_import.h"

#include "app/cli/options.h"
#include "app/wording/numbers.h"
#include "app/wording/recordings.h"
#include "app/wording/runs.h"
#include "core/recording/unreadable_recording.h"
#include "core/study/limits.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"
#include "storage/sheet/run_columns.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <ostream>
#include <vector>

namespace bothways::cli {
namespace {

using Parts = std::vector<core::CutProposal>;

Result<core::Geofence> gatesFrom(const std::string& text)
{
    const auto bad = [&] {
        return wrongUse(core::message("'{}' is not LAT,LON,LAT,LON[,METRES]"_t, text), "--gates");
    };
    core::Geofence fence;
    double* const numbers[] = {&fence.start_lat_deg, &fence.start_lon_deg, &fence.end_lat_deg,
                               &fence.end_lon_deg, &fence.radius_m};
    std::string rest = text;
    std::size_t given = 0;
    for (bool more = true; more; ++given) {
        const std::size_t comma = std::min(rest.find(','), rest.size());
        const auto value = storage::parseNumber(rest.substr(0, comma));
        if (!value || given == std::size(numbers))
            return bad();
        *numbers[given] = value->value;
        more = comma < rest.size();
        rest.erase(0, comma + 1);
    }
    if (given < 4)
        return bad();
    if (const Outcome outcome = core::checkFence(fence); !outcome)
        return wrongUse(outcome.error().message, "--gates");
    return fence;
}

/// Says which speed was taken, where it is not the study's target.
void printHeldSpeed(const Language& in, double held_kmh, const core::Study& study,
                    std::ostream& out)
{
    const std::string held = app::fixed(in, held_kmh, 0);
    if (const auto target = core::limitOf(study.properties.limits, "road_speed.target_kmh"))
        out << in.say("the target of {} km/h was never held; held speed: {} km/h; set "
                      "road_speed.target_kmh to choose it"_t,
                      *target, held);
    else
        out << in.say("held speed: {} km/h; set road_speed.target_kmh to choose it"_t, held);
    out << "\n";
}

/// Where the recording may be cut; an Error says what it lacks.
Result<Parts> partsOf(const Language& in, const core::RunTrace& trace,
                      const storage::RecordingInfo& recording, const core::Study& study,
                      const CutOrder& order, std::ostream& out)
{
    using app::wording::NoCut;
    const auto lacks = [&](NoCut what) {
        return Error{ErrorCode::badInput, app::wording::whyNoCut(what), recording.name};
    };
    Parts parts;
    switch (order.way) {
    case CutWay::times: return core::cutByTimes(recording.span(), study, order.clock);
    case CutWay::marks:
        parts = core::cutByMarks(trace, study);
        if (parts.empty())
            return lacks(NoCut::noMarks);
        break;
    case CutWay::position:
        if (!trace.samples("lat_deg") || !trace.samples("lon_deg"))
            return lacks(NoCut::noPositions);
        parts = core::cutByPosition(trace, *order.gates);
        if (parts.empty())
            return lacks(NoCut::gatesNotPassed);
        break;
    case CutWay::speed: {
        if (!trace.samples("road_speed_kmh"))
            return lacks(NoCut::noSpeed);
        auto cut = core::cutByTarget(trace, study);
        if (cut.parts.empty())
            return lacks(NoCut::noSpeedHeld);
        if (cut.heldLongest_kmh)
            printHeldSpeed(in, *cut.heldLongest_kmh, study, out);
        parts = std::move(cut.parts);
        break;
    }
    }
    return parts;
}

const core::Run* runOf(std::optional<int> number, const core::Study& study)
{
    const auto found = std::find_if(study.runs.begin(), study.runs.end(),
                                    [&](const core::Run& run) { return run.number == number; });
    return found == study.runs.end() ? nullptr : &*found;
}

core::Message whoseIs(const core::Run* run)
{
    return run ? core::message("run {}"_t, run->number) : core::Message("new run"_t);
}

void printPart(const Language& in, const core::CutProposal& part, const core::Run* run,
               const std::string& direction, std::ostream& out)
{
    out << "  "
        << in.say("{}: from {} s to {} s"_t, whoseIs(run), app::fixed(in, part.from_s, 1),
                  app::fixed(in, part.to_s, 1));
    if (part.distance_km)
        out << ", " << app::fixed(in, *part.distance_km, 2) << " km";
    out << ", " << direction << "\n";
}

/// Runs that began at most so long before or after the recording are said to get no part of it.
constexpr double kNear_s = 2.0 * 3600.0;

/// Of the runs that get no part, those of the recording's own hours: where they would start in it
/// follows from a run that has a part.
std::vector<int> nearRuns(const core::Study& study, const std::vector<storage::Cut>& cuts,
                          const std::vector<int>& without, const storage::RecordingInfo& recording)
{
    std::vector<int> near;
    const auto placed = std::find_if(
        cuts.begin(), cuts.end(), [](const storage::Cut& cut) { return cut.existing.has_value(); });
    if (placed == cuts.end())
        return near;
    const core::Run* known = nullptr;
    for (const core::Run& run : study.runs)
        if (run.id == *placed->existing)
            known = &run;
    for (const core::Run& run : study.runs) {
        const double start_s =
            placed->offset_s + static_cast<double>(run.start.us - known->start.us) / 1e6;
        if (std::find(without.begin(), without.end(), run.number) != without.end() &&
            start_s >= recording.from_s - kNear_s && start_s <= recording.to_s + kNear_s)
            near.push_back(run.number);
    }
    return near;
}

std::string withoutPartWarning(const Language& in, const std::vector<int>& runs,
                               const std::string& recording)
{
    return in.sayCount(
        static_cast<long long>(runs.size()),
        "{} gets no part of {}; where the recorder's clock is wrong, --shift SECONDS "
        "sets it right"_t,
        "{} get no part of {}; where the recorder's clock is wrong, --shift SECONDS "
        "sets it right"_t,
        app::wording::runsWords(in, runs), recording);
}

/// The runs of the study that none of the parts was given to.
void printWithoutPart(const Language& in, const core::Study& study,
                      const std::vector<storage::Cut>& cuts,
                      const storage::RecordingInfo& recording, CutWords& words)
{
    std::vector<int> without;
    for (const core::Run& run : study.runs)
        if (std::none_of(cuts.begin(), cuts.end(),
                         [&](const storage::Cut& cut) { return cut.existing == run.id; }))
            without.push_back(run.number);
    if (without.empty())
        return;
    words.parts << "  "
                << in.sayCount(static_cast<long long>(without.size()), "run {}: no part"_t,
                               "runs {}: no part"_t, fmt::format("{}", fmt::join(without, ", ")))
                << "\n";
    if (const auto near = nearRuns(study, cuts, without, recording); !near.empty())
        words.warnings.push_back(withoutPartWarning(in, near, recording.name));
}

/// Where the recording cannot tell, runs go out and back by turns.
std::string directionOf(const core::CutProposal& part, std::size_t place, const core::Study& study)
{
    const auto known = core::directions(study);
    const std::size_t which = part.outward.value_or(place % 2 == 0) ? 0 : 1;
    return which < known.size() ? known[which] : which == 0 ? "out" : "return";
}

Outcome checkCuts(const std::vector<storage::Cut>& cuts, long long added, const CutOrder& order,
                  const std::string& name)
{
    if (added > 0 && order.configuration.empty())
        return wrongUse(added == 1 ? core::Message("one part is no run of the study; expected "
                                                   "--configuration NAME to add what is new"_t)
                                   : core::message("{} parts are no run of the study; expected "
                                                   "--configuration NAME to add what is new"_t,
                                                   added),
                        name);
    if (cuts.empty())
        return Error{ErrorCode::badInput,
                     "every part is empty; expected a run that starts before the recording ends"_t,
                     name};
    return Done{};
}

} // namespace

Result<CutOrder> cutOrderFrom(const std::string& way, const std::string& gates,
                              const std::string& configuration)
{
    CutOrder order;
    order.configuration = configuration;
    order.way = way == "times"      ? CutWay::times
                : way == "marks"    ? CutWay::marks
                : way == "position" ? CutWay::position
                                    : CutWay::speed;
    if ((order.way == CutWay::position) != !gates.empty())
        return wrongUse("--cut position and --gates go together"_t, "--cut");
    if (gates.empty())
        return order;
    const auto fence = gatesFrom(gates);
    if (!fence)
        return fence.error();
    order.gates = fence.value();
    return order;
}

core::RunsBy runsBy(const CutOrder& order)
{
    using Way = core::RunsBy::Way;
    switch (order.way) {
    case CutWay::times: break;
    case CutWay::marks: return {Way::marks, {}};
    case CutWay::position: return {Way::position, order.gates};
    case CutWay::speed: return {Way::speed, {}};
    }
    return {};
}

void addLiveCut(const Language& in, CLI::App& verb, std::string& way, std::string& gates,
                core::Text<0> what)
{
    verb.add_option("--cut", way, in.say(what))->check(oneOf(in, {"marks", "position", "speed"}));
    verb.add_option("--gates", gates, in.say("For --cut position: LAT,LON,LAT,LON[,METRES]"_t));
}

Result<storage::RecordingInfo> recordingNamed(const Language& in, const storage::StudyFile& file,
                                              const std::string& name)
{
    auto known = storage::recordings(file);
    if (!known)
        return known.error();
    std::vector<std::string> names;
    const storage::RecordingInfo* found = nullptr;
    for (const storage::RecordingInfo& recording : known.value()) {
        names.push_back(recording.name);
        if (recording.name == name)
            found = &recording; // of two, the newer
    }
    if (found)
        return *found;
    return wrongUse(names.empty()
                        ? core::message("there is no recording '{}': the study has none"_t, name)
                        : core::message("there is no recording '{}'; expected one of {}"_t, name,
                                        quotedList(in, names)),
                    file.path().string());
}

Result<std::vector<storage::Cut>> cutsOf(const Language& in, const storage::StudyFile& file,
                                         const storage::RecordingInfo& recording,
                                         const core::Study& study, const CutOrder& order,
                                         CutWords& words)
{
    const auto trace = storage::openRecording(file, recording.id);
    if (!trace)
        return trace.error();
    const auto found = core::readingRecordings(
        [&] { return partsOf(in, *trace.value(), recording, study, order, words.parts); });
    if (!found)
        return found.error();
    const Result<Parts>& parts = found.value();
    if (!parts)
        return parts.error();
    const auto byTimes = core::cutByTimes(recording.span(), study, order.clock);
    const auto gaps = core::readingRecordings([&] { return core::gapsIn(*trace.value()); });
    if (!gaps)
        return gaps.error();
    const auto numbers =
        core::runsInTime(parts.value(), byTimes ? byTimes.value() : Parts{}, study);
    std::vector<storage::Cut> cuts;
    long long added = 0;
    for (std::size_t i = 0; i < parts.value().size(); ++i) {
        const core::CutProposal& part = parts.value()[i];
        if (!(part.to_s > part.from_s)) // another run of the sheet starts at the same time
            continue;
        const core::Run* run = runOf(numbers[i], study);
        const std::string direction = run ? run->direction : directionOf(part, i, study);
        printPart(in, part, run, direction, words.parts);
        if (const auto gap = core::longestGapOf(
                part, gaps.value(),
                order.way == CutWay::times ? core::EndsFrom::sheet : core::EndsFrom::recording))
            words.warnings.push_back(in.say(app::wording::gapOfPart(in, whoseIs(run), part, *gap)));
        if (run) {
            cuts.push_back(storage::cutForRun(run->id, part, recording, study, order.clock,
                                              order.way != CutWay::times));
            continue;
        }
        ++added;
        auto made = storage::cutForNewRun(part, recording, study, order.clock);
        if (!made)
            return made.error();
        cuts.push_back(std::move(made).take());
        cuts.back().run.configuration = order.configuration;
        cuts.back().run.direction = direction;
    }
    if (order.way == CutWay::times)
        printWithoutPart(in, study, cuts, recording, words);
    if (Outcome whole = checkCuts(cuts, added, order, recording.name); !whole)
        return whole.error();
    const auto all = static_cast<long long>(cuts.size());
    words.done = in.sayCount(all, "cut {} into {} run: {} new, {} given their part"_t,
                             "cut {} into {} runs: {} new, {} given their part"_t, recording.name,
                             app::grouped(in, static_cast<double>(all)), added, all - added) +
                 "\n";
    return cuts;
}

} // namespace bothways::cli
