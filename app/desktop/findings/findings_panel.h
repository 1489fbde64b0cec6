// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/evidence.h"
#include "core/screening/finding.h"

#include <QWidget>

#include <optional>
#include <vector>

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QToolButton;

namespace bothways::app {

class FindingsModel;
class HintedTableView;
class Preferences;
class StudyDocument;

/// Findings and their answers: accept one as the reason to discard its run, or overrule it with
/// words; one at a time or all of a rule.
class FindingsPanel final : public QWidget {
    Q_OBJECT

public:
    FindingsPanel(StudyDocument& document, Preferences& preferences, QWidget* parent = nullptr);

    /// Marks the first finding of a run; nothing happens where it has none.
    void showRun(int number);
    /// Marks a finding; nothing happens where the list has none like it.
    void showFinding(const core::Finding& finding);
    /// The next finding without an answer. False where there is none.
    bool showNextOpen();
    [[nodiscard]] FindingsModel& model() const { return *m_model; }

signals:
    void findingWanted(const core::Finding& finding);    ///< chosen: show its place
    void findingActivated(const core::Finding& finding); ///< opened: bring its place to the front
    void runWanted(int number);                          ///< a finding was chosen: show its run

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    [[nodiscard]] QLayout* buildAnswers();
    void takeResult();
    void sayBelow();
    void fitColumns();
    void follow();
    void accept();
    void overrule();
    [[nodiscard]] std::optional<ShownEvidence> evidence() const;
    void followEvidence();
    void openEvidence();
    void showMenu(const QPoint& at);
    /// The chosen findings, or all open ones of their rules.
    [[nodiscard]] std::vector<core::Finding> chosen() const;

    StudyDocument& m_document;
    Preferences& m_preferences;
    FindingsModel* m_model;
    HintedTableView* m_view = nullptr;
    QLineEdit* m_words = nullptr;
    QCheckBox* m_allOfRule = nullptr;
    QPushButton* m_accept = nullptr;
    QPushButton* m_overrule = nullptr;
    QPushButton* m_evidence = nullptr; ///< the file that the answer names
    QLabel* m_pattern = nullptr;
    QToolButton* m_notChecked = nullptr;
    QToolButton* m_help = nullptr;
    bool m_showing = false;
};

} // namespace bothways::app
