// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/calibration.h"

#include <algorithm>
#include <cmath>

namespace bothways::storage {
namespace {

constexpr double kMostFactor = 1e6; ///< beyond it a unit was mistaken, or a digit

core::Error noCalibration(core::Message message)
{
    return {core::ErrorCode::wrongUse, std::move(message), {}};
}

/// Too near to each other for their difference to say anything.
bool same(double a, double b)
{
    return std::abs(a - b) <= 1e-9 * std::max(std::abs(a), std::abs(b));
}

} // namespace

core::Result<Calibration> calibrated(const CalibrationPoint& one, const CalibrationPoint& other)
{
    for (const double value : {one.shown, one.correct, other.shown, other.correct})
        if (!std::isfinite(value))
            return noCalibration("a calibration needs four numbers"_t);
    if (same(one.shown, other.shown))
        return noCalibration(core::message("both points show {}; expected two readings that are "
                                           "far apart"_t,
                                           one.shown));
    if (same(one.correct, other.correct))
        return noCalibration(core::message("both points should be {}; expected two values that are "
                                           "far apart"_t,
                                           one.correct));
    Calibration found;
    found.factor = (other.correct - one.correct) / (other.shown - one.shown);
    found.offset = one.correct - found.factor * one.shown;
    const double size = std::abs(found.factor);
    if (!std::isfinite(found.offset) || !(size <= kMostFactor && size >= 1.0 / kMostFactor))
        return noCalibration(core::message("these points make a factor of {}; expected one between "
                                           "0.000001 and 1000000: was a digit left out?"_t,
                                           found.factor));
    return found;
}

RigChannel corrected(const RigChannel& channel, const Calibration& calibration)
{
    RigChannel better = channel;
    better.factor = channel.factor * calibration.factor;
    better.offset = channel.offset * calibration.factor + calibration.offset;
    return better;
}

} // namespace bothways::storage
