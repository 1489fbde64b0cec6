// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

/// What is the same in every report's web page. Private to app/output.
namespace bothways::app::report {

/// CSS: for a screen, a phone, and A4 or Letter paper.
[[nodiscard]] std::string styleSheet();

} // namespace bothways::app::report
