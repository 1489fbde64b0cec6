// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/recording/runs_by.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The instruments of one car: what is read, where, and what its numbers mean. (Handbook, "Live".)
namespace bothways::storage {

enum class InstrumentKind {
    lines,  ///< lines of numbers, as boards with a serial port print them
    nmea,   ///< NMEA 0183 sentences
    modbus, ///< registers of power meters and converters, polled
    obd,    ///< SAE J1979 service 01 through a serial adapter with AT commands
    replay  ///< a recording, as if it came now
};

/// A channel of an instrument and what it is called here: value = read * factor + offset.
struct RigChannel {
    /// As the instrument names it: a header's or pair's name ("rpm"), a column ("3"); "speed_kmh"
    /// of NMEA; "holding:3:u16" of Modbus; "0D" of J1979; a column of a recording.
    std::string source;
    std::string name; ///< ours, perhaps with its part: "rotor_rpm", "output_w@left"; or their own
    std::string unit;
    double factor = 1.0;
    double offset = 0.0;
    friend bool operator==(const RigChannel&, const RigChannel&) = default;
};

struct Instrument {
    std::string name; ///< the user's, no two alike in a rig: "board", "gps"
    InstrumentKind kind = InstrumentKind::lines;
    /// "serial:/dev/ttyUSB0,115200", "tcp:192.168.1.7:2000", "udp:*:2000", "file:PATH"
    std::string address;
    int unit = 1;         ///< Modbus: of the device
    double poll_s = 0.25; ///< Modbus, OBD: time from one round to the next
    double speed = 1.0;   ///< replay: so many times as fast as it was, 1 to 100
    std::string fuel;     ///< OBD: "petrol", "e10", "diesel", for fuel from air mass; empty: none
    /// Empty: whatever comes is recorded under its own name, without factor.
    std::vector<RigChannel> channels;
    friend bool operator==(const Instrument&, const Instrument&) = default;
};

struct Rig {
    std::string name;
    std::vector<Instrument> instruments;
    core::RunsBy runs = {}; ///< what begins and ends a run while this rig records
    friend bool operator==(const Rig&, const Rig&) = default;
};

/// JSON; its form and version: rig.md here.
[[nodiscard]] std::string rigText(const Rig& rig);
/// Errors name the file, the instrument and what was expected; a newer version is refused.
[[nodiscard]] core::Result<Rig> rigFromText(std::string_view text, const std::string& name);
[[nodiscard]] core::Result<Rig> readRig(const std::filesystem::path& file);
[[nodiscard]] core::Outcome writeRig(const std::filesystem::path& file, const Rig& rig,
                                     bool replace = false);
/// "KIND:ADDRESS" of the command line: "lines:serial:/dev/ttyUSB0,9600", "replay:run_01.csv,x20".
/// An existing kind without a word before it is an Error that names all kinds.
[[nodiscard]] core::Result<Instrument> instrumentFromText(std::string_view text);

/// "hand", "marks", "position", "speed".
[[nodiscard]] std::string_view wayName(core::RunsBy::Way way);
[[nodiscard]] std::optional<core::RunsBy::Way> wayFromName(std::string_view name);

[[nodiscard]] std::string_view kindName(InstrumentKind kind);
[[nodiscard]] std::optional<InstrumentKind> kindFromName(std::string_view name);

} // namespace bothways::storage
