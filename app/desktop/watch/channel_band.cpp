// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/channel_band.h"

#include "core/study/limits.h"
#include "core/study/parts.h"
#include "core/watching/watcher.h"

#include <cmath>

namespace bothways::app {
namespace {

std::optional<double> limitFor(const core::Study& study, std::string_view name,
                               std::string_view part = {})
{
    return core::limitOf(study.properties.limits, core::limitOfPart(name, part));
}

} // namespace

ChannelBand::Place ChannelBand::of(std::optional<double> value) const
{
    if (!value || !std::isfinite(*value))
        return Place::unknown;
    if ((low && *value < *low) || (high && *value > *high))
        return Place::outside;
    if ((low_near && *value < *low_near) || (high_near && *value > *high_near))
        return Place::near;
    return Place::inside;
}

ChannelBand bandOf(const core::Study& study, std::string_view channel)
{
    const core::PartedName name = core::partedName(channel);
    ChannelBand band;
    if (name.base == "rotor_rpm" || name.base == "generator_rpm") {
        band.high = limitFor(study, "overspeed.rpm", name.part);
        if (band.high) // where the watcher warns
            band.high_near = core::kNearLimit * *band.high;
    } else if (name.base == "vibration_ms2") {
        band.high = limitFor(study, "vibration.ms2", name.part);
    } else if (name.base == "road_speed_kmh") {
        const auto target = limitFor(study, "road_speed.target_kmh");
        const auto apart = limitFor(study, "road_speed.pct");
        const auto held = limitFor(study, "not_cruising.pct");
        if (!target || !apart)
            return band;
        band.low = *target * (1.0 - *apart / 100.0);
        band.high = *target * (1.0 + *apart / 100.0);
        if (held && *held < *apart) {
            band.low_near = *target * (1.0 - *held / 100.0);
            band.high_near = *target * (1.0 + *held / 100.0);
        }
    } else if (name.base == "accessory_w") {
        const auto declared = limitFor(study, "accessory_change.declared_w");
        const auto apart = limitFor(study, "accessory_change.watts");
        if (declared && apart) {
            band.low = *declared - *apart;
            band.high = *declared + *apart;
        }
    }
    return band;
}

} // namespace bothways::app
