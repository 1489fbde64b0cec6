// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/run_draft.h"
#include "app/desktop/runs/run_fields.h"

#include <QWidget>

#include <vector>

class QLabel;

namespace bothways::app {

class Preferences;
class RunForm;
class RunListModel;
class RunListView;
class StudyDocument;

/// The work on one study: the run list, and below it the panel for one run. Orders about runs come
/// here, from menus, keys and buttons alike, and go to the document.
class StudyPage final : public QWidget {
    Q_OBJECT

public:
    StudyPage(StudyDocument& document, Preferences& preferences, Clock clock,
              QWidget* parent = nullptr);

    [[nodiscard]] RunListView& list() const { return *m_list; }
    [[nodiscard]] RunForm& form() const { return *m_form; }
    [[nodiscard]] std::vector<core::Run> selectedRuns() const;

    void newRun();
    void editRun();
    void editField(RunField field); ///< of the current run
    void switchConfiguration();     ///< of the run in the panel, or of a new one
    void discardRuns();             ///< asks for the reason
    void openEvidence();            ///< the file that a discard of the chosen runs names
    void countRuns();
    void pairRuns();
    void unpairRuns();
    void removeRuns();
    void toggleMark(std::string_view word);
    void showRun(int number);
    /// True when nothing typed would be lost: saves a new run that is being typed, or asks.
    bool settle();
    /// Keeps what is being typed for the next time, without a question.
    void keepDraft();
    /// Goes on with a run that was being typed when the study was last open. False: there was none.
    bool resumeDraft();

signals:
    void selectionChanged();
    void currentRunChanged(int number);
    void problem(const QString& sentence);
    void news(const QString& sentence);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void showCommon();
    [[nodiscard]] bool mayChange(); ///< says why not
    void closeForm();
    void scrollToCurrent();

    StudyDocument& m_document;
    Preferences& m_preferences;
    RunListModel* m_model;
    RunListView* m_list;
    RunForm* m_form;
    QLabel* m_common = nullptr; ///< what is alike in all runs
};

} // namespace bothways::app
