// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/effect/prepared_study.h"

/// Checks of what the headline assumes. (Method, sections 7 and 10.)
namespace bothways::core {

/// @param study     for what the coded runs leave out: units as given, air, wind
/// @param prepared  of this study; CodedRun::index leads back to its runs
/// @return  a check each, `not_computed` where these runs do not allow it; total, nothing throws
[[nodiscard]] Checks checksOf(const Study& study, const PreparedStudy& prepared,
                              const Headline& headline, const AnalysisOptions& options);

} // namespace bothways::core
