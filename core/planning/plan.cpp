// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/plan.h"

#include "core/base/decimal_text.h"
#include "core/statistics/any_look.h"
#include "core/statistics/distributions.h"
#include "core/study/limits.h"
#include "core/study/units.h"

#include <boost/math/tools/toms748_solve.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace bothways::core {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr int kLeastDf = 2;         // fewer give no verdict
constexpr double kUpperShare = 0.2; ///< chi-square's share below the upper 80 % limit of s

/// Power at a non-centrality `ncp` >= 0.
double powerAt(double ncp, double tCritical, double df)
{
    return 1.0 - nonCentralTCdf(tCritical, df, ncp) + nonCentralTCdf(-tCritical, df, ncp);
}

Error wrongPlan(Message why)
{
    return Error{ErrorCode::wrongUse, std::move(why), {}};
}

std::optional<Error> faultIn(const PlanOptions& options)
{
    const bool lettersOnly =
        std::all_of(options.sequence.begin(), options.sequence.end(),
                    [](char letter) { return isA(letter) || isB(letter) || letter == '/'; });
    const auto has = [&](bool (*test)(char)) {
        return std::any_of(options.sequence.begin(), options.sequence.end(), test);
    };
    if (!lettersOnly || !has(isA) || !has(isB))
        return wrongPlan(message("the sequence '{}' should be letters A and B, with both in it, "
                                 "like ABA or ABBA"_t,
                                 options.sequence));
    constexpr std::size_t kLongest = 1000;
    if (options.sequence.size() > kLongest)
        return wrongPlan(message("the sequence has {} letters; at most {} are permitted"_t,
                                 options.sequence.size(), kLongest));
    if (options.pairs_per_block < 1 || options.pairs_per_block > kMostPairsPerBlock)
        return wrongPlan(message("{} pairs a block; 1 to {} are permitted"_t,
                                 options.pairs_per_block, kMostPairsPerBlock));
    const auto outside = [](double value, double above, double most) {
        return !(value > above && value <= most);
    };
    if (outside(options.pair_min, 0.0, 1e5))
        return wrongPlan(message("{} minutes a pair; more than 0 is needed, at most 100000"_t,
                                 decimalText(options.pair_min)));
    if (!(options.switch_min >= 0.0 && options.switch_min <= 1e5))
        return wrongPlan(message("{} minutes a switch; 0 to 100000 are permitted"_t,
                                 decimalText(options.switch_min)));
    if (outside(options.stretch_km, 0.0, 1e5))
        return wrongPlan(message("a stretch of {} km; more than 0 is needed, at most 100000"_t,
                                 decimalText(options.stretch_km)));
    if (outside(options.s, 0.0, 1.0))
        return wrongPlan(message("a noise of {} %; more than 0 is needed, at most 100"_t,
                                 decimalText(100.0 * options.s)));
    if (options.s_df && outside(*options.s_df, 0.0, kInfinity))
        return wrongPlan(message("{} degrees of freedom behind the noise; more than 0 is needed"_t,
                                 decimalText(*options.s_df)));
    if (!(options.confidence > 0.5 && options.confidence <= kHighestConfidence))
        return wrongPlan(message("a confidence of {}; more than 0.5 and at most {} is needed"_t,
                                 decimalText(options.confidence), decimalText(kHighestConfidence)));
    if (!(options.power > 1.0 - options.confidence && options.power < 1.0))
        return wrongPlan(message("a power of {}; more than {} and less than 1 is needed"_t,
                                 decimalText(options.power),
                                 decimalText(1.0 - options.confidence)));
    return std::nullopt;
}

/// The information about the effect that one pair a letter would give without any drift: an upper
/// bound for that of k pairs a letter is k times as much.
double informationAtMost(std::string_view sequence)
{
    double information = 0.0;
    while (!sequence.empty()) {
        const std::string_view letters = sequence.substr(0, sequence.find('/'));
        sequence.remove_prefix(std::min(sequence.size(), letters.size() + 1));
        const auto device = static_cast<double>(std::count_if(letters.begin(), letters.end(), isB));
        const auto all = static_cast<double>(letters.size());
        if (!letters.empty())
            information += device * (all - device) / all;
    }
    return information;
}

/// The fewest pairs a block, `from` to 1,000: the first that suffices.
///
/// The t test has less power than the z test at the same non-centrality (both are unbiased, and the
/// z test is the most powerful of those when s is known), so a number of pairs too small for z
/// needs no look at the non-central t; few are left. Nor can a number suffice with which even a
/// day without drift would tell too little: the search begins behind those.
std::optional<int> fewestPairs(std::string_view sequence, double pair_min, double switch_min,
                               double s, double effect_log, double confidence, double power,
                               int from = 1)
{
    constexpr double kDfOfNormal = 1e15;
    const double leastNcp = detectableEffect_log(1.0, 1.0, kDfOfNormal, confidence, power);
    const auto suffices = [&](int k) {
        const PlannedDesign design = plannedDesign(sequence, k, pair_min, switch_min);
        constexpr double kRounding = 1.0 - 1e-9;
        return design.df >= kLeastDf && effect_log >= kRounding * leastNcp * s * design.sqrt_v &&
               powerToSee(effect_log, s, design.sqrt_v, design.df, confidence) >= power;
    };
    const double sqrtVNeeded = effect_log / (leastNcp * s);
    const double hopeless =
        std::floor((1.0 - 1e-6) / (informationAtMost(sequence) * sqrtVNeeded * sqrtVNeeded));
    for (int k = hopeless < kMostPairsPerBlock ? std::max(from, static_cast<int>(hopeless))
                                               : kMostPairsPerBlock + 1;
         k <= kMostPairsPerBlock; ++k)
        if (suffices(k))
            return k;
    return std::nullopt;
}

/// ABBA is short on the road, and pays for it here: its device blocks lie where a bend would.
void addOtherHalfWidths(Plan& plan)
{
    const PlanOptions& options = plan.options;
    const auto bent = curvedDesign(options.sequence, options.pairs_per_block, options.pair_min,
                                   options.switch_min);
    if (bent && bent->df >= kLeastDf && std::isfinite(bent->sqrt_v))
        plan.curved_half_width_log =
            tQuantile(0.5 + options.confidence / 2.0, bent->df) * bent->sqrt_v * options.s;
    const PlannedDesign sloped = slopedDesign(options.sequence, options.pairs_per_block,
                                              options.pair_min, options.switch_min);
    if (const auto times =
            anyLookHalfWidth(sloped.sqrt_v * sloped.sqrt_v, sloped.df, 1.0 - options.confidence))
        plan.any_look_half_width_log = *times * sloped.sqrt_v * options.s;
    if (options.s_df)
        plan.borrowed_half_width_log =
            tQuantile(0.5 + options.confidence / 2.0, plan.df + *options.s_df) * plan.sqrt_v *
            options.s;
}

} // namespace

double powerToSee(double effect_log, double s, double sqrt_v, double df, double confidence)
{
    if (!(df > 0.0) || !std::isfinite(s * sqrt_v))
        return 0.0;
    const double ncp = std::abs(effect_log) / (s * sqrt_v);
    const double power = powerAt(ncp, tQuantile(0.5 + confidence / 2.0, df), df);
    return std::isnan(power) ? 0.0 : std::clamp(power, 0.0, 1.0);
}

double detectableEffect_log(double s, double sqrt_v, double df, double confidence, double power)
{
    if (!(df > 0.0) || !std::isfinite(s * sqrt_v))
        return kInfinity;
    const double tCritical = tQuantile(0.5 + confidence / 2.0, df);
    const auto missing = [&](double ncp) { return powerAt(ncp, tCritical, df) - power; };
    if (missing(0.0) >= 0.0)
        return 0.0;
    double low = 0.0, high = tCritical + normalQuantile(power) + 1.0;
    constexpr int kMostDoublings = 60;
    for (int i = 0; missing(high) < 0.0 && i < kMostDoublings; ++i) {
        low = high;
        high *= 2.0;
    }
    const auto closeEnough = [](double a, double b) { return std::abs(a - b) <= 1e-13 * b; };
    std::uintmax_t steps = 200;
    const auto [a, b] = boost::math::tools::toms748_solve(missing, low, high, closeEnough, steps);
    return (a + b) / 2.0 * s * sqrt_v;
}

Result<Plan> makePlan(const PlanOptions& options)
{
    if (auto fault = faultIn(options))
        return *std::move(fault);
    const PlannedDesign design = plannedDesign(options.sequence, options.pairs_per_block,
                                               options.pair_min, options.switch_min);
    if (design.df < kLeastDf || !std::isfinite(design.sqrt_v))
        return wrongPlan(message("{} with {} leaves {} degrees of freedom; at least {} are needed, "
                                 "so more pairs"_t,
                                 options.sequence,
                                 options.pairs_per_block == 1
                                     ? message("1 pair a block"_t)
                                     : message("{} pairs a block"_t, options.pairs_per_block),
                                 std::max(design.df, 0), kLeastDf));
    Plan plan;
    plan.options = options;
    plan.sequence = options.sequence;
    plan.pairs_per_block = options.pairs_per_block;
    plan.pairs = design.pairs;
    plan.df = design.df;
    plan.sqrt_v = design.sqrt_v;
    const double halfOfS = tQuantile(0.5 + options.confidence / 2.0, plan.df) * plan.sqrt_v;
    plan.half_width_log = halfOfS * options.s;
    addOtherHalfWidths(plan);
    const double detectableOfS =
        detectableEffect_log(1.0, plan.sqrt_v, plan.df, options.confidence, options.power);
    plan.detectable_log = detectableOfS * options.s;
    plan.road_hours = design.road_hours;
    plan.distance_km = 2.0 * options.stretch_km * plan.pairs;
    if (options.s_df) {
        const double upper =
            options.s * std::sqrt(*options.s_df / chiSquareQuantile(kUpperShare, *options.s_df));
        plan.s_upper80 = upper;
        plan.half_width_upper80_log = halfOfS * upper;
        plan.detectable_upper80_log = detectableOfS * upper;
    }
    return plan;
}

Result<Plan> planFor(double want_log, PlanOptions options)
{
    options.pairs_per_block = 1;
    if (auto fault = faultIn(options))
        return *std::move(fault);
    if (!(want_log > 0.0) || !std::isfinite(want_log))
        return wrongPlan("the wanted effect should be more than 0 %"_t);
    const auto k = fewestPairs(options.sequence, options.pair_min, options.switch_min, options.s,
                               want_log, options.confidence, options.power);
    if (!k)
        return wrongPlan(message("{} with {} pairs a block would still not detect {} %: want "
                                 "less, or find less noise"_t,
                                 options.sequence, kMostPairsPerBlock,
                                 decimalText(fmt::format("{:.3g}", pctFromLog(want_log)))));
    options.pairs_per_block = *k;
    return makePlan(options);
}

std::optional<int> pairsPerBlockToDetect(std::string_view sequence, double s, double margin_log,
                                         double confidence, int from)
{
    const PlanOptions usual;
    return fewestPairs(sequence, usual.pair_min, usual.switch_min, s, margin_log, confidence,
                       usual.power, from);
}

Noise pooledNoise(std::span<const Noise> studies)
{
    double squares = 0.0, df = 0.0;
    for (const Noise& study : studies) {
        squares += study.df * study.s * study.s;
        df += study.df;
    }
    return df > 0.0 ? Noise{std::sqrt(squares / df), df} : Noise{};
}

} // namespace bothways::core
