// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/cut_plot.h"

#include "app/desktop/plots/plot_parts.h"
#include "app/desktop/plots/trace_plot.h"

#include <QKeyEvent>
#include <QMouseEvent>

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

constexpr double kReach_px = 6.0;   // an edge is taken hold of within so many pixels
constexpr double kShortest_s = 1.0; // a part is not dragged shorter
constexpr double kNudge_s = 1.0, kFineNudge_s = 0.1;
constexpr double kRoomForLabels = 0.16; // of the height
constexpr double kClockFrom_s = 600.0;  // longer recordings are read as h:mm:ss

} // namespace

CutPlot::CutPlot(QWidget* parent) : PlotView(parent)
{
    setObjectName("cutPlot");
    setMouseTracking(true);
    setMinimumHeight(180);
    setWords(tr("Parts of the recording"), {});
}

void CutPlot::setSpeed(std::shared_ptr<const core::Samples> speed, const UnitsShown& units)
{
    m_speed = std::move(speed);
    m_units = units;
    setLocale(units.locale);
    rebuild();
}

void CutPlot::setBands(std::vector<CutBand> bands)
{
    m_bands = std::move(bands);
    m_chosen = m_dragged = -1;
    rebuild();
}

void CutPlot::rebuild()
{
    clearPicture();
    m_rects.clear();
    m_labels.clear();
    m_edges.clear();
    QCPRange whole(0.0, 1.0), speeds(0.0, 1.0);
    if (m_speed && m_speed->size() > 0) {
        auto* line = new TraceLine(
            xAxis, yAxis,
            std::make_shared<TraceSeries>(m_speed, TraceAxis::time, DistanceOfTime()));
        line->setPen(QPen(theme().baseline, 1.0));
        whole = {m_speed->time_s.front(), m_speed->time_s.back()};
        bool found = false;
        speeds = line->getValueRange(found, QCP::sdBoth, QCPRange());
        speeds.lower = std::min(speeds.lower, 0.0);
    }
    for (const CutBand& band : m_bands)
        whole.expand({band.from_s, band.to_s});
    if (whole.size() > kClockFrom_s) {
        QSharedPointer<QCPAxisTickerTime> ticker(new QCPAxisTickerTime);
        ticker->setTimeFormat(QStringLiteral("%h:%m:%s"));
        xAxis->setTicker(ticker);
    } else {
        xAxis->setTicker(QSharedPointer<NumberTicker>::create());
    }
    const bool miles = m_units.distance == DistanceUnit::miles;
    yAxis->setTicker(QSharedPointer<NumberTicker>::create(false, QString(),
                                                          miles ? 1.0 / core::kKmPerMile : 1.0));
    xAxis->setLabel(tr("time in the recording"));
    yAxis->setLabel(tr("road speed, %1").arg(m_units.speedUnit()));
    setWhole(xAxis, {whole.lower - 0.01 * whole.size(), whole.upper + 0.01 * whole.size()});
    setWhole(yAxis, {speeds.lower, speeds.upper + kRoomForLabels * speeds.size()});
    for (const CutBand& band : m_bands) {
        auto* rect = new QCPItemRect(this);
        for (QCPItemPosition* corner : {rect->topLeft, rect->bottomRight}) {
            corner->setTypeX(QCPItemPosition::ptPlotCoords);
            corner->setTypeY(QCPItemPosition::ptAxisRectRatio);
        }
        rect->setPen(Qt::NoPen);
        rect->setLayer(QStringLiteral("background"));
        m_rects.emplace_back(rect);
        for (const double at : {band.from_s, band.to_s})
            m_edges.emplace_back(parts::addUpright(*this, at, QPen(theme().device, 1.5)));
        m_labels.emplace_back(parts::addText(*this, {band.from_s, speeds.upper}, band.label,
                                             theme().ink, Qt::AlignHCenter | Qt::AlignBottom));
    }
    QStringList sentences;
    for (const CutBand& band : m_bands)
        sentences +=
            tr("%1: from %2 s to %3 s.")
                .arg(band.label, m_units.number(band.from_s, 1), m_units.number(band.to_s, 1));
    setWords(tr("Parts of the recording"), sentences.join(u' '));
    place();
    finish();
}

/// Puts rects, edges and labels where their bands are.
void CutPlot::place()
{
    for (std::size_t i = 0; i < m_bands.size(); ++i) {
        const CutBand& band = m_bands[i];
        QColor fill = theme().device;
        fill.setAlpha(band.wanted ? 60 : 14);
        m_rects[i]->setBrush(fill);
        m_rects[i]->topLeft->setCoords(band.from_s, 0.0);
        m_rects[i]->bottomRight->setCoords(band.to_s, 1.0);
        m_labels[i]->position->setCoords(0.5 * (band.from_s + band.to_s),
                                         m_labels[i]->position->coords().y());
        m_labels[i]->setColor(band.wanted ? theme().ink : theme().faint_ink);
        for (const int side : {0, 1}) {
            const auto which = 2 * i + static_cast<std::size_t>(side);
            const double at = side == 0 ? band.from_s : band.to_s;
            const bool chosen = static_cast<int>(which) == m_chosen;
            m_edges[which]->setPen(QPen(chosen ? theme().ink : theme().device, chosen ? 3.0 : 1.5,
                                        band.wanted ? Qt::SolidLine : Qt::DotLine));
            m_edges[which]->point1->setCoords(at, 0.0);
            m_edges[which]->point2->setCoords(at, 1.0);
        }
    }
}

double CutPlot::pixelOf(double time_s)
{
    return xAxis->coordToPixel(time_s);
}

double CutPlot::edge(int which) const
{
    const CutBand& band = m_bands[static_cast<std::size_t>(which / 2)];
    return which % 2 == 0 ? band.from_s : band.to_s;
}

int CutPlot::edgeAt(double x)
{
    int nearest = -1;
    double distance = kReach_px;
    for (int which = 0; which < 2 * static_cast<int>(m_bands.size()); ++which)
        if (const double away = std::abs(pixelOf(edge(which)) - x); away <= distance) {
            nearest = which;
            distance = away;
        }
    return nearest;
}

void CutPlot::moveEdge(int which, double to_s)
{
    CutBand& band = m_bands[static_cast<std::size_t>(which / 2)];
    if (m_speed && m_speed->size() > 0)
        to_s = std::clamp(to_s, m_speed->time_s.front(), m_speed->time_s.back());
    if (which % 2 == 0)
        band.from_s = std::min(to_s, band.to_s - kShortest_s);
    else
        band.to_s = std::max(to_s, band.from_s + kShortest_s);
    m_chosen = which;
    place();
    replot(QCustomPlot::rpQueuedReplot);
    emit bandMoved(which / 2);
}

void CutPlot::mousePressEvent(QMouseEvent* event)
{
    m_dragged = event->button() == Qt::LeftButton ? edgeAt(event->position().x()) : -1;
    if (m_dragged < 0) {
        PlotView::mousePressEvent(event);
        return;
    }
    m_chosen = m_dragged;
    setFocus();
    place();
    replot(QCustomPlot::rpQueuedReplot);
    event->accept();
}

void CutPlot::mouseMoveEvent(QMouseEvent* event)
{
    if (m_dragged >= 0) {
        moveEdge(m_dragged, xAxis->pixelToCoord(event->position().x()));
        event->accept();
        return;
    }
    setCursor(edgeAt(event->position().x()) >= 0 ? Qt::SplitHCursor : Qt::ArrowCursor);
    PlotView::mouseMoveEvent(event);
}

void CutPlot::mouseReleaseEvent(QMouseEvent* event)
{
    if (m_dragged < 0) {
        PlotView::mouseReleaseEvent(event);
        return;
    }
    m_dragged = -1;
    event->accept();
}

void CutPlot::keyPressEvent(QKeyEvent* event)
{
    const int edges = 2 * static_cast<int>(m_bands.size());
    const bool sideways = event->key() == Qt::Key_Left || event->key() == Qt::Key_Right;
    if (event->key() == Qt::Key_E && edges > 0) {
        m_chosen = (m_chosen + (event->modifiers() & Qt::ShiftModifier ? edges - 1 : 1)) % edges;
        place();
        replot();
    } else if (sideways && (event->modifiers() & Qt::ControlModifier) && m_chosen >= 0) {
        const double step = event->modifiers() & Qt::ShiftModifier ? kFineNudge_s : kNudge_s;
        moveEdge(m_chosen, edge(m_chosen) + (event->key() == Qt::Key_Left ? -step : step));
    } else {
        PlotView::keyPressEvent(event);
        return;
    }
    event->accept();
}

} // namespace bothways::app
