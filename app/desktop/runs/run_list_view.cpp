// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_list_view.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/runs/run_list_delegate.h"
#include "app/desktop/runs/run_list_model.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <QMimeData>
#include <QScrollBar>

#include <algorithm>

namespace bothways::app {

RunListView::RunListView(QWidget* parent) : HintedTableView(parent)
{
    setObjectName("runList");
    setAccessibleName(tr("Runs in the order in which they were driven"));
    setHint(tr("No runs yet. Ctrl+N begins the first; a run sheet can be dropped here."));
    setItemDelegate(new RunListDelegate(this));
    setEditTriggers(DoubleClicked | EditKeyPressed);
    horizontalHeader()->setObjectName("runListHeader");
    horizontalHeader()->setStretchLastSection(false);
    horizontalHeader()->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(horizontalHeader(), &QHeaderView::customContextMenuRequested, this,
            &RunListView::showColumnMenu);
    connect(this, &QTableView::clicked, this, &RunListView::selectBlock);
}

RunListModel* RunListView::runs() const
{
    return qobject_cast<RunListModel*>(model());
}

void RunListView::setRuns(RunListModel* model)
{
    setModel(model);
    if (!model)
        return;
    for (int column = RunListModel::firstFieldColumn; column < model->columnCount(); ++column)
        setColumnHidden(column, true);
    // In a narrow window the consumption is in sight, and what can be guessed is not.
    QHeaderView* header = horizontalHeader();
    header->moveSection(header->visualIndex(RunListModel::consumptionColumn),
                        header->visualIndex(RunListModel::directionColumn));
    for (const auto change : {&QAbstractItemModel::rowsInserted, &QAbstractItemModel::rowsRemoved})
        connect(model, change, this, &RunListView::fitColumns);
    connect(model, &QAbstractItemModel::dataChanged, this, &RunListView::hideEmptyColumns);
    connect(model, &QAbstractItemModel::dataChanged, this, &RunListView::growState);
    fitColumns();
}

/// A state may get a longer name with the answer: no column hides what a run is.
void RunListView::growState()
{
    const int wanted = sizeHintForColumn(RunListModel::stateColumn);
    if (wanted <= columnWidth(RunListModel::stateColumn))
        return;
    setColumnWidth(RunListModel::stateColumn, wanted);
    resizeEvent(nullptr);
}

void RunListView::fitColumns()
{
    if (!model())
        return;
    hideEmptyColumns();
    resizeColumnsToContents();
    horizontalHeader()->setMinimumSectionSize(fontMetrics().averageCharWidth() * 4);
    horizontalHeader()->setSectionResizeMode(RunListModel::remarksColumn, QHeaderView::Fixed);
    resizeEvent(nullptr);
}

QSize RunListView::minimumSizeHint() const
{
    const int rows = parts::isOnLowScreen(*this) ? 2 : 4;
    const int height = horizontalHeader()->sizeHint().height() +
                       rows * verticalHeader()->defaultSectionSize() +
                       horizontalScrollBar()->sizeHint().height() + 2 * frameWidth();
    return {HintedTableView::minimumSizeHint().width(), height};
}

void RunListView::fitRows()
{
    HintedTableView::fitRows();
    fitColumns();
}

/// A study without settings needs no column for them; who asks for it gets it.
void RunListView::hideEmptyColumns()
{
    if (m_columnsChosen)
        return;
    bool any = false;
    for (int row = 0; row < runs()->rowCount() && !any; ++row)
        any = !runs()->runAt(row).setting.empty();
    if (any == isColumnHidden(RunListModel::settingColumn)) {
        setColumnHidden(RunListModel::settingColumn, !any);
        resizeColumnToContents(RunListModel::settingColumn);
        resizeEvent(nullptr);
    }
}

/// What is left of the width goes to the remarks, but never less than they can be read in.
void RunListView::resizeEvent(QResizeEvent* event)
{
    if (event)
        HintedTableView::resizeEvent(event);
    if (!model())
        return;
    int taken = 0;
    for (int column = 0; column < model()->columnCount(); ++column)
        if (column != RunListModel::remarksColumn && !isColumnHidden(column))
            taken += columnWidth(column);
    const int least = fontMetrics().averageCharWidth() * 22;
    setColumnWidth(RunListModel::remarksColumn, std::max(viewport()->width() - taken, least));
}

std::vector<core::RunId> RunListView::selectedRuns() const
{
    std::vector<int> rows;
    if (selectionModel())
        for (const QModelIndex& index : selectionModel()->selectedRows())
            rows.push_back(index.row());
    std::sort(rows.begin(), rows.end());
    std::vector<core::RunId> ids;
    for (const int row : rows)
        ids.push_back(runs()->runAt(row).id);
    return ids;
}

core::RunId RunListView::currentRun() const
{
    return currentIndex().isValid() ? runs()->runAt(currentIndex().row()).id : core::RunId{};
}

void RunListView::selectRun(core::RunId id)
{
    const int row = runs() ? runs()->rowOf(id) : -1;
    if (row < 0)
        return;
    const int column = currentIndex().isValid() ? currentIndex().column()
                                                : static_cast<int>(RunListModel::numberColumn);
    selectionModel()->setCurrentIndex(runs()->index(row, column),
                                      QItemSelectionModel::ClearAndSelect |
                                          QItemSelectionModel::Rows);
    scrollTo(currentIndex());
}

void RunListView::keyPressEvent(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && event->modifiers() == Qt::NoModifier && state() != EditingState &&
        currentIndex().isValid()) {
        emit runActivated(currentRun());
        event->accept();
        return;
    }
    HintedTableView::keyPressEvent(event);
}

void RunListView::selectionChanged(const QItemSelection& selected, const QItemSelection& deselected)
{
    HintedTableView::selectionChanged(selected, deselected);
    emit selectedRunsChanged();
}

void RunListView::copySelection() const
{
    std::vector<int> rows;
    for (const core::RunId id : selectedRuns())
        rows.push_back(runs()->rowOf(id));
    if (rows.empty())
        return;
    std::vector<RunField> further;
    for (int column = RunListModel::firstFieldColumn; column < model()->columnCount(); ++column)
        if (const auto field = RunListModel::fieldOf(column); field && !isColumnHidden(column))
            further.push_back(*field);
    auto copied = std::make_unique<QMimeData>();
    copied->setText(runs()->copied(rows, further));
    if (const QByteArray sheet = runs()->copiedSheet(rows); !sheet.isEmpty())
        copied->setData(kRunsMime, sheet);
    QGuiApplication::clipboard()->setMimeData(copied.release());
}

void RunListView::selectBlock(const QModelIndex& index)
{
    if (index.column() != RunListModel::blockColumn)
        return;
    const auto place = index.data(RunListModel::blockPlaceRole).value<BlockPlace>();
    if (place.row != 0)
        return;
    const QModelIndex last = index.siblingAtRow(index.row() + place.rows - 1);
    selectionModel()->select({index, last},
                             QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
}

void RunListView::showColumnMenu(const QPoint& at)
{
    if (!model())
        return;
    QMenu menu(this);
    menu.setObjectName("columnMenu");
    for (int column = 0; column < model()->columnCount(); ++column) {
        QString title = model()->headerData(column, Qt::Horizontal).toString();
        QAction* action = menu.addAction(title.replace(u'\n', u' ').trimmed());
        action->setCheckable(true);
        action->setChecked(!isColumnHidden(column));
        connect(action, &QAction::toggled, this, [this, column](bool shown) {
            m_columnsChosen = true;
            setColumnHidden(column, !shown);
            if (shown && column >= RunListModel::firstFieldColumn)
                resizeColumnToContents(column);
            resizeEvent(nullptr);
        });
    }
    menu.exec(horizontalHeader()->mapToGlobal(at));
}

} // namespace bothways::app
