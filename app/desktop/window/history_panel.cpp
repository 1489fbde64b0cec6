// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/history_panel.h"

#include "app/desktop/document/history_words.h"
#include "app/desktop/document/study_document.h"
#include "app/desktop/look/hinted_table_view.h"

#include <QFont>
#include <QHeaderView>
#include <QLocale>
#include <QVBoxLayout>

namespace bothways::app {

HistoryModel::HistoryModel(StudyDocument& document, Language in, QObject* parent)
    : QAbstractTableModel(parent),
      m_document(document),
      m_language(std::move(in)),
      m_entries(document.history())
{
    connect(&document, &StudyDocument::studyChanged, this, &HistoryModel::takeStudy);
    connect(&document, &StudyDocument::blindChanged, this, &HistoryModel::takeStudy);
}

void HistoryModel::takeStudy()
{
    std::vector<storage::HistoryEntry> entries = m_document.history();
    const std::size_t kept = m_entries.size();
    if (entries.size() > kept) { // new ones come on top
        beginInsertRows({}, 0, static_cast<int>(entries.size() - kept) - 1);
        m_entries = std::move(entries);
        endInsertRows();
    } else if (entries.size() < kept) {
        beginResetModel();
        m_entries = std::move(entries);
        endResetModel();
        return;
    } else {
        m_entries = std::move(entries);
    }
    if (!m_entries.empty()) // undone or done again: lines further down change too
        emit dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

int HistoryModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_entries.size());
}

int HistoryModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(columns);
}

QVariant HistoryModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const storage::HistoryEntry& whole =
        m_entries[m_entries.size() - 1 - static_cast<std::size_t>(index.row())];
    const storage::HistoryEntry entry = m_document.isBlind() ? withoutConsumption(whole) : whole;
    if (role == Qt::FontRole && entry.undone) {
        QFont font;
        font.setStrikeOut(true);
        return font;
    }
    if (role == Qt::ToolTipRole)
        return entry.undone ? tr("%1 (undone)").arg(historyLine(m_language, entry, 2000))
                            : historyLine(m_language, entry, 2000);
    if (role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case whenColumn: return QLocale().toString(historyTime(entry), QLocale::ShortFormat);
    case kindColumn: return historyKind(m_language, entry.kind);
    case detailColumn: {
        const QString detail = historyDetail(m_language, entry);
        return entry.undone ? tr("%1 (undone)").arg(detail) : detail;
    }
    default: return {};
    }
}

QVariant HistoryModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case whenColumn: return tr("When");
    case kindColumn: return tr("What");
    case detailColumn: return tr("Detail");
    default: return {};
    }
}

HistoryPanel::HistoryPanel(StudyDocument& document, Language in, QWidget* parent)
    : QWidget(parent), m_view(new HintedTableView(this))
{
    setObjectName("historyPanel");
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(4, 4, 4, 4);
    box->addWidget(m_view);
    m_view->setObjectName("historyList");
    m_view->setAccessibleName(tr("What changed when, newest first"));
    m_view->setModel(new HistoryModel(document, std::move(in), this));
    m_view->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_view->horizontalHeader()->setSectionResizeMode(HistoryModel::detailColumn,
                                                     QHeaderView::Stretch);
    // As many lines as a detail needs, once the columns have their widths.
    m_view->setWordWrap(true);
    const auto fit = [this] {
        m_view->verticalHeader()->setMinimumSectionSize(
            m_view->verticalHeader()->defaultSectionSize());
        m_view->resizeRowsToContents();
    };
    connect(m_view->horizontalHeader(), &QHeaderView::sectionResized, m_view, fit,
            Qt::QueuedConnection);
    for (const auto change : {&QAbstractItemModel::rowsInserted, &QAbstractItemModel::rowsRemoved})
        connect(m_view->model(), change, m_view, fit, Qt::QueuedConnection);
    connect(m_view->model(), &QAbstractItemModel::modelReset, m_view, fit, Qt::QueuedConnection);
}

} // namespace bothways::app
