// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/theme.h"
#include "app/desktop/look/words.h"
#include "core/planning/ledger.h"

#include <QWidget>

namespace bothways::app {

/// The chain from fuel to road and back as two rows of boxes: what the device's watts save at the
/// alternator, and what the rotor's drag costs at the wheels.
class LedgerFlow final : public QWidget {
    Q_OBJECT

public:
    explicit LedgerFlow(QWidget* parent = nullptr);
    void show(const core::Ledger& ledger, const NumberWords& numbers);
    void setTheme(const Theme& theme);
    /// Two chains of boxes, each with its title and up to five lines in a box.
    [[nodiscard]] QSize sizeHint() const override { return {640, leastHeight()}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {320, leastHeight()}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int leastHeight() const { return 2 * (6 * fontMetrics().height() + 18); }
    struct Box {
        QString name, amount;
    };
    void drawChain(QPainter& painter, const QRectF& area, const QString& title,
                   const QList<Box>& boxes, const QColor& colour) const;
    Theme m_theme = Theme::light();
    QList<Box> m_relief, m_cost;
};

} // namespace bothways::app
