// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

/// A source's own clock against ours.
namespace bothways::storage {

class DriftMeter {
public:
    /// @param own     what its clock says; @param unit_s  in so many seconds; nothing: a second, a
    ///                thousandth or a millionth, whichever its pace fits
    /// @param our_s   of arrival
    void take(double own, std::optional<double> unit_s, double our_s);
    /// By how much it has gone ahead of ours since it began (or began anew); nothing in the first
    /// second.
    [[nodiscard]] std::optional<double> drift_s() const { return m_drift_s; }

private:
    struct Moment {
        double own, our_s;
    };
    std::optional<Moment> m_first, m_last;
    std::optional<double> m_unit_s, m_drift_s;
};

} // namespace bothways::storage
