// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/record/record_voice.h"

#include "app/wording/alarms.h"
#include "app/wording/instruments.h"
#include "app/wording/numbers.h"
#include "app/wording/recordings.h"
#include "app/wording/visible_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

namespace bothways::cli {
namespace {

constexpr int kMostRepeats = 3;
constexpr std::chrono::seconds kBetweenRepeats(5);

} // namespace

void RecordVoice::announce(const app::LiveSnapshot& now)
{
    sayInstruments(now);
    sayTrouble(now);
    sayAlarms(now);
}

void RecordVoice::heard()
{
    for (auto& [key, said] : m_said)
        said.heard = true;
}

void RecordVoice::tell(const std::string& line)
{
    clearStatus();
    m_io.out << line << "\n" << std::flush;
}

void RecordVoice::alarm(const std::string& line, bool bell)
{
    clearStatus();
    m_io.err << (bell ? "\a" : "") << line << "\n" << std::flush;
}

void RecordVoice::refuse(const core::Error& error)
{
    alarm(m_io.language.describe(error), false);
}

void RecordVoice::clearStatus()
{
    if (m_status > 0)
        m_io.out << "\r" << std::string(m_status, ' ') << "\r";
    m_status = 0;
}

void RecordVoice::sayAlarms(const app::LiveSnapshot& now)
{
    std::erase_if(m_said, [&](const auto& one) {
        return std::none_of(now.alarms.begin(), now.alarms.end(),
                            [&](const core::Alarm& alarm) { return alarm.key == one.first; });
    });
    for (const core::Alarm& one : now.alarms) {
        if (core::isLack(one)) { // it lacks before each run
            if (m_lacks.insert(one.key).second)
                alarm(app::wording::alarmLine(m_io.language, one),
                      one.level != core::AlarmLevel::note);
            continue;
        }
        const bool isNote = one.level == core::AlarmLevel::note;
        Said& said = m_said[one.key];
        const bool isNew = said.times == 0;
        const bool again = !isNote && !said.heard && said.times < kMostRepeats &&
                           Clock::now() - said.last >= kBetweenRepeats;
        if (!isNew && !again)
            continue;
        ++said.times;
        said.last = Clock::now();
        alarm(app::wording::alarmLine(m_io.language, one), !isNote);
    }
}

void RecordVoice::sayInstruments(const app::LiveSnapshot& now)
{
    m_instruments.resize(now.instruments.size());
    for (std::size_t i = 0; i < now.instruments.size(); ++i) {
        const storage::InstrumentState& state = now.instruments[i];
        using Is = storage::InstrumentState::Is;
        if (state.is == Is::opening)
            continue;
        const std::string words =
            app::visibleText(now.instrument_names[i]) + ": " +
            (state.is == Is::failed ? m_io.language.say(state.trouble)
                                    : app::wording::instrumentState(m_io.language, state.is));
        if (words == m_instruments[i])
            continue;
        m_instruments[i] = words;
        alarm(words, state.is == Is::failed || state.is == Is::silent);
    }
}

void RecordVoice::sayTrouble(const app::LiveSnapshot& now)
{
    const std::string words = now.trouble ? m_io.language.describe(*now.trouble) : std::string();
    if (words != m_trouble && !words.empty())
        alarm(words, true);
    m_trouble = words;
    if (now.disk_full_min && !m_diskSaid)
        alarm(app::wording::diskFullIn(m_io.language, *now.disk_full_min), true);
    m_diskSaid = now.disk_full_min.has_value();
}

void RecordVoice::showStatus(const app::LiveSnapshot& now)
{
    if (!m_io.outIsTerminal)
        return;
    std::string line;
    if (now.run_s) {
        line = fmt::format("{:02}:{:02}", static_cast<int>(*now.run_s) / 60,
                           static_cast<int>(*now.run_s) % 60);
        if (now.distance_km)
            line += "  " + app::fixed(m_io.language, *now.distance_km, 2) + " km";
    } else {
        line = "--:--";
    }
    for (const app::LiveChannel& channel : now.channels) {
        if (!channel.value || line.size() > 60)
            continue;
        line += fmt::format("  {} {}", channel.name,
                            app::significant(m_io.language, *channel.value, 4));
    }
    if (line.size() > 78)
        line.resize(78);
    const std::size_t width = line.size();
    if (m_status > width)
        line += std::string(m_status - width, ' ');
    m_status = width;
    m_io.out << "\r" << line << std::flush;
}

} // namespace bothways::cli
