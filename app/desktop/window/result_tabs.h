// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/result_set.h"
#include "app/desktop/look/late_page.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/look/units_shown.h"
#include "core/planning/plan.h"

#include <QTabWidget>

#include <memory>
#include <optional>
#include <vector>

namespace bothways::app {

class PlanPage;

/// Everything that is said about one study, in one row of tabs: the verdict first, then the roads
/// that led to it, what could be planned and what was to be expected, then what others add.
///
/// A page is made when it is first seen, and follows the study only while it is seen. Before an
/// answer that is not to be seen yet stands another page, in the place of all that tell it.
class ResultTabs final : public QTabWidget {
    Q_OBJECT

public:
    explicit ResultTabs(QWidget* parent = nullptr);

    /// A page behind those of the answer, which stays when they go.
    void addBeside(const QString& name, const QString& title, LatePage::Make make);
    /// A page that can stand in the answer's place.
    void addInstead(const QString& name, LatePage::Make make);
    /// @param name  of addInstead(); empty: the answer is there for all to see
    void standInstead(const QString& name);

    void setResult(const std::shared_ptr<const ResultSet>& result);
    /// The answer's pages go, and with them every number on them.
    void forgetResult();
    void setLook(const Theme& theme, const UnitsShown& units);
    void setRecomputing(bool recomputing);
    /// Nothing in the study can be changed from here. To be said before a page is seen.
    void setReadOnly(bool readOnly) { m_readOnly = readOnly; }

    /// Brings a page to the front: result, companions, checks, why, plan, ledger, or one that was
    /// added. One whose place is taken comes when the place is free. False where there is none.
    bool showPage(const QString& name);
    /// Names and titles of the answer's pages, in their order.
    [[nodiscard]] static std::vector<std::pair<QString, QString>> pagesOfAnswer();
    /// Somebody who looks at the window sees the answer.
    [[nodiscard]] bool showsAnswer() const;
    /// Something that is on show is still being computed.
    [[nodiscard]] bool isBusy() const;

signals:
    void runActivated(int run);
    /// Of ResultPage and PlanPage.
    void optionsAsked(double margin_pct, double confidence, std::optional<double> claim_pct);
    void runCardRequested(const bothways::core::Plan& plan);
    void noiseStudiesRequested(bothways::app::PlanPage* page);
    void tieRequested(const bothways::core::PlannedStudy& plan);

private:
    enum class Kind { answer, beside, instead };
    struct Tab {
        QString name;
        Kind kind;
        LatePage* place;
    };

    template <class Page>
    void addOfAnswer(const char* name, const std::function<void(Page*)>& connectIt);
    LatePage* add(Kind kind, const QString& name, const QString& title, LatePage::Make make);
    void connectPlan(PlanPage* plan);
    /// Index of the tab with this name; -1: none.
    [[nodiscard]] int find(const QString& name) const;
    void showTab(int index, bool shown);
    /// What is seen shows what there is now; the rest does when it is seen.
    void refresh();

    std::vector<Tab> m_tabs; ///< as they stand in the row
    QString m_instead;       ///< name of what stands in the answer's place; empty: nothing
    int m_answerTab = 0;     ///< to come back to
    std::shared_ptr<const ResultSet> m_result;
    Theme m_theme = Theme::light();
    UnitsShown m_units;
    bool m_recomputing = false;
    bool m_readOnly = false;
};

} // namespace bothways::app
