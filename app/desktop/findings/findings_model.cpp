// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/findings/findings_model.h"

#include "app/desktop/look/preferences.h"
#include "app/desktop/look/shapes.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/look/words.h"

#include <QGuiApplication>

#include <algorithm>

namespace bothways::app {

FindingsModel::FindingsModel(StudyDocument& document, Preferences& preferences, QObject* parent)
    : QAbstractTableModel(parent), m_document(document), m_preferences(preferences)
{
    takeStudy();
    connect(&document, &StudyDocument::analysisChanged, this, &FindingsModel::takeStudy);
    const auto refresh = [this] {
        if (!m_findings.empty())
            emit dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
    };
    connect(&document, &StudyDocument::studyChanged, this, refresh);
    connect(&preferences, &Preferences::unitsChanged, this, refresh);
}

void FindingsModel::takeStudy()
{
    const auto result = m_document.result();
    std::vector<core::Finding> findings;
    if (result)
        findings = result->screening.findings;
    if (findings == m_findings) {
        if (!m_findings.empty())
            emit dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
        return;
    }
    // Findings have no identity that outlives an edit: what is the same at both ends stays.
    const std::size_t shorter = std::min(findings.size(), m_findings.size());
    std::size_t head = 0, tail = 0;
    while (head < shorter && findings[head] == m_findings[head])
        ++head;
    while (tail < shorter - head &&
           findings[findings.size() - 1 - tail] == m_findings[m_findings.size() - 1 - tail])
        ++tail;
    const auto at = [](auto& list, std::size_t i) {
        return list.begin() + static_cast<std::ptrdiff_t>(i);
    };
    if (const std::size_t end = m_findings.size() - tail; end > head) {
        beginRemoveRows({}, static_cast<int>(head), static_cast<int>(end) - 1);
        m_findings.erase(at(m_findings, head), at(m_findings, end));
        endRemoveRows();
    }
    if (const std::size_t end = findings.size() - tail; end > head) {
        beginInsertRows({}, static_cast<int>(head), static_cast<int>(end) - 1);
        m_findings.insert(at(m_findings, head), at(findings, head), at(findings, end));
        endInsertRows();
    }
    if (!m_findings.empty())
        emit dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

int FindingsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_findings.size());
}

int FindingsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(columns);
}

const core::Finding& FindingsModel::findingAt(int row) const
{
    return m_findings.at(static_cast<std::size_t>(row));
}

int FindingsModel::rowOfRun(int number) const
{
    int answered = -1;
    for (int row = 0; row < rowCount(); ++row) {
        if (findingAt(row).run != number)
            continue;
        if (m_document.answerTo(findingAt(row)) == Answer::none)
            return row;
        if (answered < 0)
            answered = row;
    }
    return answered;
}

int FindingsModel::nextOpen(int row) const
{
    for (int step = 1; step <= rowCount(); ++step) {
        const int candidate = (std::max(row, -1) + step) % rowCount();
        if (m_document.answerTo(findingAt(candidate)) == Answer::none)
            return candidate;
    }
    return -1;
}

int FindingsModel::openCount() const
{
    return static_cast<int>(
        std::count_if(m_findings.begin(), m_findings.end(), [&](const core::Finding& finding) {
            const core::Run* run = m_document.runByNumber(finding.run);
            return run && run->counted() && m_document.answerTo(finding) == Answer::none;
        }));
}

QString FindingsModel::answerText(const core::Finding& finding) const
{
    switch (m_document.answerTo(finding)) {
    case Answer::accepted: return tr("accepted: run discarded");
    case Answer::overruled: return tr("overruled: %1").arg(m_document.answerWords(finding));
    case Answer::none: break;
    }
    const core::Run* run = m_document.runByNumber(finding.run);
    if (run && run->discard)
        return tr("run discarded: %1")
            .arg(shown(wording::reasonName(m_preferences.spoken(), run->discard->reason)));
    return tr("open");
}

QVariant FindingsModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const core::Finding& finding = findingAt(index.row());
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    if (role == Qt::DecorationRole && index.column() == gradeColumn)
        return gradeIcon(finding.grade, Theme::of(QGuiApplication::palette()));
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole)
        return {};
    switch (index.column()) {
    case runColumn: return role == Qt::DisplayRole ? QVariant(finding.run) : QVariant();
    case gradeColumn: return shown(wording::gradeName(units.language, finding.grade));
    case findingColumn:
        return shown(wording::findingWords(units.language, finding, unitsOf(units)));
    case answerColumn: return answerText(finding);
    default: return {};
    }
}

QVariant FindingsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case runColumn: return tr("Run");
    case gradeColumn: return tr("Grade");
    case findingColumn: return tr("Finding");
    case answerColumn: return tr("Answer");
    default: return {};
    }
}

} // namespace bothways::app
