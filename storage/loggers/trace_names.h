// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "storage/loggers/channel_mapping.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// What the words in a recording's header and cells mean.
namespace bothways::storage {

/// What a column of time holds, by its name.
enum class TimeName { none, seconds, milliseconds, microseconds, clock, date };
[[nodiscard]] TimeName timeName(std::string_view header, std::string_view unit);

/// Lower case, blanks as '_', what stands in brackets left out: "Road speed [km/h]" is road_speed.
[[nodiscard]] std::string plainName(std::string_view header);
/// "km/h" of "Road speed [km/h]"; empty where there is none.
[[nodiscard]] std::string bracketUnit(std::string_view header);
/// Unit of a channel of ours by its name: "km/h" of road_speed_kmh; empty where it is not ours.
[[nodiscard]] std::string_view channelUnit(std::string_view channel);
/// The mapping of a column; a name in the same case goes first. Null where there is none.
[[nodiscard]] const ChannelMapping* mappingOf(const std::vector<ChannelMapping>& mapping,
                                              std::string_view header);
[[nodiscard]] bool isNumber(std::string_view cell, bool decimalComma);

/// Bad input at a line of a recording; 0: of the file as such.
[[nodiscard]] core::Error faultAt(std::string_view name, std::int64_t line, core::Message message);

} // namespace bothways::storage
