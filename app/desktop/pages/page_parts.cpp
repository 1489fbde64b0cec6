// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/page_parts.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QLabel>
#include <QResizeEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace bothways::app::parts {

QLabel* sentence(const QString& objectName)
{
    auto* label = new QLabel;
    label->setObjectName(objectName);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    label->setFocusPolicy(Qt::StrongFocus);
    label->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    return label;
}

void setSentence(QLabel& label, const QString& text)
{
    label.setText(text);
    label.setVisible(!text.isEmpty());
}

QLabel* heading(const QString& objectName)
{
    QLabel* label = sentence(objectName);
    label->setFocusPolicy(Qt::NoFocus);
    label->setTextInteractionFlags(Qt::NoTextInteraction);
    return label;
}

void enlarge(QLabel& label, double factor, bool bold)
{
    QFont font = label.parentWidget() ? label.parentWidget()->font() : QApplication::font();
    if (font.pointSizeF() > 0.0)
        font.setPointSizeF(font.pointSizeF() * factor);
    else
        font.setPixelSize(qRound(font.pixelSize() * factor));
    font.setBold(bold);
    label.setFont(font);
}

namespace {

/// As high as its wrapped texts need at the width it has. (QWidget's own hint takes the height that
/// they would need at their narrowest.)
class Content final : public QWidget {
public:
    QSize minimumSizeHint() const override
    {
        const int narrowest = layout()->minimumSize().width();
        const int at = std::max(width(), narrowest);
        const int height = layout()->hasHeightForWidth() ? layout()->minimumHeightForWidth(at)
                                                         : layout()->minimumSize().height();
        return {narrowest, height};
    }

protected:
    void resizeEvent(QResizeEvent* event) override
    {
        if (event->size().width() != event->oldSize().width())
            updateGeometry();
        // The area has grown us already, to the height for this width; before we are shown no event
        // tells the layout, which would squeeze the words into the height that was.
        if (layout()->geometry() != contentsRect())
            layout()->setGeometry(contentsRect());
    }
};

} // namespace

QScrollArea* scrolled(QBoxLayout* column)
{
    auto* content = new Content;
    column->setContentsMargins(18, 16, 18, 16);
    column->setSpacing(12);
    column->setSizeConstraint(QLayout::SetNoConstraint);
    content->setLayout(column);
    auto* area = new QScrollArea;
    area->setWidget(content);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    return area;
}

void clear(QLayout& layout)
{
    while (QLayoutItem* item = layout.takeAt(0)) {
        if (item->widget() != nullptr) {
            item->widget()->hide();
            item->widget()->deleteLater();
        }
        delete item;
    }
}

namespace {

void copySelection(const QTableWidget& table)
{
    QStringList lines;
    for (int row = 0; row < table.rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < table.columnCount(); ++column)
            if (const QTableWidgetItem* item = table.item(row, column);
                item != nullptr && item->isSelected())
                cells << item->text();
        if (!cells.isEmpty())
            lines << cells.join(u'\t');
    }
    QApplication::clipboard()->setText(lines.join(u'\n'));
}

} // namespace

QTableWidget* readingTable(const QString& objectName)
{
    auto* table = new QTableWidget;
    table->setObjectName(objectName);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setAlternatingRowColors(true);
    table->setShowGrid(false);
    table->verticalHeader()->setVisible(false);
    table->horizontalHeader()->setHighlightSections(false);
    table->setTabKeyNavigation(false);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->horizontalHeader()->setStretchLastSection(true);
    table->setWordWrap(true);
    auto* copy = new QShortcut(QKeySequence::Copy, table);
    copy->setContext(Qt::WidgetShortcut);
    QObject::connect(copy, &QShortcut::activated, table, [table] { copySelection(*table); });
    return table;
}

void fitToRows(QTableWidget& table)
{
    constexpr int kAir = 14; // between columns, so that right and left aligned ones stay apart
    table.resizeColumnsToContents();
    table.resizeRowsToContents();
    for (int column = 0; column + 1 < table.columnCount(); ++column)
        table.setColumnWidth(column, table.columnWidth(column) + kAir);
    int height = table.horizontalHeader()->sizeHint().height() + 2 * table.frameWidth();
    for (int row = 0; row < table.rowCount(); ++row)
        height += table.rowHeight(row);
    int width = 2 * table.frameWidth();
    for (int column = 0; column < table.columnCount(); ++column)
        width += table.columnWidth(column);
    table.setMinimumHeight(height);
    table.setMaximumHeight(height + table.horizontalScrollBar()->sizeHint().height());
    table.setMinimumWidth(qMin(width, 420));
}

} // namespace bothways::app::parts
