// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/obd_table.h"

#include "core/base/number_text.h"
#include "core/study/study.h"

#include <fmt/format.h>

#include <array>

namespace bothways::storage {
namespace {

TypedNumber ofByte(int a, int)
{
    return typedNumber(a, 0);
}
TypedNumber ofPercent(int a, int)
{
    return oddNumber(a * 100.0 / 255.0);
}
TypedNumber ofTemperature(int a, int)
{
    return typedNumber(a - 40, 0);
}
TypedNumber ofQuarters(int a, int b)
{
    return typedNumber((256 * a + b) * 25, 2);
}
TypedNumber ofHundredths(int a, int b)
{
    return typedNumber(256 * a + b, 2);
}
TypedNumber ofThousandths(int a, int b)
{
    return typedNumber(256 * a + b, 3);
}
TypedNumber ofTwentieths(int a, int b)
{
    return typedNumber((256 * a + b) * 5, 2);
}
TypedNumber ofWord(int a, int b)
{
    return typedNumber(256 * a + b, 0);
}
TypedNumber ofRatio(int a, int b)
{
    return oddNumber((256 * a + b) * 2.0 / 65536.0);
}

// SAE J1979 / ISO 15031-5, table of service 01.
constexpr std::array kPids = {
    ObdPid{0x04, 1, "engine_load_pct", "%", ofPercent},
    ObdPid{0x05, 1, "coolant_c", "°C", ofTemperature},
    ObdPid{0x0B, 1, "intake_kpa", "kPa", ofByte},
    ObdPid{0x0C, 2, "engine_rpm", "rpm", ofQuarters},
    ObdPid{0x0D, 1, "road_speed_kmh", "km/h", ofByte},
    ObdPid{0x0F, 1, "intake_air_c", "°C", ofTemperature},
    ObdPid{kPidAirMass, 2, "air_mass_g_per_s", "g/s", ofHundredths},
    ObdPid{0x11, 1, "throttle_pct", "%", ofPercent},
    ObdPid{0x1F, 2, "engine_run_s", "s", ofWord},
    ObdPid{0x2F, 1, "fuel_level_pct", "%", ofPercent},
    ObdPid{0x33, 1, "air_pressure_kpa", "kPa", ofByte},
    ObdPid{0x42, 2, "battery_v", "V", ofThousandths},
    ObdPid{kPidRatio, 2, "air_ratio", "", ofRatio},
    ObdPid{0x46, 1, "ambient_air_c", "°C", ofTemperature},
    ObdPid{0x5C, 1, "oil_c", "°C", ofTemperature},
    ObdPid{kPidFuelRate, 2, "fuel_rate_l_per_h", "L/h", ofTwentieths},
};

constexpr std::array kFuels = {
    ObdFuel{"petrol", 14.7, 745.0, false},
    ObdFuel{"e10", 14.1, 750.0, false},
    ObdFuel{"diesel", 14.5, 835.0, true},
};

} // namespace

std::span<const ObdPid> obdPids()
{
    return kPids;
}

const ObdPid* obdPid(std::uint8_t pid)
{
    for (const ObdPid& known : kPids)
        if (known.pid == pid)
            return &known;
    return nullptr;
}

const ObdPid* obdPid(std::string_view text)
{
    if (text.starts_with("0x") || text.starts_with("0X"))
        text.remove_prefix(2);
    const auto pid = core::wholeNumber<std::uint8_t>(text, 16);
    return pid ? obdPid(*pid) : nullptr;
}

std::string obdPidName(std::uint8_t pid)
{
    return fmt::format("{:02X}", pid);
}

std::string obdPidNames()
{
    std::string names;
    for (const ObdPid& known : kPids)
        names += (names.empty() ? "" : ", ") + obdPidName(known.pid);
    return names;
}

const ObdFuel* obdFuel(std::string_view name)
{
    for (const ObdFuel& fuel : kFuels)
        if (core::sameWord(fuel.name, name))
            return &fuel;
    return nullptr;
}

double fuelFromAir_l_per_h(const ObdFuel& fuel, double air_g_per_s, double ratio)
{
    return air_g_per_s * 3600.0 / (fuel.air_to_fuel * ratio * fuel.density_g_per_l);
}

} // namespace bothways::storage
