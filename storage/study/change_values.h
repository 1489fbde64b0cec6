// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/properties.h"
#include "core/study/study.h"
#include "storage/study/history_detail.h"

#include <vector>

/// What the history keeps of a change: the values of its details, in the forms that
/// history_detail.h lists.
namespace bothways::storage {

/// [3, 4]
[[nodiscard]] HistoryValue::List numbersOf(const std::vector<core::Run*>& runs);
/// [9, "off", "out", "2026-03-14T09:10:00", "5.42", "l_per_100km"]
[[nodiscard]] HistoryValue factsOf(const core::Run& run);
/// [9, "duration_s", "211", "213"]: the columns in which they differ, before and after.
[[nodiscard]] HistoryValue differences(const core::Run& before, const core::Run& after);
/// ["margin", "1"], ["fuel", "diesel"]: the properties that are others now.
[[nodiscard]] HistoryValue::List differences(const core::StudyProperties& before,
                                             const core::StudyProperties& after);

} // namespace bothways::storage
