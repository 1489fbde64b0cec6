// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/study_files.h"
#include "app/desktop/document/written_files.h"
#include "app/desktop/findings/findings_panel.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/recordings/cut_dialog.h"
#include "app/desktop/recordings/recording_import_dialog.h"
#include "app/desktop/recordings/recordings_dialog.h"
#include "app/desktop/recordings/recordings_panel.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/window/main_window.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"

#include <QFileDialog>

// What the window does with recordings. Dialogs are children of the runs' page: they go with the
// study.
namespace bothways::app {

/// The panel, at what was chosen before somebody looked at it.
QWidget* MainWindow::makeRecordings()
{
    m_recordings = new RecordingsPanel(*m_document, m_preferences);
    if (const auto chosen = m_page->selectedRuns(); chosen.size() == 1)
        m_recordings->showRun(chosen.front().number);
    if (m_findingWanted)
        m_recordings->showFinding(*m_findingWanted);
    connect(m_page, &StudyPage::currentRunChanged, m_recordings, &RecordingsPanel::showRun);
    connect(m_findings, &FindingsPanel::findingWanted, m_recordings, &RecordingsPanel::showFinding);
    connect(m_recordings, &RecordingsPanel::importWanted, this, &MainWindow::chooseRecording);
    connect(m_recordings, &RecordingsPanel::listWanted, this, &MainWindow::listRecordings);
    connect(m_recordings, &RecordingsPanel::runActivated, m_page, &StudyPage::showRun);
    connect(m_recordings, &RecordingsPanel::findingActivated, this,
            [this](const core::Finding& finding) {
                m_page->showRun(finding.run);
                showPage("findings");
                m_findings->showFinding(finding);
            });
    return m_recordings;
}

void MainWindow::chooseRecording()
{
    auto* dialog =
        new QFileDialog(this, tr("Import a recording"), studyFolder(),
                        tr("Recordings (*.csv *.txt *.tsv *.gpx *.nmea *.log);;All files (*)"));
    dialog->setObjectName("fileDialog");
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::ExistingFile);
    rememberFolder(*dialog, m_preferences);
    connect(dialog, &QFileDialog::fileSelected, this, &MainWindow::importRecording);
    dialog->open();
}

void MainWindow::importRecording(const QString& file)
{
    if (!m_document || m_document->isReadOnly()) {
        if (m_document && !closeStudy())
            return;
        take(makeEmptyStudy(m_clock().date()), {});
        if (!m_document)
            return;
    }
    const std::vector<core::Run> chosen = m_page->selectedRuns();
    auto* dialog = new RecordingImportDialog(
        *m_document, m_preferences, file, chosen.size() == 1 ? chosen.front().number : 0, m_page);
    connect(dialog, &RecordingImportDialog::cutWanted, this, &MainWindow::cutRecording);
    dialog->show();
}

void MainWindow::listRecordings()
{
    auto* dialog = new RecordingsDialog(*m_document, m_preferences, m_page);
    connect(dialog, &RecordingsDialog::cutWanted, this, &MainWindow::cutRecording);
    dialog->show();
}

void MainWindow::cutRecording(core::RecordingId id)
{
    for (const storage::RecordingInfo& recording : m_document->recordings())
        if (recording.id == id) {
            auto* dialog = new CutDialog(*m_document, m_preferences, recording, m_page);
            connect(dialog, &CutDialog::runsMade, this, [this](int count) {
                m_messages->say(MessageBar::Kind::news,
                                tr("%n part(s) of the recording became runs.", nullptr, count));
            });
            dialog->show();
            return;
        }
}

} // namespace bothways::app
