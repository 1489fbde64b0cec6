// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/several.h"
#include "app/output/report_picture.h"
#include "app/wording/units.h"
#include "core/effect/answer.h"
#include "core/study/study.h"

#include <optional>
#include <span>
#include <string>

/// The pictures of the report. Nothing in them depends on a font's measures.
namespace bothways::app::report {

/// Effect, its interval, the interval of the equivalence test, the margin band and the zero line.
/// Empty without a headline.
[[nodiscard]] Picture intervalPicture(const Language& in, const core::Analysis& analysis);

/// Pairs over time, blocks shaded, the model as lines (not with a control vehicle: it is about
/// ratios then), discarded runs as hollow marks. Several days stand side by side, by pair number.
/// Empty without pairs.
[[nodiscard]] Picture pairsPicture(const Language& in, const core::Study& study,
                                   const core::Analysis& analysis, wording::ShownUnit unit);

/// Headline, companions, days and settings, one under the other. Empty without a headline.
[[nodiscard]] Picture forestPicture(const Language& in, const core::Analysis& analysis);

/// The pooled effects and the studies, one under the other. Empty without any effect.
[[nodiscard]] Picture studiesPicture(const Language& in, const Several& together);

/// The effect with each pair left out in turn. Empty without a headline.
[[nodiscard]] Picture leaveOneOutPicture(const Language& in, const core::Analysis& analysis);

/// As SVG. Same picture, same bytes: every number is printed with a fixed count of decimals.
/// It names itself for a screen reader (role="img", aria-label); colours are in the classes of the
/// page's style sheet.
[[nodiscard]] std::string svg(const Picture& picture);

} // namespace bothways::app::report
