// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/run_draft.h"
#include "app/desktop/runs/run_fields.h"

#include <QFrame>
#include <QHash>

#include <optional>

class QAction;
class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QToolButton;

namespace bothways::app {

class Preferences;
class StudyDocument;

/// Everything about one run, in driving order: before, on the road, at the end.
///
/// A new run comes filled in from the last; Enter saves it and prepares the next. A run that is in
/// the study is changed field by field, each as it is left. What looks like a slip is asked about
/// beside the field and saved all the same; only what cannot be (no number, a third configuration)
/// is kept back, with a sentence.
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

signals:
    void runSaved(bothways::core::RunId id);
    void closeRequested();
    void draftChanged();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void build();
    void buildBefore();
    void buildOnTheRoad();
    void buildAtTheEnd();
    void beginSection(const QString& title);
    void place(QWidget* label, QWidget* editor, int span);
    void addField(RunField field, bool extra, int span = 1, QWidget* beside = nullptr);
    void enlarge();
    QWidget* makeEditor(RunField field);
    void buildMarks();
    void buildButtons();
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

    StudyDocument& m_document;
    Preferences& m_preferences;
    Clock m_clock;
    bool m_isNew = true;
    bool m_notebook = false; ///< starts are typed, not stamped
    bool m_filling = false;
    core::Run m_run; ///< what the fields were filled from
    QHash<int, QWidget*> m_editors, m_labels;
    QHash<int, QAction*> m_signs;
    QList<QWidget*> m_extra;
    QGridLayout* m_grid = nullptr;
    int m_row = 0, m_column = 0; ///< the next free place, while building
    QComboBox* m_unit = nullptr;
    QCheckBox* m_traffic = nullptr;
    QCheckBox* m_adjusted = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_notes = nullptr;
    QPushButton* m_save = nullptr;
    QPushButton* m_startNow = nullptr;
    QToolButton* m_more = nullptr;
};

} // namespace bothways::app
