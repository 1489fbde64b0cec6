// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/live_words.h"

#include "app/desktop/look/recorded_words.h"
#include "app/desktop/look/said.h"
#include "app/desktop/look/words.h"
#include "app/wording/alarms.h"
#include "core/study/limits.h"

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

using Is = storage::InstrumentState::Is;

bool readsNothing(const storage::InstrumentState& state)
{
    return state.is == Is::silent || state.is == Is::failed;
}

} // namespace

QString LiveWords::alarm(const core::Alarm& alarm, const UnitsShown& units)
{
    const Language& in = units.language;
    const QString what = shown(wording::alarmHeadline(in, alarm, unitsOf(units)));
    //: an alarm, and what to do about it
    return tr("%1. %2").arg(what, shown(wording::alarmToDo(in, alarm)));
}

QString LiveWords::level(core::AlarmLevel level)
{
    switch (level) {
    case core::AlarmLevel::note: return tr("Note");
    case core::AlarmLevel::warning: return tr("Warning");
    case core::AlarmLevel::spoiled: return tr("Spoils the run");
    }
    return {};
}

QString LiveWords::instrument(const std::string& name, const storage::InstrumentState& state,
                              double now_s, const UnitsShown& units)
{
    const QString who = nameShown(name);
    QString words;
    switch (state.is) {
    case Is::opening: words = tr("○ %1: opening").arg(who); break;
    case Is::reading: words = tr("● %1: reading").arg(who); break;
    case Is::silent:
        words = state.last_s ? tr("▲ %1: silent for %2").arg(who, lengthText(now_s - *state.last_s))
                             : tr("▲ %1: nothing came yet").arg(who);
        break;
    case Is::failed: words = tr("■ %1: not open").arg(who); break;
    case Is::ended: words = tr("□ %1: ended").arg(who); break;
    }
    if (!state.trouble.empty() && (readsNothing(state) || state.is == Is::opening))
        words = tr("%1, %2").arg(words, said(units.language, state.trouble));
    return words;
}

QString LiveWords::instruments(const LiveSnapshot& snapshot, const UnitsShown& units)
{
    QStringList all;
    if (snapshot.trouble)
        all += tr("■ %1").arg(sentenceOf(units.language, *snapshot.trouble));
    if (snapshot.disk_full_min)
        all += tr("▲ the disk will be full in %1 min")
                   .arg(units.number(std::floor(*snapshot.disk_full_min), 0));
    const std::size_t count =
        std::min(snapshot.instruments.size(), snapshot.instrument_names.size());
    for (const bool first : {true, false}) // what is wrong stands in front
        for (std::size_t i = 0; i < count; ++i)
            if (readsNothing(snapshot.instruments[i]) == first)
                all += instrument(snapshot.instrument_names[i], snapshot.instruments[i],
                                  snapshot.now_s, units);
    return all.join(QString::fromUtf8("   "));
}

bool LiveWords::isTrouble(const LiveSnapshot& snapshot)
{
    return snapshot.trouble || snapshot.disk_full_min ||
           std::any_of(snapshot.instruments.begin(), snapshot.instruments.end(), readsNothing);
}

QString LiveWords::distance(const LiveSnapshot& snapshot, const core::Study& study,
                            const UnitsShown& units)
{
    if (!snapshot.distance_km)
        return {};
    const auto stretch = core::limitOf(study.properties.limits, "stretch.km");
    if (!stretch)
        return tr("%1 driven").arg(units.distanceWithUnit(*snapshot.distance_km, 1));
    const double left = *stretch - *snapshot.distance_km;
    return left >= 0.0 ? tr("%1 to go").arg(units.distanceWithUnit(left, 1))
                       : tr("%1 over the stretch").arg(units.distanceWithUnit(-left, 1));
}

QString LiveWords::progress(const LiveSnapshot& snapshot, const UnitsShown& units)
{
    return tr("recording %1, %2").arg(lengthText(snapshot.now_s), sizeText(snapshot.bytes, units));
}

} // namespace bothways::app
