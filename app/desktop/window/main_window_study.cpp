// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/paths.h"
#include "app/desktop/document/sheet_import.h"
#include "app/desktop/document/study_files.h"
#include "app/desktop/findings/findings_panel.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/recordings/recordings_folder.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/watch/live_desk.h"
#include "app/desktop/window/columns_dialog.h"
#include "app/desktop/window/history_panel.h"
#include "app/desktop/window/main_window.h"
#include "app/desktop/window/recordings_desk.h"
#include "app/desktop/window/result_tabs.h"
#include "storage/recordings/sheet_import.h"

#include <QAction>
#include <QDockWidget>
#include <QFileInfo>
#include <QProgressBar>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTimer>
#include <QToolBar>

#include <algorithm>

/// The study that the window shows: how it comes, and how it goes.
namespace bothways::app {

bool MainWindow::openFile(const QString& file, FileIs is)
{
    if (m_document && QFileInfo(file) == QFileInfo(m_document->path()))
        return true;
    if (!isFreeFor([this, file, is] { openFile(file, is); }) || (m_document && !m_page->settle()))
        return false;
    // First the new one, then away with the old: a wrong file closes nothing.
    const bool study = storage::StudyFile::isStudyFile(toPath(file));
    storage::SheetOptions said;
    if (!study) {
        said = sheetOptions(m_clock().date());
        const auto bytes = storage::readSheetBytes(toPath(file));
        if (is == FileIs::unknown &&
            storage::isRecordingInstead(toPath(file), bytes ? bytes.value() : std::string())) {
            m_jobs->offerRecording(file,
                                   m_document && !m_document->isReadOnly()
                                       ? tr("&Import it as a recording…")
                                       : tr("&Import it into a new study…"),
                                   [this, file] { openFile(file, FileIs::sheet); });
            return false;
        }
        const auto asked = bytes ? askColumns(m_preferences.spoken(), bytes.value(), file, said,
                                              nullptr, false, this)
                                 : said; // what is wrong is said below
        if (!asked)
            return false;
        said = *asked;
    }
    StudyDocument::Opened opened =
        study
            ? StudyDocument::open(file)
            : makeStudyFromSheet(file, m_clock().date(), this, said, [&](const core::Study& runs) {
                  return askForRecordings(runs, file, m_preferences, *this);
              });
    if (!opened) {
        study ? sayNotOpened(file, opened.error()) : say(opened.error());
        return false;
    }
    if (m_document)
        leaveStudy();
    take(std::move(opened), study ? QString() : tr("A study was made from the sheet."));
    return true;
}

void MainWindow::openDemo()
{
    if (!m_document || closeStudy())
        take(
            makeDemoStudy(),
            tr("This day is invented. Whatever you do to it is gone when you open the demo again."),
            Remember::no);
}

void MainWindow::newStudy()
{
    if (m_document && !closeStudy())
        return;
    take(makeEmptyStudy(m_clock().date()), {});
    if (!m_document)
        return;
    m_messages->say(MessageBar::Kind::news,
                    tr("Everything you type is kept at once in %1.").arg(m_document->path()));
    m_page->newRun();
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
    m_recordings->takeIn(file);
}

/// A study that can be read all the same is offered for that.
void MainWindow::sayNotOpened(const QString& file, const core::Error& error)
{
    if (!StudyDocument::openForReading(file)) {
        say(error);
        return;
    }
    const QString name = QFileInfo(file).fileName();
    m_messages->say(MessageBar::Kind::problem,
                    QFileInfo(file).isWritable()
                        ? tr("%1 is open in another window or program, which may change it. Close "
                             "it there, or open it for reading here.")
                              .arg(name)
                        : tr("%1 may not be changed. It can be opened for reading.").arg(name),
                    {tr("&Open for reading"), [this, file] { openForReading(file); }});
}

void MainWindow::openForReading(const QString& file)
{
    StudyDocument::Opened opened = StudyDocument::openForReading(file);
    if (!opened) {
        say(opened.error());
        return;
    }
    if (m_document && !closeStudy())
        return;
    take(std::move(opened), {});
}

void MainWindow::take(StudyDocument::Opened opened, const QString& news, Remember remember)
{
    if (!opened) {
        say(opened.error());
        return;
    }
    m_document = std::move(opened).take();
    m_messages->hide();
    showStudy();
    connectStudy();
    if (remember == Remember::yes)
        m_preferences.addRecentFile(m_document->path());
    if (!news.isEmpty())
        m_messages->say(MessageBar::Kind::news, news);
    if (m_document->isReadOnly()) {
        m_messages->say(MessageBar::Kind::news,
                        tr("This study is open for reading: it shows what was in the file when it "
                           "was opened, and nothing in it can be changed."));
    } else if (m_page->resumeDraft())
        m_messages->say(MessageBar::Kind::news,
                        tr("A run was being typed when this study was last open. Go on with it."));
    offerRoadside();
    sayRecovered();
    takeBusy(m_document->isBusy());
    takeResult();
    follow();
    retitle();
}

void MainWindow::showStudy()
{
    m_page = new StudyPage(*m_document, m_preferences, m_clock, this);
    m_stack->addWidget(m_page);
    m_stack->setCurrentWidget(m_page);
    m_findings = new FindingsPanel(*m_document, m_preferences, m_findingsDock);
    m_findingsDock->setWidget(m_findings);
    m_historyDock->setWidget(new HistoryPanel(*m_document, m_preferences.spoken(), m_historyDock));
    m_lookAllowed = false;
    buildResult();
    for (QAction* tag : m_tagActions)
        m_page->list().addAction(tag);
    for (QDockWidget* dock : docks())
        dock->show();
    if (!restoreState(m_preferences.windowState())) {
        const int whole = 85 * fontMetrics().averageCharWidth(); // of a page of the result
        resizeDocks({m_resultDock}, {std::max(width() * 42 / 100, std::min(whole, width() / 2))},
                    Qt::Horizontal);
        resizeDocks({m_findingsDock}, {height() * 27 / 100}, Qt::Vertical);
    }
    m_findingsDock->raise();
    m_resultDock->raise();
    m_toolBar->show();
    m_page->list().setFocus();
    if (!m_document->study().runs.empty()) {
        const core::RunId last = m_document->study().runs.back().id;
        m_page->list().selectRun(last);
        // The list has its height only after the layout.
        QTimer::singleShot(0, m_page,
                           [this] { m_page->list().scrollTo(m_page->list().currentIndex()); });
    }
}

void MainWindow::connectStudy()
{
    StudyDocument* document = m_document.get();
    connect(document, &StudyDocument::failed, this, &MainWindow::say);
    connect(document, &StudyDocument::studyChanged, this, [this] {
        follow();
        retitle();
    });
    connect(document, &StudyDocument::analysisChanged, this, &MainWindow::takeResult);
    connect(document, &StudyDocument::busyChanged, this, &MainWindow::takeBusy);
    connect(document, &StudyDocument::progressed, this,
            [this](double share) { m_progress->setValue(static_cast<int>(100.0 * share)); });
    connect(document, &StudyDocument::blindChanged, this, [this](bool blind) {
        showResultPart();
        if (blind) // no number stays behind, not even where nobody looks
            m_result->forgetResult();
        takeResult();
        follow();
    });
    connect(m_page, &StudyPage::selectionChanged, this, &MainWindow::follow);
    connect(m_page, &StudyPage::currentRunChanged, m_findings, &FindingsPanel::showRun);
    connect(m_page, &StudyPage::problem, this, [this](const QString& sentence) {
        m_messages->say(MessageBar::Kind::problem, sentence);
    });
    connect(m_page, &StudyPage::news, this,
            [this](const QString& sentence) { statusBar()->showMessage(sentence, 8000); });
    connect(m_findings, &FindingsPanel::runWanted, m_page, &StudyPage::showRun);
    m_recordings = std::make_unique<RecordingsDesk>(*m_document, *m_page, *m_findings, *m_messages,
                                                    m_preferences);
    connect(m_recordings.get(), &RecordingsDesk::fileChosen, this, &MainWindow::importRecording);
    connect(m_recordings.get(), &RecordingsDesk::findingActivated, this,
            [this](const core::Finding& finding) {
                m_page->showRun(finding.run);
                showPage("findings");
                m_findings->showFinding(finding);
            });
    connect(m_findings, &FindingsPanel::findingActivated, this,
            [this](const core::Finding& finding) {
                showPage("recordings");
                m_recordings->showFinding(finding);
            });
}

bool MainWindow::closeStudy()
{
    if (!m_document)
        return true;
    if (!isFreeFor([this] { closeStudy(); }) || !m_page->settle())
        return false;
    m_preferences.forgetInterruptedStudy(m_document->path());
    leaveStudy();
    return true;
}

void MainWindow::leaveStudy()
{
    m_live->stopAndWait();
    closeRoadside();
    m_document->settleOptions();
    m_preferences.setWindow(saveGeometry(), saveState());
    m_messages->hide();
    for (QDockWidget* dock : docks())
        dock->hide();
    m_toolBar->hide();
    m_recordings.reset();
    for (QWidget* part :
         std::initializer_list<QWidget*>{m_page, m_findings, m_result, m_historyDock->widget()}) {
        part->hide();
        part->disconnect(this);
        delete part;
    }
    m_page = nullptr;
    m_findings = nullptr;
    m_result = nullptr;
    m_document.reset();
    m_stack->setCurrentIndex(0);
    takeBusy(false);
    follow();
    retitle();
}

} // namespace bothways::app
