// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/study/study.h"

namespace bothways::core {

/// Everything that the method says about a study's runs, sections 2 to 8 and 10.
///
/// Total: every content of `study` gives an answer, if only "no verdict"; nothing throws. Findings
/// are not part of it: see screen() in core/screening/screening.h.
[[nodiscard]] Analysis analyse(const Study& study, const AnalysisOptions& options);

} // namespace bothways::core
