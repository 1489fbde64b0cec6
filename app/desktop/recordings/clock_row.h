// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/cutting.h"

#include <QWidget>

#include <string>

class QComboBox;
class QDoubleSpinBox;
class QHBoxLayout;
class QLabel;
class QLineEdit;

namespace bothways::app {

/// How a recorder's clock relates to the study's, in one line.
class ClockRow final : public QWidget {
    Q_OBJECT

public:
    explicit ClockRow(QWidget* parent = nullptr);
    [[nodiscard]] core::ClockOptions options() const;
    /// What was typed as the beginning of a recording without a clock; empty: nothing.
    [[nodiscard]] std::string start() const;
    /// Once it is known whether the recording has a clock: only then can it be wrong, only without
    /// one can a beginning be missing.
    void setHasClock(bool has);

signals:
    void changed();

private:
    void addStart(QHBoxLayout& line);

    QLabel *m_aheadLabel, *m_startLabel = nullptr;
    QDoubleSpinBox* m_ahead;
    QLineEdit* m_start = nullptr;
    QComboBox* m_offset;
};

} // namespace bothways::app
