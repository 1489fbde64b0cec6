// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/result_set.h"
#include "app/desktop/look/words.h"
#include "app/desktop/plots/plot_view.h"

/// The small pictures beside the checks. Each fills a plot whole; none needs more than a verdict.
namespace bothways::app::check_plots {

/// Residuals in order of size against the quantiles of a normal distribution: on a line, if they
/// are ordinary scatter. Plotting positions (i - 3/8)/(n + 1/4): Blom 1958.
void fillQuantiles(PlotView& plot, const ResultSet& result, const Words& words);
/// Residuals over the time of day: no bend, no runs of one sign.
void fillResiduals(PlotView& plot, const ResultSet& result, const Words& words);
/// Residuals of the two configurations side by side: do they scatter alike?
void fillSpread(PlotView& plot, const ResultSet& result, const Words& words);
/// Pairs of the baseline alone, with the means of its blocks: how much the day moved.
void fillBaseline(PlotView& plot, const ResultSet& result, const Words& words);
/// Out against return over the time of day: level, if the wind kept still.
void fillDirection(PlotView& plot, const ResultSet& result, const Words& words);

} // namespace bothways::app::check_plots
