// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"

#include <fmt/format.h>

#include <utility>

namespace bothways::bench {

/// The `i`th run of a large study, with as much noted on it as people note.
inline core::Run notedRun(core::Run run, int i)
{
    run.duration_s = 211.0;
    run.wind_ms = 1.5;
    run.temperature_c = 12.0;
    run.notes = fmt::format("note {}", i);
    return run;
}

} // namespace bothways::bench
