// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/planning/form_parts.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/turning_layout.h"

#include <QBoxLayout>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QScrollArea>
#include <QSpinBox>

namespace bothways::app::parts {
namespace {

constexpr int kAnswerWidth = 460; ///< px; where it has less beside the form, it goes below

} // namespace

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
    parts::nameField(*field, label);
    form.addRow(label, field);
}

void layOut(QWidget& page, QWidget* form, QBoxLayout* answer)
{
    auto* both = new TurningLayout(form->maximumWidth() + kAnswerWidth);
    both->setSpacing(24);
    // In a row of its own the form is asked how high it is at the width that it will have: alone it
    // would be asked for all of the width, of which it takes a part, and be given too little
    // height.
    auto* place = new QHBoxLayout;
    place->addWidget(form, 1);
    place->addStretch();
    both->addLayout(place);
    both->addLayout(answer, 1);
    auto* column = new QVBoxLayout;
    column->addLayout(both);
    column->addStretch();
    auto* whole = new QVBoxLayout(&page);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scrolled(column));
}

} // namespace bothways::app::parts
