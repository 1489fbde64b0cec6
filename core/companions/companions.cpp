// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions/companions.h"

#include "core/companions/any_look.h"
#include "core/companions/borrowed.h"
#include "core/companions/bracket.h"
#include "core/companions/by_day.h"
#include "core/companions/correlated.h"
#include "core/companions/curved.h"
#include "core/companions/relabelling.h"
#include "core/effect/effect_model.h"
#include "core/effect/headline.h"
#include "core/effect/verdict.h"
#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bothways::core {
namespace {

/// The effect of a fit whose first column it is; empty where these data cannot tell it.
std::optional<Interval> effectOf(const LeastSquaresFit& fit, const AnalysisOptions& options)
{
    if (fit.df < 1 || !fit.estimable[kEffectColumn] || !(fit.s() >= kNoVariation))
        return std::nullopt;
    return intervalOf(fit.coefficients[kEffectColumn],
                      fit.s() * std::sqrt(fit.cov(kEffectColumn, kEffectColumn)), fit.df, options);
}

/// All counted runs, unpaired ones too, with a term for the direction.
std::optional<Interval> runsOf(const PreparedStudy& prepared, const AnalysisOptions& options)
{
    const std::vector<std::size_t> used = prepared.runsOfDaysWithPairs();
    const std::vector<Observation> runs = runObservations(prepared);
    Columns columns = effectColumns(runs, prepared.sloped());
    const auto direction = columns.add();
    for (std::size_t i = 0; i < runs.size(); ++i)
        direction[i] = prepared.runs[used[i]].out ? 0.5 : -0.5;
    return effectOf(leastSquares(columns, responses(runs)), options);
}

/// The headline's model on block means.
std::optional<Interval> blocksOf(const PreparedStudy& prepared, const AnalysisOptions& options)
{
    std::vector<Observation> means;
    for (const DesignBlock& block : prepared.design_blocks)
        means.push_back({block.t_h, block.day, block.device, block.m});
    const Columns columns = effectColumns(means, prepared.sloped());
    return effectOf(leastSquares(columns, responses(means)), options);
}

/// A model without its effect.
Columns nuisanceOf(const Columns& columns)
{
    Columns nuisance(columns.rows());
    for (std::size_t j = 0; j < columns.count(); ++j)
        if (j != kEffectColumn)
            nuisance.addFrom(columns, j);
    return nuisance;
}

std::optional<LabelsTest> labelsOf(const PreparedStudy& prepared, const AnalysisOptions& options)
{
    const std::vector<Observation> pairs = pairObservations(prepared);
    std::vector<bool> device;
    for (const Observation& pair : pairs)
        device.push_back(pair.device);
    return dealLabelsAgain(responses(pairs), device,
                           nuisanceOf(effectColumns(pairs, prepared.sloped())), options.seed);
}

/// The columns of which every coefficient is kept, the effect last.
Columns independentColumns(const Columns& columns, std::span<const double> y)
{
    const LeastSquaresFit fit = leastSquares(columns, y);
    Columns kept(columns.rows());
    for (std::size_t j = 0; j < columns.count(); ++j)
        if (j != kEffectColumn && fit.cov(j, j) > 0.0)
            kept.addFrom(columns, j);
    kept.addFrom(columns, kEffectColumn);
    return kept;
}

std::optional<CorrelatedInterval> correlatedOf(const PreparedStudy& prepared,
                                               const AnalysisOptions& options)
{
    const std::vector<Observation> pairs = pairObservations(prepared);
    std::vector<double> y = responses(pairs);
    const Columns columns = independentColumns(effectColumns(pairs, prepared.sloped()), y);
    // The common level is in the model; taken off first, it costs no digits.
    for (double& value : y)
        value -= pairs.front().y;
    std::vector<std::size_t> begins;
    for (std::size_t i = 0; i < pairs.size(); ++i)
        if (i == 0 || pairs[i].day != pairs[i - 1].day)
            begins.push_back(i);
    return correlatedInterval({columns, y, begins}, options);
}

/// A setting of the device with the pairs driven in it.
struct SettingPairs {
    std::string name; ///< as first written
    std::vector<std::size_t> pairs;
};

std::vector<SettingPairs> settingsDriven(const Study& study, const PreparedStudy& prepared)
{
    std::vector<SettingPairs> settings;
    for (std::size_t k = 0; k < prepared.pairs.size(); ++k) {
        const Pair& pair = prepared.pairs[k];
        if (!pair.device || pair.mixed_setting)
            continue;
        const std::string& name = study.runs[pair.out_index].setting;
        auto known = std::ranges::find_if(
            settings, [&](const SettingPairs& s) { return sameSetting(s.name, name); });
        if (known == settings.end())
            known = settings.insert(settings.end(), {name, {}});
        known->pairs.push_back(k);
    }
    std::erase_if(settings, [](const SettingPairs& s) { return s.pairs.size() < 2; });
    return settings;
}

/// Of a fit whose columns from `first` on are the settings: those that the data can tell.
std::vector<SettingEffect> settingEffects(const std::vector<SettingPairs>& settings,
                                          const LeastSquaresFit& fit, std::size_t first,
                                          const AnalysisOptions& options)
{
    if (fit.df < 2 || !(fit.s() >= kNoVariation))
        return {};
    const auto shown = std::count(fit.estimable.begin() + static_cast<std::ptrdiff_t>(first),
                                  fit.estimable.end(), true);
    if (shown < 2)
        return {};
    const double alpha = 1.0 - options.confidence;
    const double plain = tQuantile(1.0 - alpha / 2.0, fit.df);
    const double shared = tQuantile(1.0 - alpha / (2.0 * static_cast<double>(shown)), fit.df);
    std::vector<SettingEffect> effects;
    for (std::size_t s = 0; s < settings.size(); ++s) {
        if (!fit.estimable[first + s])
            continue;
        const double effect = fit.coefficients[first + s];
        const double se = fit.s() * std::sqrt(fit.cov(first + s, first + s));
        effects.push_back({settings[s].name, static_cast<int>(settings[s].pairs.size()), effect,
                           effect - plain * se, effect + plain * se, effect - shared * se,
                           effect + shared * se});
    }
    return effects;
}

/// B split by setting, over the pairs that are not mixed.
std::vector<SettingEffect> settingsOf(const Study& study, const PreparedStudy& prepared,
                                      const AnalysisOptions& options)
{
    const std::vector<SettingPairs> settings = settingsDriven(study, prepared);
    if (settings.size() < 2)
        return {};
    std::map<std::size_t, std::size_t> settingOfPair;
    for (std::size_t s = 0; s < settings.size(); ++s)
        for (const std::size_t k : settings[s].pairs)
            settingOfPair[k] = s;
    const std::vector<Observation> all = pairObservations(prepared);
    std::vector<Observation> pairs;
    std::vector<std::size_t> setting;
    for (std::size_t k = 0; k < all.size(); ++k) {
        const auto found = settingOfPair.find(k);
        if (prepared.pairs[k].mixed_setting || (all[k].device && found == settingOfPair.end()))
            continue;
        pairs.push_back(all[k]);
        setting.push_back(all[k].device ? found->second : settings.size());
    }
    Columns columns = nuisanceOf(effectColumns(pairs, prepared.sloped()));
    const std::size_t first = columns.count();
    for (std::size_t s = 0; s < settings.size(); ++s) {
        const auto column = columns.add();
        for (std::size_t i = 0; i < pairs.size(); ++i)
            column[i] = setting[i] == s ? 1.0 : 0.0;
    }
    return settingEffects(settings, leastSquares(columns, responses(pairs)), first, options);
}

} // namespace

Companions companionsOf(const Study& study, const PreparedStudy& prepared, const Headline& headline,
                        const AnalysisOptions& options)
{
    Companions companions;
    companions.bracket = bracketOf(prepared, options);
    companions.runs = runsOf(prepared, options);
    companions.blocks = blocksOf(prepared, options);
    companions.labels = labelsOf(prepared, options);
    companions.correlated = correlatedOf(prepared, options);
    companions.any_look = anyLookOf(prepared, options);
    companions.curved = curvedOf(curvedFitOf(prepared), options);
    companions.borrowed = borrowedOf(headline, options);
    companions.days = dayEffectsOf(byDayFitOf(prepared), options);
    companions.settings = settingsOf(study, prepared, options);
    return companions;
}

std::vector<std::pair<Companion, const Interval*>> intervalsOf(const Companions& companions)
{
    std::vector<std::pair<Companion, const Interval*>> intervals;
    const auto add = [&](Companion name, const auto& interval) {
        intervals.emplace_back(name, interval ? &*interval : nullptr);
    };
    add(Companion::bracket, companions.bracket);
    add(Companion::runs, companions.runs);
    add(Companion::blocks, companions.blocks);
    add(Companion::curved, companions.curved);
    add(Companion::correlated, companions.correlated);
    add(Companion::anyLook, companions.any_look);
    if (companions.borrowed)
        add(Companion::borrowed, companions.borrowed);
    return intervals;
}

} // namespace bothways::core
