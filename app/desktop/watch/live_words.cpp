// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/live_words.h"

#include "app/desktop/look/recorded_words.h"
#include "app/desktop/look/said.h"
#include "app/wording/alarms.h"
#include "app/wording/instruments.h"
#include "app/wording/recordings.h"
#include "core/study/limits.h"

#include <algorithm>

namespace bothways::app {
namespace {

using Is = storage::InstrumentState::Is;

bool readsNothing(const storage::InstrumentState& state)
{
    return state.is == Is::silent || state.is == Is::failed;
}

/// A sign in front says the same as the words, to those who only glance.
QString marked(const char* sign, const QString& words)
{
    return QString::fromUtf8(sign) + u' ' + words;
}

} // namespace

QString LiveWords::alarm(const core::Alarm& alarm, const UnitsShown& units)
{
    return shown(wording::alarmSentence(units.language, alarm));
}

QString LiveWords::graveAlarm(const core::Alarm& alarm, const UnitsShown& units)
{
    return withCapital(shown(wording::alarmLine(units.language, alarm)));
}

QString LiveWords::instrument(const std::string& name, const storage::InstrumentState& state,
                              double now_s, const UnitsShown& units)
{
    const QString words = shown(wording::instrumentNow(units.language, name, state, now_s));
    switch (state.is) {
    case Is::opening: return marked("○", words);
    case Is::reading: return marked("●", words);
    case Is::silent: return marked("▲", words);
    case Is::failed: return marked("■", words);
    case Is::ended: return marked("□", words);
    }
    return words;
}

QString LiveWords::instruments(const LiveSnapshot& snapshot, const UnitsShown& units)
{
    QStringList all;
    if (snapshot.trouble)
        all += marked("■", sentenceOf(units.language, *snapshot.trouble));
    if (snapshot.disk_full_min)
        all += marked("▲", shown(wording::diskFullIn(units.language, *snapshot.disk_full_min)));
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
