// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/any_look.h"

#include <cmath>

namespace bothways::core {
namespace {

/// r = phi/(phi + 1/v)
double priorShare(double v)
{
    return kAnyLookPrecision * v / (kAnyLookPrecision * v + 1.0);
}

} // namespace

std::optional<double> anyLookHalfWidth(double v, double df, double alpha)
{
    if (!(df >= 1.0) || !(v > 0.0) || !std::isfinite(v))
        return std::nullopt;
    const double r = priorShare(v);
    const double k = std::exp(-2.0 / (df + 1.0) * std::log(alpha * std::sqrt(r)));
    if (!(r * k < 1.0))
        return std::nullopt;
    return std::sqrt(df * (k - 1.0) / (1.0 - r * k));
}

double anyLookBayesFactor(double t, double v, double df)
{
    const double r = priorShare(v);
    const double t2 = t * t / df;
    return std::exp(0.5 * std::log(r) + 0.5 * (df + 1.0) * (std::log1p(t2) - std::log1p(r * t2)));
}

} // namespace bothways::core
