// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"

#include <memory>
#include <string_view>

namespace bothways::core {

/// "output_w" from "output_w@left" and "output_w@right": the sum at the times at which all have a
/// sample. Null without a part that has one, or where that is never so.
///
/// Parts that were recorded row by row share their times. Where under half of the first part's
/// samples have one of each other part beside them (loggers of their own), the sum is taken at the
/// first part's samples with the latest of the others, as long as that is no older than a lost
/// sensor, max(1 s, 3 median intervals).
[[nodiscard]] std::shared_ptr<const Samples> sumOfParts(const RunTrace& trace,
                                                        std::string_view base);

} // namespace bothways::core
