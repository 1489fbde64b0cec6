// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/table_copy.h"

#include <QHeaderView>
#include <QTableView>

#include <algorithm>

namespace bothways::app {

QString tabbedLine(QStringList cells)
{
    for (QString& cell : cells)
        cell = cell.simplified(); // of tabs and line ends too
    return cells.join(u'\t') + u'\n';
}

QString selectedRowsOf(const QTableView& table)
{
    if (!table.selectionModel() || !table.selectionModel()->hasSelection())
        return {};
    std::vector<int> columns;
    for (int place = 0; place < table.model()->columnCount(); ++place) {
        const int column = table.horizontalHeader()->logicalIndex(place);
        if (!table.isColumnHidden(column))
            columns.push_back(column);
    }
    QStringList header;
    for (const int column : columns)
        header += table.model()->headerData(column, Qt::Horizontal).toString();
    QString text = tabbedLine(header);
    std::vector<int> rows;
    for (const QModelIndex& index : table.selectionModel()->selectedRows())
        rows.push_back(index.row());
    std::sort(rows.begin(), rows.end());
    for (const int row : rows) {
        QStringList cells;
        for (const int column : columns)
            cells += table.model()->index(row, column).data().toString();
        text += tabbedLine(cells);
    }
    return text;
}

} // namespace bothways::app
