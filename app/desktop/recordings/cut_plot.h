// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "app/desktop/plots/plot_view.h"
#include "core/recording/trace.h"

#include <memory>
#include <vector>

namespace bothways::app {

/// A part of a recording, as it lies on the plot.
struct CutBand {
    double from_s = 0.0, to_s = 0.0;
    QString label;
    bool wanted = true; ///< pale otherwise
};

/// The speed of a whole recording, with the parts that are to be runs as bands over it.
///
/// An edge is dragged with the mouse; by keys, E goes to the next edge, Ctrl+Left and Ctrl+Right
/// move it by a second, with Shift by a tenth. The rest is as in every plot.
class CutPlot final : public PlotView {
    Q_OBJECT

public:
    explicit CutPlot(QWidget* parent = nullptr);

    /// @param speed  km/h; may be null: no picture then
    void setSpeed(std::shared_ptr<const core::Samples> speed, const UnitsShown& units);
    void setBands(std::vector<CutBand> bands);
    [[nodiscard]] const std::vector<CutBand>& bands() const { return m_bands; }
    /// Where a place of the recording is on the widget, px from its left.
    [[nodiscard]] double pixelOf(double time_s);

signals:
    /// An edge was moved: the band is as it now is in bands().
    void bandMoved(int band);

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    /// The lower edge of band i is 2 i, its upper one 2 i + 1; -1: none.
    [[nodiscard]] int edgeAt(double x);
    [[nodiscard]] double edge(int which) const;
    void moveEdge(int which, double to_s);
    void rebuild();
    void place();

    std::shared_ptr<const core::Samples> m_speed;
    UnitsShown m_units;
    std::vector<CutBand> m_bands;
    std::vector<QPointer<QCPItemRect>> m_rects;
    std::vector<QPointer<QCPItemText>> m_labels;
    std::vector<QPointer<QCPItemStraightLine>> m_edges;
    int m_dragged = -1;
    int m_chosen = -1; ///< that the keys move
};

} // namespace bothways::app
