// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/ledger.h"

#include "app/wording/numbers.h"
#include "core/study/units.h"

namespace bothways::app::wording {

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
