// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "app/desktop/plots/plot_view.h"
#include "app/desktop/plots/trace_series.h"

#include <map>
#include <memory>
#include <vector>

namespace bothways::app {

/// Draws one series in as many columns as its axis has pixels, each with its true minimum and
/// maximum. The pen is one pixel wide: Qt draws wider polylines many times slower.
class TraceLine final : public QCPAbstractPlottable {
    Q_OBJECT

public:
    TraceLine(QCPAxis* keyAxis, QCPAxis* valueAxis, std::shared_ptr<const TraceSeries> series);

    double selectTest(const QPointF& pos, bool onlySelectable,
                      QVariant* details = nullptr) const override;
    QCPRange getKeyRange(bool& foundRange, QCP::SignDomain inSignDomain) const override;
    QCPRange getValueRange(bool& foundRange, QCP::SignDomain inSignDomain,
                           const QCPRange& inKeyRange) const override;
    [[nodiscard]] const TraceSeries& series() const { return *m_series; }

protected:
    void draw(QCPPainter* painter) override;
    void drawLegendIcon(QCPPainter* painter, const QRectF& rect) const override;

private:
    void drawSamples(QCPPainter* painter, core::SampleRange seen) const;
    void drawColumns(QCPPainter* painter, const QCPRange& range, std::size_t count) const;

    std::shared_ptr<const TraceSeries> m_series;
};

/// A channel as it stands in the stack: its name, and what is drawn in its strip.
struct TraceStrip {
    QString channel;     ///< "road_speed_kmh"
    QString label;       ///< as the user reads it, with its unit
    double factor = 1.0; ///< from the recording's unit to the one that is read
    struct Line {
        int run = 0;  ///< number
        QString name; ///< of the run, or "set"
        QColor colour;
        bool setPoint = false; ///< pale: what it was told to be
        Qt::PenStyle dashes = Qt::SolidLine;
        std::shared_ptr<const TraceSeries> series;
    };
    std::vector<Line> lines;
};

/// Something that lasts from one place to another, over all strips.
struct TraceBand {
    double from = 0.0, to = 0.0; ///< places
    QString label;               ///< beside its top
    QString words;               ///< when it is read off
    core::Grade grade = core::Grade::note;
    int key = 0; ///< index of the finding in the owner's list
};
struct TraceMark {
    double at = 0.0;
    QString words;
};

/// Channels stacked on one axis of time or distance, with findings as bands and marks as lines.
class TracePlot final : public PlotView {
    Q_OBJECT

public:
    explicit TracePlot(QWidget* parent = nullptr);

    struct Content {
        std::vector<TraceStrip> strips;
        std::vector<TraceBand> bands;
        std::vector<TraceMark> marks;
        TraceAxis axis = TraceAxis::time;
        QString title, sentence;
    };
    /// @param units  for the distance axis
    void show(Content content, const UnitsShown& units);
    /// Shows a stretch with air around it.
    void showStretch(double from, double to);
    /// Puts the reading line at a place (or takes it away).
    void readAt(std::optional<double> place);
    [[nodiscard]] std::optional<double> readingPlace() const { return m_cursor; }
    /// What each strip says at the reading line.
    [[nodiscard]] QStringList readingTexts() const;
    void readOffNext(int step) override;
    /// What is seen: sample by sample, or minimum and maximum by column where that is too much.
    [[nodiscard]] PlotNumbers numbers() const override;

signals:
    void bandActivated(int key);

protected:
    void hover(const QPointF& at) override;
    void unhover() override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;

private:
    void buildStrips(bool keepsView);
    [[nodiscard]] QCPAxisRect* makeLane(int rows);
    /// A row for each band, so that their names do not lie over one another.
    [[nodiscard]] std::vector<int> lanesOfBands() const;
    void addStrip(const TraceStrip& strip, bool last);
    void addBands(const std::vector<int>& lanes);
    void addMarkLines(int lane);
    void placeCursor();
    void keepOffTitle(QCPItemText& text, const QCPAxisRect& rect, const QString& title) const;
    [[nodiscard]] QString placeText(double place) const;
    [[nodiscard]] QString valueTextsOf(const TraceStrip& strip, double place) const;
    [[nodiscard]] QCPRange wholePlaces() const;

    Content m_content;
    UnitsShown m_units;
    std::optional<double> m_cursor;
    std::vector<QPointer<QCPItemStraightLine>> m_cursorLines;
    std::vector<QPointer<QCPItemText>> m_cursorTexts;
    bool m_linking = false;
};

} // namespace bothways::app
