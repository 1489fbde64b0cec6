// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/live/run_desk.h"

#include "app/wording/run_under_way.h"
#include "core/screening/screening.h"
#include "core/study/fuel.h"
#include "storage/recordings/cut.h"
#include "storage/study/walk_rounds.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

using core::Done;
using core::Error;
using core::ErrorCode;
using core::Outcome;
using core::Result;

Error refused(core::Message why)
{
    return Error{ErrorCode::wrongUse, std::move(why), {}};
}

double toTenths(double seconds)
{
    return std::round(seconds * 10.0) / 10.0;
}

} // namespace

RunDesk::RunDesk(storage::StudyFile& study, LiveSession& session, UsualDirections usual)
    : m_study(study), m_session(session), m_usual(std::move(usual))
{
}

Result<UpNext> RunDesk::next() const
{
    const auto study = m_study.study();
    if (!study)
        return study.error();
    return upNext(study.value(), m_usual);
}

core::Instant RunDesk::at(double time_s) const
{
    core::Instant instant = m_session.first();
    instant.us += std::llround(toTenths(time_s) * 1e6);
    return instant;
}

/// As it comes next; of another configuration, that with which it was driven last.
std::string RunDesk::settingOf(const UpNext& next, const core::Study& study,
                               const std::string& configuration)
{
    if (core::sameWord(configuration, next.configuration))
        return next.setting;
    std::string setting;
    for (const core::Run& run : study.runs)
        if (core::sameWord(run.configuration, configuration))
            setting = run.setting;
    return setting;
}

Result<core::Run> RunDesk::start(const Beginning& beginning)
{
    if (m_run)
        return refused("a run is under way; end it first"_t);
    const auto study = m_study.study();
    if (!study)
        return study.error();
    const UpNext next = upNext(study.value(), m_usual);
    core::Run run;
    run.number = next.number;
    run.configuration =
        beginning.configuration.empty() ? next.configuration : beginning.configuration;
    run.direction = beginning.direction.empty() ? next.direction : beginning.direction;
    run.setting = beginning.setting.empty() ? settingOf(next, study.value(), run.configuration)
                                            : beginning.setting;
    m_start_s = toTenths(beginning.at_s.value_or(m_session.clock_s()));
    run.start = at(m_start_s);
    const auto walked = storage::walkRounds(m_study);
    if (!walked)
        return walked.error();
    core::putNumbers(run, walked.value());
    m_withoutWeather =
        m_weather.empty() && beginsBlock(study.value(), run.configuration, run.start);
    m_withoutWalkRound = core::wouldBeWithoutWalkRound(study.value(), run, walked.value());
    for (const auto& [accessory, on_s] : m_on_s)
        run.accessory_on_s[accessory] = toTenths(on_s - m_start_s);
    m_run = run;
    m_session.begin({run, m_start_s, expectedDuration_s(study.value())});
    if (!beginning.isMarked)
        m_session.mark(m_start_s, "start",
                       fmt::format("{} {} {}", run.number, run.configuration, run.direction));
    return run;
}

Result<RunDesk::Beginning> RunDesk::beginningOf(const core::FoundBound& found) const
{
    const auto study = m_study.study();
    if (!study)
        return study.error();
    const BegunAs begun = begunAs(found, study.value(), m_usual);
    return Beginning{begun.configuration, begun.direction, {}, found.at_s, found.isMarked};
}

Outcome RunDesk::mark(const std::string& word, const std::string& words)
{
    if (word.empty())
        return refused("expected a word for the mark"_t);
    const double now_s = m_session.clock_s();
    if (m_run)
        m_run->marks.push_back({toTenths(now_s - m_start_s), word, words});
    m_session.mark(now_s, word, words);
    return Done{};
}

void RunDesk::noteWeather(const Weather& noted)
{
    for (const auto& [column, value] : noted)
        m_weather.insert_or_assign(column, value);
}

bool RunDesk::isWeatherDue(const UpNext& next) const
{
    const auto study = m_study.study();
    return study && m_weather.empty() &&
           beginsBlock(study.value(), next.configuration, at(m_session.clock_s()));
}

Outcome RunDesk::switchOn(const std::string& accessory)
{
    const auto study = m_study.study();
    if (!study)
        return study.error();
    const auto& timed = study.value().properties.timed_accessories;
    const auto known = std::find_if(timed.begin(), timed.end(), [&](const auto& timer) {
        return core::sameWord(timer.name, accessory);
    });
    if (known == timed.end())
        return refused(core::message("the study has no timed accessory '{}'"_t, accessory));
    m_on_s[known->name] = m_session.clock_s();
    if (m_run)
        m_run->accessory_on_s[known->name] = toTenths(m_on_s[known->name] - m_start_s);
    return Done{};
}

Result<core::Run> RunDesk::write(core::Run run, const Ending& ending)
{
    const double end_s = toTenths(ending.at_s.value_or(m_session.clock_s()));
    run.duration_s = toTenths(end_s - m_start_s);
    putWeather(run, m_weather);
    const auto recording = m_session.recording();
    Outcome added = Done{};
    if (recording) {
        run.trace = m_session.name();
        storage::Cut cut;
        cut.run = run;
        cut.offset_s = m_start_s;
        added = storage::cutRecording(m_study, *recording, {cut});
    } else if (const auto id = m_study.addRun(run); !id) {
        added = id.error();
    }
    if (!added)
        return added.error();
    m_session.end(end_s);
    if (run.counted()) // one that is driven again has the same weather
        m_weather.clear();
    if (!ending.isMarked)
        m_session.mark(end_s, "end", fmt::format("{}", run.number));
    m_run.reset();
    tellSession();
    const auto study = m_study.study();
    if (!study)
        return study.error();
    for (const core::Run& written : study.value().runs)
        if (written.number == run.number)
            m_written = written;
    return *m_written;
}

Result<core::Run> RunDesk::end(const std::optional<core::Consumption>& consumption,
                               const Ending& ending)
{
    if (!m_run)
        return refused(wording::noRunUnderWay());
    core::Run run = *m_run;
    run.consumption = consumption;
    return write(std::move(run), ending);
}

Result<core::Run> RunDesk::note(const core::Consumption& consumption)
{
    if (!m_written)
        return refused(wording::noRunUnderWay());
    if (m_written->consumption)
        return refused(
            core::message("run {} has its consumption; no run is under way"_t, m_written->number));
    core::Run run = *m_written;
    run.consumption = consumption;
    if (const Outcome done = m_study.updateRun(run); !done)
        return done.error();
    m_written = run;
    tellSession();
    return run;
}

Result<core::Run> RunDesk::discard(const core::Discard& why)
{
    if (m_run) {
        core::Run run = *m_run;
        run.discard = why;
        return write(std::move(run), {});
    }
    if (!m_written)
        return refused(wording::noRunToDiscard());
    if (const Outcome done = m_study.discard({m_written->id}, why); !done)
        return done.error();
    m_written->discard = why;
    tellSession();
    return *m_written;
}

Outcome RunDesk::forget()
{
    if (!m_run)
        return refused(wording::noRunUnderWay());
    m_run.reset();
    m_session.forget();
    return Done{};
}

std::optional<core::Discard> RunDesk::spoiledBy() const
{
    const auto ended = m_session.snapshot().ended;
    if (!ended || !m_written || !m_written->counted())
        return std::nullopt;
    for (const core::Finding& finding : ended->findings)
        if (finding.run == m_written->number && finding.grade == core::Grade::spoils)
            return core::discardFor(finding);
    return std::nullopt;
}

Result<core::ConsumptionUnit> RunDesk::unit() const
{
    const auto study = m_study.study();
    if (!study)
        return study.error();
    if (const auto last = core::lastUnit(study.value().runs))
        return *last;
    return core::isElectric(study.value()) ? core::ConsumptionUnit::kwhPer100km
                                           : core::ConsumptionUnit::lPer100km;
}

void RunDesk::tellSession()
{
    if (auto study = m_study.study())
        m_session.setStudy(std::move(study).take());
}

} // namespace bothways::app
