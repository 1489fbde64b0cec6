// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/answer/several.h"

namespace bothways::app {
namespace {

StudyRow rowOf(const NamedAnswer& study)
{
    const core::Analysis& analysis = study.result->analysis;
    StudyRow row{study.name,     {}, analysis.verdict.cls, {}, analysis.electric, analysis.baseline,
                 analysis.device};
    if (analysis.headline) {
        row.baseline_l_per_100km = analysis.headline->baseline_l_per_100km;
        row.effect = core::studyEffectOf(row.name, *analysis.headline);
    }
    return row;
}

} // namespace

Several together(const std::vector<NamedAnswer>& studies)
{
    Several several;
    if (studies.empty())
        return several;
    const core::AnalysisOptions& asked = studies.front().result->analysis.options;
    several.confidence = asked.confidence;
    several.margin_pct = asked.margin_pct;
    std::vector<core::StudyEffect> effects;
    for (const NamedAnswer& study : studies) {
        several.studies.push_back(rowOf(study));
        if (const auto& effect = several.studies.back().effect)
            effects.push_back(*effect);
    }
    several.pooled = core::pool(effects, several.confidence);
    return several;
}

} // namespace bothways::app
