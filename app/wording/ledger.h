// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/effect/answer.h"
#include "core/planning/ledger.h"

#include <string>
#include <vector>

namespace bothways::app::wording {

/// What the device takes off the engine, in the words for that drive.
[[nodiscard]] std::string reliefName(const Language& in, core::Fuel fuel);
/// What it puts on the engine.
[[nodiscard]] std::string dragName(const Language& in);

/// A line of the ledger's table.
struct LedgerRow {
    std::string name;
    core::Range range;
    int decimals = 0;
};
/// Relief, cost and net in ledgerUnit(), and net in per cent. What is switched off has none.
[[nodiscard]] std::vector<LedgerRow> ledgerRows(const Language& in, const core::Ledger& ledger);
[[nodiscard]] std::string ledgerUnit(const Language& in, core::Fuel fuel);
/// Which way its numbers go, and whence low and high are.
[[nodiscard]] std::string ledgerExplained(const Language& in, core::Fuel fuel);

/// What the runs say beside what the ledger expects; empty without a verdict.
[[nodiscard]] std::string measuredBesideLedger(const Language& in, const core::Analysis& analysis,
                                               const core::Ledger& ledger);

} // namespace bothways::app::wording
