// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/screening/finding.h"
#include "core/screening/odd_runs.h"
#include "core/study/study.h"

#include <map>
#include <string>
#include <vector>

namespace bothways::app {

/// The one answer: what both programs, the report and the JSON show, with the study that it is the
/// answer to. Made by answer(), then shared and never changed.
struct ResultSet {
    core::Study study; ///< with the consumption that recordings gave
    core::Analysis analysis;
    core::Screening screening;
    /// What the recordings say was used, by the run's number; runs without one are left out. Empty
    /// unless it was asked for.
    std::map<int, core::Consumption> recorded;
    std::vector<int> spoiled;      ///< core::spoiledButCounted(), for what was overruled then
    std::vector<core::OddRun> odd; ///< what a person should look at again
    std::string sha256;            ///< Material::sha256, of what this answers
};

} // namespace bothways::app
