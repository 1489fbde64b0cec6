// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/gate_row.h"

#include "app/desktop/look/units_shown.h"

#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>

#include <algorithm>
#include <utility>

namespace bothways::app {
namespace {

constexpr int kDecimals = 6; // of a degree: a tenth of a metre
constexpr double kNarrowest_m = 1.0, kWidest_m = 1000.0;

} // namespace

GateRow::GateRow(QWidget* parent)
    : QWidget(parent),
      m_radius(new QDoubleSpinBox(this)),
      m_fromPart(new QPushButton(tr("Take both from the chosen &part"), this))
{
    setObjectName("gateRow");
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    addGate(*grid, 0, tr("&Start gate"), startLat);
    addGate(*grid, 1, tr("&End gate"), endLat);
    m_fields[startLat]->setObjectName("startLat");
    m_fields[startLon]->setObjectName("startLon");
    m_fields[endLat]->setObjectName("endLat");
    m_fields[endLon]->setObjectName("endLon");
    m_fields[startLat]->setAccessibleName(tr("Latitude of the start gate"));
    m_fields[startLon]->setAccessibleName(tr("Longitude of the start gate"));
    m_fields[endLat]->setAccessibleName(tr("Latitude of the end gate"));
    m_fields[endLon]->setAccessibleName(tr("Longitude of the end gate"));
    m_radius->setObjectName("gateRadius");
    m_radius->setRange(kNarrowest_m, kWidest_m);
    m_radius->setDecimals(0);
    m_radius->setSuffix(tr(" m"));
    m_radius->setKeyboardTracking(false);
    m_radius->setValue(core::Geofence{}.radius_m);
    auto* radiusLabel = new QLabel(tr("&Reach to each side"), this);
    radiusLabel->setBuddy(m_radius);
    m_fromPart->setObjectName("gatesFromPart");
    m_fromPart->setAutoDefault(false);
    m_fromPart->setToolTip(
        tr("The gates become the places where the part chosen in the list starts and ends"));
    grid->addWidget(radiusLabel, 0, 5);
    grid->addWidget(m_radius, 0, 6);
    grid->addWidget(m_fromPart, 1, 5, 1, 2);
    grid->setColumnStretch(7, 1);
    for (const Field lat : {startLat, endLat}) {
        connect(m_fields[lat], &QLineEdit::textChanged, this,
                [this, lat](const QString& text) { lookForPair(lat, text); });
        connect(m_fields[lat], &QLineEdit::editingFinished, this, [this, lat] { splitPair(lat); });
    }
    for (QLineEdit* field : m_fields)
        connect(field, &QLineEdit::editingFinished, this, &GateRow::look);
    connect(m_radius, &QDoubleSpinBox::valueChanged, this, &GateRow::look);
    connect(m_fromPart, &QPushButton::clicked, this, &GateRow::partWanted);
    m_told = texts();
}

void GateRow::addGate(QGridLayout& grid, int row, const QString& label, Field lat)
{
    auto* name = new QLabel(label, this);
    grid.addWidget(name, row, 0);
    for (const int which : {0, 1}) {
        auto* field = new QLineEdit(this);
        field->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("−000.000000 ")));
        m_fields[static_cast<std::size_t>(lat + which)] = field;
        grid.addWidget(new QLabel(which == 0 ? tr("latitude, °") : tr("longitude, °"), this), row,
                       1 + 2 * which);
        grid.addWidget(field, row, 2 + 2 * which);
    }
    name->setBuddy(m_fields[lat]);
}

/// What comes at once was pasted; what is typed is whole when somebody leaves the field.
void GateRow::lookForPair(Field lat, const QString& text)
{
    const QString before = std::exchange(m_before[lat], text);
    const bool isTyped = (text.size() == before.size() + 1 && text.startsWith(before)) ||
                         (text.size() + 1 == before.size() && before.startsWith(text));
    if (!isTyped)
        splitPair(lat);
}

/// A place that was copied elsewhere comes as two numbers with points.
void GateRow::splitPair(Field lat)
{
    static const QRegularExpression pair(
        QStringLiteral(R"(^\s*([-+−]?\d+\.\d+)\s*[,;\s]\s*([-+−]?\d+\.\d+)\s*$)"));
    const auto match = pair.match(m_fields[lat]->text());
    if (!match.hasMatch())
        return;
    m_fields[static_cast<std::size_t>(lat + 1)]->setText(match.captured(2));
    m_fields[lat]->setText(match.captured(1));
}

QStringList GateRow::texts() const
{
    QStringList all{QString::number(m_radius->value())};
    for (const QLineEdit* field : m_fields)
        all += field->text().trimmed();
    return all;
}

void GateRow::look()
{
    if (texts() == m_told)
        return;
    m_told = texts();
    emit changed();
}

void GateRow::hideParts()
{
    m_fromPart->hide();
}

void GateRow::setFence(const std::optional<core::Geofence>& fence)
{
    const QSignalBlocker quiet(this);
    const std::array<double, fields> values =
        fence ? std::array<double, fields>{fence->start_lat_deg, fence->start_lon_deg,
                                           fence->end_lat_deg, fence->end_lon_deg}
              : std::array<double, fields>{};
    for (std::size_t i = 0; i < fields; ++i)
        m_fields[i]->setText(fence ? QString::number(values[i], 'f', kDecimals) : QString());
    if (fence)
        m_radius->setValue(fence->radius_m);
    m_told = texts();
}

core::Result<core::Geofence> GateRow::fence()
{
    for (const Field lat : {startLat, endLat}) // somebody may be in it still
        splitPair(lat);
    const auto bad = [](core::Message sentence) {
        return core::Error{core::ErrorCode::badInput, std::move(sentence), {}};
    };
    if (std::all_of(m_fields.begin(), m_fields.end(),
                    [](const QLineEdit* field) { return field->text().trimmed().isEmpty(); }))
        return bad("type where the gates at the two ends of the stretch are"_t);
    core::Geofence fence;
    fence.radius_m = m_radius->value();
    double* const values[] = {&fence.start_lat_deg, &fence.start_lon_deg, &fence.end_lat_deg,
                              &fence.end_lon_deg};
    for (std::size_t i = 0; i < fields; ++i) {
        const auto typed = UnitsShown::parseNumber(m_fields[i]->text());
        if (!typed)
            return bad(core::message("{}: “{}” is no number; expected degrees like 47.5061, south "
                                     "and west with a minus"_t,
                                     m_fields[i]->accessibleName().toStdString(),
                                     m_fields[i]->text().toStdString()));
        *values[i] = typed->value;
    }
    if (const auto outcome = core::checkFence(fence); !outcome)
        return outcome.error();
    return fence;
}

void GateRow::setPartChosen(bool chosen)
{
    m_fromPart->setEnabled(chosen);
}

} // namespace bothways::app
