// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/record/record_desk.h"

#include "app/cli/options.h"
#include "app/wording/findings.h"
#include "app/wording/numbers.h"
#include "app/wording/run_under_way.h"
#include "app/wording/units.h"
#include "core/study/rule.h"
#include "storage/sheet/run_columns.h"

#include <algorithm>
#include <ostream>
#include <thread>

namespace bothways::cli {
namespace {

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

app::UsualDirections usualDirections(const Language& in)
{
    return {in.say("out##a direction"_t), in.say("return##a direction"_t)};
}

} // namespace

RecordDesk::RecordDesk(storage::StudyFile& study, app::LiveSession& session,
                       std::string configuration, Surroundings& io)
    : m_io(io),
      m_voice(io),
      m_session(session),
      m_study(study),
      m_desk(study, session, usualDirections(io.language)),
      m_configuration(std::move(configuration))
{
}

void RecordDesk::order(std::string_view line)
{
    m_voice.typed();
    const auto order = recordOrderFrom(line);
    if (!order)
        return m_voice.refuse(order.error());
    obey(order.value());
}

void RecordDesk::obey(const RecordOrder& order)
{
    using Kind = RecordOrder::Kind;
    switch (order.kind) {
    case Kind::acknowledge: return m_voice.heard();
    case Kind::start: return start(order.words);
    case Kind::end: return end(order.words);
    case Kind::mark: return mark(order.words);
    case Kind::on:
        if (const Outcome done = m_desk.switchOn(joinedFrom(order.words, 0)); !done)
            return m_voice.refuse(done.error());
        return m_voice.tell(m_io.language.say("{} is on"_t, joinedFrom(order.words, 0)));
    case Kind::weather: return weather(order.words);
    case Kind::discard: return discard(order.words);
    case Kind::forget:
        if (const Outcome done = m_desk.forget(); !done)
            return m_voice.refuse(done.error());
        return m_voice.tell(m_io.language.say("the run is forgotten; what was recorded stays"_t));
    case Kind::next: return sayNext();
    case Kind::help: return m_voice.tell(recordOrdersText(m_io.language));
    case Kind::stop: m_stopping = true; return;
    }
}

void RecordDesk::sayRun(const core::Run& run, core::Text<3> what)
{
    m_voice.tell(m_io.language.say(what, run.number, run.configuration, run.direction));
}

void RecordDesk::start(const std::vector<std::string>& words)
{
    app::RunDesk::Beginning beginning;
    if (!words.empty())
        beginning.configuration = words[0];
    if (words.size() > 1)
        beginning.direction = words[1];
    beginning.setting = joinedFrom(words, 2);
    begin(beginning);
    m_isFound = false;
}

void RecordDesk::begin(const app::RunDesk::Beginning& beginning)
{
    const auto run = m_desk.start(beginning);
    if (!run)
        return m_voice.refuse(run.error());
    m_voice.forgetAlarms();
    sayRun(run.value(), "run {}: {}, {}, begins"_t);
    if (m_desk.isWithoutWalkRound())
        m_voice.tell(m_io.language.say("this block begins without its walk-round"_t));
    if (m_desk.isWithoutWeather())
        m_voice.tell(m_io.language.say("note the weather: weather temperature_c=14 wind_ms=2"_t));
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
        return m_voice.refuse(consumption.error());
    // The next one may have begun by itself before the number is typed.
    const bool isNoted =
        consumption.value() && (!m_desk.isUnderWay() || (m_isFound && m_awaitsNumber));
    const auto run = isNoted ? m_desk.note(*consumption.value()) : m_desk.end(consumption.value());
    if (!run)
        return m_voice.refuse(run.error());
    if (isNoted)
        sayEnd(run.value());
    else
        written(run.value());
    m_awaitsNumber = false;
}

void RecordDesk::written(const core::Run& run)
{
    ++m_written;
    m_waitsForEnd = true;
    sayEnd(run);
}

void RecordDesk::sayEnd(const core::Run& run)
{
    const std::string seconds = app::fixed(m_io.language, run.duration_s.value_or(0.0), 1);
    if (run.consumption)
        m_voice.tell(m_io.language.say(
            "run {}: {}, {}, {} s, {} {}"_t, run.number, run.configuration, run.direction, seconds,
            app::fixed(m_io.language, run.consumption->value, run.consumption->decimals),
            app::wording::unitText(m_io.language, run.consumption->unit)));
    else
        m_voice.tell(
            m_io.language.say("run {}: {}, {}, {} s; its consumption is that of the recording"_t,
                              run.number, run.configuration, run.direction, seconds));
}

void RecordDesk::finishRuns()
{
    constexpr int kMostLooks = 100;
    constexpr std::chrono::milliseconds kLook(100);
    m_session.finishRuns();
    announce();
    for (int i = 0; i < kMostLooks && (m_waitsForEnd || !m_found.empty()); ++i) {
        std::this_thread::sleep_for(kLook);
        announce();
    }
}

/// A run begins once it is said what was found in the one before, but for at most two seconds.
void RecordDesk::followFound()
{
    constexpr int kMostWaits = 20;
    for (const core::FoundBound& found : m_session.takeFound())
        m_found.push_back(found);
    for (; !m_found.empty(); m_found.pop_front()) {
        const bool begins = m_found.front().what == core::FoundBound::What::begins;
        if (begins && m_waitsForEnd && m_waits++ < kMostWaits)
            return;
        m_waits = 0;
        follow(m_found.front());
    }
}

void RecordDesk::follow(const core::FoundBound& found)
{
    using What = core::FoundBound::What;
    if (found.what == What::begins)
        return beginFound(found);
    if (!m_desk.isUnderWay()) // whoever types was first
        return;
    const bool isNone = found.what == What::wasNone || found.at_s <= m_desk.start_s();
    if (isNone && !m_isFound)
        return;
    if (isNone)
        return dropFound();
    const auto run = m_desk.end({}, {found.at_s, found.isMarked});
    if (!run) { // the next one shall not be kept from beginning
        m_voice.refuse(run.error());
        return dropFound();
    }
    written(run.value());
    m_awaitsNumber = true;
}

void RecordDesk::beginFound(const core::FoundBound& found)
{
    if (m_desk.isUnderWay())
        return;
    auto beginning = m_desk.beginningOf(found);
    if (!beginning)
        return m_voice.refuse(beginning.error());
    if (beginning.value().configuration.empty())
        beginning.value().configuration = m_configuration;
    begin(beginning.value());
    m_isFound = m_desk.isUnderWay();
}

void RecordDesk::dropFound()
{
    if (const Outcome done = m_desk.forget(); !done)
        return m_voice.refuse(done.error());
    m_voice.tell(m_io.language.say(app::wording::wasNoRun()));
}

void RecordDesk::mark(const std::vector<std::string>& words)
{
    if (words.empty())
        return m_voice.refuse(wrongUse("expected a word for the mark"_t));
    if (const Outcome done = m_desk.mark(words[0], joinedFrom(words, 1)); !done)
        return m_voice.refuse(done.error());
    m_voice.tell(m_io.language.say("marked: {}"_t, joinedFrom(words, 0)));
}

/// All of it or nothing: what is wrong is typed again.
void RecordDesk::weather(const std::vector<std::string>& words)
{
    if (words.empty())
        return m_voice.refuse(wrongUse("expected the weather, like temperature_c=14 wind_ms=2"_t));
    app::Weather noted;
    for (const std::string& word : words) {
        const auto assignment = splitAssignment(word);
        if (!assignment)
            return m_voice.refuse(assignment.error());
        const auto& [column, text] = assignment.value();
        const auto number = numberFrom(text);
        if (!number)
            return m_voice.refuse(wrongUse(core::message("'{}' is no number"_t, text)));
        if (const Outcome done = app::noteWeather(noted, column, number->value); !done)
            return m_voice.refuse(done.error());
    }
    m_desk.noteWeather(noted);
    m_voice.tell(m_io.language.say("the weather is noted; it goes into the run"_t));
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
        return m_voice.refuse(
            wrongUse("nothing is known that spoils the run; expected a reason"_t));
    }
    if (why.reason == "other" && why.evidence.empty())
        return m_voice.refuse(wrongUse("the reason 'other' needs words: what was seen"_t));
    const auto run = m_desk.discard(why);
    if (!run)
        return m_voice.refuse(run.error());
    m_voice.tell(m_io.language.say("run {} is discarded: {}"_t, run.value().number,
                                   app::wording::reasonName(m_io.language, why.reason)));
    sayNext();
}

void RecordDesk::sayNext()
{
    const auto next = m_desk.next();
    if (!next)
        return m_voice.refuse(next.error());
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
    m_voice.tell(line);
}

void RecordDesk::announce()
{
    followFound();
    const app::LiveSnapshot now = m_session.snapshot();
    m_voice.announce(now);
    sayEnded(now);
}

void RecordDesk::sayEnded(const app::LiveSnapshot& now)
{
    if (!m_waitsForEnd || !now.ended)
        return;
    m_waitsForEnd = false;
    for (const core::Finding& finding : now.ended->findings)
        m_voice.alarm("  " + app::wording::findingSentence(m_io.language, finding),
                      finding.grade == core::Grade::spoils);
    if (m_desk.spoiledBy())
        m_voice.alarm(
            m_io.language.say("that spoils the run: 'discard', then turn and drive it again"_t),
            false);
    sayNext();
}

} // namespace bothways::cli
