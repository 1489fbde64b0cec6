// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/result_set.h"
#include "app/desktop/look/words.h"
#include "app/desktop/plots/forest_plot.h"

#include <vector>

/// What the companions say, row by row, for picture and table alike.
namespace bothways::app {

struct CompanionRow {
    QString id; ///< "headline", "bracket", ..., "setting"
    QString name;
    std::optional<double> effect_log, low_log, high_log, wide_low_log, wide_high_log;
    std::optional<double> df, p;
    int pairs = 0; ///< of a day
    std::optional<core::VerdictClass> cls;
    bool differs = false; ///< named in the verdict as a reason to call it fragile
    ForestRow::Kind kind = ForestRow::Kind::companion;
};

/// Headline, companions and settings; those that cannot be had keep their place without numbers.
[[nodiscard]] std::vector<CompanionRow> companionRows(const core::Analysis& analysis,
                                                      const Words& words);
/// Below a picture of such rows.
[[nodiscard]] QString forestAxis(const core::Analysis& analysis, const Words& words);
/// Each day that can be told for itself; none with a single day.
[[nodiscard]] std::vector<CompanionRow> dayRows(const ResultSet& result, const Words& words);
/// Rows for the plot, with numbers beside them.
[[nodiscard]] std::vector<ForestRow> forestRows(const std::vector<CompanionRow>& rows,
                                                const Words& words);

/// The headline as judged, with all discards put back, and with each one singly.
struct RestoredRow {
    int run = 0; ///< 0: as judged, or all
    QString name, reason, evidence;
    std::optional<double> effect_log, low_log, high_log;
    core::VerdictClass cls = core::VerdictClass::none;
    bool possible = true;
    ForestRow::Kind kind = ForestRow::Kind::companion;
};
[[nodiscard]] std::vector<RestoredRow> restoredRows(const ResultSet& result, const Words& words);
[[nodiscard]] std::vector<ForestRow> forestRows(const std::vector<RestoredRow>& rows,
                                                const core::Analysis& analysis, const Words& words);

} // namespace bothways::app
