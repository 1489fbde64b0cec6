// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QBoxLayout;
class QLabel;
class QLayout;
class QScrollArea;
class QTableView;
class QTableWidget;
class QWidget;

/// What every page is built from.
namespace bothways::app::parts {

/// A screen, or a scale, that leaves so little height that lists and forms show fewer lines.
[[nodiscard]] bool isOnLowScreen(const QWidget& widget);
/// A wrapped, selectable text that keyboard and screen readers reach.
[[nodiscard]] QLabel* sentence(const QString& objectName);
/// Shows the text, or hides the label when there is none.
void setSentence(QLabel& label, const QString& text);
/// A heading above a picture or a table.
[[nodiscard]] QLabel* heading(const QString& objectName);
/// Sets the label's font to `factor` times its window's.
void enlarge(QLabel& label, double factor, bool bold);
/// What those who hear it are told that it is; an editable box is its line to them.
void nameField(QWidget& field, const QString& name);
/// The layout in a page that scrolls, with margins.
[[nodiscard]] QScrollArea* scrolled(QBoxLayout* column);
/// Deletes everything in a layout.
void clear(QLayout& layout);
/// What all tables have in common: no headings of rows, those of columns at the left, Tab leads out
/// of it. It is read, a row at a time; where somebody types into it, the caller says so afterwards.
void dress(QTableWidget& table, const QString& objectName, const QString& accessibleName = {});
/// Rows of one line of text, with a little air.
void setLowRows(QTableView& table);
/// A table for reading: whole rows selected, no editing, Ctrl+C copies the selection.
[[nodiscard]] QTableWidget* readingTable(const QString& objectName);
/// A cell of it; numbers stand at the right.
void setCell(QTableWidget& table, int row, int column, const QString& text, bool number = false);
/// Fits a reading table to its texts, now and whenever its width changes: as high as its rows, no
/// number cut.
void fitToRows(QTableWidget& table);

} // namespace bothways::app::parts
