// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/recording/cutting.h"
#include "storage/live/live_recorder.h"
#include "storage/loggers/trace_report.h"

#include <string>
#include <vector>

/// What a recording is, what its import met, and why it cannot be cut.
namespace bothways::app::wording {

/// "CSV: 7 columns parted by semicolons, decimal commas.": what a recording looks like.
[[nodiscard]] std::string recordingForm(const Language& in, const storage::TracePreview& preview);

/// "imported run_01.csv: 1,355 rows, 226 s, channels road_speed_kmh, output_w".
[[nodiscard]] std::string imported(const Language& in, const std::string& recording,
                                   const storage::TraceReport& report);
/// What was odd in it, a phrase each: "3 empty cells".
[[nodiscard]] std::vector<std::string> whatWasMet(const Language& in,
                                                  const storage::TraceReport& report);
/// What else was odd, or done to take it in: for a reader with room for more lines.
[[nodiscard]] std::vector<std::string> whatElseWasMet(const Language& in,
                                                      const storage::TraceReport& report);

/// How a recording was made live, and what was lost: "recorded live with the rig car: 3 reconnects,
/// 12 bytes lost".
/// @param rig  its name
[[nodiscard]] std::string recordedLive(const Language& in, const std::string& rig,
                                       const storage::LiveRecord& record);

/// "at this pace the disk is full in 12 min": while it is made.
[[nodiscard]] std::string diskFullIn(const Language& in, double minutes);

/// The same of every recording of a study that was made live, its name in front.
[[nodiscard]] core::Result<std::vector<std::string>>
liveRecordings(const Language& in, const storage::StudyFile& study);

/// "the recording has a gap of 40 s in run 3, ..." @param whose  "run 3", "a new run"
[[nodiscard]] core::Message gapOfPart(const Language& in, const core::Message& whose,
                                      const core::CutProposal& part, const core::RecordingGap& gap);

/// Why a recording cannot be cut into runs.
enum class NoCut { noMarks, noPositions, gatesNotPassed, noSpeed, noSpeedHeld };
[[nodiscard]] core::Message whyNoCut(NoCut why);

} // namespace bothways::app::wording
