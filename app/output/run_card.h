// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/base/result.h"
#include "core/planning/plan.h"
#include "core/study/study.h"

#include <string>
#include <string_view>

/// The run card: the planned day on paper, for the roadside. One self-contained HTML page.
namespace bothways::app {

struct RunCardInput {
    const core::StudyProperties& properties; ///< name, limits, timed accessories
    core::Plan plan;
    std::string begin = "06:00"; ///< time of day of the first run, HH:MM
    std::string baseline = "A", device = "B";
    std::string out = {}, back = {}; ///< empty: "out" and "return" in the card's language
    Language language = {};
};

/// By which a run card is known for one of ours: it may be written over.
inline constexpr std::string_view kRunCardMark =
    "<meta name=\"generator\" content=\"Bothways run card\">";

/// The card of a plan that is tied to no study or to this one, with the study's own names.
/// @param study  must outlive the card
[[nodiscard]] RunCardInput runCardOf(const core::Study& study, const core::Plan& plan);

/// The sequence with times, directions and boxes to tick, what to switch on or off (timed
/// accessories with the time at which they would drop out), the limits, the cautions.
///
/// @return  an Error (wrongUse) when `begin` is no time of day
[[nodiscard]] core::Result<std::string> runCardHtml(const RunCardInput& input);

} // namespace bothways::app
