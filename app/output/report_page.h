// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

/// The parts of the report that are the same in every report. Private to app/output.
namespace bothways::app::report {

[[nodiscard]] std::string_view styleSheet();
/// The method in a page, with formulas, as HTML.
[[nodiscard]] std::string_view methodPage();
/// "Boost 1.74.0, Eigen 3.4.0, ...": of this build.
[[nodiscard]] std::string libraryVersions();

} // namespace bothways::app::report
