// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/screening/context.h"

/// Marks made by hand. One whose first word is a rule's name is a finding of that rule, at its
/// moment, without a value; other marks are notes. Marks before the run's start or after its end
/// lie outside the run and are left alone. (Method, section 9.)
namespace bothways::core::rules {

void marks(RunContext& context);

/// Joins findings of one run and rule that have spans less than 1 s apart: the span covers both,
/// the value is that which lies further beyond its limit, the grade the graver one; sensors,
/// channels and words are those of both. Timed accessories stay apart: each has its own name and
/// watts.
void joinNeighbours(std::vector<Finding>& findings);

} // namespace bothways::core::rules
