// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/shapiro_wilk.h"

#include "published_data.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

using namespace bothways;
using core::shapiroWilk;

namespace {

struct KnownNormality {
    const char* file;
    const char* column;
    double w, p;
};

// shapiro.test() of R 4.2.2 (the same algorithm, AS R94, in another program) on data sets that R
// carries. Tolerance: 1e-12 for W; for p 1e-10 relative, as both print 15 digits.
constexpr KnownNormality kByR[] = {
    {"women.csv", "weight", 0.960357180526788, 0.698605473524898},
    {"women.csv", "height", 0.963593490365408, 0.754533305439111},
    {"cars.csv", "dist", 0.951438478493851, 0.0390996836931711},
    {"mtcars_mpg.csv", "mpg", 0.947564726479274, 0.122881358539443},
    {"precip.csv", "precip", 0.964559168611697, 0.0449252894831123},
    {"nile.csv", "flow", 0.973434999402609, 0.0407244745877105},
    {"lakehuron.csv", "level_ft", 0.984922293512192, 0.327065689246956},
    {"rivers.csv", "rivers", 0.666624194236353, 1.86904144574189e-16},
    {"toothgrowth_len.csv", "len", 0.96742864385389, 0.109100494688918},
    {"lh.csv", "lh", 0.970774241179177, 0.271449291975475},
    {"airquality_wind.csv", "wind", 0.985749799955718, 0.117792769761666},
};

void expectKnown(const std::vector<double>& values, double w, double p, const char* what)
{
    const auto result = shapiroWilk(values);
    ASSERT_TRUE(result) << what;
    EXPECT_NEAR(result->w, w, 1e-12) << what;
    EXPECT_NEAR(result->p, p, 1e-10 * p) << what;
}

} // namespace

TEST(ShapiroWilk, AgreesWithRoystonsAlgorithmInR)
{
    for (const KnownNormality& known : kByR)
        expectKnown(published::readColumn(known.file, known.column), known.w, known.p, known.file);
}

TEST(ShapiroWilk, StudentsSleepData)
{
    // Student 1908; W and p by shapiro.test() of R 4.2.2.
    const auto drug1 = published::readColumn("sleep.csv", "drug1");
    const auto drug2 = published::readColumn("sleep.csv", "drug2");
    std::vector<double> all = drug1, difference;
    all.insert(all.end(), drug2.begin(), drug2.end());
    for (std::size_t i = 0; i < drug1.size(); ++i)
        difference.push_back(drug1[i] - drug2[i]);
    expectKnown(all, 0.946072762509969, 0.311375416723224, "sleep, all");
    expectKnown(difference, 0.829871331928795, 0.0333416086303081, "sleep, differences");
}

TEST(ShapiroWilk, TheAuthorsExample)
{
    // S. S. Shapiro, M. B. Wilk, Biometrika 52 (1965) 591-611: weights of 11 men, W = 0.79 (from
    // memory). W and p to 15 digits by shapiro.test() of R 4.2.2.
    const std::vector<double> weights = {148, 154, 158, 160, 161, 162, 166, 170, 182, 195, 236};
    const auto result = shapiroWilk(weights);
    ASSERT_TRUE(result);
    EXPECT_NEAR(result->w, 0.79, 0.005);
    expectKnown(weights, 0.788814694835387, 0.00670381405650293, "eleven men");
}

TEST(ShapiroWilk, IsExactForThreeValues)
{
    // n = 3: W = 3/4 at worst, where p is 0; equally spaced values give W = 1 and p = 1.
    const auto worst = shapiroWilk(std::vector{0.0, 0.0, 1.0});
    ASSERT_TRUE(worst);
    EXPECT_NEAR(worst->w, 0.75, 1e-14);
    EXPECT_NEAR(worst->p, 0.0, 1e-7); // asin's slope is steep nowhere here: sqrt(eps) at most
    const auto best = shapiroWilk(std::vector{3.0, 1.0, 2.0});
    ASSERT_TRUE(best);
    EXPECT_NEAR(best->w, 1.0, 1e-14);
    EXPECT_NEAR(best->p, 1.0, 1e-6);
}

TEST(ShapiroWilk, NeitherScaleNorOriginNorOrderMatters)
{
    const std::vector<double> values = {0.3, -1.2, 0.8, 2.9, -0.4, 0.1, 1.7};
    const auto result = shapiroWilk(values);
    std::vector<double> other;
    for (const double value : values)
        other.insert(other.begin(), 1e-9 * value + 7.0);
    const auto same = shapiroWilk(other);
    ASSERT_TRUE(result && same);
    EXPECT_NEAR(result->w, same->w, 1e-6); // 7 + 1e-9 x keeps seven digits of x
    EXPECT_NEAR(result->p, same->p, 1e-5);
}

TEST(ShapiroWilk, HasNothingToSayWhereItIsNotDefined)
{
    EXPECT_FALSE(shapiroWilk(std::vector{1.0, 2.0}));
    EXPECT_FALSE(shapiroWilk(std::vector<double>(10, 4.2)));
    EXPECT_FALSE(shapiroWilk(std::vector<double>(5001, 0.0)));
    EXPECT_FALSE(shapiroWilk(std::vector{1.0, std::nan(""), 2.0}));
    EXPECT_FALSE(shapiroWilk(std::vector{1.0, std::numeric_limits<double>::infinity(), 2.0}));
}

TEST(ShapiroWilk, GivesANumberForOneEnormousOutlier)
{
    for (const std::size_t n : {4u, 5u, 6u, 11u, 12u, 50u, 5000u}) {
        std::vector<double> values(n, 0.0);
        values.back() = 1e300;
        const auto result = shapiroWilk(values);
        ASSERT_TRUE(result) << n;
        EXPECT_TRUE(result->w > 0.0 && result->w < 1.0) << n;
        EXPECT_TRUE(result->p >= 0.0 && result->p < 0.01) << n << ' ' << result->p;
    }
}
