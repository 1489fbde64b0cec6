// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/words.h"
#include "app/desktop/plots/plot_view.h"
#include "core/planning/plan.h"

#include <vector>

namespace bothways::app {

/// More switches or more pairs, for the same hours on the road: how wide the interval gets with
/// each sequence, for a straight drift, a bent one, and any number of looks.
class WidthsPlot final : public PlotView {
    Q_OBJECT

public:
    using PlotView::PlotView;
    /// @param plans  in order of their switches
    void show(const std::vector<core::Plan>& plans, const NumberWords& numbers);
};

} // namespace bothways::app
