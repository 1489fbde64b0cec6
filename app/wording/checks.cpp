// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/sentences.h"

#include "app/wording/numbers.h"
#include "core/study/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

// Sentences of the checks. Each says what was looked at, what was found, and (where it fails) what
// that means for this study and what to do.
namespace bothways::app::english {
namespace {

using core::Analysis;
using core::CheckState;
using core::pctFromLog;

constexpr std::size_t kFewPairs = 6;
constexpr std::size_t kSomePairs = 12;

bool has(const core::Check& check)
{
    return check.state != CheckState::notComputed && check.p.has_value() &&
           check.statistic.has_value();
}

/// "(F = 1.4, p = 0.29)"
std::string numbers(const char* symbol, const core::Check& check)
{
    return fmt::format("({} = {}, {})", symbol, significant(*check.statistic, 3), pText(*check.p));
}

bool passes(CheckState state)
{
    return state == CheckState::holds;
}

std::string notComputed(const char* why)
{
    return fmt::format("Not computed: {}.", why);
}

/// How firmly a finding is put: "hints that" at p < 0.05, "shows that" at p < 0.01.
const char* strength(CheckState state)
{
    return state == CheckState::fails ? "" : "perhaps ";
}

} // namespace

std::string checksPowerSentence(const Analysis& analysis)
{
    const std::size_t n = analysis.pairs.size();
    if (!analysis.headline || n > kSomePairs)
        return {};
    if (n <= kFewPairs)
        return fmt::format("With {} pairs none of these checks has much power: passing them proves "
                           "little.",
                           n);
    return fmt::format("With {} pairs these checks see gross faults only.", n);
}

std::string normalSentence(const Analysis& analysis)
{
    const core::Check& check = analysis.checks.normal;
    if (!has(check))
        return notComputed("it takes a verdict and 3 to 5,000 pairs");
    if (passes(check.state))
        return fmt::format("The residuals look like ordinary scatter {}.",
                           numbers("Shapiro-Wilk W", check));
    return fmt::format(
        "The residuals are {}no ordinary scatter {}: the interval is rough. Look for "
        "a pair that stands apart, and lean on the dealt labels, which need no bell "
        "curve.",
        strength(check.state), numbers("Shapiro-Wilk W", check));
}

std::string outlierSentence(const Analysis& analysis)
{
    const core::OutlierCheck& check = analysis.checks.outlier;
    if (!has(check) || !check.pair)
        return notComputed("it takes a verdict and one degree of freedom to spare");
    std::string runs;
    for (const core::Pair& pair : analysis.pairs)
        if (pair.number == *check.pair)
            runs = fmt::format(" (runs {} and {})", pair.out_run, pair.return_run);
    const std::string where = fmt::format(
        "Pair {}{} lies farthest from the fit, {} times its expected scatter too {}", *check.pair,
        runs, significant(std::abs(*check.statistic)), *check.statistic < 0.0 ? "low" : "high");
    if (passes(check.state))
        return fmt::format("{}; among {} pairs that is ordinary ({}).", where,
                           analysis.pairs.size(), pText(*check.p));
    return fmt::format(
        "{}: {}too far for chance ({}). Read what was noted for its runs; discard one "
        "only for a reason that you would accept if the result went the other way.",
        where, strength(check.state), pText(*check.p));
}

std::string orderSentence(const Analysis& analysis)
{
    const core::OrderCheck& check = analysis.checks.order;
    if (!has(check) || !check.lag1)
        return notComputed("it takes a verdict and pairs in order of time");
    const std::string values =
        fmt::format("(Durbin-Watson {}, correlation with the next pair {}, {})",
                    fixed(*check.statistic, 2), fixed(*check.lag1, 2), pText(*check.p));
    if (passes(check.state))
        return fmt::format(
            "Successive pairs look independent {}. In short series this sees little: "
            "passing is no proof.",
            values);
    if (*check.lag1 > 0.0)
        return fmt::format("Successive pairs {}resemble each other {}: they say less than their "
                           "number, and the interval is too narrow. Go by 'correlated'.",
                           strength(check.state), values);
    return fmt::format("Pairs {}swing to and fro {}: something alternates from pair to pair. Look "
                       "at who drove, the traffic lights, the fuel meter's rounding.",
                       strength(check.state), values);
}

std::string curveSentence(const Analysis& analysis)
{
    const core::Check& check = analysis.checks.curve;
    if (!has(check))
        return notComputed("it takes a closed design and two degrees of freedom to spare");
    if (passes(check.state))
        return fmt::format("No bend in the drift is seen {}.", numbers("F", check));
    return fmt::format("The drift {}bends {}. A straight line does not remove that, so part of it "
                       "sits in the effect. Was everything warm before run 1? Drive more and "
                       "shorter blocks.",
                       strength(check.state), numbers("F", check));
}

std::string spreadSentence(const Analysis& analysis)
{
    const core::Check& check = analysis.checks.spread;
    if (!has(check))
        return notComputed("it takes 3 pairs in each configuration");
    if (passes(check.state))
        return fmt::format("{} and {} scatter alike {}.", inQuotes(analysis.baseline),
                           inQuotes(analysis.device), numbers("F", check));
    return fmt::format("{} and {} {}scatter unalike {}: one noise was taken for both, so the "
                       "interval may be too narrow or too wide. Find what was restless in one of "
                       "them: settings, a timer, the traffic.",
                       inQuotes(analysis.baseline), inQuotes(analysis.device),
                       strength(check.state), numbers("F", check));
}

std::string baselineSentence(const Analysis& analysis)
{
    const core::BaselineCheck& check = analysis.checks.baseline;
    if (!check.effect_log || !check.low_log || !check.high_log)
        return notComputed(
            "it takes two baseline blocks in one day, and a degree of freedom within "
            "blocks");
    const double low = pctFromLog(*check.low_log);
    const double high = pctFromLog(*check.high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    const std::string moved = fmt::format(
        "From the first {} block to the last the day itself moved: {} ({} interval: {})",
        inQuotes(analysis.baseline), change(pctFromLog(*check.effect_log), decimals),
        percentText(analysis.options.confidence), changeRange(low, high, decimals));
    if (passes(check.state))
        return moved + ", within the noise.";
    return moved + ". A straight drift is taken out of the effect, a bent one is not.";
}

std::string directionSentence(const Analysis& analysis)
{
    const core::DirectionCheck& check = analysis.checks.direction;
    if (!has(check) || !check.slope_per_h)
        return notComputed("it takes 3 pairs at different times");
    const double pct = pctFromLog(*check.slope_per_h);
    const std::string values = fmt::format(
        "({} an hour, {})", change(pct, decimalsFor(0.5 * std::abs(pct))), pText(*check.p));
    if (passes(check.state))
        return fmt::format("Out against return did not shift over time {}.", values);
    return fmt::format(
        "Out against return {}shifted over time {}: the wind turned or rose. Out and "
        "back cancels a steady wind only; compare 'bracket', and the wind noted.",
        strength(check.state), values);
}

std::string resolutionSentence(const Analysis& analysis)
{
    const core::ResolutionCheck& check = analysis.checks.resolution;
    if (check.state == CheckState::notComputed || !check.step_pct)
        return notComputed("it takes a verdict and readings in one unit");
    const std::string step = fmt::format("The last digit shown is worth {} % of a reading",
                                         significant(*check.step_pct));
    const std::string rounding = check.rounding_pct
                                     ? fmt::format("; rounding alone scatters a pair by {} %",
                                                   significant(*check.rounding_pct))
                                     : std::string();
    if (passes(check.state))
        return fmt::format("{}{}: fine enough for this noise.", step, rounding);
    return fmt::format(
        "{}{}: too coarse for a noise this small, which may be luck of the rounding. "
        "Note litres and distance, or drive a longer stretch.",
        step, rounding);
}

std::string airSentence(const Analysis& analysis)
{
    const core::AirCheck& check = analysis.checks.air;
    if (check.state == CheckState::notComputed || (!check.density_pct && !check.wind_pct))
        return notComputed("it takes temperature, pressure and humidity on paired runs of both "
                           "configurations");
    const auto worth = [](double pct) { return change(pct, decimalsFor(0.5 * std::abs(pct))); };
    std::string text = "By the air alone, " + inQuotes(analysis.device) + " would have used ";
    if (check.density_pct)
        text += worth(*check.density_pct) + " (density)";
    if (check.wind_pct)
        text +=
            fmt::format("{}{} (wind)", check.density_pct ? " and " : "", worth(*check.wind_pct));
    if (check.state == CheckState::fails)
        text += ": too much beside this interval. No correction is made; drive again in air that "
                "keeps still.";
    else
        text += ": little beside the interval. No correction is made.";
    if (check.outside_range)
        text += " The density formula is used outside its range, so take it as approximate.";
    return text;
}

std::string stateWords(CheckState state)
{
    switch (state) {
    case CheckState::holds: return "holds";
    case CheckState::note: return "note";
    case CheckState::fails: return "not met";
    case CheckState::notComputed: return "not computed";
    }
    return {};
}

std::vector<CheckWords> checkWords(const Analysis& analysis)
{
    const core::Checks& c = analysis.checks;
    return {{"normal", c.normal.state, normalSentence(analysis)},
            {"outlier", c.outlier.state, outlierSentence(analysis)},
            {"order", c.order.state, orderSentence(analysis)},
            {"curve", c.curve.state, curveSentence(analysis)},
            {"spread", c.spread.state, spreadSentence(analysis)},
            {"baseline", c.baseline.state, baselineSentence(analysis)},
            {"direction", c.direction.state, directionSentence(analysis)},
            {"resolution", c.resolution.state, resolutionSentence(analysis)},
            {"air", c.air.state, airSentence(analysis)}};
}

} // namespace bothways::app::english
