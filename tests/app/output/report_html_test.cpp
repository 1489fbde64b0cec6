// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_html.h"

#include "core/screening.h"
#include "tests/support/plain_sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fmt/format.h>

#include <set>
#include <string>
#include <vector>

using namespace bothways;
using testing::HasSubstr;
using testing::Not;

namespace {

core::Study exampleStudy(const std::string& name)
{
    return test::PlainSheet::read(
        std::string(BOTHWAYS_SOURCE_DIR "/tests/published/data/examples/") + name);
}

std::string reportOf(const core::Study& study, std::vector<std::string> history = {})
{
    const core::Analysis analysis = core::analyse(study, {});
    const core::Screening screening = core::screen(study);
    return app::reportHtml({study, analysis, screening, std::move(history), "00ff", "day.csv"});
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
    for (int run = 1; run <= 20; ++run)
        EXPECT_THAT(html, HasSubstr(fmt::format("<td>{}</td>", run)));
    EXPECT_THAT(html, HasSubstr("overspeed: rotor 3410 rpm beside a road train"));
    EXPECT_THAT(html, HasSubstr("<tr class=\"discarded\">"));
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
