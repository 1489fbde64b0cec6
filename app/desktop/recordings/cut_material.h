// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/cutting.h"
#include "storage/recordings/recordings.h"

#include <memory>
#include <optional>
#include <vector>

namespace bothways::app {

/// How a recording may be cut into runs.
enum class CutWay { times, marks, position, speed };

/// What a person needs to see to cut a recording; read by another thread.
struct CutMaterial {
    std::shared_ptr<const core::Samples> speed; ///< null where none was recorded
    std::vector<core::CutProposal> byTimes, byMarks, byPosition, bySpeed;
    std::vector<core::RecordingGap> gaps;
    std::optional<core::Error> timesFault; ///< why the run sheet's times do not help
    std::shared_ptr<const core::Samples> lat_deg, lon_deg; ///< null where none were recorded
    std::optional<core::Geofence> fence;                   ///< that byPosition is of
    [[nodiscard]] bool hasPositions() const { return lat_deg && lon_deg; }
    /// Gates where the vehicle was at the ends of a part; nothing without positions.
    [[nodiscard]] std::optional<core::Geofence> fenceOf(const core::CutProposal& part) const;
    [[nodiscard]] const std::vector<core::CutProposal>& by(CutWay way) const;
};

/// Reads a recording and finds out where it could be cut.
/// @param fence  the stretch for byPosition; without one it is that between the ends of the first
///               part that was driven at a held speed: there and back again
[[nodiscard]] core::Result<CutMaterial>
readCutMaterial(const storage::StudyFile& file, const storage::RecordingInfo& recording,
                const core::Study& study, const core::ClockOptions& clock,
                const std::optional<core::Geofence>& fence = {});

} // namespace bothways::app
