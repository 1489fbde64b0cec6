// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/drift_meter.h"

#include <cmath>

namespace bothways::storage {
namespace {

constexpr double kFirst_s = 1.0; // before that, arrival is too uneven

std::optional<double> unitByPace(double own, double our_s)
{
    for (const double unit_s : {1.0, 1e-3, 1e-6})
        if (const double pace = own * unit_s / our_s; pace > 0.5 && pace < 2.0)
            return unit_s;
    return std::nullopt;
}

} // namespace

void DriftMeter::take(double own, std::optional<double> unit_s, double our_s)
{
    if (!m_first || own < m_last->own) { // it was switched on, or on again
        m_first = Moment{own, our_s};
        m_unit_s = unit_s;
    }
    m_last = Moment{own, our_s};
    const double passed_s = our_s - m_first->our_s;
    if (passed_s < kFirst_s)
        return;
    if (!m_unit_s)
        m_unit_s = unitByPace(own - m_first->own, passed_s);
    if (m_unit_s)
        m_drift_s = (own - m_first->own) * *m_unit_s - passed_s;
}

} // namespace bothways::storage
