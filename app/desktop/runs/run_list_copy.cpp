// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_list_model.h"

#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/look/table_copy.h"
#include "core/study/clock.h"
#include "storage/sheet/run_sheet.h"

#include <algorithm>

/// Runs for the clipboard.
namespace bothways::app {

QString RunListModel::copied(const std::vector<int>& rows,
                             const std::vector<RunField>& further) const
{
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    std::vector<RunField> fields{RunField::number,  RunField::start,     RunField::configuration,
                                 RunField::setting, RunField::direction, RunField::consumption};
    for (const RunField field : further)
        if (std::ranges::find(fields, field) == fields.end())
            fields.push_back(field);
    QStringList header;
    for (const RunField field : fields) {
        const QString unit = fieldUnit(field, units);
        header += unit.isEmpty() ? fieldTitle(field) : tr("%1, %2").arg(fieldTitle(field), unit);
    }
    QString text = tabbedLine(header << tr("State") << tr("Reason") << fieldTitle(RunField::notes));
    for (const int place : rows) {
        const RunRow& row = m_rows.at(static_cast<std::size_t>(place));
        QStringList cells;
        for (const RunField field : fields) {
            const bool tells = field == RunField::consumption || field == RunField::control;
            if (field == RunField::start)
                cells += QString::fromStdString(core::formatDateTime(row.run.start));
            else if (field == RunField::consumption)
                cells += this->text(row, consumptionColumn);
            else
                cells += tells && m_document.isBlind() ? QString::fromUtf8("•••")
                                                       : fieldText(field, row.run, units);
        }
        text +=
            tabbedLine(cells << stateName(row.state) << reason(row) << nameShown(row.run.notes));
    }
    return text;
}

QByteArray RunListModel::copiedSheet(const std::vector<int>& rows) const
{
    if (m_document.isBlind())
        return {};
    core::Study copied;
    copied.properties = m_document.study().properties;
    for (const int row : rows)
        copied.runs.push_back(runAt(row));
    return QByteArray::fromStdString(storage::writeRunSheet(copied));
}

} // namespace bothways::app
