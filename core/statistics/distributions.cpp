// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/distributions.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/non_central_t.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace bothways::core {
namespace {

namespace bm = boost::math;
namespace bp = boost::math::policies;

using Plain =
    bp::policy<bp::promote_double<false>, bp::promote_float<false>,
               bp::domain_error<bp::ignore_error>, bp::pole_error<bp::ignore_error>,
               bp::overflow_error<bp::ignore_error>, bp::evaluation_error<bp::ignore_error>,
               bp::rounding_error<bp::ignore_error>>;
using Normal = bm::normal_distribution<double, Plain>;
using StudentT = bm::students_t_distribution<double, Plain>;
using NonCentralT = bm::non_central_t_distribution<double, Plain>;
using FisherF = bm::fisher_f_distribution<double, Plain>;
using ChiSquare = bm::chi_squared_distribution<double, Plain>;

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();

/// Beyond this non-centrality the series is left for the integral.
constexpr double kLargestNcp = 35.0;
/// From here on t is the normal distribution to all the digits of a double.
constexpr double kNormalDf = 1e12;

bool isProbability(double p)
{
    return p >= 0.0 && p <= 1.0;
}

bool isDf(double df)
{
    return df > 0.0;
}

/// P(T <= t) for a large positive ncp: see the header.
double nonCentralTIntegral(double t, double df, double ncp)
{
    if (t <= 0.0)
        return normalCdf(-ncp); // P(T <= 0); below that there is nothing that a double could show
    const auto integrand = [&](double z) {
        const double ratio = (z + ncp) / t;
        const double density =
            std::exp(-0.5 * z * z) * bm::constants::one_div_root_two_pi<double>();
        return density * chiSquareUpper(df * ratio * ratio, df);
    };
    constexpr double kReach = 9.0; // the normal's mass beyond is 2e-19
    constexpr unsigned kDepth = 12;
    return bm::quadrature::gauss_kronrod<double, 31>::integrate(integrand, -kReach, kReach, kDepth,
                                                                1e-13);
}

} // namespace

double normalCdf(double z)
{
    if (std::isnan(z))
        return kNaN;
    if (std::isinf(z))
        return z > 0.0 ? 1.0 : 0.0;
    return bm::cdf(Normal(), z);
}

double normalQuantile(double p)
{
    if (!isProbability(p))
        return kNaN;
    if (p == 0.0 || p == 1.0)
        return p == 0.0 ? -kInfinity : kInfinity;
    return bm::quantile(Normal(), p);
}

double tCdf(double t, double df)
{
    if (std::isnan(t) || !isDf(df))
        return kNaN;
    if (std::isinf(t))
        return t > 0.0 ? 1.0 : 0.0;
    return df > kNormalDf ? normalCdf(t) : bm::cdf(StudentT(df), t);
}

double tQuantile(double p, double df)
{
    if (!isProbability(p) || !isDf(df))
        return kNaN;
    if (p == 0.0 || p == 1.0)
        return p == 0.0 ? -kInfinity : kInfinity;
    return df > kNormalDf ? normalQuantile(p) : bm::quantile(StudentT(df), p);
}

double tTwoSided(double t, double df)
{
    return std::min(1.0, 2.0 * tCdf(-std::abs(t), df));
}

double nonCentralTCdf(double t, double df, double ncp)
{
    if (std::isnan(t) || std::isnan(ncp) || !isDf(df))
        return kNaN;
    if (std::isinf(t))
        return t > 0.0 ? 1.0 : 0.0;
    if (std::isinf(ncp))
        return ncp > 0.0 ? 0.0 : 1.0;
    if (df > kNormalDf)
        return normalCdf(t - ncp);
    if (ncp == 0.0)
        return tCdf(t, df);
    double p = kNaN;
    if (ncp > kLargestNcp)
        p = nonCentralTIntegral(t, df, ncp);
    else if (ncp < -kLargestNcp)
        p = 1.0 - nonCentralTIntegral(-t, df, -ncp);
    else
        p = bm::cdf(NonCentralT(df, ncp), t);
    return std::clamp(p, 0.0, 1.0);
}

double fUpper(double f, double df1, double df2)
{
    if (std::isnan(f) || !isDf(df1) || !isDf(df2))
        return kNaN;
    if (f <= 0.0 || std::isinf(f))
        return f <= 0.0 ? 1.0 : 0.0;
    return bm::cdf(bm::complement(FisherF(df1, df2), f));
}

double fTwoSided(double f, double df1, double df2)
{
    if (std::isnan(f) || !isDf(df1) || !isDf(df2))
        return kNaN;
    // P(F <= f) is the upper tail of 1/F, which has the degrees of freedom the other way round.
    const double below = f > 0.0 ? fUpper(1.0 / f, df2, df1) : 0.0;
    return std::min(1.0, 2.0 * std::min(below, fUpper(f, df1, df2)));
}

double chiSquareUpper(double x, double df)
{
    if (std::isnan(x) || !isDf(df))
        return kNaN;
    if (x <= 0.0 || std::isinf(x))
        return x <= 0.0 ? 1.0 : 0.0;
    return bm::cdf(bm::complement(ChiSquare(df), x));
}

double chiSquareQuantile(double p, double df)
{
    if (!isProbability(p) || !isDf(df))
        return kNaN;
    if (p == 0.0 || p == 1.0)
        return p == 0.0 ? 0.0 : kInfinity;
    return bm::quantile(ChiSquare(df), p);
}

} // namespace bothways::core
