// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/main_window.h"

#include "app/desktop/document/study_files.h"
#include "app/desktop/document/written_files.h"
#include "app/desktop/findings/findings_model.h"
#include "app/desktop/findings/findings_panel.h"
#include "app/desktop/look/hinted_table_view.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/roadside/roadside_page.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/watch/live_desk.h"
#include "app/desktop/window/preferences_dialog.h"
#include "app/desktop/window/rows_paste.h"
#include "app/desktop/window/study_jobs.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QDockWidget>
#include <QFileDialog>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QPushButton>
#include <QTableWidget>
#include <QTextEdit>
#include <QVBoxLayout>

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

/// What has the keyboard is copied; the runs where it has nothing to copy.
void MainWindow::copy()
{
    QWidget* focus = QApplication::focusWidget();
    if (auto* line = qobject_cast<QLineEdit*>(focus))
        line->copy();
    else if (auto* label = qobject_cast<QLabel*>(focus); label && label->hasSelectedText())
        QGuiApplication::clipboard()->setText(label->selectedText());
    else if (auto* table = qobject_cast<HintedTableView*>(focus))
        table->copySelection();
    else if (auto* text = qobject_cast<QTextEdit*>(focus))
        text->copy();
    else
        m_page->list().copySelection();
}

void MainWindow::cut()
{
    if (auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget())) {
        line->cut();
        return;
    }
    m_page->list().copySelection();
    m_page->removeRuns();
}

void MainWindow::paste()
{
    if (auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
        line && !rowsInClipboard())
        line->paste();
    else if (m_page->settle())
        m_jobs->pasteRuns(*m_document);
}

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

void MainWindow::setBlind(bool blind)
{
    if (!blind && m_document->isBlind())
        if (const int open = m_findings->model().openCount(); open > 0) {
            follow(); // the menu's tick stays until it is settled
            askBeforeShowing(open);
            return;
        }
    m_document->setBlind(blind);
    follow();
}

/// Once the answer is known it can choose the runs.
void MainWindow::askBeforeShowing(int open)
{
    auto* box = new QMessageBox(
        QMessageBox::Question, tr("Show the consumption?"),
        tr("%n finding(s) are not answered yet. Once the result is known, it can no longer be "
           "ruled out that it chose the runs.",
           nullptr, open),
        QMessageBox::NoButton, this);
    box->setObjectName("showBeforeSettled");
    box->setAttribute(Qt::WA_DeleteOnClose);
    QPushButton* first = box->addButton(tr("Go through the &findings"), QMessageBox::RejectRole);
    QPushButton* show = box->addButton(tr("&Show it all the same"), QMessageBox::AcceptRole);
    box->setDefaultButton(first);
    box->setEscapeButton(first);
    connect(show, &QPushButton::clicked, this, [this] {
        if (m_document)
            m_document->setBlind(false);
        follow();
    });
    connect(first, &QPushButton::clicked, this, &MainWindow::nextFinding);
    box->open();
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
