// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answer/pooled.h"

#include "core/effect/verdict.h"
#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace bothways::core {
namespace {

struct Weighted {
    double sum = 0.0, sumOfSquares = 0.0;
    double mean = 0.0;
    double scatter = 0.0; ///< weighted sum of squared deviations from the mean
};

/// Weights 1/(se^2 + between^2).
Weighted weigh(std::span<const StudyEffect> studies, double between2)
{
    Weighted result;
    for (const StudyEffect& study : studies) {
        const double weight = 1.0 / (study.se_log * study.se_log + between2);
        result.sum += weight;
        result.sumOfSquares += weight * weight;
        result.mean += weight * study.effect_log;
    }
    result.mean /= result.sum;
    for (const StudyEffect& study : studies) {
        const double deviation = study.effect_log - result.mean;
        result.scatter += deviation * deviation / (study.se_log * study.se_log + between2);
    }
    return result;
}

bool usable(const StudyEffect& study)
{
    return std::isfinite(study.effect_log) && std::isfinite(study.se_log) && study.se_log > 0.0;
}

/// DerSimonian and Laird's moment estimate of the variance between studies, from weights 1/se^2.
double betweenOf(const Weighted& common, double df)
{
    return std::max(0.0, (common.scatter - df) / (common.sum - common.sumOfSquares / common.sum));
}

/// Half-width of the random-effects interval: t se + beyond.
struct Spread {
    double se = 0.0, beyond = 0.0;
};

constexpr double kSteadyDf = 8.0;
constexpr double kShareOfDistance = 0.6;
constexpr double kLeastFactor = 0.1; ///< so that studies alike to the last digit have a width

/// Where the noise of each study is known: weights that chance enters less, each study's noise
/// drawn towards that of all of them as if kSteadyDf degrees of freedom more had said so.
Spread steadySpreadOf(std::span<const StudyEffect> studies, double mean)
{
    double squares = 0.0, df = 0.0;
    for (const StudyEffect& study : studies) {
        squares += study.df * study.s * study.s;
        df += study.df;
    }
    std::vector<StudyEffect> steady(studies.begin(), studies.end());
    for (StudyEffect& study : steady) {
        const double noise2 =
            (study.df * study.s * study.s + kSteadyDf * squares / df) / (study.df + kSteadyDf);
        study.se_log *= std::sqrt(noise2) / study.s;
    }
    const double more = static_cast<double>(studies.size()) - 1.0;
    const Weighted random = weigh(steady, betweenOf(weigh(steady, 0.0), more));
    return {std::sqrt(std::max(kLeastFactor, random.scatter / more) / random.sum),
            kShareOfDistance * std::abs(random.mean - mean)};
}

/// With two studies, or where only standard errors are known: Hartung and Knapp's variance, never
/// below the plain one.
Spread spreadOf(std::span<const StudyEffect> studies, const Weighted& random, double df)
{
    const bool known = std::ranges::all_of(
        studies, [](const StudyEffect& study) { return study.s > 0.0 && study.df > 0.0; });
    if (known && studies.size() > 2)
        return steadySpreadOf(studies, random.mean);
    return {std::sqrt(std::max(1.0, random.scatter / df) / random.sum), 0.0};
}

std::optional<CommonEffect> commonEffectOf(std::span<const StudyEffect> studies, double confidence)
{
    double sum = 0.0;
    for (const StudyEffect& study : studies) {
        if (!(study.s > 0.0) || !(study.df > 0.0))
            return std::nullopt;
        sum += study.s * study.s / (study.se_log * study.se_log);
    }
    CommonEffect common;
    double variance = 0.0, fourth = 0.0;
    for (const StudyEffect& study : studies) {
        const double share = study.s * study.s / (study.se_log * study.se_log) / sum;
        const double part = share * share * study.se_log * study.se_log;
        common.effect_log += share * study.effect_log;
        variance += part;
        fourth += part * part / study.df;
    }
    common.df = variance * variance / fourth;
    if (!std::isfinite(common.effect_log) || !(common.df > 0.0))
        return std::nullopt;
    const double se = std::sqrt(variance);
    const double half = tQuantile(0.5 + confidence / 2.0, common.df) * se;
    common.low_log = common.effect_log - half;
    common.high_log = common.effect_log + half;
    common.p = tTwoSided(common.effect_log / se, common.df);
    return common;
}

Agreement agreementOf(std::span<const StudyEffect> studies)
{
    const auto k = static_cast<double>(studies.size());
    const Weighted w = weigh(studies, 0.0);
    double l = 0.0;
    for (const StudyEffect& study : studies) {
        const double rest = 1.0 - 1.0 / (study.se_log * study.se_log * w.sum);
        l += rest * rest / study.df;
    }
    Agreement agreement;
    agreement.statistic = w.scatter / (k - 1.0) / (1.0 + 2.0 * (k - 2.0) * l / (k * k - 1.0));
    agreement.df1 = k - 1.0;
    agreement.df2 = (k * k - 1.0) / (3.0 * l);
    agreement.p = fUpper(agreement.statistic, agreement.df1, agreement.df2);
    if (!std::isfinite(agreement.p))
        return {};
    agreement.state = checkStateOf(agreement.p);
    return agreement;
}

} // namespace

StudyEffect studyEffectOf(std::string name, const Headline& headline)
{
    return {std::move(name), headline.effect_log, headline.se_log, headline.df, headline.s};
}

EffectRange rangeOf(const StudyEffect& study, double confidence)
{
    const double half = tQuantile(0.5 + confidence / 2.0, study.df) * study.se_log;
    return {study.effect_log - half, study.effect_log + half};
}

std::optional<Pooled> pool(std::span<const StudyEffect> studies, double confidence)
{
    if (studies.size() < 2 || !std::all_of(studies.begin(), studies.end(), usable))
        return std::nullopt;
    Pooled pooled;
    pooled.df = static_cast<double>(studies.size() - 1);

    // DerSimonian and Laird's moment estimate of the variance between studies.
    const Weighted common = weigh(studies, 0.0);
    pooled.q = common.scatter;
    const double between2 = betweenOf(common, pooled.df);
    pooled.tau = std::sqrt(between2);
    pooled.i2 = pooled.q > 0.0 ? std::max(0.0, (pooled.q - pooled.df) / pooled.q) : 0.0;

    const Weighted random = weigh(studies, between2);
    const Spread spread = spreadOf(studies, random, pooled.df);
    const double halfWidth =
        tQuantile(0.5 + confidence / 2.0, pooled.df) * spread.se + spread.beyond;
    if (!std::isfinite(random.mean) || !std::isfinite(halfWidth) || !(spread.se > 0.0))
        return std::nullopt;
    pooled.effect_log = random.mean;
    pooled.low_log = random.mean - halfWidth;
    pooled.high_log = random.mean + halfWidth;
    pooled.p =
        tTwoSided(std::max(0.0, std::abs(random.mean) - spread.beyond) / spread.se, pooled.df);
    pooled.common = commonEffectOf(studies, confidence);
    pooled.agreement = agreementOf(studies);
    return pooled;
}

bool commonLeads(const Pooled& pooled)
{
    constexpr double kFewStudies = 4.0;
    return pooled.common && pooled.df + 1.0 <= kFewStudies &&
           pooled.agreement.state != CheckState::fails;
}

VerdictClass classOfPooled(const Pooled& pooled, double confidence, double margin_pct)
{
    if (!commonLeads(pooled))
        return classOf(pooled.low_log, pooled.high_log, pooled.low_log, pooled.high_log,
                       margin_pct);
    const CommonEffect& common = *pooled.common;
    const double se =
        0.5 * (common.high_log - common.low_log) / tQuantile(0.5 + confidence / 2.0, common.df);
    const double inner = equivalenceHalfWidth(se, common.df, confidence);
    return classOf(common.low_log, common.high_log, common.effect_log - inner,
                   common.effect_log + inner, margin_pct);
}

} // namespace bothways::core
