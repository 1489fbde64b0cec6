// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>

#include <sstream>

namespace bothways::tests {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::StartsWith;

/// What is offered, without the words on it.
std::vector<std::string> offered(std::vector<std::string> words,
                                 const Environment& environment = {})
{
    words.insert(words.begin(), "--complete-for-shell");
    const Ran ran = bothwaysProgram(words, environment);
    EXPECT_EQ(ran.code, 0);
    EXPECT_EQ(ran.err, "");
    std::istringstream lines(ran.out);
    std::vector<std::string> values;
    for (std::string line; std::getline(lines, line);)
        values.push_back(line.substr(0, line.find('\t')));
    return values;
}

class Completion : public ::testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_EQ(bothwaysProgram({"new", m_study}).code, 0);
        ASSERT_EQ(bothwaysProgram({"import", m_study, exampleFile("morning.csv")}).code, 0);
    }
    TempFolder m_folder;
    const std::string m_study = m_folder / "day.bothways";
};

} // namespace

TEST_F(Completion, KnowsVerbsOptionsAndTheirWords)
{
    EXPECT_THAT(offered({"over"}), ElementsAre("overrule"));
    EXPECT_THAT(offered({"help", "over"}), ElementsAre("overrule"));
    EXPECT_THAT(offered({"analyse", "--mar"}), ElementsAre("--margin"));
    EXPECT_THAT(offered({"analyse", "--unit", "mpg"}), ElementsAre("mpg_us", "mpg_imp"));
    EXPECT_THAT(offered({"import", m_study, "x.csv", "--dates", ""}),
                ElementsAre("day-first", "month-first"));
    EXPECT_THAT(offered({"--language", ""}), ElementsAre("en", "de"));
    EXPECT_THAT(offered({"analyse", "--no-such"}), IsEmpty());
}

TEST_F(Completion, AsksTheShellForFilesOfTheRightKind)
{
    EXPECT_THAT(offered({"analyse", ""}), ElementsAre(":inputs"));
    EXPECT_THAT(offered({"edit", ""}), ElementsAre(":studies"));
    EXPECT_THAT(offered({"import", m_study, ""}), ElementsAre(":sheets"));
    EXPECT_THAT(offered({"import", m_study, "--trace", ""}), ElementsAre(":files"));
}

TEST_F(Completion, KnowsRunsAndNamesOfTheStudy)
{
    EXPECT_THAT(offered({"discard", m_study, ""}), Contains("7"));
    EXPECT_THAT(offered({"discard", m_study, "7", "--reason", "over"}), ElementsAre("overspeed"));
    EXPECT_THAT(offered({"edit", m_study, "7", "configuration="}),
                ElementsAre("configuration=A", "configuration=B"));
    EXPECT_THAT(offered({"analyse", m_study, "--baseline", ""}), ElementsAre("A", "B"));
}

TEST_F(Completion, KnowsColumnsOfSheetsAndProperties)
{
    EXPECT_THAT(offered({"edit", m_study, "7", "wind_"}),
                ElementsAre("wind_ms=", "wind_from_deg="));
    EXPECT_THAT(offered({"set", m_study, "overspeed."}),
                ElementsAre("overspeed.rpm=", "overspeed.seconds="));
    std::string german = readFile(exampleFile("claim.csv"));
    const std::string sheet =
        m_folder.write("own.csv", german.replace(german.find("l_per_100km"), 11, "Verbrauch"));
    EXPECT_THAT(offered({"analyse", sheet, "--column", "Verb"}), ElementsAre("Verbrauch="));
    EXPECT_THAT(offered({"analyse", sheet, "--column", "Verbrauch=mpg_u"}),
                ElementsAre("Verbrauch=mpg_us"));
}

TEST_F(Completion, SaysWhatAnOptionDoesInTheReadersLanguage)
{
    const std::vector<std::string> words = {"--complete-for-shell", "analyse", "--js"};
    EXPECT_THAT(bothwaysProgram(words).out, HasSubstr("--json\tAs JSON, for programs"));
    EXPECT_THAT(bothwaysProgram(words, {{"LANG", "de_DE.UTF-8"}}).out,
                Not(HasSubstr("for programs")));
    // places of words are known by whatever language they are said in
    EXPECT_THAT(offered({"edit", m_study, ""}, {{"LANG", "de_DE.UTF-8"}}), Contains("7"));
}

TEST_F(Completion, ChangesNothingAndBearsADamagedStudy)
{
    const std::string before = readFile(m_study);
    EXPECT_THAT(offered({"edit", m_study, "1"}), Not(IsEmpty()));
    EXPECT_EQ(readFile(m_study), before);
    const std::string broken = m_folder.write("broken.bothways", before.substr(0, 5000));
    EXPECT_THAT(offered({"edit", broken, ""}), IsEmpty());
}

} // namespace bothways::tests
