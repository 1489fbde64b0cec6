// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <algorithm>

// A recording of a whole drive becomes the runs of a study.

namespace bothways::tests {
namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

constexpr int kWay_s = 200, kTurn_s = 100; ///< there, a turn, back, a turn
constexpr int kRound_s = 2 * (kWay_s + kTurn_s);

/// Two rounds on an invented road of 5 km along 47.5 N from 05:40: 90 km/h and 2 mL/s on the road,
/// which is 8 L/100 km; marks at the ends of each way. A row a second.
std::string aDrive()
{
    std::string csv = "time,road_speed_kmh,lat_deg,lon_deg,fuel_used_l,mark\n";
    double fuel_l = 0.0;
    for (int s = 0; s <= 2 * kRound_s; ++s) {
        const int t = s % kRound_s;
        const int gone = std::min(t, kWay_s) - std::clamp(t - kWay_s - kTurn_s, 0, kWay_s);
        const bool turning = (t > kWay_s && t < kWay_s + kTurn_s) || t > 2 * kWay_s + kTurn_s;
        const bool starts = t == 0 || t == kWay_s + kTurn_s;
        const bool ends = t == kWay_s || t == 2 * kWay_s + kTurn_s;
        csv += fmt::format("2026-05-09T05:{:02}:{:02},{},47.5,{:.6f},{:.4f},{}\n", 40 + s / 60,
                           s % 60, turning ? 10 : 90, 9.4 + 0.0664 * gone / kWay_s, fuel_l,
                           starts ? "start"
                           : ends ? "end"
                                  : "");
        fuel_l += turning ? 0.0005 : 0.002;
    }
    return csv;
}

/// A way of 200 s at 90 km/h from 05:40, a stop, and from 242 s on 25 minutes of turning round at
/// 20 km/h.
std::string aSlowTurn()
{
    std::string csv = "time,road_speed_kmh\n";
    for (int s = 0; s <= 1742; ++s)
        csv += fmt::format("2026-05-09T{:02}:{:02}:{:02},{}\n", 5 + (40 + s / 60) / 60,
                           (40 + s / 60) % 60, s % 60,
                           s <= 200  ? 90
                           : s < 242 ? 0
                                     : 20);
    return csv;
}

class CliCut : public ::testing::Test {
protected:
    CliCut() { EXPECT_EQ(bothwaysProgram({"new", m_study}).code, 0); }
    Ran import(const std::vector<std::string>& more)
    {
        std::vector<std::string> arguments{"import", m_study, "--trace", m_drive};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return bothwaysProgram(arguments);
    }
    nlohmann::json analysed() { return jsonOf({"analyse", m_study, "--json"}); }

    TempFolder m_folder;
    std::string m_study = m_folder / "day.bothways";
    std::string m_drive = m_folder.write("drive.csv", aDrive());
};

TEST_F(CliCut, GatesMakeNewRunsWhoseConsumptionComesFromTheRecording)
{
    // A tenth of the road off either end.
    const Ran ran = import(
        {"--cut", "position", "--gates", "47.5,9.40664,47.5,9.45976,30", "--configuration", "A"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, AllOf(HasSubstr("new run: from 20.0 s to 180.0 s, 4.00 km, out"),
                               HasSubstr("new run: from 320.0 s to 480.0 s, 4.00 km, return"),
                               HasSubstr("cut drive.csv into 4 runs: 4 new, 0 given their part")));
    const nlohmann::json json = analysed();
    EXPECT_EQ(json["study"]["runs"], 4);
    ASSERT_EQ(json["pairs"].size(), 2U) << json["pairs"].dump();
    EXPECT_NEAR(json["pairs"][0]["l_per_100km"].get<double>(), 8.0, 0.01); // rows are 1 s apart
    ASSERT_EQ(bothwaysProgram({"undo", m_study}).code, 0);
    EXPECT_EQ(analysed()["study"]["runs"], 0);
}

TEST_F(CliCut, MarksAndAHeldSpeedFindTheSameRuns)
{
    for (const char* way : {"marks", "speed"}) {
        const Ran ran = import({"--cut", way, "--configuration", "A"});
        ASSERT_EQ(ran.code, 0) << way << ran.err;
        EXPECT_THAT(ran.out, AllOf(HasSubstr("from 0.0 s to 200.0 s"),
                                   HasSubstr("from 900.0 s to 1100.0 s"), HasSubstr("4 runs")));
        EXPECT_THAT(ran.out, StartsWith("imported drive.csv: 1,200 rows"));
        ASSERT_EQ(bothwaysProgram({"undo", m_study}).code, 0); // import and cut are one step
        EXPECT_EQ(analysed()["study"]["runs"], 0);
        EXPECT_EQ(bothwaysProgram({"undo", m_study}).code, 2) << "nothing is left to undo";
    }
}

TEST_F(CliCut, TheTimesOfTheRunSheetGiveItsRunsTheirParts)
{
    const std::string sheet =
        m_folder.write("morning.csv", "configuration,direction,start,duration_s,l_per_100km\n"
                                      "A,out,2026-05-09T05:40:00,200,8.1\n"
                                      "A,return,2026-05-09T05:45:00,200,7.9\n");
    ASSERT_EQ(bothwaysProgram({"import", m_study, sheet}).code, 0);
    const Ran ran = import({"--cut", "times"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("cut drive.csv into 2 runs: 0 new, 2 given their part"));
    // The other two ways are nobody's: without a configuration nothing comes in.
    ASSERT_EQ(bothwaysProgram({"undo", m_study}).code, 0);
    const std::string before = bothwaysProgram({"runs", m_study}).out;
    const Ran refused = import({"--cut", "speed"});
    EXPECT_EQ(refused.code, 2);
    EXPECT_THAT(refused.err,
                AllOf(HasSubstr("2 parts are no run of the study; expected --configuration"),
                      HasSubstr("the study is as it was")));
    EXPECT_THAT(refused.out, AllOf(HasSubstr("new run: from"), Not(HasSubstr("imported")),
                                   Not(HasSubstr("cut drive.csv"))));
    EXPECT_EQ(bothwaysProgram({"runs", m_study}).out, before);
}

TEST_F(CliCut, ATurnRoundAtAHeldSpeedDoesNotOverwriteTheRunBeforeIt)
{
    m_folder.write("drive.csv", aSlowTurn());
    const std::string sheet =
        m_folder.write("morning.csv", "configuration,direction,start,duration_s,l_per_100km\n"
                                      "A,out,2026-05-09T05:40:00,180,8.1\n");
    ASSERT_EQ(bothwaysProgram({"import", m_study, sheet}).code, 0);
    const Ran held = import({"--cut", "speed", "--configuration", "A"});
    ASSERT_EQ(held.code, 0) << held.err;
    EXPECT_THAT(held.out,
                AllOf(HasSubstr("new run: from 242.0 s to 1742.0 s"),
                      HasSubstr("1 new, 0 given their part"),
                      HasSubstr("held speed: 20 km/h; set road_speed.target_kmh to choose it\n")));
    ASSERT_EQ(bothwaysProgram({"undo", m_study}).code, 0);
    ASSERT_EQ(bothwaysProgram({"set", m_study, "road_speed.target_kmh=90"}).code, 0);
    const Ran chosen = import({"--cut", "speed"});
    ASSERT_EQ(chosen.code, 0) << chosen.err;
    EXPECT_THAT(chosen.out,
                AllOf(HasSubstr("  run 1: from 0.0 s to 200.0 s"),
                      HasSubstr("0 new, 1 given their part"), Not(HasSubstr("held speed"))));
    ASSERT_EQ(bothwaysProgram({"set", m_study, "road_speed.target_kmh=70"}).code, 0);
    const Ran never = import({"--cut", "speed", "--configuration", "A"});
    EXPECT_THAT(never.out, HasSubstr("70 km/h was never held; held speed: 20 km/h"));
}

TEST_F(CliCut, ARunWhosePartIsEmptyOrNotInTheRecordingGetsNone)
{
    const std::string sheet =
        m_folder.write("morning.csv", "configuration,direction,start,duration_s,l_per_100km\n"
                                      "A,out,2026-05-09T05:41:00,200,8.1\n"
                                      "A,return,2026-05-09T05:41:00,200,7.9\n"
                                      "A,out,2026-05-09T08:00:00,200,8.0\n");
    ASSERT_EQ(bothwaysProgram({"import", m_study, sheet}).code, 0);
    const Ran ran = import({"--cut", "times"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, AllOf(HasSubstr("  runs 1, 3: no part\n"),
                               HasSubstr("  run 2: from 60.0 s to 260.0 s"),
                               HasSubstr("cut drive.csv into 1 run: 0 new, 1 given their part")));
}

TEST_F(CliCut, ARecordingThatBelongsToNoRunYetSaysHowItCan)
{
    const Ran ran = import({});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, AllOf(HasSubstr("imported drive.csv: 1,200 rows"),
                               HasSubstr("it belongs to no run yet"), HasSubstr("--run N"),
                               HasSubstr("--recording NAME --cut times")));
    const std::string sheet =
        m_folder.write("morning.csv", "configuration,direction,start,duration_s,l_per_100km\n"
                                      "A,out,2026-05-09T05:40:00,200,8.1\n");
    ASSERT_EQ(bothwaysProgram({"import", m_study, sheet}).code, 0);
    const Ran given = import({"--run", "1"});
    ASSERT_EQ(given.code, 0) << given.err;
    EXPECT_THAT(given.out, Not(HasSubstr("no run yet")));
}

TEST_F(CliCut, ARecordingThatTheStudyHasIsCutByItsName)
{
    ASSERT_EQ(import({}).code, 0);
    const auto cutKnown = [&](const std::vector<std::string>& more) {
        std::vector<std::string> arguments{"import", m_study, "--recording"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return bothwaysProgram(arguments);
    };
    const Ran cut = cutKnown({"drive.csv", "--cut", "marks", "--configuration", "A"});
    ASSERT_EQ(cut.code, 0) << cut.err;
    EXPECT_THAT(cut.out, AllOf(HasSubstr("new run: from 0.0 s to 200.0 s"),
                               HasSubstr("cut drive.csv into 4 runs: 4 new, 0 given")));
    EXPECT_EQ(analysed()["study"]["runs"], 4);
    ASSERT_EQ(bothwaysProgram({"undo", m_study}).code, 0); // the cut; the recording stays
    const Ran again = cutKnown({"drive.csv", "--cut", "speed"});
    EXPECT_EQ(again.code, 2);
    EXPECT_THAT(again.err, HasSubstr("the study is as it was"));
    const Ran unknown = cutKnown({"ride.csv", "--cut", "marks"});
    EXPECT_EQ(unknown.code, 2);
    EXPECT_THAT(unknown.err, HasSubstr("no recording 'ride.csv'; expected one of 'drive.csv'"));
    EXPECT_THAT(cutKnown({"drive.csv"}).err, HasSubstr("expected --cut"));
}

TEST_F(CliCut, TheSameRecordingASecondTimeIsSaid)
{
    EXPECT_EQ(import({}).err, "");
    const Ran second = import({});
    EXPECT_EQ(second.code, 0);
    EXPECT_THAT(second.err, AllOf(HasSubstr("warning: the study had the recording drive.csv"),
                                  HasSubstr("bothways undo day.bothways")));
    m_folder.write("drive.csv", aSlowTurn());
    EXPECT_EQ(import({}).err, "") << "the same name, another drive";
}

TEST_F(CliCut, ConsumptionFromARecordingIsShownWithTheDigitsThatItIsWorth)
{
    ASSERT_EQ(import({"--cut", "marks", "--configuration", "A"}).code, 0);
    EXPECT_THAT(bothwaysProgram({"runs", m_study}).out,
                testing::ContainsRegex("  [78]\\.[0-9][0-9] L/100 km  "));
}

TEST_F(CliCut, SaysHowChannelsAreGivenAndWhichColumnsThereAre)
{
    const char* const repeat = "repeat --channel for each";
    const Ran two = import({"--channel", "mark=note", "lat_deg=lat"});
    EXPECT_EQ(two.code, 2);
    EXPECT_THAT(two.err, AllOf(HasSubstr("'lat_deg=lat'"), HasSubstr(repeat)));
    const Ran three = import({"--channel", "mark=note", "lat_deg=lat", "lon_deg=lon"});
    EXPECT_EQ(three.code, 2);
    EXPECT_THAT(three.err, HasSubstr(repeat));
    const Ran unknown = import({"--channel", "nosuch=distance_m"});
    EXPECT_EQ(unknown.code, 2);
    EXPECT_THAT(unknown.err, AllOf(HasSubstr("no column 'nosuch'"), HasSubstr("'time'"),
                                   HasSubstr("'fuel_used_l'"), HasSubstr("'mark'")));
    EXPECT_EQ(unknown.out, "");
    const Ran own = import({"--channel", "lat_deg=breadth", "--channel", "LON_DEG=lon_deg"});
    ASSERT_EQ(own.code, 0) << own.err;
    EXPECT_THAT(own.out, HasSubstr("breadth"));
}

TEST_F(CliCut, AClockThatIsTenMinutesSlowIsSaidAndSetRight)
{
    const std::string sheet =
        m_folder.write("morning.csv", "configuration,direction,start,duration_s,l_per_100km\n"
                                      "A,out,2026-05-09T05:30:00,200,8.1\n"
                                      "A,return,2026-05-09T05:35:00,200,7.9\n"
                                      "A,out,2026-05-09T05:40:00,200,8.1\n"
                                      "A,return,2026-05-09T05:45:00,200,7.9\n"
                                      "A,out,2026-05-10T05:40:00,200,8.1\n");
    ASSERT_EQ(bothwaysProgram({"import", m_study, sheet}).code, 0);
    const Ran wrong = import({"--cut", "times"});
    ASSERT_EQ(wrong.code, 0) << wrong.err;
    EXPECT_THAT(wrong.err, HasSubstr("warning: runs 1, 2 get no part of drive.csv; where the "
                                     "recorder's clock is wrong, --shift SECONDS sets it right"));
    ASSERT_EQ(bothwaysProgram({"undo", m_study}).code, 0);
    const Ran right = import({"--cut", "times", "--shift", "-600"});
    ASSERT_EQ(right.code, 0) << right.err;
    EXPECT_THAT(right.out, HasSubstr("  run 1: from 0.0 s to 200.0 s"));
    EXPECT_EQ(right.err, "");
    ASSERT_EQ(bothwaysProgram({"undo", m_study}).code, 0);
    ASSERT_EQ(import({}).code, 0);
    const std::vector<std::string> known{"import", m_study, "--recording", "drive.csv", "--cut"};
    std::vector<std::string> again = known;
    again.insert(again.end(), {"times", "--shift", "-600"});
    EXPECT_THAT(bothwaysProgram(again).out, HasSubstr("  run 1: from 0.0 s to 200.0 s"));
    again.back() = "a while";
    EXPECT_EQ(bothwaysProgram(again).code, 2);
    std::vector<std::string> begun = known;
    begun.insert(begun.end(), {"times", "--start", "05:40"});
    EXPECT_THAT(bothwaysProgram(begun).err, HasSubstr("a clock of its own"));
}

TEST_F(CliCut, ARecordingWithoutAClockIsCutByTimesOnceItIsSaidWhenItBegan)
{
    std::string csv = "time_s,road_speed_kmh\n";
    for (int s = 0; s <= 600; ++s)
        csv += fmt::format("{},90\n", s);
    m_folder.write("drive.csv", csv);
    const std::string sheet =
        m_folder.write("morning.csv", "configuration,direction,start,duration_s,l_per_100km\n"
                                      "A,out,2026-05-09T05:41:00,200,8.1\n");
    ASSERT_EQ(bothwaysProgram({"import", m_study, sheet}).code, 0);
    EXPECT_EQ(import({"--cut", "times"}).code, 3);
    const Ran cut = import({"--cut", "times", "--start", "05:40"});
    ASSERT_EQ(cut.code, 0) << cut.err;
    EXPECT_THAT(cut.out, HasSubstr("  run 1: from 60.0 s to 260.0 s"));
    ASSERT_EQ(bothwaysProgram({"undo", m_study}).code, 0);
    ASSERT_EQ(import({}).code, 0);
    const Ran known = bothwaysProgram({"import", m_study, "--recording", "drive.csv", "--cut",
                                       "times", "--start", "2026-05-09 05:39:30", "--shift", "30"});
    ASSERT_EQ(known.code, 0) << known.err;
    EXPECT_THAT(known.out, HasSubstr("  run 1: from 60.0 s to 260.0 s"));
}

TEST_F(CliCut, AGapThatShortensARunIsSaid)
{
    std::string csv = "time,road_speed_kmh\n";
    for (int s = 0; s <= 600; ++s)
        if (s <= 179 || s >= 219)
            csv += fmt::format("2026-05-09T05:{:02}:{:02},{}\n", 40 + s / 60, s % 60,
                               s <= 400 ? 90 : 10);
    m_folder.write("drive.csv", csv);
    const Ran held = import({"--cut", "speed", "--configuration", "A"});
    ASSERT_EQ(held.code, 0) << held.err;
    EXPECT_THAT(held.out, AllOf(HasSubstr("from 0.0 s to 179.0 s"),
                                HasSubstr("  1 gap, the longest 40.0 s\n")));
    EXPECT_THAT(held.err,
                AllOf(HasSubstr("warning: new run: ends where the recording has a gap of 40 s, "
                                "from 179.0 s to 219.0 s; it may have been longer"),
                      HasSubstr("warning: new run: begins where a gap of 40 s in the recording "
                                "ends")));
    ASSERT_EQ(bothwaysProgram({"undo", m_study}).code, 0);
    const std::string sheet =
        m_folder.write("morning.csv", "configuration,direction,start,duration_s,l_per_100km\n"
                                      "A,out,2026-05-09T05:41:00,200,8.1\n");
    ASSERT_EQ(bothwaysProgram({"import", m_study, sheet}).code, 0);
    EXPECT_THAT(import({"--cut", "times"}).err,
                HasSubstr("warning: run 1: the recording has a gap of 40 s in it, from 179.0 s"));
    EXPECT_THAT(bothwaysProgram({"screen", m_study}).out, HasSubstr("no samples of road speed"));
}

TEST_F(CliCut, AFactorThatMayBeADecimalCommaIsAskedAbout)
{
    for (const char* unclear : {"1,6", "0,5556,-17", "-1,6"}) {
        const Ran ran = import({"--channel", std::string("lat_deg=temperature_c,") + unclear});
        EXPECT_EQ(ran.code, 2) << unclear;
        EXPECT_THAT(ran.err, HasSubstr("may be the number")) << unclear;
    }
    EXPECT_THAT(import({"--channel", "lat_deg=x,1,6"}).err,
                HasSubstr("'1,6' may be the number 1.6, or the factor 1 and the offset 6; expected "
                          "1.6 for the one, 1.0,6 for the other"));
    for (const char* clear : {"1.6", "1.0,6", "1,-6", "1.609344,0"})
        EXPECT_EQ(import({"--channel", std::string("lat_deg=x,") + clear}).code, 0) << clear;
}

TEST_F(CliCut, SaysWhatIsWrongWithTheOrder)
{
    const std::pair<std::vector<std::string>, const char*> wrong[] = {
        {{"--cut", "luck"}, "luck"},
        {{"--cut", "position"}, "--gates go together"},
        {{"--cut", "speed", "--gates", "47.5,9.41,47.5,9.45"}, "go together"},
        {{"--cut", "position", "--gates", "47.5,9.41"}, "is not LAT,LON,LAT,LON"},
        {{"--cut", "position", "--gates", "47.5,9.41,47.5,9.45,50,1"}, "is not LAT,LON,LAT,LON"},
        {{"--cut", "position", "--gates", "97.5,9.41,47.5,9.45"}, "latitude of the start gate"},
        {{"--cut", "position", "--gates", "47.5,9.41,47.5,9.41"}, "same place"},
        {{"--cut", "speed", "--run", "1"}, "--run"},
        {{"--gates", "47.5,9.41,47.5,9.45"}, "--cut"},
    };
    for (const auto& [arguments, words] : wrong) {
        const Ran ran = import(arguments);
        EXPECT_EQ(ran.code, 2) << words;
        EXPECT_THAT(ran.err, HasSubstr(words));
    }
    const Ran elsewhere = import({"--cut", "position", "--gates", "-33.5,9.41,-33.5,9.45"});
    EXPECT_EQ(elsewhere.code, 3);
    EXPECT_THAT(elsewhere.err, HasSubstr("never leads through one of the gates"));
    const Ran sheetless = import({"--cut", "times"});
    EXPECT_EQ(sheetless.code, 3);
    EXPECT_THAT(sheetless.err, HasSubstr("no runs to cut by"));
}

} // namespace
} // namespace bothways::tests
