// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/hinted_table_view.h"
#include "core/study/study.h"

#include <vector>

namespace bothways::app {

class RunListModel;

/// The run list on the screen. Rows are selected whole; the header's context menu shows and hides
/// columns; a click on a block's label selects the block.
class RunListView final : public HintedTableView {
    Q_OBJECT

public:
    explicit RunListView(QWidget* parent = nullptr);

    void setRuns(RunListModel* model);
    [[nodiscard]] std::vector<core::RunId> selectedRuns() const; ///< in order of start
    [[nodiscard]] core::RunId currentRun() const;                ///< RunId{} where there is none
    void selectRun(core::RunId id);
    void fitColumns();
    /// The selected runs into the clipboard: as text for a spreadsheet, and whole for pasteRuns().
    void copySelection() const override;
    /// A few runs stay in sight whatever stands below them.
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void selectedRunsChanged();
    void runActivated(bothways::core::RunId id); ///< Enter

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void fitRows() override;
    void resizeEvent(QResizeEvent* event) override;
    void selectionChanged(const QItemSelection& selected,
                          const QItemSelection& deselected) override;

private:
    void hideEmptyColumns();
    void growState();
    void selectBlock(const QModelIndex& index);
    void showColumnMenu(const QPoint& at);
    [[nodiscard]] RunListModel* runs() const;

    bool m_columnsChosen = false;
};

} // namespace bothways::app
