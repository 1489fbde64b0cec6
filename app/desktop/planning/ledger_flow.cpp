// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/planning/ledger_flow.h"

#include <QPainter>
#include <QPainterPath>

namespace bothways::app {

LedgerFlow::LedgerFlow(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("ledgerFlow"));
    setAccessibleName(tr("From fuel to the road and back"));
    setMinimumHeight(180);
}

void LedgerFlow::setTheme(const Theme& theme)
{
    m_theme = theme;
    update();
}

void LedgerFlow::show(const core::Ledger& ledger, const NumberWords& numbers)
{
    const core::LedgerOptions& o = ledger.options;
    const auto watts = [&](double w) { return tr("%1 W").arg(numbers.fixed(w, 0)); };
    m_relief.clear();
    m_cost.clear();
    if (o.relief) {
        const double shaft = o.output_w / o.alternator.middle;
        m_relief = {{tr("device delivers"), watts(o.output_w)},
                    {tr("alternator need not take"), watts(shaft)},
                    {tr("engine need not burn"), watts(shaft / o.marginal.middle)},
                    {tr("fuel saved"),
                     numbers.units().consumptionWithUnit(ledger.relief_l_per_100km.middle, 2)}};
    }
    if (o.cost) {
        const double rotor = o.output_w / o.generator.middle;
        const double drag = rotor / (1.0 - o.induction);
        const double crank = drag / o.drive.middle;
        m_cost = {{tr("generator takes"), watts(rotor)},
                  {tr("rotor's drag takes"), watts(drag)},
                  {tr("engine gives"), watts(crank)},
                  {tr("engine burns"), watts(crank / o.marginal.middle)},
                  {tr("fuel spent"),
                   numbers.units().consumptionWithUnit(ledger.cost_l_per_100km.middle, 2)}};
    }
    QStringList words;
    for (const Box& box : m_relief + m_cost)
        words.append(box.name + QLatin1Char(' ') + box.amount);
    setAccessibleDescription(words.join(QStringLiteral("; ")));
    update();
}

void LedgerFlow::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), m_theme.paper);
    const double half = height() / 2.0;
    drawChain(painter, {0.0, 0.0, width() - 1.0, half}, tr("Relief"), m_relief, m_theme.holds);
    drawChain(painter, {0.0, half, width() - 1.0, half}, tr("Cost"), m_cost, m_theme.fails);
}

void LedgerFlow::drawChain(QPainter& painter, const QRectF& area, const QString& title,
                           const QList<Box>& boxes, const QColor& colour) const
{
    const double line = painter.fontMetrics().height();
    painter.setPen(m_theme.ink);
    painter.drawText(QRectF(area.left() + 8.0, area.top(), area.width(), line + 4.0),
                     Qt::AlignVCenter, boxes.isEmpty() ? tr("%1: switched off").arg(title) : title);
    if (boxes.isEmpty())
        return;
    constexpr double kGap = 20.0;
    const auto count = static_cast<double>(boxes.size());
    const double width = (area.width() - 16.0 - kGap * (count - 1.0)) / count;
    double x = area.left() + 8.0;
    const double top = area.top() + line + 6.0;
    const double height = area.height() - line - 12.0;
    for (int i = 0; i < boxes.size(); ++i) {
        const QRectF box(x, top, width, height);
        painter.setPen(QPen(colour, 2.0));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box, 6.0, 6.0);
        painter.setPen(m_theme.ink);
        painter.drawText(box.adjusted(4, 2, -4, -2), Qt::AlignCenter | Qt::TextWordWrap,
                         boxes[i].name + QLatin1Char('\n') + boxes[i].amount);
        if (i + 1 < boxes.size()) {
            const double y = box.center().y();
            painter.setPen(QPen(colour, 2.0));
            painter.drawLine(QPointF(box.right() + 3.0, y), QPointF(box.right() + kGap - 4.0, y));
            QPainterPath head(QPointF(box.right() + kGap - 2.0, y));
            head.lineTo(box.right() + kGap - 9.0, y - 5.0);
            head.lineTo(box.right() + kGap - 9.0, y + 5.0);
            head.closeSubpath();
            painter.fillPath(head, colour);
        }
        x += width + kGap;
    }
}

} // namespace bothways::app
