// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/recordings_dialog.h"

#include "app/desktop/document/study_document.h"
#include "app/desktop/findings/not_checked_dialog.h"
#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/recorded_words.h"
#include "app/desktop/look/said.h"
#include "app/desktop/recordings/live_line.h"
#include "core/study/clock.h"
#include "storage/recordings/recording_room.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrentRun>

namespace bothways::app {
namespace {

/// Numbers stand at the right, and their heading above them.
Qt::Alignment alignmentOf(int column)
{
    const bool number = column >= 2 && column <= 4; // length, rows, size
    return Qt::AlignVCenter | (number ? Qt::AlignRight : Qt::AlignLeft);
}

} // namespace

RecordingsDialog::RecordingsDialog(StudyDocument& document, Preferences& preferences,
                                   QWidget* parent)
    : QDialog(parent), m_document(document), m_preferences(preferences)
{
    setObjectName("recordingsDialog");
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Recordings in the study"));
    build();
    connect(&document, &StudyDocument::studyChanged, this, &RecordingsDialog::fill);
    connect(m_list, &QTableWidget::itemSelectionChanged, this, &RecordingsDialog::follow);
    connect(m_cut, &QPushButton::clicked, this, [this] {
        if (const auto* recording = current())
            emit cutWanted(recording->id);
    });
    connect(m_drop, &QPushButton::clicked, this, &RecordingsDialog::askToDrop);
    connect(m_compact, &QPushButton::clicked, this, &RecordingsDialog::askToCompact);
    connect(&m_compacting, &QFutureWatcherBase::finished, this, [this] {
        const Freed freed = m_compacting.result();
        const UnitsShown units = m_preferences.units();
        m_words->setText(
            *freed ? tr("The study file is %1 smaller.").arg(sizeText(freed->value(), units))
                   : sentenceWithPlace(units.language, freed->error()));
        m_document.takeForeignChange(core::Done{});
        follow();
    });
    fill();
}

RecordingsDialog::~RecordingsDialog()
{
    m_compacting.disconnect(this);
    m_compacting.waitForFinished();
}

void RecordingsDialog::build()
{
    auto* box = new QVBoxLayout(this);
    m_list = new QTableWidget(0, 6, this);
    parts::dress(*m_list, "recordingsList", windowTitle());
    parts::setLowRows(*m_list);
    m_list->setHorizontalHeaderLabels(
        {tr("Recording"), tr("Start"), tr("Length"), tr("Rows"), tr("Size"), tr("Runs")});
    for (int column = 0; column < m_list->columnCount(); ++column)
        m_list->horizontalHeaderItem(column)->setTextAlignment(alignmentOf(column));
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_list->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_words = new QLabel(this);
    m_words->setObjectName("recordingsWords");
    m_words->setWordWrap(true);
    m_cut = new QPushButton(tr("C&ut into runs…"), this);
    m_cut->setObjectName("cutRecording");
    m_drop = new QPushButton(tr("&Drop…"), this);
    m_drop->setObjectName("dropRecording");
    m_compact = new QPushButton(tr("&Shrink the study file…"), this);
    m_compact->setObjectName("compactStudy");
    auto* close = new QPushButton(tr("&Close"), this);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {m_cut, m_drop, m_compact})
        buttons->addWidget(button);
    buttons->addStretch();
    buttons->addWidget(close);
    box->addWidget(m_list, 1);
    m_live = parts::sentence("recordedLive");
    m_live->hide();
    box->addWidget(m_live);
    box->addWidget(m_words);
    box->addLayout(buttons);
    resize(fontMetrics().averageCharWidth() * 100, fontMetrics().height() * 22);
}

std::vector<int> RecordingsDialog::runsOf(core::RecordingId recording) const
{
    std::vector<int> runs;
    for (const storage::RunTraceInfo& assigned : m_document.assignedTraces())
        if (const core::Run* run = m_document.run(assigned.run);
            run && assigned.recording == recording)
            runs.push_back(run->number);
    return runs;
}

void RecordingsDialog::fill()
{
    const int before = m_list->currentRow();
    const UnitsShown units = m_preferences.units();
    const auto& recordings = m_document.recordings();
    m_list->setRowCount(static_cast<int>(recordings.size()));
    for (int row = 0; row < m_list->rowCount(); ++row) {
        const storage::RecordingInfo& one = recordings[static_cast<std::size_t>(row)];
        const std::vector<int> runs = runsOf(one.id);
        const QStringList texts{nameShown(one.name),
                                one.first ? units.dateText(core::formatDateTime(*one.first))
                                          : tr("no clock"),
                                lengthText(one.length_s),
                                units.locale.toString(static_cast<qlonglong>(one.rows)),
                                sizeText(one.bytes, units),
                                runs.empty() ? tr("not yet cut") : runRanges(runs)};
        for (int column = 0; column < texts.size(); ++column) {
            auto* item = new QTableWidgetItem(texts[column]);
            item->setTextAlignment(alignmentOf(column));
            m_list->setItem(row, column, item);
        }
    }
    if (m_list->rowCount() > 0)
        m_list->selectRow(std::clamp(before, 0, m_list->rowCount() - 1));
    follow();
}

const storage::RecordingInfo* RecordingsDialog::current() const
{
    const int row = m_list->currentRow();
    const auto& recordings = m_document.recordings();
    const bool any = m_list->selectionModel()->hasSelection() && row >= 0 &&
                     static_cast<std::size_t>(row) < recordings.size();
    return any ? &recordings[static_cast<std::size_t>(row)] : nullptr;
}

void RecordingsDialog::follow()
{
    const bool idle = !m_compacting.isRunning() && !m_document.isReadOnly();
    m_cut->setEnabled(idle && current());
    m_drop->setEnabled(idle && current());
    m_compact->setEnabled(idle);
    if (m_document.isReadOnly())
        for (QPushButton* order : {m_cut, m_drop, m_compact})
            order->setToolTip(tr("This study is open for reading only."));
    const auto* recording = current();
    parts::setSentence(*m_live, recording
                                    ? liveLine(m_preferences.spoken(), m_document, recording->id)
                                    : QString());
}

void RecordingsDialog::ask(const QString& question, const QString& more, const QString& yes,
                           const std::function<void()>& job)
{
    auto* box =
        new QMessageBox(QMessageBox::Question, windowTitle(), question, QMessageBox::Cancel, this);
    box->setObjectName("recordingsQuestion");
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setTextFormat(Qt::PlainText);
    box->setInformativeText(more);
    QPushButton* doIt = box->addButton(yes, QMessageBox::AcceptRole);
    connect(doIt, &QPushButton::clicked, this, job);
    box->open();
}

void RecordingsDialog::askToDrop()
{
    const storage::RecordingInfo* recording = current();
    if (!recording)
        return;
    const std::vector<int> runs = runsOf(recording->id);
    const QString whose =
        runs.empty() ? tr("No run has a part of it.")
                     : tr("Runs that have a part of it: %1. They stay, with all that was typed.")
                           .arg(runRanges(runs));
    ask(tr("Drop %1?").arg(nameShown(recording->name)),
        whose + u' ' +
            tr("Undo brings it back, until the study file is shrunk; its %1 are freed only then.")
                .arg(sizeText(recording->bytes, m_preferences.units())),
        tr("Drop it"), [this, id = recording->id] { m_document.dropRecording(id); });
}

void RecordingsDialog::askToCompact()
{
    const auto connection = m_document.anotherConnection();
    if (!connection)
        return;
    const auto freeable = storage::freeableBytes(*connection);
    if (!freeable) {
        m_words->setText(sentenceWithPlace(m_preferences.spoken(), freeable.error()));
        return;
    }
    if (freeable.value() == 0) {
        m_words->setText(tr("No recording was dropped: the study file cannot become smaller."));
        return;
    }
    ask(tr("Make the study file %1 smaller?")
            .arg(sizeText(freeable.value(), m_preferences.units())),
        tr("Recordings that were dropped, or whose import was undone, cannot be brought back after "
           "it. Runs stay."),
        tr("Shrink it"), [this] { compact(); });
}

void RecordingsDialog::compact()
{
    auto connection = m_document.anotherConnection();
    if (!connection)
        return;
    m_words->setText(tr("Making the study file smaller…"));
    m_compacting.setFuture(QtConcurrent::run([connection] {
        return std::make_shared<core::Result<std::int64_t>>(storage::compact(*connection));
    }));
    follow();
}

} // namespace bothways::app
