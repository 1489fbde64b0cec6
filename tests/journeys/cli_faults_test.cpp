// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>

#include <filesystem>
#include <set>

// Whatever happens, the program ends with a code of its table, and what it shows commands nothing.

namespace bothways::tests {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;
using ::testing::Not;

const std::vector<std::string>& callsOfAllVerbs()
{
    static const std::vector<std::string> kCalls = {
        "new fresh.bothways",
        "set day.bothways",
        "set day.bothways margin=2",
        "import day.bothways b.csv",
        "export day.bothways",
        "export day.bothways --json",
        "export day.bothways --pairs",
        "add day.bothways start=2026-05-09T12:00 l_per_100km=8",
        "pair day.bothways 1 2",
        "unpair day.bothways 1",
        "rename day.bothways configuration A off",
        "undo day.bothways",
        "redo day.bothways",
        "runs day.bothways",
        "screen day.bothways",
        "screen day.bothways --json",
        "discard day.bothways 1 --reason other --evidence words",
        "count day.bothways 1",
        "analyse day.bothways",
        "analyse day.bothways --json",
        "plan",
        "plan --card card.html",
        "ledger",
        "report day.bothways",
        "report day.bothways --output day.html",
        "--help",
        "--version",
        "analyse --help",
    };
    return kCalls;
}

class Faults : public ::testing::Test {
protected:
    void SetUp() override
    {
        fs::copy_file(exampleFile("morning.csv"), m_folder / "b.csv");
        // With a property, so that every verb has something to say.
        ASSERT_EQ(bothwaysProgram({"new", m_folder / "kept.bothways", "name=kept"}).code, 0);
        ASSERT_EQ(bothwaysProgram({"import", m_folder / "kept.bothways", m_folder / "b.csv"}).code,
                  0);
    }
    /// `call` of the program on a fresh study, with what else the shell is to do.
    [[nodiscard]] Ran faulty(const std::string& before, const std::string& call,
                             const std::string& after) const
    {
        return run("/bin/bash",
                   {"-c", "cd '" + m_folder.path().string() +
                              "' && cp kept.bothways day.bothways && rm -f fresh.bothways && { " +
                              before + " \"$PROGRAM\" " + call + " " + after + "; }"},
                   {{"PROGRAM", BOTHWAYS_PROGRAM}});
    }
    TempFolder m_folder;
};

TEST_F(Faults, OfStandardOutputAreAnErrorOfEveryVerb)
{
    for (const std::string& call : callsOfAllVerbs()) {
        const int usual = faulty("", call, "").code;
        for (const char* out : {">/dev/full", ">&-", "| true; exit ${PIPESTATUS[0]}"}) {
            const Ran ran = faulty("", call, out);
            const bool mayFit = std::string(out).starts_with("|"); // before its reader is gone
            EXPECT_TRUE(ran.code == 4 || ran.code == usual) << call << out << ran.code;
            if (usual == 0 && !mayFit) {
                EXPECT_EQ(ran.code, 4) << call << out;
            }
            if (ran.code == 4) {
                EXPECT_THAT(ran.err, HasSubstr("standard output")) << call << out;
            }
        }
    }
}

// The sanitizer opens a pipe to look at an object, and takes it for broken where it cannot.
#ifdef __SANITIZE_ADDRESS__
constexpr const char* kFewFiles = "ulimit -n 24;";
#else
constexpr const char* kFewFiles = "ulimit -n 10;";
#endif

TEST_F(Faults, OfMemoryAndFilesEndWithACodeOfTheTable)
{
    const std::set<int> known{0, 2, 3, 4, 5};
    for (const std::string& call : callsOfAllVerbs())
        for (const char* limit : {"ulimit -f 0;", kFewFiles}) {
            const Ran ran = faulty(std::string("(") + limit + " exec", call,
                                   ") 2>&1 | cat; exit ${PIPESTATUS[0]}");
            EXPECT_TRUE(known.contains(ran.code)) << limit << call << " " << ran.code << ran.out;
        }
}

TEST_F(Faults, HaveOneTableInTheHelpAndTheReadme)
{
    const std::string help = bothwaysProgram({"--help"}).out;
    const std::string readme = readFile(BOTHWAYS_SOURCE_DIR "/README.md");
    const std::string book = readFile(BOTHWAYS_SOURCE_DIR "/resources/help/command_line.md");
    const std::string german = readFile(BOTHWAYS_SOURCE_DIR "/resources/help/de/command_line.md");
    const std::string germanHelp = bothwaysProgram({"--help", "--language", "de"}).out;
    const auto rows = [](const std::string& text, const std::string& title) {
        std::vector<std::pair<std::string, std::string>> found;
        std::size_t at = text.find(title);
        at = text.find('\n', at) + 1;
        while (text.compare(at, 2, "  ") == 0) {
            const std::size_t end = text.find('\n', at);
            found.emplace_back(text.substr(at + 2, 1), text.substr(at + 5, end - at - 5));
            at = end + 1;
        }
        return found;
    };
    const auto table = rows(help, "Exit codes:"), germanTable = rows(germanHelp, "Rückgabewerte:");
    ASSERT_EQ(table.size(), 5U) << help;
    ASSERT_EQ(germanTable.size(), 5U) << germanHelp;
    for (const auto& [code, meaning] : table) {
        EXPECT_THAT(readme, HasSubstr("| " + code + " | " + meaning + " |"));
        EXPECT_THAT(book, HasSubstr("| " + code + " | " + meaning + " |"));
    }
    for (const auto& [code, meaning] : germanTable)
        EXPECT_THAT(german, HasSubstr("| " + code + " | " + meaning + " |"));
}

TEST_F(Faults, NamesCommandNoTerminalAndNoBrowser)
{
    const std::string evil = "A\033]0;x\a\xE2\x80\xAE\xC2\x9B";
    const std::string sheet = m_folder.write(
        "evil\033[2J.csv", "configuration,direction,start,l_per_100km,notes,setting\n" + evil +
                               ",out,2026-05-09T05:40:00,8.4,n\033[1m,s\033\n" + evil +
                               ",return,2026-05-09T05:50:00,8.3,,\n" +
                               "B,out,2026-05-09T06:00:00,8.2,,\n" +
                               "B,return,2026-05-09T06:10:00,8.2,,\n");
    const auto isTame = [](const std::string& text) {
        return text.find_first_of("\033\a\b\r") == std::string::npos &&
               text.find("\xE2\x80\xAE") == std::string::npos &&
               text.find("\xC2\x9B") == std::string::npos;
    };
    const std::string study = m_folder / "evil\033.bothways";
    for (const std::vector<std::string>& call :
         {std::vector<std::string>{"new", study, "name=" + evil},
          {"import", study, sheet},
          {"set", study},
          {"rename", study, "configuration", evil, evil + "x"},
          {"undo", study},
          {"discard", study, "1", "--reason", "other", "--evidence", evil},
          {"runs", study},
          {"screen", study},
          {"analyse", study},
          {"analyse", study, sheet},
          {"report", study},
          {"plan", study},
          {"runs", sheet},
          {"analyse", m_folder / "no\033.csv"},
          {"export", sheet, m_folder / "out\033.csv"},
          {evil},
          {"runs", evil, evil}}) {
        const Ran ran = bothwaysProgram(call);
        EXPECT_TRUE(isTame(ran.out)) << call.front() << ran.out;
        EXPECT_TRUE(isTame(ran.err)) << call.front() << ran.err;
    }
    EXPECT_THAT(bothwaysProgram({"runs", sheet}).out, HasSubstr("A␛]0;x␇<U+202E><U+009B>"));
    EXPECT_THAT(bothwaysProgram({"export", sheet}).out, HasSubstr(evil)) << "CSV keeps it";
    EXPECT_EQ(jsonOf({"export", sheet, "--json"})["runs"][0]["configuration"], evil);
}

TEST_F(Faults, BytesThatAreNoTextMakeNoReportAndNoJsonInvalid)
{
    const std::string odd = m_folder / "odd\xFF.csv";
    fs::copy_file(m_folder / "b.csv", odd);
    const Ran report = bothwaysProgram({"report", odd});
    EXPECT_EQ(report.code, 0);
    EXPECT_THAT(report.out, HasSubstr("odd\uFFFD.csv"));
    EXPECT_THAT(report.out, Not(HasSubstr("\xFF")));
    for (const std::vector<std::string>& call :
         {std::vector<std::string>{"analyse", odd, exampleFile("claim.csv"), "--json"},
          {"plan", odd, "--json"},
          {"analyse", odd, "--json"}})
        EXPECT_NO_THROW(static_cast<void>(jsonOf(call)));
    const std::string study = m_folder / "kept.bothways";
    for (const std::vector<std::string>& call :
         {std::vector<std::string>{"set", study, "name=x\xFF"},
          {"set", study, "notes=\xC0\x80"},
          {"set", study, "accessory_timer.\xFF=1,1"},
          {"new", m_folder / "n.bothways", "name=\xFF"},
          {"rename", study, "configuration", "A", "\xFF"},
          {"discard", study, "1", "--reason", "other", "--evidence", "\xFF"},
          {"add", study, "start=12:00", "l_per_100km=8", "notes=\xFF"},
          {"analyse", study, "--set", "name=\xFF"}}) {
        const Ran ran = bothwaysProgram(call);
        EXPECT_THAT(ran.code, ::testing::AnyOf(2, 3))
            << call.front() << " " << call.back() << ran.out;
        EXPECT_THAT(ran.err, HasSubstr("UTF-8")) << call.front() << ran.err;
        EXPECT_THAT(ran.err, Not(HasSubstr("\xFF"))) << call.front();
    }
    EXPECT_FALSE(fs::exists(m_folder / "n.bothways"));
}

} // namespace
} // namespace bothways::tests
