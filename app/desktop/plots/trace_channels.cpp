// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/trace_channels.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace bothways::app {
namespace {

struct TraceChannels {
    Q_DECLARE_TR_FUNCTIONS(TraceChannels)
};

constexpr std::array kUsualOrder{
    "road_speed_kmh", "output_w",          "rotor_rpm",   "generator_rpm", "accessory_w",
    "setting",        "fuel_rate_l_per_h", "fuel_used_l", "wind_ms",       "yaw_deg_per_s",
    "vibration_ms2",  "battery_v",         "distance_m",  "lat_deg",       "lon_deg"};
constexpr std::string_view kSetSuffix = "_set";
constexpr double kMphPerMs = 3.6 / core::kKmPerMile;

QString withUnit(const QString& what, const QString& unit)
{
    //: a channel's name and its unit
    return unit.isEmpty() ? what : TraceChannels::tr("%1, %2").arg(what, unit);
}

} // namespace

ChannelShown channelShown(const std::string& name, const std::string& unit, const UnitsShown& units)
{
    const bool miles = units.distance == DistanceUnit::miles;
    if (name == "road_speed_kmh")
        return {withUnit(TraceChannels::tr("road speed"), units.speedUnit()),
                miles ? 1.0 / core::kKmPerMile : 1.0};
    if (name == "wind_ms")
        return {withUnit(TraceChannels::tr("wind"), units.windUnit()), miles ? kMphPerMs : 1.0};
    if (name == "distance_m")
        return {withUnit(TraceChannels::tr("distance"), units.distanceUnit()),
                miles ? 0.001 / core::kKmPerMile : 0.001};
    if (name == "output_w")
        return {withUnit(TraceChannels::tr("output"), QStringLiteral("W"))};
    if (name == "rotor_rpm")
        return {withUnit(TraceChannels::tr("rotor speed"), units.signShown("rpm"))};
    if (name == "generator_rpm")
        return {withUnit(TraceChannels::tr("generator speed"), units.signShown("rpm"))};
    if (name == "accessory_w")
        return {withUnit(TraceChannels::tr("accessory load"), QStringLiteral("W"))};
    if (name == "setting")
        return {withUnit(TraceChannels::tr("setting (dashed: as set)"), QStringLiteral("°"))};
    if (name == "setting_set")
        return {withUnit(TraceChannels::tr("setting as set"), QStringLiteral("°"))};
    if (name == "fuel_rate_l_per_h")
        return {withUnit(TraceChannels::tr("fuel rate"), units.signShown("L/h"))};
    if (name == "fuel_used_l")
        return {withUnit(TraceChannels::tr("fuel used"), units.signShown("L"))};
    if (name == "yaw_deg_per_s")
        return {withUnit(TraceChannels::tr("yaw rate"), QStringLiteral("°/s"))};
    if (name == "vibration_ms2")
        return {withUnit(TraceChannels::tr("vibration"), QStringLiteral("m/s²"))};
    if (name == "battery_v")
        return {withUnit(TraceChannels::tr("battery"), QStringLiteral("V"))};
    if (name == "lat_deg")
        return {withUnit(TraceChannels::tr("latitude"), QStringLiteral("°"))};
    if (name == "lon_deg")
        return {withUnit(TraceChannels::tr("longitude"), QStringLiteral("°"))};
    return {withUnit(QString::fromStdString(name), QString::fromStdString(unit))};
}

std::string setPointOf(const std::string& channel)
{
    return isSetPoint(channel) ? std::string() : channel + std::string(kSetSuffix);
}

bool isSetPoint(const std::string& channel)
{
    return channel.size() > kSetSuffix.size() &&
           channel.compare(channel.size() - kSetSuffix.size(), kSetSuffix.size(), kSetSuffix) == 0;
}

QStringList inUsualOrder(QStringList channels)
{
    const auto place = [](const QString& channel) {
        return std::find_if(kUsualOrder.begin(), kUsualOrder.end(),
                            [&](const char* name) { return channel == QLatin1String(name); });
    };
    std::stable_sort(channels.begin(), channels.end(),
                     [&](const QString& a, const QString& b) { return place(a) < place(b); });
    return channels;
}

} // namespace bothways::app
