// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>

namespace bothways::test {
namespace {

using ::testing::HasSubstr;

TEST(Demo, IsMadeAgainByteForByte)
{
    const TempFolder folder;
    ASSERT_EQ(run(BOTHWAYS_MAKE_DEMO, {folder.path().string()}).code, 0);
    for (const char* sheet : {"levee_generator.csv", "roof_box.csv", "tyre_pressure.csv"})
        EXPECT_EQ(readFile(folder / sheet), readFile(demoFile(sheet))) << sheet;
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
                "accessory_change.declared_w=900", "--limit", "stretch.km=5"});
    std::vector<std::string> found;
    for (const auto& finding : json["findings"])
        found.push_back(std::to_string(finding["run"].get<int>()) + " " +
                        finding["rule"].get<std::string>());
    EXPECT_THAT(found, ::testing::ElementsAre("7 same_run_twice", "15 accessory_timer",
                                              "20 overspeed", "20 passing_traffic"));
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
    EXPECT_EQ(json["study"]["discarded"], 5); // three by hand, run 7 typed twice, run 20
}

} // namespace
} // namespace bothways::test
