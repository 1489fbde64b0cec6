// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>

#include <set>
#include <sstream>

// The command line in German: all that people read, and nothing that programs read.

namespace bothways::tests {
namespace {

using ::testing::AllOf;
using ::testing::ContainsRegex;
using ::testing::HasSubstr;
using ::testing::Not;
using Words = std::vector<std::string>;

const Words kVerbs = {"new",     "set",    "import",  "export", "add",    "pair",
                      "unpair",  "rename", "undo",    "redo",   "runs",   "screen",
                      "discard", "count",  "analyse", "plan",   "ledger", "report"};

Ran inGerman(Words arguments)
{
    arguments.insert(arguments.end(), {"--language", "de"});
    return bothwaysProgram(arguments);
}

/// Common words that no German text has.
MATCHER(IsWithoutEnglish, "has no English words")
{
    return ::testing::Value(
        arg, Not(ContainsRegex("(^|[^A-Za-z_'-])(the|and|of|is|are|with|from|to|no|not|only|what|"
                               "run|runs|pair|pairs|each|than|this|that)([^A-Za-z_'-]|$)")));
}

std::set<std::string> linesOf(const std::string& text)
{
    std::set<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        lines.insert(line);
    return lines;
}

/// A study with a plan, a discard and an overridden limit, and what was said while it was made.
class GermanStudy : public ::testing::Test {
protected:
    void SetUp() override
    {
        const auto& [day, made] = std::pair(m_study, done({"new", m_study, "overspeed.rpm=3200"}));
        EXPECT_THAT(made, HasSubstr(day + " angelegt"));
        EXPECT_EQ(done({"import", m_study, exampleFile("morning.csv")}).substr(0, 38),
                  "20 Fahrten aus morning.csv importiert\n");
    }
    /// The call must succeed; gives its standard output.
    static std::string done(const Words& arguments)
    {
        const Ran ran = inGerman(arguments);
        EXPECT_EQ(ran.code, 0) << ran.err;
        return ran.out;
    }
    TempFolder m_folder;
    std::string m_study = m_folder / "day.bothways";
};

TEST(Language, IsThatOfTheSurroundings)
{
    const auto usage = [](const Environment& environment) {
        const std::string help = bothwaysProgram({"undo", "--help"}, environment).out;
        return help.substr(help.find('\n') + 1, 7);
    };
    EXPECT_EQ(usage({{"LANG", "de_DE.UTF-8"}}), "Aufruf:");
    EXPECT_EQ(usage({{"LC_MESSAGES", "de_AT"}, {"LANG", "en_GB.UTF-8"}}), "Aufruf:");
    EXPECT_EQ(usage({{"LC_ALL", "de"}, {"LC_MESSAGES", "en"}, {"LANG", "en"}}), "Aufruf:");
    EXPECT_EQ(usage({{"LC_ALL", "C"}, {"LANG", "de_DE.UTF-8"}}), "Usage: ");
    EXPECT_EQ(usage({{"LANG", "fr_FR.UTF-8"}}), "Usage: ");
    EXPECT_EQ(usage({{"LANG", ""}}), "Usage: ");
}

TEST(Language, IsThatOfTheOptionBeforeOrAfterTheVerb)
{
    const Environment german = {{"LANG", "de_DE.UTF-8"}};
    const std::string wanted = inGerman({"plan", "--help"}).out;
    EXPECT_THAT(wanted, HasSubstr("Aufruf: bothways plan [OPTIONEN] [DATEI...]\n"));
    EXPECT_EQ(bothwaysProgram({"--language", "de", "plan", "--help"}).out, wanted);
    EXPECT_EQ(bothwaysProgram({"--language=de", "plan", "--help"}).out, wanted);
    EXPECT_EQ(bothwaysProgram({"plan", "--language=de", "--help"}).out, wanted);
    EXPECT_EQ(bothwaysProgram({"plan", "--help"}, german).out, wanted);
    EXPECT_EQ(bothwaysProgram({"--language", "en", "plan", "--help", "--language", "de"}).out,
              wanted)
        << "the last one";
    EXPECT_EQ(bothwaysProgram({"plan", "--help", "--language", "en"}, german).out,
              bothwaysProgram({"plan", "--help"}).out);
}

TEST(Language, ThatThereIsNotIsWrongUse)
{
    const Ran unknown = bothwaysProgram({"undo", "x", "--language", "fr"});
    EXPECT_EQ(unknown.code, 2);
    EXPECT_EQ(unknown.out, "");
    EXPECT_EQ(unknown.err, "bothways: there is no language 'fr'; expected one of en, de\n"
                           "See: bothways --help\n");
    EXPECT_EQ(bothwaysProgram({"undo", "x", "--language=fr"}, {{"LANG", "de"}}).err,
              "bothways: die Sprache „fr“ gibt es nicht; erwartet wird eine von en, de\n"
              "Siehe: bothways --help\n");
    const Ran none = bothwaysProgram({"undo", "x", "--language"});
    EXPECT_EQ(none.code, 2);
    EXPECT_THAT(none.err, HasSubstr("--language needs a value; expected one of en, de"));
}

TEST(Language, IsNoOptionAfterADoubleDash)
{
    const Ran ran = bothwaysProgram({"runs", "--", "--language=fr"});
    EXPECT_EQ(ran.code, 3);
    EXPECT_THAT(ran.err, HasSubstr("--language=fr: "));
}

TEST(GermanHelp, HasNoLineOfTheEnglishButCommands)
{
    std::vector<Words> calls = {{"--help"}};
    for (const std::string& verb : kVerbs)
        calls.push_back({verb, "--help"});
    for (const Words& call : calls) {
        const Ran english = bothwaysProgram(call), german = inGerman(call);
        EXPECT_EQ(german.code, 0);
        EXPECT_EQ(german.err, "");
        EXPECT_THAT(german.out, HasSubstr("Aufruf: bothways"));
        const auto known = linesOf(english.out);
        for (const std::string& line : linesOf(german.out))
            EXPECT_TRUE(!known.contains(line) || line.empty() || line.starts_with("  bothways "))
                << call.front() << ": " << line;
    }
}

TEST(GermanHelp, KeepsItsColumns)
{
    const std::string help = inGerman({"import", "--help"}).out;
    EXPECT_THAT(help, AllOf(HasSubstr("\n  STUDIE TEXT NÖTIG         Die Studie\n"),
                            HasSubstr("\n  --date JJJJ-MM-TT         Datum ")));
}

TEST(German, IsNothingThatProgramsRead)
{
    const std::string sheet = exampleFile("morning.csv"), demo = demoFile("levee_generator.csv");
    for (const Words& call :
         {Words{"analyse", sheet, "--json"}, Words{"analyse", sheet, "--csv"},
          Words{"analyse", demo, "--json", "--apply-screening", "--limit", "overspeed.rpm=3000"},
          Words{"analyse", sheet, demo, "--json"}, Words{"screen", demo, "--json"},
          Words{"analyse", demoFile("tyre_pressure.csv"), "--json"}, Words{"plan", "--json"},
          Words{"plan", "--hours", "3", "--json"}, Words{"plan", "--noise-from", sheet, "--json"},
          Words{"ledger", sheet, "--json"}, Words{"export", demo}, Words{"export", demo, "--json"},
          Words{"export", demo, "--pairs"}}) {
        const Ran english = bothwaysProgram(call), german = inGerman(call);
        EXPECT_EQ(english.code, 0) << english.err;
        EXPECT_EQ(german.code, 0) << german.err;
        EXPECT_EQ(german.out, english.out) << ::testing::PrintToString(call);
        EXPECT_EQ(german.err, english.err);
    }
}

TEST(German, IsAllThatPeopleRead)
{
    const std::string sheet = exampleFile("morning.csv"), demo = demoFile("levee_generator.csv"),
                      tyres = demoFile("tyre_pressure.csv");
    for (const Words& call :
         {Words{"analyse", sheet}, Words{"analyse", demo, "--limit", "overspeed.rpm=3200"},
          Words{"analyse", sheet, demo}, Words{"analyse", exampleFile("too_few.csv")},
          Words{"analyse", demo, "--apply-screening", "--limit", "overspeed.rpm=3200"},
          Words{"analyse", tyres, "--unit", "mpg_us"}, Words{"screen", sheet},
          Words{"screen", demo, "--limit", "overspeed.rpm=3200", "--limit", "stretch.km=5"},
          Words{"runs", sheet}, Words{"runs", tyres}, Words{"plan"},
          Words{"plan", "--noise-from", sheet}, Words{"plan", "--hours", "3"}, Words{"ledger"},
          Words{"ledger", sheet}, Words{"ledger", demo, "--only", "relief"}}) {
        const Ran ran = inGerman(call);
        EXPECT_EQ(ran.code, 0) << ran.err;
        EXPECT_EQ(ran.err, "");
        EXPECT_THAT(ran.out, IsWithoutEnglish()) << ::testing::PrintToString(call);
    }
}

TEST(German, NumbersHaveACommaAndAnswersAreTheSame)
{
    const std::string sheet = exampleFile("morning.csv");
    EXPECT_THAT(bothwaysProgram({"analyse", sheet}).out, ContainsRegex("[0-9]\\.[0-9] %"));
    const std::string said = inGerman({"analyse", sheet}).out;
    EXPECT_THAT(said, ContainsRegex("[0-9],[0-9] %"));
    EXPECT_THAT(said, Not(ContainsRegex("[0-9]\\.[0-9] %")));
}

TEST_F(GermanStudy, IsSpokenOfInEveryStep)
{
    EXPECT_EQ(done({"discard", m_study, "9", "--reason", "overspeed", "--evidence", "zu schnell"}),
              "Fahrt 9 verworfen: Überdrehzahl, zu schnell\n");
    EXPECT_EQ(done({"count", m_study, "9"}), "Fahrt 9 zählt wieder\n");
    EXPECT_EQ(done({"count", m_study, "9", "8"}), "Fahrten 9, 8 zählen schon\n");
    EXPECT_EQ(done({"pair", m_study, "1", "4"}), "Fahrten 1 und 4 verbunden\n");
    EXPECT_EQ(done({"unpair", m_study, "1"}), "Fahrt 1 gelöst\n");
    EXPECT_EQ(done({"rename", m_study, "configuration", "B", "Box"}),
              "Konfiguration B heißt jetzt Box\n");
    EXPECT_THAT(done({"undo", m_study}), HasSubstr("Rückgängig"));
    EXPECT_THAT(done({"redo", m_study}), IsWithoutEnglish());
    EXPECT_EQ(done({"set", m_study, "margin=2"}), "gesetzt: margin=2\n");
    EXPECT_EQ(done({"set", m_study}), "margin=2\noverspeed.rpm=3200\n");
    EXPECT_EQ(done({"add", m_study, "start=2026-05-09T12:00", "l_per_100km=8.4"}),
              "Fahrt 21 hinzugefügt: A, out, 2026-05-09T12:00:00\n");
    EXPECT_EQ(inGerman({"export", m_study, "--to", m_folder / "day.csv"}).err,
              "21 Fahrten nach " + (m_folder / "day.csv") + " geschrieben\n");
    const Ran applied = inGerman({"screen", m_study, "--apply"});
    EXPECT_EQ(applied.code, 0);
    EXPECT_THAT(applied.out + applied.err, IsWithoutEnglish());
}

TEST_F(GermanStudy, HasAGermanReportAndRunCard)
{
    done({"set", m_study, "plan.sequence=ABA", "plan.pairs=4"});
    const std::string page = m_folder / "day.html", card = m_folder / "card.html";
    EXPECT_EQ(done({"report", m_study, "--to", page}), page + " geschrieben\n");
    EXPECT_THAT(readFile(page), AllOf(HasSubstr("<html lang=\"de\""), HasSubstr("Urteil"),
                                      HasSubstr("Studie angelegt"), Not(HasSubstr("Study made"))));
    EXPECT_EQ(done({"report", m_study}).substr(0, 400), readFile(page).substr(0, 400));
    EXPECT_EQ(inGerman({"plan", m_study, "--card", card}).err,
              "Fahrtenkarte geschrieben: " + card + "\n");
    EXPECT_THAT(readFile(card), AllOf(HasSubstr("<html lang=\"de\""), HasSubstr("Fahrt")));
}

TEST_F(GermanStudy, IsCutFromARecordingInGerman)
{
    std::string csv = "time,road_speed_kmh,lat_deg,mark\n";
    for (int second = 0; second < 300; ++second)
        csv += "2026-06-01T05:" + std::to_string(10 + second / 60) + ":" +
               std::to_string(10 + second % 50) + "," + (second == 9 ? "" : "90") + ",47.5," +
               (second % 150 == 20    ? "start"
                : second % 150 == 110 ? "end"
                                      : "") +
               "\n";
    const std::string drive = m_folder.write("drive.csv", csv);
    const std::string cut =
        done({"import", m_study, "--trace", drive, "--cut", "marks", "--configuration", "A"});
    EXPECT_THAT(cut, AllOf(HasSubstr("drive.csv importiert: 300 Zeilen, "),
                           HasSubstr("  neue Fahrt: von "),
                           HasSubstr("drive.csv in 2 Fahrten geschnitten: 2 neu, ")));
    EXPECT_THAT(cut, IsWithoutEnglish());
    EXPECT_THAT(done({"import", m_study, "--trace", drive}),
                HasSubstr("  sie gehört noch zu keiner Fahrt; "));
}

TEST(GermanErrors, HavePlaceAndExitCodeOfTheEnglish)
{
    const TempFolder folder;
    const std::string sheet = folder.write("bad.csv", "run,configuration,direction,start,"
                                                      "l_per_100km\n"
                                                      "1,A,out,2026-05-09T05:40:00,-8.4\n"
                                                      "2,A,return,yesterday,8.4\n");
    const Ran ran = inGerman({"analyse", sheet});
    EXPECT_EQ(ran.code, 3);
    EXPECT_EQ(ran.out, "");
    EXPECT_THAT(ran.err, AllOf(HasSubstr("bad.csv:2: Spalte „l_per_100km“: "),
                               HasSubstr("bad.csv:3: Spalte „start“: "), IsWithoutEnglish()));
}

struct Complaint {
    Words arguments;
    const char* said;
};

TEST(GermanErrors, AreSaidInWordsOfOurs)
{
    const std::string sheet = exampleFile("morning.csv");
    const Complaint complaints[] = {
        {{}, "bothways: es wurde kein Befehl angegeben; erwartet wird einer von new, set, "},
        {{"analyze"}, "bothways: den Befehl „analyze“ gibt es nicht; erwartet wird einer von "},
        {{"analyse"}, "bothways: DATEI fehlt\nSiehe: bothways analyse --help\n"},
        {{"analyse", sheet, "--fast"}, "bothways: „--fast“ war nicht erwartet\n"},
        {{"plan", "--noise"}, "bothways: --noise: Es fehlt ZAHL (erwartet: 1)\n"},
        {{"plan", "--noise", "0"},
         "bothways: --noise: „0“ passt nicht; erwartet: Prozent über 0 und unter 100\n"},
        {{"plan", "--pairs", "x"}, "bothways: --pairs: „x“ ist keine ganze Zahl von 1 bis "},
        {{"plan", "--noise", "1", "--noise", "2"},
         "bothways: --noise: höchstens 1 erwartet, 2 angegeben\n"},
        {{"plan", "--noise", "1", "--noise-from", sheet},
         "bothways: --noise-from und --noise schließen einander aus\n"},
        {{"import", "x", "--run", "1"}, "bothways: --run braucht --trace\n"},
        {{"import", "x", "--trace", "y", "--cut", "luck"},
         "bothways: --cut: luck ist keines von {times,marks,position,speed}\n"},
        {{"discard", "x", "two", "--reason", "overspeed"},
         "„two“ ist keine Fahrt; erwartet wird eine Nummer oder mehrere wie 7-9,12\n"},
        {{"ledger", "--drive", "0.9,0.8,0.7"},
         "bothways: --drive: „0.9,0.8,0.7“ ist nicht UNTEN,MITTE,OBEN in steigender Folge\n"},
        {{"analyse", sheet, "--limit", "a"}, "bothways: --limit: „a“ ist nicht NAME=WERT\n"},
        {{"discard", "x", "9", "--reason", "luck"}, "„luck“ ist kein Grund; erwartet wird "},
        {{"undo", sheet}, "morning.csv: ist keine Studie, und nur eine Studie lässt sich ändern"},
        {{"export", sheet, "--to", "/nowhere/x.csv"},
         "/nowhere/x.csv: lässt sich nicht schreiben: Datei oder Ordner nicht gefunden\n"},
    };
    for (const Complaint& complaint : complaints) {
        const Ran english = bothwaysProgram(complaint.arguments);
        const Ran german = inGerman(complaint.arguments);
        EXPECT_EQ(german.code, english.code) << complaint.said;
        EXPECT_NE(german.code, 0);
        EXPECT_EQ(german.out, "");
        EXPECT_THAT(german.err,
                    AllOf(HasSubstr(complaint.said),
                          Not(ContainsRegex("expected|required|requires|excludes|missing|See:"))));
    }
}

} // namespace
} // namespace bothways::tests
