// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/leave_out_plot.h"

#include "app/desktop/plots/plot_parts.h"
#include "core/study/units.h"

#include <algorithm>

namespace bothways::app {
namespace {

const core::Pair* pairOf(const core::Analysis& analysis, int number)
{
    const auto pair = std::find_if(analysis.pairs.begin(), analysis.pairs.end(),
                                   [&](const core::Pair& p) { return p.number == number; });
    return pair == analysis.pairs.end() ? nullptr : &*pair;
}

} // namespace

// Long: one picture, drawn from the back to the front.
void LeaveOneOutPlot::show(const core::Analysis& analysis, const Words& words)
{
    clearPicture();
    PlotNumbers table(
        {QStringLiteral("pair"), QStringLiteral("effect_pct"), QStringLiteral("class")});
    std::vector<Reading> readings;
    QList<double> values{0.0};
    parts::setLegend(*this, {{tr("without that pair"), Qt::NoPen, markOf(theme(), false, false, 9)},
                             {tr("the verdict changes"), Qt::NoPen,
                              QCPScatterStyle(QCPScatterStyle::ssTriangle, QPen(theme().fails, 2.0),
                                              QBrush(theme().paper), 10)},
                             {tr("with all pairs, and its interval"), QPen(theme().ink, 1.5),
                              QCPScatterStyle(QCPScatterStyle::ssNone)}});
    if (analysis.headline) {
        const core::Headline& headline = *analysis.headline;
        parts::addRowBand(*this, core::pctFromLog(headline.low_log),
                          core::pctFromLog(headline.high_log), theme().interval);
        parts::addLevel(*this, core::pctFromLog(headline.effect_log), QPen(theme().ink, 1.5));
        values << core::pctFromLog(headline.low_log) << core::pctFromLog(headline.high_log);
    }
    if (!analysis.leave_one_out || analysis.leave_one_out->turns.empty())
        setNothing(tr("There are too few pairs to leave one out."));
    parts::addLevel(*this, 0.0, QPen(theme().ink, 1.0, Qt::DashLine));
    double last = 1.0;
    if (analysis.leave_one_out)
        for (const core::LeaveOneOutTurn& turn : analysis.leave_one_out->turns) {
            const core::Pair* pair = pairOf(analysis, turn.pair);
            const bool changed = turn.cls != analysis.verdict.cls;
            const bool device = pair != nullptr && pair->device;
            const double effect = core::pctFromLog(turn.effect_log.value_or(0.0));
            last = std::max(last, static_cast<double>(turn.pair));
            table.add({turn.pair, turn.effect_log ? QVariant(effect) : QVariant(),
                       QString::fromLatin1(core::name(turn.cls).data())});
            if (!turn.effect_log)
                continue;
            values << effect;
            parts::addMarks(*this, {{static_cast<double>(turn.pair), effect}},
                            changed ? QCPScatterStyle(QCPScatterStyle::ssTriangle,
                                                      QPen(theme().fails, 2.0),
                                                      QBrush(theme().paper), 11)
                                    : markOf(theme(), device, false, 10));
            const int decimals = analysis.headline
                                     ? NumberWords::decimalsOfRange(analysis.headline->low_log,
                                                                    analysis.headline->high_log)
                                     : 2;
            readings.push_back({nullptr, static_cast<double>(turn.pair), effect,
                                tr("without pair %1 (%2): %3\n%4")
                                    .arg(words.units().number(turn.pair, 0),
                                         pair ? words.quoted(pair->configuration) : QString(),
                                         words.units().percentFromLog(*turn.effect_log, decimals),
                                         words.className(turn.cls)),
                                pair ? pair->out_run : 0});
        }
    QSharedPointer<QCPAxisTickerFixed> ticker(new QCPAxisTickerFixed);
    ticker->setTickStep(1.0);
    ticker->setScaleStrategy(QCPAxisTickerFixed::ssMultiples);
    ticker->setTickCount(20);
    xAxis->setTicker(ticker);
    xAxis->setLabel(tr("pair left out"));
    xAxis->grid()->setVisible(false);
    yAxis->setTicker(QSharedPointer<NumberTicker>::create(true));
    yAxis->setLabel(tr("effect, %"));
    setWhole(xAxis, {0.4, last + 0.6});
    setWhole(yAxis, parts::rangeAround(values));
    setReadings(std::move(readings));
    setNumbers(std::move(table));
    setWords(tr("Leave one pair out"), words.leaveOneOut());
    finish();
}

} // namespace bothways::app
