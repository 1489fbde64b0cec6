// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/instrument_form.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/plots/trace_channels.h"
#include "app/desktop/watch/rig_store.h"
#include "storage/loggers/trace_names.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTableWidget>
#include <QVBoxLayout>

#include <array>

namespace bothways::app {
namespace {

using storage::InstrumentKind;

constexpr std::array kKinds{InstrumentKind::lines, InstrumentKind::nmea, InstrumentKind::modbus,
                            InstrumentKind::obd, InstrumentKind::replay};

} // namespace

InstrumentForm::InstrumentForm(const UnitsShown& units, QWidget* parent)
    : QWidget(parent), m_units(units)
{
    setObjectName("instrumentForm");
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    m_form = new QFormLayout;
    box->addLayout(m_form);
    buildFields();
    buildTable();
    auto* more = new QPushButton(tr("Add a &channel"), this);
    more->setObjectName("addChannel");
    auto* fewer = new QPushButton(tr("Remove the c&hannel"), this);
    fewer->setObjectName("removeChannel");
    auto* row = new QHBoxLayout;
    row->addWidget(more);
    row->addWidget(fewer);
    row->addStretch(1);
    box->addWidget(m_table, 1);
    box->addLayout(row);
    connect(more, &QPushButton::clicked, this, [this] {
        addRow({});
        m_table->setCurrentCell(m_table->rowCount() - 1, sourceColumn);
        m_table->editItem(m_table->currentItem());
        emit changed();
    });
    connect(fewer, &QPushButton::clicked, this, [this] {
        m_table->removeRow(m_table->currentRow());
        emit changed();
    });
}

void InstrumentForm::buildFields()
{
    m_name = new QLineEdit(this);
    m_name->setObjectName("instrumentName");
    m_kind = new QComboBox(this);
    m_kind->setObjectName("instrumentKind");
    for (const InstrumentKind kind : kKinds)
        m_kind->addItem(kindText(kind), static_cast<int>(kind));
    m_address = new QComboBox(this);
    m_address->setObjectName("instrumentAddress");
    m_address->setEditable(true);
    m_address->setInsertPolicy(QComboBox::NoInsert);
    m_address->setToolTip(
        tr("serial:/dev/ttyUSB0,115200 or tcp:192.168.1.7:2000 or udp:*:2000 or file:PATH"));
    m_unit = new QSpinBox(this);
    m_unit->setObjectName("modbusUnit");
    m_unit->setRange(0, 255);
    m_poll = new QDoubleSpinBox(this);
    m_poll->setObjectName("pollSeconds");
    m_poll->setRange(0.01, 60.0);
    m_poll->setSuffix(tr(" s"));
    m_speed = new QDoubleSpinBox(this);
    m_speed->setObjectName("replaySpeed");
    m_speed->setRange(1.0, 100.0);
    m_speed->setDecimals(1);
    m_fuel = new QComboBox(this);
    m_fuel->setObjectName("obdFuel");
    m_fuel->addItem(tr("none"), QString());
    m_fuel->addItem(tr("petrol"), "petrol");
    m_fuel->addItem(tr("petrol with 10 % ethanol"), "e10");
    m_fuel->addItem(tr("diesel"), "diesel");
    const std::pair<QString, QWidget*> fields[] = {{tr("&Name"), m_name},
                                                   {tr("&Kind"), m_kind},
                                                   {tr("&Address"), m_address},
                                                   {tr("Device &unit"), m_unit},
                                                   {tr("Asked e&very"), m_poll},
                                                   {tr("Times as &fast"), m_speed},
                                                   {tr("Fuel from a&ir mass"), m_fuel}};
    for (const auto& [text, field] : fields) {
        m_form->addRow(text, field);
        parts::nameField(*field, QString(text).remove(u'&'));
    }
    connect(m_kind, &QComboBox::currentIndexChanged, this, [this] {
        followKind();
        emit changed();
    });
    connect(m_name, &QLineEdit::textEdited, this, &InstrumentForm::changed);
    connect(m_address, &QComboBox::editTextChanged, this, &InstrumentForm::changed);
    connect(m_unit, &QSpinBox::valueChanged, this, &InstrumentForm::changed);
    connect(m_poll, &QDoubleSpinBox::valueChanged, this, &InstrumentForm::changed);
    connect(m_speed, &QDoubleSpinBox::valueChanged, this, &InstrumentForm::changed);
    connect(m_fuel, &QComboBox::currentIndexChanged, this, &InstrumentForm::changed);
}

void InstrumentForm::buildTable()
{
    m_table = new QTableWidget(0, columns, this);
    m_table->setObjectName("rigChannels");
    m_table->setAccessibleName(tr("Channels of the instrument"));
    m_table->setToolTip(tr("Value here = what is read × factor + offset. Empty: whatever comes is "
                           "recorded under its own name."));
    m_table->setHorizontalHeaderLabels(
        {tr("Named there"), tr("Here"), tr("Unit"), tr("Factor"), tr("Offset")});
    m_table->verticalHeader()->hide();
    m_table->setTabKeyNavigation(false);
    m_table->setMinimumHeight(fontMetrics().height() * 6);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_table->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 14);
    connect(m_table, &QTableWidget::itemChanged, this, [this] {
        if (!m_filling)
            emit changed();
    });
}

QString InstrumentForm::kindText(InstrumentKind kind)
{
    switch (kind) {
    case InstrumentKind::lines: return tr("lines of numbers");
    case InstrumentKind::nmea: return tr("position receiver (NMEA 0183)");
    case InstrumentKind::modbus: return tr("meter or converter (Modbus)");
    case InstrumentKind::obd: return tr("the car's diagnostic socket (SAE J1979)");
    case InstrumentKind::replay: return tr("a recording, played");
    }
    return {};
}

/// Shows the fields that this kind has, and offers the ports that are there.
void InstrumentForm::followKind()
{
    const auto kind = static_cast<InstrumentKind>(m_kind->currentData().toInt());
    const auto show = [this](QWidget* field, bool visible) {
        field->setVisible(visible);
        m_form->labelForField(field)->setVisible(visible);
    };
    show(m_unit, kind == InstrumentKind::modbus);
    show(m_poll, kind == InstrumentKind::modbus || kind == InstrumentKind::obd);
    show(m_speed, kind == InstrumentKind::replay);
    show(m_fuel, kind == InstrumentKind::obd);
    const QString typed = m_address->currentText();
    const QSignalBlocker quiet(m_address);
    m_address->clear();
    m_address->addItems(portsThere(kind));
    if (typed.isEmpty() && m_address->count() > 0)
        m_address->setCurrentIndex(0);
    else
        m_address->setEditText(typed);
}

void InstrumentForm::setInstrument(const storage::Instrument& instrument)
{
    const QSignalBlocker quiet(this);
    m_name->setText(QString::fromStdString(instrument.name));
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(instrument.kind)));
    m_address->setEditText(QString::fromStdString(instrument.address));
    m_unit->setValue(instrument.unit);
    m_poll->setValue(instrument.poll_s);
    m_speed->setValue(instrument.speed);
    m_fuel->setCurrentIndex(std::max(0, m_fuel->findData(QString::fromStdString(instrument.fuel))));
    m_table->setRowCount(0);
    for (const storage::RigChannel& channel : instrument.channels)
        addRow(channel);
    followKind();
}

/// That which the channel's source names; else the usual two, to show how a part is written.
QStringList InstrumentForm::partsOffered(const QString& source)
{
    const QString own = partNamedIn(source);
    return own.isEmpty() ? QStringList{"left", "right"} : QStringList{own};
}

void InstrumentForm::addRow(const storage::RigChannel& channel)
{
    m_filling = true;
    const int row = m_table->rowCount();
    m_table->insertRow(row);
    const auto put = [&](int column, const QString& text) {
        m_table->setItem(row, column, new QTableWidgetItem(text));
    };
    put(sourceColumn, QString::fromStdString(channel.source));
    put(unitColumn, QString::fromStdString(channel.unit));
    put(factorColumn, m_units.fieldText(channel.factor, 9));
    put(offsetColumn, m_units.fieldText(channel.offset, 9));
    auto* box = new QComboBox;
    box->setEditable(true);
    box->setInsertPolicy(QComboBox::NoInsert);
    parts::nameField(*box, tr("What the channel is called here"));
    for (const char* ours : ourChannels())
        box->addItem(QString(ours));
    for (const QString& part : partsOffered(QString::fromStdString(channel.source)))
        box->addItems(channelsOfPart(part));
    box->setEditText(QString::fromStdString(channel.name));
    m_table->setCellWidget(row, nameColumn, box);
    connect(box, &QComboBox::editTextChanged, this, [this, box](const QString& name) {
        const std::string known = name.toStdString();
        const std::string_view unit = storage::channelUnit(known);
        for (int at = 0; at < m_table->rowCount(); ++at)
            if (nameBox(at) == box && !unit.empty())
                m_table->item(at, unitColumn)
                    ->setText(QString::fromUtf8(unit.data(), qsizetype(unit.size())));
        emit changed();
    });
    m_filling = false;
}

QComboBox* InstrumentForm::nameBox(int row) const
{
    return static_cast<QComboBox*>(m_table->cellWidget(row, nameColumn));
}

QString InstrumentForm::cell(int row, int column) const
{
    const QTableWidgetItem* item = m_table->item(row, column);
    return item ? item->text().trimmed() : QString();
}

storage::Instrument InstrumentForm::instrument() const
{
    storage::Instrument made;
    made.name = m_name->text().trimmed().toStdString();
    made.kind = static_cast<InstrumentKind>(m_kind->currentData().toInt());
    made.address = m_address->currentText().trimmed().toStdString();
    made.unit = m_unit->value();
    made.poll_s = m_poll->value();
    made.speed = m_speed->value();
    made.fuel = m_fuel->currentData().toString().toStdString();
    for (int row = 0; row < m_table->rowCount(); ++row) {
        storage::RigChannel channel;
        channel.source = cell(row, sourceColumn).toStdString();
        channel.name = nameBox(row)->currentText().trimmed().toStdString();
        channel.unit = cell(row, unitColumn).toStdString();
        const auto factor = UnitsShown::parseNumber(cell(row, factorColumn));
        const auto offset = UnitsShown::parseNumber(cell(row, offsetColumn));
        channel.factor = factor ? factor->value : 1.0;
        channel.offset = offset ? offset->value : 0.0;
        if (!channel.source.empty())
            made.channels.push_back(channel);
    }
    return made;
}

void InstrumentForm::addChannels(const std::vector<storage::RigChannel>& channels)
{
    for (const storage::RigChannel& channel : channels) {
        bool known = false;
        for (int row = 0; row < m_table->rowCount(); ++row)
            known = known || cell(row, sourceColumn).toStdString() == channel.source;
        if (!known)
            addRow(channel);
    }
    emit changed();
}

void InstrumentForm::setScale(const std::string& source, double factor, double offset)
{
    for (int row = 0; row < m_table->rowCount(); ++row)
        if (cell(row, sourceColumn).toStdString() == source) {
            m_table->item(row, factorColumn)->setText(m_units.fieldText(factor, 9));
            m_table->item(row, offsetColumn)->setText(m_units.fieldText(offset, 9));
        }
}

} // namespace bothways::app
