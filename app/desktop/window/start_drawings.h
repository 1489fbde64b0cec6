// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/theme.h"

#include <QPixmap>

namespace bothways::app {

/// What stands beside the ways to begin.
enum class StartDrawing {
    days,    ///< without, with, without the device
    stretch, ///< out and back between two posts
    answer,  ///< a study: its runs, and an interval
    sheet    ///< a table that comes in
};

constexpr QSize kStartDrawing(96, 64); ///< px of the screen's scale 1

/// Drawn for that theme and that many pixels a pixel.
[[nodiscard]] QPixmap startDrawing(StartDrawing which, const Theme& theme, double scale);

} // namespace bothways::app
