// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: the window joins all panels; its jobs, desks and menus are classes and files of their own.
#include "app/desktop/window/main_window.h"

#include "app/desktop/document/paths.h"
#include "app/desktop/document/sheet_import.h"
#include "app/desktop/document/study_files.h"
#include "app/desktop/findings/findings_model.h"
#include "app/desktop/findings/findings_panel.h"
#include "app/desktop/help/help_desk.h"
#include "app/desktop/help/help_window.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/pages/blind_page.h"
#include "app/desktop/pages/look_first_page.h"
#include "app/desktop/planning/plan_page.h"
#include "app/desktop/recordings/recordings_folder.h"
#include "app/desktop/recordings/recordings_panel.h"
#include "app/desktop/roadside/roadside_page.h"
#include "app/desktop/runs/run_form.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/watch/live_desk.h"
#include "app/desktop/watch/session_source.h"
#include "app/desktop/window/columns_dialog.h"
#include "app/desktop/window/history_panel.h"
#include "app/desktop/window/report_desk.h"
#include "app/desktop/window/result_tabs.h"
#include "app/wording/desktop_options.h"
#include "storage/recordings/sheet_import.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QDialog>
#include <QDockWidget>
#include <QFileInfo>
#include <QLabel>
#include <QMimeData>
#include <QPainter>
#include <QProgressBar>
#include <QScreen>
#include <QScrollArea>
#include <QStackedWidget>
#include <QStatusBar>
#include <QStyle>
#include <QTimer>
#include <QToolBar>
#include <QToolButton>

#include <algorithm>
#include <utility>

namespace bothways::app {

MainWindow::MainWindow(Preferences& preferences, Clock clock, QWidget* parent)
    : QMainWindow(parent),
      m_preferences(preferences),
      m_clock(clock ? std::move(clock) : [] { return QDateTime::currentDateTime(); }),
      m_help(std::make_unique<HelpDesk>(*this)),
      m_live(std::make_unique<LiveDesk>(preferences, sessionStarter()))
{
    setObjectName("mainWindow");
    setAcceptDrops(true);
    build();
    connectLive();
    // On a small screen, or one whose scale leaves little, all of the window is in sight.
    const int title = style()->pixelMetric(QStyle::PM_TitleBarHeight);
    const QSize room = screen()->availableSize() - QSize(0, title);
    resize(QSize(1280, 800).boundedTo(room));
    restoreGeometry(preferences.windowGeometry());
    if (!isMaximized() && !isFullScreen())
        resize(size().boundedTo(screen()->availableSize() - QSize(0, title)));
    follow();
    retitle();
}

MainWindow::~MainWindow()
{
    m_afterRecording = {};
    if (!m_document)
        return;
    m_page->keepDraft();
    leaveStudy();
}

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
    connect(m_findings, &FindingsPanel::findingWanted, this,
            [this](const core::Finding& finding) { m_findingWanted = finding; });
    connect(m_page, &StudyPage::currentRunChanged, this, [this] { m_findingWanted.reset(); });
    connect(m_findings, &FindingsPanel::findingActivated, this,
            [this](const core::Finding& finding) {
                m_findingWanted = finding;
                showPage("recordings");
                if (m_recordings)
                    m_recordings->showFinding(finding);
            });
}

/// The row of pages at the right.
void MainWindow::buildResult()
{
    m_result = new ResultTabs(m_resultDock);
    m_result->setReadOnly(m_document->isReadOnly());
    m_result->addBeside("recordings", tr("Recordings"), [this] { return makeRecordings(); });
    m_result->addInstead("blind", [this] {
        auto* page = new BlindPage(!m_document->isReadOnly());
        connect(page, &BlindPage::showWanted, this, [this] { setBlind(false); });
        return page;
    });
    m_result->addInstead("lookFirst", [this] {
        auto* page = new LookFirstPage;
        const auto allow = [this](const char* first) {
            m_lookAllowed = true;
            m_result->showPage(first);
            takeResult();
        };
        connect(page, &LookFirstPage::anyLookWanted, this, [allow] { allow("companions"); });
        connect(page, &LookFirstPage::verdictWanted, this, [allow] { allow("result"); });
        return page;
    });
    showResultPart();
    dressResult();
    m_resultDock->setWidget(m_result);
    connect(m_result, &QTabWidget::currentChanged, this, &MainWindow::recordLook);
    connect(m_result, &ResultTabs::optionsAsked, this,
            [this](double margin_pct, double confidence, std::optional<double> claim_pct) {
                m_document->tryOptions({margin_pct, confidence, claim_pct});
            });
    connect(&m_preferences, &Preferences::unitsChanged, m_result, [this] { dressResult(); });
    connect(&m_preferences, &Preferences::appearanceChanged, m_result, [this] { dressResult(); });
    connect(m_result, &ResultTabs::runActivated, m_page, &StudyPage::showRun);
    connect(m_result, &ResultTabs::runCardRequested, this,
            [this](const core::Plan& card) { m_reports->chooseRunCard(*m_document, card); });
    connect(m_result, &ResultTabs::noiseStudiesRequested, this,
            [this](PlanPage* plan) { m_reports->chooseNoiseStudies(*plan); });
    connect(m_result, &ResultTabs::tieRequested, this, [this](const core::PlannedStudy& tied) {
        core::StudyProperties properties = m_document->study().properties;
        properties.plan = tied;
        m_document->setProperties(properties);
    });
}

std::vector<QDockWidget*> MainWindow::docks() const
{
    return {m_resultDock, m_findingsDock, m_historyDock};
}

bool MainWindow::isLoading() const
{
    if (!m_document)
        return false;
    return m_document->isBusy() || (m_recordings && m_recordings->isLoading()) ||
           m_result->isBusy();
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
    for (QWidget* part :
         std::initializer_list<QWidget*>{m_page, m_findings, m_result, m_historyDock->widget()}) {
        part->hide();
        part->disconnect(this);
        delete part;
    }
    m_page = nullptr;
    m_findings = nullptr;
    m_result = nullptr;
    m_findingWanted.reset();
    m_document.reset();
    m_stack->setCurrentIndex(0);
    takeBusy(false);
    follow();
    retitle();
}

QStringList MainWindow::argumentsToGoOn() const
{
    // Of the demo nothing is kept.
    if (!m_document ||
        !m_preferences.recentFiles().contains(QFileInfo(m_document->path()).absoluteFilePath()))
        return {};
    QStringList arguments{QFileInfo(m_document->path()).absoluteFilePath()};
    if (m_roadside && m_roadside->isVisible())
        arguments.prepend("--roadside");
    return arguments;
}

void MainWindow::keepForNextTime()
{
    if (m_document)
        m_page->keepDraft();
    if (const QStringList arguments = argumentsToGoOn(); !arguments.isEmpty())
        m_preferences.setInterruptedStudy(arguments.back());
}

void MainWindow::endAtOnce()
{
    if (std::exchange(m_isEnding, true))
        return;
    keepForNextTime();
    if (m_document)
        m_document->stopComputing();
    for (QDialog* dialog : findChildren<QDialog*>())
        dialog->reject(); // a progress dialog takes it for its Stop
    // The study is left by the destructor: here we may be within a job that works on it.
    QCoreApplication::quit();
}

void MainWindow::takeResult()
{
    const auto result = m_document->result();
    if (!result)
        return;
    dressResult();
    if (!m_document->isBlind())
        m_result->setResult(result);
    showResultPart();
    follow();
    recordLook();
}

/// Whoever sees an answer has looked at it, whether it came or was turned to.
void MainWindow::recordLook()
{
    if (m_document && m_document->result() && m_result->showsAnswer() && isActiveWindow())
        m_document->recordLook();
}

/// The answer, or what stands before it: consumption is hidden, or a look has its price.
void MainWindow::showResultPart()
{
    const auto result = m_document->result();
    const bool interim =
        result && result->analysis.headline &&
        std::ranges::count(result->analysis.verdict.qualifiers, core::Qualifier::interim) > 0;
    m_result->standInstead(m_document->isBlind()                                     ? "blind"
                           : interim && !m_lookAllowed && !m_document->wasLookedAt() ? "lookFirst"
                                                                                     : "");
}

void MainWindow::dressResult()
{
    m_result->setLook(Theme::of(palette()), m_preferences.units(m_document->isElectric()));
}

void MainWindow::takeBusy(bool busy)
{
    if (m_result)
        m_result->setRecomputing(busy);
    if (!busy) {
        m_progress->hide();
        m_stop->hide();
        return;
    }
    m_progress->setValue(0);
    QTimer::singleShot(400, this, [this] { // most answers are there sooner
        const bool still = m_document && m_document->isBusy();
        m_progress->setVisible(still);
        m_stop->setVisible(still);
    });
}

void MainWindow::say(const core::Error& error)
{
    m_messages->say(m_preferences.spoken(), error);
}

bool MainWindow::showPage(const QString& name)
{
    if (!pageNames().contains(name))
        return false;
    if (name == "start")
        return closeStudy();
    if (name == "preferences") {
        editPreferences();
        return true;
    }
    if (name == "help") {
        m_help->openHere();
        return true;
    }
    if (!m_document)
        return false;
    if (name == "runs")
        m_page->list().setFocus();
    else if (name == "entry")
        m_page->newRun();
    else if (name == "roadside")
        openRoadside();
    else if (name == "edit")
        m_page->editRun();
    else if (name == "discard")
        m_page->discardRuns();
    else if (name == "recordings.list")
        listRecordings();
    else if (name.startsWith("properties"))
        m_jobs->editProperties(*m_document, name.mid(11));
    else if (m_result->showPage(name)) {
        m_resultDock->show();
        m_resultDock->raise();
    } else if (QDockWidget* dock = findChild<QDockWidget*>(name + "Dock")) {
        dock->show();
        dock->raise();
    }
    return true;
}

QStringList MainWindow::pageNames()
{
    QStringList names;
    for (const char* name : wording::desktopPages())
        names += name;
    return names;
}

QPixmap MainWindow::picture(const QSize& size)
{
    if (m_roadside && m_roadside->isVisible()) {
        m_roadside->showNormal();
        m_roadside->resize(size.isValid() ? size : this->size());
        QCoreApplication::processEvents(); // the layout follows
        return m_roadside->grab();
    }
    if (m_help->window() && m_help->window()->isVisible())
        return m_help->window()->grab();
    QPixmap picture = grab();
    for (QDialog* dialog : findChildren<QDialog*>()) {
        if (!dialog->isVisible())
            continue;
        const QPixmap front = dialog->grab();
        QPainter painter(&picture);
        const QPoint at((width() - dialog->width()) / 2, (height() - dialog->height()) / 2);
        painter.fillRect(rect(), QColor(0, 0, 0, 70));
        painter.drawPixmap(at, front);
        painter.setPen(Qt::gray);
        painter.drawRect(QRect(at, dialog->size()));
    }
    return picture;
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    if (m_isEnding) { // nobody is there to answer
        event->accept();
        return;
    }
    if (!isFreeFor([this] { close(); }) || (m_document && !closeStudy())) {
        event->ignore();
        return;
    }
    if (m_help->window())
        m_help->window()->close();
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event)
{
    const QList<QUrl> urls = event->mimeData()->urls();
    if (!urls.isEmpty() &&
        std::all_of(urls.begin(), urls.end(), [](const QUrl& url) { return url.isLocalFile(); }))
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event)
{
    event->acceptProposedAction();
    for (const QUrl& url : event->mimeData()->urls()) {
        const QString file = url.toLocalFile();
        if (!m_document || storage::StudyFile::isStudyFile(toPath(file)))
            openFile(file);
        else
            importSheet(file);
    }
}

} // namespace bothways::app
