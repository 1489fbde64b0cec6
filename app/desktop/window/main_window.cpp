// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/main_window.h"

#include "app/desktop/document/paths.h"
#include "app/desktop/help/help_desk.h"
#include "app/desktop/help/help_window.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/roadside/roadside_page.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/watch/live_desk.h"
#include "app/desktop/watch/session_source.h"
#include "app/desktop/window/recordings_desk.h"
#include "app/desktop/window/result_tabs.h"
#include "app/wording/desktop_options.h"

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
#include <QStyle>
#include <QTimer>
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

std::vector<QDockWidget*> MainWindow::docks() const
{
    return {m_resultDock, m_findingsDock, m_historyDock};
}

bool MainWindow::isLoading() const
{
    if (!m_document)
        return false;
    return m_document->isBusy() || m_recordings->isLoading() || m_result->isBusy();
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
        m_recordings->list();
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
