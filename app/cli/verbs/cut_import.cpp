// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/verbs/cut_import.h"

#include "app/wording/numbers.h"
#include "core/study/limits.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"
#include "storage/sheet/run_columns.h"

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
        return wrongUse(fmt::format("'{}' is not LAT,LON,LAT,LON[,METRES]", text), "--gates");
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
        return wrongUse(outcome.error().message.english(), "--gates");
    return fence;
}

/// Says which speed was taken, where it is not the study's target.
void printHeldSpeed(double held_kmh, const core::Study& study, std::ostream& out)
{
    if (const auto target = core::limitOf(study.properties.limits, "road_speed.target_kmh"))
        out << fmt::format("the target of {} km/h was never held; ", *target);
    out << fmt::format("held speed: {:.0f} km/h; set road_speed.target_kmh to choose it\n",
                       held_kmh);
}

/// Where the recording may be cut; an Error says what it lacks.
Result<Parts> partsOf(const core::RunTrace& trace, const storage::RecordingInfo& recording,
                      const core::Study& study, const CutOrder& order, std::ostream& out)
{
    const auto lacks = [&](const char* what) {
        return Error{ErrorCode::badInput, what, recording.name};
    };
    Parts parts;
    switch (order.way) {
    case CutWay::times: return core::cutByTimes(recording.span(), study);
    case CutWay::marks:
        parts = core::cutByMarks(trace, study);
        if (parts.empty())
            return lacks("the recording has no mark that begins with \"start\"");
        break;
    case CutWay::position:
        if (!trace.samples("lat_deg") || !trace.samples("lon_deg"))
            return lacks("the recording has no positions; expected channels lat_deg and lon_deg");
        parts = core::cutByPosition(trace, *order.gates);
        if (parts.empty())
            return lacks("the drive never leads through one of the gates and on to the other");
        break;
    case CutWay::speed: {
        if (!trace.samples("road_speed_kmh"))
            return lacks("the recording has no speed; expected a channel road_speed_kmh");
        auto cut = core::cutByTarget(trace, study);
        if (cut.parts.empty())
            return lacks("no speed was held for a minute");
        if (cut.heldLongest_kmh)
            printHeldSpeed(*cut.heldLongest_kmh, study, out);
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

void printPart(const core::CutProposal& part, const core::Run* run, const std::string& direction,
               std::ostream& out)
{
    out << fmt::format("  {}: from {:.1f} s to {:.1f} s",
                       run ? fmt::format("run {}", run->number) : "new run", part.from_s,
                       part.to_s);
    if (part.distance_km)
        out << fmt::format(", {:.2f} km", *part.distance_km);
    out << fmt::format(", {}\n", direction);
}

/// The runs of the study that none of the parts was given to.
void printWithoutPart(const core::Study& study, const std::vector<storage::Cut>& cuts,
                      std::ostream& out)
{
    std::vector<int> without;
    for (const core::Run& run : study.runs)
        if (std::none_of(cuts.begin(), cuts.end(),
                         [&](const storage::Cut& cut) { return cut.existing == run.id; }))
            without.push_back(run.number);
    if (!without.empty())
        out << fmt::format("  run{} {}: no part\n", without.size() == 1 ? "" : "s",
                           fmt::join(without, ", "));
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
        return wrongUse(
            fmt::format("{} no run of the study; expected --configuration NAME to add "
                        "what is new",
                        added == 1 ? "one part is" : fmt::format("{} parts are", added)),
            name);
    if (cuts.empty())
        return Error{ErrorCode::badInput,
                     "every part is empty; expected a run that starts before the recording ends",
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
        return wrongUse("--cut position and --gates go together", "bothways import");
    if (gates.empty())
        return order;
    const auto fence = gatesFrom(gates);
    if (!fence)
        return fence.error();
    order.gates = fence.value();
    return order;
}

Result<storage::RecordingInfo> recordingNamed(const storage::StudyFile& file,
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
                        ? fmt::format("there is no recording '{}': the study has none", name)
                        : fmt::format("there is no recording '{}'; expected one of '{}'", name,
                                      fmt::join(names, "', '")),
                    file.path().string());
}

Result<std::vector<storage::Cut>> cutsOf(const storage::StudyFile& file,
                                         const storage::RecordingInfo& recording,
                                         const core::Study& study, const CutOrder& order,
                                         CutWords& words)
{
    const auto trace = storage::openRecording(file, recording.id);
    if (!trace)
        return trace.error();
    const auto parts = partsOf(*trace.value(), recording, study, order, words.parts);
    if (!parts)
        return parts.error();
    const auto byTimes = core::cutByTimes(recording.span(), study);
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
        printPart(part, run, direction, words.parts);
        if (run) {
            cuts.push_back(storage::cutForRun(run->id, part, recording, study, {},
                                              order.way != CutWay::times));
            continue;
        }
        ++added;
        auto made = storage::cutForNewRun(part, recording, study, {});
        if (!made)
            return made.error();
        cuts.push_back(std::move(made).take());
        cuts.back().run.configuration = order.configuration;
        cuts.back().run.direction = direction;
    }
    if (order.way == CutWay::times)
        printWithoutPart(study, cuts, words.parts);
    if (Outcome whole = checkCuts(cuts, added, order, recording.name); !whole)
        return whole.error();
    const auto all = static_cast<long long>(cuts.size());
    words.done = fmt::format("cut {} into {}: {} new, {} given their part\n", recording.name,
                             app::counted(all, "run", "runs"), added, all - added);
    return cuts;
}

} // namespace bothways::cli
