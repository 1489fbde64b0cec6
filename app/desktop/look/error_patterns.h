// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

namespace bothways::app {

/// The sentences of core's and storage's errors that a user of the window can meet, and the parts
/// of sentences that stand in them, with %1 for each value. Marked for translation as "Errors".
[[nodiscard]] std::span<const char* const> errorPatterns();

} // namespace bothways::app
