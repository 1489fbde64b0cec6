// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/planned_design.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace bothways::core {
namespace {

constexpr double kMinPerHour = 60.0;
constexpr double kRounding = 1e-9; ///< of a column of length 1: as least squares decides

/// Sums of squares and products about a planned day's means: of x (the device), t, and q, the
/// squared time from the mean.
struct DayMoments {
    int pairs = 0;
    double minutes = 0.0;
    double xx = 0.0, xt = 0.0, tt = 0.0;
    double qx = 0.0, qt = 0.0, qq = 0.0;
    [[nodiscard]] bool hasSlope() const { return tt > 0.0; }
    /// A product of two columns beside the slope.
    [[nodiscard]] double beside(double product, double aTimesT, double bTimesT) const
    {
        return hasSlope() ? product - aTimesT * bTimesT / tt : product;
    }
};

bool sameLetter(char a, char b)
{
    return isA(a) == isA(b);
}

int switchesIn(std::string_view letters)
{
    int switches = 0;
    for (std::size_t i = 1; i < letters.size(); ++i)
        switches += sameLetter(letters[i], letters[i - 1]) ? 0 : 1;
    return switches;
}

/// Calls visit(letters) for each day that has any.
template <class Visit>
void forEachDay(std::string_view sequence, Visit&& visit)
{
    while (!sequence.empty()) {
        const std::string_view letters = sequence.substr(0, sequence.find('/'));
        sequence.remove_prefix(std::min(sequence.size(), letters.size() + 1));
        if (!letters.empty())
            visit(letters);
    }
}

bool isClosed(std::string_view sequence)
{
    bool closed = false;
    forEachDay(sequence,
               [&](std::string_view letters) { closed = closed || switchesIn(letters) >= 2; });
    return closed;
}

/// In closed form from the letters' mean times and spreads, so that the inverse plan is quick; the
/// moments of q are left out.
DayMoments momentsOf(std::string_view letters, int k, double pair_min, double switch_min)
{
    DayMoments day;
    day.pairs = k * static_cast<int>(letters.size());
    // Each letter is a segment of k pairs, so means over segments are means over pairs. Two walks
    // over the letters: the inverse plan asks too often to keep a list.
    const auto count = static_cast<double>(letters.size());
    const auto walk = [&](auto&& visit) {
        double minutes = 0.0;
        for (std::size_t i = 0; i < letters.size(); ++i) {
            if (i > 0 && !sameLetter(letters[i], letters[i - 1]))
                minutes += switch_min;
            visit(isB(letters[i]) ? 1.0 : 0.0, (minutes + k * pair_min / 2.0) / kMinPerHour);
            minutes += k * pair_min;
        }
        day.minutes = minutes;
    };
    double xMean = 0.0, tMean = 0.0;
    walk([&](double x, double middle_h) {
        xMean += x / count;
        tMean += middle_h / count;
    });
    // k equally spaced times p apart have a sum of squares of p^2 k (k^2 - 1)/12 about their mean.
    const double spacing = pair_min / kMinPerHour;
    const double within = spacing * spacing * (static_cast<double>(k) * k - 1.0) / 12.0;
    walk([&](double x, double middle_h) {
        const double dx = x - xMean, dt = middle_h - tMean;
        day.xx += k * dx * dx;
        day.xt += k * dx * dt;
        day.tt += k * (dt * dt + within);
    });
    return day;
}

/// Those of q as well, pair by pair.
DayMoments curvedMomentsOf(std::string_view letters, int k, double pair_min, double switch_min)
{
    DayMoments day = momentsOf(letters, k, pair_min, switch_min);
    const std::vector<PlannedPair> pairs = plannedPairs(letters, k, pair_min, switch_min);
    const auto n = static_cast<double>(pairs.size());
    double tMean = 0.0, xMean = 0.0;
    for (const PlannedPair& pair : pairs) {
        tMean += pair.time_h / n;
        xMean += (pair.device ? 1.0 : 0.0) / n;
    }
    const double qMean = day.tt / n;
    for (const PlannedPair& pair : pairs) {
        const double t = pair.time_h - tMean, q = t * t - qMean;
        day.qx += q * ((pair.device ? 1.0 : 0.0) - xMean);
        day.qt += q * t;
        day.qq += q * q;
    }
    return day;
}

double sqrtV(double information)
{
    // What rounding leaves of an effect that is wholly confounded is no information.
    constexpr double kNothing = 1e-12;
    return information > kNothing ? 1.0 / std::sqrt(information)
                                  : std::numeric_limits<double>::infinity();
}

PlannedDesign designOf(std::string_view sequence, int k, double pair_min, double switch_min,
                       bool sloped)
{
    PlannedDesign design;
    double information = 0.0;
    int terms = 1; // the effect
    forEachDay(sequence, [&](std::string_view letters) {
        const DayMoments day = momentsOf(letters, k, pair_min, switch_min);
        design.pairs += day.pairs;
        design.road_hours += day.minutes / kMinPerHour;
        information += sloped ? day.beside(day.xx, day.xt, day.xt) : day.xx;
        terms += sloped && day.hasSlope() ? 2 : 1;
    });
    design.df = design.pairs - terms;
    design.sqrt_v = sqrtV(information);
    return design;
}

} // namespace

PlannedDesign plannedDesign(std::string_view sequence, int pairs_per_block, double pair_min,
                            double switch_min)
{
    return designOf(sequence, pairs_per_block, pair_min, switch_min, isClosed(sequence));
}

PlannedDesign slopedDesign(std::string_view sequence, int pairs_per_block, double pair_min,
                           double switch_min)
{
    return designOf(sequence, pairs_per_block, pair_min, switch_min, true);
}

std::optional<PlannedDesign> curvedDesign(std::string_view sequence, int pairs_per_block,
                                          double pair_min, double switch_min)
{
    if (!isClosed(sequence))
        return std::nullopt;
    PlannedDesign design = plannedDesign(sequence, pairs_per_block, pair_min, switch_min);
    double xx = 0.0, qx = 0.0, qq = 0.0, length = 0.0;
    forEachDay(sequence, [&](std::string_view letters) {
        const DayMoments day = curvedMomentsOf(letters, pairs_per_block, pair_min, switch_min);
        xx += day.beside(day.xx, day.xt, day.xt);
        qx += day.beside(day.qx, day.qt, day.xt);
        qq += day.beside(day.qq, day.qt, day.qt);
        length += day.qq + day.tt * day.tt / day.pairs;
    });
    if (!(qq > kRounding * kRounding * length) || !(xx * qq - qx * qx > 1e-12 * xx * qq))
        return std::nullopt;
    design.sqrt_v = sqrtV(xx - qx * qx / qq);
    design.df -= 1;
    return design;
}

std::vector<PlannedPair> plannedPairs(std::string_view sequence, int pairs_per_block,
                                      double pair_min, double switch_min)
{
    std::vector<PlannedPair> pairs;
    double begin_min = 0.0;
    int block = 0;
    for (std::size_t i = 0; i < sequence.size(); ++i) {
        if (i > 0 && !sameLetter(sequence[i], sequence[i - 1])) {
            begin_min += switch_min;
            ++block;
        }
        for (int k = 0; k < pairs_per_block; ++k) {
            pairs.push_back({block, isB(sequence[i]), begin_min / kMinPerHour,
                             (begin_min + pair_min / 2.0) / kMinPerHour});
            begin_min += pair_min;
        }
    }
    return pairs;
}

} // namespace bothways::core
