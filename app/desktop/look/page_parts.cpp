// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/page_parts.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QResizeEvent>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <numeric>

namespace bothways::app::parts {

bool isOnLowScreen(const QWidget& widget)
{
    constexpr int kLow = 600;
    return widget.screen()->availableSize().height() < kLow;
}

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

void nameField(QWidget& field, const QString& name)
{
    field.setAccessibleName(name);
    if (const auto* box = qobject_cast<QComboBox*>(&field); box && box->isEditable())
        box->lineEdit()->setAccessibleName(name);
}

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

/// Fits its columns to the width that it has: first the air between them goes, then columns of
/// words wrap. Numbers stay whole; what is wider still scrolls.
class ReadingTable final : public QTableWidget {
public:
    void fit()
    {
        constexpr int kAir = 14; // between columns, so that right and left aligned ones stay apart
        const int columns = columnCount();
        for (int column = 0; column < columns; ++column) // a heading stands where its column does
            if (QTableWidgetItem* heading = horizontalHeaderItem(column))
                heading->setTextAlignment((holdsNumbers(column) ? Qt::AlignRight : Qt::AlignLeft) |
                                          Qt::AlignVCenter);
        QList<int> widths;
        for (int column = 0; column < columns; ++column)
            widths << std::max(sizeHintForColumn(column),
                               horizontalHeader()->sectionSizeHint(column));
        const int natural = std::accumulate(widths.begin(), widths.end(), 0);
        const int available = viewport()->width();
        int over = natural - available;
        while (over > 0) {
            int widest = 0, spare = 0;
            for (int column = 0; column < columns; ++column)
                if (const int its = widths[column] - narrowest(column); its > spare) {
                    widest = column;
                    spare = its;
                }
            if (spare == 0)
                break;
            widths[widest] -= std::min(spare, over);
            over -= std::min(spare, over);
        }
        horizontalHeader()->setStretchLastSection(over <= 0);
        const int air = over < 0 && columns > 1 ? std::min(kAir, -over / (columns - 1)) : 0;
        for (int column = 0; column < columns; ++column)
            setColumnWidth(column, widths[column] + (column + 1 < columns ? air : 0));
        resizeRowsToContents();
        int height = horizontalHeader()->sizeHint().height() + 2 * frameWidth();
        for (int row = 0; row < rowCount(); ++row)
            height += rowHeight(row);
        if (over > 0)
            height += horizontalScrollBar()->sizeHint().height();
        setFixedHeight(height);
        setMinimumWidth(std::min(natural + 2 * frameWidth(), 420));
    }

protected:
    void resizeEvent(QResizeEvent* event) override
    {
        QTableWidget::resizeEvent(event);
        if (event->size().width() != event->oldSize().width())
            fit();
    }

private:
    [[nodiscard]] bool holdsNumbers(int column) const
    {
        for (int row = 0; row < rowCount(); ++row)
            if (const QTableWidgetItem* cell = item(row, column);
                cell && (cell->textAlignment() & Qt::AlignRight) != 0)
                return true;
        return false;
    }

    /// The width below which a column would lose a word or a number.
    int narrowest(int column) const
    {
        constexpr int kMargin = 12;
        int width = horizontalHeader()->sectionSizeHint(column);
        for (int row = 0; row < rowCount(); ++row) {
            const QTableWidgetItem* cell = item(row, column);
            if (cell == nullptr)
                continue;
            if ((cell->textAlignment() & Qt::AlignRight) != 0)
                return std::max(width, sizeHintForColumn(column));
            for (const QString& word : cell->text().split(u' '))
                width = std::max(width, fontMetrics().horizontalAdvance(word) + kMargin);
        }
        return width;
    }
};

} // namespace

void dress(QTableWidget& table, const QString& objectName, const QString& accessibleName)
{
    table.setObjectName(objectName);
    table.setAccessibleName(accessibleName);
    table.setEditTriggers(QAbstractItemView::NoEditTriggers);
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setTabKeyNavigation(false);
    table.verticalHeader()->hide();
    table.horizontalHeader()->setHighlightSections(false);
    table.horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
}

void setLowRows(QTableView& table)
{
    table.verticalHeader()->setDefaultSectionSize(table.fontMetrics().height() + 8);
}

QTableWidget* readingTable(const QString& objectName)
{
    auto* table = new ReadingTable;
    dress(*table, objectName);
    table->setAlternatingRowColors(true);
    table->setShowGrid(false);
    table->horizontalHeader()->setStretchLastSection(true);
    table->setWordWrap(true);
    auto* copy = new QShortcut(QKeySequence::Copy, table);
    copy->setContext(Qt::WidgetShortcut);
    QObject::connect(copy, &QShortcut::activated, table, [table] { copySelection(*table); });
    return table;
}

void setCell(QTableWidget& table, int row, int column, const QString& text, bool number)
{
    auto* item = new QTableWidgetItem(text);
    item->setTextAlignment(number ? Qt::AlignRight | Qt::AlignVCenter
                                  : Qt::AlignLeft | Qt::AlignVCenter);
    table.setItem(row, column, item);
}

void fitToRows(QTableWidget& table)
{
    static_cast<ReadingTable&>(table).fit();
}

} // namespace bothways::app::parts
