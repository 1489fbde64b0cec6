// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <filesystem>

namespace bothways::tests {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

/// A recording with a place in each row, 10 s of it frozen so that a rule speaks of it.
std::string recordingWithPlaces()
{
    std::string csv = "time_s,road_speed_kmh,lat_deg,lon_deg\n";
    for (int i = 0; i <= 213 * 2; ++i) {
        const double t = 0.5 * i;
        const bool frozen = t >= 100.0 && t < 160.0;
        csv +=
            fmt::format("{:.1f},{:.2f},{:.6f},{:.6f}\n", t, 90.0 + (i % 3),
                        frozen ? 47.123456 : 47.1 + 1e-4 * i, frozen ? 8.654321 : 8.6 + 1e-4 * i);
    }
    return csv;
}

class CliReport : public ::testing::Test {
protected:
    void SetUp() override
    {
        m_study = m_folder / "day.bothways";
        ASSERT_EQ(bothwaysProgram({"new", m_study, "bearing_deg=75", "overspeed.rpm=3200"}).code,
                  0);
        ASSERT_EQ(bothwaysProgram({"import", m_study, exampleFile("morning.csv")}).code, 0);
    }
    TempFolder m_folder;
    std::string m_study;
};

TEST_F(CliReport, WarnsAndTellsTheHistoryInWords)
{
    ASSERT_EQ(bothwaysProgram({"add", m_study, "start=2026-05-09T12:00", "l_per_100km=8.4",
                               "rotor_rpm_max=3410"})
                  .code,
              0);
    const std::string page = bothwaysProgram({"report", m_study}).out;
    EXPECT_THAT(page, HasSubstr("although a finding says that it is spoiled"));
    EXPECT_THAT(page, HasSubstr(" Run added: run "));
    EXPECT_THAT(page, Not(HasSubstr("add_run")));
}

TEST_F(CliReport, HasNoPositionInIt)
{
    const std::string recording = m_folder.write("places.csv", recordingWithPlaces());
    const Ran imported = bothwaysProgram({"import", m_study, "--trace", recording, "--run", "1"});
    ASSERT_EQ(imported.code, 0) << imported.err;
    ASSERT_THAT(imported.out, HasSubstr("lat_deg"));
    const std::string html = bothwaysProgram({"report", m_study}).out;
    ASSERT_THAT(html, HasSubstr("places.csv")); // the recording is in the history, so it was read
    for (const char* place : {"47.1", "8.65", "8.6,", "47,1", "lat_deg 4", "geo:", "N 47", "E 8"})
        EXPECT_THAT(html, Not(HasSubstr(place))) << place;
}

TEST_F(CliReport, TellsTheHistoryWithEveryLook)
{
    ASSERT_EQ(bothwaysProgram(
                  {"discard", m_study, "3", "--reason", "other", "--evidence", "<rain> & \"hail\""})
                  .code,
              0);
    ASSERT_EQ(bothwaysProgram({"count", m_study, "3"}).code, 0);
    const std::string html = bothwaysProgram({"report", m_study}).out;
    EXPECT_THAT(html, HasSubstr("&lt;rain&gt; &amp; &quot;hail&quot;"));
    EXPECT_THAT(html, HasSubstr(" count"));
}

TEST_F(CliReport, IsTheSameEveryTime)
{
    const std::string first = bothwaysProgram({"report", m_study}).out;
    EXPECT_EQ(first, bothwaysProgram({"report", m_study}).out);
    const std::string file = m_folder / "day.html";
    ASSERT_EQ(bothwaysProgram({"report", m_study, file}).code, 0);
    EXPECT_EQ(first, readFile(file));
}

TEST_F(CliReport, LeavesTheOldOneWhereItCannotBeWritten)
{
    const Ran nowhere = bothwaysProgram({"report", m_study, "/no/such/folder/day.html"});
    EXPECT_EQ(nowhere.code, 4);
    EXPECT_THAT(nowhere.err, HasSubstr("/no/such/folder/day.html"));
    const Ran full = bothwaysProgram({"report", m_study, "/dev/full"});
    EXPECT_EQ(full.code, 4);
    EXPECT_THAT(full.err, HasSubstr("/dev/full"));
    for (const Ran& ran : {nowhere, full})
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;

    // A folder in the place of the neighbour that is written first: the old page must stay.
    const std::string old = m_folder.write("old.html", "the old page");
    std::filesystem::create_directory(old + ".part");
    EXPECT_EQ(bothwaysProgram({"report", m_study, old}).code, 4);
    EXPECT_EQ(readFile(old), "the old page");
    EXPECT_EQ(bothwaysProgram({"report", m_study, m_study}).code, 4); // never over a study
    EXPECT_EQ(bothwaysProgram({"analyse", m_study}).code, 0);
}

TEST(CliPlanNoise, IsPooledOverStudiesAndSaysFromWhich)
{
    const nlohmann::json json = jsonOf({"plan", "--noise-from", exampleFile("morning.csv"),
                                        exampleFile("roof_box_open.csv"), "--json"});
    ASSERT_EQ(json["noise_from"].size(), 2U);
    double squares = 0.0, df = 0.0;
    for (const auto& study : json["noise_from"]) {
        const nlohmann::json alone =
            jsonOf({"analyse", exampleFile(study["name"].get<std::string>() + ".csv"), "--json"});
        EXPECT_EQ(study["s"], alone["headline"]["s"]);
        EXPECT_EQ(study["df"], alone["headline"]["df"]);
        squares += study["df"].get<double>() * study["s"].get<double>() * study["s"].get<double>();
        df += study["df"].get<double>();
    }
    EXPECT_DOUBLE_EQ(json["s"].get<double>(), std::sqrt(squares / df));
    EXPECT_EQ(json["s_df"], df);
    EXPECT_GT(json["s_upper80"].get<double>(), json["s"].get<double>());
    const nlohmann::json typed = jsonOf({"plan", "--noise", "1", "--json"});
    EXPECT_EQ(typed["noise_from"].size(), 0U);
    EXPECT_TRUE(typed["s_df"].is_null());
}

} // namespace
} // namespace bothways::tests
