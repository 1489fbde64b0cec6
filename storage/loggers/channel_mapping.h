// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace bothways::storage {

using core::Outcome;
using core::Result;

/// Where a logger's column goes. Kept by the logger's header, and offered again.
struct ChannelMapping {
    std::string column; ///< as in the header
    /// Our name, or the column's own; empty: left out. "time_s", "time", "date" and "mark" say
    /// that the column is no channel but the time (in seconds; by a clock), its date, or words.
    std::string channel;
    double factor = 1.0; ///< value = cell * factor + offset (units)
    double offset = 0.0;
    friend bool operator==(const ChannelMapping&, const ChannelMapping&) = default;
};

/// "Speed [mph]=road_speed_kmh*1.609344", "T=temperature_c*0.5556-17.78", "Lap=": a mapping as
/// text.
[[nodiscard]] Result<ChannelMapping> parseMapping(std::string_view text);
[[nodiscard]] std::string formatMapping(const ChannelMapping& mapping);

} // namespace bothways::storage
