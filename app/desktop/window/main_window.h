// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/run_draft.h"
#include "app/desktop/document/study_document.h"
#include "app/desktop/window/study_jobs.h"
#include "core/planning/plan.h"
#include "storage/instruments/rig.h"

#include <QMainWindow>

#include <functional>
#include <memory>

class QDockWidget;
class QLabel;
class QMenu;
class QProgressBar;
class QStackedWidget;
class QToolBar;
class QToolButton;

namespace bothways::app {

class FindingsPanel;
class HelpDesk;
class LiveDesk;
class MessageBar;
class Preferences;
class RecordingsDesk;
class ReportDesk;
class ResultTabs;
class RoadsidePage;
class StudyPage;

/// The window: the start page, or one open study with its list, result, findings and history.
/// Says what went wrong in a bar above the work, never in a box in front of it.
class MainWindow final : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(Preferences& preferences, Clock clock = {}, QWidget* parent = nullptr);
    ~MainWindow() override;

    [[nodiscard]] StudyDocument* document() const { return m_document.get(); }
    [[nodiscard]] StudyPage* page() const { return m_page; }
    /// True while something that is on show is still being computed or read.
    [[nodiscard]] bool isLoading() const;
    [[nodiscard]] QAction* action(const QString& objectName) const;
    [[nodiscard]] HelpDesk& help() const { return *m_help; }
    /// Null without a study.
    [[nodiscard]] RecordingsDesk* recordings() const { return m_recordings.get(); }

    /// Opens a study, or makes one from a run sheet. False, with the reason on show, where it
    /// cannot; what was open then stays open.
    bool openFile(const QString& file, FileIs is = FileIs::unknown);
    void openDemo();
    void newStudy();
    /// The roadside mode, in front of everything.
    void openRoadside();
    /// The recording that is made in this window.
    [[nodiscard]] LiveDesk& live() const { return *m_live; }
    [[nodiscard]] RoadsidePage* roadside() const { return m_roadside; }
    /// Back to the start page. False where something typed keeps the study open.
    bool closeStudy();
    /// The session ends, or someone told the program to: closes without a question. Work that
    /// takes long is stopped, and what is being typed is there the next time.
    void endAtOnce();
    /// As endAtOnce(), but goes on: the session may end.
    void keepForNextTime();
    /// Of a program that begins where this one is.
    [[nodiscard]] QStringList argumentsToGoOn() const;
    void importSheet(const QString& file, FileIs is = FileIs::unknown);
    /// Shows what is in a recording's file, to be imported; without a study that takes it, into a
    /// new one.
    void importRecording(const QString& file);
    /// Brings a part of the window to the front by its name; see pageNames().
    bool showPage(const QString& name);
    [[nodiscard]] static QStringList pageNames();
    /// What the window looks like, an open dialog included; or the roadside mode, in `size`.
    [[nodiscard]] QPixmap picture(const QSize& size = {});

protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    // main_window.cpp, with what the window is to those outside
    [[nodiscard]] std::vector<QDockWidget*> docks() const;
    void takeBusy(bool busy);
    void say(const core::Error& error);

    // main_window_study.cpp, with openFile() to closeStudy() and importRecording()
    enum class Remember { yes, no }; ///< among the recent files
    void take(StudyDocument::Opened opened, const QString& news, Remember remember = Remember::yes);
    void sayNotOpened(const QString& file, const core::Error& error);
    void openForReading(const QString& file);
    void showStudy();
    void connectStudy();
    void leaveStudy();

    // main_window_result.cpp
    void buildResult();
    void takeResult();
    void recordLook();
    void showResultPart();
    void dressResult();
    void setBlind(bool blind);
    void askBeforeShowing(int open);

    // main_window_follow.cpp
    void follow();
    void sayWhyNot();
    [[nodiscard]] QString whyNot(const QString& order) const;
    void sayTally();
    void retitle();

    // main_window_build.cpp
    void build();
    void buildStart();
    void buildDocks();
    void buildStatusBar();
    enum class Title { whereAlone, whereFloating }; ///< of a dock; in a tab it has none
    QDockWidget* addDock(const char* name, const QString& title, Qt::DockWidgetArea area,
                         Title shown = Title::whereAlone);
    QAction* add(QMenu* menu, const char* name, const QString& text, const QKeySequence& keys,
                 const std::function<void()>& job, bool needsStudy = true);
    QAction* addTag(QMenu* menu, const char* name, const QString& text, Qt::Key key,
                    const std::function<void()>& job);
    void buildFileMenu();
    void buildEditMenu();
    void buildRunMenu();
    void buildTagMenu(QMenu* menu);
    void buildStudyMenu();
    void buildViewMenu();
    void addPages(QMenu* menu);
    void turnTo(const QString& page);
    void addColours(QMenu* menu);
    void buildHelpMenu();
    void buildToolBar();
    void fillRecent();

    // main_window_jobs.cpp, with importSheet() and openRoadside()
    void chooseStudy();
    void chooseNewStudy();
    void chooseSheet();
    void editPreferences();
    void nextFinding();
    void closeRoadside();
    void offerRoadside();

    // main_window_live.cpp
    void buildRecordMenu();
    void connectLive();
    void followLive();
    void startRecording();
    bool record(const storage::Rig& rig, const QDateTime& first);
    void takeRecording(const core::Outcome& outcome);
    bool isFreeFor(const std::function<void()>& next);
    void editRig();
    void rehearse();
    void sayRecovered();

    Preferences& m_preferences;
    Clock m_clock;
    std::unique_ptr<HelpDesk> m_help;
    std::unique_ptr<LiveDesk> m_live;
    bool m_recordingShown = false;
    std::function<void()> m_afterRecording; ///< that waits for the recording to be packed
    std::unique_ptr<StudyDocument> m_document;
    StudyPage* m_page = nullptr;
    FindingsPanel* m_findings = nullptr;
    std::unique_ptr<RecordingsDesk> m_recordings;
    ResultTabs* m_result = nullptr;
    RoadsidePage* m_roadside = nullptr;
    MessageBar* m_messages = nullptr;
    ReportDesk* m_reports = nullptr;
    StudyJobs* m_jobs = nullptr;
    QStackedWidget* m_stack = nullptr;
    bool m_lookAllowed = false; ///< what a look costs has been said
    bool m_isEnding = false;
    QDockWidget* m_resultDock = nullptr;
    QDockWidget* m_findingsDock = nullptr;
    QDockWidget* m_historyDock = nullptr;
    QMenu* m_recentMenu = nullptr;
    QToolBar* m_toolBar = nullptr;
    QLabel *m_tally = nullptr, *m_recording = nullptr;
    QProgressBar* m_progress = nullptr;
    QToolButton* m_stop = nullptr;
    QList<QAction*> m_studyActions, m_tagActions;
};

} // namespace bothways::app
