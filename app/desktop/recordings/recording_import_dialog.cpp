// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/recording_import_dialog.h"

#include "app/desktop/document/study_document.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/recordings/channel_mapping_table.h"
#include "app/desktop/recordings/clock_row.h"
#include "app/wording/recordings.h"
#include "storage/loggers/trace_report.h"
#include "storage/recordings/trace_import.h"

#include <QComboBox>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

namespace bothways::app {
namespace {

constexpr double kMegabyte = 1e6;

} // namespace

RecordingImportDialog::RecordingImportDialog(StudyDocument& document, Preferences& preferences,
                                             const QString& file, int run, QWidget* parent)
    : QDialog(parent),
      m_document(document),
      m_preferences(preferences),
      m_file(file),
      m_import(new RecordingImport(document.anotherConnection(), file, this))
{
    setObjectName("recordingImport");
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Import %1").arg(QFileInfo(file).fileName()));
    build(run);
    connect(m_import, &RecordingImport::looked, this, &RecordingImportDialog::takePreview);
    connect(m_import, &RecordingImport::finished, this, &RecordingImportDialog::takeReport);
    connect(m_import, &RecordingImport::progressed, this, [this](double share, double rate) {
        m_progress->setValue(static_cast<int>(1000.0 * share));
        const QLocale& locale = m_preferences.units().locale;
        m_rate->setText(rate > 0.0 ? tr("%1 MB/s").arg(locale.toString(rate / kMegabyte, 'f', 1))
                                   : QString());
    });
    connect(m_start, &QPushButton::clicked, this, &RecordingImportDialog::start);
    connect(m_stop, &QPushButton::clicked, m_import, &RecordingImport::stop);
    connect(m_close, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_cut, &QPushButton::clicked, this, [this] {
        emit cutWanted(m_recording);
        close();
    });
    connect(m_mapping, &ChannelMappingTable::changed, this, [this] { say({}, false); });
    follow();
    m_import->look();
}

RecordingImportDialog::~RecordingImportDialog() = default;

void RecordingImportDialog::build(int run)
{
    auto* box = new QVBoxLayout(this);
    m_form = new QLabel(tr("Looking at the file…"), this);
    m_form->setObjectName("recordingForm");
    m_form->setWordWrap(true);
    m_mapping = new ChannelMappingTable(this);
    m_words = new QLabel(this);
    m_words->setObjectName("importWords");
    m_words->setWordWrap(true);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_progress = new QProgressBar(this);
    m_progress->setObjectName("importProgress");
    m_progress->setAccessibleName(tr("Importing the recording"));
    m_progress->setRange(0, 1000);
    m_rate = new QLabel(this);
    m_rate->setObjectName("importRate");
    auto* work = new QHBoxLayout;
    work->addWidget(m_progress, 1);
    work->addWidget(m_rate);
    auto* buttons = new QHBoxLayout;
    m_cut = new QPushButton(tr("C&ut it into runs…"), this);
    m_cut->setObjectName("cutImported");
    m_start = new QPushButton(tr("&Import"), this);
    m_start->setObjectName("startImport");
    m_start->setDefault(true);
    m_stop = new QPushButton(tr("&Stop"), this);
    m_stop->setObjectName("stopImport");
    m_close = new QPushButton(tr("&Close"), this);
    m_close->setObjectName("closeImport");
    buttons->addStretch();
    for (QPushButton* button : {m_stop, m_close})
        button->setAutoDefault(false);
    for (QPushButton* button : {m_cut, m_start, m_stop, m_close})
        buttons->addWidget(button);
    box->addWidget(m_form);
    box->addWidget(m_mapping, 1);
    box->addWidget(buildOwner(run));
    m_clock = new ClockRow(this);
    box->addWidget(m_clock);
    box->addWidget(m_words);
    box->addLayout(work);
    box->addLayout(buttons);
    resize(fontMetrics().averageCharWidth() * 105, fontMetrics().height() * 32);
}

QWidget* RecordingImportDialog::buildOwner(int run)
{
    auto* owner = new QWidget(this);
    auto* line = new QHBoxLayout(owner);
    line->setContentsMargins(0, 0, 0, 0);
    m_ofRun = new QRadioButton(tr("It &belongs to run"), owner);
    m_ofRun->setObjectName("ofRun");
    m_run = new QComboBox(owner);
    m_run->setObjectName("recordedRun");
    m_run->setAccessibleName(tr("The run it belongs to"));
    for (const core::Run& one : m_document.study().runs) {
        //: number, configuration, direction of a run
        m_run->addItem(tr("%1: %2, %3")
                           .arg(one.number)
                           .arg(nameShown(one.configuration), nameShown(one.direction)),
                       one.number);
    }
    m_run->setCurrentIndex(std::max(0, m_run->findData(run)));
    m_whole = new QRadioButton(tr("It is of a &whole drive, to be cut into runs"), owner);
    m_whole->setObjectName("wholeDrive");
    const bool runs = m_run->count() > 0;
    m_ofRun->setEnabled(runs);
    (runs && run > 0 ? m_ofRun : m_whole)->setChecked(true);
    line->addWidget(m_ofRun);
    line->addWidget(m_run);
    line->addSpacing(16);
    line->addWidget(m_whole);
    line->addStretch();
    connect(m_ofRun, &QRadioButton::toggled, this, &RecordingImportDialog::follow);
    connect(m_run, &QComboBox::activated, this, [this] { m_ofRun->setChecked(true); });
    return owner;
}

void RecordingImportDialog::takePreview(const RecordingImport::Preview& preview)
{
    m_readable = static_cast<bool>(preview);
    if (!preview) {
        m_form->setText(tr("This file cannot be taken for a recording."));
        say(sentenceWithPlace(m_preferences.spoken(), preview.error()), true);
        follow();
        return;
    }
    const storage::TracePreview& found = preview.value();
    QString form = shown(wording::recordingForm(m_preferences.spoken(), found));
    if (found.mapping_kept)
        form +=
            u' ' + tr("What the columns are is kept from an earlier recording with this header.");
    m_form->setText(form);
    m_mapping->setPreview(found, m_preferences.units(m_document.isElectric()));
    m_mapping->setVisible(!found.mapping.empty());
    if (const auto offered = m_mapping->mapping())
        m_offered = offered.value();
    if (found.fault)
        say(sentenceWithPlace(m_preferences.spoken(), *found.fault), true);
    follow();
}

void RecordingImportDialog::start()
{
    const auto mapping = m_mapping->mapping();
    if (!mapping) {
        say(sentenceWithPlace(m_preferences.spoken(), mapping.error()), true);
        return;
    }
    storage::TraceImportOptions options;
    if (mapping.value() != m_offered)
        options.mapping = mapping.value();
    if (m_ofRun->isChecked())
        options.run = m_run->currentData().toInt();
    options.clock = m_clock->options();
    options.start = m_clock->start();
    say({}, false);
    m_progress->setValue(0);
    m_import->start(std::move(options));
    follow();
}

void RecordingImportDialog::takeReport(const RecordingImport::Report& report)
{
    m_rate->clear();
    if (!report) {
        m_progress->setValue(0);
        if (report.error().code == core::ErrorCode::stopped)
            say(tr("Stopped: the study is as it was."), false);
        else
            say(sentenceWithPlace(m_preferences.spoken(), report.error()) + u' ' +
                    tr("The study is as it was."),
                true);
        follow();
        return;
    }
    m_done = true;
    m_recording = report.value().recording;
    m_progress->setValue(m_progress->maximum());
    say(reportWords(report.value()), false);
    follow();
    m_document.takeForeignChange(core::Done{});
}

/// What the import brought, and a line for whatever was odd in the recording.
QString RecordingImportDialog::reportWords(const storage::TraceReport& report) const
{
    const Language in = m_preferences.spoken();
    QStringList lines{
        shown(wording::imported(in, QFileInfo(m_file).fileName().toStdString(), report))};
    lines += shown(wording::whatWasMet(in, report));
    lines += shown(wording::whatElseWasMet(in, report));
    for (QString& line : lines)
        line = asSentence(line);
    return lines.join(u'\n');
}

void RecordingImportDialog::say(const QString& words, bool problem)
{
    m_words->setText(problem ? QStringLiteral("✖ ") + words : words);
    m_words->setVisible(!words.isEmpty());
}

void RecordingImportDialog::follow()
{
    const bool running = m_import->isRunning();
    for (QWidget* choice : std::initializer_list<QWidget*>{m_mapping, m_whole, m_clock})
        choice->setEnabled(m_readable && !running && !m_done);
    m_ofRun->setEnabled(m_run->count() > 0 && !running && !m_done);
    m_run->setEnabled(m_ofRun->isEnabled());
    m_start->setVisible(!m_done);
    m_start->setEnabled(m_readable && !running);
    m_stop->setVisible(!m_done);
    m_stop->setEnabled(running);
    m_progress->setVisible(running || m_done);
    m_cut->setVisible(m_done && m_whole->isChecked());
    if (m_done)
        (m_cut->isVisible() ? m_cut : m_close)->setDefault(true);
}

/// Closing stops what is on its way.
void RecordingImportDialog::reject()
{
    m_import->stop();
    QDialog::reject();
}

} // namespace bothways::app
