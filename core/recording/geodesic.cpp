// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/geodesic.h"

#include <cmath>
#include <numbers>

namespace bothways::core {
namespace {

constexpr double kRadian = std::numbers::pi / 180.0;
constexpr int kMaxIterations = 100;
constexpr double kConverged = 1e-13; ///< of the difference of longitudes

double degreesFromNorth(double radians)
{
    const double degrees = radians / kRadian;
    return degrees < 0.0 ? degrees + 360.0 : degrees;
}

/// What Vincenty's iteration carries on.
struct Arc {
    double sinSigma, cosSigma, sigma, cosSqAlpha, cos2SigmaM;
};

struct ReducedLatitudes {
    double sin1, cos1, sin2, cos2;
    ReducedLatitudes(double lat1_deg, double lat2_deg, double flattening)
    {
        const double u1 = std::atan((1.0 - flattening) * std::tan(lat1_deg * kRadian));
        const double u2 = std::atan((1.0 - flattening) * std::tan(lat2_deg * kRadian));
        sin1 = std::sin(u1);
        cos1 = std::cos(u1);
        sin2 = std::sin(u2);
        cos2 = std::cos(u2);
    }
};

Geodesic onSphere(const ReducedLatitudes& u, double difference, const Ellipsoid& ellipsoid)
{
    const double b_m = ellipsoid.a_m * (1.0 - ellipsoid.flattening);
    const double east = u.cos2 * std::sin(difference);
    const double north = u.cos1 * u.sin2 - u.sin1 * u.cos2 * std::cos(difference);
    const double angle = std::atan2(std::hypot(east, north),
                                    u.sin1 * u.sin2 + u.cos1 * u.cos2 * std::cos(difference));
    return {angle * (2.0 * ellipsoid.a_m + b_m) / 3.0, degreesFromNorth(std::atan2(east, north)),
            degreesFromNorth(std::atan2(u.cos1 * std::sin(difference),
                                        u.cos1 * u.sin2 * std::cos(difference) - u.sin1 * u.cos2)),
            false};
}

/// Equations (3), (4), (6).
double lengthOf(const Arc& arc, const Ellipsoid& ellipsoid)
{
    const double a2 = ellipsoid.a_m * ellipsoid.a_m;
    const double b_m = ellipsoid.a_m * (1.0 - ellipsoid.flattening);
    const double b2 = b_m * b_m;
    const double uSq = arc.cosSqAlpha * (a2 - b2) / b2;
    const double a = 1.0 + uSq / 16384.0 * (4096.0 + uSq * (-768.0 + uSq * (320.0 - 175.0 * uSq)));
    const double b = uSq / 1024.0 * (256.0 + uSq * (-128.0 + uSq * (74.0 - 47.0 * uSq)));
    const double c = arc.cos2SigmaM;
    const double deltaSigma =
        b * arc.sinSigma *
        (c + b / 4.0 *
                 (arc.cosSigma * (-1.0 + 2.0 * c * c) -
                  b / 6.0 * c * (-3.0 + 4.0 * arc.sinSigma * arc.sinSigma) * (-3.0 + 4.0 * c * c)));
    return b_m * a * (arc.sigma - deltaSigma);
}

} // namespace

Geodesic geodesicBetween(double lat1_deg, double lon1_deg, double lat2_deg, double lon2_deg,
                         const Ellipsoid& ellipsoid)
{
    const double f = ellipsoid.flattening;
    const ReducedLatitudes u(lat1_deg, lat2_deg, f);
    const double difference = std::remainder(lon2_deg - lon1_deg, 360.0) * kRadian;
    if (std::isnan(u.sin1) || std::isnan(u.sin2) || std::isnan(difference)) {
        const double none = std::nan("");
        return {none, none, none, false};
    }
    double lambda = difference;
    for (int i = 0; i < kMaxIterations; ++i) {
        const double sinLambda = std::sin(lambda), cosLambda = std::cos(lambda);
        const double east = u.cos2 * sinLambda;
        const double north = u.cos1 * u.sin2 - u.sin1 * u.cos2 * cosLambda;
        Arc arc{};
        arc.sinSigma = std::hypot(east, north);
        arc.cosSigma = u.sin1 * u.sin2 + u.cos1 * u.cos2 * cosLambda;
        if (arc.sinSigma == 0.0) // one point, or its antipode
            return arc.cosSigma > 0.0 ? Geodesic{} : onSphere(u, difference, ellipsoid);
        arc.sigma = std::atan2(arc.sinSigma, arc.cosSigma);
        const double sinAlpha = u.cos1 * u.cos2 * sinLambda / arc.sinSigma;
        arc.cosSqAlpha = 1.0 - sinAlpha * sinAlpha;
        arc.cos2SigmaM = arc.cosSqAlpha > 1e-20 // 0 along the equator
                             ? arc.cosSigma - 2.0 * u.sin1 * u.sin2 / arc.cosSqAlpha
                             : 0.0;
        const double c = f / 16.0 * arc.cosSqAlpha * (4.0 + f * (4.0 - 3.0 * arc.cosSqAlpha));
        const double next =
            difference + (1.0 - c) * f * sinAlpha *
                             (arc.sigma + c * arc.sinSigma *
                                              (arc.cos2SigmaM +
                                               c * arc.cosSigma *
                                                   (-1.0 + 2.0 * arc.cos2SigmaM * arc.cos2SigmaM)));
        if (std::abs(next) > std::numbers::pi)
            break;
        if (std::abs(next - lambda) <= kConverged * std::abs(next))
            return {lengthOf(arc, ellipsoid), degreesFromNorth(std::atan2(east, north)),
                    degreesFromNorth(std::atan2(u.cos1 * sinLambda,
                                                u.cos1 * u.sin2 * cosLambda - u.sin1 * u.cos2)),
                    true};
        lambda = next;
    }
    return onSphere(u, difference, ellipsoid);
}

LocalPosition localPosition(double originLat_deg, double originLon_deg, double lat_deg,
                            double lon_deg, const Ellipsoid& ellipsoid)
{
    // Radii of curvature at the middle latitude: along the meridian, and across it.
    const double middle = 0.5 * (originLat_deg + lat_deg) * kRadian;
    const double e2 = ellipsoid.flattening * (2.0 - ellipsoid.flattening);
    const double w2 = 1.0 - e2 * std::sin(middle) * std::sin(middle);
    const double across_m = ellipsoid.a_m / std::sqrt(w2);
    const double along_m = across_m * (1.0 - e2) / w2;
    return {std::remainder(lon_deg - originLon_deg, 360.0) * kRadian * across_m * std::cos(middle),
            (lat_deg - originLat_deg) * kRadian * along_m};
}

} // namespace bothways::core
