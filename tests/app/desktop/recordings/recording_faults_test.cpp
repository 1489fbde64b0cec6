// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/recordings.h"
#include "tests/app/desktop/recordings/recording_fixture.h"

#include <QDir>
#include <QFile>
#include <QProgressBar>

#include <unistd.h>

// What comes in through the import dialog, and what does not.
namespace bothways::app::tests {
namespace {

/// Some 50 MB: long enough to be stopped.
QByteArray aLongDrive()
{
    constexpr int kColumns = 300, kRows = 24'000;
    QByteArray header("time_s"), cells;
    for (int i = 0; i < kColumns; ++i) {
        header += ",c" + QByteArray::number(i);
        cells += ',' + QByteArray::number(100.0 + 0.37 * i, 'f', 2);
    }
    QByteArray csv = header + '\n';
    csv.reserve(kRows * (cells.size() + 8));
    for (int row = 0; row < kRows; ++row)
        csv += QByteArray::number(row) + cells + '\n';
    return csv;
}

class RecordingFaultsTest : public RecordingJobsTest {
protected:
    [[nodiscard]] QString words() const { return find<QLabel>("importWords")->text(); }
    /// What the dialog says about a file that it is told to import.
    [[nodiscard]] QString saidOf(const QString& file) const
    {
        auto* dialog = openImport(file);
        EXPECT_NE(dialog, nullptr);
        if (find<QPushButton>("startImport")->isEnabled()) {
            click("wholeDrive");
            click("startImport");
            EXPECT_TRUE(waitFor([&] { return !words().isEmpty(); }));
        }
        const QString said = words();
        dialog->close();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        return said;
    }
    void expectRefusal(const QString& file, const char* words) const
    {
        const auto before = document().history().size();
        const QString said = saidOf(file);
        EXPECT_TRUE(said.contains(words)) << said.toStdString();
        EXPECT_TRUE(said.startsWith("✖")) << said.toStdString();
        EXPECT_TRUE(document().recordings().empty());
        EXPECT_EQ(document().history().size(), before);
    }
};

} // namespace

TEST_F(RecordingFaultsTest, AGpxTrackComesInWithPositionsSpeedAndDistance)
{
    ASSERT_NE(openImport(write("track.gpx", gpx(true))), nullptr);
    EXPECT_TRUE(find<QLabel>("recordingForm")->text().contains("GPX track points"));
    EXPECT_FALSE(find("channelMapping")->isVisible()) << "nothing to map";
    click("wholeDrive");
    click("startImport");
    ASSERT_TRUE(waitFor([&] { return document().recordings().size() == 1; }))
        << words().toStdString();
    const storage::RecordingInfo& recording = document().recordings().front();
    EXPECT_EQ(recording.rows, 120);
    QStringList channels;
    for (const core::ChannelInfo& one : recording.channels)
        channels += QString::fromStdString(one.name);
    EXPECT_EQ(channels, QStringList({"lat_deg", "lon_deg", "road_speed_kmh", "distance_m"}));
    trigger("undo");
    EXPECT_TRUE(document().recordings().empty());
}

TEST_F(RecordingFaultsTest, NmeaSentencesComeInWithPositionsSpeedAndDistance)
{
    ASSERT_NE(openImport(write("receiver.nmea", nmea(true))), nullptr);
    EXPECT_TRUE(find<QLabel>("recordingForm")->text().contains("NMEA sentences"));
    click("wholeDrive");
    click("startImport");
    ASSERT_TRUE(waitFor([&] { return document().recordings().size() == 1; }))
        << words().toStdString();
    const storage::RecordingInfo& recording = document().recordings().front();
    EXPECT_EQ(recording.rows, 120);
    for (const core::ChannelInfo& one : recording.channels)
        if (one.name == "road_speed_kmh") {
            EXPECT_NEAR(one.maximum, 48.6 * 1.852, 0.001); // a knot is 1.852 km/h
        }
}

TEST_F(RecordingFaultsTest, StoppingALongImportLeavesTheStudyAndTheDialogAsTheyWere)
{
    const auto before = document().history().size();
    ASSERT_NE(openImport(write("long.csv", aLongDrive())), nullptr);
    click("wholeDrive");
    click("startImport");
    EXPECT_FALSE(find<QPushButton>("startImport")->isEnabled());
    ASSERT_TRUE(waitFor([&] { return find<QProgressBar>("importProgress")->value() > 0; }));
    click("stopImport");
    ASSERT_TRUE(waitFor([&] { return !words().isEmpty(); }));
    EXPECT_EQ(words(), "Stopped: the study is as it was.");
    EXPECT_TRUE(document().recordings().empty());
    EXPECT_EQ(document().history().size(), before);
    click("startImport"); // and now to its end
    ASSERT_TRUE(waitFor([&] { return document().recordings().size() == 1; }))
        << words().toStdString();
    EXPECT_EQ(document().recordings().front().rows, 24'000);
}

TEST_F(RecordingFaultsTest, ClosingTheDialogStopsALongImport)
{
    const auto before = document().history().size();
    auto* dialog = openImport(write("long.csv", aLongDrive()));
    ASSERT_NE(dialog, nullptr);
    click("wholeDrive");
    click("startImport");
    ASSERT_TRUE(waitFor([&] { return find<QProgressBar>("importProgress")->value() > 0; }));
    dialog->close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    drive("8.02");
    EXPECT_EQ(study().runs.size(), 9U) << "the study is free";
    EXPECT_TRUE(document().recordings().empty());
    EXPECT_EQ(document().history().size(), before + 1);
}

TEST_F(RecordingFaultsTest, ABinaryFileIsRefused)
{
    QByteArray bytes;
    for (int i = 0; i < 5000; ++i)
        bytes += static_cast<char>((i * 7919 + i / 13) % 256);
    expectRefusal(write("picture.csv", bytes), "picture.csv");
}

TEST_F(RecordingFaultsTest, AnEmptyFileIsRefused)
{
    expectRefusal(write("empty.csv", {}), "empty");
}

TEST_F(RecordingFaultsTest, AHeaderWithoutRowsIsRefused)
{
    expectRefusal(write("header.csv", "time_s,road_speed_kmh\n"), "header.csv");
}

TEST_F(RecordingFaultsTest, ATimeColumnOfWordsIsRefused)
{
    expectRefusal(write("words.csv", "time,road_speed_kmh\nmorning,90\nnoon,91\nnight,92\n"),
                  "words.csv");
}

TEST_F(RecordingFaultsTest, TenThousandColumnsAreRefused)
{
    QByteArray header("time_s"), row("0");
    for (int i = 0; i < 10'000; ++i) {
        header += ",c" + QByteArray::number(i);
        row += ",1";
    }
    expectRefusal(write("wide.csv", header + '\n' + row + '\n'), "columns");
}

TEST_F(RecordingFaultsTest, AHalfWrittenLastLineIsLeftOutAndSaid)
{
    const QString said =
        saidOf(write("half.csv", "time_s,road_speed_kmh,wind_ms\n0,90,1.5\n1,90,1.5\n2,9"));
    EXPECT_TRUE(said.contains("The last line is cut short and was left out."))
        << said.toStdString();
    ASSERT_EQ(document().recordings().size(), 1U);
    EXPECT_EQ(document().recordings().front().rows, 2);
}

TEST_F(RecordingFaultsTest, AFolderIsRefused)
{
    ASSERT_TRUE(QDir(folder.path()).mkdir("drives.csv"));
    expectRefusal(path("drives.csv"), "directory");
}

TEST_F(RecordingFaultsTest, AFileThatIsGoneOrMayNotBeReadIsRefused)
{
    expectRefusal(path("gone.csv"), "gone.csv");
    if (geteuid() == 0)
        return; // root may read everything
    const QString locked = write("locked.csv", aDrive());
    ASSERT_TRUE(QFile::setPermissions(locked, {}));
    expectRefusal(locked, "locked.csv");
}

TEST_F(RecordingFaultsTest, SentencesWithWrongChecksumsAreRefused)
{
    expectRefusal(write("noise.nmea", nmea(false)), "checksum");
}

TEST_F(RecordingFaultsTest, ATrackWithoutTimesIsRefused)
{
    expectRefusal(write("route.gpx", gpx(false)), "time");
}

} // namespace bothways::app::tests
