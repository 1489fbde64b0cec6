// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/catalogue/catalogue.h"

#include <gmock/gmock.h>

#include <fstream>

namespace bothways::app::catalogue {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

std::filesystem::path written(const std::string& name, const std::string& content)
{
    const auto file = std::filesystem::path(::testing::TempDir()) / name;
    std::ofstream(file, std::ios::binary) << content;
    return file;
}

TEST(Scanner, FindsOnlyTextsWithTheSuffix)
{
    EXPECT_THAT(textsIn(R"(say("a {} b"_t, x); plain("no"); other("no"_tx); say("c"_t);)"),
                ElementsAre("a {} b", "c"));
}

TEST(Scanner, TakesLiteralsThatStandTogetherAsOne)
{
    EXPECT_THAT(textsIn("say(\"one \"\n    \"two \" // between\n \"three\"_t)"),
                ElementsAre("one two three"));
    EXPECT_THAT(textsIn(R"(f("one", "two"_t))"), ElementsAre("two"));
}

TEST(Scanner, PassesCommentsOver)
{
    EXPECT_THAT(textsIn("// \"a\"_t\n/* \"b\"_t\n */ \"c\"_t"), ElementsAre("c"));
}

TEST(Scanner, ReadsEscapes)
{
    EXPECT_THAT(textsIn(R"("a \"b\" \\ \u00b2\n"_t)"), ElementsAre("a \"b\" \\ ²\n"));
}

TEST(Scanner, PassesRawLiteralsAndCharactersOver)
{
    EXPECT_THAT(textsIn("R\"x(\"a\"_t)x\" '\"' 1'000 \"b\"_t '\\''"), ElementsAre("b"));
}

TEST(TsFile, KeepsWhatWasWritten)
{
    const Translations all{{"a & b < \"c\"", "ä 'ö'"}, {"less##verdict", "weniger"}, {"new", ""}};
    const std::string text = writeTs(all, "de");
    EXPECT_THAT(text, HasSubstr("<comment>verdict</comment>"));
    EXPECT_EQ(readTs(written("round.ts", text)), all);
}

TEST(TsFile, RefusesASentenceThatIsThereTwice)
{
    const std::string message = "<message><source>a</source><translation>b</translation></message>";
    const auto file = written("twice.ts", "<TS><context>" + message + message + "</context></TS>");
    try {
        static_cast<void>(readTs(file));
        FAIL() << "it was taken";
    } catch (const std::runtime_error& problem) {
        EXPECT_THAT(problem.what(), HasSubstr("twice.ts: is there twice: a"));
    }
}

TEST(TsFile, SaysWhereItIsNoXml)
{
    try {
        static_cast<void>(readTs(written("broken.ts", "<TS>\n<context>\n</TS>")));
        FAIL() << "it was taken";
    } catch (const std::runtime_error& problem) {
        EXPECT_THAT(problem.what(), HasSubstr("broken.ts:3: "));
    }
}

TEST(Updating, KeepsWhatIsKnownAddsWhatIsNewAndDropsWhatIsGone)
{
    EXPECT_EQ(updated({{"kept", "bleibt"}, {"gone", "weg"}}, {"kept", "new"}),
              (Translations{{"kept", "bleibt"}, {"new", ""}}));
}

TEST(Table, LeavesOutWhatHasNoTranslation)
{
    const std::string source = tableSource({{"a \"b\"", "c"}, {"new", ""}}, "kDe");
    EXPECT_THAT(source, HasSubstr("kDe[]"));
    EXPECT_THAT(source, HasSubstr(R"({"a \"b\"", "c"})"));
    EXPECT_THAT(source, ::testing::Not(HasSubstr("new")));
}

TEST(Fault, IsAPlaceTooManyOrTooFew)
{
    EXPECT_THAT(faultOf("{} of {}", "{1} von {0}"), IsEmpty());
    EXPECT_THAT(faultOf("{} less##verdict", "{} weniger"), IsEmpty());
    EXPECT_THAT(faultOf("{} of {}", "{} von allen"), HasSubstr("has 2 places"));
    EXPECT_THAT(faultOf("all", "alle {}"), HasSubstr("has 0 places"));
}

} // namespace
} // namespace bothways::app::catalogue
