// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/channel_mapping_table.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/plots/trace_channels.h"
#include "core/study/parts.h"
#include "core/study/units.h"

#include <QComboBox>
#include <QHeaderView>

#include <cmath>
#include <map>

namespace bothways::app {
namespace {

constexpr int kCellsShown = 3;

/// What a recorder may write a channel in, and how it becomes ours.
struct RecordedUnit {
    const char* text;
    double factor;
    double offset = 0.0;
};

constexpr double kKnotInKmh = 1.852; // by definition of the nautical mile
constexpr double kGravity = 9.80665; // standard acceleration, by definition
constexpr double kDegPerRad = 57.29577951308232;

/// All factors are computed from definitions that are exact.
const std::vector<RecordedUnit>& unitsOf(const std::string& channel)
{
    static const std::vector<RecordedUnit> none;
    static const std::map<std::string, std::vector<RecordedUnit>> units = {
        {"time_s", {{"s", 1.0}, {"ms", 0.001}, {"min", 60.0}}},
        {"road_speed_kmh",
         {{"km/h", 1.0}, {"mph", core::kKmPerMile}, {"m/s", 3.6}, {"kn", kKnotInKmh}}},
        {"distance_m", {{"m", 1.0}, {"km", 1000.0}, {"mi", 1000.0 * core::kKmPerMile}}},
        {"fuel_rate_l_per_h",
         {{"L/h", 1.0}, {"gal/h (US)", core::kLitresPerUsGallon}, {"mL/s", 3.6}}},
        {"fuel_used_l", {{"L", 1.0}, {"mL", 0.001}, {"gal (US)", core::kLitresPerUsGallon}}},
        {"energy_used_kwh", {{"kWh", 1.0}, {"Wh", 0.001}}},
        {"power_kw", {{"kW", 1.0}, {"W", 0.001}}},
        {"accessory_w", {{"W", 1.0}, {"kW", 1000.0}}},
        {"output_w", {{"W", 1.0}, {"kW", 1000.0}}},
        {"rotor_rpm", {{"rpm", 1.0}, {"1/s", 60.0}}},
        {"generator_rpm", {{"rpm", 1.0}, {"1/s", 60.0}}},
        {"vibration_ms2", {{"m/s²", 1.0}, {"g", kGravity}}},
        {"wind_ms",
         {{"m/s", 1.0},
          {"km/h", 1.0 / 3.6},
          {"mph", core::kKmPerMile / 3.6},
          {"kn", kKnotInKmh / 3.6}}},
        {"yaw_deg_per_s", {{"°/s", 1.0}, {"rad/s", kDegPerRad}}},
        {"battery_v", {{"V", 1.0}, {"mV", 0.001}}},
        {"lat_deg", {{"°", 1.0}}},
        {"lon_deg", {{"°", 1.0}}},
        {"setting", {{"°", 1.0}}},
        {"setting_set", {{"°", 1.0}}},
    };
    const auto found = units.find(std::string(core::partedName(channel).base));
    return found == units.end() ? none : found->second;
}

core::Error unknownUnit(const std::string& column, const QString& typed)
{
    core::Place where;
    where.column = column;
    return {core::ErrorCode::badInput,
            core::message("'{}' is no unit that is known here; expected one of the list, or a "
                          "factor and an offset such as *0.5556-17.78"_t,
                          typed.toStdString()),
            where};
}

/// "*0.5556-17.78", as parseMapping() reads it back.
QString scaleText(double factor, double offset)
{
    const std::string whole = storage::formatMapping({"x", "y", factor, offset});
    return QString::fromStdString(whole.substr(whole.find('=') + 2));
}

bool isTime(const std::string& channel)
{
    return channel == "time" || channel == "date" || channel == "mark";
}

} // namespace

ChannelMappingTable::ChannelMappingTable(QWidget* parent) : QTableWidget(0, columns, parent)
{
    parts::dress(*this, "channelMapping", tr("What the columns are"));
    setHorizontalHeaderLabels({tr("Column"), tr("First cells"), tr("is"), tr("recorded in")});
    setSelectionMode(QAbstractItemView::NoSelection);
    setWordWrap(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(cellsColumn, QHeaderView::Stretch);
}

QComboBox* ChannelMappingTable::channelBox(int row) const
{
    return static_cast<QComboBox*>(cellWidget(row, channelColumn));
}

QComboBox* ChannelMappingTable::unitBox(int row) const
{
    return static_cast<QComboBox*>(cellWidget(row, unitColumn));
}

void ChannelMappingTable::setPreview(const storage::TracePreview& preview, const UnitsShown& units)
{
    m_given = preview.mapping;
    m_decimalSign = units.locale.decimalPoint();
    setRowCount(static_cast<int>(m_given.size()));
    for (int row = 0; row < rowCount(); ++row) {
        const auto column = static_cast<std::size_t>(row);
        QStringList cells;
        for (const auto& line : preview.rows)
            if (column < line.size() && cells.size() < kCellsShown)
                cells += QString::fromStdString(line[column]);
        setItem(row, nameColumn,
                new QTableWidgetItem(QString::fromStdString(m_given[column].column)));
        setItem(row, cellsColumn, new QTableWidgetItem(cells.join(QStringLiteral("   "))));
        addChannelBox(row, m_given[column], units);
    }
    resizeRowsToContents();
}

/// That which the column names; else those that other columns do.
QStringList ChannelMappingTable::partsOffered(const QString& column) const
{
    if (const QString own = partNamedIn(column); !own.isEmpty())
        return {own};
    QStringList parts;
    for (const storage::ChannelMapping& other : m_given)
        for (const std::string& name : {other.column, other.channel})
            if (const QString part = partNamedIn(QString::fromStdString(name));
                !part.isEmpty() && !parts.contains(part))
                parts += part;
    return parts;
}

void ChannelMappingTable::addChannelBox(int row, const storage::ChannelMapping& mapping,
                                        const UnitsShown& units)
{
    auto* box = new QComboBox;
    box->setAccessibleName(tr("What the column %1 is").arg(QString::fromStdString(mapping.column)));
    box->addItem(tr("left out"), QString());
    box->addItem(tr("time in seconds"), "time_s");
    box->addItem(tr("time by the clock"), "time");
    box->addItem(tr("date of the time"), "date");
    box->addItem(tr("marks, in words"), "mark");
    box->insertSeparator(box->count());
    UnitsShown metric = units; // the name alone; the unit is chosen beside it
    metric.distance = DistanceUnit::km;
    for (const char* channel : ourChannels())
        box->addItem(channelShown(channel, {}, metric).label, QString(channel));
    const QString own = QString::fromStdString(mapping.column);
    const QString given = QString::fromStdString(mapping.channel);
    for (const QString& part : partsOffered(own)) {
        box->insertSeparator(box->count());
        for (const QString& channel : channelsOfPart(part))
            box->addItem(channelShown(channel.toStdString(), {}, metric).label, channel);
    }
    box->insertSeparator(box->count());
    for (const QString& name : {own, given})
        if (!name.isEmpty() && box->findData(name) < 0)
            box->addItem(tr("itself: %1").arg(name), name);
    box->setCurrentIndex(std::max(0, box->findData(given)));
    setCellWidget(row, channelColumn, box);
    auto* unit = new QComboBox;
    unit->setEditable(true);
    parts::nameField(*unit, tr("Unit of the column %1").arg(own));
    unit->setToolTip(tr("A unit, or factor and offset to ours: *0.5556-17.78"));
    setCellWidget(row, unitColumn, unit);
    fillUnits(row, mapping.factor, mapping.offset);
    connect(box, &QComboBox::currentIndexChanged, this, [this, row] {
        fillUnits(row, 1.0, 0.0);
        emit changed();
    });
    connect(unit, &QComboBox::editTextChanged, this, &ChannelMappingTable::changed);
}

void ChannelMappingTable::fillUnits(int row, double factor, double offset)
{
    QComboBox* box = unitBox(row);
    const std::string channel = channelBox(row)->currentData().toString().toStdString();
    const QSignalBlocker quiet(box);
    box->clear();
    int chosen = -1;
    for (const RecordedUnit& unit : unitsOf(channel)) {
        if (std::abs(unit.factor - factor) <= 1e-9 * std::abs(factor) && unit.offset == offset)
            chosen = box->count();
        box->addItem(QString::fromUtf8(unit.text));
    }
    const bool plain = factor == 1.0 && offset == 0.0;
    if (chosen < 0 && (box->count() == 0 || !plain)) {
        chosen = box->count();
        box->addItem(plain ? QString() : scaleText(factor, offset).replace(u'.', m_decimalSign));
    }
    box->setCurrentIndex(chosen);
    box->setEnabled(!channel.empty() && !isTime(channel));
}

core::Result<std::vector<storage::ChannelMapping>> ChannelMappingTable::mapping() const
{
    std::vector<storage::ChannelMapping> mapping;
    for (int row = 0; row < rowCount(); ++row) {
        storage::ChannelMapping one;
        one.column = m_given[static_cast<std::size_t>(row)].column;
        one.channel = channelBox(row)->currentData().toString().toStdString();
        QString text = unitBox(row)->currentText().trimmed();
        bool known = text.isEmpty() || !unitBox(row)->isEnabled();
        for (const RecordedUnit& unit : unitsOf(one.channel))
            if (text == QString::fromUtf8(unit.text)) {
                one.factor = unit.factor;
                one.offset = unit.offset;
                known = true;
            }
        if (!known) {
            if (!text.startsWith(u'*') && !text.startsWith(u'+') && !text.startsWith(u'-'))
                text.prepend(u'*');
            const auto typed =
                storage::parseMapping("x=y" + text.replace(u',', u'.').toStdString());
            if (!typed || typed.value().channel != "y")
                return unknownUnit(one.column, unitBox(row)->currentText());
            one.factor = typed.value().factor;
            one.offset = typed.value().offset;
        }
        mapping.push_back(std::move(one));
    }
    return mapping;
}

} // namespace bothways::app
