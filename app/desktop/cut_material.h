// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cutting.h"
#include "storage/traces.h"

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
    std::optional<core::Error> timesFault; ///< why the run sheet's times do not help
    [[nodiscard]] const std::vector<core::CutProposal>& by(CutWay way) const;
};

/// Reads a recording and finds out where it could be cut. The stretch for byPosition is the one
/// between the ends of the first part that was driven at a held speed: there and back again.
[[nodiscard]] core::Result<CutMaterial> readCutMaterial(const storage::StudyFile& file,
                                                        const storage::RecordingInfo& recording,
                                                        const core::Study& study,
                                                        const core::ClockOptions& clock);

/// The run of the study that a part of a recording is in time: the one whose proposal starts
/// nearest, within half the part's length. Nothing where there is none.
[[nodiscard]] std::optional<int> runInTime(const core::CutProposal& part,
                                           const std::vector<core::CutProposal>& byTimes);

} // namespace bothways::app
