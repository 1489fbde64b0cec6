// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "core/study/study.h"

#include <string>

/// What is said beside a result that stands: nothing here refuses anything.
namespace bothways::cli {

/// "warning: ..." on standard error.
void warn(const std::string& sentence, const Surroundings& io);

/// What is amiss since runs came in: some look odd beside the others, or the baseline that the
/// study was told is none of its configurations.
/// @param before  the study without them
void warnOfNewRuns(const core::Study& before, const core::Study& now, Surroundings& io);

} // namespace bothways::cli
