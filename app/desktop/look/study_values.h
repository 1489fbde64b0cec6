// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"

#include <algorithm>
#include <cmath>
#include <optional>

/// Small facts about a result that several pictures and texts need.
namespace bothways::app {

/// True where every log is that of a ratio to a control vehicle's consumption.
[[nodiscard]] inline bool usesControl(const core::Analysis& analysis)
{
    return std::any_of(analysis.notes.begin(), analysis.notes.end(), [](const core::Note& note) {
        return note.kind == core::NoteKind::controlUsed;
    });
}

/// Log of a run's consumption, or of its ratio to the control vehicle's; nothing where it has none.
[[nodiscard]] inline std::optional<double> logOf(const core::Run& run, bool control)
{
    const std::optional<double> own = core::lPer100km(run);
    if (!own || !(*own > 0.0))
        return std::nullopt;
    if (!control)
        return std::log(*own);
    const std::optional<double> other = core::controlLPer100km(run);
    if (!other || !(*other > 0.0))
        return std::nullopt;
    return std::log(*own / *other);
}

} // namespace bothways::app
