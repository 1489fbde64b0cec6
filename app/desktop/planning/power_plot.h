// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/words.h"
#include "app/desktop/plots/plot_view.h"
#include "core/planning/plan.h"

namespace bothways::app {

/// The power curve of a plan: how often such a day would show an effect of a given size.
class PowerPlot final : public PlotView {
    Q_OBJECT

public:
    using PlotView::PlotView;
    void show(const core::Plan& plan, const NumberWords& numbers);
};

} // namespace bothways::app
