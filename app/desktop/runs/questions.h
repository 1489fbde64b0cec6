// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "core/study/study.h"

#include <QString>

#include <optional>
#include <vector>

namespace bothways::app {

/// What may be a slip of the pen. A question about a consumption wants an answer before the run is
/// saved; every other is only asked.
struct Question {
    enum class About { consumption, start, direction, distance, speed, temperature };
    About about = About::consumption;
    QString sentence;
    std::optional<core::Consumption> likely = {}; ///< what was meant, where another reading fits
    friend bool operator==(const Question&, const Question&) = default;
};

/// How much of the consumption of the study a question may say.
enum class Sight {
    open,
    typed, ///< screening is blind: the number that is being typed, nothing of other runs
    hidden ///< screening is blind, and the number is in the study already: nothing
};

/// Questions about a run that is, or is about to be, in the study.
///
/// Consumption is held against the median of the other runs in the same configuration and
/// direction, where there are two, else against that of all others; discarded runs are left out of
/// it, and so are those that are odd themselves (core/screening/odd_runs.h). What is asked: more
/// than 15 % off (30 % against all others). While screening is blind only what is odd in that sense
/// is asked, as less would say something of the effect. Where another unit or another place of the
/// decimal sign would fit, the sentence says so. The thresholds are common practice, no source:
/// run-to-run scatter on a calm morning is a few per cent.
[[nodiscard]] std::vector<Question> questionsAbout(const core::Study& study, const core::Run& run,
                                                   const UnitsShown& units,
                                                   Sight sight = Sight::open);

/// The one about its consumption; nothing where there is none.
[[nodiscard]] std::optional<Question> consumptionQuestion(const core::Study& study,
                                                          const core::Run& run,
                                                          const UnitsShown& units,
                                                          Sight sight = Sight::open);

/// A consumption as it was given: "82.2 L/100 km"; @see shortly() for the number alone where the
/// unit goes without saying.
[[nodiscard]] QString asGiven(const core::Consumption& consumption, const UnitsShown& units);
/// "8.22", or "28.1 mpg (US)" where that is not the unit `than`.
[[nodiscard]] QString shortly(const core::Consumption& consumption, core::ConsumptionUnit than,
                              const UnitsShown& units);

} // namespace bothways::app
