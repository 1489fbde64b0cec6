// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/trace_scatter.h"

#include "app/desktop/plots/plot_parts.h"
#include "app/desktop/plots/trace_channels.h"

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

constexpr std::size_t kMostPoints = 20'000; // of one run
constexpr double kWidest_s = 1.5;           // between two samples that are joined

std::string unitOf(const core::RunTrace& trace, const std::string& channel)
{
    for (const core::ChannelInfo& info : trace.channels())
        if (info.name == channel)
            return info.unit;
    return {};
}

} // namespace

std::optional<double> valueAt(const core::Samples& samples, double time_s, double widest_s)
{
    const auto begin = samples.time_s.begin();
    const auto end = samples.time_s.end();
    const auto after = std::lower_bound(begin, end, time_s);
    if (after == end)
        return std::nullopt;
    const auto i = static_cast<std::size_t>(after - begin);
    if (*after == time_s)
        return samples.value[i];
    if (i == 0 || samples.time_s[i] - samples.time_s[i - 1] > widest_s)
        return std::nullopt;
    const double share =
        (time_s - samples.time_s[i - 1]) / (samples.time_s[i] - samples.time_s[i - 1]);
    return samples.value[i - 1] + share * (samples.value[i] - samples.value[i - 1]);
}

void TraceScatter::show(const std::vector<RunShown>& runs, const std::string& across,
                        const std::string& up, const UnitsShown& units)
{
    clearPicture();
    PlotNumbers table({QStringLiteral("run"), QStringLiteral("time_s"),
                       QString::fromStdString(across), QString::fromStdString(up)});
    QList<parts::LegendEntry> entries;
    QList<double> xs;
    QList<double> ys;
    std::size_t widestStep = 1;
    ChannelShown xShown = channelShown(across, {}, units);
    ChannelShown yShown = channelShown(up, {}, units);
    for (const RunShown& shown : runs) {
        if (!shown.run->trace)
            continue;
        const auto x = shown.run->trace->samples(across);
        const auto y = shown.run->trace->samples(up);
        if (!x || !y)
            continue;
        xShown = channelShown(across, unitOf(*shown.run->trace, across), units);
        yShown = channelShown(up, unitOf(*shown.run->trace, up), units);
        const std::size_t step = std::max<std::size_t>(1, x->size() / kMostPoints);
        widestStep = std::max(widestStep, step);
        const QCPScatterStyle style(shown.run->device ? QCPScatterStyle::ssSquare
                                                      : QCPScatterStyle::ssCircle,
                                    QPen(theme().series(shown.run->device), 1.0), Qt::NoBrush, 4);
        auto* cloud = new QCPCurve(xAxis, yAxis);
        cloud->setLineStyle(QCPCurve::lsNone);
        cloud->setScatterStyle(style);
        cloud->setSelectable(QCP::stNone);
        QVector<QCPCurveData> points;
        for (std::size_t i = 0; i < x->size(); i += step) {
            const auto value = valueAt(*y, x->time_s[i], kWidest_s);
            if (!value || !std::isfinite(*value) || !std::isfinite(x->value[i]))
                continue;
            points.append({static_cast<double>(points.size()), x->value[i], *value});
            xs << x->value[i];
            ys << *value;
            table.add({shown.run->run, x->time_s[i], x->value[i], *value});
        }
        cloud->data()->set(points, true);
        entries.append({shown.run->label, Qt::NoPen, style});
    }
    parts::setLegend(*this, entries);
    xAxis->setTicker(QSharedPointer<NumberTicker>::create(false, QString(), xShown.factor));
    yAxis->setTicker(QSharedPointer<NumberTicker>::create(false, QString(), yShown.factor));
    xAxis->setLabel(xShown.label);
    yAxis->setLabel(yShown.label);
    setWhole(xAxis, parts::rangeAround(xs));
    setWhole(yAxis, parts::rangeAround(ys));
    setNumbers(std::move(table));
    //: one channel against another
    setWords(tr("%1 against %2").arg(yShown.label, xShown.label),
             widestStep > 1 ? tr("Of the longest run one sample in %1 is drawn.")
                                  .arg(units.number(static_cast<double>(widestStep), 0))
                            : tr("Every sample is drawn."));
    finish();
}

} // namespace bothways::app
