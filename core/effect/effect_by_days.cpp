// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/effect_by_days.h"

#include "core/effect/headline.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace bothways::core {
namespace {

/// As LeastSquaresOptions::tolerance.
constexpr double kTolerance = 1e-9;

double dot(const std::vector<double>& a, const std::vector<double>& b)
{
    return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}

void centre(std::vector<double>& values)
{
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) /
                        static_cast<double>(std::max<std::size_t>(values.size(), 1));
    for (double& value : values)
        value -= mean;
}

/// Takes `direction` out of `values`, twice: once leaves what rounding brought back in.
void orthogonalise(std::vector<double>& values, const std::vector<double>& direction, double square)
{
    for (int pass = 0; pass < 2; ++pass) {
        const double share = dot(values, direction) / square;
        for (std::size_t i = 0; i < values.size(); ++i)
            values[i] -= share * direction[i];
    }
}

} // namespace

EffectByDays::EffectByDays(const std::vector<Day>& days, bool sloped) : m_sloped(sloped)
{
    m_days.reserve(days.size());
    for (const Day& day : days)
        m_days.push_back(freed(day));
}

EffectByDays::Freed EffectByDays::freed(const Day& day) const
{
    Freed result;
    std::vector<double> t;
    for (const Observation& pair : day.pairs) {
        result.x.push_back(pair.device ? 1.0 : 0.0);
        result.y.push_back(pair.y);
        result.device += pair.device ? 1 : 0;
        t.push_back(pair.t_h);
    }
    result.terms = day.pairs.empty() ? 0 : 1;
    centre(result.x);
    centre(result.y);
    centre(result.y); // the mean is large beside the noise
    if (m_sloped && !day.pairs.empty()) {
        centre(t);
        const double before = std::sqrt(dot(t, t));
        centre(t);
        const double square = dot(t, t);
        if (std::sqrt(square) > kTolerance * before) {
            ++result.terms;
            orthogonalise(result.x, t, square);
            orthogonalise(result.y, t, square);
        }
    }
    result.xx = dot(result.x, result.x);
    result.xy = dot(result.x, result.y);
    return result;
}

std::optional<EffectEstimate> EffectByDays::estimate() const
{
    return estimate(m_days.size(), nullptr);
}

std::optional<EffectEstimate> EffectByDays::estimateWith(std::size_t day, const Day& instead) const
{
    const Freed changed = freed(instead);
    return estimate(day, &changed);
}

std::optional<EffectEstimate> EffectByDays::estimate(std::size_t replaced,
                                                     const Freed* instead) const
{
    const auto day = [&](std::size_t d) -> const Freed& {
        return d == replaced ? *instead : m_days[d];
    };
    int n = 0, device = 0, terms = 1;
    double xx = 0.0, xy = 0.0;
    for (std::size_t d = 0; d < m_days.size(); ++d) {
        n += static_cast<int>(day(d).x.size());
        device += day(d).device;
        terms += day(d).terms;
        xx += day(d).xx;
        xy += day(d).xy;
    }
    const bool confounded = !(xx > kTolerance * kTolerance * device);
    EffectEstimate result;
    result.df = n - terms + (confounded ? 1 : 0);
    if (device < kFewestPairs || n - device < kFewestPairs || result.df < kLeastDf || confounded)
        return std::nullopt;
    result.effect_log = xy / xx;
    double rss = 0.0;
    for (std::size_t d = 0; d < m_days.size(); ++d)
        for (std::size_t i = 0; i < day(d).x.size(); ++i) {
            const double residual = day(d).y[i] - result.effect_log * day(d).x[i];
            rss += residual * residual;
        }
    const double s = std::sqrt(rss / result.df);
    if (!(s >= kNoVariation))
        return std::nullopt;
    result.se_log = s / std::sqrt(xx);
    return result;
}

} // namespace bothways::core
