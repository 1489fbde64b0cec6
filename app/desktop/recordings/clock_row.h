// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/cutting.h"

#include <QWidget>

class QComboBox;
class QDoubleSpinBox;

namespace bothways::app {

/// How a recorder's clock relates to the study's, in one line.
class ClockRow final : public QWidget {
    Q_OBJECT

public:
    explicit ClockRow(QWidget* parent = nullptr);
    [[nodiscard]] core::ClockOptions options() const;

signals:
    void changed();

private:
    QDoubleSpinBox* m_ahead;
    QComboBox* m_offset;
};

} // namespace bothways::app
