// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/properties.h"
#include "core/study/study.h"

#include <string>
#include <vector>

/// What the history says of a change: the words of its details.
namespace bothways::storage {

/// "run 9", "runs 3, 4".
[[nodiscard]] std::string numbersOf(const std::vector<core::Run*>& runs);
/// "run 9: off out 2026-03-14T09:10:00, 5.42 L/100 km".
[[nodiscard]] std::string factsOf(const core::Run& run);
/// "run 9: duration_s '211' -> '213'": the columns in which they differ.
[[nodiscard]] std::string differences(const core::Run& before, const core::Run& after);
/// "margin='1', fuel='diesel'": the properties that are others now.
[[nodiscard]] std::string differences(const core::StudyProperties& before,
                                      const core::StudyProperties& after);

} // namespace bothways::storage
