// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/device_rows.h"

#include "app/wording/numbers.h"
#include "app/wording/units.h"

#include <algorithm>

namespace bothways::app {

DeviceRows deviceRows(const Language& in, const core::Analysis& analysis,
                      const core::Screening& screening)
{
    const bool parts = std::any_of(screening.device.begin(), screening.device.end(),
                                   [](const auto& one) { return !one.part.empty(); });
    if (analysis.companions.settings.empty() && !parts)
        return {};
    const std::string rpm = wording::signText(in, "rpm");
    DeviceRows table;
    table.head = {in.say("configuration"_t),
                  in.say("setting"_t),
                  in.say("part##of the device"_t),
                  in.say("runs"_t),
                  in.say("mean output, W"_t),
                  in.say("highest output, W"_t),
                  in.say("mean rotor speed, {}"_t, rpm),
                  in.say("highest rotor speed, {}"_t, rpm)};
    const auto cell = [&](const std::optional<double>& value) {
        return value ? grouped(in, *value) : std::string("\u2013");
    };
    for (const core::SettingFigures& its : screening.device)
        table.rows.push_back({its.configuration,
                              its.setting.empty() ? in.say("(none noted)"_t) : its.setting,
                              its.part.empty() ? in.say("all##parts of the device"_t) : its.part,
                              std::to_string(its.runs), cell(its.figures.mean_output_w),
                              cell(its.figures.highest_output_w), cell(its.figures.mean_rotor_rpm),
                              cell(its.figures.highest_rotor_rpm)});
    return table;
}

} // namespace bothways::app
