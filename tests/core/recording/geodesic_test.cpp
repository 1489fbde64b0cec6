// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/geodesic.h"

#include <gtest/gtest.h>

#include <cmath>

namespace bothways::core {
namespace {

struct Line {
    const char* name;
    double lat1, lon1, lat2, lon2;
    double azimuth, endAzimuth; ///< deg, forward
    double distance_m;
};

// Computed with GeographicLib's GeodSolve 2.1.2, option -i -p 6 (Karney 2013, "Algorithms for
// geodesics", Journal of Geodesy 87, 43-55). JFK to LHR is the example of GeodSolve's manual,
// Land's End to John o' Groats is seen in public tests.
constexpr Line kLines[] = {
    {"JFK-LHR", 40.6, -73.8, 51.6, -0.5, 51.19888284558, 107.82177673551, 5551759.400319},
    {"Land's End-John o' Groats", 50.06632, -5.71475, 58.64402, -3.07009, 9.14187748891,
     11.29722041431, 969954.166314},
    {"along the equator", 0, 0, 0, 1, 90, 90, 111319.490793},
    {"along a meridian from the equator", 0, 0, 1, 0, 0, 0, 110574.388558},
    {"along a meridian", 45, 0, 46, 0, 0, 0, 111141.548474},
    {"11 km north", 51.5, -0.1, 51.6, -0.1, 0, 0, 11125.878726},
    {"558 m east", 60, 10, 60, 10.01, 89.99566987298, 90.00433012702, 558.000015},
};

TEST(Geodesic, MeasuresPublishedLinesToATenthOfAMillimetre)
{
    for (const Line& line : kLines) {
        const Geodesic found = geodesicBetween(line.lat1, line.lon1, line.lat2, line.lon2);
        EXPECT_TRUE(found.converged) << line.name;
        EXPECT_NEAR(found.distance_m, line.distance_m, 1e-4) << line.name;
        EXPECT_NEAR(found.azimuth_deg, line.azimuth, 1e-8) << line.name;
        EXPECT_NEAR(found.end_azimuth_deg, line.endAzimuth, 1e-8) << line.name;
    }
}

TEST(Geodesic, MeasuresMeridianArcs)
{
    // Computed from the meridian arc's integral; metres.
    EXPECT_NEAR(geodesicBetween(0, 0, 90, 0).distance_m, 10001965.72931272, 1e-4);
    EXPECT_NEAR(geodesicBetween(89, 7, 90, 7).distance_m, 111693.8649141998, 1e-4);
    EXPECT_NEAR(geodesicBetween(0, 7, 45, 7).distance_m, 4984944.377977744, 1e-4);
    EXPECT_NEAR(geodesicBetween(50, -7, 51, -7).distance_m, 111238.6808599576, 1e-4);
}

TEST(Geodesic, MeasuresTheSurveyorsLineFromFlindersPeakToBuninyong)
{
    // Geoscience Australia's worked example, on GRS80: 54972.271 m, 306d52'05.37", and back
    // 127d10'25.07" (forward azimuth at the end 307d10'25.07").
    constexpr Ellipsoid grs80{6378137.0, 1.0 / 298.257222101};
    const auto degrees = [](double d, double m, double s) { return d + m / 60 + s / 3600; };
    const Geodesic found =
        geodesicBetween(-degrees(37, 57, 3.72030), degrees(144, 25, 29.52440),
                        -degrees(37, 39, 10.15610), degrees(143, 55, 35.38390), grs80);
    EXPECT_NEAR(found.distance_m, 54972.271, 0.0005);
    EXPECT_NEAR(found.azimuth_deg, degrees(306, 52, 5.37), 0.005 / 3600);
    EXPECT_NEAR(found.end_azimuth_deg, degrees(307, 10, 25.07), 0.005 / 3600);
}

TEST(Geodesic, SaysWhenPointsAreNearlyAntipodalAndStaysNear)
{
    // Cases of Karney 2013 on which Vincenty's iteration is known to have trouble.
    constexpr Line lines[] = {
        {"", 0, 0, 0.5, 179.5, 25.67187286829, 154.32708546994, 19936288.578965},
        {"", 0, 0, 0.5, 179.7, 15.55688279349, 164.44251389085, 19944127.420750},
        {"", -41.32, 174.81, 40.96, -5.50, 161.06766998616, 18.82519512325, 19959679.267354}};
    for (const Line& line : lines) {
        const Geodesic found = geodesicBetween(line.lat1, line.lon1, line.lat2, line.lon2);
        const double allowed_m = found.converged ? 1e-3 : 0.007 * line.distance_m;
        EXPECT_NEAR(found.distance_m, line.distance_m, allowed_m) << line.lon2;
    }
    EXPECT_FALSE(geodesicBetween(0, 0, 0.5, 179.7).converged);
    EXPECT_FALSE(geodesicBetween(0, 0, 0, 180).converged);
}

TEST(Geodesic, IsNothingBetweenAPointAndItself)
{
    EXPECT_EQ(geodesicBetween(47.5, 9.5, 47.5, 9.5).distance_m, 0.0);
    EXPECT_EQ(geodesicBetween(90, 10, 90, 200).distance_m < 1e-6, true);
    EXPECT_TRUE(std::isnan(geodesicBetween(std::nan(""), 0, 0, 0).distance_m));
}

TEST(Geodesic, IsTheSameBackAndAcrossTheDateLine)
{
    const auto there = geodesicBetween(-16.8, 179.9, -16.7, -179.9);
    const auto back = geodesicBetween(-16.7, -179.9, -16.8, 179.9);
    EXPECT_NEAR(there.distance_m, back.distance_m, 1e-6);
    EXPECT_LT(there.distance_m, 30e3);
    EXPECT_NEAR(std::remainder(there.azimuth_deg + 180 - back.end_azimuth_deg, 360), 0, 1e-9);
}

TEST(Geodesic, AgreesWithLocalMetresOverAStretch)
{
    for (const double lat : {-60.0, 0.0, 47.0, 68.0})
        for (const double turn : {0.0, 1.0, 2.0, 4.0}) {
            const double lat2 = lat + 0.04 * std::cos(turn), lon2 = 12.0 + 0.05 * std::sin(turn);
            const LocalPosition p = localPosition(lat, 12.0, lat2, lon2);
            const double distance = geodesicBetween(lat, 12.0, lat2, lon2).distance_m;
            EXPECT_NEAR(std::hypot(p.east_m, p.north_m), distance, 1e-6 * distance);
        }
}

} // namespace
} // namespace bothways::core
