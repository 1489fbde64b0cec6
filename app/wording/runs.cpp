// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/runs.h"

#include "app/wording/numbers.h"
#include "core/study/units.h"

#include <algorithm>

namespace bothways::app::wording {

std::string oddRunSentence(const Language& in, const core::OddRun& odd, const core::Study& study,
                           std::optional<ShownUnit> unit)
{
    if (odd.what == core::OddRun::What::stillDriving)
        return in.say("run {} starts while run {} was still being driven; one vehicle drives one "
                      "run at a time: are start and duration right?"_t,
                      odd.run, odd.other);
    const bool electric =
        std::any_of(study.runs.begin(), study.runs.end(), [](const core::Run& run) {
            return run.consumption && run.consumption->unit == core::ConsumptionUnit::kwhPer100km;
        });
    const ShownUnit reads = unit.value_or(shownUnitOf(study));
    const auto shown = [&](double l_per_100km) {
        return significant(in, shownConsumption(l_per_100km, reads, electric), 3);
    };
    return in.say(electric ? "run {} took {} times the energy that is usual in this study ({} "
                             "against {} {}): is the unit right, or was a decimal sign lost?"_t
                           : "run {} took {} times the fuel that is usual in this study ({} "
                             "against {} {}): is the unit right, or was a decimal sign lost?"_t,
                  odd.run, significant(in, odd.times), shown(odd.l_per_100km),
                  shown(odd.usual_l_per_100km), unitText(in, reads, electric));
}

} // namespace bothways::app::wording
