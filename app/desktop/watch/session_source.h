// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/watch/live_source.h"

namespace bothways::app {

/// What the program records with: a LiveSession.
[[nodiscard]] LiveStarter sessionStarter();

} // namespace bothways::app
