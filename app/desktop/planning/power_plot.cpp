// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/planning/power_plot.h"

#include "app/desktop/plots/plot_parts.h"
#include "core/study/units.h"

namespace bothways::app {

void PowerPlot::show(const core::Plan& plan, const NumberWords& numbers)
{
    clearPicture();
    constexpr int kPoints = 61;
    const double widest_log = 1.6 * plan.detectable_log;
    QList<QPointF> curve;
    PlotNumbers table({QStringLiteral("effect_pct"), QStringLiteral("power")});
    std::vector<Reading> readings;
    for (int i = 0; i < kPoints; ++i) {
        const double log = widest_log * i / (kPoints - 1);
        const double power =
            core::powerToSee(log, plan.options.s, plan.sqrt_v, plan.df, plan.options.confidence);
        const double pct = core::pctFromLog(log);
        curve.append({pct, 100.0 * power});
        table.add({pct, power});
        readings.push_back({nullptr, pct, 100.0 * power,
                            tr("a true effect of %1 % would be shown by %2 of 100 such days")
                                .arg(numbers.significant(pct), numbers.fixed(100.0 * power, 0)),
                            i});
    }
    const double detectable_pct = core::pctFromLog(plan.detectable_log);
    parts::addLevel(*this, 100.0 * plan.options.power, QPen(theme().grid, 1.0, Qt::DashLine));
    parts::addUpright(*this, detectable_pct, QPen(theme().grid, 1.0, Qt::DashLine));
    parts::addCurve(*this, curve, QPen(theme().result, 2.0));
    parts::addMarks(*this, {{detectable_pct, 100.0 * plan.options.power}},
                    QCPScatterStyle(QCPScatterStyle::ssDiamond, QPen(theme().paper, 1.0),
                                    QBrush(theme().result), 13));
    parts::addText(*this, {detectable_pct, 100.0 * plan.options.power},
                   tr(" %1 %").arg(numbers.significant(detectable_pct)), theme().ink,
                   Qt::AlignLeft | Qt::AlignTop);
    xAxis->setTicker(QSharedPointer<NumberTicker>::create());
    yAxis->setTicker(QSharedPointer<NumberTicker>::create());
    xAxis->setLabel(tr("true effect, per cent"));
    yAxis->setLabel(tr("days in 100 that would show it"));
    setWhole(xAxis, {0.0, core::pctFromLog(widest_log)});
    setWhole(yAxis, {0.0, 103.0});
    setReadings(std::move(readings));
    setNumbers(std::move(table));
    setWords(tr("Power"), tr("An effect of %1 % would be shown by %2 of 100 such days.")
                              .arg(numbers.significant(detectable_pct),
                                   numbers.fixed(100.0 * plan.options.power, 0)));
    finish();
}

} // namespace bothways::app
