// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/alarm_bell.h"

#include <algorithm>

namespace bothways::app {
void AlarmBell::look(const std::vector<core::Alarm>& alarms, std::int64_t now_ms)
{
    m_alarms = alarms;
    std::erase_if(m_alarms, [&](const core::Alarm& alarm) {
        return core::isLack(alarm) && m_lacks.contains(alarm.key);
    });
    std::stable_sort(m_alarms.begin(), m_alarms.end(),
                     [](const auto& a, const auto& b) { return a.level > b.level; });
    Heard* due = nullptr;
    for (const core::Alarm& alarm : m_alarms) {
        Heard& heard = m_heard[alarm.key];
        heard.seen_ms = now_ms;
        if (alarm.level > heard.level) { // it has become worse: as if it were new
            heard = {alarm.level, 0, 0, now_ms, false};
        }
        const bool again = heard.times == 0 || now_ms - heard.last_ms >= kAgain_ms;
        if (!due && alarm.kind != core::Alarm::Kind::noChannel && !heard.acknowledged &&
            heard.times < kMostTimes && again)
            due = &heard;
    }
    std::erase_if(m_heard,
                  [&](const auto& item) { return now_ms - item.second.seen_ms > kOver_ms; });
    if (!due || now_ms - m_rang_ms < kApart_ms)
        return;
    ++due->times;
    due->last_ms = now_ms;
    m_rang_ms = now_ms;
    if (m_ring)
        m_ring(due->level);
}

void AlarmBell::acknowledge()
{
    for (const core::Alarm& alarm : m_alarms) {
        m_heard[alarm.key].acknowledged = true;
        if (core::isLack(alarm))
            m_lacks.insert(alarm.key);
    }
    std::erase_if(m_alarms, core::isLack);
}

bool AlarmBell::isAcknowledged(const core::Alarm& alarm) const
{
    const auto heard = m_heard.find(alarm.key);
    return heard != m_heard.end() && heard->second.acknowledged;
}

bool AlarmBell::isRinging() const
{
    return std::any_of(m_alarms.begin(), m_alarms.end(),
                       [&](const auto& alarm) { return !isAcknowledged(alarm); });
}

const core::Alarm* AlarmBell::foremost() const
{
    for (const core::Alarm& alarm : m_alarms)
        if (!isAcknowledged(alarm))
            return &alarm;
    return m_alarms.empty() ? nullptr : &m_alarms.front();
}

} // namespace bothways::app
