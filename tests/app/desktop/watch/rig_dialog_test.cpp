// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/message_bar.h"
#include "app/desktop/roadside/roadside_page.h"
#include "app/desktop/watch/live_desk.h"
#include "app/desktop/watch/rig_dialog.h"
#include "app/desktop/watch/rig_store.h"
#include "app/desktop/watch/rig_trial.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QComboBox>
#include <QFile>
#include <QInputDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <QTimer>

namespace bothways::app::tests {

/// A board that prints a line ten times a second into a file that grows.
class RigDialogTest : public WindowTest {
protected:
    RigDialogTest()
    {
        board.setFileName(path("board.txt"));
        EXPECT_TRUE(board.open(QIODevice::WriteOnly));
        print("rpm,watts\n");
        QObject::connect(&printing, &QTimer::timeout, &printing,
                         [this] { print(QString("%1,%2\n").arg(rpm).arg(watts).toUtf8()); });
        printing.start(100);
    }
    void print(const QByteArray& text)
    {
        board.write(text);
        board.flush();
    }
    RigDialog* openRig()
    {
        trigger("rig");
        return openDialog<RigDialog>("rigDialog");
    }
    template <class Widget>
    Widget* in(QWidget* parent, const char* name)
    {
        auto* found = parent->findChild<Widget*>(name);
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    void press(QWidget* parent, const char* button)
    {
        auto* found = in<QPushButton>(parent, button);
        ASSERT_TRUE(found->isEnabled()) << button;
        QTest::mouseClick(found, Qt::LeftButton);
    }
    static void replace(QLineEdit* line, const QString& text)
    {
        line->setFocus();
        line->selectAll();
        QTest::keyClicks(line, text);
    }
    static QString cell(QTableWidget* table, int row, int column)
    {
        const QTableWidgetItem* item = table->item(row, column);
        return item ? item->text() : QString();
    }

    QFile board;
    QTimer printing;
    int rpm = 1500, watts = 320;
};

TEST_F(RigDialogTest, ARigIsSetUpTriedCalibratedAndKept)
{
    RigDialog* dialog = openRig();
    ASSERT_NE(dialog, nullptr);
    replace(in<QLineEdit>(dialog, "rigName"), "van");
    replace(in<QComboBox>(dialog, "instrumentAddress")->lineEdit(), "file:" + board.fileName());
    press(dialog, "tryRig");
    auto* table = in<QTableWidget>(dialog, "trialChannels");
    ASSERT_TRUE(waitFor([&] {
        return table->rowCount() == 2 && cell(table, 0, 1).contains("1500");
    })) << in<QLabel>(dialog, "trialInstruments")->text().toStdString();
    EXPECT_TRUE(cell(table, 0, RigTrial::rulesColumn).contains("none"));
    EXPECT_TRUE(in<RigTrial>(dialog, "rigTrial")->words().contains("lack a channel"));

    press(dialog, "takeChannels");
    auto* channels = in<QTableWidget>(dialog, "rigChannels");
    EXPECT_EQ(in<QComboBox>(dialog, "instrumentAddress")->lineEdit()->accessibleName(), "Address");
    for (const QComboBox* box : channels->findChildren<QComboBox*>())
        EXPECT_EQ(box->lineEdit()->accessibleName(), "What the channel is called here");
    ASSERT_EQ(channels->rowCount(), 2);
    auto* name = static_cast<QComboBox*>(channels->cellWidget(0, 1));
    EXPECT_GE(name->findText("rotor_rpm@left"), 0) << "how a part is written is offered";
    replace(name->lineEdit(), "rotor_rpm@left");
    EXPECT_EQ(cell(channels, 0, 2), "rpm") << "the unit follows the name";

    press(dialog, "calibrate");
    auto* which = openDialog<QInputDialog>("calibratedChannel");
    ASSERT_NE(which, nullptr);
    which->setTextValue("watts");
    QTest::keyClick(which, Qt::Key_Return);
    auto* calibration = openDialog<QDialog>("calibrationDialog");
    ASSERT_NE(calibration, nullptr);
    QTest::qWait(1500); // the mean is that of the last second
    replace(in<QLineEdit>(calibration, "meter1"), "300");
    press(calibration, "take1");
    watts = 1320;
    QTest::qWait(2000);
    replace(in<QLineEdit>(calibration, "meter2"), "1300");
    press(calibration, "take2");
    press(calibration, "useCalibration");
    EXPECT_EQ(cell(channels, 1, 3), "1");
    EXPECT_EQ(cell(channels, 1, 4), QString(QChar(0x2212)) + "20");

    press(dialog, "saveRig");
    const auto kept = RigStore().read("van");
    ASSERT_TRUE(kept);
    ASSERT_EQ(kept.value().instruments.size(), 1U);
    ASSERT_EQ(kept.value().instruments[0].channels.size(), 2U);
    EXPECT_EQ(kept.value().instruments[0].channels[0].name, "rotor_rpm@left");
    EXPECT_EQ(kept.value().instruments[0].channels[1].offset, -20.0);
    RigStore().remove("van");
}

TEST_F(RigDialogTest, GatesThatBeginAndEndRunsAreKeptWithTheRig)
{
    RigDialog* dialog = openRig();
    ASSERT_NE(dialog, nullptr);
    replace(in<QLineEdit>(dialog, "rigName"), "gated");
    replace(in<QComboBox>(dialog, "instrumentAddress")->lineEdit(), "file:" + board.fileName());
    auto* ways = in<QComboBox>(dialog, "runsBy");
    EXPECT_FALSE(in<QLineEdit>(dialog, "startLat")->isVisible());
    ways->setFocus();
    QTest::keyClick(ways, Qt::Key_Down);
    QTest::keyClick(ways, Qt::Key_Down);
    ASSERT_TRUE(in<QLineEdit>(dialog, "startLat")->isVisible());
    press(dialog, "saveRig");
    EXPECT_TRUE(in<QLabel>(dialog, "rigWords")->text().contains("gates at the two ends"));
    EXPECT_FALSE(RigStore().read("gated")) << "nothing is kept without its gates";
    replace(in<QLineEdit>(dialog, "startLat"), "47.5, 9.4"); // a pair fills both
    replace(in<QLineEdit>(dialog, "endLat"), "47.5, 9.44");
    press(dialog, "saveRig");
    const auto kept = RigStore().read("gated");
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept.value().runs.way, core::RunsBy::Way::position);
    EXPECT_EQ(kept.value().runs.gates, (core::Geofence{47.5, 9.4, 47.5, 9.44, 50.0}));
    const QString where = qEnvironmentVariable("BOTHWAYS_PICTURES");
    if (!where.isEmpty())
        dialog->grab().save(where + "/rig_gates.png");
    RigStore().remove("gated");
}

TEST_F(RigDialogTest, WhatIsRecordedStandsInTheStudyWithTheRunThatWasDriven)
{
    storage::Rig rig;
    rig.name = "van";
    storage::Instrument instrument;
    instrument.name = "board";
    instrument.address = "file:" + board.fileName().toStdString();
    instrument.channels = {{"rpm", "rotor_rpm", "rpm", 1.0, 0.0}};
    rig.instruments.push_back(instrument);
    ASSERT_TRUE(RigStore().write(rig));
    window->newStudy();
    trigger("startRecording");
    ASSERT_TRUE(window->live().isRecording()) << message().toStdString();
    ASSERT_TRUE(waitFor([&] { return window->live().snapshot().samples > 5; }));
    trigger("roadside");
    RoadsidePage* page = window->roadside();
    ASSERT_NE(page, nullptr);
    QTest::keyClick(page, Qt::Key_S);
    QTest::qWait(2500);
    QTest::keyClick(page, Qt::Key_E);
    QTest::keyClicks(page, "8.41");
    QTest::keyClick(page, Qt::Key_Return);
    if (page->session().state() == RoadsideSession::State::ended)
        QTest::keyClick(page, Qt::Key_Return);
    ASSERT_EQ(study().runs.size(), 1U);
    ASSERT_EQ(window->document()->assignedTraces().size(), 1U);
    QTest::keyClick(page, Qt::Key_Escape);
    trigger("stopRecording");
    ASSERT_TRUE(waitFor([&] { return !window->live().isStopping(); }));
    ASSERT_EQ(window->document()->recordings().size(), 1U);
    const auto record = window->document()->liveRecord(window->document()->recordings().front().id);
    ASSERT_TRUE(record);
    EXPECT_TRUE(record->ended);
    EXPECT_EQ(window->document()->assignedTraces().size(), 1U);
    RigStore().remove("van");
}

TEST_F(RigDialogTest, TheRehearsalGoesFromTheMenuToARunWithItsPart)
{
    trigger("rehearse");
    ASSERT_NE(window->document(), nullptr) << message().toStdString();
    RoadsidePage* page = window->roadside();
    ASSERT_NE(page, nullptr) << message().toStdString();
    const std::size_t before = study().runs.size();
    const auto speed = [&] {
        for (const LiveChannel& channel : window->live().snapshot().channels)
            if (channel.name == "road_speed_kmh")
                return channel.value.value_or(0.0);
        return 0.0;
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return speed() > 88.0; }, 40'000))
        << window->live().snapshot().samples;
    QTest::keyClick(page, Qt::Key_S);
    ASSERT_TRUE(QTest::qWaitFor([&] { return page->session().elapsed_s() > 40.0; }, 30'000));
    QTest::keyClick(page, Qt::Key_E);
    EXPECT_GT(window->live().snapshot().distance_km.value_or(4.0), 0.5);
    QTest::keyClicks(page, "8.41");
    for (int i = 0; i < 3 && page->session().state() == RoadsideSession::State::ended; ++i)
        QTest::keyClick(page, page->session().isUnanswered() ? Qt::Key_K : Qt::Key_Return);
    ASSERT_EQ(study().runs.size(), before + 1);
    // The runs stand in the order of their starts: the new one is that with the highest number.
    const auto driven = std::max_element(
        study().runs.begin(), study().runs.end(),
        [](const core::Run& a, const core::Run& b) { return a.number < b.number; });
    EXPECT_GE(driven->duration_s.value_or(0.0), 40.0);
    const auto& parts = window->document()->assignedTraces();
    EXPECT_TRUE(std::any_of(parts.begin(), parts.end(),
                            [&](const auto& part) { return part.run == driven->id; }));
    QTest::keyClick(page, Qt::Key_Escape);
    trigger("stopRecording");
    EXPECT_TRUE(waitFor([&] { return !window->live().isStopping(); }));
}

} // namespace bothways::app::tests
