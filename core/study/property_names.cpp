// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/property_names.h"

#include "core/study/limits.h"

namespace bothways::core {

std::vector<std::string_view> propertyNames()
{
    std::vector<std::string_view> names{
        "name",      "date",          "baseline",   "margin",      "confidence",      "max_gap",
        "fuel",      "aero_share",    "cold_start", "bearing_deg", "claim",           "noise",
        "notes",     "plan.sequence", "plan.pairs", "plan.margin", "plan.confidence", "noise.from",
        "walk_round"};
    for (const LimitInfo& limit : allLimits())
        names.push_back(limit.name);
    return names;
}

} // namespace bothways::core
