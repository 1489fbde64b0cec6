// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/rules.h"
#include "core/statistics/sliding_level.h"

#include <cmath>

namespace bothways::core::rules {

void accessoryChange(RunContext& context)
{
    constexpr double kSeconds = 5.0;
    constexpr double kHalfLevel_s = 2.5;
    const Channel* load = context.channels.find("accessory_w");
    if (!load) {
        accessoryChangeFromSheet(context);
        return;
    }
    if (!context.fastEnough(Rule::accessoryChange, *load, kSeconds))
        return;
    std::optional<double> expected_w = context.limit("accessory_change.declared_w");
    if (!expected_w && context.startIsUnderWay())
        return;
    if (!expected_w)
        expected_w = medianAtStart(*load);
    if (!expected_w) {
        context.notChecked(Rule::accessoryChange, WhyNotChecked::noChannel, load->name);
        return;
    }
    const double watts = context.limitWithDefault("accessory_change.watts");
    const double rounding_w = 1e-9 * (std::abs(*expected_w) + watts);
    const auto time_s = load->time_s();
    const SlidingLevel level(time_s, load->value(), kHalfLevel_s);
    const auto outside =
        level.outside(*expected_w - watts + rounding_w, *expected_w + watts - rounding_w);
    // Of a run under way, a level is known only where its whole window is there.
    const UnderWay* underWay = context.channels.underWay();
    const double from_s =
        underWay && underWay->from_s > 0.0 ? underWay->from_s + kHalfLevel_s : 0.0;
    const double until_s = underWay ? time_s.back() - kHalfLevel_s : time_s.back();
    const auto changed = [&](std::size_t i) {
        return outside[i] != 0 && (!underWay || (time_s[i] >= from_s && time_s[i] <= until_s));
    };
    for (const Stretch& event : joined(time_s, stretches(time_s, kSeconds, changed))) {
        const double more_w = level.largest(event.first, event.last) - *expected_w;
        const double less_w = level.smallest(event.first, event.last) - *expected_w;
        context.found(Rule::accessoryChange, *load, event, more_w > -less_w ? more_w : less_w,
                      watts, "W");
    }
}

} // namespace bothways::core::rules
