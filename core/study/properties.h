// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/study/study.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// The properties of a study by name, as `set STUDY name=value`, `--limit` and the study file spell
/// them: name, date, baseline, margin, confidence, max_gap, aero_share, fuel, bearing_deg,
/// cold_start, claim, noise=PERCENT,DF, noise.from, notes, plan.sequence, plan.pairs, plan.margin,
/// plan.confidence, accessory_timer.NAME=WATTS,MINUTES, and every limit of allLimits()
/// ("overspeed.rpm"). Names are case-blind; NAME is kept in small letters with underscores, as the
/// column NAME_on_s is, and timed accessories are held in order of their names.
namespace bothways::core {

/// Sets one property from text; empty text goes back to the default.
/// @return  an Error (wrongUse) that says what is permitted; `properties` is then unchanged
[[nodiscard]] Outcome setProperty(StudyProperties& properties, std::string_view name,
                                  std::string_view value);

/// An Error (wrongUse) where the runs know two configurations and the baseline that was asked for
/// is neither. With fewer it may be one that is still to be driven.
[[nodiscard]] Outcome checkBaseline(const Study& study);

/// Every property that differs from its default, as setProperty() takes it, in a fixed order.
[[nodiscard]] std::vector<std::pair<std::string, std::string>>
propertiesAsText(const StudyProperties& properties);

} // namespace bothways::core
