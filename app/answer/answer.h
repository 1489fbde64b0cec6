// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/result_set.h"
#include "core/base/result.h"
#include "core/recording/trace.h"
#include "storage/study/study_file.h"

#include <functional>
#include <memory>
#include <stop_token>
#include <string>
#include <vector>

namespace bothways::app {

/// What an answer is made from: a study or a run sheet, with its recordings.
struct Material {
    core::Study study;
    core::TraceProvider traces; ///< may be empty
    std::vector<storage::Overruled> overruled;
    std::vector<core::Note> notes;    ///< what was found out while reading
    std::vector<int> looked_at_pairs; ///< pairsLookedAt(): so that looks count in the verdict
    core::PlanRecord plan_record;     ///< planRecordOf(): so that a late plan is said
    /// Of a sheet's bytes; of what a study says, before recordings and options of one call add to
    /// it. answer() makes the latter where this is empty.
    std::string sha256;
    bool filled = false; ///< takeRecordedConsumption() has been here
};

/// A study's, without its recordings.
[[nodiscard]] Material materialOf(core::Study study, std::vector<storage::Overruled> overruled,
                                  const std::vector<storage::HistoryEntry>& history);

/// Runs whose driver noted no consumption take it from their recordings, and a note says so. Does
/// nothing the second time. An Error where a recording cannot be read.
[[nodiscard]] core::Outcome takeRecordedConsumption(Material& material);

struct AnswerOptions {
    core::AnalysisOptions analysis;
    bool apply_screening = false; ///< leave out what a finding spoils, and say so in a note
    bool recorded = false; ///< also what recordings say of runs that have a typed consumption
    std::function<void(double)> progress = {}; ///< of screening, 0 to 1; may be empty
    std::stop_token stop = {};
};

/// The answer, whoever asks: recordings read, runs screened, effect and verdict.
/// @return  an Error where a recording cannot be read, or (stopped) where it was asked to stop
[[nodiscard]] core::Result<std::shared_ptr<const ResultSet>> answer(Material material,
                                                                    const AnswerOptions& options);

} // namespace bothways::app
