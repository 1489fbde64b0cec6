// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/effect/answer.h"
#include "core/planning/ledger.h"

#include <string>

namespace bothways::app::wording {

/// What the runs say beside what the ledger expects; empty without a verdict.
[[nodiscard]] std::string measuredBesideLedger(const Language& in, const core::Analysis& analysis,
                                               const core::Ledger& ledger);

} // namespace bothways::app::wording
