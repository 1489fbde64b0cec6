// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/roadside/roadside_session.h"

#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/roadside/roadside_words.h"
#include "app/desktop/watch/live_source.h"
#include "app/wording/run_under_way.h"

#include <algorithm>
#include <cmath>

/// Runs that begin and end by what is recorded: marks of an instrument, gates, the target speed.
namespace bothways::app {

/// By the session's clock, which never runs backwards.
std::int64_t RoadsideSession::momentOf(double at_s)
{
    return now_ms() - std::llround(1000.0 * std::max(m_live->clock_s() - at_s, 0.0));
}

QString RoadsideSession::takeFound()
{
    if (!m_live || !m_document)
        return {};
    QString said;
    if (m_waiting && !hasRun())
        said = beginFound(*m_waiting);
    for (const core::FoundBound& found : m_live->takeFound())
        if (const QString words = follow(found); !words.isEmpty())
            said = words;
    return said;
}

QString RoadsideSession::follow(const core::FoundBound& found)
{
    using What = core::FoundBound::What;
    const bool running = m_state == State::running;
    switch (found.what) {
    case What::begins:
        if (running) // whoever pressed Start was first
            return {};
        if (!hasRun())
            return beginFound(found);
        m_waiting = found;
        return tr("The next run has begun. Type the number of run %1; it waits.").arg(number());
    case What::ends:
        if (running)
            return endFound(momentOf(found.at_s));
        if (!m_waiting)
            return {};
        m_waiting.reset();
        return tr("A run was driven while the number of run %1 was awaited. It is in the "
                  "recording; cut it there afterwards.")
            .arg(number());
    case What::wasNone: m_waiting.reset(); return running && m_isFound ? dropFound() : QString();
    }
    return {};
}

QString RoadsideSession::endFound(std::int64_t moment_ms)
{
    if (moment_ms <= m_draft.run->start_ms)
        return m_isFound ? dropFound() : QString();
    endAt(moment_ms);
    return tr("Run %1 has ended by what is recorded.").arg(number());
}

/// As if it had not begun: what was done before can still be taken back.
QString RoadsideSession::dropFound()
{
    std::vector<Step> before = std::move(m_steps);
    const auto kept = std::min(before.size(), m_stepsBefore);
    before.erase(before.begin() + static_cast<std::ptrdiff_t>(kept), before.end());
    forget();
    m_steps = std::move(before);
    m_configuration.reset();
    m_direction.reset();
    return sentenceOf(m_preferences.spoken(), wording::wasNoRun());
}

QString RoadsideSession::beginFound(const core::FoundBound& found)
{
    m_waiting.reset();
    const BegunAs begun = begunAs(found, m_document->study());
    if (!begun.configuration.empty()) {
        m_configuration = begun.configuration;
        m_setting.reset();
    }
    if (!begun.direction.empty())
        m_direction = begun.direction;
    m_stepsBefore = m_steps.size();
    begin(momentOf(found.at_s), next());
    m_isFound = true;
    return tr("Run %1 has begun by what is recorded.").arg(number());
}

} // namespace bothways::app
