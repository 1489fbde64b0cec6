// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "storage/instruments/rig.h"

#include <QWidget>

class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLineEdit;
class QSpinBox;
class QTableWidget;

namespace bothways::app {

/// What one instrument is: its kind, where it is, and what its channels are called here.
class InstrumentForm final : public QWidget {
    Q_OBJECT

public:
    // Plain enumeration: Qt speaks int.
    enum Column { sourceColumn, nameColumn, unitColumn, factorColumn, offsetColumn, columns };

    explicit InstrumentForm(const UnitsShown& units, QWidget* parent = nullptr);
    void setInstrument(const storage::Instrument& instrument);
    [[nodiscard]] storage::Instrument instrument() const;
    /// Channels that a trial has seen, for an instrument whose list is empty.
    void addChannels(const std::vector<storage::RigChannel>& channels);
    void setScale(const std::string& source, double factor, double offset);
    [[nodiscard]] static QString kindText(storage::InstrumentKind kind);

signals:
    void changed();

private:
    void buildFields();
    void buildTable();
    void followKind();
    [[nodiscard]] static QStringList partsOffered(const QString& source);
    void addRow(const storage::RigChannel& channel);
    [[nodiscard]] QString cell(int row, int column) const;
    [[nodiscard]] QComboBox* nameBox(int row) const;

    UnitsShown m_units;
    QFormLayout* m_form = nullptr;
    QLineEdit* m_name = nullptr;
    QComboBox *m_kind = nullptr, *m_address = nullptr, *m_fuel = nullptr;
    QSpinBox* m_unit = nullptr;
    QDoubleSpinBox *m_poll = nullptr, *m_speed = nullptr;
    QTableWidget* m_table = nullptr;
    bool m_filling = false;
};

} // namespace bothways::app
