// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_list_model.h"

#include "app/desktop/look/preferences.h"
#include "app/desktop/look/recorded_words.h"
#include "app/desktop/look/said.h"
#include "app/desktop/look/words.h"
#include "app/desktop/runs/questions.h"
#include "app/desktop/runs/run_tags.h"
#include "core/study/clock.h"
#include "storage/sheet/run_sheet.h"

#include <QFont>

#include <algorithm>
#include <array>

namespace bothways::app {
namespace {

constexpr std::array kFurtherFields{
    RunField::configuration, RunField::distance,    RunField::duration,    RunField::speed,
    RunField::temperature,   RunField::pressure,    RunField::humidity,    RunField::wind,
    RunField::windFrom,      RunField::accessories, RunField::accessoryOn, RunField::accessoryLoad,
    RunField::marks,         RunField::control,     RunField::output,      RunField::rotor,
    RunField::batteryStart,  RunField::batteryEnd};

const QString kHidden = QString::fromUtf8("•••");

} // namespace

RunListModel::RunListModel(StudyDocument& document, Preferences& preferences, QObject* parent)
    : QAbstractTableModel(parent), m_document(document), m_preferences(preferences)
{
    m_rows = runRows(document, {});
    m_common = CommonNotes(document.study(), preferences.units(document.isElectric()));
    connect(&document, &StudyDocument::studyChanged, this, &RunListModel::takeStudy);
    connect(&document, &StudyDocument::analysisChanged, this, &RunListModel::takeStudy);
    connect(&document, &StudyDocument::blindChanged, this, &RunListModel::refresh);
    connect(&preferences, &Preferences::unitsChanged, this, &RunListModel::refresh);
}

int RunListModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int RunListModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : firstFieldColumn + static_cast<int>(kFurtherFields.size());
}

const core::Run& RunListModel::runAt(int row) const
{
    return m_rows.at(static_cast<std::size_t>(row)).run;
}

int RunListModel::rowOf(core::RunId id) const
{
    const auto found = std::find_if(m_rows.begin(), m_rows.end(),
                                    [&](const RunRow& row) { return row.run.id == id; });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

std::optional<RunField> RunListModel::fieldOf(int column)
{
    switch (column) {
    case numberColumn: return RunField::number;
    case startColumn: return RunField::start;
    case directionColumn: return RunField::direction;
    case settingColumn: return RunField::setting;
    case consumptionColumn: return RunField::consumption;
    case remarksColumn: return RunField::notes;
    default: break;
    }
    const int further = column - firstFieldColumn;
    if (further < 0 || further >= static_cast<int>(kFurtherFields.size()))
        return std::nullopt;
    return kFurtherFields[static_cast<std::size_t>(further)];
}

QString RunListModel::stateName(State state)
{
    switch (state) {
    case waiting: return tr("counts");
    case paired: return tr("counts");
    case alone: return tr("no partner");
    case discarded: return tr("discarded");
    }
    return {};
}

void RunListModel::takeCommon()
{
    CommonNotes common(m_document.study(), m_preferences.units(m_document.isElectric()));
    if (common == m_common)
        return;
    m_common = std::move(common);
    if (!m_rows.empty())
        emit dataChanged(index(0, remarksColumn), index(rowCount() - 1, remarksColumn));
    emit commonWordsChanged(commonWords());
}

QString RunListModel::commonWords() const
{
    return m_common.words();
}

void RunListModel::takeStudy()
{
    takeCommon();
    takeRows(runRows(m_document, m_rows));
}

void RunListModel::takeRows(std::vector<RunRow> rows)
{
    const auto sameRun = [](const RunRow& a, const RunRow& b) { return a.run.id == b.run.id; };
    const std::size_t shorter = std::min(rows.size(), m_rows.size());
    std::size_t head = 0;
    while (head < shorter && sameRun(rows[head], m_rows[head]))
        ++head;
    std::size_t tail = 0;
    while (tail < shorter - head &&
           sameRun(rows[rows.size() - 1 - tail], m_rows[m_rows.size() - 1 - tail]))
        ++tail;

    const auto at = [](auto& list, std::size_t i) {
        return list.begin() + static_cast<std::ptrdiff_t>(i);
    };
    const std::size_t oldEnd = m_rows.size() - tail;
    if (oldEnd > head) {
        beginRemoveRows({}, static_cast<int>(head), static_cast<int>(oldEnd) - 1);
        m_rows.erase(at(m_rows, head), at(m_rows, oldEnd));
        endRemoveRows();
    }
    const std::size_t newEnd = rows.size() - tail;
    if (newEnd > head) {
        beginInsertRows({}, static_cast<int>(head), static_cast<int>(newEnd) - 1);
        m_rows.insert(at(m_rows, head), at(rows, head), at(rows, newEnd));
        endInsertRows();
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows[i] == m_rows[i])
            continue;
        m_rows[i] = std::move(rows[i]);
        const int row = static_cast<int>(i);
        emit dataChanged(index(row, 0), index(row, columnCount() - 1));
    }
}

void RunListModel::refresh()
{
    takeCommon();
    if (!m_rows.empty())
        emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    emit headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
}

QString RunListModel::reason(const RunRow& row) const
{
    if (!row.run.discard)
        return {};
    const QString name =
        shown(wording::reasonName(m_preferences.spoken(), row.run.discard->reason));
    const QString evidence = nameShown(row.run.discard->evidence);
    if (evidence.isEmpty())
        return name;
    return row.run.discard->reason == "other" ? evidence : tr("%1: %2").arg(name, evidence);
}

QString RunListModel::remarks(const RunRow& row) const
{
    QStringList parts;
    parts += reason(row);
    parts += nameShown(row.run.notes);
    for (const RunTag& tag : m_common.tagsOf(row.run))
        parts += tag.text;
    parts.removeAll(QString());
    return parts.join("; ");
}

QString RunListModel::question(const RunRow& row, int column) const
{
    if (column != consumptionColumn || !row.run.counted())
        return {};
    const auto question = consumptionQuestion(m_document.study(), row.run,
                                              m_preferences.units(m_document.isElectric()),
                                              m_document.isBlind() ? Sight::hidden : Sight::open);
    return question ? question->sentence : QString();
}

/// The consumption, and that of a control vehicle, while screening is blind.
bool RunListModel::isHidden(int column) const
{
    return m_document.isBlind() &&
           (column == consumptionColumn || fieldOf(column) == RunField::control);
}

QString RunListModel::text(const RunRow& row, int column) const
{
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    if (isHidden(column)) {
        const bool any = column == consumptionColumn ? row.run.consumption || row.fromTrace
                                                     : row.run.control.has_value();
        return any ? kHidden : QString();
    }
    switch (column) {
    case blockColumn: return row.blockLines.join(", ");
    case pairColumn: return row.pair > 0 ? QString::number(row.pair) : QString();
    case stateColumn: return stateName(row.state);
    case startColumn: // to the minute; the tooltip and the editor have it all
        return QString::fromStdString(core::formatTimeOfDay(row.run.start, false));
    case remarksColumn: return remarks(row);
    case consumptionColumn:
        if (row.fromTrace) {
            core::Run filled = row.run;
            filled.consumption = row.fromTrace;
            return fieldText(RunField::consumption, filled, units);
        }
        break;
    default: break;
    }
    const auto field = fieldOf(column);
    return field ? fieldText(*field, row.run, units) : QString();
}

QString RunListModel::toolTip(const RunRow& row, int column) const
{
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    QStringList lines;
    if (const QString asked = question(row, column); !asked.isEmpty())
        lines += asked;
    if (column == consumptionColumn && row.fromTrace && !m_document.isBlind())
        lines += tr("Taken from the recording: the driver noted none.");
    if (const auto result = m_document.result();
        result && column == consumptionColumn && !m_document.isBlind())
        if (const auto recorded = result->recorded.find(row.run.number);
            recorded != result->recorded.end())
            lines += recordedBeside(row.run, recorded->second, units);
    if (column == startColumn)
        lines += m_preferences.units().dateText(core::formatDateTime(row.run.start));
    if (column == remarksColumn) {
        lines << reason(row) << nameShown(row.run.notes);
        for (const RunTag& tag : tagsOf(row.run, units))
            lines += tag.tooltip;
        lines.removeAll(QString());
    }
    if (column == stateColumn || column == numberColumn)
        for (const auto& [finding, answer] : row.findings) {
            const QString sentence =
                shown(wording::findingWords(units.language, finding, unitsOf(units)));
            lines += answer == Answer::overruled
                         ? tr("%1 (overruled: %2)").arg(sentence, m_document.answerWords(finding))
                         : tr("%1: %2").arg(
                               shown(wording::gradeName(units.language, finding.grade)), sentence);
        }
    if (column == pairColumn && row.pair > 0)
        for (const BracketPiece& piece : row.brackets)
            if (piece.pair == row.pair)
                lines += piece.fixed ? tr("Pair %1, tied by hand").arg(row.pair)
                                     : tr("Pair %1").arg(row.pair);
    return lines.join(u'\n');
}

QVariant RunListModel::ownRole(const RunRow& row, int column, int role) const
{
    switch (role) {
    case runIdRole: return QVariant::fromValue(static_cast<long long>(row.run.id));
    case blockPlaceRole: return QVariant::fromValue(row.place);
    case blockLinesRole: return row.blockLines;
    case deviceRole: return row.device;
    case bracketsRole: return QVariant::fromValue(row.brackets);
    case lanesRole: {
        int lanes = 0;
        for (const RunRow& any : m_rows)
            for (const BracketPiece& piece : any.brackets)
                lanes = std::max(lanes, piece.lane + 1);
        return lanes;
    }
    case stateRole: return row.state;
    case gradeRole: return row.grade;
    case tagsRole: return QVariant::fromValue(m_common.tagsOf(row.run));
    case reasonRole: return reason(row);
    case questionRole: return question(row, column);
    case hiddenRole: return isHidden(column);
    default: return {};
    }
}

/// Of the cells of a column and of its heading.
Qt::Alignment RunListModel::alignmentOf(int column)
{
    const auto field = fieldOf(column);
    const bool number = column == numberColumn || column == consumptionColumn ||
                        (column >= firstFieldColumn && field != RunField::configuration &&
                         field != RunField::accessories && field != RunField::marks &&
                         field != RunField::accessoryOn);
    return Qt::AlignVCenter | (number ? Qt::AlignRight : Qt::AlignLeft);
}

QVariant RunListModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const RunRow& row = m_rows[static_cast<std::size_t>(index.row())];
    const int column = index.column();
    switch (role) {
    case Qt::DisplayRole: return text(row, column);
    case Qt::EditRole: {
        if (isHidden(column))
            return {};
        const auto field = fieldOf(column);
        const UnitsShown units = m_preferences.units(m_document.isElectric());
        return field ? fieldText(*field, row.run, units) : QString();
    }
    case Qt::ToolTipRole: return toolTip(row, column);
    case Qt::AccessibleTextRole: {
        const QString asked = question(row, column);
        return asked.isEmpty() ? text(row, column) : tr("%1. %2").arg(text(row, column), asked);
    }
    case Qt::TextAlignmentRole: return QVariant::fromValue(alignmentOf(column));
    case Qt::FontRole: {
        QFont font;
        font.setStrikeOut(row.state == discarded && column != remarksColumn &&
                          column != stateColumn && column != blockColumn);
        font.setItalic(column == consumptionColumn && row.fromTrace);
        return font.strikeOut() || font.italic() ? QVariant(font) : QVariant();
    }
    default: return ownRole(row, column, role);
    }
}

QVariant RunListModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount())
        return {};
    if (role == Qt::ToolTipRole) {
        const auto field = fieldOf(section);
        return field ? fieldHelp(*field) : QString();
    }
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(alignmentOf(section));
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case blockColumn: return tr("Block");
    case pairColumn: return tr("Pair");
    case stateColumn: return QChar(QChar::Nbsp) + tr("State"); // off a number before it
    case remarksColumn: return tr("Reason, notes");
    default: break;
    }
    const RunField field = fieldOf(section).value_or(RunField::notes);
    const QString unit = fieldUnit(field, m_preferences.units(m_document.isElectric()));
    return unit.isEmpty() ? fieldTitle(field) : tr("%1,\n%2").arg(fieldTitle(field), unit);
}

Qt::ItemFlags RunListModel::flags(const QModelIndex& index) const
{
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    if (!index.isValid())
        return flags;
    flags |= Qt::ItemNeverHasChildren;
    if (fieldOf(index.column()) && !isHidden(index.column()) && !m_document.isReadOnly())
        flags |= Qt::ItemIsEditable;
    return flags;
}

bool RunListModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    const auto field = fieldOf(index.column());
    if (role != Qt::EditRole || !field || !checkIndex(index, CheckIndexOption::IndexIsValid))
        return false;
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    core::Run run = runAt(index.row());
    if (value.toString() == fieldText(*field, run, units))
        return false; // nothing was changed: what stands there keeps all of its digits
    QString fault = writeField(*field, value.toString(), units, units.consumptionInForce(), run);
    if (fault.isEmpty()) {
        const auto faults = storage::faultsOf(m_document.study(), run);
        if (!faults.empty())
            fault = said(units.language, faults.front().message);
    }
    if (!fault.isEmpty()) {
        emit refused(tr("Run %1 was left as it is. %2").arg(run.number).arg(fault));
        return false;
    }
    if (*field == RunField::consumption && run.consumption &&
        consumptionQuestion(m_document.study(), run, units)) {
        emit unconfirmed(run.id, *run.consumption);
        return false;
    }
    return m_document.updateRun(run);
}

} // namespace bothways::app
