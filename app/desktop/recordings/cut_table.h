// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "app/desktop/recordings/cut_plot.h"
#include "core/recording/cutting.h"

#include <QTableWidget>

#include <optional>
#include <vector>

class QComboBox;
class QDoubleSpinBox;

namespace bothways::app {

/// The parts of a recording, a line each: whether it is to be a run, from when to when, in which
/// direction, and what becomes of it.
class CutTable final : public QTableWidget {
    Q_OBJECT

public:
    // Plain enumeration: Qt speaks int.
    enum Column {
        wantedColumn,
        fromColumn,
        toColumn,
        lengthColumn,
        directionColumn,
        becomesColumn,
        columns
    };
    /// A part that somebody wants, as it stands in its line.
    struct Part {
        core::CutProposal proposal;
        bool moved = false; ///< somebody put its ends elsewhere than proposed
        QString direction;
        QString configuration;               ///< of a new run
        std::optional<core::RunId> existing; ///< that gets the part instead
    };

    explicit CutTable(QWidget* parent = nullptr);

    /// @param byTimes  where the study's runs lie in the recording
    void setParts(std::vector<core::CutProposal> parts, const core::Study& study,
                  const std::vector<core::CutProposal>& byTimes, const UnitsShown& units);
    void setTimes(int row, double from_s, double to_s);
    [[nodiscard]] std::vector<Part> wantedParts() const;
    [[nodiscard]] std::vector<CutBand> bands() const;
    /// Of the line that is chosen, as it stands there; nothing where none is.
    [[nodiscard]] std::optional<core::CutProposal> chosenPart() const;

signals:
    void changed();

private:
    void addRow(int row, const core::Study& study, std::optional<int> run);
    QDoubleSpinBox* addTime(int row, int column, double value_s);
    void addBecomes(int row, const core::Study& study, std::optional<int> run);
    void chooseFrom(int row);
    void sayLength(int row);
    [[nodiscard]] QDoubleSpinBox* time(int row, int column) const;
    [[nodiscard]] QComboBox* choice(int row, int column) const;

    std::vector<core::CutProposal> m_parts;
    UnitsShown m_units;
    bool m_filling = false;
};

} // namespace bothways::app
