// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_form.h"

#include "app/desktop/document/study_document.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/runs/run_tags.h"
#include "storage/sheet/run_sheet.h"

#include <QCheckBox>

#include <algorithm>
#include <set>

/// Several runs at once, and the switch between two configurations.
namespace bothways::app {
namespace {

/// Alike in two runs only by mistake.
bool isEachRunsOwn(RunField field)
{
    return field == RunField::number || field == RunField::start ||
           field == RunField::consumption || field == RunField::control;
}

} // namespace

std::vector<core::Run> RunForm::severalRuns() const
{
    std::vector<core::Run> runs;
    for (const core::RunId id : m_several)
        if (const core::Run* run = m_document.run(id))
            runs.push_back(*run);
    return runs;
}

void RunForm::showRuns(const std::vector<core::RunId>& ids)
{
    if (ids.size() == 1) {
        showRun(ids.front());
        return;
    }
    if (ids.empty() || !m_document.run(ids.front()))
        return;
    m_isNew = false;
    m_several = ids;
    fill(*m_document.run(ids.front()));
}

/// Over what fill() has put there: what the runs do not share is left empty.
void RunForm::fillSeveral()
{
    const std::vector<core::Run> runs = severalRuns();
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    m_filling = true;
    m_shared.clear();
    for (const RunField field : allRunFields()) {
        std::set<QString> texts;
        for (const core::Run& run : runs)
            texts.insert(fieldText(field, run, units));
        const bool own = isEachRunsOwn(field);
        line(field)->setEnabled(!own);
        m_editors.value(static_cast<int>(field))->setEnabled(!own);
        if (!own && texts.size() < 2) {
            line(field)->setPlaceholderText({});
            m_shared[static_cast<int>(field)] = text(field);
            continue;
        }
        setText(field, {});
        line(field)->setPlaceholderText(own ? tr("each its own") : tr("differs"));
    }
    const auto tick = [&](QCheckBox* box, std::string_view word) {
        const auto count =
            std::ranges::count_if(runs, [&](const core::Run& run) { return hasMark(run, word); });
        box->setTristate(count > 0 && count < std::ssize(runs));
        box->setCheckState(count == 0                  ? Qt::Unchecked
                           : count == std::ssize(runs) ? Qt::Checked
                                                       : Qt::PartiallyChecked);
    };
    tick(m_traffic, kTrafficMark);
    tick(m_adjusted, kAdjustedMark);
    m_filling = false;
}

void RunForm::commitSeveral(RunField field)
{
    // Not by isModified(): a list beside the field completes what is typed, and forgets it then.
    const QString typed = text(field);
    if (isEachRunsOwn(field) || typed == m_shared.value(static_cast<int>(field)))
        return;
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    std::vector<core::Run> runs = severalRuns();
    for (core::Run& run : runs)
        if (const QString wrong = writeField(field, typed, units, unit(), run); !wrong.isEmpty()) {
            showFault(field, wrong);
            return;
        }
    writeSeveral(runs, field);
}

void RunForm::writeSeveral(const std::vector<core::Run>& runs, RunField field)
{
    if (runs == severalRuns())
        return;
    core::Study changed = m_document.study();
    for (const core::Run& run : runs)
        for (core::Run& other : changed.runs)
            if (other.id == run.id)
                other = run;
    for (const core::Run& run : runs)
        if (const auto faults = storage::faultsOf(changed, run); !faults.empty()) {
            showFault(field, said(m_preferences.spoken(), faults.front().message));
            return;
        }
    m_document.updateRuns(runs);
}

} // namespace bothways::app
