// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/descriptive.h"
#include "core/statistics/least_squares.h"

#include "published_data.h"

#include <gtest/gtest.h>

#include <algorithm>

// NIST Statistical Reference Datasets, univariate summaries and one-way analysis of variance:
// certified values to 15 digits (SOURCES.md). Floors: what is reached, less half a digit. Where
// they are low the doubles that hold the data are the limit: NumAcc3-4 and SmLs04-09 have 7 and 13
// equal leading digits, AtmWtAg 7 (the best that two-pass sums in doubles give: 9.5, 8.3;
// F 10.4 10.2 10.2, 4.4 4.2 4.2, 10.2).

using namespace bothways;
using published::agreeingDigits;

namespace {

struct Univariate {
    const char* dataset;
    double mean, sd, lag1;
};

struct OneWay {
    const char* dataset;
    double f, within;
};

core::LeastSquaresFit aboutMean(const std::vector<double>& y)
{
    core::Columns columns(y.size());
    std::ranges::fill(columns.add(), 1.0);
    return core::leastSquares(columns, y);
}

} // namespace

TEST(NistUnivariate, MomentsReachTheDigitsTheyAreHeldTo)
{
    constexpr Univariate kFloors[] = {
        {"PiDigits", 14.5, 14.2, 12.4},  {"Lottery", 14.5, 14.2, 14.2},
        {"Lew", 14.5, 14.2, 14.2},       {"Mavro", 14.5, 12.5, 13.0},
        {"Michelson", 14.5, 13.2, 12.7}, {"NumAcc1", 14.5, 14.5, 14.5},
        {"NumAcc2", 14.5, 14.0, 13.2},   {"NumAcc3", 14.5, 9.0, 11.5},
        {"NumAcc4", 14.5, 8.2, 10.5},
    };
    for (const Univariate& floor : kFloors) {
        const auto y =
            published::readColumn(std::string("nist_strd/") + floor.dataset + ".csv", "y");
        const auto certified = published::certified(floor.dataset);
        const core::Moments moments = core::moments(y);
        EXPECT_GE(agreeingDigits(moments.mean, certified.at("mean")), floor.mean) << floor.dataset;
        EXPECT_GE(agreeingDigits(moments.sd, certified.at("sd")), floor.sd) << floor.dataset;
        // The same once more as a fit without terms, and lag-1 autocorrelation from its residuals.
        const core::LeastSquaresFit fit = aboutMean(y);
        EXPECT_GE(agreeingDigits(fit.coefficients[0], certified.at("mean")), floor.mean);
        EXPECT_GE(agreeingDigits(fit.s(), certified.at("sd")), floor.sd) << floor.dataset;
        double products = 0.0;
        for (std::size_t i = 0; i + 1 < y.size(); ++i)
            products += fit.residuals[i] * fit.residuals[i + 1];
        EXPECT_GE(agreeingDigits(products / fit.rss, certified.at("autocorr_lag1")), floor.lag1)
            << floor.dataset;
    }
}

TEST(NistAnova, OneWayAnalysisReachesTheDigitsItIsHeldTo)
{
    constexpr OneWay kFloors[] = {
        {"SiRstv", 12.6, 12.6}, {"SmLs01", 13.8, 14.2}, {"SmLs02", 13.0, 14.0},
        {"SmLs03", 13.0, 13.5}, {"SmLs04", 9.9, 9.9},   {"SmLs05", 9.8, 9.9},
        {"SmLs06", 9.8, 9.9},   {"SmLs07", 3.9, 3.9},   {"SmLs08", 3.8, 3.9},
        {"SmLs09", 3.8, 3.9},   {"AtmWtAg", 9.7, 10.4}};
    for (const OneWay& floor : kFloors) {
        const auto table = published::readTable(std::string("nist_strd/") + floor.dataset + ".csv");
        std::vector<double> y = published::asNumbers(table.at("y"));
        const std::vector<double> group = published::asNumbers(table.at("group"));
        const double first = y.front();
        for (double& value : y)
            value -= first; // exact for these; a common level is no part of the question
        core::Columns columns(y.size());
        const int groups = static_cast<int>(*std::ranges::max_element(group));
        for (int g = 1; g <= groups; ++g)
            std::ranges::transform(group, columns.add().begin(),
                                   [&](double of) { return of == g ? 1.0 : 0.0; });
        const core::LeastSquaresFit fit = core::leastSquares(columns, y);
        const double mean = core::moments(y).mean;
        double between = 0.0;
        for (const double value : fit.fitted)
            between += (value - mean) * (value - mean);
        const auto certified = published::certified(floor.dataset);
        const double f = between / (groups - 1) / (fit.rss / fit.df);
        EXPECT_GE(agreeingDigits(f, certified.at("f_statistic")), floor.f) << floor.dataset;
        EXPECT_GE(agreeingDigits(fit.rss, certified.at("ss_within")), floor.within)
            << floor.dataset;
    }
}
