// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/live/weather.h"
#include "core/study/study.h"

#include <QByteArray>
#include <QString>

#include <map>
#include <optional>
#include <string>

namespace bothways::app {

/// A run that is being driven, or whose number is being typed.
struct RoadsideRun {
    std::string configuration, setting, direction;
    core::Instant start;
    std::int64_t start_ms = 0;          ///< since 1970, UTC; by the session's own clock
    std::optional<std::int64_t> end_ms; ///< empty: under way
    std::vector<core::Mark> marks;
    QString typed; ///< consumption, as it stands on the number pad
    core::ConsumptionUnit unit = core::ConsumptionUnit::lPer100km;
    bool without_duration = false; ///< the end was not pressed in time: not to be written
    friend bool operator==(const RoadsideRun&, const RoadsideRun&) = default;
};

/// What has to outlive a crash or a closed lid.
struct RoadsideDraft {
    std::optional<RoadsideRun> run;
    std::map<std::string, std::int64_t> accessory_on_ms; ///< timed accessory's name -> when
    Weather weather;           ///< of the block, for the run that is driven next
    std::int64_t seen_ms = 0;  ///< the latest moment that was seen
    std::int64_t shift_ms = 0; ///< added to the clock, since it was set back
    friend bool operator==(const RoadsideDraft&, const RoadsideDraft&) = default;
};

/// JSON; empty where there is nothing to keep.
[[nodiscard]] QByteArray toBytes(const RoadsideDraft& draft);
/// Nothing where the bytes are no draft, or one that cannot be: it is then as if there were none.
[[nodiscard]] std::optional<RoadsideDraft> draftFrom(const QByteArray& bytes);

} // namespace bothways::app
