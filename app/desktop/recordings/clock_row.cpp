// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/clock_row.h"

#include "app/desktop/look/units_shown.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

#include <cstdlib>

namespace bothways::app {

ClockRow::ClockRow(QWidget* parent)
    : QWidget(parent),
      m_aheadLabel(new QLabel(tr("The recorder's clock is &fast by"), this)),
      m_ahead(new QDoubleSpinBox(this)),
      m_offset(new QComboBox(this))
{
    constexpr double kLargest_s = 90'000.0; // a day and an hour
    m_ahead->setObjectName("clockAhead");
    m_ahead->setRange(-kLargest_s, kLargest_s);
    m_ahead->setDecimals(1);
    m_ahead->setSuffix(tr(" s"));
    m_ahead->setKeyboardTracking(false);
    m_aheadLabel->setBuddy(m_ahead);
    m_offset->setObjectName("utcOffset");
    m_offset->addItem(tr("found out from the times"));
    constexpr int kFrom_min = -12 * 60, kTo_min = 14 * 60, kStep_min = 30;
    for (int offset = kFrom_min; offset <= kTo_min; offset += kStep_min)
        m_offset->addItem(QStringLiteral("UTC%1%2:%3")
                              .arg(offset < 0 ? QStringLiteral("−") : QStringLiteral("+"))
                              .arg(std::abs(offset) / 60)
                              .arg(std::abs(offset) % 60, 2, 10, QChar(u'0')),
                          offset);
    auto* offsetLabel = new QLabel(tr("&Local time is"), this);
    offsetLabel->setBuddy(m_offset);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(0, 0, 0, 0);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_aheadLabel, m_ahead})
        line->addWidget(widget);
    line->addSpacing(16);
    for (QWidget* widget : std::initializer_list<QWidget*>{offsetLabel, m_offset})
        line->addWidget(widget);
    addStart(*line);
    line->addStretch();
    connect(m_ahead, &QDoubleSpinBox::valueChanged, this, &ClockRow::changed);
    connect(m_offset, &QComboBox::currentIndexChanged, this, &ClockRow::changed);
}

void ClockRow::addStart(QHBoxLayout& line)
{
    m_startLabel = new QLabel(tr("Without a clock, it &began at"), this);
    m_start = new QLineEdit(this);
    m_start->setObjectName("clockStart");
    m_start->setPlaceholderText(QStringLiteral("05:40"));
    m_start->setToolTip(
        tr("When time 0 of the recording was: a time of day of the study's date, or "
           "date and time like 2026-05-09 05:40"));
    m_start->setMaximumWidth(fontMetrics().averageCharWidth() * 22);
    m_startLabel->setBuddy(m_start);
    line.addSpacing(16);
    line.addWidget(m_startLabel);
    line.addWidget(m_start);
    connect(m_start, &QLineEdit::editingFinished, this, &ClockRow::changed);
}

std::string ClockRow::start() const
{
    return UnitsShown::dateOfFiles(m_start->text());
}

void ClockRow::setHasClock(bool has)
{
    m_startLabel->setVisible(!has);
    m_start->setVisible(!has);
    m_aheadLabel->setVisible(has);
    m_ahead->setVisible(has);
}

core::ClockOptions ClockRow::options() const
{
    core::ClockOptions options;
    options.ahead_s = m_ahead->value();
    if (m_offset->currentIndex() > 0)
        options.utc_offset_min = m_offset->currentData().toInt();
    return options;
}

} // namespace bothways::app
