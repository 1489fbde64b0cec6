// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "storage/instruments/rig_reader.h"

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>

#include <deque>
#include <map>
#include <optional>
#include <vector>

class QLabel;
class QTableWidget;

namespace bothways::app {

/// A rig that is read without being recorded: each channel with its value, rate and age, and the
/// rules that read it; then what is lacking.
class RigTrial final : public QWidget {
    Q_OBJECT

public:
    // Plain enumeration: Qt speaks int.
    enum Column { channelColumn, valueColumn, rateColumn, ageColumn, rulesColumn, columns };

    explicit RigTrial(const UnitsShown& units, QWidget* parent = nullptr);
    ~RigTrial() override;

    [[nodiscard]] core::Outcome start(const storage::Rig& rig);
    void stop();
    [[nodiscard]] bool isRunning() const { return m_reader.has_value(); }
    /// The mean of the last second as it was read, without factor and offset.
    [[nodiscard]] std::optional<double> raw(std::uint32_t instrument,
                                            const std::string& source) const;
    [[nodiscard]] std::vector<storage::ReadChannel> channels() const;
    /// What the trial found lacking, in sentences.
    [[nodiscard]] QString words() const;

signals:
    void looked();

private:
    void look();
    void showChannels();
    void sayWhatIsLacking();

    struct Seen {
        std::deque<std::pair<double, double>> last; ///< time, raw value: of five seconds
    };
    UnitsShown m_units;
    std::optional<storage::RigReader> m_reader;
    storage::Rig m_rig;
    std::vector<storage::ReadChannel> m_channels;
    std::map<std::uint32_t, Seen> m_seen;
    QTimer m_looking;
    QTableWidget* m_table = nullptr;
    QLabel *m_instruments = nullptr, *m_lacking = nullptr;
};

} // namespace bothways::app
