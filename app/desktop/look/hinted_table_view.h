// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

namespace bothways::app {

/// A table of whole rows that says what would be in it while it is empty. Tab leaves it; arrows
/// move inside.
class HintedTableView : public QTableView {
    Q_OBJECT

public:
    explicit HintedTableView(QWidget* parent = nullptr);

    void setHint(const QString& hint);
    /// The selected rows into the clipboard, for a spreadsheet.
    virtual void copySelection() const;

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    /// After a change of the font: rows as high as the text needs.
    virtual void fitRows();

private:
    QString m_hint;
};

} // namespace bothways::app
