// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answer/pooled.h"

#include <boost/math/distributions/students_t.hpp>

#include <algorithm>
#include <cmath>

namespace bothways::core {
namespace {

using StudentsT = boost::math::students_t_distribution<
    double, boost::math::policies::policy<boost::math::policies::promote_double<false>>>;

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

} // namespace

std::optional<Pooled> pool(std::span<const StudyEffect> studies, double confidence)
{
    if (studies.size() < 2 || !std::all_of(studies.begin(), studies.end(), usable))
        return std::nullopt;
    Pooled pooled;
    pooled.df = static_cast<double>(studies.size() - 1);

    // DerSimonian and Laird's moment estimate of the variance between studies.
    const Weighted common = weigh(studies, 0.0);
    pooled.q = common.scatter;
    const double between2 =
        std::max(0.0, (pooled.q - pooled.df) / (common.sum - common.sumOfSquares / common.sum));
    pooled.tau = std::sqrt(between2);
    pooled.i2 = pooled.q > 0.0 ? std::max(0.0, (pooled.q - pooled.df) / pooled.q) : 0.0;

    // Hartung and Knapp's variance, never below the plain one.
    const Weighted random = weigh(studies, between2);
    const double se = std::sqrt(std::max(1.0, random.scatter / pooled.df) / random.sum);
    if (!std::isfinite(random.mean) || !std::isfinite(se) || !(se > 0.0))
        return std::nullopt;
    const StudentsT t(pooled.df);
    const double halfWidth =
        boost::math::quantile(boost::math::complement(t, (1.0 - confidence) / 2.0)) * se;
    pooled.effect_log = random.mean;
    pooled.low_log = random.mean - halfWidth;
    pooled.high_log = random.mean + halfWidth;
    pooled.p = 2.0 * boost::math::cdf(boost::math::complement(t, std::abs(random.mean) / se));
    return pooled;
}

} // namespace bothways::core
