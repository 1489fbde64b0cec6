// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/live/live_session.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace bothways::app {

/// What the window asks of a recording that is being made: so much of LiveSession, which it is in
/// the program. Tests have one that they lead themselves.
class LiveSource {
public:
    virtual ~LiveSource() = default;
    [[nodiscard]] virtual LiveSnapshot snapshot() const = 0;
    [[nodiscard]] virtual double clock_s() const = 0;
    [[nodiscard]] virtual core::Instant first() const = 0; ///< of time 0
    virtual void begin(const core::RunUnderWay& run) = 0;
    virtual void mark(double at_s, const std::string& word, const std::string& words) = 0;
    virtual void end(double at_s) = 0;
    virtual void forget() = 0;
    /// Where runs begin and end by what is recorded, since the last call.
    [[nodiscard]] virtual std::vector<core::FoundBound> takeFound() { return {}; }
    virtual void setStudy(core::Study study) = 0;
    /// In the study, from the first sample on.
    [[nodiscard]] virtual std::optional<core::RecordingId> recording() const = 0;
    /// Packs what was recorded; takes its time.
    [[nodiscard]] virtual core::Outcome stop() = 0;
};

using LiveStarter = std::function<core::Result<std::unique_ptr<LiveSource>>(
    storage::StudyFile connection, const storage::Rig& rig, const core::Instant& first,
    const std::string& name)>;

} // namespace bothways::app
