// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "core/study/study.h"

#include <QString>

#include <vector>

namespace bothways::app {

/// What may be a slip of the pen. A question never keeps a run from being saved.
struct Question {
    enum class About { consumption, start, direction, distance, speed, temperature };
    About about = About::consumption;
    QString sentence;
    friend bool operator==(const Question&, const Question&) = default;
};

/// Questions about a run that is, or is about to be, in the study.
///
/// Consumption is held against the median of the other runs in the same configuration and
/// direction, where there are two, else against that of all others; discarded runs are left out of
/// it. What is asked: more than 15 % off (30 % against all others). Where another unit or another
/// place of the decimal sign would fit, the sentence says so. The thresholds are common practice,
/// no source: run-to-run scatter on a calm morning is a few per cent.
[[nodiscard]] std::vector<Question> questionsAbout(const core::Study& study, const core::Run& run,
                                                   const UnitsShown& units);

} // namespace bothways::app
