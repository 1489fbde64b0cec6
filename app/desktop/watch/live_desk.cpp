// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/live_desk.h"

#include "app/desktop/document/run_draft.h"
#include "app/desktop/document/study_document.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/watch/alarm_sounds.h"

#include <QtConcurrent>

#include <cmath>

namespace bothways::app {
namespace {

std::shared_ptr<core::Outcome> stopped(LiveSource& source)
{
    return std::make_shared<core::Outcome>(source.stop());
}

core::AlarmLevel levelOf(core::Grade grade)
{
    return grade == core::Grade::spoils ? core::AlarmLevel::spoiled : core::AlarmLevel::warning;
}

/// What was found when a run ended is said like what is found while it is driven.
std::vector<core::Alarm> foundAtTheEnd(const core::Screening& ended, double now_s)
{
    std::vector<core::Alarm> alarms;
    for (const core::Finding& finding : ended.findings) {
        if (finding.grade == core::Grade::note)
            continue;
        core::Alarm alarm;
        alarm.level = levelOf(finding.grade);
        alarm.finding = finding;
        alarm.since_s = now_s;
        alarm.key = "ended " + std::to_string(finding.run) + " " +
                    std::string(core::ruleName(finding.rule)) + " " + core::detailOf(finding);
        alarms.push_back(std::move(alarm));
    }
    return alarms;
}

} // namespace

LiveDesk::LiveDesk(Preferences& preferences, LiveStarter starter, QObject* parent)
    : QObject(parent),
      m_preferences(preferences),
      m_starter(std::move(starter)),
      m_bell([this](core::AlarmLevel level) { ring(level); })
{
    m_clock.start();
    connect(&m_looking, &QTimer::timeout, this, &LiveDesk::look);
    connect(&m_stopped, &QFutureWatcherBase::finished, this, &LiveDesk::finish);
}

LiveDesk::~LiveDesk()
{
    stopAndWait();
}

core::Outcome LiveDesk::start(StudyDocument& document, const storage::Rig& rig,
                              const QDateTime& now)
{
    if (m_source)
        return core::Error{core::ErrorCode::wrongUse, "a recording is under way already"_t, {}};
    const auto connection = document.anotherConnection();
    if (!connection)
        return core::Error{core::ErrorCode::studyFile, "the study cannot be written"_t,
                           document.path().toStdString()};
    auto source = m_starter(std::move(*connection), rig, instantOf(document.study(), now),
                            now.toString("yyyy-MM-dd HH:mm").toStdString());
    if (!source)
        return source.error();
    m_source = std::move(source).take();
    m_rig = rig;
    m_first = now;
    m_bell = AlarmBell([this](core::AlarmLevel level) { ring(level); });
    m_source->setStudy(document.study());
    // The study's runs and limits are what the rules go by.
    m_following = connect(&document, &StudyDocument::studyChanged, this, [this, &document] {
        if (isRecording())
            m_source->setStudy(document.study());
    });
    m_looking.start(kLook_ms);
    look();
    emit recordingStarted();
    return core::Done{};
}

QDateTime LiveDesk::now() const
{
    const double clock_s = m_source ? m_source->clock_s() : m_snapshot.now_s;
    return m_first.addMSecs(std::llround(1000.0 * clock_s));
}

void LiveDesk::look()
{
    if (!isRecording())
        return;
    m_snapshot = m_source->snapshot();
    std::vector<core::Alarm> alarms = m_snapshot.alarms;
    const auto& ended = m_snapshot.ended;
    const bool running = m_snapshot.run_s.has_value();
    if (running && !m_running)
        m_settled = 0; // another run, perhaps of the same number
    m_running = running;
    const bool asked = ended && !m_snapshot.run_s && !ended->findings.empty() &&
                       ended->findings.front().run != m_settled;
    if (asked)
        for (core::Alarm& alarm : foundAtTheEnd(*ended, m_snapshot.now_s))
            alarms.push_back(std::move(alarm));
    m_bell.look(alarms, m_clock.elapsed());
    emit looked();
}

void LiveDesk::acknowledge()
{
    m_bell.acknowledge();
    emit looked();
}

void LiveDesk::settleEnded(int run)
{
    m_settled = run; // what was found may still be on its way
    look();
}

void LiveDesk::ring(core::AlarmLevel level)
{
    if (m_ring) {
        m_ring(level);
        return;
    }
    if (!m_sounds)
        m_sounds = new AlarmSounds(this);
    m_sounds->play(level, m_preferences.alarmVolume());
}

void LiveDesk::stop()
{
    if (!isRecording())
        return;
    m_stopping = true;
    m_looking.stop();
    m_bell.look({}, m_clock.elapsed());
    emit recordingStopping();
    m_stopped.setFuture(QtConcurrent::run([source = m_source] { return stopped(*source); }));
}

void LiveDesk::stopAndWait()
{
    stop();
    if (!m_stopping)
        return;
    m_stopped.waitForFinished();
    finish();
}

void LiveDesk::finish()
{
    if (!m_stopping)
        return; // somebody waited for it
    const std::shared_ptr<core::Outcome> outcome = m_stopped.result();
    m_stopping = false;
    m_source.reset();
    disconnect(m_following);
    emit recordingStopped(*outcome);
}

} // namespace bothways::app
