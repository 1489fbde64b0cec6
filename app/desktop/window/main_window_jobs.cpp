// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/main_window.h"

#include "app/desktop/document/study_files.h"
#include "app/desktop/findings/findings_panel.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/roadside/roadside_page.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/window/preferences_dialog.h"
#include "app/desktop/window/study_jobs.h"

#include <QAction>
#include <QApplication>
#include <QDialogButtonBox>
#include <QDockWidget>
#include <QFileDialog>
#include <QHeaderView>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QTableWidget>
#include <QVBoxLayout>

namespace bothways::app {
namespace {

constexpr const char* kEnding = ".bothways";

QFileDialog* makeDialog(QWidget* parent, const QString& title, const QString& filter)
{
    auto* dialog = new QFileDialog(parent, title, studyFolder(), filter);
    dialog->setObjectName("fileDialog");
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    return dialog;
}

} // namespace

void MainWindow::chooseStudy()
{
    QFileDialog* dialog = makeDialog(this, tr("Open a study"), studyFilter());
    dialog->setFileMode(QFileDialog::ExistingFile);
    connect(dialog, &QFileDialog::fileSelected, this,
            [this](const QString& file) { openFile(file); });
    dialog->open();
}

void MainWindow::chooseNewStudy()
{
    QFileDialog* dialog = makeDialog(this, tr("New study"), studyFilter());
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
    QFileDialog* dialog = makeDialog(this, tr("Import a run sheet"), sheetFilter());
    dialog->setFileMode(QFileDialog::ExistingFile);
    connect(dialog, &QFileDialog::fileSelected, this, &MainWindow::importSheet);
    dialog->open();
}

void MainWindow::importSheet(const QString& file)
{
    if (m_document)
        m_jobs->importSheet(*m_document, file);
    else
        openFile(file);
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

void MainWindow::setBlind(bool blind)
{
    m_document->setBlind(blind);
    follow();
}

void MainWindow::openRoadside()
{
    if (!m_document || !m_page->settle())
        return;
    if (!m_roadside) {
        m_roadside = new RoadsidePage(*m_document, m_preferences, m_clock, this);
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
    const auto draft = draftFrom(m_preferences.roadsideDraft(m_document->path()));
    if (draft && draft->run)
        m_messages->say(MessageBar::Kind::news,
                        tr("A run was under way at the roadside when this study was closed."),
                        tr("Go on with it"), [this] { openRoadside(); });
}

void MainWindow::showKeys()
{
    auto* dialog = new QDialog(this);
    dialog->setObjectName("keysDialog");
    dialog->setWindowTitle(tr("Keys"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    auto* table = new QTableWidget(0, 3, dialog);
    table->setHorizontalHeaderLabels({tr("Menu"), tr("What"), tr("Key")});
    table->setAccessibleName(tr("Keys"));
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    const std::function<void(const QMenu*, const QString&)> list = [&](const QMenu* menu,
                                                                       const QString& title) {
        for (const QAction* action : menu->actions()) {
            if (action->menu())
                list(action->menu(), title);
            if (action->shortcuts().isEmpty() || action->objectName() == "undo" ||
                action->objectName() == "redo")
                continue;
            const int row = table->rowCount();
            table->insertRow(row);
            table->setItem(row, 0, new QTableWidgetItem(title));
            table->setItem(row, 1, new QTableWidgetItem(action->text().remove(u'&')));
            table->setItem(row, 2,
                           new QTableWidgetItem(QKeySequence::listToString(
                               action->shortcuts(), QKeySequence::NativeText)));
        }
    };
    for (const QAction* top : menuBar()->actions())
        if (top->menu())
            list(top->menu(), top->text().remove(u'&'));
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, dialog);
    connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::close);
    auto* box = new QVBoxLayout(dialog);
    box->addWidget(table);
    box->addWidget(buttons);
    dialog->resize(560, 560);
    dialog->open();
}

void MainWindow::showAbout()
{
    auto* box = new QMessageBox(this);
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setWindowTitle(tr("About Bothways"));
    box->setTextFormat(Qt::PlainText);
    box->setText(tr("Bothways %1").arg(QCoreApplication::applicationVersion()));
    box->setInformativeText(
        tr("Logs fuel-economy runs driven out and back, and says honestly whether there is an "
           "effect.\n\nCopyright (C) 2026 The Bothways developers. Free software under the GNU "
           "General Public License, version 3 or later; it comes without any warranty. Not for "
           "certification.\n\nMade with Qt %1, QCustomPlot, SQLite, SQLiteCpp, Boost, Eigen, "
           "fast_float, fmt and zstd.")
            .arg(qVersion()));
    box->setStandardButtons(QMessageBox::Close);
    box->open();
}

} // namespace bothways::app
