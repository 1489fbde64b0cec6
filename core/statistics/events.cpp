// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/events.h"

namespace bothways::core {

std::vector<Stretch> joined(std::span<const double> time_s, std::vector<Stretch> found)
{
    std::vector<Stretch> events;
    for (const Stretch& stretch : found) {
        const bool near = !events.empty() && time_s[stretch.first] - time_s[events.back().last] <
                                                 kApart_s - kTimeGrace_s;
        if (near)
            events.back().last = stretch.last;
        else
            events.push_back(stretch);
    }
    return events;
}

} // namespace bothways::core
