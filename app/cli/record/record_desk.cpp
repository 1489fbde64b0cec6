// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/record/record_desk.h"

#include "app/cli/options.h"
#include "app/wording/alarms.h"
#include "app/wording/findings.h"
#include "app/wording/instruments.h"
#include "app/wording/numbers.h"
#include "app/wording/units.h"
#include "app/wording/visible_text.h"
#include "core/study/rule.h"
#include "storage/sheet/run_columns.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

namespace bothways::cli {
namespace {

constexpr int kMostRepeats = 3;
constexpr std::chrono::seconds kBetweenRepeats(5);

std::string joinedFrom(const std::vector<std::string>& words, std::size_t first)
{
    std::string text;
    for (std::size_t i = first; i < words.size(); ++i)
        text += (text.empty() ? "" : " ") + words[i];
    return text;
}

/// "8,41" as well as "8.41".
std::optional<storage::GivenNumber> numberFrom(const std::string& text)
{
    const bool comma = text.find(',') != std::string::npos;
    return storage::parseNumber(text, comma);
}

/// "Over-speed: 3410 rpm. Turn and drive it again."
std::string alarmLine(const Language& in, const core::Alarm& alarm)
{
    const std::string todo = app::wording::alarmToDo(in, alarm);
    std::string line = app::wording::alarmLevelName(in, alarm.level) + ": " +
                       app::wording::alarmHeadline(in, alarm);
    return todo.empty() ? line : line + ". " + todo;
}

app::UsualDirections usualDirections(const Language& in)
{
    return {in.say("out##a direction"_t), in.say("return##a direction"_t)};
}

} // namespace

RecordDesk::RecordDesk(storage::StudyFile& study, app::LiveSession& session, Surroundings& io)
    : m_io(io),
      m_session(session),
      m_study(study),
      m_desk(study, session, usualDirections(io.language))
{
}

void RecordDesk::tell(const std::string& line)
{
    clearStatus();
    m_io.out << line << "\n" << std::flush;
}

void RecordDesk::alarm(const std::string& line, bool bell)
{
    clearStatus();
    m_io.err << (bell ? "\a" : "") << line << "\n" << std::flush;
}

void RecordDesk::refuse(const core::Error& error)
{
    alarm(m_io.language.describe(error), false);
}

void RecordDesk::clearStatus()
{
    if (m_status > 0)
        m_io.out << "\r" << std::string(m_status, ' ') << "\r";
    m_status = 0;
}

void RecordDesk::order(std::string_view line)
{
    m_status = 0; // what was typed stands behind it
    const auto order = recordOrderFrom(line);
    if (!order)
        return refuse(order.error());
    obey(order.value());
}

void RecordDesk::obey(const RecordOrder& order)
{
    using Kind = RecordOrder::Kind;
    switch (order.kind) {
    case Kind::acknowledge:
        for (auto& [key, said] : m_said)
            said.heard = true;
        return;
    case Kind::start: return start(order.words);
    case Kind::end: return end(order.words);
    case Kind::mark: return mark(order.words);
    case Kind::on:
        if (const Outcome done = m_desk.switchOn(joinedFrom(order.words, 0)); !done)
            return refuse(done.error());
        return tell(m_io.language.say("{} is on"_t, joinedFrom(order.words, 0)));
    case Kind::weather: return weather(order.words);
    case Kind::discard: return discard(order.words);
    case Kind::forget:
        if (const Outcome done = m_desk.forget(); !done)
            return refuse(done.error());
        return tell(m_io.language.say("the run is forgotten; what was recorded stays"_t));
    case Kind::next: return sayNext();
    case Kind::help: return tell(recordOrdersText(m_io.language));
    case Kind::stop: m_stopping = true; return;
    }
}

void RecordDesk::sayRun(const core::Run& run, core::Text<3> what)
{
    tell(m_io.language.say(what, run.number, run.configuration, run.direction));
}

void RecordDesk::start(const std::vector<std::string>& words)
{
    app::RunDesk::Beginning beginning;
    if (!words.empty())
        beginning.configuration = words[0];
    if (words.size() > 1)
        beginning.direction = words[1];
    beginning.setting = joinedFrom(words, 2);
    const auto run = m_desk.start(beginning);
    if (!run)
        return refuse(run.error());
    m_said.clear();
    sayRun(run.value(), "run {}: {}, {}, begins"_t);
    if (m_desk.isWithoutWalkRound())
        tell(m_io.language.say("this block begins without its walk-round"_t));
    if (m_desk.isWithoutWeather())
        tell(m_io.language.say("note the weather: weather temperature_c=14 wind_ms=2"_t));
}

Result<std::optional<core::Consumption>>
RecordDesk::consumptionFrom(const std::vector<std::string>& words) const
{
    if (words.empty())
        return std::optional<core::Consumption>();
    std::string text = words[0];
    auto unit = m_desk.unit();
    if (!unit)
        return unit.error();
    if (const std::size_t equals = text.find('='); equals != std::string::npos) {
        const auto named = core::unitFromName(text.substr(0, equals));
        if (!named)
            return wrongUse(core::message(
                "'{}' is no consumption; expected a number, or UNIT=NUMBER like l_per_100km=8.41"_t,
                text));
        unit = *named;
        text.erase(0, equals + 1);
    }
    const auto number = numberFrom(text);
    if (words.size() > 1 || !number || !(number->value > 0.0))
        return wrongUse(core::message(
            "'{}' is no consumption; expected a number, or UNIT=NUMBER like l_per_100km=8.41"_t,
            joinedFrom(words, 0)));
    core::Consumption consumption;
    consumption.value = number->value;
    consumption.unit = unit.value();
    consumption.decimals = number->decimals;
    return std::optional(consumption);
}

void RecordDesk::end(const std::vector<std::string>& words)
{
    const auto consumption = consumptionFrom(words);
    if (!consumption)
        return refuse(consumption.error());
    const auto run = m_desk.end(consumption.value());
    if (!run)
        return refuse(run.error());
    ++m_written;
    m_waitsForEnd = true;
    const std::string seconds = app::fixed(m_io.language, run.value().duration_s.value_or(0.0), 1);
    if (consumption.value())
        tell(m_io.language.say(
            "run {}: {}, {}, {} s, {} {}"_t, run.value().number, run.value().configuration,
            run.value().direction, seconds,
            app::fixed(m_io.language, consumption.value()->value, consumption.value()->decimals),
            app::wording::unitText(m_io.language, consumption.value()->unit)));
    else
        tell(m_io.language.say("run {}: {}, {}, {} s; its consumption is that of the recording"_t,
                               run.value().number, run.value().configuration, run.value().direction,
                               seconds));
}

void RecordDesk::mark(const std::vector<std::string>& words)
{
    if (words.empty())
        return refuse(wrongUse("expected a word for the mark"_t));
    if (const Outcome done = m_desk.mark(words[0], joinedFrom(words, 1)); !done)
        return refuse(done.error());
    tell(m_io.language.say("marked: {}"_t, joinedFrom(words, 0)));
}

/// All of it or nothing: what is wrong is typed again.
void RecordDesk::weather(const std::vector<std::string>& words)
{
    if (words.empty())
        return refuse(wrongUse("expected the weather, like temperature_c=14 wind_ms=2"_t));
    app::Weather noted;
    for (const std::string& word : words) {
        const auto assignment = splitAssignment(word);
        if (!assignment)
            return refuse(assignment.error());
        const auto& [column, text] = assignment.value();
        const auto number = numberFrom(text);
        if (!number)
            return refuse(wrongUse(core::message("'{}' is no number"_t, text)));
        if (const Outcome done = app::noteWeather(noted, column, number->value); !done)
            return refuse(done.error());
    }
    m_desk.noteWeather(noted);
    tell(m_io.language.say("the weather is noted; it goes into the run"_t));
}

void RecordDesk::discard(const std::vector<std::string>& words)
{
    core::Discard why;
    if (!words.empty()) {
        const bool isRule = core::ruleFromName(words[0]).has_value();
        why.reason = isRule ? words[0] : "other";
        why.evidence = joinedFrom(words, isRule || words[0] == "other" ? 1 : 0);
    } else if (const auto spoiled = m_desk.spoiledBy()) {
        why = *spoiled;
    } else {
        return refuse(wrongUse("nothing is known that spoils the run; expected a reason"_t));
    }
    if (why.reason == "other" && why.evidence.empty())
        return refuse(wrongUse("the reason 'other' needs words: what was seen"_t));
    const auto run = m_desk.discard(why);
    if (!run)
        return refuse(run.error());
    tell(m_io.language.say("run {} is discarded: {}"_t, run.value().number,
                           app::wording::reasonName(m_io.language, why.reason)));
    sayNext();
}

void RecordDesk::sayNext()
{
    const auto next = m_desk.next();
    if (!next)
        return refuse(next.error());
    const app::UpNext& what = next.value();
    std::string line = m_io.language.say("next: run {}, {}, {}"_t, what.number, what.configuration,
                                         what.direction);
    if (what.planned_pairs_in_block)
        line += "; " + m_io.language.say("block {}, {} of {} pairs"_t, what.block,
                                         what.pairs_in_block, *what.planned_pairs_in_block);
    if (what.switchFirst)
        line += "; " + m_io.language.say("switch first"_t);
    if (m_desk.isWeatherDue(what))
        line += "; " + m_io.language.say("note the weather: weather temperature_c=14 wind_ms=2"_t);
    tell(line);
}

void RecordDesk::announce()
{
    const app::LiveSnapshot now = m_session.snapshot();
    sayInstruments(now);
    sayTrouble(now);
    sayAlarms(now);
    sayEnded(now);
}

void RecordDesk::sayAlarms(const app::LiveSnapshot& now)
{
    std::erase_if(m_said, [&](const auto& one) {
        return std::none_of(now.alarms.begin(), now.alarms.end(),
                            [&](const core::Alarm& alarm) { return alarm.key == one.first; });
    });
    for (const core::Alarm& one : now.alarms) {
        if (core::isLack(one)) { // it lacks before each run
            if (m_lacks.insert(one.key).second)
                alarm(alarmLine(m_io.language, one), one.level != core::AlarmLevel::note);
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
        alarm(alarmLine(m_io.language, one), !isNote);
    }
}

void RecordDesk::sayInstruments(const app::LiveSnapshot& now)
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

void RecordDesk::sayTrouble(const app::LiveSnapshot& now)
{
    const std::string words = now.trouble ? m_io.language.describe(*now.trouble) : std::string();
    if (words != m_trouble && !words.empty())
        alarm(words, true);
    m_trouble = words;
    if (now.disk_full_min && !m_diskSaid)
        alarm(m_io.language.say("at this pace the disk is full in {} minutes"_t,
                                app::fixed(m_io.language, *now.disk_full_min, 0)),
              true);
    m_diskSaid = now.disk_full_min.has_value();
}

void RecordDesk::sayEnded(const app::LiveSnapshot& now)
{
    if (!m_waitsForEnd || !now.ended)
        return;
    m_waitsForEnd = false;
    for (const core::Finding& finding : now.ended->findings)
        alarm("  " + app::wording::findingSentence(m_io.language, finding),
              finding.grade == core::Grade::spoils);
    if (m_desk.spoiledBy())
        alarm(m_io.language.say("that spoils the run: 'discard', then turn and drive it again"_t),
              false);
    sayNext();
}

void RecordDesk::showStatus()
{
    if (!m_io.outIsTerminal)
        return;
    const app::LiveSnapshot now = m_session.snapshot();
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
