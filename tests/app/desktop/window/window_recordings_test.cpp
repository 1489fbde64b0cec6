// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/desktop/recordings/recording_fixture.h"

#include <QApplication>
#include <QDialog>
#include <QDir>
#include <QDropEvent>
#include <QFileDialog>
#include <QMimeData>
#include <QTimer>

namespace bothways::app::tests {
namespace {

QByteArray rows(const QByteArray& header, const std::function<QByteArray(int)>& time)
{
    QByteArray csv = header + '\n';
    for (int s = 0; s < 120; ++s)
        csv += time(s) + ',' + QByteArray::number(80 + s % 7) + ".5,12.25\n";
    return csv;
}

QByteArray clockAt(int s)
{
    return QTime(5, 40).addSecs(s).toString("'2026-05-09T'HH:mm:ss").toUtf8();
}

class WindowRecordings : public WindowTest {
protected:
    /// Recordings as loggers write them, with a clock and without.
    [[nodiscard]] QStringList recordings() const
    {
        return {write("clock.csv", rows("time,road_speed_kmh,fuel_rate_l_per_h", clockAt)),
                write("seconds.csv", rows("time_s,Speed [km/h],Flow",
                                          [](int s) { return QByteArray::number(s); })),
                write("plain.txt", rows("Time (s),Speed,Temperature",
                                        [](int s) { return QByteArray::number(0.5 * s); })),
                write("drive.gpx", gpx(true)), write("drive.nmea", nmea(true))};
    }
    void expectTheOffer(const QString& file) const
    {
        EXPECT_TRUE(message().contains("logger's recording"))
            << file.toStdString() << ": " << message().toStdString();
        click("messageAction");
        auto* dialog = openDialog("recordingImport");
        ASSERT_NE(dialog, nullptr) << file.toStdString();
        const auto* form = dialog->findChild<QLabel*>("recordingForm");
        waitFor([&] { return form->text() != "Looking at the file…"; });
        EXPECT_TRUE(dialog->findChild<QPushButton*>("startImport")->isEnabled())
            << file.toStdString() << ": " << form->text().toStdString();
        dialog->reject();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    /// The sheet of two runs, with recordings that somebody moved into `logs`.
    [[nodiscard]] QString aSheetWhoseRecordingsMoved() const
    {
        EXPECT_TRUE(QDir(folder.path()).mkdir("logs"));
        for (const char* name : {"logs/a.csv", "logs/b.csv"})
            write(name,
                  rows("time_s,road_speed_kmh,n", [](int s) { return QByteArray::number(2 * s); }));
        return write("day.csv", "run,configuration,direction,start,duration_s,l_per_100km,trace\n"
                                "11,A,out,2026-05-09T07:40,200,8.41,a.csv\n"
                                "12,A,return,2026-05-09T07:47,200,8.29,b.csv\n");
    }
    /// Does the job while a person answers each dialog that is in front; gives how many there were.
    int answered(const std::function<void()>& job, const QStringList& folders)
    {
        int asked = 0;
        QTimer watch;
        QObject::connect(&watch, &QTimer::timeout, &watch, [&] {
            QWidget* front = QApplication::activeModalWidget();
            if (auto* chooser = qobject_cast<QFileDialog*>(front)) {
                chooser->setDirectory(folders.value(asked - 1));
                static_cast<QDialog*>(chooser)->accept();
            } else if (auto* box = qobject_cast<QMessageBox*>(front);
                       box && box->objectName() == "recordingsMissing") {
                words = box->text() + u' ' + box->informativeText();
                ++asked;
                if (qEnvironmentVariableIsSet("BOTHWAYS_PICTURES"))
                    box->grab().save(qEnvironmentVariable("BOTHWAYS_PICTURES") +
                                     "/recordings_missing.png");
                asked <= folders.size()
                    ? QTest::mouseClick(box->findChild<QPushButton*>("chooseRecordingsFolder"),
                                        Qt::LeftButton)
                    : QTest::keyClick(box, Qt::Key_Escape);
            }
        });
        watch.start(10);
        job();
        watch.stop();
        return asked;
    }
    QString words;
};

TEST_F(WindowRecordings, OneThatIsOpenedWithoutAStudyIsOfferedForANewOne)
{
    for (const QString& file : recordings()) {
        EXPECT_FALSE(window->openFile(file));
        ASSERT_EQ(window->document(), nullptr);
        expectTheOffer(file);
        ASSERT_NE(window->document(), nullptr);
        EXPECT_TRUE(study().runs.empty());
        ASSERT_TRUE(window->closeStudy());
    }
}

TEST_F(WindowRecordings, OneThatIsDroppedOnAStudyIsOfferedForIt)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    const StudyDocument* document = window->document();
    for (const QString& file : recordings()) {
        QMimeData data;
        data.setUrls({QUrl::fromLocalFile(file)});
        QDragEnterEvent enter({600, 300}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(window.get(), &enter);
        QDropEvent drop(QPointF(600, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(window.get(), &drop);
        expectTheOffer(file);
        EXPECT_FALSE(window->openFile(file));
        expectTheOffer(file);
    }
    EXPECT_EQ(window->document(), document);
    EXPECT_EQ(study().runs.size(), 8U);
}

TEST_F(WindowRecordings, TheirFolderIsAskedForWhenASheetIsImported)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    const QString sheet = aSheetWhoseRecordingsMoved();
    const core::Study before = study();
    const auto history = window->document()->history().size();
    EXPECT_EQ(answered([&] { window->importSheet(sheet); }, {}), 1);
    EXPECT_TRUE(words.contains("day.csv") && words.contains("b.csv")) << words.toStdString();
    EXPECT_EQ(study(), before) << "nobody said where they are";
    EXPECT_EQ(window->document()->history().size(), history);
    EXPECT_TRUE(message().contains("nothing was imported")) << message().toStdString();
    // A wrong folder is asked about again.
    EXPECT_EQ(answered([&] { window->importSheet(sheet); }, {folder.path(), path("logs")}), 2);
    ASSERT_EQ(study().runs.size(), 10U) << message().toStdString();
    EXPECT_EQ(window->document()->recordings().size(), 2U);
}

TEST_F(WindowRecordings, TheirFolderIsAskedForWhenASheetIsOpened)
{
    const QString sheet = aSheetWhoseRecordingsMoved();
    EXPECT_EQ(answered([&] { EXPECT_FALSE(window->openFile(sheet)); }, {}), 1);
    EXPECT_EQ(window->document(), nullptr);
    EXPECT_FALSE(QFile::exists(path("day.bothways")));
    EXPECT_EQ(answered([&] { EXPECT_TRUE(window->openFile(sheet)); }, {path("logs")}), 1);
    ASSERT_NE(window->document(), nullptr);
    EXPECT_EQ(window->document()->recordings().size(), 2U);
}

} // namespace
} // namespace bothways::app::tests
