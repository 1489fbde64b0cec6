// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>

// Studies that released versions made, as they left them, each beside what that version answered.
// Every later version opens them, answers the same, and goes on with them.
namespace bothways::tests {
namespace {

namespace fs = std::filesystem;

std::vector<fs::path> releasedStudies()
{
    std::vector<fs::path> studies;
    for (const auto& entry :
         fs::recursive_directory_iterator(BOTHWAYS_SOURCE_DIR "/tests/storage/released"))
        if (entry.path().extension() == ".bothways")
            studies.push_back(entry.path());
    return studies;
}

/// A number of the answer that was kept, against today's: the same but for the last digits.
void expectSame(const nlohmann::json& kept, const nlohmann::json& now, const std::string& what)
{
    ASSERT_EQ(kept.is_null(), now.is_null()) << what;
    if (kept.is_number()) {
        EXPECT_NEAR(now.get<double>(), kept.get<double>(), 1e-9 * std::abs(kept.get<double>()))
            << what;
    } else {
        EXPECT_EQ(now, kept) << what;
    }
}

} // namespace

TEST(ReleasedStudies, AreThere)
{
    EXPECT_GE(releasedStudies().size(), 2u);
}

TEST(ReleasedStudies, AreReadAsTheyAreAndAnswerAsTheyDid)
{
    for (const fs::path& study : releasedStudies()) {
        // A copy: of a study with a plan each look is put on record.
        const TempFolder folder;
        const std::string before = readFile(study);
        const nlohmann::json now =
            jsonOf({"analyse", folder.write("study.bothways", before), "--json"});
        const auto kept =
            nlohmann::json::parse(readFile(fs::path(study).replace_extension(".json")));
        EXPECT_EQ(now["verdict"]["class"], kept["verdict"]["class"]) << study;
        for (const char* key : {"effect_pct", "low_pct", "high_pct", "df", "p", "s"})
            expectSame(kept.at("headline").at(key), now.at("headline").at(key),
                       study.string() + ": " + key);
        EXPECT_EQ(readFile(study), before) << study;
    }
}

TEST(ReleasedStudies, GoOn)
{
    for (const fs::path& study : releasedStudies()) {
        const TempFolder folder;
        const std::string copy = folder.write("copy.bothways", readFile(study));
        const auto runs = [&] { return jsonOf({"runs", copy, "--json"}); };
        const nlohmann::json before = runs();
        ASSERT_EQ(bothwaysProgram({"edit", copy, "1", "notes=later"}).code, 0) << study;
        EXPECT_NE(runs(), before);
        ASSERT_EQ(bothwaysProgram({"undo", copy}).code, 0) << study;
        EXPECT_EQ(runs(), before);
        // and what the released version did can still be taken back
        EXPECT_EQ(bothwaysProgram({"undo", copy}).code, 0) << study;
        EXPECT_EQ(bothwaysProgram({"history", copy}).code, 0) << study;
    }
}

} // namespace bothways::tests
