// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/words.h"
#include "app/desktop/plots/plot_view.h"

namespace bothways::app {

/// The effect without each pair in turn, against the interval of the whole. (Method, section 8.)
class LeaveOneOutPlot final : public PlotView {
    Q_OBJECT

public:
    using PlotView::PlotView;
    /// Readings activate with the number of the pair's out run.
    void show(const core::Analysis& analysis, const Words& words);
};

} // namespace bothways::app
