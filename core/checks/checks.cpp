// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/checks.h"

#include "core/checks/air_check.h"
#include "core/companions/bracket.h"
#include "core/effect/effect_model.h"
#include "core/effect/headline.h"
#include "core/statistics/brown_forsythe.h"
#include "core/statistics/distributions.h"
#include "core/statistics/durbin_watson.h"
#include "core/statistics/outlier.h"
#include "core/statistics/shapiro_wilk.h"

#include <algorithm>
#include <cmath>

namespace bothways::core {
namespace {

constexpr double kFails = 0.01;
constexpr double kNote = 0.05;

CheckState stateOf(double p)
{
    return p < kFails ? CheckState::fails : p < kNote ? CheckState::note : CheckState::holds;
}

Check checkOf(double statistic, double p)
{
    return {statistic, p, stateOf(p)};
}

Check normalOf(const Headline& headline)
{
    const auto test = shapiroWilk(headline.residuals);
    return test ? checkOf(test->w, test->p) : Check{};
}

OutlierCheck outlierOf(const PreparedStudy& prepared, const Headline& headline, double rounding)
{
    OutlierCheck check;
    const auto largest = largestResidual(headline.residuals, headline.leverage, headline.df,
                                         std::max(rounding, kNoVariation));
    if (!largest)
        return check;
    check.statistic = largest->studentised;
    check.p = largest->p;
    check.state = stateOf(largest->p);
    check.pair = prepared.pairs[largest->place].number;
    return check;
}

OrderCheck orderOf(const Columns& columns, const Headline& headline)
{
    OrderCheck check;
    if (const auto test = durbinWatson(headline.residuals, columns.data())) {
        check.statistic = test->d;
        check.p = test->p;
        check.lag1 = test->lag1;
        check.state = stateOf(test->p);
    }
    return check;
}

/// F of a term in squared time, hours from the day's mean pair time.
Check curveOf(const PreparedStudy& prepared, const std::vector<Observation>& pairs, Columns columns)
{
    if (prepared.design != Design::closed)
        return {};
    const std::size_t curve = columns.count();
    const std::vector<double> times = centredTimes(pairs);
    std::ranges::transform(times, columns.add().begin(), [](double t) { return t * t; });
    const LeastSquaresFit fit = leastSquares(columns, responses(pairs));
    if (fit.df < 2 || !fit.estimable[curve] || !(fit.s() >= kNoVariation))
        return {};
    const double t = fit.coefficients[curve] / (fit.s() * std::sqrt(fit.cov(curve, curve)));
    return checkOf(t * t, fUpper(t * t, 1.0, fit.df));
}

Check spreadOf(const PreparedStudy& prepared, const Headline& headline)
{
    std::vector<double> a, b;
    for (std::size_t i = 0; i < headline.residuals.size(); ++i)
        (prepared.pairs[i].device ? b : a).push_back(headline.residuals[i]);
    const auto test = brownForsythe(a, b);
    return test ? checkOf(test->f, test->p) : Check{};
}

/// A straight drift is in the model, so this one informs and never fails.
BaselineCheck baselineOf(const PreparedStudy& prepared, const AnalysisOptions& options)
{
    BaselineCheck check;
    const auto shift = baselineShiftOf(prepared, options);
    if (!shift)
        return check;
    check.effect_log = shift->effect_log;
    check.low_log = shift->low_log;
    check.high_log = shift->high_log;
    check.df = shift->df;
    check.p = shift->p;
    check.state = shift->p < kNote ? CheckState::note : CheckState::holds;
    return check;
}

/// Slope over pair time of what the out run used more than the return run.
DirectionCheck directionOf(const PreparedStudy& prepared)
{
    DirectionCheck check;
    const std::size_t n = prepared.pairs.size();
    if (n < 3)
        return check;
    std::vector<double> difference(n);
    double meanTime = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        difference[i] = prepared.runs[prepared.pairRuns[2 * i]].y -
                        prepared.runs[prepared.pairRuns[2 * i + 1]].y;
        meanTime += prepared.pairs[i].time_h / static_cast<double>(n);
    }
    Columns columns(n);
    std::ranges::fill(columns.add(), 1.0);
    const auto time = columns.add();
    for (std::size_t i = 0; i < n; ++i)
        time[i] = prepared.pairs[i].time_h - meanTime;
    const LeastSquaresFit fit = leastSquares(columns, difference);
    if (fit.df < 1 || !fit.estimable[1] || !(fit.s() >= kNoVariation))
        return check;
    check.slope_per_h = fit.coefficients[1];
    check.df = fit.df;
    check.statistic = fit.coefficients[1] / (fit.s() * std::sqrt(fit.cov(1, 1)));
    check.p = tTwoSided(*check.statistic, fit.df);
    check.state = stateOf(*check.p);
    return check;
}

/// Is the display too coarse for this noise? Typed readings of the paired runs, in their own unit.
ResolutionCheck resolutionOf(const Study& study, const PreparedStudy& prepared,
                             const Headline& headline)
{
    ResolutionCheck check;
    std::optional<ConsumptionUnit> unit;
    int decimals = 0, n = 0;
    double sum = 0.0;
    for (const std::size_t k : prepared.pairRuns) {
        const auto& given = study.runs[prepared.runs[k].index].consumption;
        if (!given || given->from_trace)
            continue;
        if (unit && *unit != given->unit)
            return check; // no one display
        unit = given->unit;
        decimals = std::max(decimals, given->decimals);
        sum += given->value;
        ++n;
    }
    if (n == 0)
        return check;
    const double step_pct = 100.0 * std::pow(10.0, -decimals) / (sum / n);
    check.step_pct = step_pct;
    check.rounding_pct = step_pct / std::sqrt(24.0);
    check.state = 100.0 * headline.s < *check.rounding_pct ? CheckState::note : CheckState::holds;
    return check;
}

} // namespace

Checks checksOf(const Study& study, const PreparedStudy& prepared, const Headline& headline,
                const AnalysisOptions& options)
{
    const std::vector<Observation> pairs = pairObservations(prepared);
    const Columns columns = effectColumns(pairs, prepared.day_closed);
    Checks checks;
    checks.normal = normalOf(headline);
    checks.order = orderOf(columns, headline);
    checks.curve = curveOf(prepared, pairs, columns);
    checks.spread = spreadOf(prepared, headline);
    checks.baseline = baselineOf(prepared, options);
    checks.direction = directionOf(prepared);
    checks.resolution = resolutionOf(study, prepared, headline);
    checks.outlier =
        outlierOf(prepared, headline, checks.resolution.rounding_pct.value_or(0.0) / 100.0);
    checks.air = airCheckOf(study, prepared, headline);
    return checks;
}

} // namespace bothways::core
