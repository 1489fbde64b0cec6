// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/run_draft.h"
#include "core/study/walk_round.h"

#include <QDialog>

#include <vector>

class QCheckBox;
class QDialogButtonBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QStackedWidget;

namespace bothways::app {

class Preferences;
class StudyDocument;

/// The walk-round before a block: what is in order is ticked, numbers are typed, and two that are
/// further apart than the list allows are said while they are typed. The study's list is changed
/// here too; the user's last one, or else a first one, is offered where the study has none.
class WalkDialog final : public QDialog {
    Q_OBJECT

public:
    WalkDialog(StudyDocument& document, Preferences& preferences, Clock clock,
               QWidget* parent = nullptr);

    void accept() override;

signals:
    void noted(const QString& sentence); ///< a walk-round is in the study

private:
    struct Row {
        QCheckBox* tick = nullptr;
        QLineEdit* number = nullptr; ///< null: the line asks for none
    };
    [[nodiscard]] QWidget* buildRound();
    [[nodiscard]] QWidget* buildList();
    void takeList();
    void addRow(QGridLayout& grid, const core::WalkLine& line);
    void showList();
    void follow();
    [[nodiscard]] core::WalkRound round() const;
    /// Not a number, where one is asked for: the row's place; -1: all are.
    [[nodiscard]] int wrongNumber() const;
    [[nodiscard]] bool acceptList();

    StudyDocument& m_document;
    Preferences& m_preferences;
    Clock m_clock;
    std::vector<core::WalkLine> m_lines;
    std::vector<Row> m_rows;
    QStackedWidget* m_stack = nullptr;
    QWidget* m_round = nullptr;
    QWidget* m_listPage = nullptr;
    QWidget* m_rowsHolder = nullptr;
    QLabel* m_which = nullptr;
    QLabel* m_problem = nullptr;
    QPlainTextEdit* m_list = nullptr;
    QPushButton* m_change = nullptr;
    QDialogButtonBox* m_buttons = nullptr;
};

} // namespace bothways::app
