// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "storage/instruments/calibration.h"

#include <QDialog>

#include <functional>
#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace bothways::app {

/// What a true meter shows, typed twice while the instrument is read, gives factor and offset.
class CalibrationDialog final : public QDialog {
    Q_OBJECT

public:
    using Read = std::function<std::optional<double>()>;
    /// @param read  the instrument's number now, without factor and offset
    CalibrationDialog(const QString& channel, Read read, const UnitsShown& units,
                      QWidget* parent = nullptr);
    void look(); ///< the instrument has been read

signals:
    void calibrated(double factor, double offset);

private:
    struct Point {
        QLineEdit* typed = nullptr;
        QPushButton* take = nullptr;
        QLabel* words = nullptr;
        std::optional<storage::CalibrationPoint> taken;
    };
    void takePoint(Point& point);
    void follow();

    Read m_read;
    UnitsShown m_units;
    Point m_points[2];
    QLabel *m_now = nullptr, *m_result = nullptr;
    QPushButton* m_use = nullptr;
    std::optional<storage::Calibration> m_found;
};

} // namespace bothways::app
