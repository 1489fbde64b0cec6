// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/plot_parts.h"
#include "app/desktop/plots/result_plots.h"

#include "core/study/units.h"

#include <cmath>

namespace bothways::app {
namespace {

using core::pctFromLog;

/// What the picture shows, all in per cent.
struct Scale {
    double effect, low, high, low90, high90, margin;
};

Scale scaleOf(const core::Analysis& analysis)
{
    const core::Headline& headline = *analysis.headline;
    return {pctFromLog(headline.effect_log),
            pctFromLog(headline.low_log),
            pctFromLog(headline.high_log),
            pctFromLog(headline.low_equivalence_log),
            pctFromLog(headline.high_equivalence_log),
            analysis.verdict.margin_pct};
}

constexpr double kRow = 0.0;  // where the interval lies; the axis runs from -1 to 1
constexpr double kCap = 0.09; // half the height of an interval's ends

} // namespace

// Long: one picture, drawn from the back to the front.
void EffectPlot::show(const core::Analysis& analysis, const Words& words)
{
    clearPicture();
    setNumbers({});
    const NumberWords& numbers = words.numbers();
    yAxis->setVisible(false);
    yAxis->setRange(-1.0, 1.0);
    axisRect()->setRangeDrag(Qt::Horizontal);
    axisRect()->setRangeZoom(Qt::Horizontal);
    xAxis->setTicker(QSharedPointer<NumberTicker>::create(true));
    const double margin = analysis.verdict.margin_pct;
    xAxis->setLabel(tr("change of consumption with %1 against %2, in per cent (shaded: within "
                       "±%3\u00a0%, too small to care about)")
                        .arg(words.device(), words.baseline(), numbers.shortest(margin)));
    parts::addColumnBand(*this, -margin, margin, theme().margin);
    parts::addUpright(*this, 0.0, QPen(theme().ink, 1.5));
    parts::addCornerText(*this, {0.0, 0.0}, tr("◀ %1 uses less").arg(words.device()),
                         theme().faint_ink, Qt::AlignLeft | Qt::AlignTop);
    parts::addCornerText(*this, {1.0, 0.0}, tr("%1 uses more ▶").arg(words.device()),
                         theme().faint_ink, Qt::AlignRight | Qt::AlignTop);
    if (!analysis.headline) {
        setWhole(xAxis, parts::rangeAround({-margin, margin}, 0.8));
        setNothing(tr("There is no interval yet."));
        setWords(tr("Effect and interval"), words.verdict());
        finish();
        return;
    }
    const Scale scale = scaleOf(analysis);
    const QString wide = numbers.percent(analysis.headline->confidence);
    const QString narrow = numbers.percent(1.0 - 2.0 * (1.0 - analysis.headline->confidence));
    const int decimals =
        NumberWords::decimalsOfRange(analysis.headline->low_log, analysis.headline->high_log);
    const auto inWords = [&](double pct) {
        return numbers.units().percentFromLog(core::logFromPct(pct), decimals);
    };
    QPen thin(theme().result, 2.5);
    thin.setCapStyle(Qt::FlatCap);
    QPen thick(theme().result, 9.0);
    thick.setCapStyle(Qt::FlatCap);
    parts::addLine(*this, {scale.low, kRow}, {scale.high, kRow}, thin);
    parts::addLine(*this, {scale.low90, kRow}, {scale.high90, kRow}, thick);
    for (const double end : {scale.low, scale.high})
        parts::addLine(*this, {end, kRow - kCap}, {end, kRow + kCap}, thin);
    parts::addMarks(*this, {{scale.effect, kRow}},
                    QCPScatterStyle(QCPScatterStyle::ssDiamond, QPen(theme().paper, 1.5),
                                    QBrush(theme().device), 17));
    parts::addText(*this, {scale.effect, 0.22}, inWords(scale.effect), theme().ink,
                   Qt::AlignHCenter | Qt::AlignBottom);
    // The ends' numbers may reach into the air around the picture.
    parts::addText(*this, {scale.low, -0.12}, inWords(scale.low), theme().ink,
                   Qt::AlignRight | Qt::AlignTop)
        ->setClipToAxisRect(false);
    parts::addText(*this, {scale.high, -0.12}, inWords(scale.high), theme().ink,
                   Qt::AlignLeft | Qt::AlignTop)
        ->setClipToAxisRect(false);
    setReadings({{nullptr, scale.low, kRow,
                  tr("low end of the %1 interval: %2").arg(wide, inWords(scale.low))},
                 {nullptr, scale.low90, kRow,
                  tr("low end of the %1 interval: %2").arg(narrow, inWords(scale.low90))},
                 {nullptr, scale.effect, kRow, tr("effect: %1").arg(inWords(scale.effect))},
                 {nullptr, scale.high90, kRow,
                  tr("high end of the %1 interval: %2").arg(narrow, inWords(scale.high90))},
                 {nullptr, scale.high, kRow,
                  tr("high end of the %1 interval: %2").arg(wide, inWords(scale.high))}});
    QList<double> all{0.0, -margin, margin, scale.low, scale.high};
    if (analysis.verdict.claim) {
        const double claimed = analysis.verdict.claim->pct;
        parts::addUpright(*this, claimed, QPen(theme().device, 1.5, Qt::DotLine));
        parts::addText(*this, {claimed, -0.72},
                       claimed < 0.0 ? tr("claimed: %1\u00a0% less").arg(numbers.shortest(-claimed))
                                     : tr("claimed: %1\u00a0% more").arg(numbers.shortest(claimed)),
                       theme().ink, Qt::AlignHCenter | Qt::AlignBottom);
        all << claimed;
    }
    PlotNumbers table({QStringLiteral("effect_pct"), QStringLiteral("low_pct"),
                       QStringLiteral("high_pct"), QStringLiteral("low_equivalence_pct"),
                       QStringLiteral("high_equivalence_pct"), QStringLiteral("margin_pct"),
                       QStringLiteral("confidence")});
    table.add({scale.effect, scale.low, scale.high, scale.low90, scale.high90, margin,
               analysis.headline->confidence});
    setNumbers(std::move(table));
    setWhole(xAxis, parts::rangeAround(all, 0.22));
    setWords(tr("Effect and interval"), words.verdict());
    xAxis->setLabel(
        tr("change of consumption with %1 against %2, in per cent (thin line: %3 "
           "interval, thick line: %4 interval, shaded: within ±%5\u00a0%, too small to "
           "care about)")
            .arg(words.device(), words.baseline(), wide, narrow, numbers.shortest(margin)));
    finish();
}

} // namespace bothways::app
