// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/watch/live_source.h"

#include <cmath>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace bothways::app::tests {

/// What a test says that is recorded, and what it was told meanwhile.
struct FakeLive {
    LiveSnapshot snapshot;
    std::vector<std::string> told; ///< "begin 3 at 12.0", ...
    std::vector<core::RunUnderWay> begun;
    std::vector<core::FoundBound> found; ///< to be taken once
    std::optional<core::RecordingId> recording;
    core::Outcome stopped = core::Done{};
    int stops = 0;
};

class FakeSource final : public LiveSource {
public:
    FakeSource(std::shared_ptr<FakeLive> live, const core::Instant& first)
        : m_live(std::move(live)), m_first(first)
    {
    }
    LiveSnapshot snapshot() const override { return m_live->snapshot; }
    double clock_s() const override { return m_live->snapshot.now_s; }
    core::Instant first() const override { return m_first; }
    void begin(const core::RunUnderWay& run) override
    {
        m_live->begun.push_back(run);
        tell("begin " + std::to_string(run.run.number), run.start_s);
    }
    void mark(double at_s, const std::string& word, const std::string&) override
    {
        tell("mark " + word, at_s);
    }
    void end(double at_s) override { tell("end", at_s); }
    void forget() override { m_live->told.emplace_back("forget"); }
    void setStudy(core::Study) override {}
    std::vector<core::FoundBound> takeFound() override { return std::exchange(m_live->found, {}); }
    std::optional<core::RecordingId> recording() const override { return m_live->recording; }
    core::Outcome stop() override
    {
        ++m_live->stops;
        return m_live->stopped;
    }

private:
    void tell(const std::string& what, double at_s)
    {
        m_live->told.push_back(what + " at " + std::to_string(std::lround(at_s)));
    }
    std::shared_ptr<FakeLive> m_live;
    core::Instant m_first;
};

inline LiveStarter starterOf(const std::shared_ptr<FakeLive>& live)
{
    return [live](storage::StudyFile, const storage::Rig&, const core::Instant& first,
                  const std::string&) -> core::Result<std::unique_ptr<LiveSource>> {
        return std::unique_ptr<LiveSource>(std::make_unique<FakeSource>(live, first));
    };
}

/// A channel whose last minute swings about `value`.
inline LiveChannel fakeChannel(const std::string& name, const std::string& unit, double value,
                               double swing, double now_s)
{
    LiveChannel channel;
    channel.name = name;
    channel.unit = unit;
    channel.value = value;
    channel.last_s = now_s;
    channel.rate_hz = 1000.0;
    for (int i = 0; i < 300; ++i) {
        const double turn = 0.11 * i;
        channel.low.push_back(static_cast<float>(value + swing * std::sin(turn) - 0.2 * swing));
        channel.high.push_back(static_cast<float>(value + swing * std::sin(turn) + 0.2 * swing));
    }
    channel.strip_to_s = now_s;
    return channel;
}

inline core::Alarm fakeAlarm(core::AlarmLevel level, core::Rule rule, int run)
{
    core::Alarm alarm;
    alarm.level = level;
    alarm.finding.rule = rule;
    alarm.finding.run = run;
    alarm.finding.from_s = 61.0;
    alarm.finding.to_s = 63.5;
    alarm.finding.value = 3410.0;
    alarm.finding.limit = 3200.0;
    alarm.finding.unit = "rpm";
    alarm.finding.length_s = 2.5;
    alarm.finding.grade =
        level == core::AlarmLevel::spoiled ? core::Grade::spoils : core::Grade::doubtful;
    alarm.key = std::string(core::ruleName(rule)) + std::to_string(run);
    return alarm;
}

/// A car with two rotors, everything well.
inline LiveSnapshot fakeSnapshot(double now_s)
{
    LiveSnapshot snapshot;
    snapshot.now_s = now_s;
    snapshot.channels = {fakeChannel("road_speed_kmh", "km/h", 90.2, 0.8, now_s),
                         fakeChannel("output_w", "W", 1240.0, 110.0, now_s),
                         fakeChannel("rotor_rpm@left", "rpm", 2810.0, 90.0, now_s),
                         fakeChannel("rotor_rpm@right", "rpm", 2795.0, 70.0, now_s),
                         fakeChannel("accessory_w", "W", 897.0, 6.0, now_s),
                         fakeChannel("fuel_rate_l_per_h", "L/h", 7.6, 0.4, now_s),
                         fakeChannel("vibration_ms2", "m/s²", 1.2, 0.2, now_s)};
    snapshot.instrument_names = {"board", "gps"};
    for (int i = 0; i < 2; ++i) {
        storage::InstrumentState state;
        state.is = storage::InstrumentState::Is::reading;
        state.last_s = now_s;
        snapshot.instruments.push_back(state);
    }
    snapshot.samples = 80'000;
    snapshot.bytes = 310'000;
    return snapshot;
}

} // namespace bothways::app::tests
