// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/run_draft.h"
#include "app/desktop/runs/questions.h"
#include "app/desktop/runs/run_fields.h"

#include <QFrame>
#include <QHash>

#include <optional>
#include <vector>

class QAction;
class QCheckBox;
class QComboBox;
class QLabel;
class QLayout;
class QLineEdit;
class QPushButton;
class QToolButton;

namespace bothways::app {

class FieldGrid;
class Preferences;
class StudyDocument;

/// Everything about one run, in driving order: before, on the road, at the end.
///
/// A new run comes filled in from the last; Enter saves it and prepares the next. A run that is in
/// the study is changed field by field, each as it is left. What looks like a slip is asked about
/// beside the field. A consumption that is far off waits for an answer, which Enter is not: take
/// what was meant, keep what was typed, or type anew. What cannot be (no number, a third
/// configuration) is kept back, with a sentence.
class RunForm final : public QFrame {
    Q_OBJECT

public:
    RunForm(StudyDocument& document, Preferences& preferences, Clock clock,
            QWidget* parent = nullptr);
    ~RunForm() override;

    /// Opens the panel with a new run that starts now. With one already open: it starts now.
    void beginNew();
    /// Shows a run that is in the study, without taking the keyboard.
    void showRun(core::RunId id);
    void editRun(core::RunId id, RunField first);
    /// Several runs: what is common to them stands in the fields, and what is typed goes to all of
    /// them in one change. Their numbers, starts and consumptions are each run's own.
    void showRuns(const std::vector<core::RunId>& ids);
    /// The other configuration: of a new run, or of the one that is shown.
    void switchConfiguration();
    [[nodiscard]] bool isNew() const { return m_isNew; }
    /// True while a new run holds something that was typed and is not saved.
    [[nodiscard]] bool isUnsaved() const;
    /// Forgets what was typed about a new run.
    void dropDraft();
    /// What isUnsaved() speaks of, to go on with another day; empty: nothing.
    [[nodiscard]] QByteArray draft() const;
    /// Goes on with a draft. False where the bytes are none.
    bool resume(const QByteArray& draft);
    /// Saves a new run. False, with the reason on show, where it cannot be.
    bool save();
    void focusField(RunField field);
    /// Puts an odd consumption, typed elsewhere, into the fields of a run, to be asked about.
    void askAbout(core::RunId id, const core::Consumption& typed);

signals:
    void runSaved(bothways::core::RunId id);
    void closeRequested();
    void draftChanged();
    /// An odd consumption that nobody confirmed was not written.
    void notConfirmed(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void build();
    void buildBefore();
    void buildOnTheRoad();
    void buildAtTheEnd();
    void beginSection(const QString& title);
    void addField(RunField field, bool extra, int span = 1, QWidget* beside = nullptr);
    void enlarge();
    QWidget* makeEditor(RunField field, QWidget* parent);
    struct Field {
        QWidget* label;
        QWidget* editor;
    };
    Field makeField(RunField field, QWidget* parent);
    void buildMarks();
    [[nodiscard]] QLayout* buildTop();
    [[nodiscard]] QLayout* buildBelow(); ///< the notes, and the buttons beside them
    void buildAnswer();
    void retitle();
    void setMoreFields(bool more);
    void relabel();

    void fill(const core::Run& run);
    void setText(RunField field, const QString& text);
    [[nodiscard]] QString text(RunField field) const;
    [[nodiscard]] QLineEdit* line(RunField field) const;
    [[nodiscard]] bool hasKeyboard(RunField field) const;
    [[nodiscard]] core::ConsumptionUnit unit() const;
    void setUnit(core::ConsumptionUnit unit);

    /// The run as it stands in the fields; the first fault, if any, in `fault`.
    [[nodiscard]] core::Run collect(QString* fault, RunField* where) const;
    void review();
    void commitEdit(RunField field);
    void commitMark(std::string_view word, bool there);
    void takeStudy();
    void showFault(RunField field, const QString& sentence);
    void setSign(RunField field, QAction** sign, const QIcon& icon, const QString& words);
    void enterPressed();
    // run_form_several.cpp
    [[nodiscard]] bool isSeveral() const { return m_several.size() > 1; }
    [[nodiscard]] std::vector<core::Run> severalRuns() const;
    void fillSeveral();
    void commitSeveral(RunField field);
    void writeSeveral(const std::vector<core::Run>& runs, RunField field);

    void afterSaving(const core::Run& run, core::RunId id);

    // run_form_answer.cpp
    /// The question that wants an answer before `run` is saved.
    [[nodiscard]] std::optional<Question> unanswered(const core::Run& run) const;
    [[nodiscard]] Sight sight() const;
    void showAnswer(const core::Run& run, const std::optional<Question>& question);
    void takeLikely();
    void keepTyped();
    void answered(const core::Consumption& with);
    void leaveUnanswered();
    void showTyped(const core::Consumption& typed);

    StudyDocument& m_document;
    Preferences& m_preferences;
    Clock m_clock;
    bool m_isNew = true;
    bool m_notebook = false; ///< starts are typed, not stamped
    bool m_filling = false;
    std::vector<core::RunId> m_several; ///< where more than one run is shown
    QHash<int, QString> m_shared;       ///< by field, what these have in common
    core::Run m_run;                    ///< what the fields were filled from
    QHash<int, QWidget*> m_editors, m_labels;
    QHash<int, QAction*> m_signs;
    QList<QWidget*> m_extra;
    QWidget* m_fields = nullptr; ///< all but the notes
    FieldGrid* m_grid = nullptr;
    QComboBox* m_unit = nullptr;
    QCheckBox* m_traffic = nullptr;
    QCheckBox* m_adjusted = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_notes = nullptr;
    QPushButton* m_save = nullptr;
    QPushButton* m_startNow = nullptr;
    QToolButton* m_more = nullptr;
    QWidget* m_answer = nullptr; ///< the buttons below a question that wants an answer
    QPushButton* m_take = nullptr;
    QPushButton* m_keep = nullptr;
    std::optional<core::Consumption> m_likely, m_typed; ///< what the buttons stand for
    std::optional<core::Consumption> m_kept;            ///< odd, and confirmed
};

} // namespace bothways::app
