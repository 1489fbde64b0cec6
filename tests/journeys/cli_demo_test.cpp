// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>

#include <filesystem>

namespace bothways::tests {
namespace {

using ::testing::HasSubstr;

TEST(Demo, IsMadeAgainByteForByte)
{
    const TempFolder folder;
    ASSERT_EQ(run(BOTHWAYS_MAKE_DEMO, {folder.path().string()}).code, 0);
    for (const char* sheet : {"levee_generator.csv", "roof_box.csv", "tyre_pressure.csv"})
        EXPECT_EQ(readFile(folder / sheet), readFile(demoFile(sheet))) << sheet;
}

TEST(Demo, MakesItsRecordingsAgainByteForByte)
{
    const TempFolder folder;
    ASSERT_EQ(run(BOTHWAYS_MAKE_DEMO, {folder.path().string()}).code, 0);
    int files = 0;
    for (const auto& entry :
         std::filesystem::directory_iterator(folder / "levee_generator_traces")) {
        const std::string name = "levee_generator_traces/" + entry.path().filename().string();
        EXPECT_EQ(readFile(entry.path().string()), readFile(demoFile(name))) << name;
        ++files;
    }
    EXPECT_EQ(files, 10);
}

TEST(Demo, SaysThatItIsInvented)
{
    for (const char* sheet : {"levee_generator.csv", "roof_box.csv", "tyre_pressure.csv"})
        EXPECT_THAT(readFile(demoFile(sheet)), HasSubstr("# Invented data")) << sheet;
}

TEST(Demo, HasSomethingForScreeningToFind)
{
    const nlohmann::json json =
        jsonOf({"screen", demoFile("levee_generator.csv"), "--json", "--limit",
                "overspeed.rpm=3200", "--limit", "accessory_timer.windscreen=600,10", "--limit",
                "accessory_change.declared_w=900", "--limit", "stretch.km=5", "--limit",
                "road_speed.target_kmh=90"});
    std::vector<std::string> found;
    for (const auto& finding : json["findings"])
        found.push_back(std::to_string(finding["run"].get<int>()) + " " +
                        finding["rule"].get<std::string>());
    EXPECT_THAT(found, ::testing::ElementsAre(
                           "1 not_cruising", "7 same_run_twice", "15 accessory_change",
                           "15 accessory_timer", "18 setting_mismatch", "20 passing_traffic",
                           "20 overspeed", "23 road_speed", "28 road_speed", "28 interrupted"));
}

TEST(Demo, EverySheetGivesAVerdict)
{
    for (const char* sheet : {"levee_generator.csv", "roof_box.csv", "tyre_pressure.csv"})
        EXPECT_NE(jsonOf({"analyse", demoFile(sheet), "--json"})["verdict"]["class"], "none")
            << sheet;
}

TEST(Demo, ScreeningIsSaidInTheNotes)
{
    const nlohmann::json json = jsonOf({"analyse", demoFile("levee_generator.csv"), "--json",
                                        "--apply-screening", "--limit", "overspeed.rpm=3200"});
    EXPECT_THAT(json["notes"].dump(), HasSubstr("run 20 (overspeed)"));
    EXPECT_THAT(bothwaysProgram({"analyse", demoFile("levee_generator.csv"), "--apply-screening",
                                 "--limit", "overspeed.rpm=3200", "--language", "de"})
                    .out,
                HasSubstr("(Überdrehzahl)"));
    EXPECT_EQ(json["study"]["discarded"], 6); // three by hand, run 7 typed twice, runs 15 and 20
}

} // namespace
} // namespace bothways::tests
