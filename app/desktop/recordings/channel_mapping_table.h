// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "storage/loggers/channel_mapping.h"
#include "storage/loggers/trace_report.h"

#include <QTableWidget>

#include <vector>

class QComboBox;

namespace bothways::app {

/// A line a column of a recording: what stands in it, which channel it is to be, and in which unit
/// it was recorded. A unit that is not offered can be typed as factor and offset: "*0.5556-17.78".
class ChannelMappingTable final : public QTableWidget {
    Q_OBJECT

public:
    // Plain enumeration: Qt speaks int.
    enum Column { nameColumn, cellsColumn, channelColumn, unitColumn, columns };

    explicit ChannelMappingTable(QWidget* parent = nullptr);

    void setPreview(const storage::TracePreview& preview, const UnitsShown& units);
    /// As it is chosen now. An Error (badInput) where a unit cannot be read: which, and what was
    /// expected.
    [[nodiscard]] core::Result<std::vector<storage::ChannelMapping>> mapping() const;

signals:
    void changed();

private:
    [[nodiscard]] QComboBox* channelBox(int row) const;
    [[nodiscard]] QComboBox* unitBox(int row) const;
    [[nodiscard]] QStringList partsOffered(const QString& column) const;
    void addChannelBox(int row, const storage::ChannelMapping& mapping, const UnitsShown& units);
    void fillUnits(int row, double factor, double offset);

    std::vector<storage::ChannelMapping> m_given;
    QString m_decimalSign = QStringLiteral(".");
};

} // namespace bothways::app
