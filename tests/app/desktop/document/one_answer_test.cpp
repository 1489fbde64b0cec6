// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/sheet_import.h"
#include "app/output/analysis_json.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/support/program.h"

#include <nlohmann/json.hpp>

#include <QDir>
#include <QFileInfo>

#include <filesystem>

// Window and command line, number by number: a sheet opened in the window, and the same sheet given
// to the program `bothways`.
namespace bothways::app::tests {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::ordered_json;

/// What differs although the answer is one: the window made a study of the sheet, so it has another
/// digest, and no notes about how the sheet was read.
Json comparable(Json answer)
{
    answer.erase("input_sha256");
    Json notes = Json::array();
    if (answer.contains("notes"))
        for (const Json& note : answer["notes"])
            if (const std::string text = note.dump();
                text.find("sheet was read with") == std::string::npos &&
                text.find("times of day only") == std::string::npos)
                notes.push_back(note);
    answer["notes"] = notes;
    return answer;
}

class OneAnswerTest : public DesktopTest, public testing::WithParamInterface<const char*> {};

TEST_P(OneAnswerTest, TheWindowSaysWhatTheCommandLineSays)
{
    const fs::path original = fs::path(BOTHWAYS_SOURCE_DIR) / GetParam();
    const fs::path copy = fs::path(folder.path().toStdString()) / original.filename();
    fs::copy_file(original, copy);
    for (const auto& beside : fs::directory_iterator(original.parent_path()))
        if (beside.is_directory() &&
            beside.path().filename().string().starts_with(original.stem().string()))
            fs::copy(beside.path(), copy.parent_path() / beside.path().filename(),
                     fs::copy_options::recursive);

    const auto today = QDate(2026, 5, 9);
    const auto opened = makeStudyFromSheet(QString::fromStdString(copy.string()), today);
    ASSERT_TRUE(opened) << core::describe(opened.error());
    settle(*opened.value());
    const auto result = opened.value()->result();
    ASSERT_TRUE(result);
    const Json window = Json::parse(
        analysisJson(result->analysis, result->screening, {}, wording::shownUnitOf(result->study)));

    const bothways::tests::Ran ran = bothways::tests::run(
        BOTHWAYS_PROGRAM, {"analyse", copy.string(), "--json", "--date", "2026-05-09"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    const Json program = Json::parse(ran.out);
    EXPECT_EQ(comparable(window).dump(1), comparable(program).dump(1));
    EXPECT_FALSE(program.at("pairs").empty() && program.at("verdict").empty());
}

INSTANTIATE_TEST_SUITE_P(Examples, OneAnswerTest,
                         testing::Values("sample_data/levee_generator.csv",
                                         "sample_data/roof_box.csv",
                                         "sample_data/tyre_pressure.csv",
                                         "tests/published/data/examples/morning.csv",
                                         "tests/published/data/examples/roof_box_open.csv",
                                         "tests/published/data/examples/too_few.csv"));

/// Four runs of 200 s each way on an invented road, told apart by marks, with a counter of fuel.
QByteArray aDriveWithFuel()
{
    QByteArray csv = "time,road_speed_kmh,fuel_used_l,mark\n";
    for (int s = 0; s <= 1200; ++s) {
        const int t = s % 300;
        csv += QStringLiteral("2026-05-09T05:%1:%2,%3,%4,%5\n")
                   .arg(40 + s / 60, 2, 10, QChar('0'))
                   .arg(s % 60, 2, 10, QChar('0'))
                   .arg(t <= 200 ? 90 : 10)
                   .arg(0.002 * s + 0.00001 * (s / 300), 0, 'f', 5)
                   .arg(t == 0     ? "start"
                        : t == 200 ? "end"
                                   : "")
                   .toUtf8();
    }
    return csv.replace(QByteArray("05:60"), QByteArray("06:00"));
}

// What recordings add is not in the sum, in neither program: it is of what the study says.
TEST_F(DesktopTest, AStudyWhoseRecordingsGiveConsumptionHasOneDigestInBothPrograms)
{
    const std::string study = path("day.bothways").toStdString();
    const std::string drive = write("drive.csv", aDriveWithFuel()).toStdString();
    ASSERT_EQ(bothways::tests::run(BOTHWAYS_PROGRAM, {"new", study}).code, 0);
    const bothways::tests::Ran cut =
        bothways::tests::run(BOTHWAYS_PROGRAM, {"import", study, "--trace", drive, "--cut", "marks",
                                                "--configuration", "A"});
    ASSERT_EQ(cut.code, 0) << cut.err;

    Json window;
    std::string digest;
    {
        auto opened = StudyDocument::open(path("day.bothways"));
        ASSERT_TRUE(opened) << core::describe(opened.error());
        settle(*opened.value());
        const auto result = opened.value()->result();
        ASSERT_TRUE(result);
        ASSERT_TRUE(result->study.runs.front().consumption) << "the recording gives it";
        ASSERT_FALSE(opened.value()->study().runs.front().consumption) << "and nobody typed it";
        digest = result->sha256;
        window = Json::parse(analysisJson(result->analysis, result->screening, digest,
                                          wording::shownUnitOf(result->study)));
    }
    const bothways::tests::Ran ran =
        bothways::tests::run(BOTHWAYS_PROGRAM, {"analyse", study, "--json"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(window.dump(1), Json::parse(ran.out).dump(1));
    const bothways::tests::Ran report =
        bothways::tests::run(BOTHWAYS_PROGRAM, {"report", study, "--output", "-"});
    EXPECT_NE(report.out.find(digest), std::string::npos) << report.err;
}

} // namespace
} // namespace bothways::app::tests
