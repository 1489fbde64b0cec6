// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/rig_check.h"

#include "storage/instruments/address.h"
#include "storage/instruments/modbus_source.h"
#include "storage/instruments/obd_table.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace bothways::storage {
namespace {

using core::Done;
using core::Error;
using core::ErrorCode;
using core::Outcome;

Error rigFault(core::Message message)
{
    return {ErrorCode::badInput, std::move(message), {}};
}

bool hasControl(std::string_view text)
{
    return std::any_of(text.begin(), text.end(),
                       [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
}

/// The kinds of address that a kind of instrument can have.
Outcome checkAddress(const Instrument& instrument)
{
    const auto address = parseAddress(instrument.address);
    if (!address)
        return rigFault(
            core::message("instrument '{}': {}"_t, instrument.name, address.error().message));
    const Address::Kind kind = address.value().kind;
    const auto refuse = [&](core::Text<0> expected) -> Outcome {
        return rigFault(core::message("instrument '{}': '{}' is no address for {}; expected {}"_t,
                                      instrument.name, instrument.address,
                                      kindName(instrument.kind), expected));
    };
    switch (instrument.kind) {
    case InstrumentKind::lines: break;
    case InstrumentKind::nmea: break;
    case InstrumentKind::modbus:
    case InstrumentKind::obd:
        if (kind != Address::Kind::serial && kind != Address::Kind::tcp)
            return refuse("serial:PORT,BAUD or tcp:HOST:PORT"_t);
        break;
    case InstrumentKind::replay:
        if (kind != Address::Kind::file)
            return refuse("file:PATH"_t);
        break;
    }
    return Done{};
}

Outcome checkNumbers(const Instrument& instrument)
{
    if (!(instrument.poll_s >= 0.0 && instrument.poll_s <= 3600.0))
        return rigFault(core::message("instrument '{}': poll_s is {}; expected 0 to 3600 s"_t,
                                      instrument.name, instrument.poll_s));
    if (!(instrument.speed >= 1.0 && instrument.speed <= 100.0))
        return rigFault(core::message("instrument '{}': speed is {}; expected 1 to 100 times"_t,
                                      instrument.name, instrument.speed));
    if (instrument.unit < 0 || instrument.unit > 255)
        return rigFault(
            core::message("instrument '{}': unit is {}; expected the device's number, 0 to 255"_t,
                          instrument.name, instrument.unit));
    if (!instrument.fuel.empty() && !obdFuel(instrument.fuel))
        return rigFault(core::message(
            "instrument '{}': fuel is '{}'; expected petrol, e10, diesel or nothing"_t,
            instrument.name, instrument.fuel));
    return Done{};
}

Outcome checkChannel(const Instrument& instrument, const RigChannel& channel)
{
    if (channel.name.empty() || channel.source.empty() || hasControl(channel.name) ||
        hasControl(channel.source) || hasControl(channel.unit))
        return rigFault(core::message(
            "instrument '{}': a channel needs a source and a name of ordinary characters"_t,
            instrument.name));
    if (!std::isfinite(channel.factor) || channel.factor == 0.0 || !std::isfinite(channel.offset))
        return rigFault(core::message("instrument '{}': channel '{}' needs a factor other than 0 "
                                      "and an offset that is a number"_t,
                                      instrument.name, channel.name));
    if (instrument.kind == InstrumentKind::modbus) {
        const auto source = parseModbusSource(channel.source);
        if (!source)
            return rigFault(
                core::message("instrument '{}': {}"_t, instrument.name, source.error().message));
    }
    if (instrument.kind == InstrumentKind::obd && !obdPid(channel.source))
        return rigFault(core::message("instrument '{}': '{}' is no value of service 01 that is "
                                      "read; expected one of {}"_t,
                                      instrument.name, channel.source, obdPidNames()));
    return Done{};
}

Outcome checkRuns(const core::RunsBy& runs)
{
    if (runs.way == core::RunsBy::Way::position && !runs.gates)
        return rigFault("runs that begin by position need the gates at the two ends of the "
                        "stretch"_t);
    return runs.gates ? core::checkFence(*runs.gates) : Outcome(Done{});
}

} // namespace

Outcome checkInstrument(const Instrument& instrument)
{
    if (instrument.name.empty() || hasControl(instrument.name))
        return rigFault("an instrument needs a name of ordinary characters"_t);
    if (const Outcome address = checkAddress(instrument); !address)
        return address;
    if (const Outcome numbers = checkNumbers(instrument); !numbers)
        return numbers;
    if (instrument.kind == InstrumentKind::modbus && instrument.channels.empty())
        return rigFault(core::message("instrument '{}': which registers are read? Expected a "
                                      "channel with a source such as holding:3:u16"_t,
                                      instrument.name));
    for (const RigChannel& channel : instrument.channels)
        if (const Outcome checked = checkChannel(instrument, channel); !checked)
            return checked;
    return Done{};
}

Outcome checkRig(const Rig& rig)
{
    if (rig.instruments.empty())
        return rigFault("a rig without an instrument; expected one at least"_t);
    std::set<std::string> names, channels;
    const Instrument* replay = nullptr;
    for (const Instrument& instrument : rig.instruments) {
        if (const Outcome checked = checkInstrument(instrument); !checked)
            return checked;
        if (!names.insert(instrument.name).second)
            return rigFault(
                core::message("two instruments are called '{}'; expected another name for one"_t,
                              instrument.name));
        for (const RigChannel& channel : instrument.channels)
            if (!channels.insert(channel.name).second)
                return rigFault(core::message(
                    "two channels are called '{}'; expected another name for one, perhaps with "
                    "its part, as in rotor_rpm@left"_t,
                    channel.name));
        if (instrument.kind != InstrumentKind::replay)
            continue;
        if (replay && replay->speed != instrument.speed)
            return rigFault("replays of one rig need one speed, or they come apart"_t);
        replay = &instrument;
    }
    return checkRuns(rig.runs);
}

} // namespace bothways::storage
