// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/any_look.h"

#include "core/statistics/distributions.h"

#include <boost/math/distributions/non_central_t.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <gtest/gtest.h>

#include <cmath>

using namespace bothways::core;

namespace {

/// The Bayes factor as its definition has it: the density of t where delta/sigma ~ N(0, 1/phi),
/// so where the non-centrality delta/(sigma sqrt(v)) ~ N(0, 1/(phi v)), over its density where
/// there is no effect.
double byIntegration(double t, double v, double df)
{
    const double scale = 1.0 / std::sqrt(kAnyLookPrecision * v);
    const boost::math::normal_distribution<double> prior(0.0, scale);
    const auto integrand = [&](double ncp) {
        return boost::math::pdf(boost::math::non_central_t_distribution<double>(df, ncp), t) *
               boost::math::pdf(prior, ncp);
    };
    double error = 0.0;
    const double sum = boost::math::quadrature::gauss_kronrod<double, 61>::integrate(
        integrand, -12.0 * scale, 12.0 * scale, 15, 1e-11, &error);
    return sum / boost::math::pdf(boost::math::students_t_distribution<double>(df), t);
}

} // namespace

TEST(AnyLook, ItsBayesFactorIsTheIntegralOverThePrior)
{
    for (const double v : {0.2, 0.375, 1.5})
        for (const double df : {3.0, 9.0, 21.0})
            for (const double t : {0.0, 0.8, -2.5, 4.0}) {
                const double expected = byIntegration(t, v, df);
                EXPECT_NEAR(anyLookBayesFactor(t, v, df), expected, 1e-8 * expected)
                    << v << ' ' << df << ' ' << t;
            }
}

TEST(AnyLook, TheIntervalsEndIsWhereTheBayesFactorReachesOneOverAlpha)
{
    for (const double alpha : {0.1, 0.05, 0.01})
        for (const double df : {6.0, 9.0, 33.0}) {
            const auto half = anyLookHalfWidth(0.375, df, alpha);
            if (!half)
                continue;
            EXPECT_NEAR(anyLookBayesFactor(*half, 0.375, df), 1.0 / alpha, 1e-9 / alpha);
        }
    ASSERT_TRUE(anyLookHalfWidth(0.375, 33.0, 0.01));
}

TEST(AnyLook, TooFewDegreesOfFreedomExcludeNothing)
{
    EXPECT_FALSE(anyLookHalfWidth(0.375, 0.0, 0.05));
    EXPECT_FALSE(anyLookHalfWidth(0.375, 1.0, 0.05)); // r K >= 1
    EXPECT_FALSE(anyLookHalfWidth(std::numeric_limits<double>::infinity(), 9.0, 0.05));
    EXPECT_TRUE(anyLookHalfWidth(0.375, 9.0, 0.05));
    EXPECT_GT(*anyLookHalfWidth(0.375, 9.0, 0.05), tQuantile(0.975, 9.0));
}
