// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/watching/watcher.h"

#include <string>

/// What the watcher says while a run is driven: short enough to be read at arm's length. No
/// sentence here names a consumption, so that a blind study stays blind.
namespace bothways::app::wording {

/// "Over-speed: 3,410 rpm (left)", "windscreen drops out in 40 s".
[[nodiscard]] std::string alarmHeadline(const Language& in, const core::Alarm& alarm);
/// "Slow down. Turn and drive the run again."
[[nodiscard]] std::string alarmToDo(const Language& in, const core::Alarm& alarm);
/// Both: "Over-speed: 3,410 rpm (left). Slow down. Turn and drive the run again."
[[nodiscard]] std::string alarmSentence(const Language& in, const core::Alarm& alarm);
/// With how grave it is in front: "spoiled: Over-speed: 3,410 rpm (left). …"
[[nodiscard]] std::string alarmLine(const Language& in, const core::Alarm& alarm);
/// "note", "warning", "spoiled".
[[nodiscard]] std::string alarmLevelName(const Language& in, core::AlarmLevel level);

} // namespace bothways::app::wording
