// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"

#include <cmath>

namespace bothways::tests {

/// An analysis made by hand, for sentences: 3 blocks of 3 pairs, effect −1.2 % with an interval
/// from −1.9 to −0.5 %, unless said otherwise.
class AnalysisBuilder {
public:
    AnalysisBuilder()
    {
        m_analysis.baseline = "A";
        m_analysis.device = "B";
        m_analysis.runs = m_analysis.counted = 18;
        m_analysis.design = core::Design::closed;
        m_analysis.days = 1;
        for (int block = 1; block <= 3; ++block) {
            const bool device = block == 2;
            m_analysis.blocks.push_back({block, device ? "B" : "A", device, 0, 6, 3});
            for (int k = 1; k <= 3; ++k) {
                core::Pair pair;
                pair.number = 3 * (block - 1) + k;
                pair.out_run = 2 * pair.number - 1;
                pair.return_run = 2 * pair.number;
                pair.block = block;
                pair.device = device;
                pair.configuration = device ? "B" : "A";
                m_analysis.pairs.push_back(pair);
            }
        }
        core::Headline headline;
        headline.df = 6.0;
        headline.p = 0.003;
        headline.s = 0.005;
        headline.baseline_l_per_100km = 8.32;
        m_analysis.headline = headline;
        m_analysis.detectable = core::Detectable{0.8, 0.0119};
        interval(-1.9, -1.2, -0.5);
        cls(core::VerdictClass::less);
    }
    AnalysisBuilder& interval(double low_pct, double effect_pct, double high_pct)
    {
        core::Headline& headline = *m_analysis.headline;
        headline.low_log = std::log1p(low_pct / 100.0);
        headline.effect_log = std::log1p(effect_pct / 100.0);
        headline.high_log = std::log1p(high_pct / 100.0);
        headline.low_equivalence_log = 0.8 * headline.low_log + 0.2 * headline.effect_log;
        headline.high_equivalence_log = 0.8 * headline.high_log + 0.2 * headline.effect_log;
        headline.difference_l_per_100km =
            headline.baseline_l_per_100km * std::expm1(headline.effect_log);
        return *this;
    }
    AnalysisBuilder& cls(core::VerdictClass value)
    {
        m_analysis.verdict.cls = value;
        return *this;
    }
    AnalysisBuilder& without(core::NoVerdict reason)
    {
        m_analysis.headline.reset();
        m_analysis.detectable.reset();
        m_analysis.verdict.cls = core::VerdictClass::none;
        m_analysis.verdict.reason = reason;
        return *this;
    }
    AnalysisBuilder& morePairs(std::optional<int> pairs)
    {
        m_analysis.verdict.more_pairs_per_block = pairs;
        return *this;
    }
    core::Analysis& raw() { return m_analysis; }
    operator core::Analysis() const { return m_analysis; }

private:
    core::Analysis m_analysis;
};

} // namespace bothways::tests
