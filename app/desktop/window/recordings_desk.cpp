// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/recordings_desk.h"

#include "app/desktop/document/study_document.h"
#include "app/desktop/document/study_files.h"
#include "app/desktop/document/written_files.h"
#include "app/desktop/findings/findings_panel.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/recordings/cut_dialog.h"
#include "app/desktop/recordings/recording_import_dialog.h"
#include "app/desktop/recordings/recordings_dialog.h"
#include "app/desktop/recordings/recordings_panel.h"
#include "app/desktop/runs/study_page.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"

#include <QFileDialog>

namespace bothways::app {

RecordingsDesk::RecordingsDesk(StudyDocument& document, StudyPage& page, FindingsPanel& findings,
                               MessageBar& messages, Preferences& preferences)
    : m_document(document),
      m_page(page),
      m_findings(findings),
      m_messages(messages),
      m_preferences(preferences)
{
    connect(&findings, &FindingsPanel::findingWanted, this,
            [this](const core::Finding& finding) { m_wanted = finding; });
    connect(&page, &StudyPage::currentRunChanged, this, [this] { m_wanted.reset(); });
}

QWidget* RecordingsDesk::makePanel()
{
    m_panel = new RecordingsPanel(m_document, m_preferences);
    if (const auto chosen = m_page.selectedRuns(); chosen.size() == 1)
        m_panel->showRun(chosen.front().number);
    if (m_wanted)
        m_panel->showFinding(*m_wanted);
    connect(&m_page, &StudyPage::currentRunChanged, m_panel, &RecordingsPanel::showRun);
    connect(&m_findings, &FindingsPanel::findingWanted, m_panel, &RecordingsPanel::showFinding);
    connect(m_panel, &RecordingsPanel::importWanted, this, &RecordingsDesk::chooseFile);
    connect(m_panel, &RecordingsPanel::listWanted, this, &RecordingsDesk::list);
    connect(m_panel, &RecordingsPanel::runActivated, &m_page, &StudyPage::showRun);
    connect(m_panel, &RecordingsPanel::findingActivated, this, &RecordingsDesk::findingActivated);
    return m_panel;
}

void RecordingsDesk::showFinding(const core::Finding& finding)
{
    m_wanted = finding;
    if (m_panel)
        m_panel->showFinding(finding);
}

bool RecordingsDesk::isLoading() const
{
    return m_panel && m_panel->isLoading();
}

void RecordingsDesk::chooseFile()
{
    auto* dialog =
        new QFileDialog(&m_page, tr("Import a recording"), studyFolder(),
                        tr("Recordings (*.csv *.txt *.tsv *.gpx *.nmea *.log);;All files (*)"));
    dialog->setObjectName("fileDialog");
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::ExistingFile);
    rememberFolder(*dialog, m_preferences);
    connect(dialog, &QFileDialog::fileSelected, this, &RecordingsDesk::fileChosen);
    dialog->open();
}

void RecordingsDesk::takeIn(const QString& file)
{
    const std::vector<core::Run> chosen = m_page.selectedRuns();
    auto* dialog = new RecordingImportDialog(
        m_document, m_preferences, file, chosen.size() == 1 ? chosen.front().number : 0, &m_page);
    connect(dialog, &RecordingImportDialog::cutWanted, this, &RecordingsDesk::cut);
    dialog->show();
}

void RecordingsDesk::list()
{
    auto* dialog = new RecordingsDialog(m_document, m_preferences, &m_page);
    connect(dialog, &RecordingsDialog::cutWanted, this, &RecordingsDesk::cut);
    dialog->show();
}

void RecordingsDesk::cut(core::RecordingId id)
{
    for (const storage::RecordingInfo& recording : m_document.recordings())
        if (recording.id == id) {
            auto* dialog = new CutDialog(m_document, m_preferences, recording, &m_page);
            connect(dialog, &CutDialog::runsMade, this, [this](int count) {
                m_messages.say(MessageBar::Kind::news,
                               tr("%n part(s) of the recording became runs.", nullptr, count));
            });
            dialog->show();
            return;
        }
}

} // namespace bothways::app
