// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one widget with its wheel, mouse, keys and cursor, which share their state.
#include "app/desktop/plots/plot_view.h"

#include "app/desktop/plots/plot_parts.h"

#include <QAccessible>
#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <limits>

namespace bothways::app {
namespace {

constexpr double kStep = 1.25;             // zoom of a key press or a notch of the wheel
constexpr double kShare = 0.1;             // of the view, for an arrow key
constexpr double kReach = 14.0;            // px within which a point is read off
constexpr double kWidestOfWhole = 4.0;     // zooming out ends there
constexpr double kNarrowestOfWhole = 1e-7; // zooming in ends there

bool isOurs(const QKeyEvent& event)
{
    const bool ctrl = event.modifiers() & Qt::ControlModifier;
    switch (event.key()) {
    case Qt::Key_C: return ctrl;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
    case Qt::Key_Minus:
    case Qt::Key_0:
    case Qt::Key_Comma:
    case Qt::Key_Period:
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down: return !ctrl && !(event.modifiers() & Qt::AltModifier);
    default: return false;
    }
}

} // namespace

PlotView::PlotView(QWidget* parent) : QCustomPlot(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_NoMousePropagation, false); // else what wheelEvent() ignores ends here
    setInteractions(QCP::iRangeDrag);
    setNoAntialiasingOnDrag(false);
    setPlottingHint(QCP::phFastPolylines, true);
    setAutoAddPlottableToLegend(false);
    axisRect()->setRangeZoom(Qt::Horizontal | Qt::Vertical);
    axisRect()->setupFullAxesBox(false);
    for (QCPAxis* axis : {xAxis2, yAxis2})
        axis->setVisible(false);
    setMinimumSize(160, 90);
    connect(this, &QCustomPlot::beforeReplot, this, [this] { parts::fitTexts(*this); });
    connect(this, &QCustomPlot::afterReplot, this, [this] {
        m_drawn = true;
        if (m_reading >= 0 && m_reading < static_cast<int>(m_readings.size()))
            placeReadOff(m_readings[static_cast<std::size_t>(m_reading)]);
    });
}

PlotView::~PlotView() = default;

void PlotView::clearPicture()
{
    m_reading = -1;
    m_readings.clear();
    m_nothing.clear();
    clearItems();
    clearPlottables();
}

void PlotView::setNothing(const QString& words)
{
    m_nothing = words;
}

void PlotView::setWords(const QString& title, const QString& content)
{
    m_title = title;
    m_content = content;
    setAccessibleName(title);
    setAccessibleDescription(m_nothing.isEmpty() ? content : m_nothing);
}

void PlotView::setReadings(std::vector<Reading> readings)
{
    m_readings = std::move(readings);
    m_reading = -1;
}

void PlotView::setWhole(QCPAxis* axis, const QCPRange& range)
{
    const bool atHome = !m_whole.contains(axis) || axis->range() == m_whole.value(axis);
    m_whole[axis] = range;
    if (atHome)
        axis->setRange(range);
}

void PlotView::finish()
{
    setBackground(QBrush(m_theme.paper));
    for (QCPAxisRect* rect : axisRects()) {
        rect->setBackground(QBrush(m_theme.paper));
        for (QCPAxis* axis : rect->axes())
            styleAxis(*axis);
    }
    replot(QCustomPlot::rpQueuedReplot);
}

void PlotView::styleAxis(QCPAxis& axis) const
{
    const QPen line(m_theme.grid, 1.0);
    axis.setBasePen(line);
    axis.setTickPen(line);
    axis.setSubTickPen(Qt::NoPen);
    axis.setTickLabelColor(m_theme.faint_ink);
    axis.setLabelColor(m_theme.ink);
    axis.setTickLabelFont(font());
    axis.setLabelFont(font());
    axis.setTickLength(0, 4);
    axis.grid()->setPen(QPen(m_theme.grid, 1.0));
    axis.grid()->setSubGridVisible(false);
    axis.grid()->setZeroLinePen(Qt::NoPen);
}

void PlotView::setTheme(const Theme& theme)
{
    m_theme = theme;
    finish();
}

bool PlotView::isZoomed() const
{
    return std::any_of(m_whole.keyBegin(), m_whole.keyEnd(),
                       [this](QCPAxis* axis) { return axis->range() != m_whole.value(axis); });
}

void PlotView::zoom(double factor, std::optional<QPointF> around)
{
    QCPAxisRect* only = around ? axisRectAt(*around) : nullptr;
    for (QCPAxisRect* rect : axisRects()) {
        if (only && rect != only)
            continue;
        for (const Qt::Orientation orientation : {Qt::Horizontal, Qt::Vertical})
            for (QCPAxis* axis : rect->rangeZoomAxes(orientation)) {
                if (!only && axis->property("follower").toBool())
                    continue;
                const double size = axis->range().size() / factor;
                const double whole = m_whole.contains(axis) ? m_whole.value(axis).size() : size;
                if (size > whole * kWidestOfWhole || size < whole * kNarrowestOfWhole)
                    continue;
                const double centre =
                    !only ? axis->range().center()
                          : axis->pixelToCoord(orientation == Qt::Horizontal ? around->x()
                                                                             : around->y());
                axis->scaleRange(1.0 / factor, centre);
            }
    }
    replot(QCustomPlot::rpQueuedReplot);
    emit viewChanged();
}

void PlotView::pan(double right, double up)
{
    for (QCPAxisRect* rect : axisRects()) {
        for (QCPAxis* axis : rect->rangeDragAxes(Qt::Horizontal))
            if (!axis->property("follower").toBool())
                axis->moveRange(right * axis->range().size());
        for (QCPAxis* axis : rect->rangeDragAxes(Qt::Vertical))
            axis->moveRange(up * axis->range().size());
    }
    replot(QCustomPlot::rpQueuedReplot);
    emit viewChanged();
}

void PlotView::showWhole()
{
    for (auto it = m_whole.cbegin(); it != m_whole.cend(); ++it)
        it.key()->setRange(it.value());
    replot(QCustomPlot::rpQueuedReplot);
    emit viewChanged();
}

QPointF PlotView::pixelOf(const Reading& reading) const
{
    QCPAxisRect* rect = reading.rect ? reading.rect : axisRect();
    return {rect->axis(QCPAxis::atBottom)->coordToPixel(reading.x),
            rect->axis(QCPAxis::atLeft)->coordToPixel(reading.y)};
}

int PlotView::nearestReading(const QPointF& at) const
{
    int nearest = -1;
    double best = kReach * kReach;
    for (std::size_t i = 0; i < m_readings.size(); ++i) {
        const QPointF away = pixelOf(m_readings[i]) - at;
        const double distance = QPointF::dotProduct(away, away);
        if (distance < best) {
            best = distance;
            nearest = static_cast<int>(i);
        }
    }
    return nearest;
}

void PlotView::redrawOverlay()
{
    if (!m_drawn)
        return;
    layer(QStringLiteral("overlay"))->replot();
    update();
}

void PlotView::readOffNext(int step)
{
    const int count = static_cast<int>(m_readings.size());
    if (count == 0)
        return;
    const int next =
        m_reading < 0 ? (step > 0 ? 0 : count - 1) : (m_reading + step + count) % count;
    setReadOff(next);
}

void PlotView::setReadOff(int index)
{
    if (index == m_reading)
        return;
    m_reading = index;
    if (index < 0) {
        if (m_label)
            m_label->setVisible(false);
        if (m_ring)
            m_ring->setVisible(false);
        setAccessibleDescription(m_content);
        redrawOverlay();
        return;
    }
    const Reading& reading = m_readings[static_cast<std::size_t>(index)];
    placeReadOff(reading);
    setAccessibleDescription(reading.words + u'\n' + m_content);
    QAccessibleEvent told(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&told);
}

void PlotView::placeReadOff(const Reading& reading)
{
    const bool isNew = !m_label;
    if (isNew) {
        m_ring = new QCPItemEllipse(this);
        m_label = new QCPItemText(this);
        for (QCPAbstractItem* item : {static_cast<QCPAbstractItem*>(m_ring.data()),
                                      static_cast<QCPAbstractItem*>(m_label.data())}) {
            item->setLayer(QStringLiteral("overlay"));
            item->setClipToAxisRect(false);
            item->setSelectable(false);
        }
        for (QCPItemPosition* position : {m_ring->topLeft, m_ring->bottomRight, m_label->position})
            position->setType(QCPItemPosition::ptAbsolute);
        m_label->setPadding(QMargins(7, 5, 7, 5));
        m_label->setTextAlignment(Qt::AlignLeft);
    }
    const QPointF at = pixelOf(reading);
    constexpr double kRing = 8.0;
    m_ring->topLeft->setPixelPosition(at - QPointF(kRing, kRing));
    m_ring->bottomRight->setPixelPosition(at + QPointF(kRing, kRing));
    m_ring->setPen(QPen(m_theme.ink, 1.5));
    m_label->setFont(font());
    m_label->setColor(m_theme.ink);
    m_label->setBrush(m_theme.paper);
    m_label->setPen(QPen(m_theme.faint_ink, 1.0));
    m_label->setText(reading.words);
    const QSizeF size = QFontMetricsF(font())
                            .boundingRect(QRectF(0, 0, 2000, 2000), Qt::AlignLeft, reading.words)
                            .size() +
                        QSizeF(16, 12);
    const bool left = at.x() + 14 + size.width() > width();
    const bool below = at.y() - 12 - size.height() < 0;
    QPointF place = at + QPointF(left ? -14 - size.width() : 14, below ? 12 : -12 - size.height());
    place.setX(std::clamp(place.x(), 0.0, std::max(0.0, width() - size.width())));
    place.setY(std::clamp(place.y(), 0.0, std::max(0.0, height() - size.height())));
    m_label->setPositionAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_label->position->setPixelPosition(place);
    const bool seen = rect().contains(at.toPoint());
    m_label->setVisible(seen);
    m_ring->setVisible(seen);
    redrawOverlay();
}

bool PlotView::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride && isOurs(static_cast<QKeyEvent&>(*event))) {
        event->accept();
        return true;
    }
    if (event->type() == QEvent::FontChange)
        finish();
    return QCustomPlot::event(event);
}

void PlotView::keyPressEvent(QKeyEvent* event)
{
    const bool ctrl = event->modifiers() & Qt::ControlModifier;
    const bool shift = event->modifiers() & Qt::ShiftModifier;
    if (ctrl && event->key() == Qt::Key_C) {
        shift ? copyNumbers() : copyPicture();
        return;
    }
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && m_reading >= 0) {
        emit readingActivated(m_readings[static_cast<std::size_t>(m_reading)].key);
        return;
    }
    if (event->key() == Qt::Key_Escape && m_reading >= 0) {
        setReadOff(-1);
        return;
    }
    if (!isOurs(*event)) {
        QCustomPlot::keyPressEvent(event);
        return;
    }
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal: zoom(kStep); break;
    case Qt::Key_Minus: zoom(1.0 / kStep); break;
    case Qt::Key_0: showWhole(); break;
    case Qt::Key_Comma: readOffNext(-1); break;
    case Qt::Key_Period: readOffNext(1); break;
    case Qt::Key_Left: pan(-kShare, 0.0); break;
    case Qt::Key_Right: pan(kShare, 0.0); break;
    case Qt::Key_Up: pan(0.0, kShare); break;
    case Qt::Key_Down: pan(0.0, -kShare); break;
    default: break;
    }
}

void PlotView::wheelEvent(QWheelEvent* event)
{
    if (!(event->modifiers() & Qt::ControlModifier)) {
        event->ignore(); // the page below scrolls
        return;
    }
    constexpr double kNotch = 120.0;
    zoom(std::pow(kStep, event->angleDelta().y() / kNotch), event->position());
    event->accept();
}

void PlotView::mousePressEvent(QMouseEvent* event)
{
    m_pressed = event->pos();
    const bool box = event->button() == Qt::LeftButton && event->modifiers() & Qt::ShiftModifier;
    setSelectionRectMode(box ? QCP::srmZoom : QCP::srmNone);
    if (event->button() == Qt::LeftButton)
        setReadOff(-1);
    QCustomPlot::mousePressEvent(event);
}

void PlotView::mouseMoveEvent(QMouseEvent* event)
{
    QCustomPlot::mouseMoveEvent(event);
    if (event->buttons() != Qt::NoButton)
        return;
    const int nearest = nearestReading(event->position());
    setReadOff(nearest);
    if (nearest < 0)
        hover(event->position());
    else
        unhover();
}

void PlotView::mouseReleaseEvent(QMouseEvent* event)
{
    QCustomPlot::mouseReleaseEvent(event);
    setSelectionRectMode(QCP::srmNone);
    if (event->pos() != m_pressed)
        emit viewChanged();
}

void PlotView::mouseDoubleClickEvent(QMouseEvent* event)
{
    const int nearest = nearestReading(event->position());
    if (nearest >= 0)
        emit readingActivated(m_readings[static_cast<std::size_t>(nearest)].key);
    else
        showWhole();
    event->accept();
}

void PlotView::leaveEvent(QEvent* event)
{
    setReadOff(-1);
    unhover();
    QCustomPlot::leaveEvent(event);
}

void PlotView::paintEvent(QPaintEvent* event)
{
    QCustomPlot::paintEvent(event);
    QPainter painter(this);
    if (!m_nothing.isEmpty()) { // axes would show numbers that nobody measured
        painter.fillRect(rect(), m_theme.paper);
        painter.setPen(m_theme.faint_ink);
        painter.drawText(rect().adjusted(20, 10, -20, -10), Qt::AlignCenter | Qt::TextWordWrap,
                         m_nothing);
    }
    if (!hasFocus())
        return;
    painter.setPen(QPen(m_theme.selection, 2.0));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

void PlotView::focusInEvent(QFocusEvent* event)
{
    QCustomPlot::focusInEvent(event);
    update();
}

void PlotView::focusOutEvent(QFocusEvent* event)
{
    QCustomPlot::focusOutEvent(event);
    update();
}

} // namespace bothways::app
