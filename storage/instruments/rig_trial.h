// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/rig_reader.h"

#include <optional>
#include <vector>

/// A rig that is read for a while to see what comes.
namespace bothways::storage {

struct TriedChannel {
    ReadChannel read;
    std::optional<double> value; ///< the latest, with factor and offset
    std::optional<double> age_s; ///< of the latest
    double rate_hz = 0.0;        ///< readings a second; 0: fewer than two
    std::int64_t readings = 0;
};

class RigTrial {
public:
    [[nodiscard]] static core::Result<RigTrial> start(const Rig& rig);
    /// Takes what came; to be called several times a second.
    void look();
    [[nodiscard]] std::vector<TriedChannel> channels() const;
    [[nodiscard]] std::vector<InstrumentState> states() const { return m_reader.states(); }
    [[nodiscard]] bool ended() const { return m_reader.ended(); }
    [[nodiscard]] double clock_s() const { return m_reader.clock_s(); }

private:
    struct Seen {
        std::int64_t readings = 0;
        double first_s = 0.0, last_s = 0.0, value = 0.0;
    };
    explicit RigTrial(RigReader reader) : m_reader(std::move(reader)) {}
    RigReader m_reader;
    std::vector<Seen> m_seen;
    std::vector<Reading> m_readings;
};

} // namespace bothways::storage
