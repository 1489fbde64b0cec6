// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/cut_plot.h"
#include "app/desktop/recordings/recordings_dialog.h"
#include "storage/recordings/recordings.h"
#include "tests/app/desktop/recordings/recording_fixture.h"

#include <QFileInfo>

namespace bothways::app::tests {

TEST_F(RecordingJobsTest, AMappingIsChosenOnceAndOfferedAgainForTheSameHeader)
{
    const QString file = write("drive.csv", aDrive());
    auto* dialog = openImport(file);
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(find<QLabel>("recordingForm")->text().contains("semicolons"));
    using Table = ChannelMappingTable;
    QComboBox* channel = boxOf(*dialog, 1, Table::channelColumn);
    ASSERT_NE(channel, nullptr);
    channel->setCurrentIndex(channel->findData("road_speed_kmh"));
    boxOf(*dialog, 1, Table::unitColumn)->setCurrentText("mph");
    QComboBox* fuel = boxOf(*dialog, 2, Table::channelColumn);
    fuel->setCurrentIndex(fuel->findData("fuel_used_l"));
    paint(*dialog, "recording_import");
    click("wholeDrive");
    click("startImport");
    ASSERT_TRUE(waitFor([&] { return document().recordings().size() == 1; }))
        << find<QLabel>("importWords")->text().toStdString();
    const storage::RecordingInfo& recording = document().recordings().front();
    EXPECT_EQ(recording.rows, 1701);
    double fastest = 0.0;
    for (const core::ChannelInfo& one : recording.channels)
        if (one.name == "road_speed_kmh")
            fastest = one.maximum;
    EXPECT_NEAR(fastest, 90.0, 0.001);
    EXPECT_TRUE(find("cutImported")->isVisible());
    paint(*dialog, "recording_imported");
    dialog->close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);

    dialog = openImport(write("again.csv", aDrive()));
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(boxOf(*dialog, 1, Table::channelColumn)->currentData(), "road_speed_kmh");
    EXPECT_EQ(boxOf(*dialog, 1, Table::unitColumn)->currentText(), "mph");
    EXPECT_TRUE(find<QLabel>("recordingForm")->text().contains("earlier recording"));
}

TEST_F(RecordingJobsTest, ARecordingOfAnotherTimeThanItsRunIsRefusedAndSaysWhatWouldFit)
{
    const auto before = document().history().size();
    auto* dialog = openImport(write("drive.csv", aDrive())); // run 8 is chosen, an hour later
    ASSERT_NE(dialog, nullptr);
    click("startImport");
    ASSERT_TRUE(waitFor([&] { return find<QLabel>("importWords")->text().contains("would fit"); }));
    EXPECT_TRUE(document().recordings().empty());
    EXPECT_EQ(document().history().size(), before);
    EXPECT_TRUE(find("startImport")->isEnabled()) << "another try";
}

TEST_F(RecordingJobsTest, ChannelsOfAPartAreOfferedWhereAColumnNamesIt)
{
    auto* dialog = openImport(write("two.csv", "time;Rotor left;Rotor right;Load\n"
                                               "2026-05-09T05:40:00;2600;2590;800\n"
                                               "2026-05-09T05:40:01;2601;2592;801\n"));
    ASSERT_NE(dialog, nullptr);
    using Table = ChannelMappingTable;
    QComboBox* left = boxOf(*dialog, 1, Table::channelColumn);
    ASSERT_NE(left, nullptr);
    EXPECT_GE(left->findData("rotor_rpm@left"), 0);
    EXPECT_EQ(left->findData("rotor_rpm@right"), -1) << "it is the left one";
    left->setCurrentIndex(left->findData("rotor_rpm@left"));
    EXPECT_EQ(left->currentText(), "rotor speed (left), rpm");
    EXPECT_GE(boxOf(*dialog, 1, Table::unitColumn)->findText("1/s"), 0) << "its kind has units";
    QComboBox* load = boxOf(*dialog, 3, Table::channelColumn);
    EXPECT_GE(load->findData("output_w@left"), 0);
    EXPECT_GE(load->findData("output_w@right"), 0);
}

TEST_F(RecordingJobsTest, AUnitThatIsNoneIsSaidAndNothingIsImported)
{
    auto* dialog = openImport(write("drive.csv", aDrive()));
    ASSERT_NE(dialog, nullptr);
    boxOf(*dialog, 1, ChannelMappingTable::unitColumn)->setCurrentText("furlongs");
    click("startImport");
    EXPECT_TRUE(find<QLabel>("importWords")->text().contains("furlongs"));
    EXPECT_TRUE(document().recordings().empty());
}

TEST_F(RecordingJobsTest, AFileThatIsNoRecordingIsRefusedWithItsPlace)
{
    const auto before = document().history().size();
    auto* dialog = openImport(write("words.csv", "time_s,road_speed_kmh\nsoon,fast\nlater,slow\n"));
    ASSERT_NE(dialog, nullptr);
    if (find<QPushButton>("startImport")->isEnabled()) {
        click("startImport");
        waitFor([&] { return find<QLabel>("importWords")->text().contains("✖"); });
    }
    EXPECT_TRUE(find<QLabel>("importWords")->text().contains("words.csv"))
        << find<QLabel>("importWords")->text().toStdString();
    EXPECT_EQ(document().history().size(), before);
}

TEST_F(RecordingJobsTest, ADriveIsCutByTheTimesOfTheRunsInOneStep)
{
    import(write("drive.csv", aDrive()));
    click("cutImported");
    auto* dialog = openDialog<CutDialog>("cutDialog");
    ASSERT_NE(dialog, nullptr);
    ASSERT_TRUE(waitFor([&] { return dialog->isReady(); }));
    EXPECT_EQ(dialog->table().rowCount(), 4) << "four runs of the sheet start in the recording";
    dialog->table().item(3, CutTable::wantedColumn)->setCheckState(Qt::Unchecked);
    click("makeRuns");
    EXPECT_EQ(document().assignedTraces().size(), 3U);
    EXPECT_EQ(study().runs.size(), 8U) << "they were there";
    EXPECT_NEAR(document().assignedTraces().front().offset_s, 120.0, 1e-6);
    trigger("undo");
    EXPECT_TRUE(document().assignedTraces().empty());
    EXPECT_EQ(document().recordings().size(), 1U);
}

TEST_F(RecordingJobsTest, PartsAreDraggedAndNudgedOnThePlotAndBecomeNewRuns)
{
    import(write("named.csv",
                 aDrive().replace("Speed [mph]", "road_speed_kmh").replace("55.9234", "90.0")));
    click("cutImported");
    auto* dialog = openDialog<CutDialog>("cutDialog");
    ASSERT_NE(dialog, nullptr);
    ASSERT_TRUE(waitFor([&] { return dialog->isReady(); }));
    auto* way = find<QComboBox>("cutWay");
    way->setCurrentIndex(way->findData(static_cast<int>(CutWay::speed)));
    ASSERT_EQ(dialog->table().rowCount(), 4);
    QCoreApplication::processEvents();

    CutPlot& plot = dialog->plot();
    const CutBand before = plot.bands()[1];
    const int y = plot.height() / 2;
    const QPoint from(qRound(plot.pixelOf(before.from_s)), y);
    const QPoint to(qRound(plot.pixelOf(before.from_s + 40.0)), y);
    QTest::mousePress(&plot, Qt::LeftButton, {}, from);
    QTest::mouseMove(&plot, to);
    QTest::mouseRelease(&plot, Qt::LeftButton, {}, to);
    EXPECT_NEAR(plot.bands()[1].from_s, before.from_s + 40.0, 5.0);
    const double dragged = plot.bands()[1].from_s;
    QTest::keyClick(&plot, Qt::Key_Right, Qt::ControlModifier);
    EXPECT_NEAR(plot.bands()[1].from_s, dragged + 1.0, 0.1);
    EXPECT_NEAR(dialog->table().bands()[1].from_s, plot.bands()[1].from_s, 0.06);

    paint(*dialog, "recording_cut");
    for (const int row : {0, 2, 3})
        dialog->table().item(row, CutTable::wantedColumn)->setCheckState(Qt::Unchecked);
    auto* becomes =
        qobject_cast<QComboBox*>(dialog->table().cellWidget(1, CutTable::becomesColumn));
    becomes->setCurrentIndex(1); // a new run of the second configuration
    // The runs of the sheet last until the next: a new one at the same time would be its twin.
    click("makeRuns");
    EXPECT_EQ(study().runs.size(), 9U) << find<QLabel>("cutWords")->text().toStdString();
    ASSERT_EQ(document().assignedTraces().size(), 1U);
    const core::Run* made = document().run(document().assignedTraces().front().run);
    ASSERT_NE(made, nullptr);
    EXPECT_EQ(made->configuration, "B");
    EXPECT_FALSE(made->consumption);
    trigger("undo");
    EXPECT_EQ(study().runs.size(), 8U);
}

TEST_F(RecordingJobsTest, DroppingAsksFirstKeepsTheRunsAndFreesTheRoom)
{
    import(write("drive.csv", aDrive()));
    find<RecordingImportDialog>("recordingImport")->close();
    trigger("listRecordings");
    auto* dialog = openDialog<RecordingsDialog>("recordingsDialog");
    ASSERT_NE(dialog, nullptr);
    click("dropRecording");
    auto* question = openDialog<QMessageBox>("recordingsQuestion");
    ASSERT_NE(question, nullptr);
    EXPECT_TRUE(question->informativeText().contains("freed"));
    answer(*question, "Drop it");
    ASSERT_TRUE(waitFor([&] { return document().recordings().empty(); }));
    EXPECT_EQ(study().runs.size(), 8U);
    trigger("undo");
    EXPECT_EQ(document().recordings().size(), 1U);
    trigger("redo");

    settle();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    const qint64 size = QFileInfo(document().path()).size();
    click("compactStudy");
    question = openDialog<QMessageBox>("recordingsQuestion");
    ASSERT_NE(question, nullptr);
    answer(*question, "Shrink it");
    ASSERT_TRUE(waitFor([&] {
        return find<QLabel>("recordingsWords")->text().contains("smaller.");
    })) << find<QLabel>("recordingsWords")->text().toStdString();
    EXPECT_LT(QFileInfo(document().path()).size(), size);
    EXPECT_EQ(study().runs.size(), 8U);
}

} // namespace bothways::app::tests
