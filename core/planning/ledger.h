// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/study/study.h"

#include <optional>

/// Energy ledger: the effect to expect from first principles, beside the measured one. (Method,
/// section 11.)
namespace bothways::core {

struct Range {
    double low = 0.0, middle = 0.0, high = 0.0;
    friend bool operator==(const Range&, const Range&) = default;
};

/// For electric drive a "litre" is a kilowatt-hour, here and in the ledger.
struct LedgerOptions {
    double output_w = 600.0;
    double speed_kmh = 100.0;
    double consumption_l_per_100km = 8.0;
    Fuel fuel = Fuel::petrol;
    Range alternator{0.50, 0.60, 0.70}; ///< electric: of the converter to the 12 V supply
    Range marginal{0.33, 0.37, 0.43};
    Range generator{0.60, 0.70, 0.80};
    Range drive{0.90, 0.93, 0.96};
    double induction = 1.0 / 3.0;
    double heating_value_mj_per_l = 32.2;
    bool relief = true, cost = true; ///< an accessory has one term alone
    /// The published or customary factors of a fuel; efficiencies of method, section 11.
    [[nodiscard]] static LedgerOptions forFuel(Fuel fuel);
};

struct Ledger {
    LedgerOptions options;
    Range relief_l_per_100km, cost_l_per_100km, net_l_per_100km, net_pct;
};

/// @return  an Error (wrongUse) that names the factor out of (0, 1], or a number that is not
/// positive
[[nodiscard]] Result<Ledger> makeLedger(const LedgerOptions& options);

/// Output at which |middle net| equals `effect_pct` of consumption; empty when a watt is worth
/// nothing.
[[nodiscard]] std::optional<double> wattsToSee(const LedgerOptions& options, double effect_pct);

} // namespace bothways::core
