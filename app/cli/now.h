// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"

namespace bothways::cli {

/// Now, to the second, by the study's kind of clock: with the offset from UTC where its runs have
/// one. The one place of the command line that looks at the clock, but for `today`.
[[nodiscard]] core::Instant nowBy(const core::Study& study);

} // namespace bothways::cli
