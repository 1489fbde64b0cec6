// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <sstream>
#include <string>

namespace bothways::tests {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

/// A shell in a folder with the demo's recordings and a study; `bothways` is the program.
class Record : public ::testing::Test {
protected:
    void SetUp() override
    {
        for (const char* run : {"run_15.csv", "run_22.csv"})
            m_folder.write(run, readFile(demoFile(std::string("levee_generator_traces/") + run)));
        ASSERT_EQ(shell("bothways new day.bothways stretch.km=5.2 overspeed.rpm=3200").code, 0);
    }
    /// $program is the program itself, where the shell may not wait for it or ends it.
    [[nodiscard]] Ran shell(const std::string& commands) const
    {
        const std::string folder = m_folder.path().string();
        return run("/bin/sh", {"-c", "cd '" + folder +
                                         "' && program='" BOTHWAYS_PROGRAM
                                         "' && bothways() { \"$program\" \"$@\"; } && " +
                                         commands});
    }
    TempFolder m_folder;
};

/// Two runs between marks, 100 s each, with an over-speed in the second.
std::string markedDrive()
{
    std::string text = "time_s,road_speed_kmh,rotor_rpm,fuel_rate_l_per_h,mark\n";
    for (int i = 0; i < 2600; ++i) {
        const double t = i / 10.0;
        const bool over = t > 200.0 && t < 204.0;
        const char* mark = i == 100    ? "start out"
                           : i == 1100 ? "end"
                           : i == 1400 ? "start return"
                           : i == 2400 ? "end"
                                       : "";
        text += fmt::format("{:.1f},{:.2f},{},{:.3f},{}\n", t, 90.0 + (i % 7) * 0.01,
                            over ? 3400 : 2600 + i % 5, 7.6, mark);
    }
    return text;
}

TEST_F(Record, OfAReplayIsTheImportOfItsFile)
{
    m_folder.write("drive.csv", markedDrive());
    ASSERT_EQ(shell("bothways new imported.bothways stretch.km=5.2 overspeed.rpm=3200 && "
                    "bothways add imported.bothways configuration=off direction=out "
                    "start=2026-05-09T05:00:00 l_per_100km=8")
                  .code,
              0);
    const Ran live = shell("bothways record day.bothways --from replay:drive.csv,x100 --cut marks "
                           "--configuration off < /dev/null");
    ASSERT_EQ(live.code, 0) << live.err;
    EXPECT_THAT(live.out, HasSubstr("recorded 7,800 samples"));
    EXPECT_THAT(live.out, HasSubstr("run 2: off, return, begins"));
    EXPECT_THAT(live.out, HasSubstr("runs: 2"));
    EXPECT_THAT(live.err, HasSubstr("rotor at 3,400 rpm from 60.1 s to 63.9 s"))
        << "while it goes on";
    const Ran screened = shell("bothways screen day.bothways");
    EXPECT_THAT(screened.out, HasSubstr("run 2: rotor at 3,400 rpm from 60.1 s to 63.9 s"));
    EXPECT_THAT(shell("bothways runs day.bothways").out, HasSubstr("return"));
    EXPECT_THAT(shell("bothways history day.bothways").out, HasSubstr("2600 rows, 3 channels"));
}

/// To and fro over 2.5 km between gates, at 90 km/h between a slow way in and a slow turn.
std::string gatedDrive()
{
    std::string text = "time_s,road_speed_kmh,fuel_rate_l_per_h,lat_deg,lon_deg\n";
    double lon = 9.39, kmh = 60.0;
    for (int i = 0; i < 2600; ++i) {
        const double t = i / 10.0;
        const bool fast = (t > 10.0 && t < 110.0) || (t > 140.0 && t < 240.0);
        kmh += std::clamp((fast ? 90.0 : 60.0) - kmh, -0.6, 0.6);
        lon += (t < 125.0 ? 1.0 : -1.0) * kmh / 3.6 * 0.1 / 75000.0;
        text += fmt::format("{:.1f},{:.2f},7.6,47.5,{:.7f}\n", t, kmh, lon);
    }
    return text;
}

TEST_F(Record, BeginsAndEndsRunsAtGatesAndByTheTargetSpeedWhileItGoesOn)
{
    m_folder.write("drive.csv", gatedDrive());
    const std::string gates = "--cut position --gates 47.5,9.4,47.5,9.415,50";
    ASSERT_EQ(shell("bothways import day.bothways --trace drive.csv --start 2026-05-09T05:00:00 "
                    "--configuration off " +
                    gates)
                  .code,
              0);
    for (const std::string& way : {gates, std::string("--cut speed")}) {
        SCOPED_TRACE(way);
        // The number is typed once the second run has ended by itself.
        const Ran live =
            shell("rm -f live.bothways out.txt; touch out.txt; bothways new live.bothways "
                  "stretch.km=1.13 road_speed.target_kmh=90 && (for i in $(seq 600); do grep -q "
                  "'return, [0-9]' out.txt && break; sleep 0.1; done; echo 'e 8.4'; sleep 1) | "
                  "bothways record live.bothways --from replay:drive.csv,x40 " +
                  way + " > out.txt && cat out.txt");
        ASSERT_EQ(live.code, 0) << live.err;
        EXPECT_THAT(live.out, HasSubstr("run 1: A, out, begins"));
        EXPECT_THAT(live.out, HasSubstr("run 2: A, return, begins"));
        EXPECT_THAT(live.out, HasSubstr("runs: 2"));
        EXPECT_THAT(live.err, Not(HasSubstr("Counting began too early")));
        EXPECT_THAT(live.err, Not(HasSubstr("Road speed"))) << "of what comes after the end";
        const auto runs = jsonOf({"runs", m_folder / "live.bothways", "--json"})["runs"];
        ASSERT_EQ(runs.size(), 2U);
        EXPECT_EQ(runs[1]["l_per_100km"], 8.4) << "typed after the run had ended by itself";
        if (way != gates)
            continue;
        const auto cut = jsonOf({"runs", m_folder / "day.bothways", "--json"})["runs"];
        for (std::size_t i = 0; i < 2; ++i) {
            EXPECT_NEAR(runs[i]["duration_s"].get<double>(), cut[i]["duration_s"].get<double>(),
                        0.11);
            EXPECT_EQ(runs[i]["direction"], cut[i]["direction"]);
        }
    }
}

/// The first run is one back, and the second begins with the mark that ends it.
TEST_F(Record, GivesTheNumberToTheRunThatHasEndedWhenTheNextHasBegunByItsMark)
{
    std::string drive = "time_s,road_speed_kmh,mark\n";
    for (int i = 0; i < 1500; ++i)
        drive += fmt::format("{:.1f},90.00,{}\n", i / 10.0,
                             i == 100    ? "start return"
                             : i == 600  ? "start out"
                             : i == 1100 ? "end"
                                         : "");
    m_folder.write("drive.csv", drive);
    const Ran live =
        shell("touch out.txt; (for i in $(seq 600); do grep -q 'run 2: A, out, begins' "
              "out.txt && break; sleep 0.1; done; echo 'e 8.4') | bothways record "
              "day.bothways --from replay:drive.csv,x10 --cut marks > out.txt; "
              "code=$?; cat out.txt; exit $code");
    ASSERT_EQ(live.code, 0) << live.err;
    const auto runs = jsonOf({"runs", m_folder / "day.bothways", "--json"})["runs"];
    ASSERT_EQ(runs.size(), 2U) << live.out;
    EXPECT_EQ(runs[0]["direction"], "return");
    EXPECT_EQ(runs[0]["l_per_100km"], 8.4);
    EXPECT_NEAR(runs[0]["duration_s"].get<double>(), 50.0, 0.11);
    EXPECT_EQ(runs[1]["direction"], "out");
    EXPECT_TRUE(runs[1]["consumption_l_per_100km"].is_null());
    EXPECT_NEAR(runs[1]["duration_s"].get<double>(), 50.0, 0.11);
    // The marks of the recording are its own, once each: it can be cut by them again.
    const Ran again = shell("bothways import day.bothways --recording \"$(sed -n "
                            "\"s/^recording '\\(.*\\)'; .*/\\1/p\" out.txt)\" --cut marks");
    EXPECT_THAT(again.out + again.err, HasSubstr("2 given their part"));
}

TEST_F(Record, GoesByTheGatesOfItsRig)
{
    m_folder.write("drive.csv", gatedDrive());
    ASSERT_EQ(shell("bothways rig new ./gated.json replay:drive.csv,x100 --cut position --gates "
                    "47.5,9.4,47.5,9.415")
                  .code,
              0);
    EXPECT_THAT(shell("bothways rig show ./gated.json").out, HasSubstr("at the gates"));
    const Ran live = shell("bothways record day.bothways --rig ./gated.json < /dev/null");
    EXPECT_EQ(live.code, 0) << live.err;
    EXPECT_THAT(live.out, HasSubstr("runs: 2"));
    EXPECT_EQ(shell("bothways rig new ./none.json replay:drive.csv --cut position").code, 2);
    EXPECT_EQ(shell("bothways rig new ./none.json replay:drive.csv --cut position --gates "
                    "47.5,9.4,47.5,9.4")
                  .code,
              2);
}

TEST_F(Record, TakesOrdersAndSaysWhatSpoilsTheRun)
{
    m_folder.write("drive.csv", markedDrive());
    const Ran ran = shell("(sleep 0.4; echo 's off out'; sleep 2; echo 'm gust from the left'; "
                          "sleep 1; echo 'e 8,41'; sleep 2.5; echo d; echo q) | "
                          "bothways record day.bothways --from replay:drive.csv,x80");
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("run 1: off, out, begins"));
    EXPECT_THAT(ran.out, HasSubstr("marked: gust from the left"));
    EXPECT_THAT(ran.out, HasSubstr("8.41 L/100 km"));
    EXPECT_THAT(ran.err, HasSubstr("rotor at 3,400 rpm"));
    EXPECT_THAT(ran.out, HasSubstr("run 1 is discarded"));
    const auto runs = jsonOf({"runs", m_folder / "day.bothways", "--json"});
    EXPECT_EQ(runs["runs"].size(), 1U) << runs;
    EXPECT_THAT(shell("bothways screen day.bothways").out, HasSubstr("(overspeed)"));
}

TEST_F(Record, EndsWholeOnASignal)
{
    m_folder.write("drive.csv", markedDrive());
    const Ran ran = shell("$program record day.bothways --from replay:drive.csv < /dev/null & "
                          "sleep 3; kill -TERM $!; wait $!");
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("recorded"));
    EXPECT_THAT(shell("bothways history day.bothways").out, HasSubstr("Recording ended"));
}

TEST_F(Record, IsThereUpToItsLastSecondAfterAKill)
{
    m_folder.write("drive.csv", markedDrive());
    const Ran killed = shell("$program record day.bothways --from replay:drive.csv,x20 < /dev/null "
                             "& sleep 4; kill -KILL $!; wait $!");
    EXPECT_EQ(killed.code, 137);
    const Ran next = shell("bothways record day.bothways --from replay:drive.csv,x100 --for 0.1 "
                           "< /dev/null");
    EXPECT_EQ(next.code, 0) << next.err;
    EXPECT_THAT(next.err, HasSubstr("was not stopped"));
    EXPECT_THAT(shell("bothways history day.bothways").out, HasSubstr("up to its last second"));
    EXPECT_EQ(shell("bothways screen day.bothways").code, 0);
}

TEST_F(Record, SaysWhatIsWrongBeforeAnythingIsRecorded)
{
    struct Case {
        const char* arguments;
        const char* said;
        int code;
    };
    for (const Case& one : {
             Case{"", "expected --rig NAME or --from KIND:ADDRESS", 2},
             Case{"--rig none_such", "none_such", 2},
             Case{"--from nonsense", "expected", 2},
             Case{"--from lines:serial:", "expected", 2},
             Case{"--from replay:none.csv", "none.csv", 2},
             Case{"--from replay:run_15.csv,x1000", "", 2},
             Case{"--from replay:run_15.csv --for 0", "minutes", 2},
             Case{"--from replay:run_15.csv --cut times", "times", 2},
             Case{"--from replay:run_15.csv --cut position", "--gates", 2},
         }) {
        const Ran ran = shell(
            fmt::format("timeout 20 $program record day.bothways {} < /dev/null", one.arguments));
        EXPECT_NE(ran.code, 0) << one.arguments;
        EXPECT_NE(ran.code, 124) << one.arguments;
        EXPECT_THAT(ran.err, HasSubstr(one.said)) << one.arguments;
        EXPECT_THAT(shell("bothways history day.bothways").out, Not(HasSubstr("Recording")))
            << one.arguments;
    }
}

TEST_F(Record, RefusesOrdersThatMakeNoSenseAndGoesOn)
{
    const Ran ran =
        shell("(sleep 2; echo 'e 8'; echo 'strat'; echo 'x y z'; echo 'm'; echo 'on windscreen'; "
              "echo f; echo d; echo help; echo n; echo q) | "
              "bothways record day.bothways --from replay:run_15.csv");
    EXPECT_EQ(ran.code, 0) << ran.err;
    for (const char* said :
         {"no run is under way", "did you mean 'start'", "'x' is no order", "expected a word",
          "no timed accessory 'windscreen'", "nothing is known that spoils"})
        EXPECT_THAT(ran.err, HasSubstr(said));
    EXPECT_THAT(ran.out, HasSubstr("next: run 1"));
    EXPECT_THAT(ran.out, HasSubstr("ends the recording"));
}

TEST_F(Record, SpeaksGerman)
{
    const Ran ran =
        shell("(sleep 2; echo s; sleep 0.5; echo f; echo n; echo q) | LC_ALL=de_DE.UTF-8 "
              "bothways record day.bothways --from replay:run_15.csv");
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("Fahrt 1"));
    EXPECT_THAT(ran.out, Not(HasSubstr("run 1")));
}

TEST_F(Record, NotesABlockWithoutItsWalkRoundAndTakesNumbersIntoTheRun)
{
    ASSERT_EQ(shell("bothways walk day.bothways --list 'belts on; tyre pressure = kPa +- 10'").code,
              0);
    const Ran without = shell("(sleep 1.5; echo 's off out'; sleep 1; echo 'e 8'; echo q) | "
                              "bothways record day.bothways --from replay:run_15.csv");
    EXPECT_THAT(without.out, HasSubstr("without its walk-round"));
    const Ran walked = shell("bothways walk day.bothways 1 2=230");
    EXPECT_EQ(walked.code, 0) << walked.err;
    EXPECT_THAT(shell("bothways walk day.bothways all 2=245").err,
                HasSubstr("tyre pressure: 245 kPa now, 230 before"));
    const Ran with = shell("(sleep 1.5; echo 's on return'; sleep 1; echo 'e 8'; echo q) | "
                           "bothways record day.bothways --from replay:run_15.csv");
    EXPECT_THAT(with.out, Not(HasSubstr("without its walk-round")));
    EXPECT_THAT(shell("bothways export day.bothways").out, HasSubstr("tyre pressure (kPa)"));
    EXPECT_THAT(shell("bothways history day.bothways").out,
                HasSubstr("before run 2: 2 of 2 ticked; tyre pressure 245 kPa"));
    for (const char* bad : {"3", "0", "2-1", "1=3", "2=x", "al"}) {
        const Ran ran = shell(fmt::format("bothways walk day.bothways {}", bad));
        EXPECT_EQ(ran.code, 2) << bad;
    }
}

TEST_F(Record, AsksForTheWeatherOnceABlockAndPutsItIntoTheRun)
{
    const Ran ran = shell(
        "(sleep 1.5; echo n; echo 'w humidity_pct=200'; echo 'w rain=1'; echo 'w'; echo 'w "
        "wind_ms'; "
        "echo 'w temperature_c=14,5 wind_ms=2.1'; echo n; echo 's off out'; sleep 1; echo 'e 8'; "
        "echo 's off return'; sleep 1; echo 'e 8'; echo q) | "
        "bothways record day.bothways --from replay:run_15.csv");
    EXPECT_EQ(ran.code, 0) << ran.err;
    for (const char* said :
         {"column 'humidity_pct'", "'rain' is no weather", "expected the weather, like"})
        EXPECT_THAT(ran.err, HasSubstr(said));
    const std::size_t asked = ran.out.find("note the weather: weather");
    EXPECT_NE(asked, std::string::npos) << ran.out;
    EXPECT_EQ(ran.out.find("note the weather: weather", asked + 1), std::string::npos)
        << "once a block: " << ran.out;
    const Ran runs = shell("bothways export day.bothways");
    EXPECT_THAT(runs.out, HasSubstr(",14.5,")); // no time of day
    EXPECT_EQ(runs.out.find(",14.5,"), runs.out.rfind(",14.5,")) << runs.out;
}

TEST_F(Record, SaysOnceWhatIsLackingNotBeforeEachRun)
{
    const Ran ran = shell("(sleep 2.5; echo 's off out'; sleep 1; echo 'e 8'; sleep 2.5; "
                          "echo 's off return'; sleep 1; echo 'e 8'; sleep 2.5; echo q) | "
                          "bothways record day.bothways --from replay:run_15.csv");
    EXPECT_EQ(ran.code, 0) << ran.err;
    const std::string lack = "No channel ";
    EXPECT_THAT(ran.err, HasSubstr(lack));
    std::map<std::string, int> times;
    std::istringstream lines(ran.err);
    for (std::string line; std::getline(lines, line);)
        if (line.find(lack) != std::string::npos) {
            EXPECT_EQ(++times[line], 1) << line << "\n" << ran.err;
        }
}

TEST_F(Record, KeepsAFileAsEvidenceByItsSum)
{
    ASSERT_EQ(shell("bothways add day.bothways configuration=off direction=out "
                    "start=2026-05-09T05:00:00 l_per_100km=8")
                  .code,
              0);
    m_folder.write("clip.mp4", "abc");
    const Ran ran = shell("bothways discard day.bothways 1 --reason other --evidence 'a lorry' "
                          "--file clip.mp4@83.5");
    EXPECT_EQ(ran.code, 0) << ran.err;
    // FIPS 180-2, appendix B.1
    EXPECT_THAT(shell("bothways runs day.bothways --json").out,
                HasSubstr("a lorry [clip.mp4 @ 83.5 s, 3 bytes, SHA-256 ba7816bf8f01cfea"));
    EXPECT_EQ(shell("bothways discard day.bothways 1 --reason other --file none.jpg").code, 3);
}

} // namespace
} // namespace bothways::tests
