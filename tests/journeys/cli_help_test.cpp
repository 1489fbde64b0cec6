// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>

namespace bothways::test {
namespace {

using ::testing::HasSubstr;
using ::testing::MatchesRegex;
using ::testing::Not;

TEST(Help, OfEveryVerbTeachesWithOneExample)
{
    for (const char* verb :
         {"new", "set", "import", "export", "add", "pair", "unpair", "rename", "undo", "redo",
          "runs", "screen", "discard", "count", "analyse", "columns", "plan", "ledger", "report"}) {
        const Ran ran = bothwaysProgram({verb, "--help"});
        EXPECT_EQ(ran.code, 0) << verb;
        EXPECT_EQ(ran.err, "") << verb;
        EXPECT_THAT(ran.out, HasSubstr(std::string("Example:\n  bothways ") + verb));
        EXPECT_THAT(bothwaysProgram({"--help"}).out, HasSubstr(verb));
    }
}

TEST(Version, IsTheProjects)
{
    const Ran ran = bothwaysProgram({"--version"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_EQ(ran.out, "bothways " BOTHWAYS_VERSION "\n");
}

TEST(Colour, IsNotWrittenToAFile)
{
    const Ran ran =
        bothwaysProgram({"analyse", exampleFile("morning.csv")}, {{"TERM", "xterm-256color"}});
    EXPECT_THAT(ran.out, Not(HasSubstr("\033")));
}

TEST(Locale, ChangesWordsOnly)
{
    const Environment german = {{"LC_ALL", "de_DE.UTF-8"}, {"LANG", "de_DE.UTF-8"}};
    const Environment plain = {{"LC_ALL", "C"}, {"LANG", "C"}};
    for (const std::vector<std::string>& call :
         {std::vector<std::string>{"analyse", exampleFile("morning.csv"), "--json", "--margin",
                                   "1.5"},
          {"analyse", exampleFile("morning.csv"), "--language", "en"},
          {"export", demoFile("tyre_pressure.csv")},
          {"plan", "--noise", "1.25", "--language", "en"}}) {
        const Ran one = bothwaysProgram(call, plain), other = bothwaysProgram(call, german);
        EXPECT_EQ(one.code, 0) << one.err;
        EXPECT_EQ(one.out, other.out) << call.front();
    }
}

TEST(Output, IsTheSameEveryTime)
{
    const std::vector<std::string> call = {"analyse", demoFile("levee_generator.csv"), "--json"};
    EXPECT_EQ(bothwaysProgram(call).out, bothwaysProgram(call).out);
}

TEST(Output, ThatCannotBeWrittenIsAnError)
{
    const Ran ran = run("/bin/sh", {"-c", std::string("'" BOTHWAYS_PROGRAM "' analyse '") +
                                              exampleFile("morning.csv") + "' > /dev/full"});
    EXPECT_EQ(ran.code, 4);
    EXPECT_THAT(ran.err, HasSubstr("standard output"));
}

} // namespace
} // namespace bothways::test
