// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/channel_mapping.h"

#include "storage/bytes/csv.h"

#include <fast_float/fast_float.h>
#include <fmt/format.h>

#include <cmath>

namespace bothways::storage {
namespace {

/// Takes a number off the front, with its sign.
std::optional<double> takeNumber(std::string_view& text)
{
    const std::string_view digits = text.starts_with('+') ? text.substr(1) : text;
    double value = 0.0;
    const auto [end, problem] =
        fast_float::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (problem != std::errc() || !std::isfinite(value))
        return std::nullopt;
    text = digits.substr(static_cast<std::size_t>(end - digits.data()));
    return value;
}

} // namespace

Result<ChannelMapping> parseMapping(std::string_view text)
{
    const core::Error wrong{core::ErrorCode::wrongUse,
                            core::message("'{}' is no mapping; expected COLUMN=CHANNEL, "
                                          "COLUMN=CHANNEL*FACTOR or COLUMN=CHANNEL*FACTOR+OFFSET"_t,
                                          text),
                            {}};
    const std::size_t equals = text.rfind('=');
    if (equals == std::string_view::npos || csv::trimmed(text.substr(0, equals)).empty())
        return wrong;
    ChannelMapping mapping;
    mapping.column = csv::trimmed(text.substr(0, equals));
    std::string_view rest = csv::trimmed(text.substr(equals + 1));
    const std::size_t times = rest.rfind('*');
    mapping.channel = csv::trimmed(rest.substr(0, times));
    if (times == std::string_view::npos)
        return mapping;
    rest = csv::trimmed(rest.substr(times + 1));
    const auto factor = takeNumber(rest);
    if (!factor || *factor == 0.0 || mapping.channel.empty())
        return wrong;
    mapping.factor = *factor;
    rest = csv::trimmed(rest);
    if (rest.empty())
        return mapping;
    if (!rest.starts_with('+') && !rest.starts_with('-'))
        return wrong;
    const auto offset = takeNumber(rest);
    if (!offset || !csv::trimmed(rest).empty())
        return wrong;
    mapping.offset = *offset;
    return mapping;
}

std::string formatMapping(const ChannelMapping& mapping)
{
    std::string text = mapping.column + '=' + mapping.channel;
    if (mapping.factor != 1.0 || mapping.offset != 0.0)
        text += fmt::format("*{}", mapping.factor);
    if (mapping.offset != 0.0)
        text += fmt::format("{:+}", mapping.offset);
    return text;
}

} // namespace bothways::storage
