// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/cruise_keeper.h"

#include <cmath>

namespace bothways::core {

std::optional<CruiseKeeper::Held> CruiseKeeper::pass(double time_s, double speed_kmh)
{
    const auto ended = passTime(time_s);
    const double target_kmh = m_options.target_kmh.value_or(0.0);
    m_outside = std::abs(speed_kmh - target_kmh) > target_kmh * m_options.tolerance_pct / 100.0;
    if (!m_outside) {
        if (m_from_s == kNever)
            m_from_s = time_s;
        m_last_s = time_s;
    }
    return ended;
}

std::optional<CruiseKeeper::Held> CruiseKeeper::passTime(double time_s)
{
    return m_from_s != kNever && time_s - m_last_s > m_options.bridged_s ? finish() : std::nullopt;
}

std::optional<CruiseKeeper::Held> CruiseKeeper::finish()
{
    const auto held = soFar();
    m_from_s = kNever;
    return held && held->to_s - held->from_s >= m_options.shortest_s ? held : std::nullopt;
}

std::optional<CruiseKeeper::Held> CruiseKeeper::soFar() const
{
    return m_from_s == kNever ? std::nullopt : std::optional(Held{m_from_s, m_last_s});
}

} // namespace bothways::core
