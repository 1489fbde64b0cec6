// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QImage>
#include <QString>

namespace bothways::app {

/// A study as a list of files shows it: each run a dot, by time and consumption, in the colour of
/// its configuration; what was discarded is hollow. The answer is not in it: a look at that is a
/// person's to take. Consumption that is hidden stays hidden.
[[nodiscard]] core::Result<QImage> thumbnailOf(const QString& study, int side_px);

} // namespace bothways::app
