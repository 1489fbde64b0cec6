// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/analysis.h"
#include "core/prepared_study.h"

/// Other honest ways to the same number. (Method, section 5.)
namespace bothways::core {

/// @param prepared  has a headline: two pairs of either configuration, a design, some variation
/// @return  each companion that these runs allow; total, nothing throws
[[nodiscard]] Companions companionsOf(const PreparedStudy& prepared, const Headline& headline,
                                      const AnalysisOptions& options);

} // namespace bothways::core
