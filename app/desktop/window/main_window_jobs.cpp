// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/main_window.h"

#include "app/desktop/document/study_files.h"
#include "app/desktop/document/written_files.h"
#include "app/desktop/findings/findings_panel.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/roadside/roadside_page.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/watch/live_desk.h"
#include "app/desktop/window/preferences_dialog.h"
#include "app/desktop/window/study_jobs.h"

#include <QDockWidget>
#include <QFileDialog>

namespace bothways::app {
namespace {

constexpr const char* kEnding = ".bothways";

QFileDialog* makeDialog(QWidget* parent, Preferences& preferences, const QString& title,
                        const QString& filter)
{
    auto* dialog = new QFileDialog(parent, title, studyFolder(), filter);
    dialog->setObjectName("fileDialog");
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    rememberFolder(*dialog, preferences);
    return dialog;
}

} // namespace

void MainWindow::chooseStudy()
{
    QFileDialog* dialog = makeDialog(this, m_preferences, tr("Open a study"), studyFilter());
    dialog->setFileMode(QFileDialog::ExistingFile);
    connect(dialog, &QFileDialog::fileSelected, this,
            [this](const QString& file) { openFile(file); });
    dialog->open();
}

void MainWindow::chooseNewStudy()
{
    QFileDialog* dialog = makeDialog(this, m_preferences, tr("New study"), studyFilter());
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setDefaultSuffix(QString(kEnding).mid(1));
    connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& file) {
        if (!m_document || closeStudy())
            take(StudyDocument::create(file, {}), {});
    });
    dialog->open();
}

void MainWindow::chooseSheet()
{
    QFileDialog* dialog = makeDialog(this, m_preferences, tr("Import a run sheet"), sheetFilter());
    dialog->setFileMode(QFileDialog::ExistingFile);
    connect(dialog, &QFileDialog::fileSelected, this,
            [this](const QString& file) { importSheet(file); });
    dialog->open();
}

void MainWindow::importSheet(const QString& file, FileIs is)
{
    if (m_document && m_document->isReadOnly())
        m_messages->say(MessageBar::Kind::problem, tr("This study is open for reading only."));
    else if (m_document)
        m_jobs->importSheet(*m_document, file, is);
    else
        openFile(file, is);
}

void MainWindow::editPreferences()
{
    auto* dialog = new PreferencesDialog(m_preferences, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void MainWindow::nextFinding()
{
    m_findingsDock->show();
    m_findingsDock->raise();
    m_findings->showNextOpen();
}

void MainWindow::openRoadside()
{
    if (!m_document || m_document->isReadOnly() || !m_page->settle())
        return;
    if (!m_roadside) {
        m_roadside = new RoadsidePage(
            *m_document, m_preferences,
            [this] { return m_live->isRecording() ? m_live->now() : m_clock(); }, *m_live, this);
        connect(m_roadside, &RoadsidePage::left, this, &MainWindow::closeRoadside);
    }
    m_messages->hide();
    m_roadside->showFullScreen();
    m_roadside->activateWindow();
}

void MainWindow::closeRoadside()
{
    if (!m_roadside)
        return;
    m_roadside->disconnect(this);
    m_roadside->hide();
    m_roadside->deleteLater();
    m_roadside = nullptr;
    activateWindow();
    if (m_page && !m_document->study().runs.empty())
        m_page->showRun(m_document->study().runs.back().number);
}

/// A run that was under way when the study was last closed.
void MainWindow::offerRoadside()
{
    if (m_document->isReadOnly())
        return;
    const auto draft = draftFrom(m_preferences.roadsideDraft(m_document->path()));
    if (draft && draft->run)
        m_messages->say(MessageBar::Kind::news,
                        tr("A run was under way at the roadside when this study was closed."),
                        {tr("Go on with it"), [this] { openRoadside(); }});
}

} // namespace bothways::app
