// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one picture: its strips, bands and marks are laid out together.
#include "app/desktop/plots/trace_plot.h"

#include "app/desktop/plots/plot_parts.h"

#include <QKeyEvent>

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

constexpr int kMostLanes = 6;                // of labels above the strips
constexpr double kNameShare = 0.22;          // of a strip's height, for its name
constexpr double kLabelShare = 0.16;         // of the whole that a label is taken to need
constexpr double kClockFrom_s = 1800.0;      // longer stretches are read as h:mm:ss
constexpr double kAirAroundStretch = 1.5;    // times its length, on both sides
constexpr double kLeastShare = 0.02;         // of the whole that a stretch is shown with
constexpr double kCursorShare = 0.01;        // of the view, a press of a key
constexpr std::size_t kMostRows = 50'000;    // of one line in the numbers; else columns
constexpr std::size_t kNumberColumns = 2000; // then

QString glyphOf(core::Grade grade)
{
    switch (grade) {
    case core::Grade::spoils: return QStringLiteral("✖");
    case core::Grade::doubtful: return QStringLiteral("▲");
    case core::Grade::note: return QStringLiteral("•");
    }
    return {};
}

QColor colourOf(core::Grade grade, const Theme& theme)
{
    switch (grade) {
    case core::Grade::spoils: return theme.fails;
    case core::Grade::doubtful: return theme.note;
    case core::Grade::note: return theme.faint_ink;
    }
    return theme.faint_ink;
}

QColor tinted(QColor colour, int alpha)
{
    colour.setAlpha(alpha);
    return colour;
}

} // namespace

TracePlot::TracePlot(QWidget* parent) : PlotView(parent) {}

void TracePlot::show(Content content, const UnitsShown& units)
{
    const bool keepsView = content.axis == m_content.axis;
    m_content = std::move(content);
    m_units = units;
    clearPicture();
    buildStrips(keepsView);
    setWords(m_content.title, m_content.sentence);
    finish();
    placeCursor();
}

QCPRange TracePlot::wholePlaces() const
{
    bool any = false;
    QCPRange whole(0.0, 1.0);
    for (const TraceStrip& strip : m_content.strips)
        for (const TraceStrip::Line& line : strip.lines) {
            const auto places = line.series->places();
            if (places.empty())
                continue;
            whole.lower = any ? std::min(whole.lower, places.front()) : places.front();
            whole.upper = any ? std::max(whole.upper, places.back()) : places.back();
            any = true;
        }
    if (!(whole.size() > 0.0))
        whole.upper = whole.lower + 1.0;
    const double air = 0.01 * whole.size();
    return {whole.lower - air, whole.upper + air};
}

std::vector<int> TracePlot::lanesOfBands() const
{
    const double need = kLabelShare * wholePlaces().size();
    std::vector<double> ends; // of the lanes begun so far
    std::vector<int> lanes;
    for (const TraceBand& band : m_content.bands) {
        auto lane =
            std::find_if(ends.begin(), ends.end(), [&](double end) { return band.from >= end; });
        if (lane == ends.end() && ends.size() < kMostLanes)
            lane = ends.insert(ends.end(), 0.0);
        if (lane == ends.end())
            lane = std::min_element(ends.begin(), ends.end());
        *lane = std::max(band.to, band.from + need);
        lanes.push_back(static_cast<int>(lane - ends.begin()));
    }
    return lanes;
}

void TracePlot::buildStrips(bool keepsView)
{
    // the view stays where it is when only colours or channels change
    const bool hadStrips = keepsView && axisRectCount() > 1;
    const QCPRange seen = hadStrips ? axisRect(0)->axis(QCPAxis::atBottom)->range() : QCPRange();
    const bool zoomed = hadStrips && isZoomed();
    m_cursorLines.clear();
    m_cursorTexts.clear();
    forgetWhole();
    plotLayout()->clear();
    plotLayout()->setRowSpacing(3);

    const std::vector<int> lanes = lanesOfBands();
    const int bandLanes = lanes.empty() ? 0 : 1 + *std::max_element(lanes.begin(), lanes.end());
    const int markLanes = m_content.marks.empty() ? 0 : 1;
    auto* lane = makeLane(bandLanes + markLanes);
    auto* margins = new QCPMarginGroup(this);
    lane->setMarginGroup(QCP::msLeft | QCP::msRight, margins);

    for (std::size_t i = 0; i < m_content.strips.size(); ++i) {
        addStrip(m_content.strips[i], i + 1 == m_content.strips.size());
        axisRect(static_cast<int>(i) + 1)->setMarginGroup(QCP::msLeft | QCP::msRight, margins);
    }
    const QCPRange whole = wholePlaces();
    for (int i = 0; i < axisRectCount(); ++i) {
        QCPAxis* axis = axisRect(i)->axis(QCPAxis::atBottom);
        setWhole(axis, whole);
        if (zoomed)
            axis->setRange(seen);
        if (i > 0)
            setFollower(axis);
        connect(axis, qOverload<const QCPRange&>(&QCPAxis::rangeChanged), this,
                [this](const QCPRange& range) {
                    if (m_linking)
                        return;
                    m_linking = true;
                    for (QCPAxisRect* rect : axisRects())
                        rect->axis(QCPAxis::atBottom)->setRange(range);
                    m_linking = false;
                });
    }
    addBands(lanes);
    addMarkLines(bandLanes);
}

/// The lane above the strips, `rows` lines of text high: names of findings, and marks.
QCPAxisRect* TracePlot::makeLane(int rows)
{
    auto* lane = new QCPAxisRect(this);
    plotLayout()->addElement(0, 0, lane);
    const int height = rows == 0 ? 4 : rows * (fontMetrics().height() + 5);
    lane->setMinimumSize(50, height);
    lane->setMaximumSize(QWIDGETSIZE_MAX, height);
    lane->setMinimumMargins(QMargins(0, 2, 6, 0));
    lane->setLayer(QStringLiteral("background"));
    for (QCPAxis* axis : lane->axes())
        axis->setVisible(false);
    lane->axis(QCPAxis::atLeft)->setRange(-static_cast<double>(std::max(rows, 1)), 0.0);
    lane->setRangeDrag(Qt::Horizontal);
    lane->setRangeZoom(Qt::Horizontal);
    return lane;
}

void TracePlot::addStrip(const TraceStrip& strip, bool last)
{
    auto* rect = new QCPAxisRect(this);
    plotLayout()->addElement(plotLayout()->rowCount(), 0, rect);
    rect->setRangeDrag(Qt::Horizontal);
    rect->setRangeZoom(Qt::Horizontal);
    rect->setMinimumSize(50, 48);
    // as QCustomPlot does it for its own first rect: else bands would lie under the paper
    rect->setLayer(QStringLiteral("background"));
    for (QCPAxis* axis : rect->axes()) {
        axis->setLayer(QStringLiteral("axes"));
        axis->grid()->setLayer(QStringLiteral("grid"));
    }
    rect->setMinimumMargins(QMargins(0, 0, 6, 0));
    QCPAxis* bottom = rect->axis(QCPAxis::atBottom);
    QCPAxis* left = rect->axis(QCPAxis::atLeft);
    bottom->setTickLabels(last);
    if (m_content.axis == TraceAxis::time && wholePlaces().size() > kClockFrom_s) {
        QSharedPointer<QCPAxisTickerTime> ticker(new QCPAxisTickerTime);
        ticker->setTimeFormat(QStringLiteral("%h:%m:%s"));
        bottom->setTicker(ticker);
    } else {
        bottom->setTicker(QSharedPointer<NumberTicker>::create());
    }
    if (last)
        bottom->setLabel(
            m_content.axis == TraceAxis::time
                ? tr("time since the run's start, s")
                : tr("distance since the run's start, %1").arg(m_units.distanceUnit()));
    auto ticker = QSharedPointer<NumberTicker>::create(false, QString(), strip.factor);
    ticker->setTickCount(3);
    left->setTicker(ticker);
    QList<double> extremes;
    for (const TraceStrip::Line& line : strip.lines) {
        auto* drawn = new TraceLine(bottom, left, line.series);
        constexpr int kPale = 120; // of 255
        drawn->setPen(
            QPen(line.setPoint ? tinted(line.colour, kPale) : line.colour, 1.0, line.dashes));
        bool found = false;
        const QCPRange range = drawn->getValueRange(found, QCP::sdBoth, QCPRange());
        if (found)
            extremes << range.lower << range.upper;
    }
    QCPRange seen = parts::rangeAround(extremes, 0.1);
    seen.upper += kNameShare * seen.size(); // room for the strip's name
    setWhole(left, seen);
    QCPItemText* name = parts::addCornerText(*this, {0.0, 0.0}, strip.label, theme().ink,
                                             Qt::AlignLeft | Qt::AlignTop, rect);
    QFont bold = font();
    bold.setBold(true);
    name->setFont(bold);
    name->setBrush(tinted(theme().paper, 200));
}

void TracePlot::addBands(const std::vector<int>& lanes)
{
    QCPAxisRect* lane = axisRect(0);
    std::vector<Reading> readings;
    for (std::size_t k = 0; k < m_content.bands.size(); ++k) {
        const TraceBand& band = m_content.bands[k];
        const QColor colour = colourOf(band.grade, theme());
        for (int i = 1; i < axisRectCount(); ++i)
            parts::addColumnBand(*this, band.from, band.to, tinted(colour, 46), axisRect(i));
        const double top = -static_cast<double>(lanes[k]);
        QPen bar(colour, 4.0);
        bar.setCapStyle(Qt::FlatCap);
        parts::addLine(*this, {band.from, top - 0.88}, {band.to, top - 0.88}, bar, lane);
        parts::addText(
            *this, {band.from, top - 0.42},
            tr("%1 %2", "glyph and name of a finding").arg(glyphOf(band.grade), band.label),
            theme().ink, Qt::AlignLeft | Qt::AlignVCenter, lane)
            ->setPadding(QMargins(0, 0, 0, 0));
        readings.push_back({lane, band.from, top - 0.88, band.words, band.key});
    }
    setReadings(std::move(readings));
}

void TracePlot::addMarkLines(int lane)
{
    for (const TraceMark& mark : m_content.marks) {
        for (int i = 1; i < axisRectCount(); ++i)
            parts::addUpright(*this, mark.at, QPen(theme().faint_ink, 1.0, Qt::DotLine),
                              axisRect(i));
        parts::addText(*this, {mark.at, -lane - 0.45}, tr("⚑ %1").arg(mark.words),
                       theme().faint_ink, Qt::AlignLeft | Qt::AlignVCenter, axisRect(0))
            ->setPadding(QMargins(0, 0, 0, 0));
    }
}

void TracePlot::showStretch(double from, double to)
{
    if (axisRectCount() == 0)
        return;
    const QCPRange whole = wholePlaces();
    const double length = std::max(to - from, kLeastShare * whole.size());
    const double centre = 0.5 * (from + to);
    const double half = (0.5 + kAirAroundStretch) * length;
    axisRect(0)->axis(QCPAxis::atBottom)->setRange(centre - half, centre + half);
    readAt(centre);
    replot(QCustomPlot::rpQueuedReplot);
    emit viewChanged();
}

void TracePlot::readAt(std::optional<double> place)
{
    m_cursor = place;
    placeCursor();
    if (place)
        setAccessibleDescription(readingTexts().join(u'\n'));
}

QString TracePlot::placeText(double place) const
{
    if (m_content.axis == TraceAxis::distance)
        return tr("%1\u00a0%2").arg(m_units.number(place, 3), m_units.distanceUnit());
    return tr("%1\u00a0s").arg(m_units.number(place, 2));
}

QString TracePlot::valueTextsOf(const TraceStrip& strip, double place) const
{
    QStringList texts;
    for (const TraceStrip::Line& line : strip.lines) {
        const auto sample = line.series->nearest(place);
        if (!sample)
            continue;
        const double value = line.series->values()[*sample] * strip.factor;
        const QString number =
            std::isfinite(value) ? m_units.locale.toString(value, 'g', 5) : QStringLiteral("–");
        texts << (strip.lines.size() == 1 ? number
                                          //: a run's name, and its value
                                          : tr("%1: %2").arg(line.name, number));
    }
    return texts.join(QStringLiteral("   "));
}

QStringList TracePlot::readingTexts() const
{
    QStringList texts;
    if (!m_cursor)
        return texts;
    texts << placeText(*m_cursor);
    for (const TraceStrip& strip : m_content.strips) {
        const QString values = valueTextsOf(strip, *m_cursor);
        if (!values.isEmpty())
            texts << tr("%1: %2").arg(strip.label, values);
    }
    return texts;
}

/// What is read off stands beside the strip's name, or else at the strip's lower edge.
void TracePlot::keepOffTitle(QCPItemText& text, const QCPAxisRect& rect, const QString& title) const
{
    QFont bold = font();
    bold.setBold(true);
    constexpr int kAir = 24;
    const bool beside = QFontMetrics(bold).horizontalAdvance(title) +
                            fontMetrics().horizontalAdvance(text.text()) + kAir <
                        rect.width();
    text.position->setCoords(1.0, beside ? 0.0 : 1.0);
    text.setPositionAlignment(Qt::AlignRight | (beside ? Qt::AlignTop : Qt::AlignBottom));
}

void TracePlot::placeCursor()
{
    for (int i = 1; i < axisRectCount(); ++i) {
        const auto k = static_cast<std::size_t>(i - 1);
        if (m_cursorLines.size() <= k) {
            m_cursorLines.emplace_back(
                parts::addUpright(*this, 0.0, QPen(theme().ink, 1.0), axisRect(i)));
            m_cursorLines.back()->setLayer(QStringLiteral("overlay"));
            m_cursorTexts.emplace_back(
                parts::addCornerText(*this, {1.0, 0.0}, QString(), theme().ink,
                                     Qt::AlignRight | Qt::AlignTop, axisRect(i)));
            m_cursorTexts.back()->setLayer(QStringLiteral("overlay"));
            m_cursorTexts.back()->setBrush(tinted(theme().paper, 220));
        }
        const bool shown = m_cursor.has_value();
        m_cursorLines[k]->setVisible(shown);
        m_cursorTexts[k]->setVisible(shown);
        if (!shown)
            continue;
        m_cursorLines[k]->point1->setCoords(*m_cursor, 0.0);
        m_cursorLines[k]->point2->setCoords(*m_cursor, 1.0);
        const QString values = valueTextsOf(m_content.strips[k], *m_cursor);
        const QString text =
            i == 1 ? placeText(*m_cursor) + QStringLiteral("   ") + values : values;
        m_cursorTexts[k]->setText(text);
        keepOffTitle(*m_cursorTexts[k], *axisRect(i), m_content.strips[k].label);
    }
    redrawOverlay();
}

void TracePlot::hover(const QPointF& at)
{
    if (axisRectCount() < 2)
        return;
    readAt(axisRect(1)->axis(QCPAxis::atBottom)->pixelToCoord(at.x()));
}

void TracePlot::unhover() {}

void TracePlot::readOffNext(int step)
{
    if (axisRectCount() < 2)
        return;
    const QCPRange seen = axisRect(1)->axis(QCPAxis::atBottom)->range();
    const double from = m_cursor && seen.contains(*m_cursor) ? *m_cursor : seen.center();
    readAt(std::clamp(from + step * kCursorShare * seen.size(), seen.lower, seen.upper));
}

void TracePlot::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (axisRectCount() < 2) {
        event->accept();
        return;
    }
    const double place = axisRect(1)->axis(QCPAxis::atBottom)->pixelToCoord(event->position().x());
    const double reach = 4.0 * axisRect(1)->axis(QCPAxis::atBottom)->range().size() /
                         std::max(1, axisRect(1)->width());
    const TraceBand* hit = nullptr;
    for (const TraceBand& band : m_content.bands)
        if (place >= band.from - reach && place <= band.to + reach &&
            (hit == nullptr || band.to - band.from < hit->to - hit->from))
            hit = &band;
    if (hit != nullptr)
        emit bandActivated(hit->key);
    else
        showWhole();
    event->accept();
}

PlotNumbers TracePlot::numbers() const
{
    const bool byTime = m_content.axis == TraceAxis::time;
    PlotNumbers table({QStringLiteral("run"), QStringLiteral("channel"),
                       byTime ? QStringLiteral("time_s") : QStringLiteral("distance"),
                       QStringLiteral("minimum"), QStringLiteral("maximum")});
    if (axisRectCount() < 2)
        return table;
    const QCPRange seen = axisRect(1)->axis(QCPAxis::atBottom)->range();
    for (const TraceStrip& strip : m_content.strips)
        for (const TraceStrip::Line& line : strip.lines) {
            const QString channel =
                line.setPoint ? strip.channel + QLatin1String("_set") : strip.channel;
            const auto places = line.series->places();
            const auto values = line.series->values();
            const auto range = core::samplesBetween(places, seen.lower, seen.upper);
            if (range.last - range.first <= kMostRows) {
                for (std::size_t i = range.first; i < range.last; ++i)
                    table.add({line.run, channel, places[i], values[i], values[i]});
                continue;
            }
            for (const core::PlacedColumn& column : core::columnsOf(
                     places, line.series->pyramid(), seen.lower, seen.upper, kNumberColumns))
                table.add({line.run, channel, places[column.what.first], column.what.minimum,
                           column.what.maximum});
        }
    return table;
}

} // namespace bothways::app
