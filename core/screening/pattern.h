// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/screening/context.h"

#include <functional>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

/// The look across the study after all its runs were screened. (Method, section 9, "Pattern".)
namespace bothways::core::rules {

/// Where over-speeds gather. Nothing without an over-speed whose output is known, or where no
/// run's 1 s mean reached that output (a drive that lets go at once).
/// @param leftovers   a run each
/// @param confidence  of the interval for the share
/// @param part        whose over-speeds and output; empty: all over-speeds, and the total output
[[nodiscard]] std::optional<OverspeedPattern>
overspeedPattern(const Study& study, const std::vector<Finding>& findings,
                 const std::vector<Leftover>& leftovers, double confidence,
                 std::string_view part = {});

/// The same for each part whose own output was recorded, by its name.
[[nodiscard]] std::vector<OverspeedPattern>
overspeedPatternsOfParts(const Study& study, const std::vector<Finding>& findings,
                         const std::vector<Leftover>& leftovers, double confidence);

/// The same for one run, `known` being the channels that other runs have.
void channelsNeverFilled(const Run& run, const Leftover& leftover,
                         const std::set<std::string, std::less<>>& known,
                         std::vector<Finding>& findings);

/// What the device gave and how fast it turned, by setting.
[[nodiscard]] std::vector<SettingFigures> figuresBySetting(const Study& study,
                                                           const std::vector<Leftover>& leftovers);

/// A channel that other runs have and that a run's recording names but never filled: lost for the
/// whole run.
void channelsNeverFilled(const Study& study, const std::vector<Leftover>& leftovers,
                         std::vector<Finding>& findings);

} // namespace bothways::core::rules
