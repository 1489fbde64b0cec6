// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/rehearsal.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/recorded_words.h"
#include "app/desktop/look/said.h"
#include "app/desktop/watch/live_desk.h"
#include "app/desktop/watch/live_words.h"
#include "app/desktop/watch/rig_dialog.h"
#include "app/desktop/watch/rig_store.h"
#include "app/desktop/window/main_window.h"

#include <QAction>
#include <QLabel>
#include <QMenuBar>
#include <QMessageBox>
#include <QProgressBar>
#include <QPushButton>

/// What the window does with a recording while it is made.
namespace bothways::app {

void MainWindow::buildRecordMenu()
{
    QMenu* menu = menuBar()->addMenu(tr("Rec&ord"));
    add(
        menu, "rig", tr("&Rig…"), {}, [this] { editRig(); }, false)
        ->setToolTip(tr("The instruments of the car: set them up, try them, calibrate them"));
    add(menu, "startRecording", tr("&Start recording"), tr("Ctrl+Shift+R"), [this] {
        startRecording();
    })->setToolTip(tr("Record the instruments into this study (Ctrl+Shift+R)"));
    add(menu, "stopRecording", tr("S&top recording"), tr("Ctrl+Shift+E"), [this] {
        m_live->stop();
    })->setToolTip(tr("Stop, and pack what was recorded (Ctrl+Shift+E)"));
    menu->addSeparator();
    add(
        menu, "rehearse", tr("Re&hearse with the demo drive"), {}, [this] { rehearse(); }, false)
        ->setToolTip(tr("An invented drive, twenty times as fast, into a copy of the demo study"));
}

void MainWindow::connectLive()
{
    connect(m_live.get(), &LiveDesk::recordingStarted, this, &MainWindow::followLive);
    connect(m_live.get(), &LiveDesk::looked, this, &MainWindow::followLive);
    connect(m_live.get(), &LiveDesk::recordingStopping, this, &MainWindow::followLive);
    connect(m_live.get(), &LiveDesk::recordingStopped, this, &MainWindow::takeRecording);
}

/// The line at the bottom, and which orders can be given.
void MainWindow::followLive()
{
    const bool recording = m_live->isRecording();
    const bool was = m_recordingShown;
    m_recordingShown = recording || m_live->isStopping();
    m_recording->setVisible(m_recordingShown);
    if (recording) {
        const UnitsShown units = m_preferences.units();
        const core::Alarm* alarm = m_live->bell().foremost();
        QString words = QString::fromUtf8("● ") + LiveWords::progress(m_live->snapshot(), units);
        if (alarm && alarm->level != core::AlarmLevel::note)
            words += QString::fromUtf8("  ▲ ") + LiveWords::alarm(*alarm, units);
        if (words != m_recording->text())
            m_recording->setText(words);
        m_recording->setToolTip(LiveWords::instruments(m_live->snapshot(), units));
    } else if (m_live->isStopping()) {
        m_recording->setText(tr("packing the recording…"));
        m_progress->setRange(0, 0); // how long is not known
        m_progress->show();
    }
    if (was != m_recordingShown || m_live->isStopping())
        follow();
}

/// @param rig  that is to be used; the last one where none is named
void MainWindow::startRecording()
{
    if (!m_document || m_document->isReadOnly())
        return;
    const RigStore rigs;
    const QStringList names = rigs.names();
    const QString last = m_preferences.lastRig();
    const QString name = names.contains(last) ? last
                         : names.size() == 1  ? names.front()
                                              : QString();
    if (name.isEmpty()) {
        m_messages->say(MessageBar::Kind::news,
                        names.isEmpty() ? tr("No rig is set up yet: say which instruments the car "
                                             "has, and try them.")
                                        : tr("Choose the rig to record with."),
                        {tr("&Rig…"), [this] { editRig(); }});
        return;
    }
    const auto rig = rigs.read(name);
    if (!rig) {
        say(rig.error());
        return;
    }
    record(rig.value(), m_clock());
}

bool MainWindow::record(const storage::Rig& rig, const QDateTime& first)
{
    const core::Outcome started = m_live->start(*m_document, rig, first);
    if (!started) {
        say(started.error());
        return false;
    }
    m_preferences.setLastRig(QString::fromStdString(rig.name));
    m_messages->say(MessageBar::Kind::news,
                    tr("Recording with the rig “%1”. Whatever is recorded is in the study at once.")
                        .arg(nameShown(rig.name)),
                    {tr("&Watch it"), [this] { openRoadside(); }});
    return true;
}

void MainWindow::takeRecording(const core::Outcome& outcome)
{
    m_progress->setRange(0, 100);
    m_progress->hide();
    followLive();
    follow();
    if (m_document) {
        m_document->takeForeignChange(outcome); // says what failed
        if (outcome)
            m_messages->say(MessageBar::Kind::news, tr("The recording is kept in the study."));
    }
    if (const auto next = std::exchange(m_afterRecording, {}))
        next();
}

/// False where a recording is under way: then somebody is asked, and `next` is done when it has
/// been stopped.
bool MainWindow::isFreeFor(const std::function<void()>& next)
{
    if (!m_live->isRecording() && !m_live->isStopping())
        return true;
    if (m_live->isStopping()) {
        m_afterRecording = next;
        return false;
    }
    if (findChild<QMessageBox*>("stopRecordingFirst"))
        return false;
    auto* box = new QMessageBox(
        QMessageBox::Question, tr("Stop the recording?"),
        tr("The instruments are being recorded. Going on stops that; all that was recorded is "
           "kept."),
        QMessageBox::NoButton, this);
    box->setObjectName("stopRecordingFirst");
    box->setAttribute(Qt::WA_DeleteOnClose);
    QPushButton* stay = box->addButton(tr("&Go on recording"), QMessageBox::RejectRole);
    QPushButton* stop = box->addButton(tr("&Stop and go on"), QMessageBox::AcceptRole);
    stop->setObjectName("stopAndGoOn");
    box->setDefaultButton(stay);
    box->setEscapeButton(stay);
    connect(stop, &QPushButton::clicked, this, [this, next] {
        m_afterRecording = next;
        m_live->stop();
    });
    box->open();
    return false;
}

void MainWindow::editRig()
{
    auto* dialog = new RigDialog(m_preferences, this);
    connect(dialog, &RigDialog::recordingWanted, this, [this] { startRecording(); });
    dialog->setRecordable(m_document && !m_document->isReadOnly() && !m_live->isRecording());
    dialog->open();
}

/// End to end, as on the road: study, rig, roadside mode.
void MainWindow::rehearse()
{
    if (!isFreeFor([this] { rehearse(); }) || (m_document && !closeStudy()))
        return;
    auto drive = makeRehearsal();
    if (!drive) {
        say(drive.error());
        return;
    }
    take(std::move(drive.value().study),
         tr("A rehearsal: the study is a copy of the demo, the drive is invented and goes twenty "
            "times as fast. Press Start when the road speed holds 90 km/h."),
         Remember::no);
    if (m_document && record(drive.value().rig, m_clock()))
        openRoadside();
}

/// A recording that was not stopped, by a kill or an empty battery, is here all the same.
void MainWindow::sayRecovered()
{
    const auto& recovered = m_document->recovered();
    if (recovered.empty())
        return;
    const auto& last = recovered.back();
    const int others = static_cast<int>(recovered.size()) - 1;
    m_messages->say(
        MessageBar::Kind::news,
        others == 0
            ? tr("The recording %1 had not been stopped. All of it up to the last second, %2, "
                 "is in the study.")
                  .arg(nameShown(last.name), lengthText(last.length_s))
            : tr("The recording %1 and %n more had not been stopped. All of them up to their last "
                 "seconds are in the study.",
                 nullptr, others)
                  .arg(nameShown(last.name)));
}

} // namespace bothways::app
