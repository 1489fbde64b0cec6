// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/screening/finding.h"

#include <vector>

namespace bothways::core {

/// Numbers of the runs, ascending, that count in the analysis although a finding says that they are
/// spoiled. The verdict stands on them until they are discarded or the finding is overruled.
/// @param screening  without the findings that were overruled
[[nodiscard]] std::vector<int> spoiledButCounted(const Analysis& analysis,
                                                 const Screening& screening);

} // namespace bothways::core
