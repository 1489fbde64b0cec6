// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/air_check.h"

#include "core/checks/air.h"
#include "core/study/limits.h"

#include <cmath>
#include <numbers>

namespace bothways::core {
namespace {

struct Mean {
    double sum = 0.0;
    int n = 0;
    void add(double value)
    {
        sum += value;
        ++n;
    }
    [[nodiscard]] double value() const { return sum / n; }
};

std::optional<Air> airOf(const Run& run)
{
    if (!run.temperature_c || !run.pressure_hpa || !run.humidity_pct)
        return std::nullopt;
    return Air{*run.temperature_c, *run.pressure_hpa, *run.humidity_pct};
}

/// m/s
std::optional<double> speedOf(const Run& run, const StudyProperties& properties)
{
    if (run.speed_kmh)
        return *run.speed_kmh / 3.6;
    if (run.distance_km && run.duration_s)
        return 1000.0 * *run.distance_km / *run.duration_s;
    if (const auto target = limitOf(properties.limits, "road_speed.target_kmh"))
        return *target / 3.6;
    return std::nullopt;
}

/// The means that the two figures need, for either configuration: [false] A, [true] B.
struct AirMeans {
    Mean density[2], windSquared[2], speed;
    bool outside = false;
};

AirMeans meansOf(const Study& study, const PreparedStudy& prepared)
{
    AirMeans means;
    const auto bearing = study.properties.stretch_bearing_deg;
    for (const std::size_t k : prepared.pairRuns) {
        const CodedRun& coded = prepared.runs[k];
        const Run& run = study.runs[coded.index];
        if (const auto air = airOf(run)) {
            means.density[coded.device].add(airDensity_kg_m3(*air));
            means.outside = means.outside || !airFormulaHolds(*air);
        }
        const auto speed = speedOf(run, study.properties);
        if (bearing && run.wind_ms && run.wind_from_deg && speed) {
            const double along =
                *run.wind_ms * std::cos((*run.wind_from_deg - *bearing) * std::numbers::pi / 180.0);
            means.windSquared[coded.device].add(along * along);
            means.speed.add(*speed);
        }
    }
    return means;
}

} // namespace

AirCheck airCheckOf(const Study& study, const PreparedStudy& prepared, const Headline& headline)
{
    AirCheck check;
    if (prepared.control)
        return check;
    const AirMeans means = meansOf(study, prepared);
    const double share_pct = 100.0 * study.properties.aero_share;
    const auto known = [](const Mean* means2) { return means2[0].n > 0 && means2[1].n > 0; };
    double larger = 0.0;
    const auto keep = [&](std::optional<double>& figure, double value) {
        if (!std::isfinite(value))
            return;
        figure = value;
        larger = std::max(larger, std::abs(value));
    };
    if (known(means.density)) {
        const double a = means.density[0].value();
        keep(check.density_pct, share_pct * (means.density[1].value() - a) / a);
        check.outside_range = means.outside;
    }
    if (known(means.windSquared)) {
        const double v = means.speed.value();
        keep(check.wind_pct,
             share_pct * (means.windSquared[1].value() - means.windSquared[0].value()) / (v * v));
    }
    if (!check.density_pct && !check.wind_pct)
        return check;
    const double allowed = (pctFromLog(headline.high_log) - pctFromLog(headline.low_log)) / 4.0;
    check.state = larger > allowed ? CheckState::fails : CheckState::holds;
    return check;
}

} // namespace bothways::core
