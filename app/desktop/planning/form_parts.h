// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QBoxLayout;
class QDoubleSpinBox;
class QFormLayout;
class QSpinBox;
class QWidget;

/// Fields of the planning pages: named for tests and screen readers, with unit and range.
namespace bothways::app::parts {

[[nodiscard]] QDoubleSpinBox* numberField(const QString& objectName, double low, double high,
                                          double value, int decimals, const QString& suffix = {});
[[nodiscard]] QSpinBox* countField(const QString& objectName, int low, int high, int value);
/// A row whose label is the field's accessible name too.
void addRow(QFormLayout& form, const QString& label, QWidget* field);
/// Fills the page with a form of fixed width and, beside it or where there is no room below it, the
/// answer; all of it scrolls.
void layOut(QWidget& page, QWidget* form, QBoxLayout* answer);

} // namespace bothways::app::parts
