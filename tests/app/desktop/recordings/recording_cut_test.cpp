// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/appearance.h"
#include "app/desktop/recordings/cut_plot.h"
#include "app/desktop/recordings/cut_table.h"
#include "core/screening/screening.h"
#include "core/study/clock.h"
#include "storage/recordings/recordings.h"
#include "storage/study/history_message.h"
#include "tests/app/desktop/recordings/recording_fixture.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QTest>

namespace bothways::app::tests {
namespace {

constexpr double kFrom_lon = 9.40, kTo_lon = 9.46; // 4.5 km of an invented road along 47.5 N

/// There and back at 90 km/h from 07:30, when no run of the sheet is under way: a row a second.
QByteArray aDriveWithPositions()
{
    QByteArray csv("time,road_speed_kmh,lat_deg,lon_deg\n");
    constexpr int kWay_s = 180, kTurn_s = 60;
    for (int s = 0; s <= 2 * kWay_s + kTurn_s; ++s) {
        const int back = std::max(0, s - kWay_s - kTurn_s);
        const double share = static_cast<double>(std::min(s, kWay_s) - back) / kWay_s;
        const bool turning = s > kWay_s && back == 0;
        csv +=
            QDateTime(QDate(2026, 5, 9), QTime(7, 30).addSecs(s)).toString(Qt::ISODate).toUtf8() +
            (turning ? ",0," : ",90,") + "47.5," +
            QByteArray::number(kFrom_lon + share * (kTo_lon - kFrom_lon), 'f', 6) + '\n';
    }
    return csv;
}

/// Runs 1 and 2 of the sheet by marks, 12 s later than the sheet has them, and one of nobody's.
QByteArray aDriveWithMarks()
{
    QByteArray csv("time,road_speed_kmh,mark\n");
    for (int s = 0; s <= 1200; ++s) {
        const char* mark = s == 132    ? "start 1"
                           : s == 330  ? "end"
                           : s == 552  ? "start 2 return"
                           : s == 760  ? "stop"
                           : s == 1090 ? "begin out"
                                       : "";
        csv +=
            QDateTime(QDate(2026, 5, 9), QTime(5, 38).addSecs(s)).toString(Qt::ISODate).toUtf8() +
            ",90," + mark + '\n';
    }
    return csv;
}

class RecordingCutTest : public RecordingJobsTest {
protected:
    /// Types into the fields of the gates, then leaves them.
    void typeGates(const QStringList& texts) const
    {
        const char* fields[] = {"startLat", "startLon", "endLat", "endLon"};
        for (int i = 0; i < 4; ++i)
            find<QLineEdit>(fields[i])->setText(texts[i]);
        emit find<QLineEdit>("endLon")->editingFinished();
    }
    [[nodiscard]] std::string startOf(int number) const
    {
        return core::formatDateTime(document().runByNumber(number)->start);
    }
};

} // namespace

TEST_F(RecordingCutTest, MarksMakeRunsAndAreTakenBackInOneStep)
{
    const auto* dialog = importAndCut(write("marked.csv", aDriveWithMarks()));
    ASSERT_NE(dialog, nullptr);
    cutBy(CutWay::marks);
    ASSERT_EQ(dialog->table().rowCount(), 3);
    const auto before = document().history().size();
    click("makeRuns");
    EXPECT_EQ(study().runs.size(), 9U) << "two of the sheet, one new";
    EXPECT_EQ(document().assignedTraces().size(), 3U);
    EXPECT_EQ(startOf(1), "2026-05-09T05:40:12") << "run 1 follows its mark";
    EXPECT_EQ(document().runByNumber(1)->duration_s, 198.0);
    EXPECT_EQ(document().runByNumber(2)->duration_s, 208.0);
    EXPECT_EQ(document().history().size(), before + 1);
    EXPECT_NE(storage::historyDetail(document().history().back()).english().find("run 1: start"),
              std::string::npos)
        << document().history().back().detail;
    trigger("undo");
    EXPECT_EQ(study().runs.size(), 8U);
    EXPECT_EQ(startOf(1), "2026-05-09T05:40:00");
    EXPECT_FALSE(document().runByNumber(1)->duration_s);
    EXPECT_TRUE(document().assignedTraces().empty());
}

TEST_F(RecordingCutTest, ARunMayKeepItsTimesWhenItIsGivenAPart)
{
    ASSERT_NE(importAndCut(write("marked.csv", aDriveWithMarks())), nullptr);
    cutBy(CutWay::marks);
    find<QCheckBox>("takeTimes")->setChecked(false);
    click("makeRuns");
    EXPECT_EQ(startOf(1), "2026-05-09T05:40:00");
    EXPECT_FALSE(document().runByNumber(1)->duration_s);
    EXPECT_NEAR(document().assignedTraces().front().offset_s, 132.0, 1e-6);
}

TEST_F(RecordingCutTest, ADraggedPartMovesItsRunAndOneThatLiesAsInTheSheetDoesNot)
{
    auto* dialog = importAndCut(write("drive.csv", aDrive()));
    ASSERT_NE(dialog, nullptr);
    ASSERT_EQ(dialog->table().rowCount(), 4);
    dialog->table().setTimes(1, 545.0, 735.0);
    click("makeRuns");
    EXPECT_EQ(startOf(1), "2026-05-09T05:40:00");
    EXPECT_FALSE(document().runByNumber(1)->duration_s) << "its part ends at the next run's";
    EXPECT_EQ(startOf(2), "2026-05-09T05:47:05");
    EXPECT_EQ(document().runByNumber(2)->duration_s, 190.0);
}

TEST_F(RecordingCutTest, GatesAreFilledInFromWhatWasFoundAndMakeAnOutAndAReturnRun)
{
    auto* dialog = importAndCut(write("positions.csv", aDriveWithPositions()));
    ASSERT_NE(dialog, nullptr);
    cutBy(CutWay::speed);
    EXPECT_FALSE(find("gateRow")->isVisible());
    cutBy(CutWay::position);
    EXPECT_TRUE(find("gateRow")->isVisible());
    EXPECT_EQ(find<QLineEdit>("startLon")->text(), "9.400000");
    typeGates({"47.5", "9,41", "47.5", "9.45"}); // either decimal sign
    ASSERT_TRUE(waitFor([&] { return dialog->table().rowCount() == 2; }))
        << cutWords().toStdString();
    // 0.01 of 0.06 degrees is a sixth of 180 s.
    EXPECT_NEAR(dialog->table().bands()[0].from_s, 30.0, 0.06);
    EXPECT_NEAR(dialog->table().bands()[0].to_s, 150.0, 0.06);
    EXPECT_NEAR(dialog->table().bands()[1].from_s, 270.0, 0.06);
    QCoreApplication::processEvents();
    paint(*dialog, "recording_cut_position");
    click("makeRuns");
    ASSERT_EQ(study().runs.size(), 10U) << cutWords().toStdString();
    EXPECT_EQ(study().runs[8].direction, "out");
    EXPECT_EQ(study().runs[9].direction, "return");
    EXPECT_NEAR(study().runs[8].duration_s.value(), 120.0, 0.01);
    trigger("undo");
    EXPECT_EQ(study().runs.size(), 8U);
}

TEST_F(RecordingCutTest, GatesThatAreNoneAreSaidAndNothingCanBeMade)
{
    auto* dialog = importAndCut(write("positions.csv", aDriveWithPositions()));
    ASSERT_NE(dialog, nullptr);
    cutBy(CutWay::position);
    const std::pair<QStringList, const char*> wrong[] = {
        {{"97.5", "9.41", "47.5", "9.45"}, "latitude of the start gate is 97.5"},
        {{"47.5", "9.41", "47.5", "189.45"}, "longitude of the end gate is 189.45"},
        {{"47.5", "9.41", "47.5", "9.41"}, "same place"},
        {{"47.5", "9.41", "47.5", "9.4101"}, "m apart"},
        {{"north", "9.41", "47.5", "9.45"}, "Latitude of the start gate: “north” is no number"},
        {{"", "", "", ""}, "Type where the gates"},
    };
    for (const auto& [texts, words] : wrong) {
        typeGates(texts);
        EXPECT_TRUE(cutWords().contains(words)) << cutWords().toStdString();
        EXPECT_EQ(dialog->table().rowCount(), 0);
        EXPECT_FALSE(find<QPushButton>("makeRuns")->isEnabled());
    }
    typeGates({"48.5", "9.41", "48.5", "9.45"}); // a road that was not driven
    ASSERT_TRUE(waitFor([&] { return cutWords().contains("never leads through"); }))
        << cutWords().toStdString();
    find<QLineEdit>("startLat")->setText("47.5, 9.41"); // as it is copied from a map
    EXPECT_EQ(find<QLineEdit>("startLon")->text(), "9.41");
    typeGates({"47.5", "9.41", "47.5", "9.45"});
    EXPECT_TRUE(waitFor([&] { return dialog->table().rowCount() == 2; }));
    EXPECT_TRUE(find<QPushButton>("makeRuns")->isEnabled());
}

TEST_F(RecordingCutTest, GatesAreTakenFromTheEndsOfAPartThatWasDragged)
{
    auto* dialog = importAndCut(write("positions.csv", aDriveWithPositions()));
    ASSERT_NE(dialog, nullptr);
    cutBy(CutWay::position);
    typeGates({"47.5", "9.41", "47.5", "9.45"});
    ASSERT_TRUE(waitFor([&] { return dialog->table().rowCount() == 2; }));
    dialog->table().selectRow(0);
    dialog->table().setTimes(0, 60.0, 120.0);
    click("gatesFromPart");
    EXPECT_NEAR(find<QLineEdit>("startLon")->text().toDouble(), 9.42, 1e-6);
    EXPECT_NEAR(find<QLineEdit>("endLon")->text().toDouble(), 9.44, 1e-6);
    ASSERT_TRUE(waitFor([&] {
        return dialog->table().rowCount() == 2 && dialog->table().bands()[1].from_s > 275.0;
    })) << cutWords().toStdString();
    EXPECT_NEAR(dialog->table().bands()[1].from_s, 300.0, 0.06);
}

TEST_F(RecordingCutTest, BothDialogsFitASmallScreenInLargeDarkText)
{
    const QFont before = QApplication::font();
    followAppearance(*qApp, preferences);
    preferences.setTheme(ThemeChoice::dark);
    preferences.setLargeText(true);
    EXPECT_GT(QApplication::font().pointSizeF(), before.pointSizeF());
    const QSize screen(1280, 760); // 800 without a title bar
    const auto expectFits = [&](const QWidget& dialog) {
        EXPECT_LE(dialog.width(), screen.width());
        EXPECT_LE(dialog.height(), screen.height());
        EXPECT_LE(dialog.minimumSizeHint().width(), dialog.width());
    };
    auto* import = openImport(write("drive.csv", aDrive()));
    ASSERT_NE(import, nullptr);
    expectFits(*import);
    paint(*import, "recording_import_dark_large");
    import->close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    auto* dialog = importAndCut(write("positions.csv", aDriveWithPositions()));
    ASSERT_NE(dialog, nullptr);
    cutBy(CutWay::position);
    typeGates({"47.5", "9.41", "47.5", "9.45"});
    ASSERT_TRUE(waitFor([&] { return dialog->table().rowCount() == 2; }));
    QCoreApplication::processEvents();
    expectFits(*dialog);
    paint(*dialog, "recording_cut_dark_large");
    preferences.setTheme(ThemeChoice::system);
    preferences.setLargeText(false);
    QCoreApplication::processEvents();
    EXPECT_EQ(QApplication::font().pointSizeF(), before.pointSizeF());
}

TEST_F(RecordingCutTest, ARecordingWithoutPositionsSaysThatItHasNone)
{
    ASSERT_NE(importAndCut(write("marked.csv", aDriveWithMarks())), nullptr);
    cutBy(CutWay::position);
    EXPECT_TRUE(cutWords().contains("no positions")) << cutWords().toStdString();
    EXPECT_FALSE(find("gateRow")->isVisible());
}

TEST(CutTable, ABlockIsChosenWithItsFirstRunAndThePlanIsProposed)
{
    const std::vector<core::CutProposal> parts(6, core::CutProposal{0.0, 100.0, {}, {}, {}, {}});
    core::Study study;
    CutTable table;
    const auto chosen = [&] {
        QString letters;
        for (const CutTable::Part& part : table.wantedParts())
            letters += part.configuration;
        return letters;
    };
    const auto choose = [&](int row, Qt::Key key) {
        auto* box = qobject_cast<QComboBox*>(table.cellWidget(row, CutTable::becomesColumn));
        ASSERT_NE(box, nullptr);
        QTest::keyClick(box, key);
    };
    table.setParts(parts, study, {}, {});
    table.show();
    EXPECT_EQ(chosen(), "AAAAAA");
    choose(4, Qt::Key_Down);
    EXPECT_EQ(chosen(), "AAAABB");
    choose(2, Qt::Key_Down);
    EXPECT_EQ(chosen(), "AABBBB") << "up to the one that was chosen itself";
    choose(4, Qt::Key_Up);
    EXPECT_EQ(chosen(), "AABBAA");
    study.properties.plan = core::PlannedStudy{"ABA", 1, 1.0, 0.95};
    table.setParts(parts, study, {}, {});
    EXPECT_EQ(chosen(), "AABBAA");
}

} // namespace bothways::app::tests
