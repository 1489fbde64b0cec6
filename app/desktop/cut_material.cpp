// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/cut_material.h"

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

/// Value of the sample nearest to a time.
std::optional<double> valueAt(const core::Samples* samples, double time_s)
{
    if (!samples || samples->size() == 0)
        return std::nullopt;
    const auto after = std::lower_bound(samples->time_s.begin(), samples->time_s.end(), time_s);
    const auto at = std::min<std::ptrdiff_t>(after - samples->time_s.begin(),
                                             static_cast<std::ptrdiff_t>(samples->size()) - 1);
    return samples->value[static_cast<std::size_t>(at)];
}

std::optional<core::Geofence> fenceOf(const core::RunTrace& recording,
                                      const std::vector<core::CutProposal>& bySpeed)
{
    if (bySpeed.empty())
        return std::nullopt;
    const auto lat = recording.samples("lat_deg");
    const auto lon = recording.samples("lon_deg");
    const core::CutProposal& first = bySpeed.front();
    const auto startLat = valueAt(lat.get(), first.from_s), endLat = valueAt(lat.get(), first.to_s);
    const auto startLon = valueAt(lon.get(), first.from_s), endLon = valueAt(lon.get(), first.to_s);
    if (!startLat || !endLat || !startLon || !endLon)
        return std::nullopt;
    core::Geofence fence;
    fence.start_lat_deg = *startLat;
    fence.start_lon_deg = *startLon;
    fence.end_lat_deg = *endLat;
    fence.end_lon_deg = *endLon;
    return fence;
}

} // namespace

const std::vector<core::CutProposal>& CutMaterial::by(CutWay way) const
{
    switch (way) {
    case CutWay::times: return byTimes;
    case CutWay::marks: return byMarks;
    case CutWay::position: return byPosition;
    case CutWay::speed: return bySpeed;
    }
    return byTimes;
}

core::Result<CutMaterial> readCutMaterial(const storage::StudyFile& file,
                                          const storage::RecordingInfo& recording,
                                          const core::Study& study, const core::ClockOptions& clock)
{
    const auto opened = storage::openRecording(file, recording.id);
    if (!opened)
        return opened.error();
    const core::RunTrace& trace = *opened.value();
    CutMaterial material;
    material.speed = trace.samples("road_speed_kmh");
    material.byMarks = core::cutByMarks(trace, study);
    core::CruiseOptions cruise;
    cruise.target_kmh = core::limitOf(study.properties.limits, "road_speed.target_kmh");
    material.bySpeed = core::cutBySpeed(trace, cruise);
    if (material.bySpeed.empty() && cruise.target_kmh) // another speed may have been held
        material.bySpeed = core::cutBySpeed(trace, {});
    if (const auto fence = fenceOf(trace, material.bySpeed))
        material.byPosition = core::cutByPosition(trace, *fence);
    auto times = core::cutByTimes(recording.span(), study, clock);
    if (times)
        material.byTimes = std::move(times).take();
    else
        material.timesFault = times.error();
    return material;
}

std::optional<int> runInTime(const core::CutProposal& part,
                             const std::vector<core::CutProposal>& byTimes)
{
    std::optional<int> run;
    double nearest = 0.5 * (part.to_s - part.from_s);
    for (const core::CutProposal& timed : byTimes)
        if (const double away = std::abs(timed.from_s - part.from_s);
            away <= nearest && timed.run) {
            nearest = away;
            run = timed.run;
        }
    return run;
}

} // namespace bothways::app
