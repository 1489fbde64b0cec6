// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "app/desktop/plots/plot_view.h"
#include "app/desktop/plots/trace_series.h"

namespace bothways::app {

/// One channel against another, in the colour of each run's configuration: output against rotor
/// speed, for instance.
class TraceScatter final : public PlotView {
    Q_OBJECT

public:
    using PlotView::PlotView;

    struct RunShown {
        const TracedRun* run;
    };
    /// Points are taken where `across` has a sample; `up` is read between its samples. Of a long
    /// recording every k-th is drawn, and the words say so.
    void show(const std::vector<RunShown>& runs, const std::string& across, const std::string& up,
              const UnitsShown& units);
};

/// Value of a channel at a time: between two samples the straight line, none beyond its ends or in
/// a gap longer than `widest_s`.
[[nodiscard]] std::optional<double> valueAt(const core::Samples& samples, double time_s,
                                            double widest_s);

} // namespace bothways::app
