// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/cut_material.h"

#include "core/recording/unreadable_recording.h"

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

std::optional<core::Geofence> CutMaterial::fenceOf(const core::CutProposal& part) const
{
    const auto startLat = valueAt(lat_deg.get(), part.from_s);
    const auto startLon = valueAt(lon_deg.get(), part.from_s);
    const auto endLat = valueAt(lat_deg.get(), part.to_s);
    const auto endLon = valueAt(lon_deg.get(), part.to_s);
    if (!startLat || !startLon || !endLat || !endLon)
        return std::nullopt;
    core::Geofence found;
    found.start_lat_deg = *startLat;
    found.start_lon_deg = *startLon;
    found.end_lat_deg = *endLat;
    found.end_lon_deg = *endLon;
    return found;
}

namespace {

/// All but the run sheet's times. Throws where the recording cannot be read.
CutMaterial waysToCut(const core::RunTrace& trace, const core::Study& study,
                      const std::optional<core::Geofence>& fence)
{
    CutMaterial material;
    material.speed = trace.samples("road_speed_kmh");
    material.gaps = core::gapsIn(trace);
    material.byMarks = core::cutByMarks(trace, study);
    material.bySpeed = core::cutByTarget(trace, study).parts;
    material.lat_deg = trace.samples("lat_deg");
    material.lon_deg = trace.samples("lon_deg");
    material.fence = fence;
    if (!fence && !material.bySpeed.empty())
        material.fence = material.fenceOf(material.bySpeed.front());
    if (material.fence)
        material.byPosition = core::cutByPosition(trace, *material.fence);
    return material;
}

} // namespace

core::Result<CutMaterial> readCutMaterial(const storage::StudyFile& file,
                                          const storage::RecordingInfo& recording,
                                          const core::Study& study, const core::ClockOptions& clock,
                                          const std::optional<core::Geofence>& fence)
{
    const auto opened = storage::openRecording(file, recording.id);
    if (!opened)
        return opened.error();
    auto found = core::readingRecordings([&] { return waysToCut(*opened.value(), study, fence); });
    if (!found)
        return found;
    CutMaterial material = std::move(found).take();
    auto times = core::cutByTimes(recording.span(), study, clock);
    if (times)
        material.byTimes = std::move(times).take();
    else
        material.timesFault = times.error();
    return material;
}

} // namespace bothways::app
