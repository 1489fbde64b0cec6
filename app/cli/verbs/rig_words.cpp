// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/verbs/rig_words.h"

#include "app/cli/options.h"
#include "core/base/number_text.h"
#include "storage/bytes/csv.h"
#include "storage/instruments/rigs.h"
#include "storage/loggers/channel_mapping.h"
#include "storage/loggers/trace_names.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace bothways::cli {
namespace {

bool isInstrument(const std::string& word)
{
    const std::size_t colon = word.find(':');
    return colon != std::string::npos &&
           storage::kindFromName(std::string_view(word).substr(0, colon)).has_value();
}

void addInstrument(storage::Rig& rig, storage::Instrument instrument)
{
    const auto isTaken = [&](const std::string& name) {
        return std::any_of(rig.instruments.begin(), rig.instruments.end(),
                           [&](const storage::Instrument& one) { return one.name == name; });
    };
    const std::string first = instrument.name;
    for (int i = 2; isTaken(instrument.name); ++i)
        instrument.name = first + std::to_string(i);
    rig.instruments.push_back(std::move(instrument));
}

/// The unit behind the last blank, unless what is there belongs to the numbers.
std::string takeUnit(std::string& text)
{
    const std::size_t equals = text.rfind('=');
    const std::size_t blank = text.find_last_of(" \t");
    if (equals == std::string::npos || blank == std::string::npos || blank < equals)
        return {};
    const std::string unit = text.substr(blank + 1);
    const std::string rest(storage::csv::trimmed(text.substr(0, blank)));
    if (unit.find_first_of("0123456789+-*") == 0 || !storage::parseMapping(rest))
        return {};
    text = rest;
    return unit;
}

std::optional<double> numberOf(std::string_view text)
{
    return core::finiteNumber(storage::csv::trimmed(text));
}

} // namespace

Result<storage::Rig> rigOfAddresses(const std::vector<std::string>& words)
{
    storage::Rig rig;
    for (const std::string& word : words) {
        auto instrument = storage::instrumentFromText(word);
        if (!instrument)
            return instrument.error();
        addInstrument(rig, std::move(instrument).take());
    }
    return rig;
}

Result<storage::Rig> rigOfWords(const std::vector<std::string>& words)
{
    storage::Rig all;
    for (const std::string& word : words) {
        auto rig = isInstrument(word) ? rigOfAddresses({word})
                                      : storage::rigByWord(storage::rigsFolder(), word);
        if (!rig)
            return rig.error();
        if (all.name.empty())
            all.name = rig.value().name;
        for (storage::Instrument& instrument : rig.value().instruments)
            addInstrument(all, std::move(instrument));
    }
    return all;
}

Outcome addRigChannel(storage::Rig& rig, const std::string& text)
{
    std::string rest = text;
    storage::Instrument* owner = rig.instruments.size() == 1 ? &rig.instruments.front() : nullptr;
    for (storage::Instrument& instrument : rig.instruments)
        if (rest.starts_with(instrument.name + "/")) {
            owner = &instrument;
            rest = rest.substr(instrument.name.size() + 1);
            break;
        }
    if (!owner)
        return wrongUse(core::message("whose channel is '{}'? Expected INSTRUMENT/SOURCE=CHANNEL, "
                                      "as in {}/rpm=rotor_rpm"_t,
                                      text, rig.instruments.front().name));
    std::string unit = takeUnit(rest);
    const auto mapping = storage::parseMapping(rest);
    if (!mapping || mapping.value().channel.empty())
        return wrongUse(core::message("'{}' is no channel; expected SOURCE=CHANNEL, "
                                      "SOURCE=CHANNEL*FACTOR+OFFSET or the same with a unit, as in "
                                      "'rpm=rotor_rpm*0.5+3 rpm'"_t,
                                      text));
    const std::string& name = mapping.value().channel;
    if (unit.empty())
        unit = storage::channelUnit(name);
    owner->channels.push_back(
        {mapping.value().column, name, unit, mapping.value().factor, mapping.value().offset});
    return Done{};
}

Result<storage::CalibrationPoint> calibrationPoint(const std::string& text)
{
    const std::size_t equals = text.find('=');
    const auto shown = numberOf(std::string_view(text).substr(0, equals));
    const auto correct = equals == std::string::npos
                             ? std::nullopt
                             : numberOf(std::string_view(text).substr(equals + 1));
    if (!shown || !correct)
        return wrongUse(core::message("'{}' is no pair of readings; expected SHOWN=TRUE, as in "
                                      "1480=1500"_t,
                                      text));
    return storage::CalibrationPoint{*shown, *correct};
}

} // namespace bothways::cli
