// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "storage/sheet/ordinary_sheet.h"

#include <QDialog>

#include <optional>
#include <string>
#include <vector>

class QComboBox;
class QLabel;
class QPushButton;
class QTableWidget;

namespace bothways::app {

/// The first rows of somebody's own spreadsheet, what each column becomes, and what is missing.
/// What a person says here is in options(); nothing else is changed.
class ColumnsDialog final : public QDialog {
    Q_OBJECT

public:
    /// @param bytes  of the file; stays alive as long as this
    /// @param blind  whether consumption is hidden in the study: then it is here, too, and so are
    ///               numbers that may be one
    ColumnsDialog(const Language& in, const std::string& bytes, QString file,
                  storage::SheetOptions options, bool blind, QWidget* parent = nullptr);

    [[nodiscard]] const storage::SheetOptions& options() const { return m_options; }

private:
    /// What a column may become, as people read it.
    struct Choice {
        QString words;
        QString column; ///< ours; empty: kept without a meaning
    };

    void build();
    void look(); ///< again, after something was said
    void showSheets();
    void showDates();
    void showTable();
    [[nodiscard]] QString cellShown(const storage::PreviewColumn& column,
                                    const std::string& cell) const;
    void showRest();
    [[nodiscard]] std::vector<storage::PreviewColumn> columnsToShow() const;
    [[nodiscard]] QComboBox* choiceFor(const storage::PreviewColumn& column);
    [[nodiscard]] QString wordsFor(const QString& column) const;
    void say(const std::string& header, const QString& column);

    const Language m_in;
    const std::string& m_bytes;
    const QString m_file;
    const bool m_blind;
    storage::SheetOptions m_options;
    storage::SheetPreview m_preview;
    std::vector<Choice> m_choices;
    std::vector<std::string> m_headersShown;
    std::vector<int> m_linesShown;

    QLabel* m_what = nullptr;
    QLabel* m_sheetLabel = nullptr;
    QComboBox* m_sheet = nullptr;
    QLabel* m_datesLabel = nullptr;
    QComboBox* m_dates = nullptr;
    QTableWidget* m_table = nullptr;
    QLabel* m_found = nullptr;
    QLabel* m_missing = nullptr;
    QPushButton* m_import = nullptr;
};

/// How the sheet is to be read: at once where it is in our own form, or where it was said for its
/// header before; else as a person says in the dialog. Nothing: the person does not want it.
/// @param existing  the study that the runs will join
/// @param blind     whether consumption is hidden in it
[[nodiscard]] std::optional<storage::SheetOptions>
askColumns(const Language& in, const std::string& bytes, const QString& file,
           const storage::SheetOptions& options, const core::Study* existing, bool blind,
           QWidget* parent);

} // namespace bothways::app
