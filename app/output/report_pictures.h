// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/analysis.h"
#include "core/study.h"

#include <string>
#include <string_view>

/// The pictures of the report as SVG text. Same input, same bytes: every number is printed with a
/// fixed count of decimals, nothing depends on a font's measures. Each picture names itself for a
/// screen reader (role="img", <title>). Colours come from the classes of the page's style sheet.
namespace bothways::app {

/// `text` with &, <, > and quotes written as entities, for HTML and SVG alike.
[[nodiscard]] std::string escaped(std::string_view text);

/// Effect, its interval, the interval of the equivalence test, the margin band and the zero line.
/// Empty without a headline.
[[nodiscard]] std::string intervalSvg(const core::Analysis& analysis);

/// Pairs over time in L/100 km, blocks shaded, the model as lines, discarded runs as hollow marks.
/// Empty without pairs.
[[nodiscard]] std::string pairsSvg(const core::Study& study, const core::Analysis& analysis);

/// Headline, companions and settings, one under the other. Empty without a headline.
[[nodiscard]] std::string forestSvg(const core::Analysis& analysis);

/// The effect with each pair left out in turn. Empty without a headline.
[[nodiscard]] std::string leaveOneOutSvg(const core::Analysis& analysis);

} // namespace bothways::app
