// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/study_document.h"

#include <QAbstractTableModel>

namespace bothways::app {

class Preferences;

/// What screening found, and what was answered.
class FindingsModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    // Plain enumeration: Qt speaks int.
    enum Column { runColumn, gradeColumn, findingColumn, answerColumn, columns };

    FindingsModel(StudyDocument& document, Preferences& preferences, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

    [[nodiscard]] const core::Finding& findingAt(int row) const;
    /// First row of a run's findings, the unanswered ones before the others; -1 where it has none.
    [[nodiscard]] int rowOfRun(int number) const;
    /// The next finding without an answer after `row`, from the top again at the end; -1: none.
    [[nodiscard]] int nextOpen(int row) const;
    [[nodiscard]] int openCount() const;

private:
    void takeStudy();
    [[nodiscard]] QString answerText(const core::Finding& finding) const;

    StudyDocument& m_document;
    Preferences& m_preferences;
    std::vector<core::Finding> m_findings;
};

} // namespace bothways::app
