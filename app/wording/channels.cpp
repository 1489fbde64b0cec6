// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/channels.h"

#include "core/study/parts.h"
#include "core/study/units.h"
#include "storage/sheet/run_columns.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace bothways::app::wording {
namespace {

std::optional<core::Text<0>> wordsOf(std::string_view base)
{
    struct Named {
        std::string_view channel;
        core::Text<0> words;
    };
    static constexpr Named kNames[] = {{"road_speed_kmh", "road speed##a channel"_t},
                                       {"wind_ms", "wind"_t},
                                       {"distance_m", "distance"_t},
                                       {"output_w", "output"_t},
                                       {"rotor_rpm", "rotor speed"_t},
                                       {"generator_rpm", "generator speed"_t},
                                       {"accessory_w", "accessory load"_t},
                                       {"setting", "setting"_t},
                                       {"setting_set", "setting as set"_t},
                                       {"fuel_rate_l_per_h", "fuel rate"_t},
                                       {"fuel_used_l", "fuel used"_t},
                                       {"energy_used_kwh", "energy used"_t},
                                       {"power_kw", "power"_t},
                                       {"yaw_deg_per_s", "yaw rate"_t},
                                       {"vibration_ms2", "vibration##a channel"_t},
                                       {"battery_v", "battery"_t},
                                       {"lat_deg", "latitude"_t},
                                       {"lon_deg", "longitude"_t}};
    const auto* const its = std::ranges::find(kNames, base, &Named::channel);
    return its == std::end(kNames) ? std::nullopt : std::optional(its->words);
}

} // namespace

std::string withCapital(std::string name)
{
    if (!name.empty() && name.front() >= 'a' && name.front() <= 'z')
        name.front() = static_cast<char>(name.front() - 'a' + 'A');
    return name;
}

std::string channelBaseName(const Language& in, std::string_view channel)
{
    const core::PartedName parted = core::partedName(channel);
    const auto words = wordsOf(parted.base);
    return words ? in.say(*words) : std::string(parted.base);
}

std::string channelName(const Language& in, std::string_view channel)
{
    const core::PartedName parted = core::partedName(channel);
    if (!wordsOf(parted.base))
        return std::string(channel);
    const std::string name = channelBaseName(in, channel);
    return parted.part.empty() ? name : in.say("{} ({})"_t, name, std::string(parted.part));
}

std::string columnName(const Language& in, std::string_view column)
{
    if (column == "cold_start") // a property of the study
        return in.say("cold start"_t);
    if (const std::string_view accessory = storage::timedAccessoryOf(column); !accessory.empty())
        return std::string(accessory);
    const bool isConsumption = core::unitFromName(column).has_value();
    if (const auto* words = storage::columnWords(isConsumption ? "consumption" : column))
        return in.say(words->name);
    std::string words(column);
    std::ranges::replace(words, '_', ' ');
    return words;
}

} // namespace bothways::app::wording
