// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/instruments.h"

#include "app/wording/numbers.h"
#include "app/wording/visible_text.h"

#include <cmath>

namespace bothways::app::wording {

std::string instrumentState(const Language& in, storage::InstrumentState::Is is)
{
    using Is = storage::InstrumentState::Is;
    switch (is) {
    case Is::opening: return in.say("opening##of an instrument"_t);
    case Is::reading: return in.say("reading##of an instrument"_t);
    case Is::silent: return in.say("silent##of an instrument"_t);
    case Is::failed: return in.say("not open##of an instrument"_t);
    case Is::ended: return in.say("ended##of an instrument"_t);
    }
    return {};
}

std::string instrumentNow(const Language& in, const std::string& name,
                          const storage::InstrumentState& state, double now_s)
{
    using Is = storage::InstrumentState::Is;
    const std::string is = state.is != Is::silent ? instrumentState(in, state.is)
                           : state.last_s         ? in.say("silent for {}##of an instrument"_t,
                                                           lengthOf(now_s - *state.last_s))
                                                  : in.say("nothing came yet##of an instrument"_t);
    const bool readsOn = state.is == Is::reading || state.is == Is::ended;
    return visibleText(name) + ": " +
           (readsOn || state.trouble.empty() ? is : in.say("{}, {}"_t, is, in.say(state.trouble)));
}

std::string instrumentSentence(const Language& in, const std::string& name,
                               const storage::InstrumentState& state)
{
    std::string text = visibleText(name) + ": " + instrumentState(in, state.is);
    const auto add = [&](long long count, core::Text<1> one, core::Text<1> many) {
        if (count > 0)
            text += "; " + in.sayCount(count, one, many, grouped(in, static_cast<double>(count)));
    };
    add(state.readings, "{} reading"_t, "{} readings"_t);
    add(state.garbage_lines, "{} line could not be read"_t, "{} lines could not be read"_t);
    add(state.lost_bytes, "{} byte lost"_t, "{} bytes lost"_t);
    add(state.reconnects, "connected again {} time"_t, "connected again {} times"_t);
    add(state.silences, "fell silent {} time"_t, "fell silent {} times"_t);
    if (state.clock_drift_s && std::abs(*state.clock_drift_s) >= 0.05)
        text +=
            "; " + in.say("its clock has drifted by {} s"_t, fixed(in, *state.clock_drift_s, 1));
    if (!state.trouble.empty())
        text += "; " + in.say(state.trouble);
    return text;
}

std::string conversionWords(const Language& in, const storage::RigChannel& channel)
{
    std::string text = visibleText(channel.source);
    if (channel.factor != 1.0 || channel.offset != 0.0)
        text += " × " + shortest(in, channel.factor);
    if (channel.offset != 0.0)
        text += (channel.offset < 0.0 ? " − " : " + ") + shortest(in, std::abs(channel.offset));
    return text;
}

std::string runsByWords(const Language& in, core::RunsBy::Way way)
{
    using Way = core::RunsBy::Way;
    switch (way) {
    case Way::hand: return in.say("by hand##runs begin and end"_t);
    case Way::marks: return in.say("by marks that an instrument sends##runs begin and end"_t);
    case Way::position: return in.say("at the gates##runs begin and end"_t);
    case Way::speed: return in.say("by the target speed##runs begin and end"_t);
    }
    return {};
}

} // namespace bothways::app::wording
