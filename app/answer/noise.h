// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/effect/answer.h"
#include "core/planning/plan.h"

#include <string>
#include <string_view>
#include <vector>

/// The noise of a pair, as other studies found it.
namespace bothways::app {

struct NoiseOfStudy {
    std::string name;
    core::Noise noise;
};

/// An Error (badInput) where it has no verdict, for then its noise is not known.
/// @param file        of the study, for the Error
/// @param mayBeTyped  whether there is a place to type the noise instead, as with --noise
[[nodiscard]] core::Result<NoiseOfStudy> noiseOf(std::string name, const core::Analysis& analysis,
                                                 std::string_view file, bool mayBeTyped = false);
/// One noise from all of them; of none it is zeros.
[[nodiscard]] core::Noise pooledNoiseOf(const std::vector<NoiseOfStudy>& noises);

} // namespace bothways::app
