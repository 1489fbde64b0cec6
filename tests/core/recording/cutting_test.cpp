// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: every way to cut, over the same made drive.
#include "core/recording/cutting.h"
#include "core/study/clock.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

namespace bothways::core {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

Instant at(const char* text)
{
    return parseDateTime(text).value();
}

Run aRun(int number, const char* start, const char* direction = "out")
{
    Run run;
    run.number = number;
    run.configuration = "A";
    run.direction = direction;
    run.start = at(start);
    run.duration_s = 200.0;
    return run;
}

Study aDay()
{
    Study study;
    study.runs = {aRun(1, "2026-05-09T05:40:00"), aRun(2, "2026-05-09T05:47:00", "return"),
                  aRun(3, "2026-05-09T05:55:30")};
    return study;
}

RecordingSpan from(const char* start, double length_s)
{
    return {at(start), 0.0, length_s};
}

TEST(MatchClocks, PutsARunWhereTheClocksSay)
{
    const Study day = aDay();
    const auto matches = matchClocks(from("2026-05-09T05:39:00", 1800), day.runs);
    ASSERT_TRUE(matches);
    EXPECT_EQ(matches.value()[0].offset_s, 60.0);
    EXPECT_EQ(matches.value()[2].offset_s, 990.0);
    ClockOptions fast;
    fast.ahead_s = 7.5;
    EXPECT_EQ(matchClocks(from("2026-05-09T05:39:00", 1800), day.runs, fast).value()[0].offset_s,
              67.5);
}

TEST(MatchClocks, TakesTime0ForTheStartWithoutAClock)
{
    const Study day = aDay();
    EXPECT_EQ(matchClocks({std::nullopt, -5, 300}, {day.runs.data(), 1}).value()[0].offset_s, 0.0);
}

TEST(MatchClocks, LetsARecorderBeSwitchedOnAMomentLate)
{
    const Study day = aDay();
    const std::span<const core::Run> first(day.runs.data(), 1);
    EXPECT_EQ(matchClocks(from("2026-05-09T05:40:05", 300), first).value()[0].offset_s, -5.0);
    EXPECT_FALSE(matchClocks(from("2026-05-09T05:40:06", 300), first));
}

TEST(MatchClocks, SaysByHowMuchAClockIsOffWhereWholeHalfHoursWouldFit)
{
    const Study day = aDay();
    const auto slow = matchClocks(from("2026-05-09T03:09:00", 1800), day.runs);
    ASSERT_FALSE(slow);
    EXPECT_THAT(slow.error().message.english(),
                HasSubstr("run 1 starts at 2026-05-09T05:40:00, the recording "
                          "lasts from 2026-05-09T03:09:00 to"));
    EXPECT_THAT(slow.error().message.english(), HasSubstr("2:30 h slow"));
    const auto far = matchClocks(from("2026-07-01T00:00:00", 1800), day.runs);
    EXPECT_THAT(far.error().message.english(), testing::Not(HasSubstr("would fit")));
}

TEST(MatchClocks, RelatesUtcAndLocalTime)
{
    Study day = aDay();
    ClockOptions summer;
    summer.utc_offset_min = 120;
    const RecordingSpan utc = from("2026-05-09T03:39:00Z", 1800);
    EXPECT_EQ(matchClocks(utc, day.runs, summer).value()[0].offset_s, 60.0);
    const auto guessed = matchClocks(utc, day.runs);
    ASSERT_TRUE(guessed); // 30 minutes and runs over 15.5: one quarter of an hour alone
    EXPECT_EQ(guessed.value()[0].guessed_offset_min, 120);
    EXPECT_EQ(guessed.value()[0].offset_s, 60.0);
    const auto unclear = matchClocks(from("2026-05-09T03:39:00Z", 7200), day.runs);
    ASSERT_FALSE(unclear);
    EXPECT_THAT(unclear.error().message.english(), HasSubstr("offset from UTC"));

    for (core::Run& run : day.runs) { // runs with an offset, a recorder on local time
        run.start.utc_offset_min = 120;
        run.start.us -= 7'200'000'000;
    }
    EXPECT_EQ(matchClocks(from("2026-05-09T05:39:00", 1800), day.runs).value()[1].offset_s, 480.0);
    EXPECT_EQ(matchClocks(utc, day.runs).value()[1].offset_s, 480.0);
}

TEST(CutByTimes, ProposesTheRunsThatLieInTheRecording)
{
    const auto proposals = cutByTimes(from("2026-05-09T05:45:00", 1800), aDay());
    ASSERT_TRUE(proposals);
    ASSERT_THAT(proposals.value(), SizeIs(2));
    EXPECT_EQ(proposals.value()[0].run, 2);
    EXPECT_EQ(proposals.value()[0].from_s, 120.0);
    EXPECT_EQ(proposals.value()[0].to_s, 320.0);
    EXPECT_EQ(proposals.value()[0].outward, false);
    EXPECT_EQ(proposals.value()[1].outward, true);
}

TEST(CutByTimes, EndsARunOfUnknownLengthAtTheNextOne)
{
    Study day = aDay();
    for (core::Run& run : day.runs)
        run.duration_s.reset();
    const auto proposals = cutByTimes(from("2026-05-09T05:39:00", 1800), day).value();
    EXPECT_EQ(proposals[0].to_s, 480.0);
    EXPECT_EQ(proposals[2].to_s, 1800.0);
}

TEST(CutByTimes, SaysWhyThereIsNothingToCut)
{
    EXPECT_THAT(cutByTimes({std::nullopt, 0, 100}, aDay()).error().message.english(),
                HasSubstr("no clock"));
    EXPECT_THAT(cutByTimes(from("2026-05-09T05:45:00", 10), {}).error().message.english(),
                HasSubstr("no runs"));
    EXPECT_THAT(cutByTimes(from("2026-05-09T06:39:00", 1800), aDay()).error().message.english(),
                HasSubstr("1:00 h fast"));
}

TEST(CutByMarks, TakesRunsFromStartToEnd)
{
    MemoryTrace recording;
    recording.add("v", "", {{0.0, 1000.0}, {1, 1}});
    recording.addMark(5, "gust");
    recording.addMark(10, "Start run 4 RETURN");
    recording.addMark(50, "passing_traffic lorry");
    recording.addMark(210, "end");
    recording.addMark(300, "begin: out");
    recording.addMark(500, "start 6");
    recording.addMark(900, "starting soon");
    const auto proposals = cutByMarks(recording, aDay());
    ASSERT_THAT(proposals, SizeIs(3));
    EXPECT_EQ(proposals[0].from_s, 10);
    EXPECT_EQ(proposals[0].to_s, 210);
    EXPECT_EQ(proposals[0].run, 4);
    EXPECT_EQ(proposals[0].outward, false);
    EXPECT_EQ(proposals[0].words, "Start run 4 RETURN");
    EXPECT_EQ(proposals[1].to_s, 500);
    EXPECT_EQ(proposals[1].outward, true);
    EXPECT_FALSE(proposals[1].run);
    EXPECT_EQ(proposals[2].to_s, 1000);
    EXPECT_EQ(proposals[2].run, 6);
}

/// Drives along the equator, where a degree of longitude is 111319.490793 m, once a second.
class Drive {
public:
    Drive& to(double lon_deg, double speed_kmh, double lat_deg = 0.0)
    {
        const double step_deg = speed_kmh / 3.6 / 111319.490793;
        const double sign = lon_deg > m_lon ? 1.0 : -1.0;
        while (sign * (lon_deg - m_lon) > 1e-12) {
            m_lon += sign * std::min(step_deg, std::abs(lon_deg - m_lon));
            put(speed_kmh, lat_deg);
        }
        return *this;
    }
    Drive& wait(int seconds)
    {
        for (int i = 0; i < seconds; ++i)
            put(0.0, 0.0);
        return *this;
    }
    Drive& skip(double seconds) { return m_time += seconds, *this; }
    Drive& speedAlone(int seconds, double speed_kmh)
    {
        for (int i = 0; i < seconds; ++i)
            put(speed_kmh, 0.0);
        return *this;
    }
    MemoryTrace trace(bool withPositions = true) const
    {
        MemoryTrace trace;
        trace.add("road_speed_kmh", "km/h", m_speed);
        if (withPositions) {
            trace.add("lat_deg", "", m_lats);
            trace.add("lon_deg", "", m_lons);
        }
        return trace;
    }
    double time() const { return m_time; }

private:
    void put(double speed_kmh, double lat_deg)
    {
        m_time += 1.0;
        for (Samples* samples : {&m_speed, &m_lats, &m_lons})
            samples->time_s.push_back(m_time);
        m_speed.value.push_back(speed_kmh);
        m_lats.value.push_back(lat_deg);
        m_lons.value.push_back(m_lon);
    }
    double m_time = 0.0, m_lon = 0.0;
    Samples m_speed, m_lats, m_lons;
};

const Geofence kStretch{0.0, 0.02, 0.0, 0.06, 50.0}; // 4452.78 m

TEST(CutByPosition, CutsOutAndReturnAtTheLinesAcrossTheRoad)
{
    const auto proposals =
        cutByPosition(Drive().to(0.08, 90).wait(60).to(0.0, 90).trace(), kStretch);
    ASSERT_THAT(proposals, SizeIs(2));
    const double metresOfADegree = 111319.490793;
    // From standstill at time 0 the first line is passed after 0.02 degrees at 25 m/s.
    EXPECT_NEAR(proposals[0].from_s, 0.02 * metresOfADegree / 25.0, 0.01);
    EXPECT_NEAR(proposals[0].to_s, 0.06 * metresOfADegree / 25.0, 0.01);
    EXPECT_EQ(proposals[0].outward, true);
    EXPECT_EQ(proposals[1].outward, false);
    for (const auto& proposal : proposals) {
        EXPECT_NEAR(proposal.to_s - proposal.from_s, 0.04 * metresOfADegree / 25.0, 0.1);
        EXPECT_NEAR(proposal.distance_km.value(), 0.04 * metresOfADegree / 1000, 0.002);
    }
}

TEST(CutByPosition, ARecordingThatBeginsOnAGateHasPassedIt)
{
    const double first_deg = 25.0 / 111319.490793; // the first position, 1 s from standstill
    const auto out = [&](double gate_deg) {
        return cutByPosition(Drive().to(0.08, 90).trace(), {0.0, gate_deg, 0.0, 0.06, 50.0});
    };
    ASSERT_THAT(out(first_deg), SizeIs(1));
    EXPECT_EQ(out(first_deg)[0].from_s, 1.0);
    EXPECT_EQ(out(first_deg)[0].outward, true);
    EXPECT_THAT(out(first_deg - 1e-6), SizeIs(1)) << "11 cm behind it";
    EXPECT_THAT(out(first_deg - 1e-4), IsEmpty()) << "11 m behind it: the run began before";
    const auto back = cutByPosition(Drive().to(0.08, 90).trace(), {0.0, 0.06, 0.0, first_deg, 50});
    ASSERT_THAT(back, SizeIs(1));
    EXPECT_EQ(back[0].outward, false);
}

TEST(CutByPosition, LeavesOutWhatTurnsBackWithinTheStretch)
{
    EXPECT_THAT(cutByPosition(Drive().to(0.05, 90).to(0.0, 90).trace(), kStretch), IsEmpty());
    const auto proposals =
        cutByPosition(Drive().to(0.08, 90).to(0.03, 90).to(0.08, 90).to(0.0, 90).trace(), kStretch);
    ASSERT_THAT(proposals, SizeIs(2));
    EXPECT_EQ(proposals[0].outward, true);
    EXPECT_EQ(proposals[1].outward, false);
    EXPECT_GT(proposals[1].from_s, proposals[0].to_s + 200);
}

TEST(CutByPosition, ForgetsARunThatWasLeftByAnotherRoadWhenTheNextBegins)
{
    const double hundredMetresNorth = 100.0 / 110574.0;
    // Out; back, but off the road half way; in again at the start, and turned within the stretch.
    const auto proposals = cutByPosition(Drive()
                                             .to(0.08, 90)
                                             .to(0.04, 90)
                                             .to(0.0, 90, hundredMetresNorth)
                                             .to(0.04, 90)
                                             .to(0.0, 90)
                                             .trace(),
                                         kStretch);
    ASSERT_THAT(proposals, SizeIs(1));
    EXPECT_EQ(proposals[0].outward, true);
}

TEST(CutByPosition, LeavesOutAnotherRoadAndHolesInTheRecording)
{
    const double hundredMetresNorth = 100.0 / 110574.0;
    EXPECT_THAT(cutByPosition(Drive().to(0.08, 90, hundredMetresNorth).trace(), kStretch),
                IsEmpty());
    EXPECT_THAT(cutByPosition(Drive().to(0.04, 90).skip(11).to(0.08, 90).trace(), kStretch),
                IsEmpty());
    EXPECT_THAT(cutByPosition(Drive().to(0.04, 90).skip(8).to(0.08, 90).trace(), kStretch),
                SizeIs(1));
    EXPECT_THAT(cutByPosition(Drive().to(0.08, 90).trace(false), kStretch), IsEmpty());
    EXPECT_THAT(cutByPosition(Drive().to(0.08, 90).trace(), {0, 0.02, 0, 0.02, 50}), IsEmpty());
}

TEST(CheckFence, SaysWhatIsNoPlaceOrNoStretch)
{
    const auto with = [](double Geofence::*field, double value) {
        Geofence fence = kStretch;
        fence.*field = value;
        const auto outcome = checkFence(fence);
        return outcome ? std::string() : outcome.error().message.english();
    };
    EXPECT_TRUE(checkFence(kStretch));
    EXPECT_THAT(with(&Geofence::start_lat_deg, 90.5), HasSubstr("latitude of the start gate"));
    EXPECT_THAT(with(&Geofence::end_lat_deg, std::nan("")), HasSubstr("latitude of the end gate"));
    EXPECT_THAT(with(&Geofence::start_lon_deg, -181.0), HasSubstr("longitude of the start gate"));
    EXPECT_THAT(with(&Geofence::end_lon_deg, 180.1), HasSubstr("longitude of the end gate"));
    EXPECT_THAT(with(&Geofence::end_lon_deg, 0.02), HasSubstr("the same place"));
    // 0.0004 degrees of the equator are 44.5 m.
    EXPECT_THAT(with(&Geofence::end_lon_deg, 0.0204), HasSubstr("45 m apart"));
    EXPECT_THAT(with(&Geofence::radius_m, 0.0), HasSubstr("more than 0"));
    EXPECT_THAT(with(&Geofence::radius_m, 1001.0), HasSubstr("at most 1000 m"));
}

/// The runs of parts that are {from, to} in a recording from 05:39:00, in which the runs of aDay()
/// last from 60 to 260 s, 480 to 680 s and 990 to 1190 s.
std::vector<std::optional<int>> givenTo(const std::vector<std::pair<double, double>>& parts,
                                        const Study& day = aDay())
{
    std::vector<CutProposal> proposals;
    for (const auto& [from_s, to_s] : parts)
        proposals.push_back({from_s, to_s, {}, {}, {}, {}});
    return runsInTime(proposals, cutByTimes(from("2026-05-09T05:39:00", 3600), day).value(), day);
}

using Numbers = std::vector<std::optional<int>>;

TEST(RunsInTime, GivesAPartToTheRunWithWhichItOverlapsMostIfByHalfOfTheShorter)
{
    EXPECT_EQ(givenTo({{70, 270}, {380, 580}, {1090, 1290}}), (Numbers{1, 2, 3}));
    EXPECT_EQ(givenTo({{379, 579}, {1091, 1291}}), (Numbers{{}, {}}));
    EXPECT_EQ(givenTo({{100, 120}, {670, 690}, {671, 691}}), (Numbers{1, 2, {}}));
    EXPECT_EQ(givenTo({{160, 650}}), Numbers{2}) << "100 s of run 1, 170 s of run 2";
    EXPECT_EQ(givenTo({{302, 470}, {1190, 1400}}), (Numbers{{}, {}})) << "no overlap at all";
    EXPECT_EQ(givenTo({{302, 302 + 25 * 60}}), Numbers{2}) << "a long part holds runs 2 and 3";
    EXPECT_EQ(givenTo({{1232, 1232 + 25 * 60}}), Numbers{std::nullopt}) << "242 s after run 3";
}

TEST(RunsInTime, GivesAPartToARunWithoutDurationByItsStart)
{
    Study day = aDay();
    for (core::Run& run : day.runs)
        run.duration_s.reset();
    EXPECT_EQ(givenTo({{120, 320}, {470, 480}, {800, 1000}}, day), (Numbers{1, {}, {}}));
    EXPECT_EQ(givenTo({{121, 321}, {490, 500}, {900, 1190}}, day), (Numbers{{}, 2, 3}));
}

TEST(RunsInTime, NeverGivesTwoPartsToOneRun)
{
    EXPECT_EQ(givenTo({{60, 140}, {150, 260}, {480, 580}, {580, 680}}), (Numbers{{}, 1, 2, {}}));
    const Study day = aDay();
    const std::vector<CutProposal> parts{{60, 260, {}, {}, {}, {}}, {700, 900, {}, 1, {}, {}}};
    EXPECT_EQ(runsInTime(parts, cutByTimes(from("2026-05-09T05:39:00", 3600), day).value(), day),
              (Numbers{{}, 1}))
        << "a mark named it";
}

TEST(CutByTarget, SaysWhichSpeedItTookWhereThatIsNotTheTarget)
{
    const auto trace = Drive().speedAlone(100, 90).speedAlone(300, 50).trace(false);
    Study day;
    EXPECT_EQ(cutByTarget(trace, day).heldLongest_kmh, 50.0);
    EXPECT_EQ(cutByTarget(trace, day).parts.at(0).from_s, 101.0);
    day.properties.limits["road_speed.target_kmh"] = 90;
    EXPECT_EQ(cutByTarget(trace, day).heldLongest_kmh, std::nullopt);
    EXPECT_EQ(cutByTarget(trace, day).parts.at(0).from_s, 1.0);
    day.properties.limits["road_speed.target_kmh"] = 120;
    EXPECT_EQ(cutByTarget(trace, day).heldLongest_kmh, 50.0);
}

TEST(CutBySpeed, FindsTheSpeedThatWasHeldAndTheStretchesOnWhichItWas)
{
    Drive drive;
    drive.to(0.01, 40).to(0.05, 90).to(0.055, 50).wait(30).to(0.055 - 0.01, 40);
    const double returnFrom = drive.time();
    drive.to(0.0, 91);
    const auto proposals = cutBySpeed(drive.trace());
    ASSERT_THAT(proposals, SizeIs(2));
    EXPECT_EQ(proposals[0].outward, true);
    EXPECT_EQ(proposals[1].outward, false);
    EXPECT_EQ(proposals[1].from_s, returnFrom + 1);
    EXPECT_NEAR(proposals[0].to_s - proposals[0].from_s, 0.04 * 111319.49 / 25.0, 2.0);
    EXPECT_FALSE(cutBySpeed(drive.trace(false))[0].outward);
}

TEST(CutBySpeed, BridgesAMomentAndDropsWhatIsTooShort)
{
    const auto speeds = [](int disturbed) {
        return Drive()
            .speedAlone(100, 90)
            .speedAlone(disturbed, 70)
            .speedAlone(100, 90)
            .trace(false);
    };
    CruiseOptions options;
    options.target_kmh = 90;
    EXPECT_THAT(cutBySpeed(speeds(9), options), SizeIs(1));
    EXPECT_THAT(cutBySpeed(speeds(10), options), SizeIs(2));
    options.shortest_s = 120;
    EXPECT_THAT(cutBySpeed(speeds(10), options), IsEmpty());
    options.target_kmh = 70;
    EXPECT_THAT(cutBySpeed(speeds(59), options), IsEmpty());
    EXPECT_THAT(cutBySpeed(Drive().speedAlone(500, 0).trace(), {}), IsEmpty());
    EXPECT_THAT(cutBySpeed(MemoryTrace(), {}), IsEmpty());
}

TEST(RunFromProposal, HasTheStudysKindOfTimeAndDirections)
{
    CutProposal proposal{600, 800, false, {}, 5.0, {}};
    ClockOptions options;
    options.utc_offset_min = 120;
    const core::Run run =
        runFromProposal(proposal, from("2026-05-09T03:39:00Z", 1800), aDay(), options).value();
    EXPECT_EQ(formatDateTime(run.start), "2026-05-09T05:49:00");
    EXPECT_EQ(run.direction, "return");
    EXPECT_EQ(run.duration_s, 200.0);
    EXPECT_EQ(run.speed_kmh, 90.0);
    EXPECT_EQ(formatDateTime(
                  runFromProposal(proposal, from("2026-05-09T03:39:00Z", 1800), {}).value().start),
              "2026-05-09T03:49:00Z");
    EXPECT_FALSE(runFromProposal(proposal, {std::nullopt, 0, 1800}, aDay()));
    EXPECT_FALSE(runFromProposal(proposal, from("2026-05-09T03:39:00Z", 9000), aDay()));
}

} // namespace
} // namespace bothways::core
