// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/study/units.h"

#include <utility>

namespace bothways::tests {

/// A hand-made result: sentences and JSON are tested on what they are given, not on what core
/// computes.
class AnAnalysis {
public:
    AnAnalysis()
    {
        m.baseline = "A";
        m.device = "B";
        m.runs = m.counted = 18;
        m.days = 1;
        m.design = core::Design::closed;
        for (int i = 0; i < 9; ++i)
            addPair(i + 1, i / 3 + 1, i / 3 == 1);
        for (int block = 1; block <= 3; ++block)
            m.blocks.push_back({block, block == 2 ? "B" : "A", block == 2, 0, 6, 3});
    }
    AnAnalysis& effect(double effect_pct, double low_pct, double high_pct)
    {
        core::Headline headline;
        headline.effect_log = core::logFromPct(effect_pct);
        headline.low_log = core::logFromPct(low_pct);
        headline.high_log = core::logFromPct(high_pct);
        headline.low_equivalence_log = 0.8 * headline.low_log + 0.2 * headline.effect_log;
        headline.high_equivalence_log = 0.8 * headline.high_log + 0.2 * headline.effect_log;
        headline.se_log = (headline.high_log - headline.low_log) / 4.8939;
        headline.df = 6.0;
        headline.t = headline.effect_log / headline.se_log;
        headline.p = 0.064;
        headline.s = 0.005;
        headline.baseline_l_per_100km = 8.0;
        headline.difference_l_per_100km = 8.0 * effect_pct / 100.0;
        headline.drift_log_per_h = -0.0025;
        headline.fitted.assign(m.pairs.size(), 2.0794);
        headline.residuals.assign(m.pairs.size(), 0.0);
        m.headline = headline;
        m.detectable = core::Detectable{0.80, 0.012};
        return *this;
    }
    AnAnalysis& verdict(core::VerdictClass cls)
    {
        m.verdict.cls = cls;
        return *this;
    }
    AnAnalysis& noVerdict(core::NoVerdict reason)
    {
        m.verdict.cls = core::VerdictClass::none;
        m.verdict.reason = reason;
        m.headline.reset();
        m.detectable.reset();
        return *this;
    }
    AnAnalysis& names(std::string baseline, std::string device)
    {
        m.baseline = std::move(baseline);
        m.device = std::move(device);
        return *this;
    }
    template <class Change>
    AnAnalysis& with(Change change)
    {
        change(m);
        return *this;
    }
    operator core::Analysis() const { return m; }

private:
    void addPair(int number, int block, bool device)
    {
        core::Pair pair;
        pair.number = number;
        pair.out_run = 2 * number - 1;
        pair.return_run = 2 * number;
        pair.block = block;
        pair.device = device;
        pair.configuration = device ? "B" : "A";
        pair.time_h = 0.25 * number;
        pair.l_per_100km = 8.0;
        pair.log = 2.0794415416798357;
        m.pairs.push_back(pair);
    }
    core::Analysis m;
};

} // namespace bothways::tests
