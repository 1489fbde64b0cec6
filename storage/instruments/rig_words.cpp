// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/named_values.h"
#include "core/base/number_text.h"
#include "storage/instruments/rig.h"
#include "storage/instruments/rig_check.h"

#include <array>
#include <optional>

namespace bothways::storage {
namespace {

using KindWord = core::NamedValue<InstrumentKind>;
constexpr std::array kKinds = {
    KindWord{InstrumentKind::lines, "lines"}, KindWord{InstrumentKind::nmea, "nmea"},
    KindWord{InstrumentKind::modbus, "modbus"}, KindWord{InstrumentKind::obd, "obd"},
    KindWord{InstrumentKind::replay, "replay"}};

using Way = core::RunsBy::Way;
using WayWord = core::NamedValue<Way>;
constexpr std::array kWays = {WayWord{Way::hand, "hand"}, WayWord{Way::marks, "marks"},
                              WayWord{Way::position, "position"}, WayWord{Way::speed, "speed"}};

/// "PATH" or "PATH,x20", with "file:" before it or not.
void takeReplay(std::string_view rest, Instrument& instrument)
{
    const std::size_t comma = rest.rfind(",x");
    if (comma != std::string_view::npos) {
        if (const auto speed = core::finiteNumber(rest.substr(comma + 2))) {
            instrument.speed = *speed;
            rest = rest.substr(0, comma);
        }
    }
    instrument.address =
        rest.starts_with("file:") ? std::string(rest) : "file:" + std::string(rest);
}

} // namespace

std::string_view kindName(InstrumentKind kind)
{
    return core::nameIn(kKinds, kind);
}

std::optional<InstrumentKind> kindFromName(std::string_view name)
{
    return core::valueIn(kKinds, name);
}

std::string_view wayName(Way way)
{
    return core::nameIn(kWays, way);
}

std::optional<Way> wayFromName(std::string_view name)
{
    return core::valueIn(kWays, name);
}

core::Result<Instrument> instrumentFromText(std::string_view text)
{
    const std::size_t colon = text.find(':');
    const auto kind = kindFromName(text.substr(0, colon));
    if (!kind || colon == std::string_view::npos)
        return core::Error{
            core::ErrorCode::wrongUse,
            core::message("'{}' is no instrument; expected KIND:ADDRESS with one of the kinds "
                          "lines, nmea, modbus, obd, replay, as in "
                          "lines:serial:/dev/ttyUSB0,115200"_t,
                          text),
            {}};
    Instrument instrument;
    instrument.kind = *kind;
    instrument.name = kindName(*kind);
    if (*kind == InstrumentKind::replay)
        takeReplay(text.substr(colon + 1), instrument);
    else
        instrument.address = text.substr(colon + 1);
    // Registers of a Modbus device are named afterwards.
    Instrument checked = instrument;
    if (*kind == InstrumentKind::modbus)
        checked.channels = {{"holding:0:u16", "register", "", 1.0, 0.0}};
    if (const core::Outcome sound = checkInstrument(checked); !sound)
        return core::Error{core::ErrorCode::wrongUse, sound.error().message, {}};
    return instrument;
}

} // namespace bothways::storage
