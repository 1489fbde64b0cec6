// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/output/english.h"
#include "core/analysis.h"

#include <string>

/// The result for people at a terminal.
namespace bothways::app {

/// @param colour  ANSI colours; only for a terminal
[[nodiscard]] std::string analysisText(const core::Analysis& analysis,
                                       const core::Screening& screening, english::ShownUnit unit,
                                       bool colour);

} // namespace bothways::app
