// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/written_files.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/plots/plot_numbers.h"

#include <qcustomplot.h>

#include <QHash>
#include <QPointer>

#include <functional>
#include <optional>
#include <vector>

namespace bothways::app {

/// A point of a picture that can be read off, with the words for it.
struct Reading {
    QCPAxisRect* rect = nullptr;
    double x = 0.0, y = 0.0; ///< on the bottom and left axis of `rect`
    QString words;           ///< one or more lines
    int key = 0;             ///< the owner's: a run, a pair
};

/// Every picture of the program: it can be zoomed, moved, read off, copied and saved, with mouse or
/// keyboard, and says in words what it shows.
///
/// Wheel with Ctrl: zoom (without it the page below scrolls); drag: move; Shift
/// and drag: zoom into the box; double click or 0: all of it; + and -: zoom; arrows: move; comma
/// and full stop: read off the point before and after; Enter: go to that point; Ctrl+C: copy the
/// picture; Ctrl+Shift+C: copy the numbers; context menu: all of it.
class PlotView : public QCustomPlot {
    Q_OBJECT

public:
    explicit PlotView(QWidget* parent = nullptr);
    ~PlotView() override;

    /// Takes everything off, keeps the axes; fill anew and call finish().
    /// Words in place of axes, where there is nothing to draw; until clearPicture().
    void setNothing(const QString& words);
    void clearPicture();
    /// @param title    a few words: accessible name, title of files
    /// @param content  what the picture says, in sentences, for those who cannot see it
    void setWords(const QString& title, const QString& content);
    void setReadings(std::vector<Reading> readings);
    void setNumbers(PlotNumbers numbers) { m_numbers = std::move(numbers); }
    /// The range that shows everything. A zoomed view keeps its range.
    void setWhole(QCPAxis* axis, const QCPRange& range);
    /// Styles all that is there for the theme and draws.
    void finish();

    void setTheme(const Theme& theme);
    [[nodiscard]] const Theme& theme() const { return m_theme; }
    /// What "copy numbers" and "save as CSV" give.
    [[nodiscard]] virtual PlotNumbers numbers() const { return m_numbers; }
    [[nodiscard]] const std::vector<Reading>& readings() const { return m_readings; }
    [[nodiscard]] const QString& title() const { return m_title; }
    /// Index of the point that is read off, -1: none.
    [[nodiscard]] int readOff() const { return m_reading; }
    [[nodiscard]] bool isZoomed() const;

    void zoom(double factor, std::optional<QPointF> around = {});
    /// Moves by a share of what is seen.
    void pan(double right, double up);
    void showWhole();
    virtual void readOffNext(int step);

    [[nodiscard]] QImage picture(double scale = 1.0);
    [[nodiscard]] QByteArray svg();
    [[nodiscard]] QByteArray pdf();
    /// PNG, SVG, PDF or CSV by the file's ending. @return  what went wrong; empty when all is well
    [[nodiscard]] QString save(const QString& file, IfThere ifThere = IfThere::replaced);
    void copyPicture();
    void copyNumbers();

signals:
    void readingActivated(int key); ///< double click or Enter on a point that is read off
    void viewChanged();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    /// More lines for the context menu.
    virtual void extendMenu(QMenu&) {}
    /// Draws the overlay alone, once there has been a first picture to lay it over.
    void redrawOverlay();
    /// Axes that are about to go have no whole any more.
    void forgetWhole() { m_whole.clear(); }
    /// The axis moves when another does, so that zooming all of them must not move it twice.
    static void setFollower(QCPAxis* axis) { axis->setProperty("follower", true); }
    /// What a place says where no reading is near; default nothing.
    virtual void hover(const QPointF&) {}
    virtual void unhover() {}

private:
    void saveAs();
    void setReadOff(int index);
    void placeReadOff(const Reading& reading);
    [[nodiscard]] int nearestReading(const QPointF& at) const;
    [[nodiscard]] QPointF pixelOf(const Reading& reading) const;
    void styleAxis(QCPAxis& axis) const;
    void hideReadOffWhile(const std::function<void()>& job);

    Theme m_theme = Theme::light();
    QString m_nothing;
    QString m_title, m_content;
    std::vector<Reading> m_readings;
    PlotNumbers m_numbers;
    QHash<QCPAxis*, QCPRange> m_whole;
    int m_reading = -1;
    bool m_drawn = false; ///< there has been a first picture
    QPoint m_pressed;
    QPointer<QCPItemText> m_label;
    QPointer<QCPItemEllipse> m_ring;
};

/// Ticks with as many decimals as they need, a real minus, and a plus where asked.
class NumberTicker final : public QCPAxisTicker {
public:
    /// @param factor  of what is written: an axis in km/h with 1/1.609344 is read in mph
    explicit NumberTicker(bool withPlus = false, const QString& suffix = {}, double factor = 1.0)
        : m_withPlus(withPlus), m_suffix(suffix), m_factor(factor)
    {
    }

protected:
    double getTickStep(const QCPRange& range) override;
    QString getTickLabel(double tick, const QLocale& locale, QChar formatChar,
                         int precision) override;

private:
    bool m_withPlus;
    QString m_suffix;
    double m_factor;
    int m_decimals = 0;
};

/// Disc for the baseline, square for the device; hollow for what does not count.
[[nodiscard]] QCPScatterStyle markOf(const Theme& theme, bool device, bool hollow, double size = 9);

} // namespace bothways::app
