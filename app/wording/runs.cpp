// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/sentences.h"

#include "app/wording/numbers.h"
#include "core/study/units.h"

#include <fmt/format.h>

#include <algorithm>

// Sentences about single runs, and about what was measured beside what was expected.
namespace bothways::app::english {

std::string oddRunSentence(const core::OddRun& odd, const core::Study& study)
{
    if (odd.what == core::OddRun::What::stillDriving)
        return fmt::format("run {} starts while run {} was still being driven; one vehicle drives "
                           "one run at a time: are start and duration right?",
                           odd.run, odd.other);
    const bool electric =
        std::any_of(study.runs.begin(), study.runs.end(), [](const core::Run& run) {
            return run.consumption && run.consumption->unit == core::ConsumptionUnit::kwhPer100km;
        });
    const ShownUnit unit = shownUnitOf(study);
    const auto shown = [&](double l_per_100km) {
        return significant(shownConsumption(l_per_100km, unit, electric), 3);
    };
    return fmt::format("run {} took {} times the {} that is usual in this study ({} against {} "
                       "{}): is the unit right, or was a decimal sign lost?",
                       odd.run, significant(odd.times), electric ? "energy" : "fuel",
                       shown(odd.l_per_100km), shown(odd.usual_l_per_100km),
                       unitText(unit, electric));
}

std::string measuredBesideLedger(const core::Analysis& analysis, const core::Ledger& ledger)
{
    if (!analysis.headline)
        return {};
    const core::Headline& headline = *analysis.headline;
    const double low = core::pctFromLog(headline.low_log);
    const double high = core::pctFromLog(headline.high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    return fmt::format("Measured by the study's runs, beside it: {} ({} interval: {}); expected "
                       "for the device alone: {}.",
                       change(core::pctFromLog(headline.effect_log), decimals),
                       percentText(headline.confidence), changeRange(low, high, decimals),
                       changeRange(ledger.net_pct.low, ledger.net_pct.high, decimals));
}

} // namespace bothways::app::english
