// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/planning/widths_plot.h"

#include "app/desktop/plots/plot_parts.h"
#include "app/wording/plan.h"
#include "core/study/units.h"

#include <array>
#include <optional>

namespace bothways::app {
namespace {

constexpr int kWidths = 3; // straight, bent, any look

std::array<std::optional<double>, kWidths> widthsOf_pct(const core::Plan& plan)
{
    const auto pct = [](const std::optional<double>& log) {
        return log ? std::optional(core::pctFromLog(*log)) : std::nullopt;
    };
    return {pct(plan.half_width_log), pct(plan.curved_half_width_log),
            pct(plan.any_look_half_width_log)};
}

} // namespace

void WidthsPlot::show(const std::vector<core::Plan>& plans, const NumberWords& numbers)
{
    clearPicture();
    const std::vector<std::string> heads = wording::planWidthHeads(numbers.units().language);
    const std::array colours{theme().result, theme().device, theme().note};
    const std::array shapes{QCPScatterStyle::ssDiamond, QCPScatterStyle::ssSquare,
                            QCPScatterStyle::ssTriangle};
    PlotNumbers table({QStringLiteral("sequence"), QStringLiteral("pairs_per_block"),
                       QStringLiteral("half_width_pct"), QStringLiteral("curved_half_width_pct"),
                       QStringLiteral("any_look_half_width_pct")});
    QStringList names;
    QList<double> all{0.0};
    std::array<QList<QPointF>, kWidths> points;
    std::vector<Reading> readings;
    for (std::size_t row = 0; row < plans.size(); ++row) {
        const core::Plan& plan = plans[row];
        const double y = -static_cast<double>(row);
        const QString sequence = QString::fromStdString(plan.sequence);
        names.append(tr("%1, %n pair(s) a block", nullptr, plan.pairs_per_block).arg(sequence));
        const auto widths = widthsOf_pct(plan);
        for (std::size_t i = 0; i < widths.size(); ++i) {
            if (!widths[i])
                continue;
            points[i].append({*widths[i], y});
            all << *widths[i];
            readings.push_back({nullptr, *widths[i], y,
                                tr("%1, %2: plus or minus %3\u00a0%")
                                    .arg(names.back(), QString::fromStdString(heads[i]),
                                         numbers.significant(*widths[i]))});
        }
        table.add({sequence, static_cast<double>(plan.pairs_per_block), widths[0].value_or(0.0),
                   widths[1] ? QVariant(*widths[1]) : QVariant(),
                   widths[2] ? QVariant(*widths[2]) : QVariant()});
    }
    QList<parts::LegendEntry> entries;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const QCPScatterStyle mark(shapes[i], QPen(theme().paper, 1.0), QBrush(colours[i]), 12);
        parts::addMarks(*this, points[i], mark);
        entries.append({QString::fromStdString(heads[i]), Qt::NoPen, mark});
    }
    parts::setLegend(*this, entries);
    parts::setRows(*this, names);
    xAxis->setTicker(QSharedPointer<NumberTicker>::create());
    xAxis->setLabel(tr("half-width of the interval, per cent: narrower is better"));
    setWhole(xAxis, {0.0, parts::rangeAround(all, 0.1).upper});
    setReadings(std::move(readings));
    setNumbers(std::move(table));
    setWords(tr("More switches or more pairs, for the same hours"),
             QString::fromStdString(wording::planWidthsExplained(numbers.units().language)));
    finish();
}

} // namespace bothways::app
