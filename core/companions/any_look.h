// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/effect/prepared_study.h"

#include <optional>

namespace bothways::core {

/// An interval that holds however often one has looked: anyLookHalfWidth() of the model with a
/// slope a day, also while the design is open, since the model must not change on the way.
/// (Method, section 5, `any_look`.)
///
/// @return  nothing where the effect cannot be told from those slopes, without noise, or where the
///          pairs are too few to exclude any effect
[[nodiscard]] std::optional<Interval> anyLookOf(const PreparedStudy& prepared,
                                                const AnalysisOptions& options);

} // namespace bothways::core
