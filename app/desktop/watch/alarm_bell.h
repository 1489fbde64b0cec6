// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/watching/watcher.h"

#include <cstdint>
#include <functional>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace bothways::app {

/// When which alarm is heard: at once, then again twice while nobody has acknowledged it, and never
/// more than that. One sound at a time: the gravest. What is lacking for good (a limit, a channel)
/// is gone once it is acknowledged, and a channel that the car has not is no sound at all. Knows no
/// clock and no loudspeaker.
class AlarmBell {
public:
    static constexpr int kMostTimes = 3;
    static constexpr std::int64_t kAgain_ms = 4000;
    /// Gone for so long, it is another trouble when it comes again; sooner, it flickers.
    static constexpr std::int64_t kOver_ms = 10'000;
    /// Two sounds at once are none.
    static constexpr std::int64_t kApart_ms = 1500;

    using Ring = std::function<void(core::AlarmLevel)>;
    explicit AlarmBell(Ring ring) : m_ring(std::move(ring)) {}

    /// @param now_ms  on a clock that only goes forward
    void look(const std::vector<core::Alarm>& alarms, std::int64_t now_ms);
    /// What is there now is heard no more.
    void acknowledge();
    [[nodiscard]] bool isAcknowledged(const core::Alarm& alarm) const;
    /// One that nobody has acknowledged is there.
    [[nodiscard]] bool isRinging() const;
    /// The one to show: the gravest that is not acknowledged, else the gravest. Null without any.
    [[nodiscard]] const core::Alarm* foremost() const;
    [[nodiscard]] const std::vector<core::Alarm>& alarms() const { return m_alarms; }

private:
    struct Heard {
        core::AlarmLevel level = core::AlarmLevel::note;
        int times = 0;
        std::int64_t last_ms = 0, seen_ms = 0;
        bool acknowledged = false;
    };
    Ring m_ring;
    std::vector<core::Alarm> m_alarms;
    std::map<std::string, Heard> m_heard;
    std::set<std::string> m_lacks; ///< that were acknowledged: they stay so
    std::int64_t m_rang_ms = -kApart_ms;
};

} // namespace bothways::app
