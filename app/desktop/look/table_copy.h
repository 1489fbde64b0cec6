// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

class QTableView;

namespace bothways::app {

/// One line for a spreadsheet: cells with a tab between them, and nothing in a cell that would end
/// it.
[[nodiscard]] QString tabbedLine(QStringList cells);
/// The selected rows as they are shown, with the header above them; empty where none is selected.
[[nodiscard]] QString selectedRowsOf(const QTableView& table);

} // namespace bothways::app
