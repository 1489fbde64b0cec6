// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace bothways::app {

/// Whether the clipboard holds lines of several cells, as a spreadsheet copies them.
[[nodiscard]] bool rowsInClipboard();

/// Leaves the key of Paste to the window where a field would take lines of cells as one text: who
/// begins a study has the keyboard in the entry, and the runs in a spreadsheet.
class RowsPaste final : public QObject {
public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace bothways::app
