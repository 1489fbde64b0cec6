// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/property_names.h"

#include "core/study/limits.h"

#include <iterator>

namespace bothways::core {

namespace {

constexpr std::string_view kOwn[] = {
    "name",       "date",  "baseline",      "margin",     "confidence",  "max_gap",
    "aero_share", "fuel",  "bearing_deg",   "cold_start", "claim",       "noise",
    "noise.from", "notes", "plan.sequence", "plan.pairs", "plan.margin", "plan.confidence",
    "walk_round"};

} // namespace

std::span<const std::string_view> ownPropertyNames()
{
    return kOwn;
}

std::vector<std::string_view> propertyNames()
{
    std::vector<std::string_view> names(std::begin(kOwn), std::end(kOwn));
    for (const LimitInfo& limit : allLimits())
        names.push_back(limit.name);
    return names;
}

} // namespace bothways::core
