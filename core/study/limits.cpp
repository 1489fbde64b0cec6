// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/limits.h"

#include "core/study/parts.h"

#include <algorithm>
#include <array>

namespace bothways::core {
namespace {

constexpr auto kNone = std::nullopt;

// In the order of the method's table of rules. The ranges only keep out what cannot be meant.
constexpr std::array kLimits = {
    LimitInfo{"accessory_change.watts", Rule::accessoryChange, "W", 50.0, 0.1, 1e5},
    LimitInfo{"accessory_change.declared_w", Rule::accessoryChange, "W", kNone, 0.0, 1e5},
    LimitInfo{"overspeed.rpm", Rule::overspeed, "rpm", kNone, 0.1, 1e6},
    LimitInfo{"overspeed.seconds", Rule::overspeed, "s", 0.5, 0.001, 3600.0},
    LimitInfo{"load_lost.seconds", Rule::loadLost, "s", 2.0, 0.001, 3600.0},
    LimitInfo{"drive_slip.pct", Rule::driveSlip, "%", 3.0, 0.01, 100.0},
    LimitInfo{"output_drop.pct", Rule::outputDrop, "%", 25.0, 0.01, 100.0},
    LimitInfo{"setting_mismatch.tolerance", Rule::settingMismatch, "°", 1.0, 0.0, 1e6},
    LimitInfo{"setting_changed.tolerance", Rule::settingChanged, "°", 1.0, 1e-6, 1e6},
    LimitInfo{"vibration.ms2", Rule::vibration, "m/s²", kNone, 0.0, 1e5},
    LimitInfo{"road_speed.target_kmh", Rule::roadSpeed, "km/h", kNone, 1.0, 1000.0},
    LimitInfo{"road_speed.mean_pct", Rule::roadSpeed, "%", 2.0, 0.01, 100.0},
    LimitInfo{"road_speed.pct", Rule::roadSpeed, "%", 5.0, 0.01, 100.0},
    LimitInfo{"interrupted.pct", Rule::interrupted, "%", 30.0, 0.01, 100.0},
    LimitInfo{"not_cruising.pct", Rule::notCruising, "%", 3.0, 0.01, 100.0},
    LimitInfo{"stretch.km", Rule::stretch, "km", kNone, 0.001, 1e4},
    LimitInfo{"stretch.pct", Rule::stretch, "%", 2.0, 0.01, 100.0},
    LimitInfo{"passing_traffic.sigmas", Rule::passingTraffic, "σ", 6.0, 1.0, 1e3},
    LimitInfo{"trace_ends_early.seconds", Rule::traceEndsEarly, "s", 2.0, 0.0, 3600.0},
    LimitInfo{"battery_balance.volts", Rule::batteryBalance, "V", 0.2, 0.0, 1e3},
    LimitInfo{"warming_up.minutes", Rule::warmingUp, "min", 30.0, 0.0, 1440.0},
};

/// "overspeed@left.rpm" taken apart; `part` is empty where there is none, or it is no limit's form.
struct LimitName {
    std::string common; ///< "overspeed.rpm"
    std::string_view part;
};

LimitName limitName(std::string_view name)
{
    const std::size_t dot = name.find('.');
    const PartedName parted = partedName(name.substr(0, dot));
    if (dot == std::string_view::npos || parted.part.empty())
        return {std::string(name), {}};
    return {std::string(parted.base).append(name.substr(dot)), parted.part};
}

} // namespace

bool hasParts(Rule rule)
{
    switch (rule) {
    case Rule::overspeed:
    case Rule::loadLost:
    case Rule::driveSlip:
    case Rule::outputDrop:
    case Rule::settingMismatch:
    case Rule::settingChanged:
    case Rule::vibration:
    case Rule::sensorLost: return true;
    default: return false;
    }
}

std::string limitOfPart(std::string_view name, std::string_view part)
{
    const std::size_t dot = std::min(name.find('.'), name.size());
    // Names of properties are kept in small letters.
    return ofPart(name.substr(0, dot), inSmallLetters(part)).append(name.substr(dot));
}

std::span<const LimitInfo> allLimits()
{
    return kLimits;
}

const LimitInfo* findLimit(std::string_view name)
{
    const LimitName wanted = limitName(name);
    const auto found = std::find_if(kLimits.begin(), kLimits.end(), [&](const LimitInfo& limit) {
        return limit.name == wanted.common && (wanted.part.empty() || hasParts(limit.rule));
    });
    return found != kLimits.end() ? &*found : nullptr;
}

std::optional<double> limitOf(const Limits& limits, std::string_view name)
{
    if (const auto set = limits.find(name); set != limits.end())
        return set->second;
    if (const LimitName wanted = limitName(name); !wanted.part.empty())
        return limitOf(limits, wanted.common);
    const LimitInfo* info = findLimit(name);
    return info ? info->byDefault : std::nullopt;
}

} // namespace bothways::core
