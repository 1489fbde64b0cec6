// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/rig_dialog.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/watch/calibration_dialog.h"
#include "app/desktop/watch/instrument_form.h"
#include "app/desktop/watch/rig_trial.h"
#include "app/desktop/watch/runs_by_form.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace bothways::app {

RigDialog::RigDialog(Preferences& preferences, QWidget* parent)
    : QDialog(parent), m_preferences(preferences), m_units(preferences.units())
{
    setObjectName("rigDialog");
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Rig: the instruments of the car"));
    build();
    const QStringList names = m_store.names();
    const QString last = preferences.lastRig();
    if (names.isEmpty())
        newRig();
    else
        load(names.contains(last) ? last : names.front());
    resize(QSize(900, 700));
}

void RigDialog::build()
{
    auto* box = new QVBoxLayout(this);
    box->addLayout(buildNames());
    box->addLayout(buildInstruments(), 3);
    m_runs = new RunsByForm(m_units.language, this);
    box->addWidget(m_runs);
    m_trial = new RigTrial(m_units, this);
    m_trial->hide();
    box->addWidget(m_trial, 2);
    m_words = parts::sentence("rigWords");
    m_words->hide();
    box->addWidget(m_words);
    box->addLayout(buildButtons());
    connect(m_trial, &RigTrial::looked, this, [this] {
        m_take->setEnabled(!m_trial->channels().empty());
        if (m_calibration)
            m_calibration->look();
    });
}

QLayout* RigDialog::buildNames()
{
    auto* row = new QHBoxLayout;
    m_names = new QComboBox(this);
    m_names->setObjectName("rigs");
    m_names->setAccessibleName(tr("Rigs"));
    m_name = new QLineEdit(this);
    m_name->setObjectName("rigName");
    m_name->setAccessibleName(tr("Name of the rig"));
    auto* label = new QLabel(tr("Rig na&me"), this);
    label->setBuddy(m_name);
    auto* fresh = new QPushButton(tr("Ne&w"), this);
    fresh->setObjectName("newRig");
    auto* keep = new QPushButton(tr("&Save"), this);
    keep->setObjectName("saveRig");
    auto* drop = new QPushButton(tr("De&lete"), this);
    drop->setObjectName("deleteRig");
    for (QPushButton* button : {fresh, keep, drop})
        button->setAutoDefault(false);
    row->addWidget(m_names, 2);
    row->addWidget(label);
    row->addWidget(m_name, 2);
    row->addWidget(keep);
    row->addWidget(fresh);
    row->addWidget(drop);
    connect(m_names, &QComboBox::activated, this, [this] { load(m_names->currentText()); });
    connect(fresh, &QPushButton::clicked, this, &RigDialog::newRig);
    connect(keep, &QPushButton::clicked, this, &RigDialog::save);
    connect(drop, &QPushButton::clicked, this, &RigDialog::removeRig);
    return row;
}

QLayout* RigDialog::buildInstruments()
{
    auto* across = new QHBoxLayout;
    auto* left = new QVBoxLayout;
    m_list = new QListWidget(this);
    m_list->setObjectName("instruments");
    m_list->setAccessibleName(tr("Instruments"));
    auto* more = new QPushButton(tr("A&dd an instrument"), this);
    more->setObjectName("addInstrument");
    auto* fewer = new QPushButton(tr("Rem&ove it"), this);
    fewer->setObjectName("removeInstrument");
    for (QPushButton* button : {more, fewer})
        button->setAutoDefault(false);
    left->addWidget(m_list, 1);
    left->addWidget(more);
    left->addWidget(fewer);
    m_form = new InstrumentForm(m_units, this);
    for (QPushButton* button : m_form->findChildren<QPushButton*>())
        button->setAutoDefault(false);
    across->addLayout(left, 1);
    across->addWidget(m_form, 3);
    connect(m_list, &QListWidget::currentRowChanged, this, [this](int row) {
        const bool is = row >= 0 && row < static_cast<int>(m_rig.instruments.size());
        m_form->setEnabled(is);
        if (is)
            m_form->setInstrument(m_rig.instruments[static_cast<std::size_t>(row)]);
    });
    connect(more, &QPushButton::clicked, this, &RigDialog::addInstrument);
    connect(fewer, &QPushButton::clicked, this, &RigDialog::removeInstrument);
    connect(m_form, &InstrumentForm::changed, this, &RigDialog::takeForm);
    return across;
}

QLayout* RigDialog::buildButtons()
{
    auto* row = new QHBoxLayout;
    m_try = new QPushButton(tr("Tr&y the rig"), this);
    m_try->setObjectName("tryRig");
    m_try->setCheckable(true);
    m_take = new QPushButton(tr("&Take over these channels"), this);
    m_take->setObjectName("takeChannels");
    m_take->setToolTip(tr("What this instrument sends becomes its list, to be named and scaled"));
    m_calibrate = new QPushButton(tr("Cali&brate…"), this);
    m_calibrate->setObjectName("calibrate");
    m_record = new QPushButton(tr("&Record with it"), this);
    m_record->setObjectName("recordWithRig");
    auto* close = new QPushButton(tr("Close"), this);
    close->setObjectName("closeRig");
    for (QPushButton* button : {m_try, m_take, m_calibrate, m_record, close}) {
        button->setAutoDefault(false);
        row->addWidget(button);
    }
    row->insertStretch(3, 1);
    m_take->setEnabled(false);
    m_calibrate->setEnabled(false);
    connect(m_try, &QPushButton::toggled, this, &RigDialog::tryRig);
    connect(m_take, &QPushButton::clicked, this, [this] {
        std::vector<storage::RigChannel> seen;
        for (const storage::ReadChannel& read : m_trial->channels())
            if (static_cast<int>(read.instrument) == m_list->currentRow() && !read.derived)
                seen.push_back(read.channel);
        m_form->addChannels(seen);
    });
    connect(m_calibrate, &QPushButton::clicked, this, &RigDialog::calibrate);
    connect(m_record, &QPushButton::clicked, this, [this] {
        if (!save())
            return;
        m_try->setChecked(false); // a port has one reader
        emit recordingWanted();
        accept();
    });
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    return row;
}

void RigDialog::setRecordable(bool recordable)
{
    m_record->setEnabled(recordable);
    m_record->setToolTip(recordable ? QString()
                                    : tr("Open a study that is not being recorded into first."));
}

void RigDialog::say(const QString& words)
{
    parts::setSentence(*m_words, words);
}

void RigDialog::say(const core::Error& error)
{
    say(sentenceWithPlace(m_units.language, error));
}

void RigDialog::fillNames(const QString& current)
{
    m_names->clear();
    m_names->addItems(m_store.names());
    m_names->setCurrentIndex(m_names->findText(current));
    m_names->setEnabled(m_names->count() > 0);
}

void RigDialog::load(const QString& name)
{
    m_try->setChecked(false);
    auto read = m_store.read(name);
    if (!read) {
        say(read.error());
        return;
    }
    m_rig = std::move(read).take();
    m_name->setText(name);
    fillNames(name);
    fillInstruments(0);
    m_runs->setRuns(m_rig.runs);
    say(QString());
}

void RigDialog::newRig()
{
    m_try->setChecked(false);
    m_rig = {};
    m_name->setText(tr("car"));
    m_name->selectAll();
    fillNames({});
    addInstrument();
    m_runs->setRuns(m_rig.runs);
    say(tr("Name each instrument, say what it is and where, then try it."));
}

void RigDialog::fillInstruments(int current)
{
    m_list->clear();
    for (const storage::Instrument& instrument : m_rig.instruments)
        m_list->addItem(QString::fromStdString(instrument.name));
    m_list->setCurrentRow(std::min(current, m_list->count() - 1));
    m_form->setEnabled(m_list->count() > 0);
}

void RigDialog::addInstrument()
{
    const auto taken = [this](const QString& name) {
        return std::any_of(m_rig.instruments.begin(), m_rig.instruments.end(),
                           [&](const auto& one) { return one.name == name.toStdString(); });
    };
    QString name = tr("board");
    for (int number = 2; taken(name); ++number)
        name = tr("board %1").arg(number);
    storage::Instrument made;
    made.name = name.toStdString();
    const QStringList ports = portsThere(made.kind);
    if (!ports.isEmpty())
        made.address = ports.front().toStdString();
    m_rig.instruments.push_back(made);
    fillInstruments(static_cast<int>(m_rig.instruments.size()) - 1);
}

void RigDialog::removeInstrument()
{
    const int row = m_list->currentRow();
    if (row < 0)
        return;
    m_rig.instruments.erase(m_rig.instruments.begin() + row);
    fillInstruments(row);
}

void RigDialog::takeForm()
{
    const int row = m_list->currentRow();
    if (row < 0 || row >= static_cast<int>(m_rig.instruments.size()))
        return;
    auto& instrument = m_rig.instruments[static_cast<std::size_t>(row)];
    instrument = m_form->instrument();
    m_list->item(row)->setText(QString::fromStdString(instrument.name));
}

bool RigDialog::save()
{
    m_rig.name = m_name->text().trimmed().toStdString();
    if (m_rig.name.empty()) {
        say(tr("The rig needs a name."));
        m_name->setFocus();
        return false;
    }
    auto runs = m_runs->runs();
    if (!runs) {
        say(runs.error());
        return false;
    }
    m_rig.runs = std::move(runs).take();
    if (const core::Outcome written = m_store.write(m_rig); !written) {
        say(written.error());
        return false;
    }
    const QString name = QString::fromStdString(m_rig.name);
    m_preferences.setLastRig(name);
    fillNames(name);
    say(tr("The rig “%1” is kept.").arg(nameShown(m_rig.name)));
    return true;
}

void RigDialog::removeRig()
{
    const QString name = m_names->currentText();
    if (name.isEmpty() || !m_store.remove(name))
        return;
    const QStringList left = m_store.names();
    if (left.isEmpty())
        newRig();
    else
        load(left.front());
    say(tr("The rig “%1” is deleted. Studies that were recorded with it keep theirs.").arg(name));
}

void RigDialog::tryRig(bool on)
{
    m_trial->setVisible(on);
    m_calibrate->setEnabled(on);
    m_take->setEnabled(false);
    if (!on) {
        m_trial->stop();
        m_try->setText(tr("Tr&y the rig"));
        return;
    }
    m_rig.name = m_name->text().trimmed().toStdString();
    if (const core::Outcome started = m_trial->start(m_rig); !started) {
        m_try->setChecked(false);
        say(started.error());
        return;
    }
    m_try->setText(tr("Stop tr&ying"));
    say(QString());
}

/// Of the instrument that is chosen: the channel that has the keyboard in the list.
void RigDialog::calibrate()
{
    const int row = m_list->currentRow();
    if (row < 0)
        return;
    const auto instrument = static_cast<std::uint32_t>(row);
    QStringList sources;
    for (const storage::ReadChannel& read : m_trial->channels())
        if (read.instrument == instrument && !read.derived)
            sources += QString::fromStdString(read.channel.source);
    if (sources.isEmpty()) {
        say(tr("The instrument has sent nothing yet."));
        return;
    }
    auto* choice = new QInputDialog(this);
    choice->setObjectName("calibratedChannel");
    choice->setAttribute(Qt::WA_DeleteOnClose);
    choice->setWindowTitle(tr("Calibrate"));
    choice->setLabelText(tr("Which channel of it?"));
    choice->setComboBoxItems(sources);
    connect(choice, &QInputDialog::textValueSelected, this,
            [this, instrument](const QString& source) {
                const std::string name = source.toStdString();
                m_calibration = new CalibrationDialog(
                    source, [this, instrument, name] { return m_trial->raw(instrument, name); },
                    m_units, this);
                connect(m_calibration, &CalibrationDialog::calibrated, this,
                        [this, instrument, name](double factor, double offset) {
                            std::vector<storage::RigChannel> seen;
                            for (const storage::ReadChannel& read : m_trial->channels())
                                if (read.instrument == instrument && read.channel.source == name)
                                    seen.push_back(read.channel);
                            m_form->addChannels(seen);
                            m_form->setScale(name, factor, offset);
                            m_try->setChecked(false);
                            m_try->setChecked(true); // read anew, with what was found
                        });
                m_calibration->open();
            });
    choice->open();
}

} // namespace bothways::app
