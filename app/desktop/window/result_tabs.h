// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/result_set.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/look/units_shown.h"

#include <QTabWidget>

#include <memory>
#include <vector>

namespace bothways::app {

class LedgerPage;
class PlanPage;
class ResultPage;
class ResultView;

/// Everything that is said about one study, a page a tab: the verdict first, then the roads that
/// led to it, then what could be planned and what was to be expected.
class ResultTabs final : public QTabWidget {
    Q_OBJECT

public:
    explicit ResultTabs(QWidget* parent = nullptr);

    [[nodiscard]] ResultPage* verdict() const { return m_verdict; }
    [[nodiscard]] PlanPage* plan() const { return m_plan; }

    void setResult(const std::shared_ptr<const ResultSet>& result);
    void setLook(const Theme& theme, const UnitsShown& units);
    void setRecomputing(bool recomputing);
    /// Brings the page with this object name to the front. False where there is none.
    bool showPage(const QString& objectName);

signals:
    void runActivated(int run);

private:
    void addView(ResultView* view, const char* objectName, const QString& title);

    ResultPage* m_verdict = nullptr;
    PlanPage* m_plan = nullptr;
    LedgerPage* m_ledger = nullptr;
    std::vector<ResultView*> m_views;
};

} // namespace bothways::app
