// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/columns_dialog.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/said.h"
#include "app/wording/channels.h"
#include "core/study/units.h"
#include "storage/sheet/column_names.h"
#include "storage/sheet/run_columns.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace bothways::app {
namespace {

constexpr int kLettersOfAChoice = 16;
constexpr int kScrollBar = 24; // px, of a list that has one

QString nameOf(const Language& in, const std::string& column)
{
    return shown(wording::columnName(in, column));
}

/// Without a header: whether its first line could be one.
bool mayHaveAHeader(const storage::SheetPreview& preview)
{
    constexpr std::ptrdiff_t kFewestColumns = 4; // configuration, direction, start, consumption
    return !preview.rows.empty() &&
           std::ranges::count_if(preview.rows.front(), [](const std::string& cell) {
               return !cell.empty();
           }) >= kFewestColumns;
}

bool isToBeAsked(const storage::SheetPreview& preview)
{
    if (!preview.header_found)
        return mayHaveAHeader(preview);
    return !preview.missing.empty() || preview.dates_unclear || preview.several_sheets ||
           std::ranges::any_of(preview.columns, [](const storage::PreviewColumn& column) {
               return column.column.empty() && !column.candidates.empty();
           });
}

} // namespace

ColumnsDialog::ColumnsDialog(const Language& in, const std::string& bytes, QString file,
                             storage::SheetOptions options, bool blind, QWidget* parent)
    : QDialog(parent),
      m_in(in),
      m_bytes(bytes),
      m_file(std::move(file)),
      m_blind(blind),
      m_options(std::move(options))
{
    setObjectName("columnsDialog");
    setWindowTitle(tr("What the columns are"));
    m_choices.push_back({tr("kept, without a meaning"), {}});
    for (const storage::ColumnInfo& column : storage::allColumns()) {
        const QString unit = said(m_in, column.unit);
        const QString name = nameOf(m_in, column.name);
        m_choices.push_back({unit.isEmpty() ? name : tr("%1, %2", "quantity, unit").arg(name, unit),
                             QString::fromStdString(column.name)});
    }
    build();
    look();
    resize(860, 520);
}

void ColumnsDialog::build()
{
    auto* box = new QVBoxLayout(this);
    m_what = new QLabel(this);
    m_what->setWordWrap(true);
    box->addWidget(m_what);

    auto* questions = new QGridLayout;
    m_sheetLabel = new QLabel(tr("&Sheet:"), this);
    m_sheet = new QComboBox(this);
    m_sheet->setObjectName("sheetOfWorkbook");
    m_sheetLabel->setBuddy(m_sheet);
    m_datesLabel = new QLabel(this);
    m_dates = new QComboBox(this);
    m_dates->setObjectName("orderOfDates");
    m_dates->addItem(tr("please choose"), static_cast<int>(storage::DateOrder::unknown));
    m_dates->addItem(tr("the day comes first"), static_cast<int>(storage::DateOrder::dayFirst));
    m_dates->addItem(tr("the month comes first"), static_cast<int>(storage::DateOrder::monthFirst));
    m_datesLabel->setBuddy(m_dates);
    questions->addWidget(m_sheetLabel, 0, 0);
    questions->addWidget(m_sheet, 0, 1);
    questions->addWidget(m_datesLabel, 1, 0);
    questions->addWidget(m_dates, 1, 1);
    questions->setColumnStretch(2, 1);
    box->addLayout(questions);

    m_table = new QTableWidget(this);
    parts::dress(*m_table, "columnTable",
                 tr("The first rows of the sheet, and what each column becomes"));
    m_table->setSelectionMode(QAbstractItemView::NoSelection);
    m_table->verticalHeader()->show();
    box->addWidget(m_table, 1);

    m_found = new QLabel(this);
    m_found->setObjectName("foundInSheet");
    m_found->setWordWrap(true);
    box->addWidget(m_found);
    m_missing = new QLabel(this);
    m_missing->setObjectName("missingColumns");
    m_missing->setWordWrap(true);
    box->addWidget(m_missing);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    m_import = buttons->addButton(tr("&Import"), QDialogButtonBox::AcceptRole);
    m_import->setObjectName("importColumns");
    m_import->setDefault(true);
    box->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_sheet, &QComboBox::activated, this, [this] {
        m_options.sheet = m_sheet->currentText().toStdString();
        look();
    });
    connect(m_dates, &QComboBox::activated, this, [this] {
        m_options.dates = static_cast<storage::DateOrder>(m_dates->currentData().toInt());
        look();
    });
}

void ColumnsDialog::look()
{
    auto preview = storage::previewSheet(m_bytes, m_file.toStdString(), m_options);
    if (!preview) { // nothing of what is asked here: it is said when the sheet is read
        m_missing->setText(sentenceOf(m_in, preview.error()));
        return;
    }
    m_preview = std::move(preview).take();
    showSheets();
    showDates();
    showTable();
    showRest();
}

void ColumnsDialog::showSheets()
{
    const QSignalBlocker quiet(m_sheet);
    const bool several = m_preview.sheets.size() > 1;
    m_sheetLabel->setVisible(several);
    m_sheet->setVisible(several);
    m_sheet->clear();
    for (const std::string& sheet : m_preview.sheets)
        m_sheet->addItem(QString::fromStdString(sheet));
    m_sheet->setCurrentIndex(m_sheet->findText(QString::fromStdString(m_preview.sheet)));
}

void ColumnsDialog::showDates()
{
    const bool asked = m_preview.dates_unclear || m_options.dates != storage::DateOrder::unknown;
    m_datesLabel->setVisible(asked);
    m_dates->setVisible(asked);
    if (!m_preview.unclear_date.empty())
        m_datesLabel->setText(tr("Of &dates like %1:").arg(nameShown(m_preview.unclear_date)));
    else
        m_datesLabel->setText(tr("Of &dates:"));
    m_dates->setCurrentIndex(m_dates->findData(static_cast<int>(m_options.dates)));
}

QString ColumnsDialog::wordsFor(const QString& column) const
{
    const auto found = std::ranges::find(m_choices, column, &Choice::column);
    return found != m_choices.end() ? found->words : column;
}

/// What it may be comes first, then what it is not known to be.
QComboBox* ColumnsDialog::choiceFor(const storage::PreviewColumn& column)
{
    auto* box = new QComboBox(m_table);
    const QString now = QString::fromStdString(column.column);
    box->setAccessibleName(tr("What column %1 becomes").arg(nameShown(column.header)));
    const bool isUnsaid = column.column.empty() && !column.candidates.empty();
    if (isUnsaid)
        box->addItem(tr("in which unit?"), QVariant());
    for (const std::string& candidate : column.candidates)
        box->addItem(wordsFor(QString::fromStdString(candidate)),
                     QString::fromStdString(candidate));
    for (const Choice& choice : m_choices)
        if (box->findData(choice.column) < 0)
            box->addItem(choice.words, choice.column);
    int at = isUnsaid ? 0 : box->findData(now);
    if (at < 0) { // a day beside a start, or a name that was said with its unit
        box->addItem(wordsFor(now), now);
        at = box->count() - 1;
    }
    if (!column.unit.empty())
        box->setItemText(at, tr("%1, from %2", "quantity, unit as written")
                                 .arg(box->itemText(at), nameShown(column.unit)));
    box->setCurrentIndex(at);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(kLettersOfAChoice);
    box->view()->setMinimumWidth(box->view()->sizeHintForColumn(0) + kScrollBar);
    connect(box, &QComboBox::activated, this, [this, box, header = column.header] {
        if (box->currentData().isValid())
            say(header, box->currentData().toString());
    });
    return box;
}

std::vector<storage::PreviewColumn> ColumnsDialog::columnsToShow() const
{
    std::vector<storage::PreviewColumn> columns = m_preview.columns;
    if (!m_preview.header_found && !m_preview.rows.empty()) // the first line with something in it
        for (std::size_t i = 0; i < m_preview.rows.front().size(); ++i)
            if (!m_preview.rows.front()[i].empty())
                columns.push_back({i, m_preview.rows.front()[i], {}, {}, {}});
    return columns;
}

QString ColumnsDialog::cellShown(const storage::PreviewColumn& column,
                                 const std::string& cell) const
{
    const bool isConsumption = core::unitFromName(column.column) || !column.candidates.empty() ||
                               column.column == "control" || column.column == "consumption_given";
    const bool isNumber = storage::parseNumber(cell) || storage::parseNumber(cell, true);
    const bool hides =
        m_blind && !cell.empty() && (isConsumption || (column.column.empty() && isNumber));
    return hides ? tr("hidden") : nameShown(cell);
}

/// Made anew only for another table: who goes through the choices by keys keeps the place.
void ColumnsDialog::showTable()
{
    const std::vector<storage::PreviewColumn> columns = columnsToShow();
    std::vector<std::string> headers;
    for (const storage::PreviewColumn& column : columns)
        headers.push_back(column.header);
    if (headers == m_headersShown && m_preview.lines == m_linesShown)
        return;
    m_headersShown = headers;
    m_linesShown = m_preview.lines;
    const auto lines = static_cast<int>(m_preview.rows.empty() ? 0 : m_preview.rows.size() - 1);
    m_table->clear();
    m_table->setRowCount(1 + lines);
    m_table->setColumnCount(static_cast<int>(columns.size()));
    QStringList rowNames{tr("becomes")};
    for (int line = 0; line < lines; ++line)
        rowNames << QString::number(m_preview.lines[static_cast<std::size_t>(line) + 1]);
    m_table->setVerticalHeaderLabels(rowNames);
    for (int place = 0; place < m_table->columnCount(); ++place) {
        const storage::PreviewColumn& column = columns[static_cast<std::size_t>(place)];
        m_table->setHorizontalHeaderItem(place, new QTableWidgetItem(nameShown(column.header)));
        m_table->setCellWidget(0, place, choiceFor(column));
        for (int line = 0; line < lines; ++line) {
            const auto& row = m_preview.rows[static_cast<std::size_t>(line) + 1];
            const QString shown =
                column.at < row.size() ? cellShown(column, row[column.at]) : QString();
            m_table->setItem(line + 1, place, new QTableWidgetItem(shown));
        }
    }
    m_table->resizeColumnsToContents();
    m_table->resizeRowsToContents();
    const auto unsaid = std::ranges::find_if(columns, [&](const storage::PreviewColumn& column) {
        return column.column.empty() && (!m_preview.header_found || !column.candidates.empty());
    });
    if (unsaid == columns.end())
        return;
    const auto place = static_cast<int>(unsaid - columns.begin());
    m_table->setCurrentCell(0, place);
    m_table->cellWidget(0, place)->setFocus();
}

void ColumnsDialog::showRest()
{
    m_what->setText(
        m_preview.header_found
            ? tr("%1 has a form of its own. Say what its columns are where that is not known; it "
                 "is kept for the next sheet with this header.")
                  .arg(nameShown(QFileInfo(m_file).fileName().toStdString()))
            : tr("In %1 no line names columns that are known. Is it the first one below? Then say "
                 "what its columns are.")
                  .arg(nameShown(QFileInfo(m_file).fileName().toStdString())));
    QStringList found;
    for (const core::Message& message : m_preview.found)
        if (!storage::namesColumns(message)) // the table above shows it
            found << said(m_in, message);
    m_found->setVisible(!found.isEmpty());
    m_found->setText(tr("Found: %1.").arg(found.join(u"; ")));
    QStringList missing;
    for (const std::string& column : m_preview.missing)
        missing << (column == "l_per_100km" ? tr("a consumption") : nameOf(m_in, column));
    if (!m_preview.header_found)
        missing << tr("what at least four of the columns are");
    if (m_preview.dates_unclear)
        missing << tr("the order of dates");
    if (m_preview.several_sheets && m_options.sheet.empty())
        missing << tr("which sheet it is");
    m_missing->setText(missing.isEmpty() ? tr("Nothing is missing.")
                                         : tr("Still missing: %1.").arg(listed(m_in, missing)));
    m_import->setEnabled(missing.isEmpty());
}

void ColumnsDialog::say(const std::string& header, const QString& column)
{
    const auto its = std::ranges::find(m_options.columns, header, &storage::ColumnMapping::column);
    if (its != m_options.columns.end())
        its->ours = column.toStdString();
    else
        m_options.columns.push_back({header, column.toStdString()});
    // Not at once: the table that the choice stands in may be made anew.
    QMetaObject::invokeMethod(this, &ColumnsDialog::look, Qt::QueuedConnection);
}

std::optional<storage::SheetOptions> askColumns(const Language& in, const std::string& bytes,
                                                const QString& file,
                                                const storage::SheetOptions& options,
                                                const core::Study* existing, bool blind,
                                                QWidget* parent)
{
    const std::string name = file.toStdString();
    const auto read = storage::parseRunSheet(bytes, name, options, existing);
    const bool isOurs = read && read.value().found.empty() && !storage::isWorkbook(bytes);
    const bool wasSaid = !options.columns.empty() || options.dates != storage::DateOrder::unknown;
    if (isOurs || (read && wasSaid))
        return options;
    const auto preview = storage::previewSheet(bytes, name, options);
    if (!preview || (!read && !isToBeAsked(preview.value())))
        return options; // what is wrong is said when it is read
    ColumnsDialog dialog(in, bytes, file, options, blind, parent);
    if (dialog.exec() != QDialog::Accepted)
        return std::nullopt;
    return dialog.options();
}

} // namespace bothways::app
