// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/ledger.h"

#include "app/wording/numbers.h"
#include "core/study/units.h"

namespace bothways::app::wording {

std::string reliefName(const Language& in, core::Fuel fuel)
{
    return in.say(fuel == core::Fuel::electric ? "relief of the 12 V supply"_t
                                               : "relief of the alternator"_t);
}

std::string dragName(const Language& in)
{
    return in.say("cost of the drag"_t);
}

std::vector<LedgerRow> ledgerRows(const Language& in, const core::Ledger& ledger)
{
    std::vector<LedgerRow> rows;
    if (ledger.options.relief)
        rows.push_back({reliefName(in, ledger.options.fuel), ledger.relief_l_per_100km, 3});
    if (ledger.options.cost)
        rows.push_back({dragName(in), ledger.cost_l_per_100km, 3});
    rows.push_back({in.say("net"_t), ledger.net_l_per_100km, 3});
    rows.push_back({in.say("net, per cent"_t), ledger.net_pct, 2});
    return rows;
}

std::string ledgerUnit(const Language& in, core::Fuel fuel)
{
    return in.say(fuel == core::Fuel::electric ? "kWh/100 km"_t : "L/100 km"_t);
}

std::string ledgerExplained(const Language& in, core::Fuel fuel)
{
    return in.say(fuel == core::Fuel::electric
                      ? "Positive: more energy. Low and high are the smallest and largest over all "
                        "corners of the efficiencies, which are factors in use, not measurements "
                        "of this vehicle."_t
                      : "Positive: more fuel. Low and high are the smallest and largest over all "
                        "corners of the efficiencies, which are factors in use, not measurements "
                        "of this vehicle."_t);
}

std::string measuredBesideLedger(const Language& in, const core::Analysis& analysis,
                                 const core::Ledger& ledger)
{
    if (!analysis.headline)
        return {};
    const core::Headline& headline = *analysis.headline;
    const double low = core::pctFromLog(headline.low_log);
    const double high = core::pctFromLog(headline.high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    return in.say("Measured by the study's runs, beside it: {} ({} interval: {}); expected for the "
                  "device alone: {}."_t,
                  change(in, core::pctFromLog(headline.effect_log), decimals),
                  intervalPercent(in, headline.confidence), changeRange(in, low, high, decimals),
                  changeRange(in, ledger.net_pct.low, ledger.net_pct.high, decimals));
}

} // namespace bothways::app::wording
