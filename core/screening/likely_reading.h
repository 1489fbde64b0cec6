// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"

#include <optional>

namespace bothways::core {

/// What may have been meant by an odd consumption: the same digits with the decimal sign elsewhere,
/// else in another unit of fuel, if that is within a quarter of what is usual. (Common practice, no
/// source.) Nothing: no such reading fits, or the run has no consumption.
[[nodiscard]] std::optional<Consumption> likelyReading(const Run& run, double usual_l_per_100km);

} // namespace bothways::core
