// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/channel_tile.h"

#include "app/desktop/look/big_label.h"

#include <QApplication>
#include <QPainter>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

constexpr int kMargin = 6;
constexpr int kNarrow = 220;
constexpr int kFifthsShown = 300;  // a minute
constexpr double kHeadroom = 0.08; // of the strip's range, above and below

QFont tileFont(int px, bool bold)
{
    QFont font = QApplication::font();
    font.setPixelSize(std::max(px, kLeastPx));
    font.setBold(bold);
    return font;
}

/// What the strip spans: all that came, and a limit that is near it.
std::pair<double, double> spanOf(const ChannelTile::Shown& shown)
{
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    for (std::size_t i = 0; i < shown.low.size(); ++i) {
        if (std::isnan(shown.low[i]))
            continue;
        low = std::min(low, static_cast<double>(shown.low[i]));
        high = std::max(high, static_cast<double>(shown.high[i]));
    }
    if (low > high)
        return {0.0, 1.0};
    const double reach = std::max(high - low, 0.25 * std::max(std::abs(low), std::abs(high)));
    for (const auto& limit : {shown.band.low, shown.band.high})
        if (limit && *limit > low - reach && *limit < high + reach) {
            low = std::min(low, *limit);
            high = std::max(high, *limit);
        }
    const double air = std::max(kHeadroom * (high - low), 1e-9 + 0.002 * std::abs(high));
    return {low - air, high + air};
}

/// Shape beside colour: a triangle warns, a full square says that it is beyond.
void paintMark(QPainter& painter, const QRectF& box, ChannelBand::Place place)
{
    painter.setPen(Qt::NoPen);
    if (place == ChannelBand::Place::outside) {
        painter.drawRect(box);
    } else if (place == ChannelBand::Place::near) {
        const QPointF corners[] = {
            box.bottomLeft(), {box.center().x(), box.top()}, box.bottomRight()};
        painter.drawPolygon(corners, 3);
    } else if (place == ChannelBand::Place::inside) {
        painter.drawEllipse(box);
    }
}

} // namespace

ChannelTile::ChannelTile(QWidget* parent) : QAbstractButton(parent)
{
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    setFocusPolicy(Qt::TabFocus); // a click shall not take the keyboard from the page
    setCursor(Qt::PointingHandCursor);
    setToolTip(tr("Press to see another channel here"));
}

void ChannelTile::setShown(Shown shown)
{
    m_shown = std::move(shown);
    const QString value =
        m_shown.unit.isEmpty() ? m_shown.value : tr("%1 %2").arg(m_shown.value, m_shown.unit);
    if (text() != m_shown.name)
        setText(m_shown.name);
    setAccessibleName(m_shown.name);
    QStringList words{value};
    if (m_shown.stale)
        words += tr("silent");
    if (m_shown.place == ChannelBand::Place::outside)
        words += tr("beyond the limit");
    else if (m_shown.place == ChannelBand::Place::near)
        words += tr("near the limit");
    if (!m_shown.bandWords.isEmpty())
        words += m_shown.bandWords;
    if (const QString all = words.join(", "); accessibleDescription() != all)
        setAccessibleDescription(all);
    update();
}

void ChannelTile::setTheme(const Theme& theme)
{
    m_theme = theme;
    update();
}

ChannelTile::Room ChannelTile::room() const
{
    const QRect inner = rect().adjusted(kMargin, kMargin, -kMargin, -kMargin);
    const int caption = std::max(inner.height() * 17 / 100, kLeastPx + 3);
    const int strip = inner.height() * 36 / 100;
    Room room;
    room.caption = QRect(inner.left(), inner.top(), inner.width(), caption);
    room.strip = QRect(inner.left(), inner.bottom() - strip + 1, inner.width(), strip);
    room.number = QRect(inner.left(), room.caption.bottom() + 1, inner.width(),
                        room.strip.top() - room.caption.bottom() - 3);
    return room;
}

ChannelTile::Look ChannelTile::look() const
{
    const Theme& t = m_theme;
    switch (m_shown.place) {
    case ChannelBand::Place::outside: // ink and ground change places: seen without colours, too
        return {t.fails, Qt::black, Qt::black, t.fails};
    case ChannelBand::Place::near: return {t.paper, t.ink, t.faint_ink, t.note};
    case ChannelBand::Place::inside:
    case ChannelBand::Place::unknown: break;
    }
    return {t.paper, m_shown.stale ? t.faint_ink : t.ink, t.faint_ink, t.grid};
}

void ChannelTile::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Look look = this->look();
    const Room room = this->room();
    painter.fillRect(rect(), look.fill);
    painter.setPen(QPen(hasFocus() ? m_theme.selection : look.edge,
                        m_shown.place == ChannelBand::Place::near || hasFocus() ? 5 : 2));
    painter.drawRect(rect().adjusted(1, 1, -2, -2));
    painter.setPen(look.faint);
    const QString caption = m_shown.stale ? tr("%1: silent").arg(m_shown.name) : m_shown.name;
    painter.setFont(tileFont(fittingPx(caption, QApplication::font(),
                                       room.caption.size() - QSize(room.caption.height(), 0),
                                       room.caption.height() - 2, Lines::one),
                             false));
    painter.drawText(room.caption, Qt::AlignLeft | Qt::AlignVCenter, caption);
    painter.setRenderHint(QPainter::Antialiasing);
    const int size = room.caption.height() * 3 / 4;
    painter.setBrush(m_shown.place == ChannelBand::Place::inside ? m_theme.holds
                     : m_shown.place == ChannelBand::Place::near ? m_theme.note
                                                                 : look.ink);
    paintMark(painter, QRectF(room.caption.right() - size, room.caption.top() + 2, size, size),
              m_shown.place);
    paintNumber(painter, room, look);
    paintStrip(painter, room.strip, look);
}

void ChannelTile::paintNumber(QPainter& painter, const Room& room, const Look& look) const
{
    // A narrow tile has no room for the band in words; its strip shows the limits.
    const bool noBand = m_shown.bandWords.isEmpty() || width() < kNarrow;
    const int least = QFontMetrics(tileFont(kLeastPx, false)).horizontalAdvance(m_shown.unit) + 2;
    const int unitWidth =
        m_shown.unit.isEmpty() ? 0 : std::max(room.number.width() * 24 / 100, least);
    const QRect digits = room.number.adjusted(0, 0, -unitWidth - (unitWidth > 0 ? 4 : 0), 0);
    painter.setPen(look.ink);
    const QFont bold = tileFont(kLeastPx, true);
    painter.setFont(
        tileFont(fittingPx(m_shown.value, bold, digits.size(), digits.height(), Lines::one), true));
    painter.drawText(digits, Qt::AlignRight | Qt::AlignVCenter, m_shown.value);
    if (unitWidth == 0)
        return;
    const QRect unit(room.number.right() - unitWidth + 1, room.number.top(), unitWidth,
                     room.number.height() / (noBand ? 1 : 2));
    painter.setPen(look.faint);
    painter.setFont(tileFont(fittingPx(m_shown.unit, QApplication::font(), unit.size(),
                                       room.number.height() * 2 / 5, Lines::one),
                             false));
    painter.drawText(unit, Qt::AlignLeft | Qt::AlignVCenter, m_shown.unit);
    if (noBand)
        return;
    const QRect band(unit.left(), unit.bottom() + 1, unitWidth, room.number.height() / 2);
    painter.setFont(tileFont(
        fittingPx(m_shown.bandWords, QApplication::font(), band.size(), room.number.height() / 4),
        false));
    painter.drawText(band, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, m_shown.bandWords);
}

/// The newest at the right edge; where nothing came there is no line.
void ChannelTile::paintStrip(QPainter& painter, const QRect& room, const Look& look) const
{
    if (m_shown.low.empty() || room.height() < 4)
        return;
    const auto [least, most] = spanOf(m_shown);
    const auto y = [&, from = least, reach = most - least](double value) {
        return room.bottom() - (value - from) / reach * (room.height() - 1);
    };
    const double step = static_cast<double>(room.width()) / kFifthsShown;
    const auto x = [&](std::size_t i) {
        return room.right() - static_cast<double>(m_shown.low.size() - 1 - i) * step;
    };
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(look.ink, 1, Qt::DashLine));
    for (const auto& limit : {m_shown.band.low, m_shown.band.high})
        if (limit && *limit > least && *limit < most)
            painter.drawLine(QPointF(room.left(), y(*limit)), QPointF(room.right(), y(*limit)));
    const QColor own = m_shown.part > 0 ? m_theme.device : m_theme.baseline;
    QPen pen(m_shown.place == ChannelBand::Place::outside ? look.ink : own, 2);
    pen.setStyle(Theme::dashes(m_shown.part)); // seen without colours, too
    painter.setPen(pen);
    QPolygonF line;
    line.reserve(2 * kFifthsShown);
    for (std::size_t i = 0; i < m_shown.low.size(); ++i) {
        if (std::isnan(m_shown.low[i])) {
            painter.drawPolyline(line);
            line.clear();
            continue;
        }
        line << QPointF(x(i), y(m_shown.high[i]));
        if (m_shown.low[i] < m_shown.high[i])
            line << QPointF(x(i), y(m_shown.low[i]));
    }
    painter.drawPolyline(line);
}

} // namespace bothways::app
