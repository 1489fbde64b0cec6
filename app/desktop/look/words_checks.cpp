// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/words.h"

#include "core/study/units.h"

#include <algorithm>
#include <cmath>

// Sentences of the checks. Each says what was looked at, what was found, and (where it fails) what
// that means for this study and what to do. "Perhaps" stands where p is only below 0.05.
namespace bothways::app {
namespace {

constexpr std::size_t kFewPairs = 6;
constexpr std::size_t kSomePairs = 12;

bool has(const core::Check& check)
{
    return check.state != core::CheckState::notComputed && check.p && check.statistic;
}

} // namespace

core::CheckState stateOf(const core::Checks& checks, CheckKind kind)
{
    switch (kind) {
    case CheckKind::normal: return checks.normal.state;
    case CheckKind::outlier: return checks.outlier.state;
    case CheckKind::order: return checks.order.state;
    case CheckKind::curve: return checks.curve.state;
    case CheckKind::spread: return checks.spread.state;
    case CheckKind::baseline: return checks.baseline.state;
    case CheckKind::direction: return checks.direction.state;
    case CheckKind::resolution: return checks.resolution.state;
    case CheckKind::air: return checks.air.state;
    }
    return core::CheckState::notComputed;
}

QString Words::checkName(CheckKind kind)
{
    switch (kind) {
    case CheckKind::normal: return tr("ordinary scatter");
    case CheckKind::outlier: return tr("no pair apart");
    case CheckKind::order: return tr("independent pairs");
    case CheckKind::curve: return tr("straight drift");
    case CheckKind::spread: return tr("equal scatter");
    case CheckKind::baseline: return tr("baseline stayed");
    case CheckKind::direction: return tr("steady wind");
    case CheckKind::resolution: return tr("fine display");
    case CheckKind::air: return tr("same air");
    }
    return {};
}

QString Words::stateName(core::CheckState state)
{
    switch (state) {
    case core::CheckState::holds: return tr("holds", "a check");
    case core::CheckState::note: return tr("note", "a check");
    case core::CheckState::fails: return tr("not met", "a check");
    case core::CheckState::notComputed: return tr("not computed", "a check");
    }
    return {};
}

QString Words::checksPower() const
{
    const std::size_t n = m_analysis.pairs.size();
    if (!m_analysis.headline || n > kSomePairs)
        return {};
    if (n <= kFewPairs)
        return tr("With %n pair(s) none of these checks has much power: passing them proves "
                  "little.",
                  nullptr, static_cast<int>(n));
    return tr("With %n pair(s) these checks see gross faults only.", nullptr, static_cast<int>(n));
}

QString Words::check(CheckKind kind) const
{
    switch (kind) {
    case CheckKind::normal: return normal();
    case CheckKind::outlier: return outlier();
    case CheckKind::order: return order();
    case CheckKind::curve: return curve();
    case CheckKind::spread: return spread();
    case CheckKind::baseline: return baselineMoved();
    case CheckKind::direction: return direction();
    case CheckKind::resolution: return resolution();
    case CheckKind::air: return air();
    }
    return {};
}

QString Words::normal() const
{
    const core::Check& check = m_analysis.checks.normal;
    if (!has(check))
        return tr("Not computed: it takes a verdict and 3 to 5,000 pairs.");
    const QString text =
        check.state == core::CheckState::holds
            ? tr("The residuals look like ordinary scatter (Shapiro–Wilk W = %1, %2).")
        : check.state == core::CheckState::note
            ? tr("The residuals are perhaps no ordinary scatter (Shapiro–Wilk W = %1, %2): the "
                 "interval is rough. Look for a pair that stands apart, and lean on the dealt "
                 "labels, which need no bell curve.")
            : tr("The residuals are no ordinary scatter (Shapiro–Wilk W = %1, %2): the interval is "
                 "rough. Look for a pair that stands apart, and lean on the dealt labels, which "
                 "need no bell curve.");
    return text.arg(m_numbers.significant(*check.statistic, 3), m_numbers.p(*check.p));
}

QString Words::outlier() const
{
    const core::OutlierCheck& check = m_analysis.checks.outlier;
    if (!has(check) || !check.pair)
        return tr("Not computed: it takes a verdict and one degree of freedom to spare.");
    const auto pair = std::find_if(m_analysis.pairs.begin(), m_analysis.pairs.end(),
                                   [&](const core::Pair& p) { return p.number == *check.pair; });
    const int out = pair == m_analysis.pairs.end() ? 0 : pair->out_run;
    const int back = pair == m_analysis.pairs.end() ? 0 : pair->return_run;
    const bool low = *check.statistic < 0.0;
    const QString where =
        //: %1 pair, %2 and %3 runs, %4 a number
        (low ? tr("Pair %1 (runs %2 and %3) lies farthest from the fit, %4 times its expected "
                  "scatter too low")
             //: %1 pair, %2 and %3 runs, %4 a number
             : tr("Pair %1 (runs %2 and %3) lies farthest from the fit, %4 times its expected "
                  "scatter too high"))
            .arg(units().number(*check.pair, 0), units().number(out, 0), units().number(back, 0),
                 m_numbers.significant(std::abs(*check.statistic)));
    if (check.state == core::CheckState::holds) //: %1 the clause "Pair … lies farthest …"
        return tr("%1; among %n pair(s) that is ordinary (%2).", nullptr,
                  static_cast<int>(m_analysis.pairs.size()))
            .arg(where, m_numbers.p(*check.p));
    if (check.state == core::CheckState::note) //: %1 the clause "Pair … lies farthest …"
        return tr("%1: perhaps too far for chance (%2). Read what was noted for its runs; discard "
                  "one only for a reason that you would accept if the result went the other way.")
            .arg(where, m_numbers.p(*check.p));
    //: %1 the clause "Pair … lies farthest …"
    return tr("%1: too far for chance (%2). Read what was noted for its runs; discard one only for "
              "a reason that you would accept if the result went the other way.")
        .arg(where, m_numbers.p(*check.p));
}

QString Words::order() const
{
    const core::OrderCheck& check = m_analysis.checks.order;
    if (!has(check) || !check.lag1)
        return tr("Not computed: it takes a verdict and pairs in order of time.");
    const bool alike = *check.lag1 > 0.0;
    QString text;
    if (check.state == core::CheckState::holds)
        text = tr("Successive pairs look independent (Durbin–Watson %1, correlation with the next "
                  "pair %2, %3). In short series this sees little: passing is no proof.");
    else if (check.state == core::CheckState::note)
        text = alike ? tr("Successive pairs perhaps resemble each other (Durbin–Watson %1, "
                          "correlation with the next pair %2, %3): they say less than their "
                          "number, and the interval is too narrow. Go by the companion for "
                          "neighbours that resemble each other.")
                     : tr("Pairs perhaps swing to and fro (Durbin–Watson %1, correlation with the "
                          "next pair %2, %3): something alternates from pair to pair. Look at who "
                          "drove, the traffic lights, the fuel meter's rounding.");
    else
        text = alike ? tr("Successive pairs resemble each other (Durbin–Watson %1, correlation "
                          "with the next pair %2, %3): they say less than their number, and the "
                          "interval is too narrow. Go by the companion for neighbours that "
                          "resemble each other.")
                     : tr("Pairs swing to and fro (Durbin–Watson %1, correlation with the next "
                          "pair %2, %3): something alternates from pair to pair. Look at who "
                          "drove, the traffic lights, the fuel meter's rounding.");
    return text.arg(m_numbers.fixed(*check.statistic, 2), m_numbers.fixed(*check.lag1, 2),
                    m_numbers.p(*check.p));
}

QString Words::curve() const
{
    const core::Check& check = m_analysis.checks.curve;
    if (!has(check))
        return tr("Not computed: it takes a closed design and two degrees of freedom to spare.");
    const QString text =
        check.state == core::CheckState::holds ? tr("No bend in the drift is seen (F = %1, %2).")
        : check.state == core::CheckState::note
            ? tr("The drift perhaps bends (F = %1, %2). A straight line does not remove that, so "
                 "part of it sits in the effect. Was everything warm before the first run? Drive "
                 "more and shorter blocks.")
            : tr("The drift bends (F = %1, %2). A straight line does not remove that, so part of "
                 "it sits in the effect. Was everything warm before the first run? Drive more and "
                 "shorter blocks.");
    return text.arg(m_numbers.significant(*check.statistic, 3), m_numbers.p(*check.p));
}

QString Words::spread() const
{
    const core::Check& check = m_analysis.checks.spread;
    if (!has(check))
        return tr("Not computed: it takes 3 pairs in each configuration.");
    const QString text =
        check.state == core::CheckState::holds ? tr("%1 and %2 scatter alike (F = %3, %4).")
        : check.state == core::CheckState::note
            ? tr("%1 and %2 perhaps scatter unalike (F = %3, %4): one noise was taken for both, so "
                 "the interval may be too narrow or too wide. Find what was restless in one of "
                 "them: settings, a timer, the traffic.")
            : tr("%1 and %2 scatter unalike (F = %3, %4): one noise was taken for both, so the "
                 "interval may be too narrow or too wide. Find what was restless in one of them: "
                 "settings, a timer, the traffic.");
    return text.arg(baseline(), device(), m_numbers.significant(*check.statistic, 3),
                    m_numbers.p(*check.p));
}

QString Words::baselineMoved() const
{
    const core::BaselineCheck& check = m_analysis.checks.baseline;
    if (!check.effect_log || !check.low_log || !check.high_log)
        return tr("Not computed: it takes two baseline blocks in one day, and a degree of freedom "
                  "within blocks.");
    const int digits = NumberWords::decimalsOfRange(*check.low_log, *check.high_log);
    const QString text =
        check.state == core::CheckState::holds
            ? tr("From the first %1 block to the last the day itself moved: %2 (%3 interval: %4), "
                 "within the noise.")
            : tr("From the first %1 block to the last the day itself moved: %2 (%3 interval: %4). "
                 "A straight drift is taken out of the effect, a bent one is not.");
    return text.arg(baseline(), m_numbers.change(*check.effect_log, digits),
                    m_numbers.percent(m_analysis.options.confidence),
                    m_numbers.range(*check.low_log, *check.high_log, digits));
}

QString Words::direction() const
{
    const core::DirectionCheck& check = m_analysis.checks.direction;
    if (!has(check) || !check.slope_per_h)
        return tr("Not computed: it takes 3 pairs at different times.");
    const int digits =
        NumberWords::decimalsFor(0.5 * std::abs(core::pctFromLog(*check.slope_per_h)));
    const QString text =
        check.state == core::CheckState::holds
            ? tr("Out against return did not shift over time (%1 an hour, %2).")
        : check.state == core::CheckState::note
            ? tr("Out against return perhaps shifted over time (%1 an hour, %2): the wind turned "
                 "or rose. Out and back cancels a steady wind only; compare the bracketing, and "
                 "the wind noted.")
            : tr("Out against return shifted over time (%1 an hour, %2): the wind turned or rose. "
                 "Out and back cancels a steady wind only; compare the bracketing, and the wind "
                 "noted.");
    return text.arg(m_numbers.change(*check.slope_per_h, digits), m_numbers.p(*check.p));
}

QString Words::resolution() const
{
    const core::ResolutionCheck& check = m_analysis.checks.resolution;
    if (check.state == core::CheckState::notComputed || !check.step_pct)
        return tr("Not computed: it takes a verdict and readings in one unit.");
    const QString step = m_numbers.significant(*check.step_pct);
    const QString rounding = m_numbers.significant(check.rounding_pct.value_or(0.0));
    const QString text =
        check.state == core::CheckState::holds
            ? tr("The last digit shown is worth %1\u00a0% of a reading; rounding alone scatters a "
                 "pair by %2\u00a0%: fine enough for this noise.")
            : tr("The last digit shown is worth %1\u00a0% of a reading; rounding alone scatters a "
                 "pair by %2\u00a0%: too coarse for a noise this small, which may be luck of the "
                 "rounding. Note litres and distance, or drive a longer stretch.");
    return text.arg(step, rounding);
}

QString Words::air() const
{
    const core::AirCheck& check = m_analysis.checks.air;
    if (check.state == core::CheckState::notComputed || (!check.density_pct && !check.wind_pct))
        return tr("Not computed: it takes temperature, pressure and humidity on paired runs of "
                  "both configurations.");
    const auto worth = [this](double pct) {
        return m_numbers.change(core::logFromPct(pct),
                                NumberWords::decimalsFor(0.5 * std::abs(pct)));
    };
    QString text;
    if (check.density_pct && check.wind_pct)
        text = tr("By the air alone, %1 would have used %2 (density) and %3 (wind).")
                   .arg(device(), worth(*check.density_pct), worth(*check.wind_pct));
    else if (check.density_pct)
        text = tr("By the density of the air alone, %1 would have used %2.")
                   .arg(device(), worth(*check.density_pct));
    else
        text =
            tr("By the wind alone, %1 would have used %2.").arg(device(), worth(*check.wind_pct));
    const QString judged =
        check.state == core::CheckState::fails
            ? tr("That is too much beside this interval. No correction is made; drive again in air "
                 "that keeps still.")
            : tr("That is little beside the interval. No correction is made.");
    //: two sentences after one another
    text = tr("%1 %2").arg(text, judged);
    if (check.outside_range)
        text = tr("%1 %2").arg(text, tr("The density formula is used outside its range, so take it "
                                        "as approximate."));
    return text;
}

} // namespace bothways::app
