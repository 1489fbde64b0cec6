// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Distances on the Earth.
namespace bothways::core {

struct Ellipsoid {
    double a_m;        ///< equatorial radius
    double flattening; ///< (a - b) / a
};
/// Source: NIMA TR 8350.2 (2000), table 3.1.
inline constexpr Ellipsoid kWgs84{6378137.0, 1.0 / 298.257223563};

struct Geodesic {
    double distance_m = 0.0;
    double azimuth_deg = 0.0;     ///< at the first point, 0 to 360, north is 0, east is 90
    double end_azimuth_deg = 0.0; ///< at the second point, going on
    bool converged = true;        ///< false: nearly antipodal; see below
};

/// Shortest way between two points on an ellipsoid.
///
/// Vincenty 1975, "Direct and inverse solutions of geodesics on the ellipsoid with application of
/// nested equations", Survey Review 23(176), equations (13) to (18) and (3), (4), (6). Accurate to
/// 0.1 mm where it converges, and always for what a vehicle drives. Between points within about
/// half a degree of antipodal it need not: then the great circle on a sphere of the mean radius
/// (2a + b)/3, which is within 0.7 % of the distance. Azimuths of points that coincide are 0.
///
/// @param lat  -90 to 90; @param lon  any; degrees. Not a number gives not a number.
/// Checked: tests/core/recording/geodesic_test.cpp, against published lines.
[[nodiscard]] Geodesic geodesicBetween(double lat1_deg, double lon1_deg, double lat2_deg,
                                       double lon2_deg, const Ellipsoid& ellipsoid = kWgs84);

/// A point as metres east and north of another: straight lines over the few kilometres of a
/// stretch. The error grows as the square of the distance: some 4 m at 10 km east of 50 deg north.
struct LocalPosition {
    double east_m = 0.0, north_m = 0.0;
};
[[nodiscard]] LocalPosition localPosition(double originLat_deg, double originLon_deg,
                                          double lat_deg, double lon_deg,
                                          const Ellipsoid& ellipsoid = kWgs84);

} // namespace bothways::core
