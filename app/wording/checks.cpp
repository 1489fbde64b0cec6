// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/checks.h"

#include "app/wording/numbers.h"
#include "app/wording/verdict.h"
#include "core/study/units.h"

#include <algorithm>
#include <cmath>

// Sentences of the checks. Each says what was looked at, what was found, and (where it fails) what
// that means for this study and what to do. "Perhaps" stands where p is only below 0.05.
namespace bothways::app::wording {
namespace {

using core::Analysis;
using core::CheckState;

constexpr std::size_t kFewPairs = 6;
constexpr std::size_t kSomePairs = 12;

bool has(const core::Check& check)
{
    return check.state != CheckState::notComputed && check.p.has_value() &&
           check.statistic.has_value();
}

/// "(F = 1.4, p = 0.29)"
std::string statistics(const Language& in, const char* symbol, const core::Check& check)
{
    return in.say("({} = {}, {})"_t, symbol, significant(in, *check.statistic, 3),
                  pText(in, *check.p));
}

/// The sentence for a check that holds, is noted, fails.
template <int Places, class... Values>
std::string byState(const Language& in, CheckState state, core::Text<Places> holds,
                    core::Text<Places> perhaps, core::Text<Places> fails, const Values&... values)
{
    return in.say(state == CheckState::holds   ? holds
                  : state == CheckState::fails ? fails
                                               : perhaps,
                  values...);
}

} // namespace

CheckState stateOf(const core::Checks& checks, CheckKind kind)
{
    switch (kind) {
    case CheckKind::normal: return checks.normal.state;
    case CheckKind::outlier: return checks.outlier.state;
    case CheckKind::order: return checks.order.state;
    case CheckKind::curve: return checks.curve.state;
    case CheckKind::spread: return checks.spread.state;
    case CheckKind::baseline: return checks.baseline.state;
    case CheckKind::direction: return checks.direction.state;
    case CheckKind::ways: return checks.ways.state;
    case CheckKind::settling: return checks.settling.state;
    case CheckKind::days: return checks.days.state;
    case CheckKind::resolution: return checks.resolution.state;
    case CheckKind::air: return checks.air.state;
    }
    return CheckState::notComputed;
}

std::string checksPowerSentence(const Language& in, const Analysis& analysis)
{
    const std::size_t n = analysis.pairs.size();
    if (!analysis.headline || n > kSomePairs)
        return {};
    if (n <= kFewPairs)
        return in.say("With {} pairs none of these checks has much power: passing them proves "
                      "little."_t,
                      n);
    return in.say("With {} pairs these checks see gross faults only."_t, n);
}

std::string normalSentence(const Language& in, const Analysis& analysis)
{
    const core::Check& check = analysis.checks.normal;
    if (!has(check))
        return in.say(
            "Not computed: it takes 4 degrees of freedom, for with fewer it could not fail, "
            "and at most 5,000 pairs."_t);
    return byState(in, check.state, "The residuals look like ordinary scatter {}."_t,
                   "The residuals are perhaps no ordinary scatter {}: the interval is rough. Look "
                   "for a pair that stands apart, and lean on the dealt labels, which need no bell "
                   "curve."_t,
                   "The residuals are no ordinary scatter {}: the interval is rough. Look for a "
                   "pair that stands apart, and lean on the dealt labels, which need no bell "
                   "curve."_t,
                   statistics(in, "Shapiro-Wilk W", check));
}

std::string outlierSentence(const Language& in, const Analysis& analysis)
{
    const core::OutlierCheck& check = analysis.checks.outlier;
    if (!has(check) || !check.pair)
        return in.say("Not computed: it takes a verdict and one degree of freedom to spare."_t);
    std::string runs;
    for (const core::Pair& pair : analysis.pairs)
        if (pair.number == *check.pair)
            runs = in.say(" (runs {} and {})"_t, pair.out_run, pair.return_run);
    const std::string where =
        in.say(*check.statistic < 0.0 ? "Pair {}{} lies farthest from the fit, {} times its "
                                        "expected scatter too low"_t
                                      : "Pair {}{} lies farthest from the fit, {} times its "
                                        "expected scatter too high"_t,
               *check.pair, runs, significant(in, std::abs(*check.statistic)));
    if (check.state == CheckState::holds)
        return in.say("{}; among {} pairs that is ordinary ({})."_t, where, analysis.pairs.size(),
                      pText(in, *check.p));
    return in.say(check.state == CheckState::fails
                      ? "{}: too far for chance ({}). Read what was noted for its runs; discard "
                        "one only for a reason that you would accept if the result went the other "
                        "way."_t
                      : "{}: perhaps too far for chance ({}). Read what was noted for its runs; "
                        "discard one only for a reason that you would accept if the result went "
                        "the other way."_t,
                  where, pText(in, *check.p));
}

std::string orderSentence(const Language& in, const Analysis& analysis)
{
    const core::OrderCheck& check = analysis.checks.order;
    if (!has(check) || !check.lag1)
        return in.say("Not computed: it takes a verdict and pairs in order of time."_t);
    const std::string values =
        in.say("(Durbin-Watson {}, correlation with the next pair {}, {})"_t,
               fixed(in, *check.statistic, 2), fixed(in, *check.lag1, 2), pText(in, *check.p));
    const bool fails = check.state == CheckState::fails;
    if (check.state == CheckState::holds)
        return in.say("Successive pairs look independent {}. In short series this sees little: "
                      "passing is no proof."_t,
                      values);
    if (*check.lag1 > 0.0)
        return in.say(fails ? "Successive pairs resemble each other {}: they say less than their "
                              "number, and the interval is too narrow. Go by 'correlated'."_t
                            : "Successive pairs perhaps resemble each other {}: they say less than "
                              "their number, and the interval is too narrow. Go by 'correlated'."_t,
                      values);
    return in.say(fails ? "Pairs swing to and fro {}: something alternates from pair to pair. Look "
                          "at who drove, the traffic lights, the fuel meter's rounding."_t
                        : "Pairs perhaps swing to and fro {}: something alternates from pair to "
                          "pair. Look at who drove, the traffic lights, the fuel meter's "
                          "rounding."_t,
                  values);
}

std::string curveSentence(const Language& in, const Analysis& analysis)
{
    const core::Check& check = analysis.checks.curve;
    if (!has(check))
        return in.say("Not computed: it takes a closed design and two degrees of freedom to "
                      "spare."_t);
    return byState(in, check.state, "No bend in the drift is seen {}."_t,
                   "The drift perhaps bends {}. A straight line does not remove that, so part of "
                   "it sits in the effect. Was everything warm before run 1? Drive more and "
                   "shorter blocks."_t,
                   "The drift bends {}. A straight line does not remove that, so part of it sits "
                   "in the effect. Was everything warm before run 1? Drive more and shorter "
                   "blocks."_t,
                   statistics(in, "F", check));
}

std::string spreadSentence(const Language& in, const Analysis& analysis)
{
    const core::Check& check = analysis.checks.spread;
    if (!has(check))
        return in.say(
            "Not computed: it takes two degrees of freedom in each configuration alone."_t);
    return byState(in, check.state, "{} and {} scatter alike {}."_t,
                   "{} and {} perhaps scatter unalike {}: one noise was taken for both, so the "
                   "interval may be too narrow or too wide. Find what was restless in one of them: "
                   "settings, a timer, the traffic; a single pair far out looks the same."_t,
                   "{} and {} scatter unalike {}: one noise was taken for both, so the interval "
                   "may be too narrow or too wide. Find what was restless in one of them: "
                   "settings, a timer, the traffic; a single pair far out looks the same."_t,
                   baselineWords(in, analysis), deviceWords(in, analysis),
                   statistics(in, "F", check));
}

std::string baselineSentence(const Language& in, const Analysis& analysis)
{
    const core::BaselineCheck& check = analysis.checks.baseline;
    if (!check.effect_log || !check.low_log || !check.high_log)
        return in.say("Not computed: it takes two baseline blocks in one day, and a degree of "
                      "freedom within blocks."_t);
    const double low = core::pctFromLog(*check.low_log);
    const double high = core::pctFromLog(*check.high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    return in.say(
        check.state == CheckState::holds
            ? "From the first {} block to the last the day itself moved: {} ({} "
              "interval: {}), within the noise."_t
            : "From the first {} block to the last the day itself moved: {} ({} "
              "interval: {}). A straight drift is taken out of the effect, a bent one is "
              "not."_t,
        baselineWords(in, analysis), change(in, core::pctFromLog(*check.effect_log), decimals),
        intervalPercent(in, analysis.options.confidence), changeRange(in, low, high, decimals));
}

std::string directionSentence(const Language& in, const Analysis& analysis)
{
    const core::DirectionCheck& check = analysis.checks.direction;
    if (!has(check) || !check.slope_per_h)
        return in.say(
            "Not computed: it takes pairs at different times, and two degrees of freedom to "
            "spare."_t);
    const double pct = core::pctFromLog(*check.slope_per_h);
    return byState(in, check.state,
                   "Out against return did not shift over time ({} an hour, {})."_t,
                   "Out against return perhaps shifted over time ({} an hour, {}): the wind turned "
                   "or rose. Out and back cancels a steady wind only; compare 'bracket', and the "
                   "wind noted."_t,
                   "Out against return shifted over time ({} an hour, {}): the wind turned or "
                   "rose. Out and back cancels a steady wind only; compare 'bracket', and the wind "
                   "noted."_t,
                   change(in, pct, decimalsFor(0.5 * std::abs(pct))), pText(in, *check.p));
}

std::string waysSentence(const Language& in, const Analysis& analysis)
{
    const core::WaysCheck& check = analysis.checks.ways;
    if (!has(check) || !check.effect_log)
        return in.say("Not computed: it takes two degrees of freedom to spare."_t);
    const double pct = core::pctFromLog(*check.effect_log);
    return byState(in, check.state,
                   "Out against return the effect is the same within the noise (apart by {} %, "
                   "{})."_t,
                   "The device perhaps works differently out and back (apart by {} %, {}): the "
                   "answer is the mean of the two ways. A wind that stays or a slope may favour it "
                   "one way; look at the two directions apart."_t,
                   "The device works differently out and back (apart by {} %, {}): the answer is "
                   "the mean of the two ways. A wind that stays or a slope may favour it one way; "
                   "look at the two directions apart."_t,
                   fixed(in, std::abs(pct), decimalsFor(0.5 * std::abs(pct))), pText(in, *check.p));
}

std::string settlingSentence(const Language& in, const Analysis& analysis)
{
    const core::SettlingCheck& check = analysis.checks.settling;
    if (!has(check) || !check.effect_log)
        return in.say("Not computed: it takes blocks of two pairs or more, and two degrees of "
                      "freedom to spare."_t);
    const double pct = core::pctFromLog(*check.effect_log);
    return byState(in, check.state, "The first pair of a block is like the others ({}, {})."_t,
                   "The first pair of each block perhaps differs from the others ({}, {}): during "
                   "a stop engine, tyres and axle cool. Drive one pair that does not count after "
                   "each stop."_t,
                   "The first pair of each block differs from the others ({}, {}): during a stop "
                   "engine, tyres and axle cool. Drive one pair that does not count after each "
                   "stop."_t,
                   change(in, pct, decimalsFor(0.5 * std::abs(pct))), pText(in, *check.p));
}

std::string daysCheckSentence(const Language& in, const Analysis& analysis)
{
    const core::DaysCheck& check = analysis.checks.days;
    if (!has(check))
        return in.say("Not computed: it takes two days that can each tell the effect."_t);
    return byState(in, check.state, "The days agree on the effect {}."_t,
                   "The days perhaps do not agree on the effect {}: one number for all of them "
                   "then hides something. Read each day for itself, and find what was different."_t,
                   "The days do not agree on the effect {}: one number for all of them hides "
                   "that. Read each day for itself, and find what was different."_t,
                   statistics(in, "F", check));
}

std::string resolutionSentence(const Language& in, const Analysis& analysis)
{
    const core::ResolutionCheck& check = analysis.checks.resolution;
    if (check.state == CheckState::notComputed || !check.step_pct)
        return in.say("Not computed: it takes a verdict and readings in one unit."_t);
    const std::string rounding = check.rounding_pct
                                     ? in.say("; rounding alone scatters a pair by {} %"_t,
                                              significant(in, *check.rounding_pct))
                                     : std::string();
    return byState(in, check.state,
                   "The last digit shown is worth {} % of a reading{}: fine enough for this "
                   "noise."_t,
                   "The last digit shown is worth {} % of a reading{}: too coarse for a noise "
                   "this small, which may be luck of the rounding. Note litres and distance, "
                   "or drive a longer stretch."_t,
                   "The last digit shown is worth {} % of a reading{}: far too coarse for a noise "
                   "this small, so the interval is too narrow. Note litres and distance, or drive "
                   "a longer stretch."_t,
                   significant(in, *check.step_pct), rounding);
}

std::string airSentence(const Language& in, const Analysis& analysis)
{
    const core::AirCheck& check = analysis.checks.air;
    if (check.state == CheckState::notComputed || (!check.density_pct && !check.wind_pct))
        return in.say("Not computed: it takes temperature, pressure and humidity on paired runs of "
                      "both configurations."_t);
    const auto worth = [&](double pct) {
        return change(in, pct, decimalsFor(0.5 * std::abs(pct)));
    };
    const std::string density =
        check.density_pct ? in.say("{} (density)"_t, worth(*check.density_pct)) : std::string();
    const std::string wind =
        check.wind_pct ? in.say("{} (wind)"_t, worth(*check.wind_pct)) : std::string();
    const std::string both = !check.wind_pct      ? density
                             : !check.density_pct ? wind
                                                  : in.say("{} and {}"_t, density, wind);
    std::string text =
        in.say(check.state == CheckState::fails
                   ? "By the air alone, {} would have used {}: too much beside this interval. No "
                     "correction is made; drive again in air that keeps still."_t
                   : "By the air alone, {} would have used {}: little beside the interval. No "
                     "correction is made."_t,
               deviceWords(in, analysis), both);
    if (check.outside_range)
        text += in.say(" The density formula is used outside its range, so take it as "
                       "approximate."_t);
    return text;
}

std::string checkSentence(const Language& in, CheckKind kind, const Analysis& analysis)
{
    switch (kind) {
    case CheckKind::normal: return normalSentence(in, analysis);
    case CheckKind::outlier: return outlierSentence(in, analysis);
    case CheckKind::order: return orderSentence(in, analysis);
    case CheckKind::curve: return curveSentence(in, analysis);
    case CheckKind::spread: return spreadSentence(in, analysis);
    case CheckKind::baseline: return baselineSentence(in, analysis);
    case CheckKind::direction: return directionSentence(in, analysis);
    case CheckKind::ways: return waysSentence(in, analysis);
    case CheckKind::settling: return settlingSentence(in, analysis);
    case CheckKind::days: return daysCheckSentence(in, analysis);
    case CheckKind::resolution: return resolutionSentence(in, analysis);
    case CheckKind::air: return airSentence(in, analysis);
    }
    return {};
}

std::string checkName(const Language& in, CheckKind kind)
{
    switch (kind) {
    case CheckKind::normal: return in.say("ordinary scatter"_t);
    case CheckKind::outlier: return in.say("no outlying pair"_t);
    case CheckKind::order: return in.say("independent pairs"_t);
    case CheckKind::curve: return in.say("straight drift"_t);
    case CheckKind::spread: return in.say("equal scatter"_t);
    case CheckKind::baseline: return in.say("baseline stayed"_t);
    case CheckKind::direction: return in.say("steady wind"_t);
    case CheckKind::ways: return in.say("same both ways"_t);
    case CheckKind::settling: return in.say("warm after each stop"_t);
    case CheckKind::days: return in.say("days agree"_t);
    case CheckKind::resolution: return in.say("fine display"_t);
    case CheckKind::air: return in.say("same air"_t);
    }
    return {};
}

std::string checkWord(const Language& in, CheckKind kind)
{
    switch (kind) {
    case CheckKind::normal: return in.say("normal##a check"_t);
    case CheckKind::outlier: return in.say("outlier##a check"_t);
    case CheckKind::order: return in.say("order##a check"_t);
    case CheckKind::curve: return in.say("curve##a check"_t);
    case CheckKind::spread: return in.say("spread##a check"_t);
    case CheckKind::baseline: return in.say("baseline##a check"_t);
    case CheckKind::direction: return in.say("direction##a check"_t);
    case CheckKind::ways: return in.say("ways##a check"_t);
    case CheckKind::settling: return in.say("settling##a check"_t);
    case CheckKind::days: return in.say("days##a check"_t);
    case CheckKind::resolution: return in.say("resolution##a check"_t);
    case CheckKind::air: return in.say("air##a check"_t);
    }
    return {};
}

std::string stateWords(const Language& in, CheckState state)
{
    switch (state) {
    case CheckState::holds: return in.say("holds##a check"_t);
    case CheckState::note: return in.say("note##a check"_t);
    case CheckState::fails: return in.say("not met##a check"_t);
    case CheckState::notComputed: return in.say("not computed##a check"_t);
    }
    return {};
}

std::vector<CheckWords> checkWords(const Language& in, const Analysis& analysis)
{
    std::vector<CheckWords> all;
    for (const CheckKind kind : kCheckKinds)
        all.push_back({checkWord(in, kind), stateOf(analysis.checks, kind),
                       checkSentence(in, kind, analysis)});
    return all;
}

} // namespace bothways::app::wording
