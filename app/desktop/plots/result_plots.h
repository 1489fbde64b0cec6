// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/result_set.h"
#include "app/desktop/look/words.h"
#include "app/desktop/plots/plot_view.h"

/// Pictures of a result. Each fills a plot whole: picture, readings, numbers, words for those who
/// cannot see it. Without a verdict they show what there is.
namespace bothways::app {

/// Effect, interval, 1 - 2 alpha interval, margin and zero on one scale.
class EffectPlot final : public PlotView {
    Q_OBJECT

public:
    using PlotView::PlotView;
    void show(const core::Analysis& analysis, const Words& words);
};

/// The day as it was: pairs over time, blocks shaded, the fitted line, discards hollow.
class DayPlot final : public PlotView {
    Q_OBJECT

public:
    using PlotView::PlotView;
    /// Readings activate with the run's number (of a pair: its out run's).
    void show(const ResultSet& result, const Words& words);
};

} // namespace bothways::app
