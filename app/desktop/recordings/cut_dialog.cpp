// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/cut_dialog.h"

#include "app/desktop/document/study_document.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/recordings/clock_row.h"
#include "app/desktop/recordings/cut_table.h"
#include "app/desktop/recordings/gate_row.h"
#include "app/wording/recordings.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/trace_import.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrentRun>

namespace bothways::app {
namespace {

constexpr CutWay kWays[] = {CutWay::times, CutWay::marks, CutWay::position, CutWay::speed};

QString wayText(CutWay way, int parts)
{
    switch (way) {
    case CutWay::times: return CutDialog::tr("the run sheet's times: %n part(s)", nullptr, parts);
    case CutWay::marks: return CutDialog::tr("marks: %n part(s)", nullptr, parts);
    case CutWay::position: return CutDialog::tr("positions: %n part(s)", nullptr, parts);
    case CutWay::speed: return CutDialog::tr("a held speed: %n part(s)", nullptr, parts);
    }
    return {};
}

} // namespace

CutDialog::CutDialog(StudyDocument& document, Preferences& preferences,
                     storage::RecordingInfo recording, QWidget* parent)
    : QDialog(parent),
      m_document(document),
      m_preferences(preferences),
      m_recording(std::move(recording)),
      m_connection(document.anotherConnection())
{
    setObjectName("cutDialog");
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Cut %1 into runs").arg(nameShown(m_recording.name)));
    build();
    connect(&m_reading, &QFutureWatcherBase::finished, this, &CutDialog::takeMaterial);
    connect(m_way, &QComboBox::currentIndexChanged, this, &CutDialog::takeWay);
    connect(m_clock, &ClockRow::changed, this, &CutDialog::read);
    connect(m_gates, &GateRow::changed, this, &CutDialog::takeGates);
    connect(m_gates, &GateRow::partWanted, this, &CutDialog::takeGatesFromPart);
    connect(m_table, &QTableWidget::itemSelectionChanged, this,
            [this] { m_gates->setPartChosen(m_table->chosenPart().has_value()); });
    connect(m_table, &CutTable::changed, this, [this] {
        m_plot->setBands(m_table->bands());
        m_make->setEnabled(!m_table->wantedParts().empty());
        say({});
    });
    connect(m_plot, &CutPlot::bandMoved, this, [this](int band) {
        const CutBand& moved = m_plot->bands()[static_cast<std::size_t>(band)];
        m_table->setTimes(band, moved.from_s, moved.to_s);
    });
    connect(m_make, &QPushButton::clicked, this, &CutDialog::makeRuns);
    read();
}

CutDialog::~CutDialog()
{
    m_reading.disconnect(this);
    m_reading.waitForFinished();
}

void CutDialog::build()
{
    auto* box = new QVBoxLayout(this);
    auto* choice = new QHBoxLayout;
    auto* wayLabel = new QLabel(tr("Cut &by"), this);
    m_way = new QComboBox(this);
    m_way->setObjectName("cutWay");
    m_way->setSizeAdjustPolicy(QComboBox::AdjustToContents); // filled after the first layout
    wayLabel->setBuddy(m_way);
    choice->addWidget(wayLabel);
    choice->addWidget(m_way);
    choice->addStretch();
    m_clock = new ClockRow(this);
    m_clock->setHasClock(m_recording.first.has_value());
    m_gates = new GateRow(this);
    m_gates->hide();
    m_plot = new CutPlot(this);
    m_plot->setTheme(Theme::of(palette()));
    m_table = new CutTable(this);
    m_words = new QLabel(tr("Reading the recording…"), this);
    m_words->setObjectName("cutWords");
    m_words->setWordWrap(true);
    auto* hint = new QLabel(tr("Drag an edge, or press E to choose one and Ctrl+Left or "
                               "Ctrl+Right to move it by a second."),
                            this);
    hint->setWordWrap(true);
    m_timed = new QCheckBox(tr("Runs that are &there take start and length of their part"), this);
    m_timed->setObjectName("takeTimes");
    m_timed->setChecked(true);
    m_timed->setToolTip(tr("A part that lies where the run sheet has its run changes nothing; the "
                           "start follows where the recording has a clock"));
    m_make = new QPushButton(tr("&Make these runs"), this);
    m_make->setObjectName("makeRuns");
    m_make->setEnabled(false);
    m_make->setDefault(true);
    auto* close = new QPushButton(tr("&Close"), this);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch();
    buttons->addWidget(m_make);
    buttons->addWidget(close);
    box->addLayout(choice);
    box->addWidget(m_clock);
    box->addWidget(m_gates);
    box->addWidget(m_plot, 3);
    box->addWidget(hint);
    box->addWidget(m_table, 2);
    box->addWidget(m_timed);
    box->addWidget(m_words);
    box->addLayout(buttons);
    resize(fontMetrics().averageCharWidth() * 120, fontMetrics().height() * 38);
}

void CutDialog::read()
{
    if (!m_connection)
        return;
    m_make->setEnabled(false); // what it would make is about to change
    const auto recording = timed();
    if (!recording) {
        say(sentenceWithPlace(m_preferences.spoken(), recording.error()));
        return;
    }
    m_again = m_reading.isRunning();
    if (m_again)
        return;
    m_reading.setFuture(QtConcurrent::run([connection = m_connection, recording = recording.value(),
                                           study = m_document.study(), clock = m_clock->options(),
                                           fence = m_fence] {
        return std::make_shared<core::Result<CutMaterial>>(
            readCutMaterial(*connection, recording, study, clock, fence));
    }));
}

void CutDialog::takeMaterial()
{
    if (m_again) {
        read();
        return;
    }
    const Material read = m_reading.result();
    if (!*read) {
        say(sentenceWithPlace(m_preferences.spoken(), read->error()));
        return;
    }
    m_material = std::make_unique<CutMaterial>(std::move(*read).take());
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    m_plot->setSpeed(m_material->speed, units);
    const QSignalBlocker quiet(m_way);
    const QVariant before = m_way->currentData();
    m_way->clear();
    int first = -1;
    for (const CutWay way : kWays) {
        const int parts = static_cast<int>(m_material->by(way).size());
        if (parts > 0 && first < 0)
            first = m_way->count();
        m_way->addItem(wayText(way, parts), static_cast<int>(way));
    }
    const int same = before.isValid() ? m_way->findData(before) : first;
    m_way->setCurrentIndex(std::max(0, same));
    m_gates->setFence(m_material->fence);
    takeWay();
}

CutWay CutDialog::way() const
{
    return static_cast<CutWay>(m_way->currentData().toInt());
}

/// Gates that were typed: the recording is cut anew by them.
void CutDialog::takeGates()
{
    const auto typed = m_gates->fence();
    if (!typed) {
        m_table->setParts({}, m_document.study(), {}, m_preferences.units());
        say(sentenceWithPlace(m_preferences.spoken(), typed.error()));
        return;
    }
    m_fence = typed.value();
    say(tr("Looking where the gates are passed…"));
    read();
}

void CutDialog::takeGatesFromPart()
{
    const auto part = m_table->chosenPart();
    auto fence = part && m_material ? m_material->fenceOf(*part) : std::nullopt;
    if (!fence)
        return;
    if (m_material->fence)
        fence->radius_m = m_material->fence->radius_m;
    m_gates->setFence(fence);
    takeGates();
}

QString CutDialog::nothingWords() const
{
    using wording::NoCut;
    const auto because = [this](NoCut why) {
        return asSentence(said(m_preferences.spoken(), wording::whyNoCut(why)));
    };
    switch (way()) {
    case CutWay::times: break;
    case CutWay::marks: return because(NoCut::noMarks);
    case CutWay::speed: return because(m_material->speed ? NoCut::noSpeedHeld : NoCut::noSpeed);
    case CutWay::position:
        if (!m_material->hasPositions())
            return because(NoCut::noPositions);
        return m_material->fence ? because(NoCut::gatesNotPassed)
                                 : tr("Type where the gates at the two ends of the stretch are.");
    }
    return tr("Nothing in the recording to cut by in this way.");
}

void CutDialog::takeWay()
{
    if (!m_material)
        return;
    m_gates->setVisible(way() == CutWay::position && m_material->hasPositions());
    m_table->setParts(m_material->by(way()), m_document.study(), m_material->byTimes,
                      m_preferences.units(m_document.isElectric()));
    m_gates->setPartChosen(m_table->chosenPart().has_value());
    if (way() == CutWay::times && m_material->timesFault)
        say(sentenceWithPlace(m_preferences.spoken(), *m_material->timesFault));
    else if (m_material->by(way()).empty())
        say(nothingWords());
    else
        say(gapWords());
}

core::Result<storage::RecordingInfo> CutDialog::timed() const
{
    storage::RecordingInfo recording = m_recording;
    if (recording.first || m_clock->start().empty())
        return recording;
    const auto start = storage::recordingStart(m_clock->start(), m_document.study());
    if (!start)
        return start.error();
    recording.first = start.value();
    return recording;
}

QString CutDialog::gapWords() const
{
    const Language in = m_preferences.spoken();
    const auto ends = way() == CutWay::times ? core::EndsFrom::sheet : core::EndsFrom::recording;
    QStringList lines;
    int number = 0;
    for (const core::CutProposal& part : m_material->by(way())) {
        ++number;
        const auto whose =
            part.run ? core::message("run {}"_t, *part.run) : core::message("part {}"_t, number);
        if (const auto gap = core::longestGapOf(part, m_material->gaps, ends))
            lines += asSentence(said(in, wording::gapOfPart(in, whose, part, *gap)));
    }
    return lines.join(u'\n');
}

void CutDialog::say(const QString& words)
{
    m_words->setText(words);
    m_words->setVisible(!words.isEmpty());
}

core::Result<std::vector<storage::Cut>> CutDialog::cuts() const
{
    std::vector<storage::Cut> cuts;
    const auto recording = timed();
    if (!recording)
        return recording.error();
    for (const CutTable::Part& part : m_table->wantedParts()) {
        if (part.existing) {
            const bool timed = m_timed->isChecked() && (part.moved || way() != CutWay::times);
            cuts.push_back(storage::cutForRun(*part.existing, part.proposal, recording.value(),
                                              m_document.study(), m_clock->options(), timed));
            continue;
        }
        auto cut = storage::cutForNewRun(part.proposal, recording.value(), m_document.study(),
                                         m_clock->options());
        if (!cut)
            return cut.error();
        cuts.push_back(std::move(cut).take());
        cuts.back().run.configuration = part.configuration.toStdString();
        cuts.back().run.direction = part.direction.toStdString();
    }
    return cuts;
}

void CutDialog::makeRuns()
{
    const auto wanted = cuts();
    if (!wanted) {
        say(sentenceWithPlace(m_preferences.spoken(), wanted.error()));
        return;
    }
    const core::Outcome made = m_document.outcomeOf(
        [&] { return m_document.cutRecording(m_recording.id, wanted.value()); });
    if (!made) {
        say(sentenceWithPlace(m_preferences.spoken(), made.error()));
        return;
    }
    emit runsMade(static_cast<int>(wanted.value().size()));
    close();
}

} // namespace bothways::app
