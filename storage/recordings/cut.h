// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/cutting.h"
#include "storage/recordings/recordings.h"
#include "storage/study/study_file.h"

#include <functional>
#include <optional>
#include <vector>

/// Parts of a recording that become runs. (Method 9.)
namespace bothways::storage {

/// A part of a recording that is to be a run's.
struct Cut {
    std::optional<core::RunId> existing; ///< none: `run` is added to the study
    core::Run run;
    double offset_s = 0.0; ///< the run's start in the recording's time
    /// Of an existing run: what its own become; empty: they stay.
    std::optional<core::Instant> start;
    std::optional<double> duration_s;
};
/// A part that is given to a run that is there.
/// @param timed  the run's start and duration become those of the part (the start only where the
///               recording has a clock that can be told against the study's)
[[nodiscard]] Cut cutForRun(core::RunId run, const core::CutProposal& part,
                            const RecordingInfo& recording, const core::Study& study,
                            const core::ClockOptions& clock, bool timed);
/// A part that becomes a new run; configuration and, where the part tells none, direction are the
/// caller's to fill in. Errors are those of core::runFromProposal().
[[nodiscard]] Result<Cut> cutForNewRun(const core::CutProposal& part,
                                       const RecordingInfo& recording, const core::Study& study,
                                       const core::ClockOptions& clock);
/// Makes runs of parts of a recording, or gives the parts to runs that are there: all in one
/// change, or none. Faults of a run are those of addRun() and updateRun(). Where the start of a
/// run moves, its marks and switch-on times keep their moments.
[[nodiscard]] Outcome cutRecording(StudyFile& study, core::RecordingId recording,
                                   const std::vector<Cut>& cuts);

/// Says into which parts a recording is to be cut. It is called once the recording is whole, within
/// the change that brings it in, so it must not begin another: no StudyFile::study(), no
/// recordings().
/// @param recording  without its channels
using CutsOf = std::function<Result<std::vector<Cut>>(const RecordingInfo& recording)>;

} // namespace bothways::storage
