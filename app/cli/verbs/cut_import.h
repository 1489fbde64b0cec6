// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "core/recording/cutting.h"
#include "core/recording/runs_by.h"
#include "core/study/study.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"
#include "storage/study/study_file.h"

#include <optional>
#include <sstream>
#include <string>
#include <vector>

/// Cutting a recording at the command line, as the desktop's dialog does with every proposal
/// accepted as it stands.
namespace bothways::cli {

enum class CutWay { times, marks, position, speed };

struct CutOrder {
    CutWay way = CutWay::times;
    std::optional<core::Geofence> gates; ///< for CutWay::position
    std::string configuration;           ///< of parts that are no run of the study; empty: none may
    core::ClockOptions clock = {};
};

/// @param way    "times", "marks", "position", "speed"
/// @param gates  "LAT,LON,LAT,LON[,METRES]"; empty: none
[[nodiscard]] Result<CutOrder> cutOrderFrom(const std::string& way, const std::string& gates,
                                            const std::string& configuration);

/// What does the same while a recording is made. CutWay::times does not.
[[nodiscard]] core::RunsBy runsBy(const CutOrder& order);

/// --cut and --gates of a verb that cuts while it records; cutOrderFrom() reads them.
void addLiveCut(const Language& in, CLI::App& verb, std::string& way, std::string& gates,
                core::Text<0> what);

/// What is said about a cut.
struct CutWords {
    std::ostringstream parts; ///< that were found, also where the cut is refused
    std::string done;         ///< only once it is written
    std::vector<std::string> warnings;
};

/// What the parts of a recording become: runs of the study, or new ones. Nothing is written.
[[nodiscard]] Result<std::vector<storage::Cut>>
cutsOf(const Language& in, const storage::StudyFile& file, const storage::RecordingInfo& recording,
       const core::Study& study, const CutOrder& order, CutWords& words);

/// The newest recording of the study that has this name, or an Error (wrongUse) that has the names.
[[nodiscard]] Result<storage::RecordingInfo>
recordingNamed(const Language& in, const storage::StudyFile& file, const std::string& name);

} // namespace bothways::cli
