// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/reader_clock.h"

#include <algorithm>

#include <time.h>

namespace bothways::storage {

double bootTime_s()
{
    timespec now{};
    ::clock_gettime(CLOCK_BOOTTIME, &now);
    return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
}

void ReplayStart::ready(std::size_t replay, std::optional<double> first_s)
{
    const std::lock_guard lock(m_mutex);
    m_first_s[replay] = first_s;
    if (--m_waiting == 0)
        m_begin_s = bootTime_s();
}

bool ReplayStart::begun() const
{
    const std::lock_guard lock(m_mutex);
    return m_waiting == 0;
}

double ReplayStart::offset_s(std::size_t replay) const
{
    const std::lock_guard lock(m_mutex);
    std::optional<double> least;
    for (const auto& first : m_first_s)
        if (first && (!least || *first < *least))
            least = first;
    return m_first_s[replay] ? *m_first_s[replay] - *least : 0.0;
}

double ReplayStart::due_s() const
{
    const std::lock_guard lock(m_mutex);
    return (bootTime_s() - m_begin_s) * m_speed;
}

void ReplayStart::reached(std::size_t replay, double at_s, bool ended)
{
    const std::lock_guard lock(m_mutex);
    m_reached_s[replay] = std::max(m_reached_s[replay], at_s);
    m_ended[replay] = m_ended[replay] || ended;
}

double ReplayStart::time_s() const
{
    const std::lock_guard lock(m_mutex);
    std::optional<double> least;
    double furthest = 0.0;
    for (std::size_t i = 0; i < m_reached_s.size(); ++i) {
        furthest = std::max(furthest, m_reached_s[i]);
        if (!m_ended[i] && (!least || m_reached_s[i] < *least))
            least = m_reached_s[i];
    }
    return least.value_or(furthest);
}

} // namespace bothways::storage
