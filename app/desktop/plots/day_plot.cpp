// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/said.h"
#include "app/desktop/look/study_values.h"
#include "app/desktop/plots/clock_axis.h"
#include "app/desktop/plots/plot_parts.h"
#include "app/desktop/plots/result_plots.h"

#include "core/study/units.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bothways::app {
namespace {

constexpr double kFarOff = 2.5; // of the spread of what counts: farther discards go to the edge

/// A run that no pair shows: discarded, or without a partner.
struct LoneRun {
    const core::Run* run;
    double time_h;
    std::optional<double> log; ///< direction taken out
};

class DayPicture {
    Q_DECLARE_TR_FUNCTIONS(DayPicture)

public:
    DayPicture(DayPlot& plot, const ResultSet& result, const Words& words)
        : m_plot(plot),
          m_study(result.study),
          m_analysis(result.analysis),
          m_words(words),
          m_clock(result.study),
          m_control(usesControl(result.analysis))
    {
        findDirectionHalf();
        findLoneRuns();
        findRange();
    }

    void draw()
    {
        drawBlocks();
        drawFit();
        drawLoneRuns();
        drawPairs();
        m_plot.setReadings(std::move(m_readings));
        m_plot.setNumbers(std::move(m_numbers));
    }

    QCPRange range() const { return m_range; }
    const ClockAxis& clock() const { return m_clock; }
    bool control() const { return m_control; }

    /// From a log to what the axis shows.
    double shown(double log) const
    {
        if (m_control)
            return 100.0 * std::exp(log);
        return core::fromLPer100km(std::exp(log), m_words.units().consumptionInForce());
    }

private:
    /// Half of the mean difference between out and return, so that a single run can be set beside
    /// pairs.
    void findDirectionHalf()
    {
        double sum = 0.0;
        int count = 0;
        for (const core::Pair& pair : m_analysis.pairs) {
            const auto out = logOf(m_study.runs[pair.out_index], m_control);
            const auto back = logOf(m_study.runs[pair.return_index], m_control);
            if (!out || !back)
                continue;
            sum += 0.5 * (*out - *back);
            ++count;
        }
        m_directionHalf = count == 0 ? 0.0 : sum / count;
    }

    void findLoneRuns()
    {
        std::vector<bool> paired(m_study.runs.size(), false);
        for (const core::Pair& pair : m_analysis.pairs)
            paired[pair.out_index] = paired[pair.return_index] = true;
        const std::vector<std::string> ways = core::directions(m_study);
        for (std::size_t i = 0; i < m_study.runs.size(); ++i) {
            if (paired[i])
                continue;
            const core::Run& run = m_study.runs[i];
            std::optional<double> log = logOf(run, m_control);
            if (log && !ways.empty())
                *log += core::sameWord(run.direction, ways.front()) ? -m_directionHalf
                                                                    : m_directionHalf;
            m_lone.push_back({&run, spanOf(m_study, run).mid_h, log});
        }
    }

    void findRange()
    {
        QList<double> values;
        for (const core::Pair& pair : m_analysis.pairs)
            values << shown(pair.log);
        if (m_analysis.headline)
            for (const double fitted : m_analysis.headline->fitted)
                values << shown(fitted);
        if (values.isEmpty())
            for (const LoneRun& lone : m_lone)
                if (lone.log)
                    values << shown(*lone.log);
        const QCPRange core = parts::rangeAround(values, 0.0);
        for (const LoneRun& lone : m_lone)
            if (lone.log && std::abs(shown(*lone.log) - core.center()) < kFarOff * core.size())
                values << shown(*lone.log);
        m_range = parts::rangeAround(values, 0.12);
        m_range.upper += 0.12 * m_range.size(); // room for the names of the blocks
    }

    void drawBlocks()
    {
        std::map<int, std::pair<double, double>> spans; // by block
        for (std::size_t i = 0, block = 0; i < m_study.runs.size(); ++i) {
            const core::Run& run = m_study.runs[i];
            const RunSpan span = spanOf(m_study, run);
            const bool starts =
                i == 0 || !core::sameWord(run.configuration, m_study.runs[i - 1].configuration) ||
                span.from_h - spanOf(m_study, m_study.runs[i - 1]).from_h > 6.0;
            if (starts)
                ++block;
            auto [it, isNew] = spans.try_emplace(
                static_cast<int>(block), m_clock.place(span.from_h), m_clock.place(span.to_h));
            it->second.second = std::max(it->second.second, m_clock.place(span.to_h));
        }
        for (const core::Block& block : m_analysis.blocks) {
            const auto span = spans.find(block.block);
            if (span == spans.end())
                continue;
            const auto [from, to] = span->second;
            if (block.device)
                parts::addColumnBand(m_plot, from, to, m_plot.theme().block_tint);
            QCPItemText* name = parts::addText(
                m_plot, {0.5 * (from + to), 0.0}, m_words.quoted(block.configuration),
                m_plot.theme().series(block.device), Qt::AlignHCenter | Qt::AlignTop);
            name->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
            name->position->setCoords(0.5 * (from + to), 0.01);
            QFont font = m_plot.font();
            font.setBold(true);
            name->setFont(font);
        }
    }

    void drawFit()
    {
        if (!m_analysis.headline)
            return;
        QList<QPointF> points;
        const QPen pen(m_plot.theme().ink, 1.5, Qt::DashLine);
        for (std::size_t i = 0; i < m_analysis.pairs.size(); ++i) {
            const core::Pair& pair = m_analysis.pairs[i];
            if (i > 0 && pair.block != m_analysis.pairs[i - 1].block) {
                parts::addCurve(m_plot, points, pen);
                points.clear();
            }
            points << QPointF(m_clock.place(pair.time_h), shown(m_analysis.headline->fitted[i]));
        }
        parts::addCurve(m_plot, points, pen);
    }

    void drawPairs()
    {
        for (const bool device : {false, true}) {
            QList<QPointF> points;
            for (const core::Pair& pair : m_analysis.pairs)
                if (pair.device == device)
                    points << QPointF(m_clock.place(pair.time_h), shown(pair.log));
            parts::addMarks(m_plot, points, markOf(m_plot.theme(), device, false, 11));
        }
        for (const core::Pair& pair : m_analysis.pairs) {
            const double x = m_clock.place(pair.time_h);
            QString text =
                tr("pair %1, %2, %3\nruns %4 and %5: %6")
                    .arg(m_words.units().number(pair.number, 0), m_words.quoted(pair.configuration),
                         m_clock.clock(x), m_words.units().number(pair.out_run, 0),
                         m_words.units().number(pair.return_run, 0), valueText(pair));
            if (pair.mixed_setting)
                text += u'\n' + tr("its runs have different settings");
            if (pair.fixed)
                text += u'\n' + tr("tied by hand");
            m_readings.push_back({nullptr, x, shown(pair.log), text, pair.out_run});
            m_numbers.add({QStringLiteral("pair"), pair.number, pair.block,
                           QString::fromStdString(pair.configuration), pair.out_run,
                           pair.return_run, pair.time_h, pair.l_per_100km, pair.log, QString()});
        }
    }

    QString valueText(const core::Pair& pair) const
    {
        if (m_control)
            return tr("%1\u00a0% of the control vehicle's")
                .arg(m_words.numbers().fixed(shown(pair.log), 2));
        return m_words.units().consumptionWithUnit(pair.l_per_100km);
    }

    void drawLoneRuns()
    {
        for (const LoneRun& lone : m_lone) {
            const bool device = !core::sameWord(lone.run->configuration, m_analysis.baseline);
            const double x = m_clock.place(lone.time_h);
            double y = lone.log ? shown(*lone.log) : m_range.lower;
            const bool outside = !m_range.contains(y) || !lone.log;
            QCPScatterStyle style = markOf(m_plot.theme(), device, true, 9);
            if (!lone.run->discard)
                style = QCPScatterStyle(
                    device ? QCPScatterStyle::ssCrossSquare : QCPScatterStyle::ssCrossCircle,
                    QPen(m_plot.theme().series(device), 1.5), QBrush(m_plot.theme().paper), 10);
            if (outside) {
                const double inset = 0.03 * m_range.size();
                const bool high = lone.log && y > m_range.upper;
                y = high ? m_range.upper - inset : m_range.lower + inset;
                style.setShape(!lone.log ? QCPScatterStyle::ssCross
                               : high    ? QCPScatterStyle::ssTriangle
                                         : QCPScatterStyle::ssTriangleInverted);
            }
            parts::addMarks(m_plot, {{x, y}}, style);
            m_readings.push_back({nullptr, x, y, loneWords(lone, x), lone.run->number});
            m_numbers.add(
                {lone.run->discard ? QStringLiteral("discarded") : QStringLiteral("unpaired"),
                 QVariant(), QVariant(), QString::fromStdString(lone.run->configuration),
                 lone.run->number, QVariant(), lone.time_h, own(*lone.run), cell(lone.log),
                 lone.run->discard ? QString::fromStdString(lone.run->discard->reason)
                                   : QString()});
        }
    }

    static QVariant cell(const std::optional<double>& value)
    {
        return value ? QVariant(*value) : QVariant();
    }
    static QVariant own(const core::Run& run) { return cell(core::lPer100km(run)); }

    QString loneWords(const LoneRun& lone, double x) const
    {
        const core::Run& run = *lone.run;
        const QString value =
            lone.log ? m_words.units().consumptionWithUnit(core::lPer100km(run).value_or(0.0))
                     : tr("no consumption");
        const QString head =
            tr("run %1, %2, %3, %4\n%5")
                .arg(m_words.units().number(run.number, 0), m_words.quoted(run.configuration),
                     nameShown(run.direction), m_clock.clock(x), value);
        if (!run.discard)
            return head + u'\n' + tr("counted, but without a partner");
        const QString reason =
            app::shown(wording::reasonName(m_words.language(), run.discard->reason));
        if (run.discard->evidence.empty())
            return head + u'\n' + tr("discarded: %1").arg(reason);
        return head + u'\n' + tr("discarded: %1\n%2").arg(reason, nameShown(run.discard->evidence));
    }

    DayPlot& m_plot;
    const core::Study& m_study;
    const core::Analysis& m_analysis;
    const Words& m_words;
    ClockAxis m_clock;
    bool m_control;
    double m_directionHalf = 0.0;
    std::vector<LoneRun> m_lone;
    QCPRange m_range;
    std::vector<Reading> m_readings;
    PlotNumbers m_numbers{QStringList{QStringLiteral("kind"), QStringLiteral("pair"),
                                      QStringLiteral("block"), QStringLiteral("configuration"),
                                      QStringLiteral("run"), QStringLiteral("return_run"),
                                      QStringLiteral("time_h"), QStringLiteral("l_per_100km"),
                                      QStringLiteral("log"), QStringLiteral("reason")}};
};

} // namespace

void DayPlot::show(const ResultSet& result, const Words& words)
{
    clearPicture();
    const core::Analysis& analysis = result.analysis;
    QList<parts::LegendEntry> entries;
    if (!analysis.baseline.empty())
        entries.append({tr("pair with %1").arg(words.baseline()), Qt::NoPen,
                        markOf(theme(), false, false, 10)});
    if (!analysis.device.empty())
        entries.append(
            {tr("pair with %1").arg(words.device()), Qt::NoPen, markOf(theme(), true, false, 10)});
    if (analysis.headline)
        entries.append({tr("fitted"), QPen(theme().ink, 1.5, Qt::DashLine),
                        QCPScatterStyle(QCPScatterStyle::ssNone)});
    if (analysis.discarded > 0)
        entries.append({tr("discarded run"), Qt::NoPen,
                        QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(theme().faint_ink, 1.5),
                                        QBrush(theme().paper), 9)});
    if (!analysis.unpaired.empty())
        entries.append({tr("run without a partner"), Qt::NoPen,
                        QCPScatterStyle(QCPScatterStyle::ssCrossCircle,
                                        QPen(theme().faint_ink, 1.5), QBrush(theme().paper), 10)});
    parts::setLegend(*this, entries);
    DayPicture picture(*this, result, words);
    picture.draw();
    xAxis->setTicker(picture.clock().ticker());
    xAxis->setLabel(tr("time of day"));
    xAxis->grid()->setVisible(false);
    yAxis->setTicker(QSharedPointer<NumberTicker>::create());
    yAxis->setLabel(picture.control() ? tr("% of the control vehicle's")
                                      : words.units().consumptionUnit());
    setWhole(xAxis, picture.clock().whole());
    setWhole(yAxis, picture.range());
    if (std::ranges::none_of(result.study.runs,
                             [](const core::Run& run) { return run.consumption.has_value(); }))
        setNothing(tr("No run has a consumption yet."));
    setWords(tr("Pairs over time"), words.tally());
    finish();
}

} // namespace bothways::app
