// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/units.h"
#include "core/screening/odd_runs.h"

#include <optional>
#include <string>

namespace bothways::app::wording {

/// Why a person should look at the run again: a question, not a finding.
/// @param unit  none: that of the study's runs
[[nodiscard]] std::string oddRunSentence(const Language& in, const core::OddRun& odd,
                                         const core::Study& study,
                                         std::optional<ShownUnit> unit = {});

} // namespace bothways::app::wording
