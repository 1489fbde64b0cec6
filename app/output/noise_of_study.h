// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/planning/plan.h"

#include <string>

namespace bothways::app {

/// The noise of a pair and the study that it was found in.
struct NoiseOfStudy {
    std::string name;
    core::Noise noise;
};

} // namespace bothways::app
