// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_pictures.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

namespace bothways::app {
namespace {

using core::Analysis;
using core::pctFromLog;

constexpr double kWidth = 720.0;

/// One scale: values to places on the picture.
class Axis {
public:
    Axis(double low, double high, double from, double to) : m_from(from), m_to(to)
    {
        if (!(high > low)) { // a single value: give it room
            low -= 0.5;
            high += 0.5;
        }
        const double room = 0.06 * (high - low);
        m_low = low - room;
        m_high = high + room;
    }
    double at(double value) const
    {
        return m_from + (value - m_low) / (m_high - m_low) * (m_to - m_from);
    }
    /// Round values inside the scale: 1, 2 or 5 times a power of ten, some five of them.
    std::vector<double> ticks() const
    {
        const double raw = (m_high - m_low) / 5.0;
        const double power = std::pow(10.0, std::floor(std::log10(raw)));
        const double lead = raw / power;
        m_step = power * (lead < 1.5 ? 1.0 : lead < 3.5 ? 2.0 : lead < 7.5 ? 5.0 : 10.0);
        std::vector<double> ticks;
        for (double k = std::ceil(m_low / m_step); k * m_step <= m_high; ++k)
            ticks.push_back(k * m_step);
        return ticks;
    }
    std::string label(double tick) const
    {
        const int decimals =
            std::clamp(static_cast<int>(-std::floor(std::log10(m_step) + 1e-9)), 0, 6);
        std::string text = fmt::format("{:.{}f}", std::abs(tick), decimals);
        const bool zero = text.find_first_not_of("0.") == std::string::npos;
        return tick < 0.0 && !zero ? "\u2212" + text : text;
    }

private:
    double m_low, m_high, m_from, m_to;
    mutable double m_step = 1.0;
};

class Picture {
public:
    Picture(double height, std::string_view title) : m_height(height)
    {
        m_text = fmt::format(
            "<svg viewBox=\"0 0 {:.0f} {:.0f}\" role=\"img\" xmlns=\"http://www.w3.org/2000/svg\">"
            "<title>{}</title>\n",
            kWidth, height, escaped(title));
    }
    void line(double x1, double y1, double x2, double y2, std::string_view cls)
    {
        m_text += fmt::format(
            "<line x1=\"{:.2f}\" y1=\"{:.2f}\" x2=\"{:.2f}\" y2=\"{:.2f}\" class=\"{}\"/>\n", x1,
            y1, x2, y2, cls);
    }
    void box(double x, double y, double width, double height, std::string_view cls)
    {
        m_text += fmt::format(
            "<rect x=\"{:.2f}\" y=\"{:.2f}\" width=\"{:.2f}\" height=\"{:.2f}\" class=\"{}\"/>\n",
            x, y, std::max(width, 0.0), height, cls);
    }
    void dot(double x, double y, std::string_view cls, std::string_view title)
    {
        m_text += fmt::format(
            "<circle cx=\"{:.2f}\" cy=\"{:.2f}\" r=\"5\" class=\"{}\"><title>{}</title></circle>\n",
            x, y, cls, escaped(title));
    }
    void diamond(double x, double y, std::string_view cls, std::string_view title)
    {
        m_text += fmt::format(
            "<path d=\"M{:.2f} {:.2f}l6.5 6.5l-6.5 6.5l-6.5 -6.5z\" class=\"{}\"><title>{}</title>"
            "</path>\n",
            x, y - 6.5, cls, escaped(title));
    }
    void words(double x, double y, std::string_view anchor, std::string_view text,
               std::string_view cls = "label")
    {
        m_text += fmt::format(
            "<text x=\"{:.2f}\" y=\"{:.2f}\" text-anchor=\"{}\" class=\"{}\">{}</text>\n", x, y,
            anchor, cls, escaped(text));
    }
    /// A scale along the bottom, with its name.
    void bottomAxis(const Axis& axis, double left, double right, std::string_view name)
    {
        const double y = m_height - 38.0;
        line(left, y, right, y, "axis");
        for (const double tick : axis.ticks()) {
            line(axis.at(tick), y, axis.at(tick), y + 5.0, "axis");
            words(axis.at(tick), y + 18.0, "middle", axis.label(tick));
        }
        words(0.5 * (left + right), m_height - 4.0, "middle", name);
    }
    std::string take() && { return std::move(m_text) + "</svg>\n"; }

private:
    double m_height;
    std::string m_text;
};

constexpr std::string_view kEffectAxis =
    "difference in consumption, %: left of zero is less, right is more";

std::string percent(double log)
{
    const std::string text = fmt::format("{:.2f}\u00a0%", std::abs(pctFromLog(log)));
    return (pctFromLog(log) < 0.0 ? "\u2212" : "+") + text;
}

void marginAndZero(Picture& picture, const Axis& axis, double margin_pct, double top, double bottom)
{
    picture.box(axis.at(-margin_pct), top, axis.at(margin_pct) - axis.at(-margin_pct), bottom - top,
                "margin");
    picture.line(axis.at(0.0), top, axis.at(0.0), bottom, "zero");
}

struct ForestRow {
    std::string name;
    double effect_log, low_log, high_log;
    std::optional<double> thin_low_log, thin_high_log; ///< the wider interval drawn thinly
};

std::vector<ForestRow> forestRows(const Analysis& analysis)
{
    const core::Headline& h = *analysis.headline;
    std::vector<ForestRow> rows{{"headline", h.effect_log, h.low_log, h.high_log, {}, {}}};
    const auto add = [&](core::Companion id, const std::optional<core::Interval>& i) {
        if (i)
            rows.push_back({std::string(name(id)), i->effect_log, i->low_log, i->high_log, {}, {}});
    };
    add(core::Companion::bracket, analysis.companions.bracket);
    add(core::Companion::runs, analysis.companions.runs);
    add(core::Companion::blocks, analysis.companions.blocks);
    add(core::Companion::correlated, analysis.companions.correlated);
    for (const core::SettingEffect& s : analysis.companions.settings)
        rows.push_back({fmt::format("setting {} ({} pairs)",
                                    s.setting.empty() ? "none noted" : s.setting, s.pairs),
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

void drawInterval(Picture& picture, const Axis& axis, double y, double low_log, double high_log,
                  double left, double right, std::string_view cls)
{
    const double from = std::clamp(axis.at(pctFromLog(low_log)), left, right);
    const double to = std::clamp(axis.at(pctFromLog(high_log)), left, right);
    picture.line(from, y, to, y, cls);
    picture.line(from, y - 6.0, from, y + 6.0, cls);
    picture.line(to, y - 6.0, to, y + 6.0, cls);
}

} // namespace

std::string escaped(std::string_view text)
{
    std::string out;
    out.reserve(text.size());
    for (const char c : text) {
        switch (c) {
        case '&': out += "&amp;"; break;
        case '<': out += "&lt;"; break;
        case '>': out += "&gt;"; break;
        case '"': out += "&quot;"; break;
        case '\'': out += "&#39;"; break;
        default:
            // A control character is legal neither in HTML nor in SVG.
            if (static_cast<unsigned char>(c) >= 0x20 || c == '\n' || c == '\t')
                out += c;
        }
    }
    return out;
}

std::string intervalSvg(const Analysis& analysis)
{
    if (!analysis.headline)
        return {};
    const core::Headline& h = *analysis.headline;
    const std::vector<ForestRow> rows{{"", h.effect_log, h.low_log, h.high_log, {}, {}}};
    const double left = 20.0, right = kWidth - 20.0;
    const Axis axis = effectAxis(rows, analysis.options.margin_pct, left, right);
    Picture picture(150.0,
                    fmt::format("Effect {}, {:.4g} % interval {} to {}, margin {:.4g} %",
                                percent(h.effect_log), 100.0 * h.confidence, percent(h.low_log),
                                percent(h.high_log), analysis.options.margin_pct));
    marginAndZero(picture, axis, analysis.options.margin_pct, 22.0, 112.0);
    picture.words(axis.at(0.0), 14.0, "middle",
                  fmt::format("zero, and a margin of {:.4g} %", analysis.options.margin_pct));
    drawInterval(picture, axis, 62.0, h.low_log, h.high_log, left, right, "interval");
    const double from = axis.at(pctFromLog(h.low_equivalence_log));
    picture.box(from, 57.0, axis.at(pctFromLog(h.high_equivalence_log)) - from, 10.0, "inner");
    picture.dot(axis.at(pctFromLog(h.effect_log)), 62.0, "b", percent(h.effect_log));
    picture.words(axis.at(pctFromLog(h.effect_log)), 46.0, "middle", percent(h.effect_log),
                  "label strong");
    picture.words(axis.at(pctFromLog(h.low_log)), 86.0, "middle", percent(h.low_log));
    picture.words(axis.at(pctFromLog(h.high_log)), 86.0, "middle", percent(h.high_log));
    picture.bottomAxis(axis, left, right, kEffectAxis);
    return std::move(picture).take();
}

std::string pairsSvg(const core::Study& study, const Analysis& analysis)
{
    if (analysis.pairs.empty())
        return {};
    const std::int64_t origin = study.runs.front().start.us;
    const auto hours = [&](const core::Run& run) {
        return static_cast<double>(core::midTime_us(run) - origin) / 3.6e9;
    };

    double low = std::numeric_limits<double>::infinity(), high = -low;
    double first = low, last = high;
    const auto widen = [&](double t, double c) {
        first = std::min(first, t);
        last = std::max(last, t);
        low = std::min(low, c);
        high = std::max(high, c);
    };
    for (const core::Pair& pair : analysis.pairs)
        widen(pair.time_h, pair.l_per_100km);
    // Discards are shown at the consumption they had; one far off must not flatten the rest.
    const double span = std::max(high - low, 0.02 * high);
    for (const core::Run& run : study.runs)
        if (const auto c = core::lPer100km(run); run.discard && c)
            widen(hours(run), std::clamp(*c, low - span, high + span));

    const double left = 66.0, right = kWidth - 16.0, top = 14.0, bottom = 282.0;
    const Axis x(first, last, left, right);
    const Axis y(low, high, bottom, top);
    Picture picture(320.0,
                    fmt::format("{} pairs over {:.1f} hours", analysis.pairs.size(), last - first));
    for (const core::Block& block : analysis.blocks) {
        double from = std::numeric_limits<double>::infinity(), to = -from;
        for (const core::Pair& pair : analysis.pairs)
            if (pair.block == block.block) {
                from = std::min(from, x.at(pair.time_h));
                to = std::max(to, x.at(pair.time_h));
            }
        if (from > to)
            continue;
        picture.box(from - 14.0, top, to - from + 28.0, bottom - top,
                    block.device ? "shade-b" : "shade-a");
        picture.words(0.5 * (from + to), top + 12.0, "middle", block.configuration);
    }
    for (const double tick : y.ticks()) {
        picture.line(left - 5.0, y.at(tick), left, y.at(tick), "axis");
        picture.words(left - 8.0, y.at(tick) + 4.0, "end", y.label(tick));
    }
    picture.line(left, top, left, bottom, "axis");
    picture.words(left, top - 3.0, "end", analysis.electric ? "kWh/100 km" : "L/100 km");
    for (const core::Run& run : study.runs)
        if (const auto c = core::lPer100km(run); run.discard && c)
            picture.dot(x.at(hours(run)), y.at(std::clamp(*c, low, high)), "discarded",
                        fmt::format("run {}, discarded: {}", run.number, run.discard->reason));
    for (const core::Pair& pair : analysis.pairs) {
        const std::string title = fmt::format("pair {}: runs {} and {}, {:.3f}", pair.number,
                                              pair.out_run, pair.return_run, pair.l_per_100km);
        if (pair.device)
            picture.diamond(x.at(pair.time_h), y.at(pair.l_per_100km), "b", title);
        else
            picture.dot(x.at(pair.time_h), y.at(pair.l_per_100km), "a", title);
    }
    picture.bottomAxis(
        x, left, right,
        "hours since the first run; circles: baseline, diamonds: device, hollow: discarded runs");
    return std::move(picture).take();
}

std::string forestSvg(const Analysis& analysis)
{
    if (!analysis.headline)
        return {};
    const std::vector<ForestRow> rows = forestRows(analysis);
    const double left = 190.0, right = kWidth - 20.0;
    const double bottom = 16.0 + 30.0 * static_cast<double>(rows.size());
    const Axis axis = effectAxis(rows, analysis.options.margin_pct, left, right);
    Picture picture(bottom + 44.0, "Headline and companions with their intervals");
    marginAndZero(picture, axis, analysis.options.margin_pct, 8.0, bottom);
    double y = 24.0;
    for (const ForestRow& row : rows) {
        picture.words(left - 10.0, y + 4.0, "end", row.name);
        if (row.thin_low_log && row.thin_high_log)
            drawInterval(picture, axis, y, *row.thin_low_log, *row.thin_high_log, left, right,
                         "thin");
        drawInterval(picture, axis, y, row.low_log, row.high_log, left, right, "interval");
        picture.dot(std::clamp(axis.at(pctFromLog(row.effect_log)), left, right), y, "b",
                    percent(row.effect_log));
        y += 30.0;
    }
    picture.bottomAxis(axis, left, right, kEffectAxis);
    return std::move(picture).take();
}

std::string leaveOneOutSvg(const Analysis& analysis)
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
    const double left = 66.0, right = kWidth - 16.0, top = 14.0, bottom = 172.0;
    const Axis x(1.0, static_cast<double>(analysis.pairs.size()), left, right);
    const Axis y(low, high, bottom, top);
    Picture picture(210.0, "The effect with each pair left out in turn");
    picture.box(left, y.at(pctFromLog(h.high_log)), right - left,
                y.at(pctFromLog(h.low_log)) - y.at(pctFromLog(h.high_log)), "margin");
    picture.line(left, y.at(0.0), right, y.at(0.0), "zero");
    picture.line(left, y.at(pctFromLog(h.effect_log)), right, y.at(pctFromLog(h.effect_log)),
                 "thin");
    for (const double tick : y.ticks())
        picture.words(left - 8.0, y.at(tick) + 4.0, "end", y.label(tick));
    for (const core::LeaveOneOutTurn& turn : analysis.leave_one_out->turns)
        if (turn.effect_log) {
            const bool changes = turn.cls != analysis.verdict.cls;
            const std::string title = fmt::format("without pair {}: {}, {}", turn.pair,
                                                  percent(*turn.effect_log), name(turn.cls));
            if (changes)
                picture.diamond(x.at(turn.pair), y.at(pctFromLog(*turn.effect_log)), "alarm",
                                title);
            else
                picture.dot(x.at(turn.pair), y.at(pctFromLog(*turn.effect_log)), "b", title);
        }
    picture.bottomAxis(
        x, left, right,
        "pair left out; band: the headline's interval, %; diamonds: another verdict");
    return std::move(picture).take();
}

} // namespace bothways::app
