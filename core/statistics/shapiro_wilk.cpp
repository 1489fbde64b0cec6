// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/shapiro_wilk.h"

#include <boost/math/special_functions/erf.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <vector>

namespace bothways::core {
namespace {

using Policy = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

double normalQuantile(double p)
{
    return -std::numbers::sqrt2 * boost::math::erfc_inv(2.0 * p, Policy());
}

double normalUpperTail(double z)
{
    return 0.5 * std::erfc(z / std::numbers::sqrt2);
}

// Royston's polynomials, constant term first.
constexpr std::array kLastWeight = {0.0, 0.221157, -0.147981, -2.07119, 4.434685, -2.706056};
constexpr std::array kSecondWeight = {0.0, 0.042981, -0.293762, -1.752461, 5.682633, -3.582633};
constexpr std::array kSmallGamma = {-2.273, 0.459};
constexpr std::array kSmallMean = {0.544, -0.39978, 0.025054, -6.714e-4};
constexpr std::array kSmallLogSd = {1.3822, -0.77857, 0.062767, -0.0020322};
constexpr std::array kLargeMean = {-1.5861, -0.31082, -0.083751, 0.0038915};
constexpr std::array kLargeLogSd = {-0.4803, -0.082676, 0.0030302};

template <std::size_t N>
double polynomial(const std::array<double, N>& coefficients, double x)
{
    double sum = 0.0;
    for (std::size_t i = N; i-- > 0;)
        sum = sum * x + coefficients[i];
    return sum;
}

/// Weights of the largest, second largest, ... value; those of the small values are their
/// negatives. The outer one or two are fitted polynomials, the others scaled normal scores.
std::vector<double> weights(std::size_t n)
{
    std::vector<double> a(n / 2);
    if (n == 3) {
        a[0] = std::numbers::sqrt2 / 2.0;
        return a;
    }
    const double size = static_cast<double>(n);
    double sumOfSquares = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        a[i] = -normalQuantile((static_cast<double>(i) + 0.625) / (size + 0.25));
        sumOfSquares += 2.0 * a[i] * a[i];
    }
    const double norm = std::sqrt(sumOfSquares);
    const double u = 1.0 / std::sqrt(size);
    const std::size_t fitted = n > 5 ? 2 : 1;
    std::array<double, 2> outer{polynomial(kLastWeight, u) + a[0] / norm, 0.0};
    if (fitted == 2)
        outer[1] = polynomial(kSecondWeight, u) + a[1] / norm;
    double restOfScores = sumOfSquares;
    double restOfWeights = 1.0;
    for (std::size_t i = 0; i < fitted; ++i) {
        restOfScores -= 2.0 * a[i] * a[i];
        restOfWeights -= 2.0 * outer[i] * outer[i];
        a[i] = outer[i];
    }
    const double scale = std::sqrt(restOfWeights / restOfScores);
    for (std::size_t i = fitted; i < a.size(); ++i)
        a[i] *= scale;
    return a;
}

double significance(double oneMinusW, std::size_t n)
{
    const double size = static_cast<double>(n);
    if (n == 3) { // exact
        const double w = 1.0 - oneMinusW;
        return std::max(0.0,
                        6.0 / std::numbers::pi * (std::asin(std::sqrt(w)) - std::numbers::pi / 3));
    }
    const double y = std::log(oneMinusW);
    if (n <= 11) {
        const double gamma = polynomial(kSmallGamma, size);
        if (y >= gamma)
            return 1e-99; // beyond the transformation's reach: as good as impossible
        return normalUpperTail((-std::log(gamma - y) - polynomial(kSmallMean, size)) /
                               std::exp(polynomial(kSmallLogSd, size)));
    }
    const double logSize = std::log(size);
    return normalUpperTail((y - polynomial(kLargeMean, logSize)) /
                           std::exp(polynomial(kLargeLogSd, logSize)));
}

} // namespace

std::optional<ShapiroWilk> shapiroWilk(std::span<const double> values)
{
    const std::size_t n = values.size();
    if (n < 3 || n > 5000 ||
        !std::all_of(values.begin(), values.end(), [](double x) { return std::isfinite(x); }))
        return std::nullopt;
    std::vector<double> x(values.begin(), values.end());
    std::sort(x.begin(), x.end());
    const double range = x.back() - x.front();
    if (!(range > 0.0) || !std::isfinite(range))
        return std::nullopt;

    double mean = 0.0;
    const double shift = x.front();
    for (double& value : x) {
        value = (value - shift) / range;
        mean += value / static_cast<double>(n);
    }
    const std::vector<double> a = weights(n);
    double ssa = 0.0, ssx = 0.0, sax = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        const std::size_t mirror = n - 1 - i;
        const double weight = i == mirror ? 0.0 : i < mirror ? -a[i] : a[mirror];
        const double deviation = x[i] - mean;
        ssa += weight * weight;
        ssx += deviation * deviation;
        sax += weight * deviation;
    }
    // 1 - W as a product, so that a W very near 1 keeps its digits.
    const double product = std::sqrt(ssa * ssx);
    const double oneMinusW = std::max((product - sax) * (product + sax) / (ssa * ssx), 1e-300);
    return ShapiroWilk{1.0 - oneMinusW, significance(oneMinusW, n)};
}

} // namespace bothways::core
