// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>

#include <filesystem>

#include <sys/stat.h>

// No slip destroys a file: what the verbs that write do with what is there already.

namespace bothways::tests {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;
using ::testing::Not;

/// By a shell in `folder`, where PROGRAM stands for the program.
Ran shell(const TempFolder& folder, const std::string& script)
{
    return run("/bin/bash", {"-c", "cd '" + folder.path().string() + "' && " + script},
               {{"PROGRAM", BOTHWAYS_PROGRAM}});
}

class WrittenByVerbs : public ::testing::Test {
protected:
    void SetUp() override
    {
        fs::copy_file(exampleFile("morning.csv"), m_folder / "a.csv");
        fs::copy_file(exampleFile("roof_box_open.csv"), m_folder / "b.csv");
        ASSERT_EQ(bothwaysProgram({"new", m_folder / "day.bothways"}).code, 0);
        ASSERT_EQ(bothwaysProgram({"import", m_folder / "day.bothways", m_folder / "a.csv"}).code,
                  0);
    }
    [[nodiscard]] Ran sh(const std::string& script) const { return shell(m_folder, script); }
    [[nodiscard]] std::string text(const std::string& name) const
    {
        return readFile(m_folder / name);
    }
    TempFolder m_folder;
};

TEST_F(WrittenByVerbs, ASlipOverwritesNoRunSheet)
{
    const std::string before = text("b.csv");
    for (const char* verb :
         {"report a.csv --output b.csv", "export a.csv b.csv", "export a.csv --to b.csv",
          "export day.bothways --pairs --output b.csv", "plan a.csv --card b.csv",
          "plan --card b.csv"}) {
        const Ran ran = sh(std::string("\"$PROGRAM\" ") + verb);
        EXPECT_EQ(ran.code, 4) << verb << ran.err;
        EXPECT_THAT(ran.err, HasSubstr("b.csv: cannot be written: there is such a file already"));
        EXPECT_THAT(ran.err, HasSubstr("b.csv --replace"));
        EXPECT_EQ(text("b.csv"), before) << verb;
    }
    const Ran two = sh("\"$PROGRAM\" report a.csv b.csv");
    EXPECT_EQ(two.code, 0) << "two studies, taken together" << two.err;
    EXPECT_THAT(two.out, HasSubstr("</html>"));
    EXPECT_EQ(text("b.csv"), before);
    EXPECT_EQ(sh("\"$PROGRAM\" export a.csv b.csv --replace").code, 2)
        << "the second word is what slips in";
    EXPECT_EQ(text("b.csv"), before);
    EXPECT_EQ(sh("\"$PROGRAM\" export a.csv --output b.csv --replace").code, 0);
    EXPECT_NE(text("b.csv"), before);
    EXPECT_EQ(sh("\"$PROGRAM\" plan a.csv --card b.csv --replace").code, 0);
    EXPECT_THAT(text("b.csv"), HasSubstr("Run card"));
}

TEST_F(WrittenByVerbs, AReportOfOursIsRenewedWithoutAsking)
{
    EXPECT_EQ(sh("\"$PROGRAM\" report a.csv day.html").code, 0);
    EXPECT_EQ(sh("\"$PROGRAM\" report b.csv day.html").code, 0);
    EXPECT_THAT(text("day.html"), HasSubstr("b.csv"));
    EXPECT_EQ(
        sh("\"$PROGRAM\" plan --card card.html && \"$PROGRAM\" plan --pairs 5 --card card.html")
            .code,
        0);
    EXPECT_EQ(sh("\"$PROGRAM\" report a.csv card.html").code, 4)
        << "that is a page of another kind";
    EXPECT_EQ(sh("\"$PROGRAM\" export a.csv out.csv && \"$PROGRAM\" export a.csv out.csv").code, 0)
        << "the same bytes again lose nothing";
}

TEST_F(WrittenByVerbs, AnInputAStudyAndWhatALinkLeadsToAreNeverReplaced)
{
    const std::string study = text("day.bothways"), sheet = text("a.csv");
    ASSERT_EQ(sh("ln a.csv hard.csv && ln -s a.csv soft.csv && ln -s b.csv other.csv && "
                 "ln -s day.bothways study.csv && mkdir in && ln -s .. in/up")
                  .code,
              0);
    for (const char* target : {"a.csv", "./a.csv", "hard.csv", "soft.csv", "other.csv", "study.csv",
                               "day.bothways", "in/up/a.csv", "/proc/self/cwd/a.csv"})
        for (const char* verb :
             {"export a.csv --output ", "report a.csv --output ", "plan a.csv --card "}) {
            const std::string call = std::string(verb) + target + " --replace";
            EXPECT_EQ(sh("\"$PROGRAM\" " + call).code, 4) << call;
        }
    EXPECT_EQ(sh("\"$PROGRAM\" report day.bothways --output day.bothways-journal --replace").code,
              4);
    EXPECT_EQ(text("a.csv"), sheet);
    EXPECT_EQ(text("day.bothways"), study);
    EXPECT_EQ(text("b.csv"), readFile(exampleFile("roof_box_open.csv")));
}

TEST_F(WrittenByVerbs, ARecordingThatTheSheetNamesIsAnInput)
{
    m_folder.write("log.csv", "time,speed\n0,1\n");
    m_folder.write("s.csv", "configuration,direction,start,l_per_100km,trace\n"
                            "A,out,2026-05-09T05:40:00,8.4,log.csv\n");
    const Ran ran = sh("\"$PROGRAM\" export s.csv --output log.csv --replace");
    EXPECT_NE(ran.code, 0);
    EXPECT_EQ(text("log.csv"), "time,speed\n0,1\n");
}

TEST_F(WrittenByVerbs, SeveralAtOnceToOneNameLeaveOneWhole)
{
    const Ran ran =
        sh("for i in 1 2 3 4 5 6; do \"$PROGRAM\" export a.csv --output x.csv --replace "
           "& \"$PROGRAM\" export b.csv --output x.csv --replace & done; wait; ls");
    EXPECT_THAT(ran.out, Not(HasSubstr("bothways-"))) << "nothing is left beside it";
    EXPECT_THAT(ran.err, Not(HasSubstr("cannot be written")));
    const std::string one = sh("\"$PROGRAM\" export a.csv").out,
                      other = sh("\"$PROGRAM\" export b.csv").out;
    EXPECT_THAT(text("x.csv"), ::testing::AnyOf(one, other));
}

TEST_F(WrittenByVerbs, AFileThatGrowsTooLargeIsAnErrorAndNoHalfFile)
{
    for (const char* verb : {"report a.csv r.html", "export a.csv e.csv", "plan --card c.html"}) {
        const Ran ran = sh(std::string("ulimit -f 1; \"$PROGRAM\" ") + verb);
        EXPECT_EQ(ran.code, 4) << verb;
        EXPECT_THAT(ran.err, HasSubstr("File too large"));
    }
    EXPECT_EQ(sh("ls").out, "a.csv\nb.csv\nday.bothways\n");
}

TEST_F(WrittenByVerbs, PipesAndStandardOutputAreWrittenToAsTheyAre)
{
    const std::string plain = sh("\"$PROGRAM\" export a.csv").out;
    for (const char* target : {"-", "/dev/stdout", "/dev/fd/1", "/proc/self/fd/1"})
        EXPECT_EQ(sh(std::string("\"$PROGRAM\" export a.csv ") + target).out, plain) << target;
    EXPECT_EQ(sh("mkfifo p; cat p & \"$PROGRAM\" export a.csv p; wait").out, plain);
    EXPECT_EQ(sh("\"$PROGRAM\" export a.csv >(cat)").out, plain);
    EXPECT_EQ(sh("\"$PROGRAM\" export a.csv /dev/fd/7 7>&1").out, plain);
    EXPECT_EQ(sh("\"$PROGRAM\" export a.csv /dev/null").code, 0);
    EXPECT_EQ(sh("\"$PROGRAM\" export a.csv /dev/full").code, 4);
}

TEST_F(WrittenByVerbs, ASheetMayComeThroughAPipe)
{
    const std::string plain = sh("\"$PROGRAM\" analyse a.csv").out;
    for (const char* call :
         {"cat a.csv | \"$PROGRAM\" analyse -", "\"$PROGRAM\" analyse - < a.csv",
          "cat a.csv | \"$PROGRAM\" analyse /dev/stdin", "\"$PROGRAM\" analyse <(cat a.csv)",
          "mkfifo p; (sleep 0.2; cat a.csv > p) & \"$PROGRAM\" analyse p",
          "\"$PROGRAM\" analyse /dev/fd/5 5< a.csv"})
        EXPECT_EQ(sh(call).out, plain) << call;
    EXPECT_THAT(sh("\"$PROGRAM\" report - < a.csv").out, HasSubstr("standard input"));
    const Ran bad = sh("echo nonsense | \"$PROGRAM\" runs -");
    EXPECT_EQ(bad.code, 3);
    EXPECT_THAT(bad.err, HasSubstr("standard input:1:"));
    EXPECT_THAT(sh("echo nonsense | \"$PROGRAM\" --language de runs -").err,
                HasSubstr("Standardeingabe:1:"));
    EXPECT_THAT(sh("\"$PROGRAM\" runs - < day.bothways").err, HasSubstr("give its name"));
    EXPECT_THAT(sh("head -c 70M /dev/zero | tr '\\0' ',' | \"$PROGRAM\" runs -").err,
                HasSubstr("larger than 64 MB"));
}

TEST_F(WrittenByVerbs, APipeWhereAStudyShouldBeIsAnErrorAtOnce)
{
    ASSERT_EQ(sh("mkfifo p.bothways q").code, 0);
    for (const char* call :
         {"runs p.bothways", "set p.bothways margin=1", "undo q", "import p.bothways a.csv",
          "add q start=05:40", "analyse a.csv p.bothways"}) {
        const Ran ran = sh(std::string("timeout 5 \"$PROGRAM\" ") + call);
        EXPECT_EQ(ran.code, 4) << call << ran.err;
        EXPECT_THAT(ran.err, HasSubstr("expected a study")) << call;
    }
}

TEST_F(WrittenByVerbs, FormulasAreGuardedForASpreadsheetAlone)
{
    m_folder.write("f.csv", "configuration,direction,start,l_per_100km,notes\n"
                            "A,out,2026-05-09T05:40:00,8.4,=1+1\n");
    EXPECT_THAT(sh("\"$PROGRAM\" export f.csv").out, HasSubstr(",=1+1\n"));
    EXPECT_THAT(sh("\"$PROGRAM\" export f.csv --for-spreadsheet").out, HasSubstr(",'=1+1\n"));
    EXPECT_EQ(sh("\"$PROGRAM\" export f.csv --for-spreadsheet --json").code, 2);
}

} // namespace
} // namespace bothways::tests
