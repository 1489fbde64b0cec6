// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/recording/cutting.h"

#include <QWidget>

#include <array>
#include <optional>

class QDoubleSpinBox;
class QGridLayout;
class QLineEdit;
class QPushButton;

namespace bothways::app {

/// Where the two gates of a stretch are, to be typed or taken from a part of the recording. A pair
/// "47.5061, 9.4213" that is pasted into a latitude fills both fields.
class GateRow final : public QWidget {
    Q_OBJECT

public:
    explicit GateRow(QWidget* parent = nullptr);

    /// Fills the fields in without a word to anybody; nothing: empties them.
    void setFence(const std::optional<core::Geofence>& fence);
    /// As typed; an Error says in the user's language which field is no place.
    [[nodiscard]] core::Result<core::Geofence> fence();
    void hideParts();                ///< there is no list to take an end from
    void setPartChosen(bool chosen); ///< there is a part whose ends could be taken

signals:
    void changed();    ///< the fields say something else, and nobody is typing any more
    void partWanted(); ///< the gates are to be at the ends of the chosen part

private:
    enum Field { startLat, startLon, endLat, endLon, fields };
    void addGate(QGridLayout& grid, int row, const QString& label, Field lat);
    void lookForPair(Field lat, const QString& text);
    void splitPair(Field lat);
    void look();
    [[nodiscard]] QStringList texts() const;

    std::array<QLineEdit*, fields> m_fields{};
    QDoubleSpinBox* m_radius;
    QPushButton* m_fromPart;
    std::array<QString, fields> m_before; ///< the texts, a key ago
    QStringList m_told;                   ///< texts that were told of last
};

} // namespace bothways::app
