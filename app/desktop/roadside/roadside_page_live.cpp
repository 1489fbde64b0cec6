// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/big_label.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/roadside/roadside_page.h"
#include "app/desktop/watch/alarm_band.h"
#include "app/desktop/watch/live_desk.h"
#include "app/desktop/watch/live_words.h"
#include "app/desktop/watch/watch_panel.h"
#include "app/wording/findings.h"
#include "core/screening/screening.h"

#include <QGridLayout>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

/// The page while a recording is made: channels, alarms, instruments.
namespace bothways::app {
namespace {

constexpr int kLiveGap = 8;
constexpr int kReadyRow = 2;
constexpr int kMostRows = 6;

} // namespace

void RoadsidePage::buildLive(QBoxLayout& box)
{
    m_instruments = label("instruments", 0.03, this);
    m_instruments->setAccessibleName(tr("Instruments"));
    box.addWidget(m_instruments, 5);
    m_alarmRow = new QWidget(this);
    m_alarmRow->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    auto* row = new QHBoxLayout(m_alarmRow);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kLiveGap);
    m_alarm = new AlarmBand(m_alarmRow);
    auto* discard = button(BigButton::Kind::primary, "discardForFinding", Qt::Key_A, m_alarmRow,
                           [this] { discardForFinding(); });
    discard->setMost(0.045);
    auto* heard = button(BigButton::Kind::plain, "alarmHeard", Qt::Key_H, m_alarmRow,
                         [this] { m_live.acknowledge(); });
    heard->setMost(0.045);
    heard->setWords(tr("Heard"));
    row->addWidget(m_alarm, 66);
    row->addWidget(discard, 20);
    row->addWidget(heard, 14);
    box.addWidget(m_alarmRow, 15);
    m_instruments->hide();
    m_alarmRow->hide();
}

/// Recording, the channels have the larger half, and the clock is beside them.
void RoadsidePage::layOutRunning()
{
    const bool live = m_live.isRecording();
    QGridLayout& grid = *m_runningGrid;
    while (QLayoutItem* item = grid.takeAt(0))
        delete item;
    for (int row = 0; row < kMostRows; ++row)
        grid.setRowStretch(row, 0);
    const int columns[] = {live ? 58 : 46, live ? 21 : 27, live ? 21 : 27};
    for (int column = 0; column < 3; ++column)
        grid.setColumnStretch(column, columns[column]);
    m_watchRunning->setVisible(live);
    m_distance->setVisible(live);
    const int marks = live ? 3 : 0; // their first row
    grid.addWidget(find("markTraffic"), marks, 1);
    grid.addWidget(find("markGust"), marks, 2);
    grid.addWidget(find("markAdjusted"), marks + 1, 1);
    grid.addWidget(find("markOther"), marks + 1, 2);
    grid.addWidget(find("end"), marks + 2, 1, 1, 2);
    if (!live) {
        grid.addWidget(m_elapsed, 0, 0, 2, 1);
        grid.addWidget(m_reminder, 2, 0);
        const int shares[] = {30, 30, 40};
        for (int row = 0; row < 3; ++row)
            grid.setRowStretch(row, shares[row]);
        return;
    }
    grid.addWidget(m_watchRunning, 0, 0, kMostRows, 1);
    grid.addWidget(m_elapsed, 0, 1, 1, 2);
    grid.addWidget(m_distance, 1, 1, 1, 2);
    grid.addWidget(m_reminder, 2, 1, 1, 2);
    const int shares[] = {24, 11, 10, 14, 14, 27};
    for (int row = 0; row < kMostRows; ++row)
        grid.setRowStretch(row, shares[row]);
}

void RoadsidePage::lookLive()
{
    if (const QString said = m_session.takeFound(); !said.isEmpty()) {
        m_said = said;
        follow({});
    }
    refreshLive();
}

void RoadsidePage::takeLive()
{
    const bool live = m_live.isRecording();
    m_session.setLive(m_live.source());
    m_watchReady->setVisible(live);
    m_readyGrid->setRowStretch(kReadyRow, live ? 50 : 0);
    m_instruments->setVisible(live);
    layOutRunning();
    refreshLive();
}

QStringList RoadsidePage::watched() const
{
    return channelsToWatch(m_live.snapshot(), m_preferences.watchedChannels(),
                           m_document.isBlind());
}

void RoadsidePage::refreshLive()
{
    if (!m_live.isRecording()) {
        m_alarmRow->hide();
        return;
    }
    const LiveSnapshot& snapshot = m_live.snapshot();
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    WatchPanel* panel = m_stack->currentWidget() == m_running ? m_watchRunning : m_watchReady;
    panel->showLive(snapshot, watched(), m_document.study(), units);
    m_instruments->setWords(LiveWords::instruments(snapshot, units));
    m_distance->setWords(LiveWords::distance(snapshot, m_document.study(), units));
    const core::Alarm* alarm = m_live.bell().foremost();
    m_alarmRow->setVisible(alarm != nullptr);
    if (!alarm)
        return;
    m_alarm->showAlarm(*alarm, LiveWords::graveAlarm(*alarm, units),
                       static_cast<int>(m_live.bell().alarms().size()) - 1,
                       m_live.bell().isAcknowledged(*alarm));
    find("alarmHeard")->setVisible(m_live.bell().isRinging());
    const auto spoiled = spoiling();
    BigButton* discard = find("discardForFinding");
    discard->setVisible(spoiled.has_value() && !isAside());
    if (spoiled)
        discard->setWords(tr("Discard and drive again"),
                          shown(wording::ruleName(m_preferences.spoken(), spoiled->rule)));
}

std::optional<core::Finding> RoadsidePage::spoiling()
{
    if (!m_session.hasRun())
        return std::nullopt;
    for (const core::Alarm& alarm : m_live.bell().alarms())
        if (alarm.kind == core::Alarm::Kind::finding && alarm.level == core::AlarmLevel::spoiled &&
            alarm.finding.run == m_session.number())
            return alarm.finding;
    return std::nullopt;
}

/// One key: the reason and its evidence are the finding's.
void RoadsidePage::discardForFinding()
{
    const auto finding = spoiling();
    if (!finding)
        return;
    const int number = m_session.discardable();
    const QString refusal = m_session.discard(core::discardFor(*finding));
    if (refusal.isEmpty()) {
        m_said = tr("Run %1 is discarded: %2. Turn and drive it again.")
                     .arg(number)
                     .arg(shown(wording::ruleName(m_preferences.spoken(), finding->rule)));
        m_live.acknowledge();
        m_live.settleEnded(number);
    }
    follow(refusal);
}

void RoadsidePage::chooseAnotherChannel(int tile)
{
    m_preferences.setWatchedChannels(
        withNextChannel(m_live.snapshot(), watched(), tile, m_document.isBlind()));
    refreshLive();
}

} // namespace bothways::app
