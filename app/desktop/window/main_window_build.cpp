// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: every menu, dock and button of the window, in their order.
#include "app/desktop/window/main_window.h"

#include "app/desktop/help/help_desk.h"
#include "app/desktop/look/access_keys.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/wheel_guard.h"
#include "app/desktop/runs/run_tags.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/window/about_box.h"
#include "app/desktop/window/edit_orders.h"
#include "app/desktop/window/keys_dialog.h"
#include "app/desktop/window/recordings_desk.h"
#include "app/desktop/window/report_desk.h"
#include "app/desktop/window/result_tabs.h"
#include "app/desktop/window/rows_paste.h"
#include "app/desktop/window/start_page.h"
#include "app/desktop/window/study_jobs.h"

#include <QAction>
#include <QActionGroup>
#include <QApplication>
#include <QDir>
#include <QDockWidget>
#include <QFileInfo>
#include <QLabel>
#include <QMenuBar>
#include <QProgressBar>
#include <QStackedWidget>
#include <QStatusBar>
#include <QToolBar>
#include <QToolButton>
#include <QVBoxLayout>

namespace bothways::app {
namespace {

/// The middle takes the room that the docks leave; a wish of its own would be taken from theirs.
class Middle final : public QWidget {
public:
    using QWidget::QWidget;
    QSize sizeHint() const override { return minimumSizeHint(); }
};

/// A part of the window that is brought to the front has the keyboard, at its first stop.
void takeKeyboard(QWidget& part)
{
    if (part.focusProxy()) {
        part.setFocus(Qt::ShortcutFocusReason);
        return;
    }
    for (QWidget* next = part.nextInFocusChain(); next != &part; next = next->nextInFocusChain())
        if (part.isAncestorOf(next) && next->focusPolicy() & Qt::TabFocus &&
            next->isVisibleTo(&part)) {
            next->setFocus(Qt::ShortcutFocusReason);
            return;
        }
}

} // namespace

void MainWindow::build()
{
    qApp->installEventFilter(new WheelGuard(this));
    qApp->installEventFilter(new RowsPaste(this));
    auto* centre = new Middle(this);
    auto* box = new QVBoxLayout(centre);
    box->setContentsMargins(4, 4, 4, 4);
    box->setSpacing(4);
    m_messages = new MessageBar(centre);
    m_reports = new ReportDesk(*this, *m_messages, m_preferences, m_clock);
    m_jobs = new StudyJobs(*this, *m_messages, m_preferences, m_clock);
    connect(m_jobs, &StudyJobs::importWanted, this, &MainWindow::importSheet);
    connect(m_jobs, &StudyJobs::recordingWanted, this, &MainWindow::importRecording);
    m_stack = new QStackedWidget(centre);
    m_stack->setObjectName("centre");
    box->addWidget(m_messages);
    box->addWidget(m_stack, 1);
    setCentralWidget(centre);

    buildStart();
    buildDocks();
    buildStatusBar();
    buildFileMenu();
    buildEditMenu();
    buildRunMenu();
    buildStudyMenu();
    buildRecordMenu();
    buildViewMenu();
    buildHelpMenu();
    for (QAction* top : menuBar()->actions())
        keepAccessKeys(*top->menu());
    buildToolBar();
}

void MainWindow::buildStart()
{
    auto* start = new StartPage(m_preferences, m_stack);
    m_stack->addWidget(start);
    connect(start, &StartPage::demoWanted, this, &MainWindow::openDemo);
    connect(start, &StartPage::emptyStudyWanted, this, &MainWindow::newStudy);
    connect(start, &StartPage::openWanted, this, &MainWindow::chooseStudy);
    connect(start, &StartPage::sheetWanted, this, &MainWindow::chooseSheet);
    connect(start, &StartPage::fileWanted, this, [this](const QString& file) { openFile(file); });
}

void MainWindow::buildDocks()
{
    // Its row of pages says what it is.
    m_resultDock =
        addDock("resultDock", tr("Result"), Qt::RightDockWidgetArea, Title::whereFloating);
    setTabPosition(Qt::RightDockWidgetArea, QTabWidget::North);
    m_findingsDock = addDock("findingsDock", tr("Findings"), Qt::BottomDockWidgetArea);
    m_historyDock = addDock("historyDock", tr("History"), Qt::BottomDockWidgetArea);
    tabifyDockWidget(m_findingsDock, m_historyDock);
    setTabPosition(Qt::BottomDockWidgetArea, QTabWidget::North);
    setCorner(Qt::BottomRightCorner, Qt::RightDockWidgetArea);
    setDockOptions(AnimatedDocks | AllowTabbedDocks | AllowNestedDocks);
}

void MainWindow::buildStatusBar()
{
    m_tally = new QLabel(this);
    m_tally->setObjectName("tally");
    m_tally->setContentsMargins(0, 0, 8, 0); // the frame of the window is near
    m_recording = new QLabel(this);
    m_recording->setObjectName("recordingState");
    m_recording->hide();
    m_progress = new QProgressBar(this);
    m_progress->setObjectName("progress");
    m_progress->setAccessibleName(tr("Computing the result"));
    m_progress->setRange(0, 100);
    m_progress->setMaximumWidth(180);
    m_progress->hide();
    m_stop = new QToolButton(this);
    m_stop->setObjectName("stopComputing");
    m_stop->setText(tr("Stop"));
    m_stop->hide();
    connect(m_stop, &QToolButton::clicked, this, [this] {
        if (m_document)
            m_document->stopComputing();
    });
    statusBar()->addPermanentWidget(m_recording);
    statusBar()->setSizeGripEnabled(false); // the frame is what resizes; the grip takes no keys
    statusBar()->addPermanentWidget(m_progress);
    statusBar()->addPermanentWidget(m_stop);
    statusBar()->addPermanentWidget(m_tally);
}

QDockWidget* MainWindow::addDock(const char* name, const QString& title, Qt::DockWidgetArea area,
                                 Title shown)
{
    auto* dock = new QDockWidget(title, this);
    dock->setObjectName(name);
    dock->setAccessibleName(title);
    addDockWidget(area, dock);
    dock->hide();
    // Where a tab says what it is, a title below it says the same again.
    auto* noTitle = new QWidget(dock);
    noTitle->hide();
    const auto retitle = [this, dock, noTitle, shown] {
        const bool titled = shown == Title::whereFloating ? dock->isFloating()
                                                          : tabifiedDockWidgets(dock).isEmpty();
        QWidget* wanted = titled ? nullptr : noTitle;
        if (dock->titleBarWidget() != wanted)
            dock->setTitleBarWidget(wanted);
    };
    for (const auto change : {&QDockWidget::visibilityChanged, &QDockWidget::topLevelChanged})
        connect(dock, change, this, retitle, Qt::QueuedConnection);
    connect(dock, &QDockWidget::dockLocationChanged, this, retitle, Qt::QueuedConnection);
    return dock;
}

QAction* MainWindow::action(const QString& objectName) const
{
    return findChild<QAction*>(objectName);
}

QAction* MainWindow::add(QMenu* menu, const char* name, const QString& text,
                         const QKeySequence& keys, const std::function<void()>& job,
                         bool needsStudy)
{
    auto* action = new QAction(text, this);
    action->setObjectName(name);
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, job);
    menu->addAction(action);
    menu->setToolTipsVisible(true); // a tip says why something cannot be done now
    addAction(action);
    if (needsStudy)
        m_studyActions += action;
    return action;
}

/// A key that works while the run list has the keyboard, and nowhere else: it is a letter.
QAction* MainWindow::addTag(QMenu* menu, const char* name, const QString& text, Qt::Key key,
                            const std::function<void()>& job)
{
    auto* action = new QAction(text, this);
    action->setObjectName(name);
    action->setShortcut(QKeySequence(key));
    action->setShortcutContext(Qt::WidgetShortcut);
    connect(action, &QAction::triggered, this, job);
    menu->addAction(action);
    m_tagActions += action;
    m_studyActions += action;
    return action;
}

void MainWindow::buildFileMenu()
{
    QMenu* menu = menuBar()->addMenu(tr("&File"));
    add(
        menu, "newStudyAction", tr("&New study"), tr("Ctrl+Shift+N"), [this] { newStudy(); },
        false);
    add(
        menu, "newStudyIn", tr("New study &in…"), {}, [this] { chooseNewStudy(); }, false);
    add(
        menu, "open", tr("&Open…"), QKeySequence::Open, [this] { chooseStudy(); }, false);
    m_recentMenu = menu->addMenu(tr("Open &recent"));
    connect(m_recentMenu, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
    add(
        menu, "demo", tr("Open the &demo study"), {}, [this] { openDemo(); }, false);
    menu->addSeparator();
    add(
        menu, "import", tr("&Import a run sheet…"), tr("Ctrl+I"), [this] { chooseSheet(); }, false);
    add(menu, "importRecording", tr("Import a re&cording…"), tr("Ctrl+Shift+I"),
        [this] { m_recordings->chooseFile(); });
    add(menu, "listRecordings", tr("All recordin&gs…"), {}, [this] { m_recordings->list(); });
    add(menu, "export", tr("&Export the run sheet…"), tr("Ctrl+E"),
        [this] { m_jobs->chooseExport(*m_document); });
    add(menu, "report", tr("Save the &report…"), tr("Ctrl+R"),
        [this] { m_reports->chooseReport(*m_document); });
    add(menu, "reportPdf", tr("Save the report as PD&F…"), {},
        [this] { m_reports->chooseReportPdf(*m_document); });
    add(menu, "printReport", tr("&Print the report…"), QKeySequence::Print,
        [this] { m_reports->printReport(*m_document); });
    add(menu, "copyStudy", tr("Save a cop&y…"), QKeySequence::SaveAs,
        [this] { m_jobs->chooseCopy(*m_document); });
    menu->addSeparator();
    add(menu, "closeStudy", tr("&Close the study"), QKeySequence::Close, [this] { closeStudy(); });
    add(
        menu, "quit", tr("&Quit"), QKeySequence::Quit, [this] { close(); }, false);
}

void MainWindow::buildEditMenu()
{
    QMenu* menu = menuBar()->addMenu(tr("&Edit"));
    add(menu, "undo", tr("&Undo"), QKeySequence::Undo, [this] { m_document->undo(); });
    add(menu, "redo", tr("&Redo"), QKeySequence::Redo, [this] { m_document->redo(); });
    menu->addSeparator();
    add(menu, "cutRuns", tr("Cu&t"), QKeySequence::Cut, [this] { edit::cut(*m_page); });
    add(menu, "copyRuns", tr("&Copy"), QKeySequence::Copy, [this] {
        edit::copy(*m_page);
    })->setToolTip(tr("Copy what is selected, for a spreadsheet or for another study"));
    add(menu, "pasteRuns", tr("P&aste"), QKeySequence::Paste,
        [this] { edit::paste(*m_page, *m_document, *m_jobs); })
        ->setToolTip(tr("Paste runs that were copied here or in a spreadsheet, with the header of "
                        "a run sheet"));
    menu->addSeparator();
    add(
        menu, "preferences", tr("&Preferences…"), tr("Ctrl+,"), [this] { editPreferences(); },
        false);
}

void MainWindow::buildRunMenu()
{
    QMenu* menu = menuBar()->addMenu(tr("&Run"));
    QAction* newRun =
        add(menu, "newRun", tr("&New run"), tr("Ctrl+N"), [this] { m_page->newRun(); });
    newRun->setShortcuts({QKeySequence(tr("Ctrl+N")), QKeySequence(Qt::Key_Insert)});
    newRun->setToolTip(tr("A new run that starts now, filled in from the last (Ctrl+N or Insert)"));
    add(menu, "editRun", tr("&Edit the run"), tr("Ctrl+Return"), [this] { m_page->editRun(); });
    QAction* change = add(menu, "switchConfiguration", tr("&Switch the configuration"), tr("F8"),
                          [this] { m_page->switchConfiguration(); });
    change->setToolTip(
        tr("The run that is being typed, or a new one, is in the other configuration (F8)"));
    menu->addSeparator();
    QAction* discard =
        add(menu, "discardRuns", tr("&Discard…"), tr("Ctrl+D"), [this] { m_page->discardRuns(); });
    discard->setToolTip(tr("The chosen runs do not count, with a reason (Ctrl+D)"));
    QAction* count = add(menu, "countRuns", tr("&Count again"), tr("Ctrl+Shift+D"),
                         [this] { m_page->countRuns(); });
    count->setToolTip(tr("Lift the discard of the chosen runs (Ctrl+Shift+D)"));
    add(menu, "openEvidence", tr("&Open the evidence"), {}, [this] {
        m_page->openEvidence();
    })->setToolTip(tr("The photo or the clip for which a chosen run was discarded"));
    QAction* tie =
        add(menu, "pairRuns", tr("&Tie as a pair"), tr("Ctrl+T"), [this] { m_page->pairRuns(); });
    tie->setToolTip(tr("Two chosen runs, out and return, become a pair by hand (Ctrl+T)"));
    add(menu, "unpairRuns", tr("&Untie"), tr("Ctrl+Shift+T"), [this] { m_page->unpairRuns(); });
    menu->addSeparator();
    buildTagMenu(menu->addMenu(tr("&Note about the run")));
    add(menu, "nextFinding", tr("Next &finding"), tr("F4"), [this] { nextFinding(); });
    menu->addSeparator();
    add(menu, "removeRuns", tr("Re&move (typed by mistake)"), tr("Shift+Del"),
        [this] { m_page->removeRuns(); });
}

void MainWindow::buildTagMenu(QMenu* menu)
{
    const auto field = [this](RunField which) {
        return [this, which] { m_page->editField(which); };
    };
    addTag(menu, "tagAccessories", tr("&Accessories on"), Qt::Key_A, field(RunField::accessories));
    addTag(menu, "tagTimer", tr("&Switched on since"), Qt::Key_S, field(RunField::accessoryOn));
    addTag(menu, "tagWind", tr("&Wind"), Qt::Key_W, field(RunField::wind));
    addTag(menu, "tagTemperature", tr("&Temperature"), Qt::Key_T, field(RunField::temperature));
    addTag(menu, "tagTraffic", tr("&Passing traffic"), Qt::Key_P,
           [this] { m_page->toggleMark(kTrafficMark); });
    addTag(menu, "tagAdjusted", tr("Ad&justed during the run"), Qt::Key_J,
           [this] { m_page->toggleMark(kAdjustedMark); });
    addTag(menu, "tagMarks", tr("Other &marks"), Qt::Key_M, field(RunField::marks));
    addTag(menu, "tagBattery", tr("&Battery"), Qt::Key_B, field(RunField::batteryStart));
    addTag(menu, "tagNotes", tr("&Notes"), Qt::Key_N, field(RunField::notes));
}

void MainWindow::buildStudyMenu()
{
    QMenu* menu = menuBar()->addMenu(tr("&Study"));
    const auto properties = [this](const char* page) {
        return [this, page] { m_jobs->editProperties(*m_document, page); };
    };
    add(menu, "properties", tr("&Properties…"), tr("Alt+Return"), properties(""));
    add(menu, "limits", tr("&Limits of the rules…"), {}, properties("limitsPage"));
    add(menu, "plan", tr("P&lan…"), {}, properties("planPage"));
    add(menu, "rename", tr("&Names in all runs…"), {},
        [this] { m_jobs->renameInAllRuns(*m_document); });
    add(menu, "walkRound", tr("&Walk-round…"), {}, [this] {
        m_jobs->walkRound(*m_document);
    })->setToolTip(tr("What is looked at before a block: the list, and what is in order now"));
    add(menu, "compare", tr("&Compare studies…"), {}, [this] { m_jobs->compare(*m_document); });
    menu->addSeparator();
    QAction* blind = add(menu, "blind", tr("&Hide consumption until the discards are settled"),
                         tr("Ctrl+B"), [this] { setBlind(!m_document->isBlind()); });
    blind->setCheckable(true);
}

void MainWindow::buildViewMenu()
{
    QMenu* menu = menuBar()->addMenu(tr("&View"));
    add(menu, "showRuns", tr("&Runs"), tr("Ctrl+1"), [this] { showPage("runs"); });
    int key = 2;
    for (QDockWidget* dock : docks()) {
        const QByteArray name = "show_" + dock->objectName().toUtf8();
        add(menu, name.constData(), dock->windowTitle(),
            QKeySequence(QString("Ctrl+%1").arg(key++)), [dock] {
                dock->show();
                dock->raise();
                takeKeyboard(*dock->widget());
            });
    }
    add(menu, "show_recordings", tr("Recordings"), QKeySequence(Qt::CTRL | Qt::Key_5),
        [this] { turnTo("recordings"); });
    addPages(menu->addMenu(tr("&Pages of the result")));
    QAction* roadside =
        add(menu, "roadside", tr("R&oadside mode"), tr("F9"), [this] { openRoadside(); });
    roadside->setToolTip(tr("One page for the companion in the passenger seat (F9)"));
    menu->addSeparator();
    addColours(menu->addMenu(tr("&Colours")));
    QAction* large = add(
        menu, "largeTextAction", tr("&Large text"), tr("Ctrl+Shift+L"),
        [this] { m_preferences.setLargeText(!m_preferences.largeText()); }, false);
    large->setCheckable(true);
    large->setChecked(m_preferences.largeText());
    connect(&m_preferences, &Preferences::appearanceChanged, large,
            [this, large] { large->setChecked(m_preferences.largeText()); });
    add(
        menu, "fullScreen", tr("&Full screen"), tr("F11"),
        [this] { isFullScreen() ? showNormal() : showFullScreen(); }, false);
}

/// Each page by its key, so that no one has to be reached through the row of tabs.
void MainWindow::addPages(QMenu* menu)
{
    int key = 1;
    for (const auto& [name, title] : ResultTabs::pagesOfAnswer())
        add(menu, ("show_" + name).toUtf8().constData(), title,
            QKeySequence(QString("Alt+%1").arg(key++)), [this, page = name] { turnTo(page); });
    menu->addSeparator();
    QAction* apart = add(menu, "show_apart", tr("In a &window of its own"), {}, [this] {
        m_resultDock->show();
        m_resultDock->setFloating(!m_resultDock->isFloating());
    });
    apart->setCheckable(true);
    connect(m_resultDock, &QDockWidget::topLevelChanged, apart, &QAction::setChecked);
}

/// As showPage(), with the keyboard.
void MainWindow::turnTo(const QString& page)
{
    if (showPage(page))
        takeKeyboard(*m_result->currentWidget());
}

void MainWindow::addColours(QMenu* menu)
{
    auto* group = new QActionGroup(this);
    const std::pair<ThemeChoice, QString> themes[] = {{ThemeChoice::system, tr("As the &system")},
                                                      {ThemeChoice::light, tr("&Light")},
                                                      {ThemeChoice::dark, tr("&Dark")}};
    for (const auto& [theme, text] : themes) {
        QAction* action = menu->addAction(text);
        action->setCheckable(true);
        action->setChecked(m_preferences.theme() == theme);
        group->addAction(action);
        connect(action, &QAction::triggered, this,
                [this, choice = theme] { m_preferences.setTheme(choice); });
        connect(&m_preferences, &Preferences::appearanceChanged, action,
                [this, action, choice = theme] {
                    action->setChecked(m_preferences.theme() == choice);
                });
    }
}

void MainWindow::buildHelpMenu()
{
    QMenu* menu = menuBar()->addMenu(tr("&Help"));
    QAction* help = add(
        menu, "help", tr("&Handbook"), QKeySequence(Qt::Key_F1), [this] { m_help->openHere(); },
        false);
    help->setToolTip(tr("The handbook, at the page for where you are (F1)"));
    add(
        menu, "keys", tr("&Keys"), tr("Ctrl+F1"),
        [this] { (new KeysDialog(*menuBar(), this))->open(); }, false);
    add(
        menu, "about", tr("&About Bothways"), {}, [this] { (new AboutBox(this))->open(); }, false);
}

void MainWindow::buildToolBar()
{
    m_toolBar = addToolBar(tr("Runs"));
    QToolBar* bar = m_toolBar;
    bar->setObjectName("toolBar");
    bar->setMovable(false);
    bar->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    const std::pair<const char*, const char*> icons[] = {{"newRun", "list-add"},
                                                         {"discardRuns", "list-remove"},
                                                         {"undo", "edit-undo"},
                                                         {"redo", "edit-redo"},
                                                         {"cutRuns", "edit-cut"},
                                                         {"copyRuns", "edit-copy"},
                                                         {"pasteRuns", "edit-paste"},
                                                         {"nextFinding", "go-next"},
                                                         {"open", "document-open"},
                                                         {"newStudyAction", "document-new"},
                                                         {"import", "document-import"},
                                                         {"export", "document-export"},
                                                         {"printReport", "document-print"},
                                                         {"copyStudy", "document-save-as"},
                                                         {"properties", "document-properties"},
                                                         {"help", "help-contents"},
                                                         {"about", "help-about"},
                                                         {"quit", "application-exit"},
                                                         {"closeStudy", "window-close"},
                                                         {"removeRuns", "edit-delete"}};
    for (const auto& [name, icon] : icons) // by the names of freedesktop.org; words where none is
        action(name)->setIcon(QIcon::fromTheme(icon));
    for (const char* name : {"newRun", "discardRuns", "countRuns", "pairRuns", "unpairRuns"})
        bar->addAction(action(name));
    bar->addSeparator();
    for (const char* name : {"nextFinding", "blind"})
        bar->addAction(action(name));
    bar->addSeparator();
    for (const char* name : {"properties", "import", "export"})
        bar->addAction(action(name));
    bar->hide();
    // Short names: the bar has to fit beside large text.
    action("countRuns")->setIconText(tr("Count again", "on the tool bar"));
    action("pairRuns")->setIconText(tr("Tie", "on the tool bar"));
    action("unpairRuns")->setIconText(tr("Untie", "on the tool bar"));
    action("blind")->setIconText(tr("Hide consumption"));
    action("properties")->setIconText(tr("Properties"));
    action("import")->setIconText(tr("Import"));
    action("export")->setIconText(tr("Export"));
    // To those who hear them they have the names of the menu, where the keyboard finds them.
    for (QAction* one : bar->actions())
        if (QWidget* button = bar->widgetForAction(one); button && !one->isSeparator())
            button->setAccessibleName(one->text().remove(u'&').remove(u'…'));
}

void MainWindow::fillRecent()
{
    m_recentMenu->clear();
    for (const QString& file : m_preferences.recentFiles()) {
        QAction* action = m_recentMenu->addAction(QFileInfo(file).completeBaseName());
        action->setToolTip(QDir::toNativeSeparators(file));
        connect(action, &QAction::triggered, this, [this, file] { openFile(file); });
    }
    if (m_recentMenu->isEmpty())
        m_recentMenu->addAction(tr("None yet"))->setEnabled(false);
}

} // namespace bothways::app
