// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "storage/study/study_file.h"

#include <QAbstractTableModel>
#include <QWidget>

namespace bothways::app {

class HintedTableView;
class StudyDocument;

/// What changed when, newest first. Nothing is ever taken out of it.
class HistoryModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    // Plain enumeration: Qt speaks int.
    enum Column { whenColumn, kindColumn, detailColumn, columns };

    HistoryModel(StudyDocument& document, Language in, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    void takeStudy();

    StudyDocument& m_document;
    Language m_language;
    std::vector<storage::HistoryEntry> m_entries; ///< oldest first, as in the file
};

class HistoryPanel final : public QWidget {
    Q_OBJECT

public:
    HistoryPanel(StudyDocument& document, Language in, QWidget* parent = nullptr);

private:
    HintedTableView* m_view;
};

} // namespace bothways::app
