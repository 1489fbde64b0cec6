// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>

// A study's life on the command line: made, filled, screened, argued about, handed on.

namespace bothways::tests {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

class CliStudy : public ::testing::Test {
protected:
    Ran call(std::vector<std::string> arguments)
    {
        arguments.insert(arguments.begin() + 1, m_study);
        return bothwaysProgram(arguments);
    }
    /// The call must succeed; gives its standard output.
    std::string done(const std::vector<std::string>& arguments)
    {
        const Ran ran = call(arguments);
        EXPECT_EQ(ran.code, 0) << ran.err;
        EXPECT_EQ(ran.err, "");
        return ran.out;
    }
    nlohmann::json analysed() { return nlohmann::json::parse(done({"analyse", "--json"})); }
    /// Two pairs in each of three blocks, as they would be typed at the roadside.
    void typeTwelveRuns()
    {
        const char* litres[] = {"8.41", "8.22", "8.44", "8.20", "8.31", "8.12",
                                "8.33", "8.10", "8.40", "8.23", "8.42", "8.21"};
        for (int i = 0; i < 12; ++i) {
            const int minute = 40 + 7 * i + 20 * (i / 4);
            std::vector<std::string> run = {"add",
                                            "start=2026-05-09T" + two(5 + minute / 60) + ":" +
                                                two(minute % 60),
                                            "duration_s=210",
                                            "distance_km=5.2",
                                            std::string("l_per_100km=") + litres[i],
                                            i / 4 == 1 ? "configuration=B" : "configuration=A"};
            if (i < 2)
                run.push_back(i == 0 ? "direction=out" : "direction=return");
            done(run);
        }
    }
    static std::string two(int number) { return (number < 10 ? "0" : "") + std::to_string(number); }

    TempFolder m_folder;
    std::string m_study = m_folder / "day.bothways";
};

TEST_F(CliStudy, GoesFromNothingToAVerdict)
{
    done({"new", "name=Levee", "margin=1"});
    typeTwelveRuns();
    const nlohmann::json json = analysed();
    EXPECT_EQ(json["study"]["pairs"], 6);
    EXPECT_EQ(json["study"]["design"], "closed");
    EXPECT_EQ(json["pairs"][0]["runs"], nlohmann::json::parse("[1, 2]"));
    EXPECT_NE(json["verdict"]["class"], "none");
    EXPECT_THAT(done({"analyse"}),
                HasSubstr(json["verdict"]["sentence"].get<std::string>().substr(0, 20)));
}

TEST_F(CliStudy, KeepsDiscardsWithTheirReasonAndLiftsThemAgain)
{
    done({"new"});
    typeTwelveRuns();
    done({"discard", "5", "--reason", "overspeed", "--evidence", "rotor 3410 rpm"});
    EXPECT_THAT(done({"runs"}), HasSubstr("discarded: over-speed, rotor 3410 rpm"));
    EXPECT_EQ(analysed()["study"]["discarded"], 1);
    EXPECT_EQ(analysed()["discards_restored"]["each"][0]["run"], 5);
    EXPECT_EQ(done({"count", "5"}), "counting run 5 again\n");
    EXPECT_EQ(analysed()["study"]["discarded"], 0);
    EXPECT_EQ(done({"count", "5", "6"}), "runs 5, 6 count already\n");
}

TEST_F(CliStudy, UndoesAndRedoes)
{
    done({"new"});
    typeTwelveRuns();
    done({"discard", "5", "6", "--reason", "other", "--evidence", "tyre low"});
    EXPECT_THAT(done({"undo"}), HasSubstr("Undone: Discarded: runs 5, 6: other, tyre low\n"));
    EXPECT_EQ(analysed()["study"]["discarded"], 0);
    done({"redo"});
    EXPECT_EQ(analysed()["study"]["discarded"], 2);
}

TEST_F(CliStudy, WarnsWhileARunCountsThatAFindingCallsSpoiled)
{
    done({"new", "overspeed.rpm=3200"});
    typeTwelveRuns();
    EXPECT_THAT(done({"analyse"}), testing::Not(HasSubstr("spoiled")));
    done({"add", "start=2026-05-09T08:00", "configuration=A", "l_per_100km=8.40",
          "rotor_rpm_max=3410"});
    EXPECT_THAT(done({"analyse"}),
                HasSubstr("Run 13 counts although a finding says that it is spoiled."));
    done({"discard", "13", "--reason", "overspeed"});
    EXPECT_THAT(done({"analyse"}), testing::Not(HasSubstr("although a finding")));
}

TEST_F(CliStudy, AsksAboutRunsThatOverlapOrTookAnImpossibleAmount)
{
    done({"new"});
    typeTwelveRuns();
    const Ran early = call({"add", "start=2026-05-09T07:39", "duration_s=300", "l_per_100km=8.40"});
    EXPECT_EQ(early.code, 0);
    EXPECT_THAT(early.err, HasSubstr("warning: run 13 starts while run 12 was still being driven"));
    const Ran much = call({"add", "start=2026-05-09T08:00", "l_per_100km=791"});
    EXPECT_EQ(much.code, 0);
    EXPECT_THAT(much.err, HasSubstr("warning: run 14 took 95 times the fuel"));
    EXPECT_THAT(much.err, Not(HasSubstr("run 13"))) << "said when it came";
    for (const char* verb : {"runs", "screen", "analyse"}) {
        EXPECT_THAT(done({verb}), HasSubstr("run 13 starts while run 12")) << verb;
        EXPECT_THAT(done({verb}), HasSubstr("(791 against")) << verb;
    }
}

TEST_F(CliStudy, TakesNothingOfASheetWhoseSecondRecordingFails)
{
    done({"new", "date=2026-01-01"}); // a recording with times of day is of that day, run 2 is not
    m_folder.write("one.csv", "time_s,road_speed_kmh\n0,90\n100,91\n200,90\n");
    m_folder.write("two.csv", "time,road_speed_kmh\n05:40:00,90\n05:41:00,91\n05:43:20,90\n");
    const Ran ran = call({"import", m_folder.write("s.csv", "configuration,direction,start,"
                                                            "duration_s,l_per_100km,trace\n"
                                                            "A,out,2026-05-09T05:30:00,200,8.1,"
                                                            "one.csv\n"
                                                            "A,return,2026-05-09T05:40:00,200,8.3,"
                                                            "two.csv\n")});
    EXPECT_EQ(ran.code, 3);
    EXPECT_THAT(ran.err, HasSubstr("two.csv: run 2 starts at"));
    EXPECT_EQ(ran.out, "") << "nothing came in, so nothing is said to have";
    EXPECT_EQ(done({"runs"}), "No runs yet.\n");
    EXPECT_EQ(call({"undo"}).code, 2) << "nothing stands";
}

TEST_F(CliStudy, SaysWhichColumnsOfASheetItKeepsWithoutAMeaning)
{
    done({"new"});
    const std::string sheet = m_folder.write(
        "own.csv", "configuration,direction,start,l_per_100km,tyres,distnce_km,empty\n"
                   "A,out,2026-05-09T05:40,8.1,winter,5.2,\n");
    EXPECT_THAT(done({"import", sheet}),
                HasSubstr("kept as they are, without a meaning: tyres, distnce_km; did you mean "
                          "'distance_km' by 'distnce_km'?\n"));
}

TEST_F(CliStudy, SaysWhenTheBaselineThatWasSetIsNoneOfTheRuns)
{
    done({"new", "baseline=off"});
    const Ran imported = call({"import", exampleFile("morning.csv")});
    EXPECT_EQ(imported.code, 0);
    EXPECT_THAT(imported.err, HasSubstr("warning: the study has no baseline 'off'; expected"));
}

TEST_F(CliStudy, PlansWithTheStretchOfTheStudy)
{
    done({"new", "stretch.km=6"});
    typeTwelveRuns();
    const auto planned = nlohmann::json::parse(done({"plan", "--json"}));
    EXPECT_DOUBLE_EQ(planned["distance_km"].get<double>(), 12.0 * planned["pairs"].get<double>());
}

TEST_F(CliStudy, TiesAndUntiesAPair)
{
    done({"new"});
    typeTwelveRuns();
    done({"pair", "1", "4"});
    EXPECT_EQ(analysed()["pairs"][0]["runs"], nlohmann::json::parse("[1, 4]"));
    done({"unpair", "4"});
    EXPECT_EQ(analysed()["pairs"][0]["runs"], nlohmann::json::parse("[1, 2]"));
}

TEST_F(CliStudy, RenamesAConfigurationInAllRunsAndAnswersTheSame)
{
    done({"new"});
    typeTwelveRuns();
    const double effect = analysed()["headline"]["effect_log"];
    done({"rename", "configuration", "A", "without"});
    EXPECT_EQ(analysed()["options"]["baseline"], "without");
    EXPECT_EQ(analysed()["headline"]["effect_log"], effect);
    const Ran refused = call({"rename", "configuration", "B", "Without"});
    EXPECT_EQ(refused.code, 3);
    EXPECT_THAT(refused.err, HasSubstr("both configurations would be"));
    EXPECT_EQ(call({"rename", "speed", "B", "C"}).code, 2);
    done({"undo"});
    EXPECT_EQ(analysed()["options"]["baseline"], "A");
}

TEST_F(CliStudy, GivesBackItsRunsAndReadsThemAgain)
{
    done({"new"});
    ASSERT_EQ(bothwaysProgram({"import", m_study, demoFile("levee_generator.csv")}).code, 0);
    const std::string sheet = m_folder / "out.csv";
    EXPECT_EQ(call({"export", "--to", sheet}).err, "wrote 34 runs to " + sheet + "\n");
    // The sheet names its recordings relative to itself.
    std::filesystem::copy(demoFile("levee_generator_traces"), m_folder / "levee_generator_traces");
    const std::string again = m_folder / "again.bothways";
    ASSERT_EQ(bothwaysProgram({"new", again}).code, 0);
    ASSERT_EQ(bothwaysProgram({"import", again, sheet}).code, 0);
    EXPECT_EQ(bothwaysProgram({"export", again}).out, readFile(sheet));
    EXPECT_EQ(bothwaysProgram({"export", again, "--json"}).out, done({"export", "--json"}));
}

TEST_F(CliStudy, ScreensAppliesAndSaysWhatItLeftOut)
{
    done({"new", "overspeed.rpm=3200", "accessory_timer.windscreen=600,10"});
    ASSERT_EQ(bothwaysProgram({"import", m_study, demoFile("levee_generator.csv")}).code, 0);
    const Ran applied = call({"screen", "--apply"});
    ASSERT_EQ(applied.code, 0);
    EXPECT_THAT(applied.err, HasSubstr("discarded run 20: over-speed"));
    EXPECT_THAT(done({"runs"}), HasSubstr("discarded: accessory load changed"));
    EXPECT_THAT(call({"screen", "--apply"}).err, HasSubstr("nothing to discard"));
    done({"undo"}); // all of it is one change
    EXPECT_THAT(done({"runs"}), Not(HasSubstr("discarded: accessory load changed")));
    EXPECT_THAT(call({"screen", "--apply"}).err, HasSubstr("discarded run 20: over-speed"));
}

TEST_F(CliStudy, ListsThePropertiesThatWereSet)
{
    done({"new"});
    done({"set", "overspeed.rpm=3200", "margin=0.5"});
    const std::string listed = done({"set"});
    EXPECT_THAT(listed, HasSubstr("overspeed.rpm=3200\n"));
    EXPECT_THAT(listed, HasSubstr("margin=0.5\n"));
    EXPECT_EQ(analysed()["options"]["margin_pct"], 0.5);
    done({"set", "margin="});
    EXPECT_THAT(done({"set"}), Not(HasSubstr("margin")));
}

TEST_F(CliStudy, SaysInterimUntilItsPlanIsDrivenAndRecordsEveryLook)
{
    done({"new", "plan.sequence=ABA", "plan.pairs=4"});
    typeTwelveRuns(); // two pairs a block
    EXPECT_THAT(analysed()["verdict"]["qualifiers"].dump(), HasSubstr("interim"));
    const std::string page = m_folder / "page.html";
    done({"report", "--to", page});
    EXPECT_THAT(readFile(page), HasSubstr("look"));
}

TEST_F(CliStudy, GivesTheSameChecksumWhateverItsHistory)
{
    done({"new"});
    typeTwelveRuns();
    const auto before = analysed()["input_sha256"];
    done({"discard", "5", "--reason", "adjusted"});
    EXPECT_NE(analysed()["input_sha256"], before);
    done({"undo"});
    EXPECT_EQ(analysed()["input_sha256"], before);
}

TEST(CliSeveral, PutsStudiesIntoOneTableAndPoolsThem)
{
    const nlohmann::json json =
        jsonOf({"analyse", exampleFile("morning.csv"), exampleFile("roof_box_open.csv"),
                exampleFile("too_few.csv"), "--json"});
    EXPECT_EQ(json["schema"], "bothways.pooled/1");
    EXPECT_EQ(json["studies"].size(), 3U);
    EXPECT_EQ(json["studies"][0]["name"], "morning");
    EXPECT_TRUE(json["studies"][2]["effect_log"].is_null());
    EXPECT_EQ(json["pooled"]["df"], 1.0);
}

TEST(CliPlan, PrintsTheHalfWidthOfTheMethod)
{
    // Method, section 12: A/B/A with 4 pairs a block and no switch time: 1.395 %.
    const nlohmann::json json = jsonOf({"plan", "--sequence", "ABA", "--pairs", "4", "--noise", "1",
                                        "--switch-min", "0", "--json"});
    EXPECT_EQ(json["schema"], "bothways.plan/1");
    EXPECT_EQ(json["pairs"], 12);
    EXPECT_EQ(json["df"], 9.0);
    EXPECT_NEAR(json["half_width_pct"].get<double>(), 1.395, 0.0005);
    EXPECT_TRUE(json["s_upper80"].is_null());
}

TEST(CliPlan, TakesTheNoiseFromStudies)
{
    const nlohmann::json json = jsonOf({"plan", exampleFile("morning.csv"), "--json"});
    EXPECT_NEAR(json["s"].get<double>(), 0.0050283271080282, 1e-9); // of the worked example
    EXPECT_GT(json["s_upper80"].get<double>(), json["s"].get<double>());
}

TEST(CliPlan, SaysWhichSequenceFitsTheHoursAndWhatItIsWeakAgainst)
{
    const nlohmann::json json = jsonOf({"plan", "--hours", "4", "--json"});
    ASSERT_GT(json["plans"].size(), 2U);
    for (const auto& plan : json["plans"]) {
        EXPECT_LE(plan["road_hours"].get<double>(), 4.0);
        EXPECT_GE(plan["detectable_pct"].get<double>(),
                  json["plans"][0]["detectable_pct"].get<double>()); // best first
        // 4,000 repeats at 0.95: standard error 0.0034; five of them allow one in a million.
        EXPECT_NEAR(plan["coverage"]["none"].get<double>(), 0.95, 5 * 0.0034) << plan["sequence"];
    }
}

TEST(CliPlan, WritesARunCardWithTheStudysOwnNames)
{
    const TempFolder folder;
    const std::string card = folder / "card.html";
    const Ran ran = bothwaysProgram(
        {"plan", exampleFile("roof_box_open.csv"), "--card", card, "--begin", "05:40"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(ran.err, "wrote the run card: " + card + "\n");
    EXPECT_THAT(readFile(card), HasSubstr("north"));
    EXPECT_THAT(readFile(card), HasSubstr("05:40"));
}

TEST(CliLedger, CostsMoreThanItRelieves)
{
    const nlohmann::json json = jsonOf({"ledger", "--output-w", "600", "--speed-kmh", "100",
                                        "--consumption", "8", "--see", "1", "--json"});
    EXPECT_EQ(json["schema"], "bothways.ledger/1");
    EXPECT_GT(json["net_pct"]["middle"].get<double>(), 0.0);
    EXPECT_GT(json["watts_to_see"].get<double>(), 0.0);
}

TEST_F(CliStudy, PutsTheMeasuredEffectBesideTheLedgerAndSaysWhatItAssumed)
{
    done({"new"});
    typeTwelveRuns();
    const std::string text = done({"ledger"});
    EXPECT_THAT(text, HasSubstr("Measured by the study's runs"));
    EXPECT_THAT(text, HasSubstr("road speed 89.1 km/h (the median of 12 runs)"));
    EXPECT_THAT(text, Not(HasSubstr("a consumption of"))) << "that is the study's";
    done({"set", "road_speed.target_kmh=90"});
    EXPECT_THAT(done({"ledger"}), HasSubstr("at 90 km/h"));
    EXPECT_THAT(done({"ledger"}), Not(HasSubstr("a road speed of")));
}

} // namespace
} // namespace bothways::tests
