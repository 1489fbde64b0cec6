// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/findings/grade_delegate.h"

#include <QStyle>
#include <QWidget>

namespace bothways::app {

/// Of one line: in a narrow column a word that is not shown makes no row higher.
QSize GradeDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    constexpr int kAir = 14;
    QStyleOptionViewItem oneLine = option;
    oneLine.features &= ~QStyleOptionViewItem::WrapText;
    return QStyledItemDelegate::sizeHint(oneLine, index) + QSize(kAir, 0);
}

void GradeDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const
{
    QStyleOptionViewItem own = option;
    initStyleOption(&own, index);
    if (own.rect.width() < sizeHint(option, index).width())
        own.text.clear();
    own.widget->style()->drawControl(QStyle::CE_ItemViewItem, &own, painter, own.widget);
}

} // namespace bothways::app
