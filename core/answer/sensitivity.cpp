// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answer/sensitivity.h"

#include "core/effect/block_pairing.h"
#include "core/effect/effect_by_days.h"
#include "core/effect/effect_model.h"
#include "core/effect/verdict.h"

#include <algorithm>
#include <cmath>

namespace bothways::core {
namespace {

/// Leverage this near to 1, or a residual sum of squares that falls below this share, and the
/// update is left for a fit.
constexpr double kTooNear = 1e-6;

/// An effect that moves by less than this (log) has not moved: a run without a partner, or on a day
/// of one configuration, changes nothing but the rounding.
constexpr double kNoMove = 1e-10;

/// The fit without pair i, by the update; nothing where that would lose digits.
std::optional<EffectEstimate> updated(const HeadlineFit& headline, std::size_t i)
{
    const LeastSquaresFit& fit = headline.fit;
    const double left = 1.0 - fit.leverage[i];
    if (left < kTooNear)
        return std::nullopt;
    const double rss = fit.rss - fit.residuals[i] * fit.residuals[i] / left;
    if (rss < kTooNear * fit.rss)
        return std::nullopt;
    const double v = fit.cov(kEffectColumn, kEffectColumn) + fit.weights[i] * fit.weights[i] / left;
    const int df = fit.df - 1;
    return EffectEstimate{fit.coefficients[kEffectColumn] -
                              fit.weights[i] * fit.residuals[i] / left,
                          std::sqrt(rss / df * v), df};
}

std::vector<EffectByDays::Day> daysOf(const PreparedStudy& prepared)
{
    std::vector<EffectByDays::Day> days(static_cast<std::size_t>(prepared.days));
    for (const Observation& pair : pairObservations(prepared))
        days[static_cast<std::size_t>(pair.day)].pairs.push_back(pair);
    return days;
}

/// The fits without one pair that the update is not for.
class Refits {
public:
    explicit Refits(const PreparedStudy& prepared)
        : m_days(daysOf(prepared)), m_effect(m_days, prepared.sloped()), m_next(m_days.size(), 0)
    {
        for (const Pair& pair : prepared.pairs)
            m_places.push_back(m_next[static_cast<std::size_t>(pair.day)]++);
    }

    [[nodiscard]] std::optional<EffectEstimate> without(const Pair& pair, std::size_t i) const
    {
        const auto day = static_cast<std::size_t>(pair.day);
        EffectByDays::Day left = m_days[day];
        left.pairs.erase(left.pairs.begin() + static_cast<std::ptrdiff_t>(m_places[i]));
        return m_effect.estimateWith(day, left);
    }

private:
    std::vector<EffectByDays::Day> m_days;
    EffectByDays m_effect;
    std::vector<std::size_t> m_next;
    std::vector<std::size_t> m_places; ///< a pair each: its place within its day
};

/// Discarded runs counted again, one at a time: only the run's block is paired anew, and only its
/// day computed anew.
class Restoring {
public:
    /// @param everything  the study with all runs that can be put back
    Restoring(const Study& study, const PreparedStudy& prepared, const PreparedStudy& everything,
              const AnalysisOptions& options)
        : m_study(study),
          m_prepared(prepared),
          m_everything(everything),
          m_options(options),
          m_days(daysOf(prepared)),
          m_effect(m_days, prepared.sloped()),
          m_blockOfPair(m_days.size()),
          m_firstRun(prepared.blocks.size() + 2, everything.runs.size())
    {
        for (const Pair& pair : prepared.pairs)
            m_blockOfPair[static_cast<std::size_t>(pair.day)].push_back(pair.block);
        for (std::size_t k = everything.runs.size(); k-- > 0;)
            m_firstRun[static_cast<std::size_t>(everything.runs[k].block)] = k;
    }

    [[nodiscard]] std::optional<EffectEstimate> with(std::size_t index) const
    {
        const auto restored = std::find_if(m_everything.runs.begin(), m_everything.runs.end(),
                                           [&](const CodedRun& r) { return r.index == index; });
        if (restored == m_everything.runs.end())
            return std::nullopt;
        const std::vector<CodedRun> block = runsOfBlock(restored->block, index);
        const BlockPairing pairing =
            pairBlock(block, m_everything.tied_with, m_options.max_gap_min);

        const auto day = static_cast<std::size_t>(restored->day);
        EffectByDays::Day anew;
        for (std::size_t k = 0; k < m_days[day].pairs.size(); ++k)
            if (m_blockOfPair[day][k] != restored->block)
                anew.pairs.push_back(m_days[day].pairs[k]);
        for (const BlockPair& pair : pairing.pairs) {
            const PairValue value = pairValue(block[pair.out], block[pair.back]);
            anew.pairs.push_back({value.time_h, restored->day, restored->device, value.log});
        }
        if (m_prepared.sloped() ||
            !closedWith(restored->day, restored->block, static_cast<int>(pairing.pairs.size())))
            return m_effect.estimateWith(day, anew);
        // The run closes an open study: now every day has its drift taken out.
        if (!m_closed)
            m_closed.emplace(m_days, true);
        return m_closed->estimateWith(day, anew);
    }

private:
    [[nodiscard]] std::vector<CodedRun> runsOfBlock(int block, std::size_t restored) const
    {
        std::vector<CodedRun> runs;
        for (std::size_t k = m_firstRun[static_cast<std::size_t>(block)];
             k < m_everything.runs.size() && m_everything.runs[k].block == block; ++k)
            if (m_everything.runs[k].index == restored ||
                m_study.runs[m_everything.runs[k].index].counted())
                runs.push_back(m_everything.runs[k]);
        return runs;
    }

    /// Whether the day has three design blocks or more when `block` has that many pairs.
    [[nodiscard]] bool closedWith(int day, int block, int pairs) const
    {
        int designBlocks = 0;
        std::optional<bool> before;
        for (const Block& b : m_prepared.blocks) {
            if (b.day != day || (b.block == block ? pairs : b.pairs) == 0)
                continue;
            designBlocks += before != b.device ? 1 : 0;
            before = b.device;
        }
        return designBlocks >= kClosedBlocks;
    }

    const Study& m_study;
    const PreparedStudy& m_prepared;
    const PreparedStudy& m_everything;
    const AnalysisOptions& m_options;
    std::vector<EffectByDays::Day> m_days;
    EffectByDays m_effect;
    mutable std::optional<EffectByDays> m_closed; ///< made when a run first asks for it
    std::vector<std::vector<int>> m_blockOfPair;  ///< as m_days[].pairs
    std::vector<std::size_t> m_firstRun;          ///< a block each: its first run in m_everything
};

RestoredAll answerOf(const PreparedStudy& prepared, const AnalysisOptions& options)
{
    const HeadlineOrReason answer = headlineOf(prepared, options);
    RestoredAll all;
    if (const auto* fit = std::get_if<HeadlineFit>(&answer)) {
        all.effect_log = fit->headline.effect_log;
        all.low_log = fit->headline.low_log;
        all.high_log = fit->headline.high_log;
        all.cls = fit->cls;
    }
    return all;
}

bool positive(std::optional<double> value)
{
    return value && std::isfinite(*value) && *value > 0.0;
}

} // namespace

LeaveOneOut leaveOneOut(const PreparedStudy& prepared, const HeadlineFit& headline,
                        const AnalysisOptions& options)
{
    const int ofDevice = prepared.pairsOf(true);
    const int ofBaseline = static_cast<int>(prepared.pairs.size()) - ofDevice;
    const Refits refits(prepared);
    LeaveOneOut result;
    for (std::size_t i = 0; i < prepared.pairs.size(); ++i) {
        LeaveOneOutTurn turn;
        turn.pair = prepared.pairs[i].number;
        const int left = (prepared.pairs[i].device ? ofDevice : ofBaseline) - 1;
        std::optional<EffectEstimate> fit;
        if (left >= kFewestPairs && headline.fit.df - 1 >= kLeastDf)
            fit = updated(headline, i);
        if (!fit)
            fit = refits.without(prepared.pairs[i], i);
        if (fit) {
            turn.effect_log = fit->effect_log;
            turn.cls = intervalOf(fit->effect_log, fit->se_log, fit->df, options).cls;
            result.min_effect_log =
                std::min(result.min_effect_log.value_or(fit->effect_log), fit->effect_log);
            result.max_effect_log =
                std::max(result.max_effect_log.value_or(fit->effect_log), fit->effect_log);
        }
        result.without_verdict += fit ? 0 : 1;
        result.changes_class = result.changes_class || (fit && turn.cls != headline.cls);
        result.turns.push_back(turn);
    }
    return result;
}

DiscardsRestored discardsRestored(const Study& study, const PreparedStudy& prepared,
                                  const Headline* headline, const AnalysisOptions& options)
{
    std::vector<std::size_t> discarded, possible;
    for (std::size_t index = 0; index < study.runs.size(); ++index) {
        const Run& run = study.runs[index];
        if (run.counted())
            continue;
        discarded.push_back(index);
        if (positive(lPer100km(run)) && (!prepared.control || positive(controlLPer100km(run))))
            possible.push_back(index);
    }
    DiscardsRestored result;
    if (discarded.empty())
        return result;
    const PreparedStudy everything =
        prepareStudy(study, options, {.restored = possible, .control = prepared.control});
    if (!possible.empty())
        result.all = answerOf(everything, options);

    const Restoring restoring(study, prepared, everything, options);
    std::stable_sort(discarded.begin(), discarded.end(), [&](std::size_t a, std::size_t b) {
        return study.runs[a].start.us < study.runs[b].start.us;
    });
    for (const std::size_t index : discarded) {
        RestoredTurn turn;
        turn.run = study.runs[index].number;
        turn.possible = std::binary_search(possible.begin(), possible.end(), index);
        if (const auto fit = turn.possible ? restoring.with(index) : std::nullopt) {
            turn.effect_log = fit->effect_log;
            turn.cls = intervalOf(fit->effect_log, fit->se_log, fit->df, options).cls;
        }
        if (headline && turn.effect_log) {
            result.up += *turn.effect_log > headline->effect_log + kNoMove ? 1 : 0;
            result.down += *turn.effect_log < headline->effect_log - kNoMove ? 1 : 0;
        }
        result.each.push_back(turn);
    }
    return result;
}

} // namespace bothways::core
