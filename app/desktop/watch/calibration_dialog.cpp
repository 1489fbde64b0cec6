// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/calibration_dialog.h"

#include "app/desktop/look/page_parts.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>

namespace bothways::app {
namespace {

constexpr double kTooNear = 1e-6; // of the larger reading: noise, not a second point

} // namespace

std::optional<Scale> scaleThrough(double read1, double true1, double read2, double true2)
{
    const double apart = read2 - read1;
    if (std::abs(apart) <= kTooNear * std::max(std::abs(read1), std::abs(read2)) || true1 == true2)
        return std::nullopt;
    const double factor = (true2 - true1) / apart;
    return Scale{factor, true1 - factor * read1};
}

CalibrationDialog::CalibrationDialog(const QString& channel, Read read, const UnitsShown& units,
                                     QWidget* parent)
    : QDialog(parent), m_read(std::move(read)), m_units(units)
{
    setObjectName("calibrationDialog");
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Calibrate %1").arg(channel));
    auto* box = new QVBoxLayout(this);
    auto* words = parts::sentence("calibrationWords");
    words->setText(tr("Let the true meter and the instrument stand still at a low value, type what "
                      "the meter shows, press Take. Then once more at a high value."));
    box->addWidget(words);
    m_now = parts::sentence("calibrationNow");
    box->addWidget(m_now);
    auto* grid = new QGridLayout;
    for (int i = 0; i < 2; ++i) {
        Point& point = m_points[i];
        const QString name =
            i == 0 ? tr("The meter shows, &first") : tr("The meter shows, &second");
        auto* label = new QLabel(name, this);
        point.typed = new QLineEdit(this);
        point.typed->setObjectName(QString("meter%1").arg(i + 1));
        point.typed->setAccessibleName(QString(name).remove(u'&'));
        label->setBuddy(point.typed);
        point.take = new QPushButton(i == 0 ? tr("&Take") : tr("T&ake"), this);
        point.take->setObjectName(QString("take%1").arg(i + 1));
        point.take->setAutoDefault(false);
        point.words = new QLabel(this);
        point.words->setObjectName(QString("taken%1").arg(i + 1));
        grid->addWidget(label, i, 0);
        grid->addWidget(point.typed, i, 1);
        grid->addWidget(point.take, i, 2);
        grid->addWidget(point.words, i, 3);
        connect(point.take, &QPushButton::clicked, this, [this, i] { takePoint(m_points[i]); });
        connect(point.typed, &QLineEdit::returnPressed, this,
                [this, i] { takePoint(m_points[i]); });
    }
    grid->setColumnStretch(3, 1);
    box->addLayout(grid);
    m_result = parts::sentence("calibrationResult");
    box->addWidget(m_result);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    m_use = buttons->addButton(tr("&Use it"), QDialogButtonBox::AcceptRole);
    m_use->setObjectName("useCalibration");
    m_use->setAutoDefault(false);
    box->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_use, &QPushButton::clicked, this, [this] {
        emit calibrated(m_scale->factor, m_scale->offset);
        accept();
    });
    look();
    follow();
}

void CalibrationDialog::look()
{
    const auto now = m_read();
    m_now->setText(now ? tr("The instrument reads %1.").arg(m_units.fieldText(*now, 4))
                       : tr("The instrument reads nothing."));
}

void CalibrationDialog::takePoint(Point& point)
{
    const auto typed = UnitsShown::parseNumber(point.typed->text());
    const auto now = m_read();
    if (!typed || !now) {
        point.words->setText(typed ? tr("nothing is read") : tr("a number is expected"));
        return;
    }
    point.meter = typed->value;
    point.read = *now;
    point.words->setText(tr("read %1").arg(m_units.fieldText(*now, 4)));
    follow();
}

void CalibrationDialog::follow()
{
    m_scale.reset();
    const Point& a = m_points[0];
    const Point& b = m_points[1];
    const bool both = a.read && b.read;
    if (both)
        m_scale = scaleThrough(*a.read, *a.meter, *b.read, *b.meter);
    m_use->setEnabled(m_scale.has_value());
    if (m_scale)
        m_result->setText(
            tr("Factor %1, offset %2.")
                .arg(m_units.fieldText(m_scale->factor, 6), m_units.fieldText(m_scale->offset, 6)));
    else
        m_result->setText(both ? tr("The two points are too near to one another.") : QString());
    m_result->setVisible(!m_result->text().isEmpty());
}

} // namespace bothways::app
