// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/effect_model.h"

namespace bothways::core {
namespace {

struct DayMean {
    double t_h = 0.0;
    int n = 0;
    std::size_t first = 0, last = 0; ///< of its observations
};

std::vector<DayMean> dayMeans(std::span<const Observation> observations)
{
    std::vector<DayMean> days;
    for (std::size_t i = 0; i < observations.size(); ++i) {
        const auto at = static_cast<std::size_t>(observations[i].day);
        if (days.size() <= at)
            days.resize(at + 1);
        DayMean& day = days[at];
        day.t_h += observations[i].t_h;
        if (day.n++ == 0)
            day.first = i;
        day.last = i;
    }
    for (DayMean& day : days)
        if (day.n > 0)
            day.t_h /= day.n;
    return days;
}

void addDays(Columns& columns, std::span<const Observation> observations, bool sloped)
{
    const std::vector<DayMean> days = dayMeans(observations);
    for (std::size_t day = 0; day < days.size(); ++day) {
        if (days[day].n == 0)
            continue;
        const DayMean& of = days[day];
        const auto fill = [&](auto value) {
            const auto column = columns.add(of.first, of.last + 1 - of.first);
            for (std::size_t i = of.first; i <= of.last; ++i)
                if (static_cast<std::size_t>(observations[i].day) == day)
                    column[i - of.first] = value(observations[i]);
        };
        fill([](const Observation&) { return 1.0; });
        if (sloped)
            fill([&](const Observation& o) { return o.t_h - of.t_h; });
    }
}

} // namespace

std::vector<Observation> pairObservations(const PreparedStudy& prepared)
{
    std::vector<Observation> observations;
    observations.reserve(prepared.pairs.size());
    for (const Pair& pair : prepared.pairs)
        observations.push_back({pair.time_h, pair.day, pair.device, pair.log});
    return observations;
}

std::vector<Observation> runObservations(const PreparedStudy& prepared)
{
    std::vector<Observation> observations;
    observations.reserve(prepared.runs.size());
    for (const std::size_t k : prepared.runsOfDaysWithPairs()) {
        const CodedRun& run = prepared.runs[k];
        observations.push_back({run.t_h, run.day, run.device, run.y});
    }
    return observations;
}

std::vector<double> centredTimes(std::span<const Observation> observations)
{
    const std::vector<DayMean> days = dayMeans(observations);
    std::vector<double> times;
    times.reserve(observations.size());
    for (const Observation& o : observations)
        times.push_back(o.t_h - days[static_cast<std::size_t>(o.day)].t_h);
    return times;
}

std::vector<double> responses(std::span<const Observation> observations)
{
    std::vector<double> y;
    y.reserve(observations.size());
    for (const Observation& o : observations)
        y.push_back(o.y);
    return y;
}

Columns effectColumns(std::span<const Observation> observations, bool sloped)
{
    Columns columns(observations.size());
    const auto x = columns.add();
    for (std::size_t i = 0; i < observations.size(); ++i)
        x[i] = observations[i].device ? 1.0 : 0.0;
    addDays(columns, observations, sloped);
    return columns;
}

Columns dayColumns(std::span<const Observation> observations, bool sloped)
{
    Columns columns(observations.size());
    addDays(columns, observations, sloped);
    return columns;
}

} // namespace bothways::core
