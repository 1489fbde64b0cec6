// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/planning/form_parts.h"

#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QSpinBox>

namespace bothways::app::parts {

QDoubleSpinBox* numberField(const QString& objectName, double low, double high, double value,
                            int decimals, const QString& suffix)
{
    auto* field = new QDoubleSpinBox;
    field->setObjectName(objectName);
    field->setDecimals(decimals);
    field->setRange(low, high);
    field->setValue(value);
    field->setSuffix(suffix);
    field->setKeyboardTracking(false);
    return field;
}

QSpinBox* countField(const QString& objectName, int low, int high, int value)
{
    auto* field = new QSpinBox;
    field->setObjectName(objectName);
    field->setRange(low, high);
    field->setValue(value);
    field->setKeyboardTracking(false);
    return field;
}

void addRow(QFormLayout& form, const QString& label, QWidget* field)
{
    field->setAccessibleName(label);
    form.addRow(label, field);
}

} // namespace bothways::app::parts
