// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/cutting.h"

#include <limits>
#include <optional>

namespace bothways::core {

/// Tells from one speed after the other on which stretches the target was held: for a recording
/// that is there as for one that is being made.
class CruiseKeeper {
public:
    struct Held {
        double from_s = 0.0, to_s = 0.0;
    };

    /// @param options  its target must be above 0
    explicit CruiseKeeper(const CruiseOptions& options) : m_options(options) {}

    /// The next sample. @return  a stretch that had ended before it
    std::optional<Held> pass(double time_s, double speed_kmh);
    /// So late is it. @return  a stretch that has ended, since nothing was within for too long
    std::optional<Held> passTime(double time_s);
    /// Nothing comes any more. @return  the stretch that was under way
    std::optional<Held> finish();

    /// The stretch so far, up to the last sample that was within; it may be too short yet.
    [[nodiscard]] std::optional<Held> soFar() const;
    /// The last sample was outside: the stretch may be over.
    [[nodiscard]] bool isOutside() const { return m_outside; }

private:
    static constexpr double kNever = -std::numeric_limits<double>::infinity();

    CruiseOptions m_options;
    double m_from_s = kNever, m_last_s = kNever; ///< of the samples that were within
    bool m_outside = true;
};

} // namespace bothways::core
