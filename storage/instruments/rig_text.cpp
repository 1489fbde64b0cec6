// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/file_bytes.h"
#include "storage/bytes/written_file.h"
#include "storage/instruments/rig.h"
#include "storage/instruments/rig_check.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <initializer_list>
#include <optional>

namespace bothways::storage {
namespace {

using core::Error;
using core::ErrorCode;
using core::Outcome;
using core::Result;
using Json = nlohmann::ordered_json;

constexpr int kRigVersion = 1;
constexpr std::size_t kMostRigBytes = std::size_t{1} << 20;
constexpr std::size_t kMostInstruments = 64, kMostChannels = 4096;

/// Reads a rig out of JSON; the first fault ends it.
class RigText {
public:
    explicit RigText(std::string name) : m_name(std::move(name)) {}

    Result<Rig> read(const Json& json)
    {
        Rig rig;
        if (!isObject(json, "a rig"_t))
            return *m_fault;
        // The version first: what a newer one has besides is none of our business.
        const auto version = json.find("version");
        if (version == json.end() || !version->is_number_integer())
            return fault(core::message("expected \"version\": {}"_t, kRigVersion));
        if (version->get<long long>() > kRigVersion)
            return fault(core::message("this rig has version {}, and this program knows {}; a "
                                       "newer program reads it"_t,
                                       version->get<long long>(), kRigVersion));
        if (version->get<long long>() != kRigVersion)
            return fault(core::message("expected \"version\": {}"_t, kRigVersion));
        if (!knows(json, {"version", "name", "instruments", "runs", "gates"}))
            return *m_fault;
        take(json, "name", rig.name);
        takeRuns(json, rig.runs);
        const auto list = json.find("instruments");
        if (list == json.end() || !list->is_array() || list->size() > kMostInstruments)
            return m_fault ? *m_fault : fault("expected \"instruments\": a list"_t);
        for (const Json& one : *list)
            rig.instruments.push_back(instrument(one));
        if (m_fault)
            return *m_fault;
        if (Outcome sound = checkRig(rig); !sound)
            return fault(sound.error().message);
        return rig;
    }

    Error fault(core::Message message)
    {
        m_fault = Error{ErrorCode::badInput, std::move(message), m_name};
        return *m_fault;
    }

private:
    void takeRuns(const Json& json, core::RunsBy& runs)
    {
        std::string way(wayName(runs.way));
        take(json, "runs", way);
        if (const auto known = wayFromName(way))
            runs.way = *known;
        else
            fault(core::message("runs do not begin by '{}'; expected hand, marks, position or "
                                "speed"_t,
                                way));
        const auto gates = json.find("gates");
        if (gates == json.end())
            return;
        const bool isList =
            gates->is_array() && gates->size() == 5 &&
            std::all_of(gates->begin(), gates->end(), [](const Json& n) { return n.is_number(); });
        if (!isList) {
            fault("expected \"gates\": [LAT, LON, LAT, LON, METRES]"_t);
            return;
        }
        const auto number = [&](std::size_t i) { return (*gates)[i].get<double>(); };
        runs.gates = core::Geofence{number(0), number(1), number(2), number(3), number(4)};
    }

    Instrument instrument(const Json& json)
    {
        Instrument made;
        if (m_fault || !isObject(json, "an instrument"_t) ||
            !knows(json,
                   {"name", "kind", "address", "unit", "poll_s", "speed", "fuel", "channels"}))
            return made;
        std::string kind;
        take(json, "name", made.name);
        take(json, "kind", kind);
        take(json, "address", made.address);
        take(json, "fuel", made.fuel);
        takeNumber(json, "poll_s", made.poll_s);
        takeNumber(json, "speed", made.speed);
        double unit = made.unit;
        takeNumber(json, "unit", unit);
        if (!(unit >= 0.0 && unit <= 255.0) || unit != static_cast<int>(unit))
            fault("\"unit\" is the device's number; expected 0 to 255"_t);
        else
            made.unit = static_cast<int>(unit);
        if (const auto known = kindFromName(kind))
            made.kind = *known;
        else if (!m_fault)
            fault(core::message("instrument '{}': there is no kind '{}'; expected lines, nmea, "
                                "modbus, obd or replay"_t,
                                made.name, kind));
        if (const auto list = json.find("channels"); list != json.end()) {
            if (!list->is_array() || list->size() > kMostChannels)
                fault("expected \"channels\": a list"_t);
            else
                for (const Json& one : *list)
                    made.channels.push_back(channel(one));
        }
        return made;
    }

    RigChannel channel(const Json& json)
    {
        RigChannel made;
        if (m_fault || !isObject(json, "a channel"_t) ||
            !knows(json, {"source", "name", "unit", "factor", "offset"}))
            return made;
        take(json, "source", made.source);
        take(json, "name", made.name);
        take(json, "unit", made.unit);
        takeNumber(json, "factor", made.factor);
        takeNumber(json, "offset", made.offset);
        return made;
    }

    bool isObject(const Json& json, core::Text<0> what)
    {
        if (!json.is_object())
            fault(core::message("expected {} in braces"_t, what));
        return json.is_object();
    }

    bool knows(const Json& json, std::initializer_list<std::string_view> keys)
    {
        for (const auto& [key, value] : json.items()) {
            if (std::find(keys.begin(), keys.end(), key) != keys.end())
                continue;
            fault(
                core::message("there is no \"{}\" here; expected one of {}"_t, key, listOf(keys)));
            return false;
        }
        return true;
    }

    static std::string listOf(std::initializer_list<std::string_view> keys)
    {
        std::string list;
        for (const std::string_view key : keys)
            list += (list.empty() ? "" : ", ") + std::string(key);
        return list;
    }

    void take(const Json& json, const char* key, std::string& text)
    {
        const auto found = json.find(key);
        if (found == json.end())
            return;
        if (found->is_string())
            text = found->get<std::string>();
        else if (!m_fault)
            fault(core::message("\"{}\" is no text"_t, key));
    }

    void takeNumber(const Json& json, const char* key, double& number)
    {
        const auto found = json.find(key);
        if (found == json.end())
            return;
        if (found->is_number())
            number = found->get<double>();
        else if (!m_fault)
            fault(core::message("\"{}\" is no number"_t, key));
    }

    std::string m_name;
    std::optional<Error> m_fault;
};

Json jsonOf(const Instrument& instrument)
{
    static const Instrument usual;
    Json json = {{"name", instrument.name},
                 {"kind", std::string(kindName(instrument.kind))},
                 {"address", instrument.address}};
    if (instrument.kind == InstrumentKind::modbus || instrument.unit != usual.unit)
        json["unit"] = instrument.unit;
    if (instrument.kind == InstrumentKind::modbus || instrument.kind == InstrumentKind::obd ||
        instrument.poll_s != usual.poll_s)
        json["poll_s"] = instrument.poll_s;
    if (instrument.kind == InstrumentKind::replay || instrument.speed != usual.speed)
        json["speed"] = instrument.speed;
    if (!instrument.fuel.empty())
        json["fuel"] = instrument.fuel;
    json["channels"] = Json::array();
    for (const RigChannel& channel : instrument.channels)
        json["channels"].push_back({{"source", channel.source},
                                    {"name", channel.name},
                                    {"unit", channel.unit},
                                    {"factor", channel.factor},
                                    {"offset", channel.offset}});
    return json;
}

} // namespace

std::string rigText(const Rig& rig)
{
    Json json = {{"version", kRigVersion}, {"name", rig.name}, {"instruments", Json::array()}};
    for (const Instrument& instrument : rig.instruments)
        json["instruments"].push_back(jsonOf(instrument));
    if (rig.runs.way != core::RunsBy::Way::hand)
        json["runs"] = std::string(wayName(rig.runs.way));
    if (const auto& gates = rig.runs.gates)
        json["gates"] = {gates->start_lat_deg, gates->start_lon_deg, gates->end_lat_deg,
                         gates->end_lon_deg, gates->radius_m};
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

core::Result<Rig> rigFromText(std::string_view text, const std::string& name)
{
    RigText reader(name);
    if (text.size() > kMostRigBytes)
        return reader.fault("too large for a rig; expected a rig in JSON, 1 MB at most"_t);
    const Json json = Json::parse(text, nullptr, false);
    if (json.is_discarded())
        return reader.fault("this is no JSON; expected a rig as 'bothways rig new' writes it"_t);
    return reader.read(json);
}

core::Result<Rig> readRig(const std::filesystem::path& file)
{
    const auto text = readWholeFile(file, kMostRigBytes, "a rig"_t);
    if (!text)
        return text.error();
    auto rig = rigFromText(text.value(), file.string());
    if (rig && rig.value().name.empty())
        rig.value().name = file.stem().string();
    return rig;
}

core::Outcome writeRig(const std::filesystem::path& file, const Rig& rig, bool replace)
{
    if (Outcome sound = checkRig(rig); !sound)
        return sound;
    WriteRules rules;
    rules.replace = replace;
    return writeWholeFile(file, rigText(rig), rules);
}

} // namespace bothways::storage
