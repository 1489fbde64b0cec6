// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/effect/answer.h"
#include "core/screening/finding.h"

#include <string>
#include <vector>

/// The table of what the device gave and how fast it turned at road speed, by setting and part.
namespace bothways::app {

struct DeviceRows {
    std::vector<std::string> head;
    std::vector<std::vector<std::string>> rows; ///< empty: there is nothing to choose by
};
/// Only where several settings were driven, or the device has parts.
[[nodiscard]] DeviceRows deviceRows(const Language& in, const core::Analysis& analysis,
                                    const core::Screening& screening);

} // namespace bothways::app
