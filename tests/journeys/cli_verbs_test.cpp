// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

// Correcting and asking at the command line: edit, overrule, history, ranges of runs, slips of the
// pen, and what is refused because it would be answered wrongly.

namespace bothways::tests {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

class CliVerbs : public ::testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_EQ(call({"new"}).code, 0);
        ASSERT_EQ(call({"import", exampleFile("morning.csv")}).code, 0); // 20 runs, 2 discarded
    }
    /// The verb on the study, with what follows.
    [[nodiscard]] Ran call(std::vector<std::string> words) const
    {
        words.insert(words.begin() + 1, m_study);
        return bothwaysProgram(words);
    }
    [[nodiscard]] nlohmann::json runs() const
    {
        return jsonOf({"runs", m_study, "--json"})["runs"];
    }
    [[nodiscard]] nlohmann::json run(int number) const
    {
        for (const nlohmann::json& one : runs())
            if (one["run"] == number)
                return one;
        return {};
    }

    TempFolder m_folder;
    std::string m_study = m_folder / "day.bothways";
};

TEST_F(CliVerbs, EditChangesSeveralRunsAndOneUndoTakesItBack)
{
    const nlohmann::json before = runs();
    const Ran edited = call({"edit", "7-9,12", "notes=wet", "wind_ms=2,5"});
    ASSERT_EQ(edited.code, 0) << edited.err;
    EXPECT_THAT(edited.out, HasSubstr("changed runs 7–9, 12: notes=wet, wind_ms=2.5"));
    for (const int number : {7, 8, 9, 12}) {
        EXPECT_EQ(run(number)["notes"], "wet");
        EXPECT_EQ(run(number)["wind_ms"], 2.5);
    }
    EXPECT_FALSE(run(10).contains("wind_ms"));
    ASSERT_EQ(call({"undo"}).code, 0);
    EXPECT_EQ(runs(), before);
}

TEST_F(CliVerbs, EditAsksAboutALostDecimalSignEvenTheSecondTime)
{
    const std::string lost = "l_per_100km=1190"; // for 11.90
    EXPECT_THAT(call({"edit", "7", lost}).err, HasSubstr("Did you mean 11.90 L/100 km?"));
    EXPECT_THAT(call({"edit", "7", lost, "notes=again"}).err,
                HasSubstr("was a decimal sign lost?"));
    EXPECT_EQ(call({"edit", "7", "l_per_100km=11.9"}).err, "");
}

TEST_F(CliVerbs, EditTakesOtherUnitsAndTimesOfDay)
{
    const std::string start = run(3)["start"];
    ASSERT_EQ(call({"edit", "3", "distance_mi=3", "l_per_100km=11,5"}).code, 0);
    EXPECT_NEAR(run(3)["distance_km"].get<double>(), 3 * 1.609344, 1e-12);
    EXPECT_EQ(run(3)["l_per_100km"], 11.5);
    ASSERT_EQ(call({"edit", "3", "mpg_us=20.5"}).code, 0);
    EXPECT_EQ(run(3)["mpg_us"], 20.5);
    EXPECT_FALSE(run(3).contains("l_per_100km"));
    const std::string later = start.substr(0, start.size() - 2) + "59";
    ASSERT_EQ(call({"edit", "3", "start=" + later.substr(11)}).code, 0);
    EXPECT_EQ(run(3)["start"], later);
}

TEST_F(CliVerbs, EditRefusesWhatASheetWouldAndChangesNothing)
{
    const nlohmann::json before = runs();
    const std::vector<std::pair<std::vector<std::string>, std::string>> wrong = {
        {{"edit", "2-4", "distance_km=-3"}, "runs 2–4: column 'distance_km': '-3' is impossible"},
        {{"edit", "2", "kwh_per_100km=17"}, "fuel and kWh cannot be compared"},
        {{"edit", "2", "configuration=C"}, "is a third configuration"},
        {{"edit", "2", "pair=x"}, "bothways pair"},
        {{"edit", "2-3", "run=44"}, "one number cannot be given to several runs"},
        {{"edit", "2", "start=6:99"}, "is no start"},
        {{"edit", "2"}, "nothing to change was named"},
        {{"edit", "notes=x"}, "no run was named"},
        {{"edit", "9-2", "notes=x"}, "expected 2-9"},
        {{"edit", "2-", "notes=x"}, "'2-' is no run"},
        {{"edit", "7-99", "notes=x"}, "there is no run 99"}};
    for (const auto& [words, said] : wrong) {
        const Ran ran = call(words);
        EXPECT_NE(ran.code, 0) << said;
        EXPECT_THAT(ran.err, HasSubstr(said));
    }
    EXPECT_EQ(runs(), before);
}

TEST_F(CliVerbs, EditKeepsTiedPairs)
{
    ASSERT_EQ(call({"pair", "1", "2"}).code, 0);
    ASSERT_EQ(call({"edit", "1", "notes=x"}).code, 0);
    EXPECT_EQ(run(1)["pair"], run(2)["pair"]);
    EXPECT_EQ(call({"unpair", "2"}).code, 0);
}

TEST_F(CliVerbs, PairAndUnpairTakeRunsAsOthersDo)
{
    EXPECT_EQ(call({"pair", "1-2"}).out, "tied runs 1 and 2\n");
    const Ran three = call({"pair", "1-3"});
    EXPECT_EQ(three.code, 2);
    EXPECT_THAT(three.err, HasSubstr("3 runs are named; expected two, like 3 6"));
    EXPECT_THAT(call({"pair", "5"}).err, HasSubstr("cannot be tied to itself"));
    ASSERT_EQ(call({"pair", "3,4"}).code, 0);
    EXPECT_EQ(call({"unpair", "1-3"}).out, "untied runs 1–3\n");
    for (int number = 1; number <= 4; ++number)
        EXPECT_TRUE(!run(number).contains("pair") || run(number)["pair"].is_null() ||
                    run(number)["pair"] == "")
            << number;
    ASSERT_EQ(call({"undo"}).code, 0);
    EXPECT_EQ(run(3)["pair"], run(4)["pair"]) << "one step takes all of them back";
    EXPECT_EQ(call({"unpair", "1,9"}).code, 2);
    EXPECT_EQ(run(1)["pair"], run(2)["pair"]);
}

TEST_F(CliVerbs, TakeRangesOfRuns)
{
    EXPECT_THAT(call({"discard", "1-3,12", "15", "--reason", "warming_up"}).out,
                HasSubstr("discarded runs 1–3, 12, 15: warming up"));
    const Ran counted = call({"count", "1–4"});
    EXPECT_THAT(counted.out, HasSubstr("counting runs 1–3 again"));
    EXPECT_THAT(counted.out, HasSubstr("run 4 counts already"));
    EXPECT_EQ(run(12)["status"], "discarded");
    EXPECT_EQ(run(2)["status"], "counted");
}

TEST_F(CliVerbs, OverruleAnswersAFindingAndTakesTheAnswerBack)
{
    ASSERT_EQ(call({"edit", "2", "marks=31 overspeed seen"}).code, 0);
    ASSERT_THAT(call({"analyse"}).out, HasSubstr("Run 2 counts although"));
    EXPECT_EQ(call({"overrule", "overspeed", "2"}).code, 2);
    EXPECT_THAT(call({"overrule", "overspede", "2", "--reason", "x"}).err,
                HasSubstr("did you mean 'overspeed'?"));
    EXPECT_THAT(call({"overrule", "overspeed", "3", "--reason", "x"}).err,
                HasSubstr("run 3 has no finding 'overspeed'"));
    ASSERT_EQ(call({"overrule", "overspeed", "2", "--reason", "the counter was wrong"}).code, 0);
    EXPECT_THAT(call({"analyse"}).out, Not(HasSubstr("counts although")));
    ASSERT_EQ(call({"overrule", "overspeed", "2", "--take-back"}).code, 0);
    EXPECT_THAT(call({"analyse"}).out, HasSubstr("Run 2 counts although"));
    EXPECT_EQ(call({"overrule", "overspeed", "2", "--take-back"}).code, 2);
    ASSERT_EQ(call({"undo"}).code, 0);
    EXPECT_THAT(call({"analyse"}).out, Not(HasSubstr("counts although")));
    const std::string history = call({"history"}).out;
    EXPECT_THAT(history, HasSubstr("Finding overruled: run 2: over-speed, the counter was wrong"));
    EXPECT_THAT(history, HasSubstr("Finding stands again: run 2: over-speed"));
}

TEST_F(CliVerbs, HistoryIsToldInWordsAndAsJson)
{
    ASSERT_EQ(call({"edit", "7", "wind_ms=2"}).code, 0);
    const std::string history = call({"history"}).out;
    EXPECT_THAT(history, HasSubstr("Run changed: run 7: wind (m/s) '' -> '2'"));
    for (const char* machine : {"wind_ms", "edit_run", "l_per_100km"})
        EXPECT_THAT(history, Not(HasSubstr(machine)));
    const auto json = jsonOf({"history", m_study, "--json"});
    EXPECT_EQ(json["schema"], "bothways.history/1");
    EXPECT_EQ(json["history"].back()["kind"], "edit_run");
    EXPECT_EQ(json["history"].back()["undone"], false);
    EXPECT_EQ(bothwaysProgram({"history", exampleFile("morning.csv")}).code, 4);
}

TEST_F(CliVerbs, QuietSaysResultsAlone)
{
    const Ran quiet = call({"edit", "7", "notes=x", "--quiet"});
    EXPECT_EQ(quiet.code, 0);
    EXPECT_EQ(quiet.out, "");
    EXPECT_EQ(call({"runs", "--quiet"}).out, call({"runs"}).out);
    EXPECT_NE(call({"edit", "7", "nonsense", "--quiet"}).err, "");
}

TEST_F(CliVerbs, APlanThatComesLateIsSaidAndASmallerOneEndsNothing)
{
    const auto qualifiers = [&] {
        return jsonOf({"analyse", m_study, "--json"})["verdict"]["qualifiers"].dump();
    };
    const Ran tied = call({"set", "plan.sequence=ABA", "plan.pairs=8"});
    EXPECT_EQ(tied.code, 0);
    EXPECT_THAT(tied.err, HasSubstr("the study has 20 runs already: the plan comes late"));
    EXPECT_THAT(qualifiers(), HasSubstr("plan_late"));
    EXPECT_THAT(qualifiers(), HasSubstr("interim"));
    EXPECT_THAT(call({"set", "plan.pairs=3"}).err, HasSubstr("was looked at before"));
    EXPECT_THAT(qualifiers(), HasSubstr("interim"));
    ASSERT_EQ(call({"set", "plan.pairs=", "plan.sequence="}).code, 0);
    EXPECT_THAT(qualifiers(), HasSubstr("interim"));
    EXPECT_THAT(call({"analyse"}).out, HasSubstr("Interim:"));
}

TEST(CliPlanTied, BeforeTheFirstRunIsNotLate)
{
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    const Ran tied = bothwaysProgram({"set", study, "plan.sequence=ABA", "plan.pairs=3"});
    EXPECT_EQ(tied.err, "");
    ASSERT_EQ(bothwaysProgram({"import", study, exampleFile("morning.csv")}).code, 0);
    const auto qualifiers = jsonOf({"analyse", study, "--json"})["verdict"]["qualifiers"].dump();
    EXPECT_THAT(qualifiers, Not(HasSubstr("plan_late")));
    EXPECT_THAT(qualifiers, Not(HasSubstr("interim")));
}

TEST_F(CliVerbs, TheSameRunsAreNotPooledWithThemselvesUnsaid)
{
    const std::string sheet = exampleFile("morning.csv");
    const std::string copy = m_folder.write("copy.csv", readFile(sheet));
    const std::string edited = m_folder.write("edited.csv", readFile(sheet) + "\n# a remark\n");
    for (const std::vector<std::string>& call : std::vector<std::vector<std::string>>{
             {"analyse", sheet, sheet},
             {"analyse", m_study, m_study},
             {"analyse", sheet, "--noise-from", sheet},
             {"plan", sheet, sheet},
             {"report", sheet, sheet, "--to", m_folder / "page.html"}}) {
        const Ran ran = bothwaysProgram(call);
        EXPECT_EQ(ran.code, 2) << call.front();
        EXPECT_THAT(ran.err, HasSubstr("given twice")) << call.front();
    }
    EXPECT_THAT(call({"history"}).out, Not(HasSubstr("looked at"))); // refused before a look
    for (const std::vector<std::string>& call :
         std::vector<std::vector<std::string>>{{"analyse", sheet, exampleFile("claim.csv"), copy},
                                               {"analyse", m_study, sheet},
                                               {"analyse", edited, sheet},
                                               {"analyse", sheet, "--noise-from", copy},
                                               {"plan", sheet, copy}})
        EXPECT_THAT(bothwaysProgram(call).err, ::testing::ContainsRegex("counts? twice"))
            << call.front();
    EXPECT_EQ(bothwaysProgram({"analyse", sheet, exampleFile("claim.csv")}).err, "");
}

TEST(CliSlips, AreAnsweredWithTheNearestWord)
{
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    const std::string sheet = exampleFile("morning.csv");
    const std::vector<std::pair<std::vector<std::string>, std::string>> slips = {
        {{"analyze", sheet}, "did you mean 'analyse'?"},
        {{"help", "reprot"}, "did you mean 'report'?"},
        {{"analyse", sheet, "--marginn", "1"}, "did you mean '--margin'?"},
        {{"set", study, "strech.km=4"}, "did you mean 'stretch.km'?"},
        {{"discard", study, "1", "--reason", "overspede"}, "did you mean 'overspeed'?"},
        {{"import", study, "--trace", sheet, "--cut", "tims"}, "did you mean 'times'?"}};
    for (const auto& [words, said] : slips) {
        const Ran ran = bothwaysProgram(words);
        EXPECT_EQ(ran.code, 2) << said;
        EXPECT_THAT(ran.err, HasSubstr(said));
    }
    const Ran added =
        bothwaysProgram({"add", study, "configuration=A", "direction=out", "start=2026-05-09T06:00",
                         "l_per_100km=7,31", "disstance_km=5"});
    EXPECT_EQ(added.code, 0);
    EXPECT_THAT(added.err, HasSubstr("did you mean 'distance_km'?"));
    EXPECT_THAT(bothwaysProgram({"frobnicate"}).err, Not(HasSubstr("did you mean")));
}

TEST(CliHelp, OfAVerbIsTheSameInBothForms)
{
    for (const char* verb : {"analyse", "edit", "history", "overrule", "help"})
        EXPECT_EQ(bothwaysProgram({"help", verb}).out, bothwaysProgram({verb, "--help"}).out);
    EXPECT_EQ(bothwaysProgram({"help"}).out, bothwaysProgram({"--help"}).out);
}

TEST(CliNumbers, AreTakenWithADecimalCommaOrPointAndInMiles)
{
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study, "margin=1,5", "stretch.km=4 mi",
                               "road_speed.target_kmh=55 mph", "max_gap=20,5"})
                  .code,
              0);
    const std::string listed = bothwaysProgram({"set", study}).out;
    for (const char* line : {"margin=1.5\n", "stretch.km=6.437376\n",
                             "road_speed.target_kmh=88.51392\n", "max_gap=20.5\n"})
        EXPECT_THAT(listed, HasSubstr(line));
    EXPECT_EQ(bothwaysProgram({"plan", "--noise", "0,5", "--stretch-km", "4 mi"}).out,
              bothwaysProgram({"plan", "--noise", "0.5", "--stretch-km", "6.437376"}).out);
    const std::string sheet = exampleFile("morning.csv");
    EXPECT_EQ(bothwaysProgram({"analyse", sheet, "--margin", "1,5"}).out,
              bothwaysProgram({"analyse", sheet, "--margin", "1.5"}).out);
    EXPECT_EQ(bothwaysProgram({"ledger", "--speed-kmh", "55 mph"}).out,
              bothwaysProgram({"ledger", "--speed-kmh", "88.51392"}).out);
    for (const char* wrong : {"margin=1,5,2", "margin=1,", "margin=,5", "stretch.km=4 mph"})
        EXPECT_EQ(bothwaysProgram({"set", study, wrong}).code, 2) << wrong;
}

TEST(CliEdit, TakesOtherNamesOfColumnsAndAsksForAUnit)
{
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    ASSERT_EQ(bothwaysProgram({"add", study, "Konfiguration=A", "Richtung=out",
                               "start=2026-05-09T06:00", "l_per_100km=8.1", "Fahrer=Kim"})
                  .code,
              0);
    EXPECT_THAT(bothwaysProgram({"edit", study, "1", "Bemerkungen=wet"}).out,
                HasSubstr("changed run 1: notes=wet"));
    EXPECT_THAT(bothwaysProgram({"edit", study, "1", "L/100km=8,25"}).out,
                HasSubstr("changed run 1: l_per_100km=8.25"));
    EXPECT_EQ(bothwaysProgram({"edit", study, "1", "Fahrer=Jo"}).code, 0); // a column of their own
    for (const char* without : {"consumption=8", "Verbrauch=8", "Dauer (min)=3"}) {
        const Ran asked = bothwaysProgram({"edit", study, "1", without});
        EXPECT_EQ(asked.code, 3) << without;
        EXPECT_THAT(asked.err, HasSubstr("unit")) << without;
    }
    const std::string now = bothwaysProgram({"export", study}).out;
    EXPECT_THAT(now, HasSubstr("8.25"));
    EXPECT_THAT(now, HasSubstr("Fahrer"));
    EXPECT_THAT(now, HasSubstr("Jo"));
    EXPECT_THAT(now, ::testing::Not(HasSubstr("Bemerkungen")));
}

TEST(CliElectric, LitresAndKilowattHoursNeverMeet)
{
    const TempFolder folder;
    const std::string study = folder / "ev.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study, "fuel=electric"}).code, 0);
    const std::vector<std::string> run = {"add", study, "configuration=A", "direction=out",
                                          "start=2026-05-09T06:00"};
    const auto added = [&](const std::string& consumption) {
        std::vector<std::string> words = run;
        words.push_back(consumption);
        return bothwaysProgram(words);
    };
    EXPECT_EQ(added("l_per_100km=7.0").code, 3);
    EXPECT_EQ(bothwaysProgram({"ledger", study, "--fuel", "electric"}).code, 0);
    EXPECT_THAT(bothwaysProgram({"ledger", study}).out, HasSubstr("kWh/100 km"));
    ASSERT_EQ(added("kwh_per_100km=17.1").code, 0);
    EXPECT_EQ(bothwaysProgram({"set", study, "fuel=diesel"}).code, 2);
    EXPECT_EQ(bothwaysProgram({"ledger", study, "--fuel", "petrol"}).code, 2);
    const auto ledger = jsonOf({"ledger", study, "--json"});
    EXPECT_EQ(ledger["fuel"], "electric");
    EXPECT_EQ(ledger["unit"], "kwh_per_100km");
    EXPECT_EQ(
        bothwaysProgram({"ledger", exampleFile("morning.csv"), "--set", "fuel=electric"}).code, 2);
}

TEST(CliLedger, TakesWhatTheStudyKnowsAndSaysWhence)
{
    const TempFolder folder;
    const std::string sheet = folder.write(
        "known.csv", "configuration,direction,start,duration_s,distance_km,l_per_100km,output_w\n"
                     "A,out,2026-05-09T06:00,256,6.4,7.1,\nA,back,2026-05-09T06:06,256,6.4,7.2,\n"
                     "B,out,2026-05-09T06:12,256,6.4,7.0,430\n"
                     "B,back,2026-05-09T06:18,256,6.4,7.1,650\n");
    const auto json = jsonOf({"ledger", sheet, "--json"});
    EXPECT_EQ(json["output_w"], 540.0);
    EXPECT_NEAR(json["speed_kmh"].get<double>(), 90.0, 1e-9);
    EXPECT_EQ(json["from"]["output_w"], "runs");
    EXPECT_EQ(json["from"]["consumption"], "default"); // no verdict
    const std::string text = bothwaysProgram({"ledger", sheet}).out;
    EXPECT_THAT(text, HasSubstr("output 540 W (the median of 2 runs)"));
    EXPECT_THAT(text, Not(HasSubstr("an output of 540 W (--output-w)")));
    EXPECT_EQ(jsonOf({"ledger", sheet, "--output-w", "600", "--json"})["from"]["output_w"],
              "option");
    EXPECT_THAT(bothwaysProgram({"ledger"}).out, HasSubstr("as nothing says otherwise: an output"));
    EXPECT_EQ(jsonOf({"plan", sheet, "--noise", "1", "--json"})["stretch_km"], 6.4);
    EXPECT_EQ(
        jsonOf({"plan", sheet, "--noise", "1", "--set", "stretch.km=7", "--json"})["stretch_from"],
        "limit");
}

} // namespace
} // namespace bothways::tests
