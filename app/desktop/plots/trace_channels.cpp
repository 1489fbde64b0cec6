// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/trace_channels.h"

#include "app/desktop/look/said.h"
#include "app/wording/channels.h"
#include "core/study/parts.h"
#include "storage/loggers/trace_names.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <array>
#include <optional>

namespace bothways::app {
namespace {

struct TraceChannels {
    Q_DECLARE_TR_FUNCTIONS(TraceChannels)
};

constexpr std::array kUsualOrder{
    "road_speed_kmh", "output_w",          "rotor_rpm",   "generator_rpm", "accessory_w",
    "setting",        "fuel_rate_l_per_h", "fuel_used_l", "wind_ms",       "yaw_deg_per_s",
    "vibration_ms2",  "battery_v",         "distance_m",  "lat_deg",       "lon_deg"};
constexpr const char* kOurs[] = {
    "road_speed_kmh", "distance_m",      "lat_deg",  "lon_deg",     "fuel_rate_l_per_h",
    "fuel_used_l",    "energy_used_kwh", "power_kw", "accessory_w", "output_w",
    "rotor_rpm",      "generator_rpm",   "setting",  "setting_set", "vibration_ms2",
    "wind_ms",        "yaw_deg_per_s",   "battery_v"};
/// What the rules ask of each part by itself. (Method, section 9, "A device of several parts".)
constexpr const char* kParted[] = {"rotor_rpm", "generator_rpm", "output_w",
                                   "setting",   "setting_set",   "vibration_ms2"};
constexpr std::string_view kSetSuffix = "_set";
constexpr double kMphPerMs = 3.6 / core::kKmPerMile;

QString withUnit(const QString& what, const QString& unit)
{
    //: a channel's name and its unit
    return unit.isEmpty() ? what : TraceChannels::tr("%1, %2").arg(what, unit);
}

/// "rotor speed (left)"; without a part as it is.
QString partShown(const QString& what, const QString& part)
{
    //: a channel's name and the part of the device that it is of
    return part.isEmpty() ? what : TraceChannels::tr("%1 (%2)").arg(what, part);
}

/// The unit of a channel of ours, as it is shown; nothing for one that is not.
std::optional<ChannelShown> unitShown(std::string_view base, const UnitsShown& units)
{
    const bool miles = units.distance == DistanceUnit::miles;
    if (base == "road_speed_kmh")
        return ChannelShown{units.speedUnit(), miles ? 1.0 / core::kKmPerMile : 1.0};
    if (base == "wind_ms")
        return ChannelShown{units.windUnit(), miles ? kMphPerMs : 1.0};
    if (base == "distance_m")
        return ChannelShown{units.distanceUnit(), miles ? 0.001 / core::kKmPerMile : 0.001};
    const std::string_view unit = storage::channelUnit(base);
    if (unit.empty())
        return std::nullopt;
    return ChannelShown{units.signShown(unit)};
}

} // namespace

std::span<const char* const> ourChannels()
{
    return kOurs;
}

QStringList channelsOfPart(const QString& part)
{
    QStringList names;
    for (const char* base : kParted)
        names += QString(base) + u'@' + part;
    return names;
}

QString partNamedIn(const QString& column)
{
    if (const auto at = column.lastIndexOf(u'@'); at >= 0) {
        const QString part = column.mid(at + 1);
        return core::isPartName(part.toStdString()) ? part : QString();
    }
    static const QStringList kUsual{"left",  "right",  "front", "rear",  "upper", "lower",
                                    "links", "rechts", "vorn",  "vorne", "hinten"};
    static const QRegularExpression kBetween("[^\\p{L}]+");
    for (const QString& word : column.toLower().split(kBetween, Qt::SkipEmptyParts))
        if (kUsual.contains(word))
            return word;
    return {};
}

int placeOfPart(const QString& channel, const QStringList& channels)
{
    const auto at = channel.indexOf(u'@');
    if (at < 0)
        return 0;
    int place = 0;
    for (const QString& other : channels) {
        if (other == channel)
            return place;
        if (other.startsWith(channel.left(at + 1)))
            ++place;
    }
    return 0;
}

ChannelShown channelShown(const std::string& name, const std::string& unit, const UnitsShown& units)
{
    const core::PartedName parted = core::partedName(name);
    const QString part = QString::fromUtf8(parted.part.data(), qsizetype(parted.part.size()));
    const QString words = parted.base == "setting"
                              ? TraceChannels::tr("setting (pale: as set)")
                              : shown(wording::channelBaseName(units.language, name));
    const ChannelShown its =
        unitShown(parted.base, units).value_or(ChannelShown{QString::fromStdString(unit)});
    return {withUnit(partShown(words, part), its.label), its.factor};
}

std::string setPointOf(const std::string& channel)
{
    const core::PartedName parted = core::partedName(channel);
    return isSetPoint(channel)
               ? std::string()
               : core::ofPart(std::string(parted.base) + std::string(kSetSuffix), parted.part);
}

bool isSetPoint(const std::string& channel)
{
    const std::string_view base = core::partedName(channel).base;
    return base.size() > kSetSuffix.size() && base.ends_with(kSetSuffix);
}

QStringList inUsualOrder(QStringList channels)
{
    const auto place = [](const QString& channel) {
        const std::string name = channel.toStdString();
        return std::find_if(kUsualOrder.begin(), kUsualOrder.end(), [&](const char* usual) {
            return core::partedName(name).base == usual;
        });
    };
    std::stable_sort(channels.begin(), channels.end(),
                     [&](const QString& a, const QString& b) { return place(a) < place(b); });
    return channels;
}

} // namespace bothways::app
