// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/hinted_table_view.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/table_copy.h"

#include <QClipboard>
#include <QEvent>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>

namespace bothways::app {
namespace {

/// Columns that fit their text exactly run into one another, and so do rows of several lines.
class RoomyDelegate final : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        return QStyledItemDelegate::sizeHint(option, index) + QSize(14, 6);
    }
};

} // namespace

HintedTableView::HintedTableView(QWidget* parent) : QTableView(parent)
{
    setItemDelegate(new RoomyDelegate(this));
    setSelectionBehavior(SelectRows);
    setSelectionMode(ExtendedSelection);
    setEditTriggers(NoEditTriggers);
    setShowGrid(false);
    setWordWrap(false);
    setTabKeyNavigation(false);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollMode(ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    HintedTableView::fitRows();
}

void HintedTableView::setHint(const QString& hint)
{
    m_hint = hint;
    setAccessibleDescription(hint);
    viewport()->update();
}

void HintedTableView::copySelection() const
{
    if (const QString text = selectedRowsOf(*this); !text.isEmpty())
        QGuiApplication::clipboard()->setText(text);
}

void HintedTableView::keyPressEvent(QKeyEvent* event)
{
    if (event->matches(QKeySequence::Copy)) {
        copySelection();
        event->accept();
        return;
    }
    QTableView::keyPressEvent(event);
}

void HintedTableView::fitRows()
{
    parts::setLowRows(*this);
}

void HintedTableView::changeEvent(QEvent* event)
{
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fitRows();
}

void HintedTableView::paintEvent(QPaintEvent* event)
{
    QTableView::paintEvent(event);
    if (m_hint.isEmpty() || (model() && model()->rowCount() > 0))
        return;
    QPainter painter(viewport());
    painter.setPen(palette().color(QPalette::PlaceholderText));
    painter.drawText(viewport()->rect().adjusted(20, 10, -20, -10),
                     Qt::AlignCenter | Qt::TextWordWrap, m_hint);
}

} // namespace bothways::app
