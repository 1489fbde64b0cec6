// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/plots/plot_view.h"

#include <optional>
#include <vector>

namespace bothways::app {

/// One line of a forest plot. Numbers in per cent.
struct ForestRow {
    enum class Kind { headline, companion, setting, pooled };

    QString name;
    std::optional<double> effect_pct = {}, low_pct = {}, high_pct = {};
    std::optional<double> wide_low_pct = {}, wide_high_pct = {}; ///< a wider interval, drawn thin
    QString text;  ///< beside the row: the numbers, or why there are none
    QString words; ///< when it is read off
    Kind kind = Kind::companion;
    int key = 0;
    bool differs = false; ///< says something else than the headline: drawn hollow
    QString id = {};      ///< in the numbers: "bracket"
};

/// Effects under one another on one scale, with zero and margin: do they agree?
class ForestPlot final : public PlotView {
    Q_OBJECT

public:
    using PlotView::PlotView;

    struct Content {
        QString title, sentence, axisLabel;
        std::vector<ForestRow> rows;
        std::optional<double> margin_pct = {};
    };
    void show(const Content& content);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void drawRow(const ForestRow& row, double y);
    [[nodiscard]] int widestOf(const QStringList& texts) const;
    /// The numbers stand beside the rows only where there is room for both.
    void showNumbersBeside();
    int m_rows = 1;
    int m_besideWidth = 0;
};

} // namespace bothways::app
