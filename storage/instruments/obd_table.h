// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/typed_number.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

/// Values of SAE J1979 / ISO 15031-5, service 01 (current data): how many bytes they have, and what
/// these mean.
namespace bothways::storage {

struct ObdPid {
    std::uint8_t pid;
    std::uint8_t bytes;
    const char* name; ///< the channel's
    const char* unit;
    /// @param a, b  the first and the second byte
    TypedNumber (*value)(int a, int b);
};

[[nodiscard]] std::span<const ObdPid> obdPids();
/// "0D" or "0x0d" of a rig; null where it is none that is read.
[[nodiscard]] const ObdPid* obdPid(std::string_view text);
[[nodiscard]] const ObdPid* obdPid(std::uint8_t pid);
/// "04, 05, 0B, ..."
[[nodiscard]] std::string obdPidNames();
/// "0D"
[[nodiscard]] std::string obdPidName(std::uint8_t pid);

inline constexpr std::uint8_t kPidAirMass = 0x10, kPidRatio = 0x44, kPidFuelRate = 0x5E;

/// What an engine burns, for its fuel from the mass of its air. Common practice, as the figures
/// are: kg of air to a kg of fuel when neither is left over, and the density at 15 °C.
struct ObdFuel {
    std::string_view name;
    double air_to_fuel;
    double density_g_per_l;
    bool lean; ///< there is air left over: its share must be known
};
[[nodiscard]] const ObdFuel* obdFuel(std::string_view name);
/// @param air_g_per_s  @param ratio  of air to what would burn all fuel; 1: just that
[[nodiscard]] double fuelFromAir_l_per_h(const ObdFuel& fuel, double air_g_per_s, double ratio);

} // namespace bothways::storage
