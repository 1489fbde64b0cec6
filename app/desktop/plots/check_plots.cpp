// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/check_plots.h"

#include "app/desktop/look/study_values.h"
#include "app/desktop/plots/clock_axis.h"
#include "app/desktop/plots/plot_parts.h"
#include "core/statistics/distributions.h"
#include "core/study/units.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace bothways::app::check_plots {
namespace {

struct CheckPlots {
    Q_DECLARE_TR_FUNCTIONS(CheckPlots)
};

constexpr double kMark = 8.0;

/// Residual of the i-th pair in per cent; 0 without a verdict.
double residual_pct(const core::Analysis& analysis, std::size_t i)
{
    return core::pctFromLog(analysis.headline->residuals[i]);
}

bool hasResiduals(const core::Analysis& analysis)
{
    return analysis.headline && analysis.headline->residuals.size() == analysis.pairs.size();
}

QString pairWords(const core::Pair& pair, const QString& value, const Words& words)
{
    return CheckPlots::tr("pair %1 (%2), runs %3 and %4\n%5")
        .arg(words.units().number(pair.number, 0), words.quoted(pair.configuration),
             words.units().number(pair.out_run, 0), words.units().number(pair.return_run, 0),
             value);
}

/// The pairs as marks in the shape of their configuration, with readings and numbers.
class PairMarks {
public:
    PairMarks(PlotView& plot, const Words& words, QStringList header)
        : m_plot(plot), m_words(words), m_numbers(std::move(header))
    {
    }
    void add(const core::Pair& pair, double x, double y, const QString& value)
    {
        (pair.device ? m_device : m_baseline) << QPointF(x, y);
        m_readings.push_back({nullptr, x, y, pairWords(pair, value, m_words), pair.out_run});
        m_numbers.add({pair.number, QString::fromStdString(pair.configuration), x, y});
    }
    void finish()
    {
        parts::addMarks(m_plot, m_baseline, markOf(m_plot.theme(), false, false, kMark));
        parts::addMarks(m_plot, m_device, markOf(m_plot.theme(), true, false, kMark));
        if (m_readings.empty())
            m_plot.setNothing(CheckPlots::tr("There are no pairs yet."));
        m_plot.setReadings(std::move(m_readings));
        m_plot.setNumbers(std::move(m_numbers));
    }

private:
    PlotView& m_plot;
    const Words& m_words;
    QList<QPointF> m_baseline, m_device;
    std::vector<Reading> m_readings;
    PlotNumbers m_numbers;
};

QStringList header(const char* x, const char* y)
{
    return {QStringLiteral("pair"), QStringLiteral("configuration"), QLatin1String(x),
            QLatin1String(y)};
}

void setTimeAxis(PlotView& plot, const ClockAxis& clock)
{
    plot.xAxis->setTicker(clock.ticker());
    plot.xAxis->setLabel(CheckPlots::tr("time of day"));
    plot.xAxis->grid()->setVisible(false);
    plot.setWhole(plot.xAxis, clock.whole());
}

void setPercentAxis(PlotView& plot, QList<double> values, const QString& label)
{
    plot.yAxis->setTicker(QSharedPointer<NumberTicker>::create(true));
    plot.yAxis->setLabel(label);
    values << 0.0;
    plot.setWhole(plot.yAxis, parts::rangeAround(values, 0.12));
}

QColor faded(QColor colour)
{
    colour.setAlpha(110);
    return colour;
}

QString percent(const Words& words, double pct)
{
    return words.units().percentFromLog(core::logFromPct(pct), 2);
}

/// The slope that is common to all days, through the middle of each: a day has its own level.
class DriftByDay {
public:
    void add(int day, double time_h, double log) { m_days[day].emplace_back(time_h, log); }
    void draw(PlotView& plot, const ClockAxis& clock, double slope_per_h) const
    {
        for (const auto& [day, points] : m_days) {
            const auto count = static_cast<double>(points.size());
            double t = 0.0;
            double y = 0.0;
            for (const auto& [time_h, log] : points) {
                t += time_h / count;
                y += log / count;
            }
            QList<QPointF> line;
            for (const double time_h : {points.front().first, points.back().first})
                line << QPointF(clock.place(time_h),
                                core::pctFromLog(y + slope_per_h * (time_h - t)));
            parts::addCurve(plot, line, QPen(plot.theme().ink, 1.5, Qt::DashLine));
        }
    }

private:
    std::map<int, std::vector<std::pair<double, double>>> m_days; ///< time in h, log; by day
};

} // namespace

void fillQuantiles(PlotView& plot, const ResultSet& result, const Words& words)
{
    const core::Analysis& analysis = result.analysis;
    plot.clearPicture();
    if (hasResiduals(analysis)) {
        const std::size_t n = analysis.pairs.size();
        std::vector<std::size_t> order(n);
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return analysis.headline->residuals[a] < analysis.headline->residuals[b];
        });
        PairMarks marks(plot, words, header("normal_quantile", "residual_pct"));
        QList<double> values;
        double last = 1.0;
        for (std::size_t i = 0; i < n; ++i) {
            const double z = core::normalQuantile((static_cast<double>(i) + 1.0 - 0.375) /
                                                  (static_cast<double>(n) + 0.25));
            const double residual = residual_pct(analysis, order[i]);
            values << residual;
            last = std::max(last, std::abs(z));
            marks.add(analysis.pairs[order[i]], z, residual,
                      CheckPlots::tr("residual %1").arg(percent(words, residual)));
        }
        // residuals are smaller than the noise by the share that the fit has used up
        const double slope = 100.0 * analysis.headline->s *
                             std::sqrt(analysis.headline->df / static_cast<double>(n));
        const double reach = 1.15 * last;
        parts::addCurve(plot, {{-reach, -reach * slope}, {reach, reach * slope}},
                        QPen(plot.theme().ink, 1.5, Qt::DashLine));
        values << -last * slope << last * slope;
        marks.finish();
        setPercentAxis(plot, values, CheckPlots::tr("residual, %"));
        plot.setWhole(plot.xAxis, {-reach, reach});
    }
    plot.xAxis->setTicker(QSharedPointer<NumberTicker>::create());
    plot.xAxis->setLabel(CheckPlots::tr("expected of ordinary scatter, in standard deviations"));
    plot.setWords(CheckPlots::tr("Residuals against ordinary scatter"),
                  words.check(CheckKind::normal));
    plot.finish();
}

void fillResiduals(PlotView& plot, const ResultSet& result, const Words& words)
{
    const core::Analysis& analysis = result.analysis;
    const ClockAxis clock(result.study);
    plot.clearPicture();
    parts::addLevel(plot, 0.0, QPen(plot.theme().ink, 1.5));
    if (hasResiduals(analysis)) {
        PairMarks marks(plot, words, header("place_h", "residual_pct"));
        QList<double> values;
        std::map<int, QList<QPointF>> lines; // by day: nothing was driven between two
        for (std::size_t i = 0; i < analysis.pairs.size(); ++i) {
            const double residual = residual_pct(analysis, i);
            const double x = clock.place(analysis.pairs[i].time_h);
            values << residual;
            lines[analysis.pairs[i].day] << QPointF(x, residual);
            marks.add(analysis.pairs[i], x, residual,
                      CheckPlots::tr("residual %1").arg(percent(words, residual)));
        }
        for (const auto& [day, line] : lines)
            parts::addCurve(plot, line, QPen(faded(plot.theme().faint_ink), 1.0));
        marks.finish();
        setPercentAxis(plot, values, CheckPlots::tr("residual, %"));
    }
    setTimeAxis(plot, clock);
    plot.setWords(CheckPlots::tr("Residuals over time"), words.check(CheckKind::order));
    plot.finish();
}

void fillSpread(PlotView& plot, const ResultSet& result, const Words& words)
{
    const core::Analysis& analysis = result.analysis;
    plot.clearPicture();
    parts::addLevel(plot, 0.0, QPen(plot.theme().ink, 1.5));
    if (hasResiduals(analysis)) {
        PairMarks marks(plot, words, header("group", "residual_pct"));
        QList<double> values;
        std::array<int, 2> seen{0, 0};
        for (std::size_t i = 0; i < analysis.pairs.size(); ++i) {
            const core::Pair& pair = analysis.pairs[i];
            const double residual = residual_pct(analysis, i);
            // side by side in a fixed pattern, so that equal ones stay apart
            const double aside = 0.09 * ((seen[pair.device ? 1 : 0]++ % 5) - 2);
            values << residual;
            marks.add(pair, (pair.device ? 1.0 : 0.0) + aside, residual,
                      CheckPlots::tr("residual %1").arg(percent(words, residual)));
        }
        marks.finish();
        setPercentAxis(plot, values, CheckPlots::tr("residual, %"));
    }
    QSharedPointer<QCPAxisTickerText> ticker(new QCPAxisTickerText);
    ticker->addTick(0.0, words.baseline());
    ticker->addTick(1.0, words.device());
    plot.xAxis->setTicker(ticker);
    plot.xAxis->setLabel(CheckPlots::tr("configuration"));
    plot.xAxis->grid()->setVisible(false);
    plot.setWhole(plot.xAxis, {-0.6, 1.6});
    plot.setWords(CheckPlots::tr("Scatter of both configurations"), words.check(CheckKind::spread));
    plot.finish();
}

void fillBaseline(PlotView& plot, const ResultSet& result, const Words& words)
{
    const core::Analysis& analysis = result.analysis;
    const ClockAxis clock(result.study);
    plot.clearPicture();
    struct BlockMean {
        double sum = 0.0, from = 0.0, to = 0.0;
        int n = 0;
    };
    std::map<int, BlockMean> blocks;
    for (const core::Pair& pair : analysis.pairs) {
        if (pair.device)
            continue;
        BlockMean& block = blocks[pair.block];
        const double x = clock.place(pair.time_h);
        block.from = block.n == 0 ? x : std::min(block.from, x);
        block.to = block.n == 0 ? x : std::max(block.to, x);
        block.sum += pair.log;
        ++block.n;
    }
    if (!blocks.empty()) {
        const double first = blocks.begin()->second.sum / blocks.begin()->second.n;
        PairMarks marks(plot, words, header("place_h", "against_first_block_pct"));
        QList<double> values;
        for (const core::Pair& pair : analysis.pairs) {
            if (pair.device)
                continue;
            const double pct = core::pctFromLog(pair.log - first);
            values << pct;
            marks.add(pair, clock.place(pair.time_h), pct,
                      CheckPlots::tr("against the first block: %1").arg(percent(words, pct)));
        }
        for (const auto& [number, block] : blocks) {
            const double mean = core::pctFromLog(block.sum / block.n - first);
            const double wing = std::max(0.05, 0.08 * (block.to - block.from));
            parts::addLine(plot, {block.from - wing, mean}, {block.to + wing, mean},
                           QPen(plot.theme().baseline, 2.0));
        }
        marks.finish();
        setPercentAxis(plot, values, CheckPlots::tr("against its first block, %"));
    }
    parts::addLevel(plot, 0.0, QPen(plot.theme().ink, 1.0, Qt::DashLine));
    setTimeAxis(plot, clock);
    plot.setWords(CheckPlots::tr("The baseline over the day"), words.check(CheckKind::baseline));
    plot.finish();
}

void fillDirection(PlotView& plot, const ResultSet& result, const Words& words)
{
    const core::Analysis& analysis = result.analysis;
    const ClockAxis clock(result.study);
    plot.clearPicture();
    PairMarks marks(plot, words, header("place_h", "out_against_return_pct"));
    QList<double> values;
    DriftByDay drift;
    const bool control = usesControl(analysis);
    for (const core::Pair& pair : analysis.pairs) {
        const auto out = logOf(result.study.runs[pair.out_index], control);
        const auto back = logOf(result.study.runs[pair.return_index], control);
        if (!out || !back)
            continue;
        const double log = *out - *back;
        const double pct = core::pctFromLog(log);
        drift.add(pair.day, pair.time_h, log);
        values << pct;
        marks.add(pair, clock.place(pair.time_h), pct,
                  CheckPlots::tr("out against return: %1").arg(percent(words, pct)));
    }
    if (const auto& slope = analysis.checks.direction.slope_per_h)
        drift.draw(plot, clock, *slope);
    marks.finish();
    plot.yAxis->setTicker(QSharedPointer<NumberTicker>::create(true));
    plot.yAxis->setLabel(CheckPlots::tr("out against return, %"));
    if (!values.isEmpty())
        plot.setWhole(plot.yAxis, parts::rangeAround(values, 0.15));
    setTimeAxis(plot, clock);
    plot.setWords(CheckPlots::tr("Out against return over time"),
                  words.check(CheckKind::direction));
    plot.finish();
}

} // namespace bothways::app::check_plots
