// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_pictures.h"

#include "app/output/report_drawing.h"
#include "app/wording/companions.h"
#include "app/wording/pooled.h"
#include "core/answer/pooled.h"
#include "core/companions/companions.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace bothways::app::report {
namespace {

using core::Analysis;
using core::pctFromLog;

constexpr auto kEffectAxis = "difference in consumption, % (left of zero: less)"_t;

/// "95", "99.9"
std::string fourDigits(const Language& in, double value)
{
    return localised(in, fmt::format("{:.4g}", value));
}

std::string percent(const Language& in, double log)
{
    const std::string text = localised(in, fmt::format("{:.2f}\u00a0%", std::abs(pctFromLog(log))));
    return (pctFromLog(log) < 0.0 ? "\u2212" : "+") + text;
}

/// A class as the method's page names it.
std::string verdictWord(const Language& in, core::VerdictClass cls)
{
    switch (cls) {
    case core::VerdictClass::less: return in.say("less##verdict"_t);
    case core::VerdictClass::more: return in.say("more##verdict"_t);
    case core::VerdictClass::equivalent: return in.say("equivalent##verdict"_t);
    case core::VerdictClass::undecided: return in.say("undecided##verdict"_t);
    case core::VerdictClass::none: return in.say("none##verdict"_t);
    }
    return {};
}

void marginAndZero(Drawing& picture, const Axis& axis, double margin_pct, double top, double bottom)
{
    picture.box(axis.at(-margin_pct), top, axis.at(margin_pct) - axis.at(-margin_pct), bottom - top,
                Ink::margin);
    picture.line(axis.at(0.0), top, axis.at(0.0), bottom, Ink::zero);
}

struct ForestRow {
    std::string name;
    double effect_log, low_log, high_log;
    std::optional<double> thin_low_log, thin_high_log; ///< the wider interval drawn thinly
};

std::vector<ForestRow> forestRows(const Language& in, const Analysis& analysis)
{
    const core::Headline& h = *analysis.headline;
    std::vector<ForestRow> rows{
        {in.say("headline"_t), h.effect_log, h.low_log, h.high_log, {}, {}}};
    for (const auto& [id, i] : core::intervalsOf(analysis.companions))
        if (i)
            rows.push_back(
                {wording::companionWord(in, id), i->effect_log, i->low_log, i->high_log, {}, {}});
    for (const core::DayEffect& day : analysis.companions.days)
        rows.push_back(
            {in.say("day {}"_t, day.day), day.effect_log, day.low_log, day.high_log, {}, {}});
    for (const core::SettingEffect& s : analysis.companions.settings)
        rows.push_back({in.say("setting {} ({} pairs)"_t,
                               s.setting.empty() ? in.say("none noted"_t) : s.setting, s.pairs),
                        s.effect_log, s.low_log, s.high_log, s.low_bonferroni_log,
                        s.high_bonferroni_log});
    return rows;
}

/// A scale that holds all of `rows`, zero and the margin; an interval wider than ten times the
/// headline's is let run out of the picture.
Axis effectAxis(const std::vector<ForestRow>& rows, double margin_pct, double left, double right)
{
    double low = -margin_pct, high = margin_pct;
    const double reach = std::max(
        10.0 * (pctFromLog(rows[0].high_log) - pctFromLog(rows[0].low_log)), 5.0 * margin_pct);
    for (const ForestRow& row : rows) {
        const double least = std::min(row.low_log, row.thin_low_log.value_or(row.low_log));
        const double most = std::max(row.high_log, row.thin_high_log.value_or(row.high_log));
        low = std::min(low, std::max(pctFromLog(least), pctFromLog(rows[0].low_log) - reach));
        high = std::max(high, std::min(pctFromLog(most), pctFromLog(rows[0].high_log) + reach));
    }
    return {low, high, left, right};
}

/// An end that is beyond the picture is an arrowhead, not a bar: the interval goes on.
void drawInterval(Drawing& picture, const Axis& axis, double y, double low_log, double high_log,
                  double left, double right, Ink ink)
{
    const double from = axis.at(pctFromLog(low_log)), to = axis.at(pctFromLog(high_log));
    picture.line(std::clamp(from, left, right), y, std::clamp(to, left, right), y, ink);
    for (const double end : {from, to})
        if (end < left || end > right)
            picture.arrowhead(std::clamp(end, left, right), y, end < left ? -1.0 : 1.0, 0.0, ink);
        else
            picture.line(end, y - 6.0, end, y + 6.0, ink);
}

/// Places for the words at both ends of an interval, so that they neither meet nor leave the
/// picture.
std::pair<double, double> apart(double low, double high)
{
    constexpr double kWordWidth = 74.0;
    const double middle = std::clamp(0.5 * (low + high), kWordWidth, kWidth - kWordWidth);
    return {std::clamp(std::min(low, middle - 0.5 * kWordWidth), 0.5 * kWordWidth, kWidth),
            std::clamp(std::max(high, middle + 0.5 * kWordWidth), 0.0, kWidth - 0.5 * kWordWidth)};
}

/// Where a claim stands, with its size.
void drawClaim(const Language& in, Drawing& picture, const Axis& axis, const Analysis& analysis)
{
    if (!analysis.verdict.claim)
        return;
    const double at = axis.at(analysis.verdict.claim->pct);
    if (at >= 20.0 && at <= kWidth - 20.0) // else the words alone stand at that end
        picture.line(at, 30.0, at, 106.0, Ink::thin);
    picture.words(
        std::clamp(at, 60.0, kWidth - 60.0), 108.0, Anchor::middle,
        in.say("claimed: {}"_t, percent(in, core::logFromPct(analysis.verdict.claim->pct))));
}

/// The first row is the one that counts.
Picture forestOf(const Language& in, const std::vector<ForestRow>& rows, double margin_pct)
{
    const double left = 170.0, right = kWidth - 20.0;
    const double bottom = 16.0 + 30.0 * static_cast<double>(rows.size());
    const Axis axis = effectAxis(rows, margin_pct, left, right);
    std::string says = in.say("Effects with their intervals:"_t);
    for (const ForestRow& row : rows)
        says += in.say(" {} {} ({} to {}){}"_t, row.name, percent(in, row.effect_log),
                       percent(in, row.low_log), percent(in, row.high_log),
                       &row == &rows.back() ? "" : ";");
    Drawing picture(in, bottom + 6.0 + kAxisHeight, says);
    marginAndZero(picture, axis, margin_pct, 8.0, bottom);
    double y = 24.0;
    for (const ForestRow& row : rows) {
        picture.words(left - 10.0, y + 4.0, Anchor::end, row.name, &row == &rows.front());
        if (row.thin_low_log && row.thin_high_log)
            drawInterval(picture, axis, y, *row.thin_low_log, *row.thin_high_log, left, right,
                         Ink::thin);
        drawInterval(picture, axis, y, row.low_log, row.high_log, left, right, Ink::interval);
        const double effect = axis.at(pctFromLog(row.effect_log));
        if (effect >= left && effect <= right)
            picture.dot(effect, y, Ink::result, percent(in, row.effect_log));
        y += 30.0;
    }
    picture.bottomAxis(axis, left, right, in.say(kEffectAxis));
    return std::move(picture).take();
}

} // namespace

Picture intervalPicture(const Language& in, const Analysis& analysis)
{
    if (!analysis.headline)
        return {};
    const core::Headline& h = *analysis.headline;
    std::vector<ForestRow> rows{{"", h.effect_log, h.low_log, h.high_log, {}, {}}};
    if (const auto& claim = analysis.verdict.claim) {
        const double claimed = core::logFromPct(claim->pct);
        rows.push_back({"", claimed, claimed, claimed, {}, {}}); // so that the scale holds it
    }
    const double left = 20.0, right = kWidth - 20.0;
    const Axis axis = effectAxis(rows, analysis.options.margin_pct, left, right);
    const std::string margin = fourDigits(in, analysis.options.margin_pct);
    Drawing picture(in, 154.0,
                    in.say("Effect {}, {} % interval {} to {}, margin {} %"_t,
                           percent(in, h.effect_log), fourDigits(in, 100.0 * h.confidence),
                           percent(in, h.low_log), percent(in, h.high_log), margin));
    marginAndZero(picture, axis, analysis.options.margin_pct, 22.0, 112.0);
    picture.words(axis.at(0.0), 14.0, Anchor::middle,
                  in.say("zero, and a margin of {} %"_t, margin));
    drawInterval(picture, axis, 62.0, h.low_log, h.high_log, left, right, Ink::interval);
    const double from = axis.at(pctFromLog(h.low_equivalence_log));
    picture.box(from, 57.0, axis.at(pctFromLog(h.high_equivalence_log)) - from, 10.0, Ink::inner);
    drawClaim(in, picture, axis, analysis);
    picture.dot(axis.at(pctFromLog(h.effect_log)), 62.0, Ink::result, percent(in, h.effect_log));
    picture.words(axis.at(pctFromLog(h.effect_log)), 46.0, Anchor::middle,
                  percent(in, h.effect_log), true);
    const auto [low, high] = apart(axis.at(pctFromLog(h.low_log)), axis.at(pctFromLog(h.high_log)));
    picture.words(low, 88.0, Anchor::middle, percent(in, h.low_log));
    picture.words(high, 88.0, Anchor::middle, percent(in, h.high_log));
    picture.bottomAxis(axis, left, right, in.say(kEffectAxis));
    return std::move(picture).take();
}

Picture forestPicture(const Language& in, const Analysis& analysis)
{
    if (!analysis.headline)
        return {};
    return forestOf(in, forestRows(in, analysis), analysis.options.margin_pct);
}

Picture studiesPicture(const Language& in, const Several& together)
{
    const std::optional<core::Pooled>& pooled = together.pooled;
    std::vector<ForestRow> rows;
    if (pooled && pooled->common)
        rows.push_back({wording::commonEffectName(in),
                        pooled->common->effect_log,
                        pooled->common->low_log,
                        pooled->common->high_log,
                        {},
                        {}});
    if (pooled)
        rows.push_back({wording::meanEffectName(in, *pooled),
                        pooled->effect_log,
                        pooled->low_log,
                        pooled->high_log,
                        {},
                        {}});
    for (const StudyRow& study : together.studies) {
        if (!study.effect)
            continue;
        const core::EffectRange range = core::rangeOf(*study.effect, together.confidence);
        rows.push_back(
            {study.name, study.effect->effect_log, range.low_log, range.high_log, {}, {}});
    }
    return rows.empty() ? Picture{} : forestOf(in, rows, together.margin_pct);
}

Picture leaveOneOutPicture(const Language& in, const Analysis& analysis)
{
    if (!analysis.headline || !analysis.leave_one_out)
        return {};
    const core::Headline& h = *analysis.headline;
    double low = std::min(0.0, pctFromLog(h.low_log)), high = std::max(0.0, pctFromLog(h.high_log));
    for (const core::LeaveOneOutTurn& turn : analysis.leave_one_out->turns)
        if (turn.effect_log) {
            low = std::min(low, pctFromLog(*turn.effect_log));
            high = std::max(high, pctFromLog(*turn.effect_log));
        }
    const double left = kLeft, right = kRight, top = 14.0, bottom = 172.0;
    const Axis x(1.0, static_cast<double>(analysis.pairs.size()), left, right);
    const Axis y(low, high, bottom, top);
    Drawing picture(in, bottom + kAxisHeight,
                    in.say("The effect with each of {} pairs left out in turn"_t,
                           analysis.leave_one_out->turns.size()));
    picture.box(left, y.at(pctFromLog(h.high_log)), right - left,
                y.at(pctFromLog(h.low_log)) - y.at(pctFromLog(h.high_log)), Ink::margin);
    picture.line(left, y.at(0.0), right, y.at(0.0), Ink::zero);
    picture.line(left, y.at(pctFromLog(h.effect_log)), right, y.at(pctFromLog(h.effect_log)),
                 Ink::thin);
    picture.leftAxis(y, top, bottom);
    for (const core::LeaveOneOutTurn& turn : analysis.leave_one_out->turns)
        if (turn.effect_log) {
            const bool changes = turn.cls != analysis.verdict.cls;
            const std::string title =
                in.say("without pair {}: {}, {}"_t, turn.pair, percent(in, *turn.effect_log),
                       verdictWord(in, turn.cls));
            if (changes)
                picture.diamond(x.at(turn.pair), y.at(pctFromLog(*turn.effect_log)), Ink::alarm,
                                title);
            else
                picture.dot(x.at(turn.pair), y.at(pctFromLog(*turn.effect_log)), Ink::result,
                            title);
        }
    picture.bottomAxis(x, left, right, in.say("pair left out"_t));
    return std::move(picture).take();
}

} // namespace bothways::app::report
