// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_html.h"

#include "app/wording/findings.h"
#include "core/answer/analyse.h"
#include "core/answer/spoiled_runs.h"
#include "core/screening/finding.h"
#include "core/screening/screening.h"
#include "core/study/limits.h"
#include "core/study/rule.h"
#include "tests/support/plain_sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fmt/format.h>

#include <cstdlib>
#include <fstream>
#include <set>
#include <sstream>
#include <string>
#include <vector>

using namespace bothways;
using testing::HasSubstr;
using testing::Not;

namespace {

core::Study exampleStudy(const std::string& name)
{
    return tests::PlainSheet::read(
        std::string(BOTHWAYS_SOURCE_DIR "/tests/published/data/examples/") + name);
}

std::string reportOf(const core::Study& study, std::vector<std::string> history = {})
{
    const core::Analysis analysis = core::analyse(study, {});
    const core::Screening screening = core::screen(study);
    return app::reportHtml({study, analysis, screening, std::move(history), "00ff", "day.csv",
                            app::wording::shownUnitOf(study), "Bothways of the tests"});
}

std::string goldenFile(const std::string& name)
{
    return BOTHWAYS_SOURCE_DIR "/tests/app/output/golden/" + name;
}

std::string contentOf(const std::string& path)
{
    std::ifstream stream(path, std::ios::binary);
    std::ostringstream content;
    content << stream.rdbuf();
    return content.str();
}

/// Names the first tag that is closed wrongly or never; empty when all is well formed.
std::string firstUnbalancedTag(const std::string& html)
{
    const std::set<std::string> empty = {"meta", "!DOCTYPE"};
    std::vector<std::string> open;
    for (std::size_t at = html.find('<'); at != std::string::npos; at = html.find('<', at + 1)) {
        const std::size_t end = html.find('>', at);
        if (end == std::string::npos)
            return "unterminated tag";
        const bool closing = html[at + 1] == '/';
        const std::size_t from = at + (closing ? 2 : 1);
        const std::string name = html.substr(from, html.find_first_of(" />", from) - from);
        if (closing) {
            if (open.empty() || open.back() != name)
                return "</" + name + ">";
            open.pop_back();
        } else if (html[end - 1] != '/' && !empty.count(name)) {
            open.push_back(name);
        }
    }
    return open.empty() ? "" : "<" + open.back() + ">";
}

} // namespace

TEST(Report, TheCheckerSeesAnUnbalancedTag)
{
    EXPECT_EQ(firstUnbalancedTag("<p><b>x</b></p>"), "");
    EXPECT_EQ(firstUnbalancedTag("<p><b>x</p>"), "</p>");
    EXPECT_EQ(firstUnbalancedTag("<p>"), "<p>");
}

TEST(Report, IsWellFormedForEveryExample)
{
    for (const char* name : {"morning.csv", "roof_box_open.csv", "too_few.csv"})
        EXPECT_EQ(firstUnbalancedTag(reportOf(exampleStudy(name))), "") << name;
}

TEST(Report, GivesTheSameBytesForTheSameInput)
{
    const core::Study study = exampleStudy("morning.csv");
    EXPECT_EQ(reportOf(study, {"one"}), reportOf(study, {"one"}));
    EXPECT_NE(reportOf(study, {"one"}), reportOf(study, {"two"}));
}

TEST(Report, ShowsEveryRunAndWhyOneIsDiscarded)
{
    const std::string html = reportOf(exampleStudy("morning.csv"));
    const core::Study study = exampleStudy("morning.csv");
    std::set<int> struck;
    for (const core::Run& run : study.runs)
        if (run.discard)
            struck.insert(run.number);
    ASSERT_FALSE(struck.empty());
    for (int run = 1; run <= 20; ++run)
        EXPECT_THAT(html, HasSubstr(fmt::format(">{}</{}>", run, struck.count(run) ? "s" : "td")));
    EXPECT_THAT(html, HasSubstr("over-speed: rotor 3410 rpm beside a road train"));
}

// A recording gives 8 and 7.999999999999998 L/100 km: no scale has marks between these, and looking
// for them went on until memory ended.
TEST(Report, DrawsConsumptionsThatDifferByRoundingAlone)
{
    for (const double consumption : {8.0, 1e-4, 1e6})
        for (const double share : {0.0, 2e-16, 1e-15, 1e-12, 1e-9, 1e-7}) {
            core::Study study = exampleStudy("morning.csv");
            double sign = 1.0;
            for (core::Run& run : study.runs)
                if (run.consumption)
                    run.consumption->value = consumption * (1.0 + (sign = -sign) * share);
            EXPECT_THAT(reportOf(study), HasSubstr("</html>")) << consumption << " " << share;
            for (core::Run& run : study.runs)
                run.configuration = "A";
            EXPECT_THAT(reportOf(study), HasSubstr("</html>")) << consumption << " " << share;
        }
}

TEST(Report, WarnsBesideTheVerdictWhileASpoiledRunCounts)
{
    const core::Study study = exampleStudy("morning.csv");
    const core::Analysis analysis = core::analyse(study, {});
    core::Screening screening;
    core::Finding finding;
    finding.run = analysis.pairs.front().out_run;
    finding.grade = core::Grade::spoils;
    screening.findings = {finding};
    app::ReportInput input{study, analysis, screening, {}, "00ff", "day.csv"};
    input.warning = app::wording::spoiledRunsSentence(app::Language::english(),
                                                      core::spoiledButCounted(analysis, screening));
    const std::string html = app::reportHtml(input);
    const std::size_t warning = html.find("although a finding says that it is spoiled");
    ASSERT_NE(warning, std::string::npos);
    EXPECT_LT(warning, html.find("The pairs"));
}

TEST(Report, NeedsNoScriptAndFetchesNothing)
{
    const std::string html = reportOf(exampleStudy("morning.csv"));
    for (const char* forbidden : {"<script", "href=", "src=", "url(", "@import"})
        EXPECT_THAT(html, Not(HasSubstr(forbidden)));
}

TEST(Report, KeepsAwkwardTextAsText)
{
    core::Study study = exampleStudy("morning.csv");
    study.properties.name = "<b>&\"'";
    study.runs[0].notes = "</td><script>";
    study.runs[0].configuration = "A";
    const std::string html = reportOf(study);
    EXPECT_EQ(firstUnbalancedTag(html), "");
    EXPECT_THAT(html, HasSubstr("<h1>&lt;b&gt;&amp;&quot;&#39;</h1>"));
    EXPECT_THAT(html, Not(HasSubstr("<script>")));
}

TEST(Report, NeverShowsWhatIsNoNumber)
{
    core::Study none;
    for (const core::Study& study :
         {exampleStudy("too_few.csv"), exampleStudy("roof_box_open.csv"), none}) {
        const std::string html = reportOf(study);
        for (const char* forbidden : {">nan", " nan", "\"nan", "-nan", ">inf", " inf "})
            EXPECT_THAT(html, Not(HasSubstr(forbidden)));
    }
}

/// To renew after a wanted change: BOTHWAYS_RENEW_GOLDEN=1 build/PRESET/bin/output_tests, then look
/// at what changed (git diff, and a browser) before committing it.
TEST(Report, IsByteForByteTheOneThatWasLookedAt)
{
    for (const char* name : {"morning", "roof_box_open", "too_few"}) {
        const std::string html =
            reportOf(exampleStudy(std::string(name) + ".csv"), {"2026-05-09T10:00:00Z new"});
        const std::string golden = goldenFile(std::string(name) + ".html");
        if (std::getenv("BOTHWAYS_RENEW_GOLDEN") != nullptr)
            std::ofstream(golden, std::ios::binary) << html;
        EXPECT_TRUE(html == contentOf(golden)) << golden << " differs; see above this test";
    }
}

// A phone is 390 pixels wide, 24.4 rem.
TEST(Report, HoldsNothingOnAPhoneThatIsWiderAndDoesNotScroll)
{
    const std::string html = reportOf(exampleStudy("morning.csv"));
    const std::string css = html.substr(html.find("<style>"), html.find("</style>"));
    const std::string pictures =
        css.substr(css.find("\nsvg {"), css.find("}", css.find("\nsvg {")) - css.find("\nsvg {"));
    EXPECT_THAT(pictures, testing::AllOf(HasSubstr("width: 100%"), HasSubstr("height: auto"),
                                         testing::Not(HasSubstr("min-width"))));
    EXPECT_THAT(html, testing::Not(testing::ContainsRegex("<svg[^>]* width=")));
    // What is as wide as it likes lies in a frame that scrolls.
    for (std::size_t at = html.find("<table"); at != std::string::npos;
         at = html.find("<table", at + 1)) {
        const std::string before = html.substr(0, at);
        EXPECT_GT(before.rfind("class=\"wide\"") + 1, before.rfind("</div>") + 1) << at;
    }
    EXPECT_THAT(css, HasSubstr(".wide { overflow-x: auto; }"));
    EXPECT_LT(css.find("svg text.label { font: 14px"), css.find("@media screen"))
        << "the larger letters of a phone come after the general ones";
}

TEST(Report, HasTheColoursAndShapesOfTheHandbookAndTheWindow)
{
    const std::string html = reportOf(exampleStudy("morning.csv"));
    EXPECT_THAT(html, HasSubstr("svg .a { fill: #0072b2; }"));
    EXPECT_THAT(html, HasSubstr("svg .b { fill: #d55e00; }"));
    EXPECT_THAT(html, testing::ContainsRegex("<circle [^>]*class=\"a\">"));
    EXPECT_THAT(html, testing::ContainsRegex("<rect [^>]*class=\"b\">"));
    EXPECT_THAT(html, testing::Not(testing::ContainsRegex("<circle [^>]*class=\"b\">")));
    for (const char* name : {"drift", "aba", "curved"}) {
        std::ifstream file(std::string(BOTHWAYS_SOURCE_DIR "/resources/help/pictures/") + name +
                           ".svg");
        const std::string picture{std::istreambuf_iterator<char>(file), {}};
        EXPECT_THAT(picture, testing::ContainsRegex("<circle [^>]*fill=\"#0072b2\"")) << name;
        EXPECT_THAT(picture, testing::ContainsRegex("<rect [^>]*fill=\"#d55e00\"")) << name;
        EXPECT_THAT(picture, testing::Not(testing::ContainsRegex("<circle [^>]*fill=\"#d55e00\"")))
            << name;
    }
}

TEST(Report, SaysWhatItWasMadeWithAndFrom)
{
    const core::Study study = exampleStudy("morning.csv");
    const core::Analysis analysis = core::analyse(study, {});
    const core::Screening screening = core::screen(study);
    const std::string html =
        app::reportHtml({study,
                         analysis,
                         screening,
                         {},
                         "00ff",
                         "day.csv",
                         app::wording::ShownUnit::lPer100km,
                         app::ReportInput::programAndLibraries("SQLite 3.40.1")});
    EXPECT_THAT(html, HasSubstr("day.csv, SHA-256 00ff"));
    for (const char* part : {"Bothways 0", "Boost 1", "Eigen 3", "fmt ", "SQLite 3.40.1"})
        EXPECT_THAT(html, HasSubstr(part));
}

TEST(Report, ListsEveryLimitWhetherSetOrNot)
{
    core::Study study = exampleStudy("morning.csv");
    study.properties.limits["overspeed.rpm"] = 3217.0;
    const std::string html = reportOf(study);
    for (const core::LimitInfo& limit : core::allLimits())
        EXPECT_THAT(html, HasSubstr(fmt::format("<td>{}</td>", limit.name)));
    EXPECT_THAT(html, HasSubstr("3217</td><td>rpm</td><td class=\"w\">set for this study"));
}

TEST(Report, SpeaksInTheUnitsTheRunsWereGivenIn)
{
    core::Study study = exampleStudy("morning.csv");
    for (core::Run& run : study.runs)
        if (run.consumption)
            run.consumption = core::Consumption{
                core::fromLPer100km(run.consumption->value, core::ConsumptionUnit::mpgUs),
                core::ConsumptionUnit::mpgUs, 2, false};
    const std::string html = reportOf(study);
    EXPECT_THAT(html, HasSubstr("<th scope=\"col\" class=\"n\">mpg (US)</th>"));
    EXPECT_THAT(html, HasSubstr("class=\"label\">mpg (US)</text>"));
    EXPECT_THAT(html, Not(HasSubstr("L/100")));
}

TEST(Report, DrawsTheModelExceptWhereItIsAboutRatios)
{
    core::Study study = exampleStudy("morning.csv");
    EXPECT_THAT(reportOf(study), HasSubstr("class=\"fit\"/>"));
    for (core::Run& run : study.runs)
        if (run.consumption)
            run.control = run.consumption->value;
    *study.runs[0].control *= 1.01; // else all ratios are alike
    EXPECT_THAT(reportOf(study), Not(HasSubstr("class=\"fit\"/>")));
}

TEST(Report, PutsSeveralDaysSideBySide)
{
    core::Study study = exampleStudy("morning.csv");
    const std::size_t n = study.runs.size();
    for (std::size_t i = 0; i < n; ++i) {
        core::Run again = study.runs[i];
        again.number += 100;
        again.start.us += 86'400'000'000LL;
        study.runs.push_back(again);
    }
    const std::string html = reportOf(study);
    EXPECT_THAT(html, HasSubstr("pairs in order of time, days side by side"));
    EXPECT_THAT(html, HasSubstr("2 days"));
}

TEST(ReportOfSeveral, SaysWhatEachComparesAndWhichCountsTwice)
{
    app::SeveralInput given;
    given.together.studies = {{"may", core::StudyEffect{"may", 0.01, 0.002, 6.0},
                               core::VerdictClass::more, 8.4, false, "bare roof", "roof box"},
                              {"june", std::nullopt, core::VerdictClass::none}};
    given.remarks = {"june.csv holds the same as may.csv, and counts twice."};
    const std::string html = app::reportOfSeveralHtml(given);
    for (const char* words : {">roof box<", ">bare roof<", "as may.csv, and counts twice."})
        EXPECT_THAT(html, HasSubstr(words));
}

TEST(ReportOfSeveral, DrawsNoEndWhereAnIntervalIsLongerThanThePicture)
{
    // Two studies that disagree: 1.5 % less and 6.9 % more, each within half a per cent. One degree
    // of freedom makes the mean's interval some 100 % wide.
    const core::StudyEffect one{"tyres", -0.0152, 0.0029, 9.0, 0.007};
    const core::StudyEffect other{"box", 0.0662, 0.0022, 9.0, 0.0055};
    app::SeveralInput given;
    given.together.studies = {{"tyres", one, core::VerdictClass::less},
                              {"box", other, core::VerdictClass::more}};
    const auto html = [&] { return app::reportOfSeveralHtml(given); };
    EXPECT_THAT(html(), Not(HasSubstr("arrowhead")));
    given.together.pooled = core::pool(std::vector{one, other});
    ASSERT_TRUE(given.together.pooled);
    EXPECT_THAT(html(), HasSubstr("An arrowhead points to what is beyond the picture."));
    EXPECT_THAT(html(), HasSubstr("Grey band: the margin."));
    // Its row is the second, at 54 units: an arrowhead begins 6 units beside its tip.
    EXPECT_THAT(html(), HasSubstr("<line x1=\"177.00\" y1=\"60.00\" x2=\"170.00\" y2=\"54.00\""));
    EXPECT_THAT(html(), HasSubstr("<line x1=\"613.00\" y1=\"48.00\" x2=\"620.00\" y2=\"54.00\""));
}

TEST(Report, PointsToADiscardThatIsFarBeyondThePicture)
{
    core::Study study = exampleStudy("morning.csv");
    const double usual =
        0.5 * (study.runs[4].consumption->value + study.runs[5].consumption->value);
    const auto discards = [&](double times) {
        for (core::Run& run : study.runs)
            if (run.discard && run.consumption)
                run.consumption->value = times * usual;
    };
    discards(1.0);
    EXPECT_THAT(reportOf(study), Not(HasSubstr("An arrowhead")));
    discards(10.0); // a decimal point was lost
    EXPECT_THAT(reportOf(study), HasSubstr("An arrowhead points to what is beyond the picture."));
}
