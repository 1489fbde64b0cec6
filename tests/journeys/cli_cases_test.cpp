// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <sstream>

// Situations that really happen, as a user would meet them: a claim, borrowed noise, a look after
// each block, days that do not agree, a control vehicle in miles a gallon, electric drive, several
// studies. The sheets are described in tests/published/data/cases/SOURCES.md.

namespace bothways::tests {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

std::string caseFile(const std::string& name)
{
    return std::string(BOTHWAYS_SOURCE_DIR "/tests/published/data/cases/") + name;
}

/// The first `lines` of a sheet after its header, in a folder of its own.
std::string beginning(const TempFolder& folder, const std::string& sheet, int lines)
{
    std::istringstream whole(readFile(sheet));
    std::string text, line;
    for (int i = 0; i <= lines && std::getline(whole, line); ++i)
        text += line + "\n";
    return folder.write("part" + std::to_string(lines) + ".csv", text);
}

TEST(CliClaim, IsAnsweredByTheSecondSentence)
{
    const std::string sheet = exampleFile("claim.csv");
    const Ran refuted = bothwaysProgram({"analyse", sheet, "--claim", "-5"});
    EXPECT_THAT(refuted.out, HasSubstr("That is at least 0.76 % less."));
    EXPECT_THAT(refuted.out, HasSubstr("The claimed 5 % less is ruled out: it is at most"));
    EXPECT_THAT(bothwaysProgram({"analyse", sheet, "--claim", "-0.5"}).out,
                HasSubstr("The claimed 0.5 % less is borne out."));
    EXPECT_THAT(bothwaysProgram({"analyse", sheet, "--claim=-1.2"}).out,
                HasSubstr("These runs neither bear out nor rule out the claimed"));
    EXPECT_THAT(bothwaysProgram({"analyse", sheet}).out, Not(HasSubstr("claimed")));
}

TEST(CliClaim, OfNothingOrOfMoreThanEverythingIsBadInput)
{
    const std::string sheet = exampleFile("claim.csv");
    for (const char* claim : {"0", "-100", "-150", "much", "nan"}) {
        const Ran ran = bothwaysProgram({"analyse", sheet, std::string("--claim=") + claim});
        EXPECT_EQ(ran.code, 2) << claim;
        EXPECT_THAT(ran.err, HasSubstr("not 0, and above -100")) << claim;
        EXPECT_EQ(ran.out, "");
    }
}

TEST(CliNoise, IsBorrowedFromNamedStudiesOrFromAProperty)
{
    const std::string sheet = exampleFile("claim.csv"), from = exampleFile("morning.csv");
    const auto borrowed =
        jsonOf({"analyse", sheet, "--noise-from", from, "--json"})["companions"]["borrowed"];
    EXPECT_EQ(borrowed["from_df"], 6.0);
    const auto both = jsonOf({"analyse", sheet, "--noise-from", from, "--noise-from",
                              exampleFile("two_days.csv"), "--json"})["companions"]["borrowed"];
    EXPECT_EQ(both["from_df"], 6.0 + 13.0);
    const auto typed =
        jsonOf({"analyse", sheet, "--set", "noise=0.9,21", "--json"})["companions"]["borrowed"];
    EXPECT_NEAR(typed["from_s"].get<double>(), 0.009, 1e-15);
    EXPECT_EQ(typed["from_df"], 21.0);
    EXPECT_THAT(bothwaysProgram({"analyse", sheet, "--set", "noise=0.9,21"}).out,
                HasSubstr("One pair scatters by"));
}

TEST(CliNoise, OfAStudyWithoutAVerdictOrOfThreeNumbersIsBadInput)
{
    const std::string sheet = exampleFile("claim.csv");
    const Ran none =
        bothwaysProgram({"analyse", sheet, "--noise-from", exampleFile("too_few.csv")});
    EXPECT_NE(none.code, 0);
    EXPECT_THAT(none.err, HasSubstr("there is no verdict in it"));
    for (const char* noise : {"noise=0", "noise=0,5", "noise=1,2,3", "noise=1", "noise=x,2"}) {
        const Ran ran = bothwaysProgram({"analyse", sheet, "--set", noise});
        EXPECT_EQ(ran.code, 2) << noise;
        EXPECT_THAT(ran.err, HasSubstr("like 0.9,21")) << noise;
    }
}

TEST(CliLooks, AreCountedWithoutAPlanToo)
{
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    const std::string sheet = exampleFile("claim.csv");
    ASSERT_EQ(bothwaysProgram({"import", study, beginning(folder, sheet, 12)}).code, 0);
    const auto looks = [&] {
        return jsonOf({"analyse", study, "--json"})["verdict"]["looks"].get<int>();
    };
    EXPECT_EQ(looks(), 0);
    EXPECT_EQ(looks(), 0); // as many pairs as before
    std::istringstream whole(readFile(sheet));
    std::string line, rest;
    for (int i = 0; std::getline(whole, line); ++i)
        if (i == 0 || i > 12)
            rest += line + "\n";
    ASSERT_EQ(bothwaysProgram({"import", study, folder.write("rest.csv", rest)}).code, 0);
    EXPECT_EQ(looks(), 1);
    EXPECT_EQ(jsonOf({"analyse", sheet, "--json"})["verdict"]["looks"], 0); // a sheet has none
}

TEST(CliDays, ThatDoNotAgreeAreSaidBesideTheVerdict)
{
    const Ran ran = bothwaysProgram({"analyse", caseFile("effect_by_day.csv")});
    EXPECT_THAT(ran.out, HasSubstr("Each day for itself"));
    EXPECT_THAT(ran.out, HasSubstr("The days do not agree on the effect"));
    EXPECT_THAT(ran.out, HasSubstr("days: days agree"));
}

TEST(CliControl, InMilesAGallonIsTheSameTypedAndRecorded)
{
    const auto typed =
        jsonOf({"analyse", caseFile("control_in_mpg/mpg_typed.csv"), "--json"})["headline"];
    const auto recorded =
        jsonOf({"analyse", caseFile("control_in_mpg/mpg_trace.csv"), "--json"})["headline"];
    // As typed, but for the digits of the display and of the recordings.
    EXPECT_NEAR(typed["effect_pct"].get<double>(), -0.17, 0.01);
    EXPECT_NEAR(recorded["effect_pct"].get<double>(), typed["effect_pct"].get<double>(), 0.02);
    EXPECT_NEAR(recorded["baseline_l_per_100km"].get<double>(),
                typed["baseline_l_per_100km"].get<double>(), 0.01);
}

TEST(CliLedger, OfAnElectricStudyIsInKilowattHours)
{
    const std::string sheet = caseFile("electric.csv");
    const auto json =
        jsonOf({"ledger", sheet, "--output-w", "600", "--speed-kmh", "100", "--json"});
    EXPECT_EQ(json["unit"], "kwh_per_100km");
    // 600 W for 36 s a kilometre are 0.6 kWh/100 km; the converter takes 0.94 of it, no motor.
    EXPECT_NEAR(json["relief_l_per_100km"]["middle"].get<double>(), 0.6 / 0.94, 1e-9);
    EXPECT_THAT(bothwaysProgram({"ledger", sheet}).out, HasSubstr("kWh/100 km"));
    const Ran mixed = bothwaysProgram({"ledger", sheet, "--fuel", "petrol"});
    EXPECT_EQ(mixed.code, 2);
    EXPECT_THAT(mixed.err, HasSubstr("kWh"));
}

TEST(CliSeveral, AreReportedOnOnePage)
{
    const TempFolder folder;
    const std::string page = folder / "all.html";
    const std::vector<std::string> sheets = {exampleFile("morning.csv"), exampleFile("claim.csv"),
                                             exampleFile("two_days.csv")};
    ASSERT_EQ(bothwaysProgram({"report", sheets[0], sheets[1], sheets[2], "--to", page}).code, 0);
    const std::string html = readFile(page);
    for (const char* words :
         {"3 studies together", "One effect for all studies", "morning", "two_days", "<svg"})
        EXPECT_THAT(html, HasSubstr(words));
    const std::string copy = folder / "copy.csv";
    std::filesystem::copy_file(sheets[0], copy);
    ASSERT_EQ(bothwaysProgram({"report", sheets[0], copy, "--to", page}).code, 0);
    EXPECT_THAT(readFile(page),
                HasSubstr("copy.csv holds the same as morning.csv, and counts twice."));
    const auto json = jsonOf({"analyse", sheets[0], sheets[1], sheets[2], "--json"})["pooled"];
    for (const char* key : {"effect_pct", "low_pct", "high_pct", "df", "p"})
        EXPECT_TRUE(json["common"][key].is_number()) << key;
    for (const char* key : {"statistic", "df1", "df2", "p"})
        EXPECT_TRUE(json["agreement"][key].is_number()) << key;
}

TEST(CliPlan, ShowsWhatABendAndLooksCost)
{
    const auto plan = jsonOf({"plan", "--sequence", "ABBA", "--noise", "1", "--json"});
    EXPECT_GT(plan["curved_half_width_pct"].get<double>(), plan["half_width_pct"].get<double>());
    EXPECT_GT(plan["any_look_half_width_pct"].get<double>(), plan["half_width_pct"].get<double>());
    const auto open = jsonOf({"plan", "--sequence", "AB", "--noise", "1", "--json"});
    EXPECT_TRUE(open["curved_half_width_pct"].is_null());
    EXPECT_EQ(bothwaysProgram({"plan", "--sequence", "A"}).code, 2);
    EXPECT_THAT(bothwaysProgram({"plan", "--hours", "4"}).out, HasSubstr("any number of looks"));
}

TEST(CliConfidence, IsAnswerableUpToItsHighest)
{
    const std::string sheet = exampleFile("claim.csv");
    EXPECT_EQ(bothwaysProgram({"analyse", sheet, "--confidence", "0.9999"}).code, 0);
    const Ran beyond = bothwaysProgram({"analyse", sheet, "--confidence", "0.99999"});
    EXPECT_EQ(beyond.code, 2);
    EXPECT_THAT(beyond.err, HasSubstr("at most 0.9999"));
}

} // namespace
} // namespace bothways::tests
