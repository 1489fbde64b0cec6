// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/recordings/channel_mapping_table.h"
#include "app/desktop/recordings/cut_dialog.h"
#include "app/desktop/recordings/cut_table.h"
#include "app/desktop/recordings/recording_import_dialog.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QComboBox>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTest>

#include <cmath>

namespace bothways::app::tests {

/// Four runs of 200 s at 90 km/h in a drive of 1700 s, a row a second, in miles per hour; the
/// recorder's clock starts at 05:38 of the day of aSheet().
inline QByteArray aDrive()
{
    QByteArray csv("time;Speed [mph];Fuel [L];Noise\n");
    double fuel = 0.0;
    for (int s = 0; s <= 1700; ++s) {
        const int within = s % 420; // the runs of the sheet are 7 min apart, the first at 120 s
        const bool run = within >= 120 && within < 320;
        fuel += run ? 0.002 : 0.0005;
        const QDateTime at(QDate(2026, 5, 9), QTime(5, 38).addSecs(s));
        csv += at.toString(Qt::ISODate).toUtf8() + ';' +
               (run ? QByteArray("55.9234") : QByteArray::number(20 + s % 23)) + ';' +
               QByteArray::number(fuel, 'f', 4) + ';' +
               QByteArray::number(std::sin(12.9898 * s) * 43758.5453, 'g', 15) + '\n';
    }
    return csv;
}

/// Two minutes of the day of aSheet().
inline QByteArray gpx(bool times)
{
    QByteArray text("<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"invented\" "
                    "xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n");
    for (int s = 0; s < 120; ++s) {
        text += "<trkpt lat=\"47.5\" lon=\"" + QByteArray::number(9.4 + s / 3000.0, 'f', 6) + "\">";
        if (times)
            text += "<time>" +
                    QTime(5, 40).addSecs(s).toString("'2026-05-09T'HH:mm:ss'Z'").toUtf8() +
                    "</time>";
        text += "</trkpt>\n";
    }
    return text + "</trkseg></trk></gpx>\n";
}

inline QByteArray nmea(bool rightChecksums)
{
    QByteArray text;
    for (int s = 0; s < 120; ++s) {
        const QByteArray body = "GPRMC," + QTime(5, 40).addSecs(s).toString("HHmmss").toUtf8() +
                                ".00,A,4730.0000,N,00924." +
                                QByteArray::number(1000 + s * 20).rightJustified(4, '0') +
                                ",E,48.6,090.0,090526,,,A";
        unsigned sum = rightChecksums ? 0 : 1;
        for (const char c : body)
            sum ^= static_cast<unsigned char>(c);
        text += '$' + body + '*' + QByteArray::number(sum, 16).rightJustified(2, '0').toUpper() +
                "\r\n";
    }
    return text;
}

class RecordingJobsTest : public WindowTest {
protected:
    RecordingJobsTest()
    {
        EXPECT_TRUE(window->openFile(aSheet()));
        settle();
    }
    [[nodiscard]] const StudyDocument& document() const { return *window->document(); }
    RecordingImportDialog* openImport(const QString& file) const
    {
        window->importRecording(file);
        auto* dialog = openDialog<RecordingImportDialog>("recordingImport");
        waitFor([&] { return find<QLabel>("recordingForm")->text() != "Looking at the file…"; });
        return dialog;
    }
    /// Imports a file as it is offered.
    void import(const QString& file) const
    {
        auto* dialog = openImport(file);
        ASSERT_NE(dialog, nullptr);
        click("wholeDrive");
        const std::size_t before = document().recordings().size();
        click("startImport");
        ASSERT_TRUE(waitFor([&] { return document().recordings().size() > before; }))
            << find<QLabel>("importWords")->text().toStdString();
    }
    /// Imports a file as it is offered, and opens the dialog that cuts it.
    CutDialog* importAndCut(const QString& file) const
    {
        import(file);
        click("cutImported");
        auto* dialog = openDialog<CutDialog>("cutDialog");
        EXPECT_TRUE(dialog && waitFor([&] { return dialog->isReady(); }));
        return dialog;
    }
    void cutBy(CutWay chosen) const
    {
        auto* way = find<QComboBox>("cutWay");
        way->setCurrentIndex(way->findData(static_cast<int>(chosen)));
    }
    [[nodiscard]] QString cutWords() const { return find<QLabel>("cutWords")->text(); }
    static void answer(const QMessageBox& question, const QString& words)
    {
        for (QAbstractButton* button : question.buttons())
            if (button->text().remove(u'&') == words) {
                QTest::mouseClick(button, Qt::LeftButton);
                return;
            }
        ADD_FAILURE() << "no button says " << words.toStdString();
    }
    static QComboBox* boxOf(const RecordingImportDialog& dialog, int row, int column)
    {
        auto* table = dialog.findChild<ChannelMappingTable*>("channelMapping");
        return qobject_cast<QComboBox*>(table->cellWidget(row, column));
    }
};

} // namespace bothways::app::tests
