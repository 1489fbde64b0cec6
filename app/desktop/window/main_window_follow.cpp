// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/main_window.h"

#include "app/desktop/document/history_words.h"
#include "app/desktop/findings/findings_model.h"
#include "app/desktop/findings/findings_panel.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/watch/live_desk.h"

#include <QAction>
#include <QDockWidget>
#include <QLabel>

#include <algorithm>

/// What the window allows, and what it is called.
namespace bothways::app {

/// Menus, buttons and the line at the bottom, as the study and the selection are.
void MainWindow::follow()
{
    for (QAction* action : m_studyActions)
        action->setEnabled(m_document != nullptr);
    sayWhyNot();
    QAction* undo = action("undo");
    QAction* redo = action("redo");
    if (!m_document || !m_page) {
        undo->setText(tr("&Undo"));
        redo->setText(tr("&Redo"));
        m_tally->clear();
        return;
    }
    const Language in = m_preferences.spoken();
    const bool blind = m_document->isBlind();
    const auto line = [&](const storage::HistoryEntry& entry) {
        return historyLine(in, blind ? withoutConsumption(entry) : entry);
    };
    const auto undoable = m_document->undoable();
    const auto redoable = m_document->redoable();
    undo->setEnabled(undoable.has_value());
    redo->setEnabled(redoable.has_value());
    undo->setText(undoable ? tr("&Undo: %1").arg(line(*undoable)) : tr("&Undo"));
    redo->setText(redoable ? tr("&Redo: %1").arg(line(*redoable)) : tr("&Redo"));
    undo->setToolTip(undo->text().remove(u'&'));
    redo->setToolTip(redo->text().remove(u'&'));

    action("startRecording")->setEnabled(!m_live->isRecording() && !m_live->isStopping());
    action("stopRecording")->setEnabled(m_live->isRecording());
    action("rename")->setEnabled(!m_document->study().runs.empty());
    const std::vector<core::Run> runs = m_page->selectedRuns();
    const auto any = [&](const auto& holds) {
        return std::any_of(runs.begin(), runs.end(), holds);
    };
    action("discardRuns")->setEnabled(!runs.empty());
    action("removeRuns")->setEnabled(!runs.empty());
    action("editRun")->setEnabled(!runs.empty());
    action("cutRuns")->setEnabled(!runs.empty());
    action("countRuns")->setEnabled(any([](const core::Run& run) { return !run.counted(); }));
    action("pairRuns")->setEnabled(runs.size() == 2);
    action("unpairRuns")->setEnabled(any([](const core::Run& r) { return !r.pair_mark.empty(); }));
    for (QAction* tag : m_tagActions)
        tag->setEnabled(!runs.empty());
    const int open = m_findings->model().openCount();
    action("nextFinding")->setEnabled(open > 0);
    m_findingsDock->setWindowTitle(open > 0 ? tr("Findings (%1 open)").arg(open) : tr("Findings"));
    action("blind")->setChecked(blind);
    sayWhyNot();
    sayTally();
}

/// An order that cannot be given now says why in its tip.
void MainWindow::sayWhyNot()
{
    QAction* import = action("import"); // without a study it makes one
    import->setEnabled(true);
    for (QAction* action : m_studyActions + QList<QAction*>{import}) {
        if (!action->property("tip").isValid())
            action->setProperty("tip", action->toolTip());
        const QString why = whyNot(action->objectName());
        if (!why.isEmpty()) {
            action->setEnabled(false);
            action->setToolTip(why);
            action->setStatusTip(why);
        } else if (!action->statusTip().isEmpty()) {
            action->setToolTip(action->property("tip").toString());
            action->setStatusTip({});
        }
    }
}

QString MainWindow::whyNot(const QString& order) const
{
    static const QStringList looks{"export",      "report",      "reportPdf",      "printReport",
                                   "copyStudy",   "compare",     "listRecordings", "closeStudy",
                                   "copyRuns",    "nextFinding", "showRuns",       "selectAll",
                                   "openEvidence"};
    static const QStringList tells{"export", "report", "reportPdf", "printReport", "compare"};
    if (!m_document)
        return {};
    if (m_document->isReadOnly() && !looks.contains(order) && !order.startsWith("show_"))
        return tr("This study is open for reading only.");
    if (m_document->isBlind() && tells.contains(order))
        return tr("This would show the consumption, which is hidden until the discards are "
                  "settled.");
    return {};
}

/// The line at the bottom.
void MainWindow::sayTally()
{
    const bool blind = m_document->isBlind();
    const core::Study& study = m_document->study();
    const auto counted = std::count_if(study.runs.begin(), study.runs.end(),
                                       [](const auto& r) { return r.counted(); });
    const auto result = m_document->result();
    QStringList parts{tr("%n run(s)", nullptr, static_cast<int>(study.runs.size())),
                      tr("%n counted", nullptr, static_cast<int>(counted))};
    if (result)
        parts += tr("%n pair(s)", nullptr, static_cast<int>(result->analysis.pairs.size()));
    if (blind)
        parts += tr("consumption hidden");
    m_tally->setText(parts.join(QString::fromUtf8("  ·  ")));
}

void MainWindow::retitle()
{
    if (!m_document) {
        setWindowTitle(tr("Bothways"));
        setWindowFilePath({});
        return;
    }
    //: the title of the window: the study's name
    setWindowTitle(m_document->isReadOnly()
                       ? tr("%1 (for reading only) – Bothways").arg(m_document->name())
                       : tr("%1 – Bothways").arg(m_document->name()));
}

} // namespace bothways::app
