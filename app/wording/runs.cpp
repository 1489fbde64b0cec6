// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/runs.h"

#include "app/wording/numbers.h"
#include "core/recording/trace_consumption.h"
#include "core/screening/likely_reading.h"
#include "core/study/fuel.h"
#include "core/study/units.h"

#include <algorithm>

namespace bothways::app::wording {

std::string runList(std::vector<int> numbers)
{
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
    std::string text;
    for (std::size_t i = 0; i < numbers.size();) {
        std::size_t last = i;
        while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1)
            ++last;
        text += text.empty() ? "" : ", ";
        if (last < i + 2) // two neighbours are no range
            last = i;
        text += std::to_string(numbers[i]);
        if (last > i)
            text += "\u2013" + std::to_string(numbers[last]);
        i = last + 1;
    }
    return text;
}

std::string runsWords(const Language& in, std::vector<int> numbers)
{
    const auto count = static_cast<long long>(numbers.size());
    return in.sayCount(count, "run {}"_t, "runs {}"_t, runList(std::move(numbers)));
}

std::string oddRunSentence(const Language& in, const core::OddRun& odd, const core::Study& study,
                           std::optional<ShownUnit> unit)
{
    if (odd.what == core::OddRun::What::stillDriving)
        return in.say("run {} starts while run {} was still being driven; one vehicle drives one "
                      "run at a time: are start and duration right?"_t,
                      odd.run, odd.other);
    const bool electric = core::isElectric(study);
    const ShownUnit reads = unit.value_or(shownUnitOf(study));
    const auto shown = [&](double l_per_100km) {
        return significant(in, shownConsumption(l_per_100km, reads, electric), 3);
    };
    const std::string question =
        in.say(electric ? "run {} took {} times the energy that is usual in this study ({} "
                          "against {} {}): is the unit right, or was a decimal sign lost?"_t
                        : "run {} took {} times the fuel that is usual in this study ({} "
                          "against {} {}): is the unit right, or was a decimal sign lost?"_t,
               odd.run, significant(in, odd.times), shown(odd.l_per_100km),
               shown(odd.usual_l_per_100km), unitText(in, reads, electric));
    const auto run = std::find_if(study.runs.begin(), study.runs.end(),
                                  [&](const core::Run& one) { return one.number == odd.run; });
    const auto likely =
        run == study.runs.end() ? std::nullopt : core::likelyReading(*run, odd.usual_l_per_100km);
    if (!likely)
        return question;
    return in.say("{} Did you mean {} {}?##an odd consumption, and the likely one"_t, question,
                  fixed(in, likely->value, core::shownDecimals(*likely)),
                  unitText(in, likely->unit));
}

std::string walkDifference(const Language& in, const core::WalkDifference& one)
{
    return in.say("{}: {} {} now, {} before: more than {} apart"_t, one.words,
                  shortest(in, one.now), one.unit, shortest(in, one.before),
                  shortest(in, one.tolerance));
}

std::string walkRoundMade(const Language& in, const core::WalkRound& round)
{
    return in.say("walk-round before run {}: lines that are not ticked: {}"_t, round.run,
                  core::openLines(round));
}

} // namespace bothways::app::wording
