// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/screening/context.h"

#include <optional>
#include <span>
#include <string_view>

/// One function a rule; each adds its findings, or says why it could not check.
namespace bothways::core::rules {

// sheet.cpp: the run sheet alone
void accessoryChangeFromSheet(RunContext& context);
void accessoryTimer(RunContext& context);
/// When a timed accessory switches itself off, s of the run; nothing where its switch-on is not
/// noted.
[[nodiscard]] std::optional<double> timerOff_s(const Run& run, const TimedAccessory& accessory);
void overspeedFromSheet(RunContext& context);
void stretchFromSheet(RunContext& context);
void batteryBalance(RunContext& context);
void warmingUp(RunContext& context);
void sameRunTwice(RunContext& context);

// accessory.cpp; without a recording of it, the sheet's word
void accessoryChange(RunContext& context);

// device.cpp; overspeed without a recording of it: the sheet's word
void overspeed(RunContext& context);
/// What is above `share` of the limit for its time, as findings of overspeed with the limit itself.
void nearOverspeed(RunContext& context, double share);
void loadLost(RunContext& context);
void driveSlip(RunContext& context);
void outputDrop(RunContext& context);
void vibration(RunContext& context);

// figures.cpp: no rule, but from the same channels
void deviceFigures(RunContext& context);

// setting.cpp
void settingMismatch(RunContext& context);
void settingChanged(RunContext& context);

// road.cpp; stretch where the sheet has no distance: from the recording
void roadSpeed(RunContext& context);
void interrupted(RunContext& context);
void notCruising(RunContext& context);
void stretch(RunContext& context);

// traffic.cpp
void passingTraffic(RunContext& context);

// sensor.cpp. sensorsLost() looks at the channels named and forgets them, so that a long recording
// is held in memory a family at a time; sensorLost() looks at what is left.
void sensorsLost(RunContext& context, std::span<const std::string_view> channels);
void deviceStopped(RunContext& context);
void sensorLost(RunContext& context);
void traceEndsEarly(RunContext& context);

} // namespace bothways::core::rules
