// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "storage/instruments/rig.h"

/// Two points make a sensor's factor and offset.
namespace bothways::storage {

struct CalibrationPoint {
    double shown = 0.0;   ///< by the channel, as it is now
    double correct = 0.0; ///< by the meter that is right
};
struct Calibration {
    double factor = 1.0, offset = 0.0; ///< right = shown * factor + offset
};

/// An Error where the two points are one, or make no sense.
[[nodiscard]] core::Result<Calibration> calibrated(const CalibrationPoint& one,
                                                   const CalibrationPoint& other);
/// The channel with that upon the factor and offset that it had when it showed the points.
[[nodiscard]] RigChannel corrected(const RigChannel& channel, const Calibration& calibration);

} // namespace bothways::storage
