// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/calibration_dialog.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/said.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>

namespace bothways::app {
namespace {

constexpr double kNoise = 1e-6; // of the larger reading: a mean that moved less did not move

bool hasMoved(double before, double now)
{
    return std::abs(now - before) > kNoise * std::max(std::abs(before), std::abs(now));
}

} // namespace

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
        emit calibrated(m_found->factor, m_found->offset);
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
    point.taken = {*now, typed->value};
    point.words->setText(tr("read %1").arg(m_units.fieldText(*now, 4)));
    follow();
}

void CalibrationDialog::follow()
{
    m_found.reset();
    m_result->clear();
    const auto& first = m_points[0].taken;
    const auto& second = m_points[1].taken;
    if (first && second && !hasMoved(first->shown, second->shown)) {
        m_result->setText(tr("The two points are too near to one another."));
    } else if (first && second) {
        const auto found = storage::calibrated(*first, *second);
        if (found)
            m_found = found.value();
        m_result->setText(found ? tr("Factor %1, offset %2.")
                                      .arg(m_units.fieldText(m_found->factor, 6),
                                           m_units.fieldText(m_found->offset, 6))
                                : sentenceOf(m_units.language, found.error()));
    }
    m_use->setEnabled(m_found.has_value());
    m_result->setVisible(!m_result->text().isEmpty());
}

} // namespace bothways::app
