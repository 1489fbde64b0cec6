// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one page in each of its states.
#include "app/desktop/look/big_button.h"
#include "app/desktop/look/big_label.h"
#include "app/desktop/roadside/roadside_page.h"
#include "app/desktop/watch/alarm_band.h"
#include "app/desktop/watch/live_desk.h"
#include "app/desktop/watch/rig_store.h"
#include "app/desktop/watch/watch_panel.h"
#include "storage/recordings/trace_import.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/app/desktop/support/german.h"
#include "tests/app/desktop/watch/fake_source.h"

#include <QAction>
#include <QLabel>
#include <QMessageBox>
#include <QPicture>
#include <QPushButton>
#include <QTest>

namespace bothways::app::tests {

/// Roadside mode while a recording is made, of which the test says what comes.
class WatchPageTest : public WindowTest {
protected:
    WatchPageTest()
    {
        window->live().setStarter(starterOf(live));
        window->live().setRing([this](core::AlarmLevel level) { rung.push_back(level); });
    }
    void open(bool demo)
    {
        if (demo)
            window->openDemo();
        else
            window->newStudy();
        DesktopTest::settle(*window->document());
        live->snapshot = fakeSnapshot(100.0);
        rig.name = "car";
        ASSERT_TRUE(window->live().start(*window->document(), rig, now));
        trigger("roadside");
        page = window->roadside();
        ASSERT_NE(page, nullptr);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page));
    }
    /// The test's clock and the recording's go on together.
    void pass(int seconds)
    {
        now = now.addSecs(seconds);
        const double now_s = live->snapshot.now_s + seconds;
        const auto alarms = live->snapshot.alarms;
        const auto ended = live->snapshot.ended;
        live->snapshot = fakeSnapshot(now_s);
        live->snapshot.alarms = alarms;
        live->snapshot.ended = ended;
        window->live().look();
    }
    void alarm(const std::vector<core::Alarm>& alarms)
    {
        live->snapshot.alarms = alarms;
        window->live().look();
    }
    void key(Qt::Key which) const { QTest::keyClick(page, which); }
    BigButton* button(const char* name) const { return page->findChild<BigButton*>(name); }
    AlarmBand* band() const { return page->findChild<AlarmBand*>("alarmBand"); }
    std::vector<ChannelTile*> tiles() const
    {
        std::vector<ChannelTile*> visible;
        for (ChannelTile* tile : page->findChildren<ChannelTile*>())
            if (tile->isVisible())
                visible.push_back(tile);
        return visible;
    }
    void picture(const QString& name) const
    {
        const QString where = qEnvironmentVariable("BOTHWAYS_PICTURES");
        if (!where.isEmpty())
            page->grab().save(where + "/" + name + ".png");
    }
    int nextRun() const { return page->session().number(); }

    using What = core::FoundBound::What;
    void found(What what, double at_s, std::optional<bool> outward = {})
    {
        live->found.push_back({what, at_s, outward, false, {}, {}});
        window->live().look();
    }

    storage::Rig rig;
    std::shared_ptr<FakeLive> live = std::make_shared<FakeLive>();
    std::vector<core::AlarmLevel> rung;
    RoadsidePage* page = nullptr;
};

TEST_F(WatchPageTest, TheRecordingHearsOfEveryStepOfARun)
{
    open(false);
    key(Qt::Key_S);
    pass(40);
    key(Qt::Key_G);
    pass(160);
    key(Qt::Key_E);
    EXPECT_EQ(live->told,
              (std::vector<std::string>{"begin 1 at 100", "mark gust at 140", "end at 300"}));
    ASSERT_EQ(live->begun.size(), 1U);
    EXPECT_EQ(live->begun[0].run.configuration, page->session().run()->configuration);
    QTest::keyClicks(page, "8.41");
    key(Qt::Key_Return);
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(study().runs[0].duration_s, 200.0);
    pass(30); // sooner, Start would be a second press that was not meant
    key(Qt::Key_S);
    key(Qt::Key_Z);
    EXPECT_EQ(live->told.back(), "forget") << "a start that is taken back is no run";
}

TEST_F(WatchPageTest, WhatIsRecordedBeginsAndEndsRuns)
{
    rig.runs = {core::RunsBy::Way::position, core::Geofence{47.5, 9.4, 47.5, 9.44, 50.0}};
    open(false);
    EXPECT_THAT(page->findChild<BigLabel*>("below")->text().toStdString(),
                testing::HasSubstr("at the gates"));
    pass(10);
    found(What::begins, 108.5, false); // 1.5 s ago
    ASSERT_EQ(page->session().state(), RoadsideSession::State::running);
    const std::string back = page->session().run()->direction;
    EXPECT_EQ(page->session().elapsed_s(), 1.5);
    pass(60);
    found(What::ends, 169.0);
    ASSERT_EQ(page->session().state(), RoadsideSession::State::ended);
    EXPECT_EQ(page->session().elapsed_s(), 60.5);
    EXPECT_EQ(live->told, (std::vector<std::string>{"begin 1 at 109", "end at 169"}));

    // The next one begins before the number is typed: it waits, and its start is not lost.
    pass(30);
    found(What::begins, 200.0, true);
    EXPECT_EQ(page->session().state(), RoadsideSession::State::ended);
    EXPECT_THAT(page->notice().toStdString(), testing::HasSubstr("the number of run 1"));
    QTest::keyClicks(page, "8.41");
    key(Qt::Key_Return);
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(study().runs[0].direction, back);
    EXPECT_EQ(study().runs[0].duration_s, 60.5);
    pass(10);
    ASSERT_EQ(page->session().state(), RoadsideSession::State::running);
    EXPECT_EQ(page->session().elapsed_s(), 10.0);
    EXPECT_NE(page->session().run()->direction, back);
    found(What::wasNone, 200.0);
    EXPECT_FALSE(page->session().hasRun());
    EXPECT_EQ(live->told.back(), "forget");
    EXPECT_THAT(page->session().undoWords().toStdString(), testing::HasSubstr("run 1 written"))
        << "what was done before can still be taken back";
}

TEST_F(WatchPageTest, ARunThatWaitsIsForgottenWithItsRecording)
{
    open(false);
    key(Qt::Key_S);
    pass(60);
    key(Qt::Key_E);
    found(What::begins, 160.0);
    window->live().stopAndWait();
    QTest::keyClicks(page, "8.41");
    key(Qt::Key_Return);
    ASSERT_EQ(study().runs.size(), 1U);
    live->snapshot = fakeSnapshot(5.0);
    ASSERT_TRUE(window->live().start(*window->document(), rig, now));
    window->live().look();
    EXPECT_FALSE(page->session().hasRun());
}

TEST_F(WatchPageTest, WhoPressesStartIsFirstAndARunThatNobodyTookIsSaid)
{
    open(false);
    key(Qt::Key_S);
    pass(5);
    found(What::begins, 104.0);
    found(What::wasNone, 104.0);
    EXPECT_EQ(page->session().elapsed_s(), 5.0) << "what was begun by hand goes on";
    pass(60);
    found(What::ends, 165.0);
    found(What::begins, 180.0);
    found(What::ends, 240.0);
    EXPECT_EQ(page->session().state(), RoadsideSession::State::ended);
    EXPECT_THAT(page->notice().toStdString(), testing::HasSubstr("cut it there afterwards"));
    QTest::keyClicks(page, "8.41");
    key(Qt::Key_Return);
    pass(5);
    EXPECT_FALSE(page->session().hasRun());
}

TEST_F(WatchPageTest, SixChannelsAreSeenAndAPressGivesTheNextOne)
{
    open(true);
    pass(1);
    ASSERT_EQ(tiles().size(), 6U);
    EXPECT_EQ(tiles()[0]->accessibleName(), "road speed");
    EXPECT_TRUE(tiles()[0]->accessibleDescription().contains("90.2 km/h"))
        << tiles()[0]->accessibleDescription().toStdString();
    QStringList before;
    for (const ChannelTile* tile : tiles())
        before += tile->accessibleName();
    QTest::mouseClick(tiles()[2], Qt::LeftButton);
    EXPECT_FALSE(before.contains(tiles()[2]->accessibleName()));
    EXPECT_EQ(preferences.watchedChannels().size(), 6);
    key(Qt::Key_S);
    EXPECT_EQ(tiles().size(), 6U);
    EXPECT_FALSE(before.contains(tiles()[2]->accessibleName())) << "it is kept";
}

TEST_F(WatchPageTest, AUnitIsNeverCutAtItsStroke)
{
    // "km/h" broken in two was as narrow as "km/", and drawn in one line it read "km/l".
    const QFont font = QApplication::font();
    const QSize room(QFontMetrics(font).horizontalAdvance("km/") + 2, 200);
    const int px = QFontInfo(font).pixelSize();
    EXPECT_FALSE(fits("km/h", font, room, px, Lines::one));
    for (const char* unit : {"km/h", "L/100 km", "m/s²"})
        EXPECT_GE(px, fittingPx(unit, font, room, 40, Lines::one)) << unit;
}

TEST_F(WatchPageTest, TheStripsOfTwoPartsAreToldApart)
{
    open(true);
    pass(1);
    ASSERT_EQ(tiles().size(), 6U);
    EXPECT_EQ(tiles()[2]->accessibleName(), "rotor speed, left");
    EXPECT_EQ(tiles()[2]->shownNow().part, 0);
    EXPECT_EQ(tiles()[3]->accessibleName(), "rotor speed, right");
    EXPECT_EQ(tiles()[3]->shownNow().part, 1);
    const QImage left = tiles()[2]->grab().toImage();
    const QImage right = tiles()[3]->grab().toImage();
    const auto has = [](const QImage& image, const QColor& colour) {
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                if (image.pixelColor(x, y) == colour)
                    return true;
        return false;
    };
    const Theme theme = Theme::of(page->palette());
    EXPECT_TRUE(has(left, theme.baseline) && !has(left, theme.device));
    EXPECT_TRUE(has(right, theme.device) && !has(right, theme.baseline));
}

TEST_F(WatchPageTest, BeyondItsLimitAChannelSaysSoInWordsAndNotByColourAlone)
{
    open(true);
    live->snapshot.channels[2].value = 3250.0;
    window->live().look();
    EXPECT_EQ(tiles()[2]->shownNow().place, ChannelBand::Place::outside);
    EXPECT_TRUE(tiles()[2]->accessibleDescription().contains("beyond the limit"));
    live->snapshot.channels[2].value = 3100.0;
    window->live().look();
    EXPECT_TRUE(tiles()[2]->accessibleDescription().contains("near the limit"));
    live->snapshot.channels[2].last_s = live->snapshot.now_s - 9.0;
    window->live().look();
    EXPECT_TRUE(tiles()[2]->accessibleDescription().contains("silent"));
}

TEST_F(WatchPageTest, WhileConsumptionIsHiddenNoFuelIsSeen)
{
    open(true);
    preferences.setWatchedChannels({"fuel_rate_l_per_h", "road_speed_kmh"});
    pass(1);
    EXPECT_EQ(tiles()[0]->accessibleName(), "fuel rate");
    ASSERT_TRUE(window->document()->setBlind(true));
    pass(1);
    EXPECT_EQ(tiles()[0]->accessibleName(), "road speed");
    for (const ChannelTile* tile : tiles())
        EXPECT_FALSE(tile->accessibleName().contains("fuel"));
}

TEST_F(WatchPageTest, AnAlarmIsSaidShownHeardAndAcknowledgedByOneKey)
{
    open(true);
    key(Qt::Key_S);
    pass(60);
    EXPECT_FALSE(band()->isVisible());
    alarm({fakeAlarm(core::AlarmLevel::warning, core::Rule::roadSpeed, nextRun())});
    EXPECT_TRUE(band()->isVisible());
    EXPECT_TRUE(band()->words().startsWith("Warning")) << band()->words().toStdString();
    EXPECT_EQ(rung, (std::vector<core::AlarmLevel>{core::AlarmLevel::warning}));
    EXPECT_TRUE(button("alarmHeard")->isVisible());
    EXPECT_GE(band()->textContrast(), 7.0);
    key(Qt::Key_H);
    EXPECT_FALSE(button("alarmHeard")->isVisible());
    EXPECT_TRUE(band()->isVisible()) << "the trouble is still there";
    pass(30);
    EXPECT_EQ(rung.size(), 1U);
    alarm({});
    EXPECT_FALSE(band()->isVisible());
}

TEST_F(WatchPageTest, ASpoiledRunIsDiscardedByOneKeyWithReasonAndEvidence)
{
    open(true);
    const std::size_t before = study().runs.size();
    key(Qt::Key_S);
    const int number = nextRun();
    pass(60);
    alarm({fakeAlarm(core::AlarmLevel::spoiled, core::Rule::overspeed, number)});
    ASSERT_TRUE(button("discardForFinding")->isVisible());
    EXPECT_EQ(button("discardForFinding")->keyText(), "A");
    key(Qt::Key_A);
    ASSERT_EQ(study().runs.size(), before + 1);
    ASSERT_NE(window->document()->runByNumber(number), nullptr);
    const core::Run& run = *window->document()->runByNumber(number);
    ASSERT_TRUE(run.discard);
    EXPECT_EQ(run.discard->reason, "overspeed");
    EXPECT_TRUE(QString::fromStdString(run.discard->evidence).contains("3410"))
        << run.discard->evidence;
    EXPECT_TRUE(page->notice().contains("Turn and drive it again")) << page->notice().toStdString();
    EXPECT_TRUE(button("start")->isVisible());
    key(Qt::Key_Z);
    EXPECT_EQ(study().runs.size(), before) << "and taken back by one";
}

TEST_F(WatchPageTest, WhatIsFoundWhenTheRunEndsIsSaidUntilItIsAnswered)
{
    open(true);
    key(Qt::Key_S);
    const int number = nextRun();
    pass(200);
    key(Qt::Key_E);
    core::Screening ended;
    ended.findings.push_back(
        fakeAlarm(core::AlarmLevel::spoiled, core::Rule::interrupted, number).finding);
    live->snapshot.ended = ended;
    pass(1);
    EXPECT_TRUE(band()->isVisible());
    EXPECT_EQ(rung.size(), 1U);
    QTest::keyClicks(page, "8.2");
    key(Qt::Key_Return);
    if (page->session().state() == RoadsideSession::State::ended)
        key(Qt::Key_Return); // a question about it
    if (page->session().isUnanswered())
        key(Qt::Key_K);
    ASSERT_EQ(page->session().state(), RoadsideSession::State::written);
    pass(1);
    EXPECT_FALSE(band()->isVisible()) << "it was written all the same";
}

TEST_F(WatchPageTest, TroubleWithAnInstrumentStandsInFrontInWords)
{
    open(true);
    live->snapshot.instruments[1].is = storage::InstrumentState::Is::silent;
    live->snapshot.instruments[1].last_s = live->snapshot.now_s - 12.0;
    window->live().look();
    const QString words = page->findChild<BigLabel*>("instruments")->text();
    EXPECT_TRUE(words.startsWith(QString::fromUtf8("▲ gps: silent for 0:12")))
        << words.toStdString();
    EXPECT_TRUE(words.contains(QString::fromUtf8("● board: reading")));
}

TEST_F(WatchPageTest, TheDistanceLeftIsThatOfTheStretch)
{
    open(true); // 5 km
    key(Qt::Key_S);
    live->snapshot.distance_km = 1.9;
    window->live().look();
    EXPECT_EQ(page->findChild<BigLabel*>("distance")->text(),
              QString("3.1") + QChar(QChar::Nbsp) + "km to go");
}

TEST_F(WatchPageTest, ClosingTheWindowAsksFirstAndStopsTheRecordingWhole)
{
    open(false);
    key(Qt::Key_Escape);
    EXPECT_FALSE(window->close());
    auto* box = openDialog<QMessageBox>("stopRecordingFirst");
    ASSERT_NE(box, nullptr);
    EXPECT_EQ(live->stops, 0);
    QTest::keyClick(box, Qt::Key_Escape);
    EXPECT_TRUE(window->live().isRecording());
    EXPECT_TRUE(waitFor([&] { return !window->findChild<QMessageBox*>("stopRecordingFirst"); }));
    EXPECT_FALSE(window->close());
    box = openDialog<QMessageBox>("stopRecordingFirst");
    ASSERT_NE(box, nullptr);
    QTest::mouseClick(box->findChild<QPushButton*>("stopAndGoOn"), Qt::LeftButton);
    EXPECT_TRUE(waitFor([&] { return !window->isVisible(); }));
    EXPECT_EQ(live->stops, 1);
}

TEST_F(WatchPageTest, TheStatusBarSaysThatItRecordsAndStopsByAKey)
{
    open(false);
    key(Qt::Key_Escape);
    auto* state = find<QLabel>("recordingState");
    EXPECT_TRUE(state->isVisible());
    EXPECT_TRUE(state->text().contains("recording 1:40")) << state->text().toStdString();
    EXPECT_FALSE(window->action("startRecording")->isEnabled());
    trigger("stopRecording");
    EXPECT_TRUE(waitFor([&] { return !window->live().isStopping(); }));
    EXPECT_FALSE(state->isVisible());
    EXPECT_TRUE(window->action("startRecording")->isEnabled());
    EXPECT_EQ(live->stops, 1);
}

TEST_F(WatchPageTest, AFrameOfEightChannelsDrawsNoMoreThanItsPixelsShow)
{
    open(true);
    key(Qt::Key_S);
    page->resize(1024, 768);
    pass(1);
    auto* panel = tiles().front()->parentWidget();
    QPicture frame; // the orders to the painter, and the bytes that they take
    panel->render(&frame);
    RecordProperty("frame_bytes", std::to_string(frame.size()));
    EXPECT_LT(frame.size(), 100'000U); // six strips of 300 points, and words
}

TEST_F(WatchPageTest, EverythingFitsAtArmsLengthByDayAndNightInBothLanguages)
{
    open(true);
    const auto check = [&](const QString& name) {
        page->showNormal();
        page->resize(1024, 768);
        QCoreApplication::processEvents();
        pass(1);
        QCoreApplication::processEvents();
        picture(name);
        for (const BigButton* made : page->findChildren<BigButton*>()) {
            EXPECT_TRUE(!made->isVisible() || made->isWhole())
                << name.toStdString() << ": " << made->objectName().toStdString();
        }
        EXPECT_TRUE(!band()->isVisible() || band()->isWhole()) << name.toStdString();
        for (const ChannelTile* tile : tiles()) {
            EXPECT_FALSE(tile->accessibleName().isEmpty());
            EXPECT_GT(tile->height(), 60) << name.toStdString();
        }
    };
    check("watch_ready");
    key(Qt::Key_S);
    live->snapshot.distance_km = 1.9;
    check("watch_running");
    const int number = nextRun();
    alarm({fakeAlarm(core::AlarmLevel::warning, core::Rule::roadSpeed, number)});
    check("watch_warning");
    alarm({fakeAlarm(core::AlarmLevel::spoiled, core::Rule::overspeed, number),
           fakeAlarm(core::AlarmLevel::note, core::Rule::passingTraffic, number)});
    check("watch_spoiled");
    key(Qt::Key_T);
    check("watch_spoiled_night");
    alarm({fakeAlarm(core::AlarmLevel::note, core::Rule::passingTraffic, number)});
    check("watch_note_night");
}

} // namespace bothways::app::tests
