// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"

namespace bothways::app {

/// "dashboard 8.65, recording 8.71 L/100 km (+0.7 %)": what the driver read off beside what the
/// recording says. The per cent are those of the two numbers as shown, of the one read off.
[[nodiscard]] QString recordedBeside(const core::Run& run, const core::Consumption& recorded,
                                     const UnitsShown& units);

/// "1.4 MB": how much room something takes.
[[nodiscard]] QString sizeText(qint64 bytes, const UnitsShown& units);
/// "3:25" or "1:02:45".
[[nodiscard]] QString lengthText(double seconds);

} // namespace bothways::app
