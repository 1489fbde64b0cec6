// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/property_names.h"
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>

#include <map>
#include <sstream>

namespace bothways::tests {
namespace {

using ::testing::ContainsRegex;
using ::testing::HasSubstr;
using ::testing::MatchesRegex;
using ::testing::Not;

TEST(Help, OfEveryVerbTeachesWithOneExample)
{
    for (const char* verb :
         {"new",     "set",    "import",   "export", "add",     "edit",    "pair",
          "unpair",  "rename", "undo",     "redo",   "history", "runs",    "screen",
          "discard", "count",  "overrule", "record", "walk",    "analyse", "plan",
          "ledger",  "report", "columns",  "rig",    "help"}) {
        const Ran ran = bothwaysProgram({verb, "--help"});
        EXPECT_EQ(ran.code, 0) << verb;
        EXPECT_EQ(ran.err, "") << verb;
        EXPECT_THAT(ran.out, HasSubstr(std::string("Example:\n  bothways ") + verb));
        EXPECT_THAT(bothwaysProgram({"--help"}).out, HasSubstr(verb));
    }
}

/// The commands among the examples of a verb's help.
std::vector<std::string> examplesOf(const std::string& verb)
{
    std::istringstream help(bothwaysProgram({verb, "--help"}).out);
    std::vector<std::string> examples;
    bool inside = false;
    for (std::string line; std::getline(help, line);) {
        inside = inside || line == "Example:";
        if (inside && line.starts_with("  bothways "))
            examples.push_back(line.substr(2));
    }
    return examples;
}

/// A folder with the files that the examples name.
class HelpExamples : public ::testing::Test {
protected:
    [[nodiscard]] Ran shell(const std::string& commands) const
    {
        return run("/bin/sh",
                   {"-c", "cd '" + m_folder.path().string() +
                              "' && bothways() { '" BOTHWAYS_PROGRAM "' \"$@\"; } && " + commands});
    }
    void SetUp() override
    {
        m_folder.write("morning.csv", readFile(exampleFile("morning.csv")));
        std::string german = readFile(exampleFile("claim.csv")); // known by content, not by name
        m_folder.write("fahrten.xlsx", german.replace(german.find("l_per_100km"), 11, "Verbrauch"));
        std::string log = "time,Speed mph\n";
        for (int second = 0; second < 300; ++second)
            log += std::to_string(second) + "," + std::to_string(55 + second % 3) + "\n";
        m_folder.write("logger.csv", log);
        std::string gpx = "<?xml version=\"1.0\"?><gpx version=\"1.1\"><trk><trkseg>";
        for (int step = 0; step <= 240; ++step) { // through both gates, a quarter of a mile beyond
            const double share = -0.05 + 1.1 * step / 240.0;
            gpx += "<trkpt lat=\"" + std::to_string(47.5061 + share * (47.5299 - 47.5061)) +
                   "\" lon=\"" + std::to_string(9.4213 + share * (9.3871 - 9.4213)) +
                   "\"><time>2026-05-09T12:0" + std::to_string(step / 60) +
                   (step % 60 < 10 ? ":0" : ":") + std::to_string(step % 60) + "Z</time></trkpt>";
        }
        m_folder.write("drive.gpx", gpx + "</trkseg></trk></gpx>");
    }
    TempFolder m_folder;
};

TEST_F(HelpExamples, RunAsTheyArePrinted)
{
    const std::string begin = "rm -f *.bothways *.html day.csv; bothways new day.bothways && "
                              "bothways import day.bothways morning.csv && bothways count "
                              "day.bothways 1-20 && ";
    const std::map<std::string, std::string> first = {
        {"new", "rm day.bothways && "},
        {"rename", "rm day.bothways; bothways new day.bothways; bothways add day.bothways "
                   "configuration=wihtout direction=out start=06:00 l_per_100km=8 && "},
        {"unpair", "bothways pair day.bothways 3 6 && "},
        {"pair", "bothways edit day.bothways 5 setting= && "},
        {"redo", "bothways undo day.bothways && "},
        {"overrule", "bothways edit day.bothways 9 'marks=3 overspeed seen' && "}};
    for (const char* verb :
         {"new",     "set",    "import",   "export", "add",     "edit",    "pair",
          "unpair",  "rename", "undo",     "redo",   "history", "runs",    "screen",
          "discard", "count",  "overrule", "record", "walk",    "analyse", "plan",
          "ledger",  "report", "columns",  "help"}) {
        const auto own = first.find(verb);
        std::string commands = begin + (own == first.end() ? std::string() : own->second);
        const std::vector<std::string> examples = examplesOf(verb);
        ASSERT_FALSE(examples.empty()) << verb;
        if (std::string(verb) == "import") // the first brings the day in
            commands = "rm -f *.bothways; bothways new day.bothways && ";
        for (const std::string& example : examples) {
            // UTC needs a day of its own, and so does a sheet whose runs have numbers.
            if (example.find("--trace drive.gpx") != std::string::npos ||
                example.find("--traces ") != std::string::npos ||
                example.find("fahrten.xlsx") != std::string::npos)
                commands += "rm day.bothways && bothways new day.bothways && ";
            commands += example + " && ";
        }
        const Ran ran = shell(commands + "true");
        EXPECT_EQ(ran.code, 0) << verb << ": " << ran.err;
    }
}

TEST(Help, OfSetNamesEveryProperty)
{
    for (const char* language : {"en", "de"}) {
        const std::string help = bothwaysProgram({"set", "--help", "--language", language}).out;
        for (const std::string_view name : core::propertyNames())
            EXPECT_THAT(help, ContainsRegex("[ \n]" + std::string(name) + "[ ,\n]")) << language;
    }
}

TEST(Version, IsTheProjects)
{
    const Ran ran = run(BOTHWAYS_PROGRAM, {"--version"});
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
} // namespace bothways::tests
