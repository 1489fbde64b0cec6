// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/planning/ledger_flow.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace bothways::app {
namespace {

/// The font, made smaller until each text stands whole in a box of that size, no word broken.
QFont fitting(QFont font, const QStringList& texts, const QSizeF& box)
{
    constexpr double kSmallest = 0.6; // of the window's font: smaller is not read
    const double full = font.pointSizeF() > 0.0 ? font.pointSizeF() : font.pixelSize();
    const auto fits = [&] {
        const QFontMetricsF metrics(font);
        return std::all_of(texts.begin(), texts.end(), [&](const QString& text) {
            const QSizeF size =
                metrics.boundingRect(QRectF({}, box), Qt::AlignCenter | Qt::TextWordWrap, text)
                    .size();
            return size.width() <= box.width() && size.height() <= box.height();
        });
    };
    for (double factor = 1.0; factor >= kSmallest && !fits(); factor -= 0.05) {
        if (font.pointSizeF() > 0.0)
            font.setPointSizeF(factor * full);
        else
            font.setPixelSize(static_cast<int>(factor * full));
    }
    return font;
}

} // namespace

LedgerFlow::LedgerFlow(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("ledgerFlow"));
    setAccessibleName(tr("From fuel to the road and back"));
    setMinimumHeight(230);
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
    constexpr double kAir = 3.0;
    constexpr double kGap = 18.0;
    const auto count = static_cast<double>(boxes.size());
    const double width = (area.width() - 16.0 - kGap * (count - 1.0)) / count;
    double x = area.left() + 8.0;
    const double top = area.top() + line + 6.0;
    const double height = area.height() - line - 12.0;
    QStringList texts;
    for (const Box& box : boxes)
        texts.append(box.name + QLatin1Char('\n') + box.amount);
    painter.save();
    painter.setFont(fitting(painter.font(), texts, {width - 2.0 * kAir, height - 2.0 * kAir}));
    for (int i = 0; i < boxes.size(); ++i) {
        const QRectF box(x, top, width, height);
        painter.setPen(QPen(colour, 2.0));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box, 6.0, 6.0);
        painter.setPen(m_theme.ink);
        painter.drawText(box.adjusted(kAir, kAir, -kAir, -kAir), Qt::AlignCenter | Qt::TextWordWrap,
                         texts[i]);
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
    painter.restore();
}

} // namespace bothways::app
