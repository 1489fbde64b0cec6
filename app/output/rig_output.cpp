// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/rig_output.h"

#include "app/output/analysis_text.h"
#include "app/output/json_text.h"
#include "app/output/text_layout.h"
#include "app/wording/instruments.h"
#include "app/wording/numbers.h"
#include "core/screening/rule_channels.h"

#include <algorithm>

namespace bothways::app {
namespace {

std::vector<std::string> channelNames(const TriedRig& tried)
{
    std::vector<std::string> names;
    for (const storage::TriedChannel& channel : tried.channels)
        names.push_back(channel.read.channel.name);
    return names;
}

std::string readByWords(const Language& in, const std::string& channel)
{
    std::string text;
    for (const core::Rule rule : core::rulesThatRead(channel))
        text += (text.empty() ? "" : ", ") + std::string(core::ruleName(rule));
    if (core::tellsConsumption(channel))
        text += (text.empty() ? "" : ", ") + in.say("consumption##what a channel is read for"_t);
    return text.empty() ? in.say("no rule"_t) : text;
}

std::string valueWords(const Language& in, const storage::TriedChannel& channel)
{
    if (!channel.value)
        return in.say("nothing##of a channel"_t);
    const std::string value = shortest(in, *channel.value);
    const std::string& unit = channel.read.channel.unit;
    return (unit.empty() ? value : value + " " + unit) +
           (channel.read.derived ? " " + in.say("(derived)"_t) : "");
}

std::string stateName(storage::InstrumentState::Is is)
{
    using Is = storage::InstrumentState::Is;
    switch (is) {
    case Is::opening: return "opening";
    case Is::reading: return "reading";
    case Is::silent: return "silent";
    case Is::failed: return "failed";
    case Is::ended: return "ended";
    }
    return {};
}

Json instrumentsJson(const TriedRig& tried)
{
    Json list = Json::array();
    for (std::size_t i = 0; i < tried.rig.instruments.size() && i < tried.states.size(); ++i) {
        const storage::Instrument& instrument = tried.rig.instruments[i];
        const storage::InstrumentState& state = tried.states[i];
        const std::string trouble = state.trouble.english();
        list.push_back({{"name", instrument.name},
                        {"kind", std::string(storage::kindName(instrument.kind))},
                        {"address", instrument.address},
                        {"state", stateName(state.is)},
                        {"trouble", trouble.empty() ? Json(nullptr) : Json(trouble)},
                        {"lines", state.lines},
                        {"readings", state.readings},
                        {"garbage_lines", state.garbage_lines},
                        {"lost_bytes", state.lost_bytes},
                        {"reconnects", state.reconnects},
                        {"silences", state.silences},
                        {"clock_drift_s", orNull(state.clock_drift_s)}});
    }
    return list;
}

Json channelsJson(const TriedRig& tried)
{
    Json list = Json::array();
    for (const storage::TriedChannel& channel : tried.channels) {
        const storage::RigChannel& named = channel.read.channel;
        Json rules = Json::array();
        for (const core::Rule rule : core::rulesThatRead(named.name))
            rules.push_back(std::string(core::ruleName(rule)));
        list.push_back({{"name", named.name},
                        {"unit", named.unit},
                        {"instrument", tried.rig.instruments[channel.read.instrument].name},
                        {"source", named.source},
                        {"factor", named.factor},
                        {"offset", named.offset},
                        {"derived", channel.read.derived},
                        {"value", orNull(channel.value)},
                        {"rate_hz", channel.rate_hz},
                        {"age_s", orNull(channel.age_s)},
                        {"readings", channel.readings},
                        {"rules", rules},
                        {"consumption", core::tellsConsumption(named.name)}});
    }
    return list;
}

} // namespace

std::string triedRigText(const Language& in, const TriedRig& tried)
{
    std::string text;
    for (std::size_t i = 0; i < tried.rig.instruments.size() && i < tried.states.size(); ++i)
        text +=
            wording::instrumentSentence(in, tried.rig.instruments[i].name, tried.states[i]) + "\n";
    TextTable table({in.say("channel"_t), in.say("value"_t), in.say("rate##of readings"_t),
                     in.say("age##of the last reading"_t),
                     in.say("read by##of a channel: the rules"_t)});
    for (const storage::TriedChannel& channel : tried.channels)
        table.add({channel.read.channel.name, valueWords(in, channel),
                   channel.rate_hz > 0.0 ? significant(in, channel.rate_hz, 3) + " Hz" : "–",
                   channel.age_s ? fixed(in, *channel.age_s, 1) + " s" : "–",
                   readByWords(in, channel.read.channel.name)});
    if (!tried.channels.empty())
        text += "\n" + table.text(0);
    const auto lacking = core::rulesLacking(channelNames(tried));
    if (!lacking.empty())
        text += "\n" + in.say("Rules that lack their channel:"_t) + "\n";
    for (const core::RuleLack& lack : lacking)
        text +=
            "  " + std::string(core::ruleName(lack.rule)) + ": " + joined(in, lack.channels) + "\n";
    return text;
}

std::string triedRigJson(const TriedRig& tried)
{
    Json lacking = Json::array();
    for (const core::RuleLack& lack : core::rulesLacking(channelNames(tried)))
        lacking.push_back(
            {{"rule", std::string(core::ruleName(lack.rule))}, {"lacks", lack.channels}});
    return jsonText({{"rig", tried.rig.name},
                     {"seconds", tried.seconds},
                     {"instruments", instrumentsJson(tried)},
                     {"channels", channelsJson(tried)},
                     {"rules_without_channel", lacking}});
}

std::string rigDescription(const Language& in, const storage::Rig& rig)
{
    std::string text;
    for (const storage::Instrument& instrument : rig.instruments) {
        TextTable table({in.say("channel"_t), in.say("unit##of a column"_t),
                         in.say("from##source of a channel"_t)});
        for (const storage::RigChannel& channel : instrument.channels)
            table.add({channel.name, channel.unit, wording::conversionWords(in, channel)});
        text += instrument.name + ": " + std::string(storage::kindName(instrument.kind)) + " " +
                instrument.address + "\n";
        text += instrument.channels.empty()
                    ? "  " + in.say("whatever comes, under its own name"_t) + "\n"
                    : table.text(2);
    }
    if (rig.runs.way != core::RunsBy::Way::hand)
        text += in.say("runs begin and end {}"_t, wording::runsByWords(in, rig.runs.way)) + "\n";
    return text;
}

std::string serialPortsText(const Language& in, const std::vector<storage::SerialPortName>& ports)
{
    if (ports.empty())
        return in.say("There is no serial port. A board or a converter shows as one when it is "
                      "plugged in."_t) +
               "\n";
    TextTable table({in.say("port##of a computer"_t), in.say("device##of the system"_t)});
    for (const storage::SerialPortName& port : ports)
        table.add({port.path, port.means});
    return table.text(0);
}

std::string serialPortsJson(const std::vector<storage::SerialPortName>& ports)
{
    Json list = Json::array();
    for (const storage::SerialPortName& port : ports)
        list.push_back({{"path", port.path}, {"device", port.means}});
    return jsonText({{"ports", list}});
}

std::string rigNamesJson(const std::vector<std::string>& names)
{
    return jsonText({{"rigs", names}});
}

} // namespace bothways::app
