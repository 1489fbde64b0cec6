// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rules/context.h"

/// One function a rule; each adds its findings, or says why it could not check.
namespace bothways::core::rules {

// rules/sheet.cpp: the run sheet alone
void accessoryChangeFromSheet(RunContext& context);
void accessoryTimer(RunContext& context);
void overspeedFromSheet(RunContext& context);
void stretchFromSheet(RunContext& context);
void batteryBalance(RunContext& context);
void warmingUp(RunContext& context);
void sameRunTwice(RunContext& context);

} // namespace bothways::core::rules
