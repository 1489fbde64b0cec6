// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "core/cutting.h"
#include "core/study.h"
#include "storage/study_file.h"

#include <iosfwd>
#include <optional>
#include <string>

/// Cutting a recording that was just imported, as the desktop's dialog does with every proposal
/// accepted as it stands.
namespace bothways::cli {

enum class CutWay { times, marks, position, speed };

struct CutOrder {
    CutWay way = CutWay::times;
    std::optional<core::Geofence> gates; ///< for CutWay::position
    std::string configuration;           ///< of parts that are no run of the study; empty: none may
};

/// @param way    "times", "marks", "position", "speed"
/// @param gates  "LAT,LON,LAT,LON[,METRES]"; empty: none
[[nodiscard]] Result<CutOrder> cutOrderFrom(const std::string& way, const std::string& gates,
                                            const std::string& configuration);

/// Prints the parts that were found and makes runs of them, in one step of undo. An Error leaves
/// the recording as it was.
[[nodiscard]] Outcome cutImported(storage::StudyFile& file, core::RecordingId recording,
                                  const CutOrder& order, std::ostream& out);

} // namespace bothways::cli
