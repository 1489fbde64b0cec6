// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_list_delegate.h"

#include "app/desktop/look/shapes.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/runs/run_list_model.h"
#include "app/desktop/runs/run_tags.h"

#include <QLineEdit>
#include <QPainter>

#include <algorithm>

namespace bothways::app {
namespace {

constexpr int kLane = 9; // width of a bracket's lane

/// On the selection's colour a sign takes the colour of its text: its shape still tells.
QColor signColour(const QStyleOptionViewItem& option, bool device, const Theme& theme)
{
    return option.state & QStyle::State_Selected ? option.palette.color(QPalette::HighlightedText)
                                                 : theme.series(device);
}

void paintBlock(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index,
                const Theme& theme)
{
    const auto place = index.data(RunListModel::blockPlaceRole).value<BlockPlace>();
    const QStringList lines = index.data(RunListModel::blockLinesRole).toStringList();
    const bool device = index.data(RunListModel::deviceRole).toBool();
    QRect box = option.rect;
    painter.fillRect(QRect(box.left(), box.top(), 4, box.height()), theme.series(device));
    box.adjust(10, 0, -4, 0);
    if (place.row == 0) {
        const int size = option.fontMetrics.ascent();
        paintConfiguration(painter, QRectF(box.left(), box.center().y() - size / 2.0, size, size),
                           device, signColour(option, device, theme));
        box.setLeft(box.left() + size + 6);
    }
    if (place.row >= lines.size())
        return;
    QFont font = option.font;
    font.setBold(place.row == 0);
    painter.setFont(font);
    painter.setPen(option.palette.color(option.state & QStyle::State_Selected
                                            ? QPalette::HighlightedText
                                        : place.row == 0 ? QPalette::Text
                                                         : QPalette::PlaceholderText));
    const QString text =
        QFontMetrics(font).elidedText(lines[place.row], Qt::ElideRight, box.width());
    painter.drawText(box, Qt::AlignVCenter | Qt::AlignLeft, text);
}

void paintBrackets(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index)
{
    const auto pieces = index.data(RunListModel::bracketsRole).value<BracketPieces>();
    const QColor ink = option.palette.color(
        option.state & QStyle::State_Selected ? QPalette::HighlightedText : QPalette::Text);
    const QRect box = option.rect.adjusted(4, 0, -5, 0);
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const BracketPiece& piece : pieces) {
        painter.setPen(QPen(ink, piece.fixed ? 2.0 : 1.0));
        const int x = box.right() - piece.lane * kLane - kLane + 3;
        const int middle = box.center().y();
        using Part = BracketPiece::Part;
        const int from = piece.part == Part::top ? middle : option.rect.top();
        const int to = piece.part == Part::bottom ? middle : option.rect.bottom() + 1;
        painter.drawLine(x, from, x, to);
        if (piece.part == Part::middle)
            continue;
        painter.drawLine(x, middle, box.right(), middle);
        if (piece.fixed) // tied by hand: a knot at each end
            painter.fillRect(QRect(x - 2, middle - 2, 5, 5), ink);
    }
    const bool numbered = std::any_of(pieces.begin(), pieces.end(), [](const BracketPiece& piece) {
        return piece.part == BracketPiece::Part::top;
    });
    if (!numbered)
        return;
    painter.setPen(ink);
    painter.setFont(option.font);
    painter.drawText(box, Qt::AlignVCenter | Qt::AlignLeft, index.data().toString());
}

void paintState(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index,
                const Theme& theme)
{
    const int state = index.data(RunListModel::stateRole).toInt();
    const bool device = index.data(RunListModel::deviceRole).toBool();
    const int grade = index.data(RunListModel::gradeRole).toInt();
    const bool selected = option.state & QStyle::State_Selected;
    const QColor ink = option.palette.color(selected ? QPalette::HighlightedText : QPalette::Text);
    QRect box = option.rect.adjusted(6, 0, -4, 0);
    const int size = option.fontMetrics.ascent() - 2;
    const QRectF sign(box.left(), box.center().y() - size / 2.0 + 1, size, size);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(ink, 1.6));
    const QRectF inner = sign.adjusted(1, 1, -1, -1);
    if (state == RunListModel::discarded) {
        painter.drawLine(inner.topLeft(), inner.bottomRight());
        painter.drawLine(inner.topRight(), inner.bottomLeft());
    } else if (state == RunListModel::alone) {
        device ? painter.drawRect(inner) : painter.drawEllipse(inner);
    } else {
        painter.restore();
        painter.save();
        paintConfiguration(painter, sign, device, signColour(option, device, theme));
    }
    painter.restore();
    box.setLeft(box.left() + size + 6);
    if (grade >= 0) {
        const double side = option.fontMetrics.height();
        const QRectF mark(box.right() - side, box.center().y() - side / 2.0, side, side);
        if (selected) { // the sign keeps its contrast on the selection's colour
            painter.save();
            painter.setRenderHint(QPainter::Antialiasing);
            painter.setPen(Qt::NoPen);
            painter.setBrush(theme.paper);
            painter.drawRoundedRect(mark.adjusted(-2, -1, 2, 1), 3, 3);
            painter.restore();
        }
        paintGrade(painter, mark, static_cast<core::Grade>(grade), theme);
        box.setRight(static_cast<int>(mark.left()) - 4);
    }
    painter.setPen(ink);
    painter.setFont(option.font);
    painter.drawText(
        box, Qt::AlignVCenter | Qt::AlignLeft,
        option.fontMetrics.elidedText(index.data().toString(), Qt::ElideRight, box.width()));
}

/// Labels from `left` on.
void paintTags(QPainter& painter, const QStyleOptionViewItem& option, const RunTags& tags, int left,
               const Theme& theme)
{
    QFont font = option.font;
    font.setPointSizeF(font.pointSizeF() * 0.9);
    const QFontMetrics metrics(font);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font);
    const int right = option.rect.right() - 4;
    const int height = metrics.height() + 2;
    const int top = option.rect.center().y() - height / 2 + 1;
    for (const RunTag& tag : tags) {
        const bool loud = tag.loud;
        const int width = std::min(metrics.horizontalAdvance(tag.text) + 12, right - left);
        if (width < std::min(48, metrics.horizontalAdvance(tag.text) + 12))
            break; // a stump says nothing
        const QRectF label(left + 0.5, top + 0.5, width - 1, height - 1);
        painter.setPen(QPen(loud ? theme.note : theme.grid, loud ? 1.5 : 1.0));
        painter.setBrush(theme.paper);
        painter.drawRoundedRect(label, 4, 4);
        painter.setPen(theme.ink);
        painter.drawText(label.adjusted(5, 0, -5, 0), Qt::AlignCenter,
                         metrics.elidedText(tag.text, Qt::ElideRight, width - 11));
        left += width + 4;
    }
    painter.restore();
}

/// The reason in words first, then the person's own words, then circumstances as labels.
void paintRemarks(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index,
                  const Theme& theme)
{
    const bool selected = option.state & QStyle::State_Selected;
    const auto tags = index.data(RunListModel::tagsRole).value<RunTags>();
    int left = option.rect.left() + 6;
    const int right = option.rect.right() - 4;
    const auto write = [&](const QString& words, QPalette::ColorRole ink) {
        if (words.isEmpty() || right - left < 30)
            return;
        painter.setFont(option.font);
        painter.setPen(option.palette.color(selected ? QPalette::HighlightedText : ink));
        const QString text = option.fontMetrics.elidedText(words, Qt::ElideRight, right - left);
        painter.drawText(QRect(left, option.rect.top(), right - left, option.rect.height()),
                         Qt::AlignVCenter | Qt::AlignLeft, text);
        left += option.fontMetrics.horizontalAdvance(text) + 8;
    };
    write(index.data(RunListModel::reasonRole).toString(), QPalette::Text);
    write(index.data(Qt::EditRole).toString(), QPalette::Text);
    paintTags(painter, option, tags, left, theme);
}

} // namespace

void RunListDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const
{
    QStyleOptionViewItem own = option;
    initStyleOption(&own, index);
    const Theme theme = Theme::of(option.palette);
    const bool selected = own.state & QStyle::State_Selected;
    const bool device = index.data(RunListModel::deviceRole).toBool();
    painter->save();
    painter->fillRect(own.rect, selected ? own.palette.brush(QPalette::Highlight)
                                         : QBrush(device ? theme.block_tint : theme.paper));
    const QFont plain = option.font;
    switch (index.column()) {
    case RunListModel::blockColumn: paintBlock(*painter, option, index, theme); break;
    case RunListModel::pairColumn: paintBrackets(*painter, option, index); break;
    case RunListModel::stateColumn: paintState(*painter, option, index, theme); break;
    case RunListModel::remarksColumn: paintRemarks(*painter, option, index, theme); break;
    default: {
        QRect box = own.rect.adjusted(6, 0, -6, 0);
        if (!index.data(RunListModel::questionRole).toString().isEmpty()) {
            const int size = own.fontMetrics.ascent() + 2;
            paintQuestion(*painter,
                          QRectF(box.left() - 3, box.center().y() - size / 2.0, size, size), theme);
            box.setLeft(box.left() + size);
        }
        const bool faint = index.data(RunListModel::stateRole).toInt() == RunListModel::discarded;
        painter->setPen(own.palette.color(selected ? QPalette::HighlightedText
                                          : faint  ? QPalette::PlaceholderText
                                                   : QPalette::Text));
        painter->setFont(own.font);
        painter->drawText(box, static_cast<int>(own.displayAlignment),
                          own.fontMetrics.elidedText(own.text, Qt::ElideRight, box.width()));
    }
    }
    painter->setFont(plain);
    if (index.data(RunListModel::blockPlaceRole).value<BlockPlace>().row == 0 && index.row() > 0)
        painter->fillRect(QRect(own.rect.left(), own.rect.top(), own.rect.width(), 2),
                          theme.faint_ink);
    if (own.state & QStyle::State_HasFocus) {
        painter->setPen(QPen(selected ? own.palette.color(QPalette::HighlightedText) : theme.ink, 1,
                             Qt::DotLine));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(own.rect.adjusted(1, 1, -2, -2));
    }
    painter->restore();
}

QSize RunListDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    QSize size = QStyledItemDelegate::sizeHint(option, index);
    size.setHeight(option.fontMetrics.height() + 8);
    if (index.column() == RunListModel::pairColumn) {
        const int lanes = index.data(RunListModel::lanesRole).toInt();
        size.setWidth(
            option.fontMetrics.horizontalAdvance(QString::number(index.model()->rowCount() / 2)) +
            18 + lanes * kLane);
    } else if (index.column() == RunListModel::stateColumn) {
        size.setWidth(size.width() + 2 * option.fontMetrics.height() + 12);
    } else if (index.column() == RunListModel::blockColumn) {
        int widest = 0;
        QFont bold = option.font;
        bold.setBold(true);
        const QStringList lines = index.data(RunListModel::blockLinesRole).toStringList();
        for (const QString& line : lines)
            widest = std::max(widest, QFontMetrics(bold).horizontalAdvance(line));
        size.setWidth(std::min(widest, option.fontMetrics.averageCharWidth() * 16) +
                      option.fontMetrics.ascent() + 24);
    } else if (index.column() == RunListModel::consumptionColumn) {
        size.setWidth(size.width() + option.fontMetrics.height() + 8);
    } else {
        size.setWidth(size.width() + 6);
    }
    return size;
}

QWidget* RunListDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                       const QModelIndex& index) const
{
    auto* editor = new QLineEdit(parent);
    editor->setObjectName("cellEditor");
    editor->setAccessibleName(
        index.model()->headerData(index.column(), Qt::Horizontal).toString().replace(u'\n', u' '));
    editor->setFrame(false);
    return editor;
}

void RunListDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const
{
    if (auto* line = qobject_cast<QLineEdit*>(editor))
        line->setText(index.data(Qt::EditRole).toString());
}

void RunListDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                   const QModelIndex& index) const
{
    if (const auto* line = qobject_cast<QLineEdit*>(editor))
        model->setData(index, line->text(), Qt::EditRole);
}

} // namespace bothways::app
