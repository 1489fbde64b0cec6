// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample_data/make_demo/generator_day.h"

#include <string>
#include <vector>

/// What the van's logger would have recorded on the demo's day, made from the same truth as the
/// sheet. Four samples a second, from 12 s before the run to 2 s after it. The logger ran in some
/// of the runs only.
namespace bothways::demo {

struct TraceFile {
    std::string name; ///< as in the sheet's column "trace"
    std::string text;
};

/// A file for each run that was recorded, in order of runs. The same on every machine.
[[nodiscard]] std::vector<TraceFile> generatorTraces(const std::vector<DayRun>& day);

} // namespace bothways::demo
