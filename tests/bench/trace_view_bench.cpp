// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/trace_plot.h"

#include <QApplication>
#include <QElapsedTimer>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <random>

// Pan and zoom of three long channels, against the drawing library holding the same raw data
// (antialiased, one-pixel pen, its own adaptive sampling), in one run.

using namespace bothways;
using namespace bothways::app;

namespace {

constexpr int kChannels = 3;
constexpr int kFrames = 41; // odd, for a median
constexpr QSize kSize(1200, 700);

std::shared_ptr<core::Samples> noise(std::size_t n, unsigned seed)
{
    auto samples = std::make_shared<core::Samples>();
    samples->time_s.reserve(n);
    samples->value.reserve(n);
    std::mt19937 random(seed);
    std::normal_distribution<double> step(0.0, 1.0);
    double level = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        level = 0.999 * level + step(random);
        samples->time_s.push_back(0.01 * static_cast<double>(i));
        samples->value.push_back(100.0 + level + 0.3 * step(random));
    }
    return samples;
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

/// Milliseconds a frame: the whole, then pans and zooms like a hand on the wheel.
template <class SetRange>
std::vector<double> frames(QCustomPlot& plot, double length, const SetRange& setRange, bool whole)
{
    std::vector<double> times;
    for (int frame = 0; frame < kFrames; ++frame) {
        const double share = whole ? 1.0 - 0.002 * frame : 0.3 / (1 + frame % 7);
        const double from = whole ? 0.001 * length * frame : 0.012 * length * frame;
        setRange(from, from + share * length);
        QElapsedTimer timer;
        timer.start();
        plot.replot(QCustomPlot::rpImmediateRefresh);
        times.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
    }
    return times;
}

struct Figures {
    double whole_ms, part_ms, first_ms;
};

Figures ours(const std::vector<std::shared_ptr<core::Samples>>& channels)
{
    QElapsedTimer timer;
    timer.start();
    TracePlot plot;
    plot.resize(kSize);
    TracePlot::Content content;
    for (int i = 0; i < kChannels; ++i) {
        TraceStrip strip{QString::number(i), QString::number(i), 1.0, {}};
        strip.lines.push_back({1, QStringLiteral("run 1"), Theme::light().series(i % 2 != 0), false,
                               std::make_shared<TraceSeries>(channels[static_cast<std::size_t>(i)],
                                                             TraceAxis::time, DistanceOfTime())});
        content.strips.push_back(strip);
    }
    plot.show(content, {});
    plot.QWidget::show();
    plot.replot(QCustomPlot::rpImmediateRefresh);
    const double first = static_cast<double>(timer.nsecsElapsed()) / 1e6;
    const double length = channels.front()->time_s.back();
    const auto set = [&](double from, double to) {
        plot.axisRect(1)->axis(QCPAxis::atBottom)->setRange(from, to);
    };
    const double whole = median(frames(plot, length, set, true));
    return {whole, median(frames(plot, length, set, false)), first};
}

Figures theirs(const std::vector<std::shared_ptr<core::Samples>>& channels)
{
    QElapsedTimer timer;
    timer.start();
    QCustomPlot plot;
    plot.resize(kSize);
    plot.setNoAntialiasingOnDrag(false);
    plot.plotLayout()->clear();
    for (int i = 0; i < kChannels; ++i) {
        const core::Samples& samples = *channels[static_cast<std::size_t>(i)];
        auto* rect = new QCPAxisRect(&plot);
        plot.plotLayout()->addElement(i, 0, rect);
        QCPGraph* graph = plot.addGraph(rect->axis(QCPAxis::atBottom), rect->axis(QCPAxis::atLeft));
        QVector<QCPGraphData> points;
        points.reserve(static_cast<qsizetype>(samples.size()));
        for (std::size_t k = 0; k < samples.size(); ++k)
            points.append({samples.time_s[k], samples.value[k]});
        graph->data()->set(points, true);
        graph->setAntialiased(true);
        graph->setPen(QPen(Theme::light().series(i % 2 != 0), 1.0));
        graph->rescaleAxes();
    }
    plot.show();
    plot.replot(QCustomPlot::rpImmediateRefresh);
    const double first = static_cast<double>(timer.nsecsElapsed()) / 1e6;
    const double length = channels.front()->time_s.back();
    const auto set = [&](double from, double to) {
        for (int i = 0; i < kChannels; ++i)
            plot.axisRect(i)->axis(QCPAxis::atBottom)->setRange(from, to);
    };
    const double whole = median(frames(plot, length, set, true));
    return {whole, median(frames(plot, length, set, false)), first};
}

} // namespace

int main(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    std::printf("%d channels, %d x %d, antialiased, 1 px; medians of %d frames, ms\n", kChannels,
                kSize.width(), kSize.height(), kFrames);
    std::printf("%10s | %8s %8s %8s | %8s %8s %8s | ratio whole, part, first\n", "samples", "whole",
                "part", "first", "raw", "part", "first");
    for (const std::size_t n : {100'000U, 1'000'000U, 4'000'000U}) {
        std::vector<std::shared_ptr<core::Samples>> channels;
        for (unsigned i = 0; i < kChannels; ++i)
            channels.push_back(noise(n, i + 1));
        const Figures a = ours(channels);
        const Figures b = theirs(channels);
        std::printf("%10zu | %8.2f %8.2f %8.1f | %8.2f %8.2f %8.1f | 1/%.1f 1/%.1f 1/%.1f\n", n,
                    a.whole_ms, a.part_ms, a.first_ms, b.whole_ms, b.part_ms, b.first_ms,
                    b.whole_ms / a.whole_ms, b.part_ms / a.part_ms, b.first_ms / a.first_ms);
    }
    return 0;
}
