// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/pages/result_view.h"

class QTableWidget;
class QVBoxLayout;

namespace bothways::app {

class ForestPlot;
class LeaveOneOutPlot;
class Words;

/// Other honest ways to the same number, and how much it hangs on single pairs and on the discards.
/// (Method, sections 5 and 8.)
class CompanionsPage final : public ResultView {
    Q_OBJECT

public:
    explicit CompanionsPage(QWidget* parent = nullptr);
    ~CompanionsPage() override;

protected:
    void refresh() override;

private:
    void showCompanions(const Words& words);
    void showLeaveOneOut(const Words& words);
    void showRestored(const Words& words);

    QLabel* m_companionsHeading = nullptr;
    QLabel* m_agreement = nullptr;
    ForestPlot* m_forest = nullptr;
    QTableWidget* m_table = nullptr;
    QVBoxLayout* m_explanations = nullptr;
    QLabel* m_leaveHeading = nullptr;
    QLabel* m_leaveSentence = nullptr;
    LeaveOneOutPlot* m_leave = nullptr;
    QLabel* m_restoredHeading = nullptr;
    QLabel* m_restoredSentence = nullptr;
    ForestPlot* m_restored = nullptr;
    QTableWidget* m_restoredTable = nullptr;
};

} // namespace bothways::app
