// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sensitivity.h"

#include "core/effect_model.h"
#include "core/verdict.h"

#include <algorithm>
#include <cmath>

namespace bothways::core {
namespace {

constexpr int kFewestPairs = 2;
constexpr double kLeastDf = 2.0;

/// Leverage this near to 1, or a residual sum of squares that falls below this share, and the
/// update is left for a fit.
constexpr double kTooNear = 1e-6;

struct Turn {
    double effect_log = 0.0, se_log = 0.0, df = 0.0;
};

/// The fit without pair i, by the update; nothing where that would lose digits.
std::optional<Turn> updated(const HeadlineFit& headline, std::size_t i)
{
    const LeastSquaresFit& fit = headline.fit;
    const double left = 1.0 - fit.leverage[i];
    if (left < kTooNear)
        return std::nullopt;
    const double rss = fit.rss - fit.residuals[i] * fit.residuals[i] / left;
    if (rss < kTooNear * fit.rss)
        return std::nullopt;
    const double v = fit.cov(kEffectColumn, kEffectColumn) + fit.weights[i] * fit.weights[i] / left;
    const double df = fit.df - 1.0;
    return Turn{fit.coefficients[kEffectColumn] - fit.weights[i] * fit.residuals[i] / left,
                std::sqrt(rss / df * v), df};
}

std::optional<Turn> refitted(const PreparedStudy& prepared, std::size_t i)
{
    std::vector<Observation> pairs = pairObservations(prepared);
    pairs.erase(pairs.begin() + static_cast<std::ptrdiff_t>(i));
    const Columns columns = effectColumns(pairs, prepared.day_closed);
    const LeastSquaresFit fit = leastSquares(columns, responses(pairs));
    const bool dependent =
        prepared.days == 1 && fit.rank < static_cast<int>(fit.coefficients.size());
    if (fit.df < kLeastDf || dependent || !fit.estimable[kEffectColumn] ||
        !(fit.s() >= kNoVariation))
        return std::nullopt;
    return Turn{fit.coefficients[kEffectColumn],
                fit.s() * std::sqrt(fit.cov(kEffectColumn, kEffectColumn)),
                static_cast<double>(fit.df)};
}

/// The headline's effect and class from one set of restored runs.
RestoredAll answerWith(const Study& study, const AnalysisOptions& options, bool control,
                       std::vector<std::size_t> restored)
{
    const PreparedStudy prepared =
        prepareStudy(study, options, {.restored = std::move(restored), .control = control});
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
    LeaveOneOut result;
    for (std::size_t i = 0; i < prepared.pairs.size(); ++i) {
        LeaveOneOutTurn turn;
        turn.pair = prepared.pairs[i].number;
        const int left = (prepared.pairs[i].device ? ofDevice : ofBaseline) - 1;
        std::optional<Turn> fit;
        if (left >= kFewestPairs && headline.headline.df - 1.0 >= kLeastDf) {
            fit = updated(headline, i);
            if (!fit)
                fit = refitted(prepared, i);
        }
        if (fit) {
            turn.effect_log = fit->effect_log;
            turn.cls = intervalOf(fit->effect_log, fit->se_log, fit->df, options).cls;
            result.min_effect_log =
                std::min(result.min_effect_log.value_or(fit->effect_log), fit->effect_log);
            result.max_effect_log =
                std::max(result.max_effect_log.value_or(fit->effect_log), fit->effect_log);
        }
        result.changes_class = result.changes_class || turn.cls != headline.cls;
        result.turns.push_back(turn);
    }
    return result;
}

DiscardsRestored discardsRestored(const Study& study, const PreparedStudy& prepared,
                                  const Headline* headline, const AnalysisOptions& options)
{
    DiscardsRestored result;
    std::vector<std::size_t> possible;
    std::vector<std::size_t> order;
    for (std::size_t index = 0; index < study.runs.size(); ++index)
        if (!study.runs[index].counted())
            order.push_back(index);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return study.runs[a].start.us < study.runs[b].start.us;
    });
    for (const std::size_t index : order) {
        const Run& run = study.runs[index];
        RestoredTurn turn;
        turn.run = run.number;
        turn.possible =
            positive(lPer100km(run)) && (!prepared.control || positive(controlLPer100km(run)));
        if (turn.possible) {
            possible.push_back(index);
            const RestoredAll alone = answerWith(study, options, prepared.control, {index});
            turn.effect_log = alone.effect_log;
            turn.cls = alone.cls;
        }
        if (headline && turn.effect_log) {
            // A run that finds no partner changes nothing: that much is exact.
            result.up += *turn.effect_log > headline->effect_log ? 1 : 0;
            result.down += *turn.effect_log < headline->effect_log ? 1 : 0;
        }
        result.each.push_back(turn);
    }
    if (!possible.empty()) {
        std::sort(possible.begin(), possible.end());
        result.all = answerWith(study, options, prepared.control, std::move(possible));
    }
    return result;
}

} // namespace bothways::core
