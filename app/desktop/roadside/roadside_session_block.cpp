// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/roadside/roadside_session.h"

/// What is done once a block, before its first run: the walk-round, and the weather.
namespace bothways::app {

core::Instant RoadsideSession::startOfBlock() const
{
    return hasRun() ? m_draft.run->start : instantOf(m_document->study(), m_clock());
}

std::vector<core::WalkLine> RoadsideSession::walkLines() const
{
    return m_document ? m_document->walkLines() : std::vector<core::WalkLine>();
}

bool RoadsideSession::isWalkRoundDue() const
{
    if (!m_document)
        return false;
    core::Run run;
    run.number = number();
    run.configuration = hasRun() ? m_draft.run->configuration : next().configuration;
    run.start = startOfBlock();
    return core::wouldBeWithoutWalkRound(m_document->study(), run, m_document->walkRounds());
}

core::WalkRound RoadsideSession::blankWalkRound() const
{
    return core::blankRound(walkLines(), startOfBlock(), number());
}

QString RoadsideSession::noteWalkRound(const core::WalkRound& round)
{
    if (!m_document)
        return tr("The study is closed.");
    m_walkDifferences = m_document->walkDifferences(m_preferences.spoken(), round);
    return order([&](StudyDocument& document) { return document.noteWalkRound(round); });
}

bool RoadsideSession::isWeatherDue() const
{
    return m_document && !hasRun() && m_draft.weather.empty() &&
           beginsBlock(m_document->study(), next().configuration, startOfBlock());
}

QString RoadsideSession::weatherText(RunField field) const
{
    core::Run run;
    putWeather(run, m_draft.weather);
    return fieldText(field, run, m_preferences.units());
}

QString RoadsideSession::noteWeather(RunField field, const QString& text)
{
    core::Run run;
    if (const QString why = writeField(field, text, m_preferences.units(), unit(), run);
        !why.isEmpty())
        return why;
    for (const auto& [which, value] : {std::pair{RunField::temperature, run.temperature_c},
                                       {RunField::wind, run.wind_ms},
                                       {RunField::windFrom, run.wind_from_deg},
                                       {RunField::pressure, run.pressure_hpa},
                                       {RunField::humidity, run.humidity_pct}})
        if (which == field)
            if (const core::Outcome done =
                    app::noteWeather(m_draft.weather, fieldName(field).toStdString(), value);
                !done)
                return sentenceOf(m_preferences.spoken(), done.error());
    keep();
    return {};
}

} // namespace bothways::app
