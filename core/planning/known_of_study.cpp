// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/known_of_study.h"

#include "core/statistics/descriptive.h"
#include "core/study/limits.h"

#include <cmath>
#include <vector>

namespace bothways::core {
namespace {

std::optional<double> speedOf(const Run& run)
{
    if (run.speed_kmh)
        return run.speed_kmh;
    if (run.distance_km && run.duration_s && *run.duration_s > 0.0)
        return *run.distance_km / (*run.duration_s / 3600.0);
    return std::nullopt;
}

template <class Field>
std::optional<KnownNumber> medianOfRuns(const Study& study, const Field& field)
{
    std::vector<double> values;
    for (const Run& run : study.runs)
        if (const std::optional<double> value = field(run);
            run.counted() && value && *value > 0.0 && std::isfinite(*value))
            values.push_back(*value);
    if (values.empty())
        return std::nullopt;
    return KnownNumber{median(values), static_cast<int>(values.size())};
}

std::optional<KnownNumber> limitSet(const Study& study, std::string_view name)
{
    const auto limit = limitOf(study.properties.limits, name);
    return limit ? std::optional(KnownNumber{*limit, 0}) : std::nullopt;
}

} // namespace

KnownOfStudy knownOf(const Study& study)
{
    KnownOfStudy known;
    known.output_w = medianOfRuns(study, [](const Run& run) { return run.output_w; });
    known.speed_kmh = limitSet(study, "road_speed.target_kmh");
    if (!known.speed_kmh)
        known.speed_kmh = medianOfRuns(study, speedOf);
    known.stretch_km = limitSet(study, "stretch.km");
    if (!known.stretch_km)
        known.stretch_km = medianOfRuns(study, [](const Run& run) { return run.distance_km; });
    return known;
}

} // namespace bothways::core
