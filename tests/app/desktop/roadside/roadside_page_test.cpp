// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one page, from the start of a run to its end, with the fixture that all of it shares.
#include "app/desktop/look/big_button.h"
#include "app/desktop/look/big_label.h"
#include "app/desktop/roadside/roadside_page.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QAction>
#include <QApplication>
#include <QLineEdit>
#include <QPointingDevice>
#include <QTest>

namespace bothways::app::tests {

/// The mode, opened from the window's menu over an empty study.
class RoadsidePageTest : public WindowTest {
protected:
    RoadsidePageTest()
    {
        window->newStudy();
        trigger("roadside");
        page = window->roadside();
        if (page) {
            EXPECT_TRUE(QTest::qWaitForWindowExposed(page));
        }
    }
    BigButton* button(const char* name) const
    {
        auto* found = page->findChild<BigButton*>(name);
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    void passSeconds(int seconds) { now = now.addSecs(seconds); }
    void key(Qt::Key which) const { QTest::keyClick(page, which); }
    RoadsideSession::State state() const { return page->session().state(); }

    RoadsidePage* page = nullptr;
};

TEST_F(RoadsidePageTest, ARunIsDrivenFromTheKeyboardAlone)
{
    ASSERT_NE(page, nullptr);
    key(Qt::Key_S);
    passSeconds(40);
    key(Qt::Key_G);
    passSeconds(160);
    key(Qt::Key_E);
    QTest::keyClicks(page, "8.41");
    key(Qt::Key_Return);
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(study().runs[0].duration_s, 200.0);
    EXPECT_EQ(study().runs[0].marks.size(), 1U);
    EXPECT_TRUE(page->notice().contains("Run 1")) << page->notice().toStdString();
    key(Qt::Key_Escape);
    EXPECT_EQ(window->roadside(), nullptr);
}

TEST_F(RoadsidePageTest, WhatIsFarOffHasAButtonForWhatWasMeantAndEnterIsNoAnswer)
{
    ASSERT_NE(page, nullptr);
    const auto drive = [&](const char* typed) {
        passSeconds(60);
        key(Qt::Key_S);
        passSeconds(200);
        key(Qt::Key_E);
        QTest::keyClicks(page, typed);
        key(Qt::Key_Return);
    };
    drive("8.41");
    drive("8.30");
    drive("82.2");
    for (int i = 0; i < 3; ++i)
        key(Qt::Key_Return);
    EXPECT_EQ(study().runs.size(), 2U);
    EXPECT_TRUE(page->notice().contains("Did you mean 8.22?")) << page->notice().toStdString();
    EXPECT_FALSE(button("ok")->isVisible());
    EXPECT_TRUE(button("takeLikely")->isVisible());
    EXPECT_TRUE(button("takeLikely")->text().contains("8.22"));
    EXPECT_EQ(button("takeLikely")->keyText(), "Y");
    key(Qt::Key_Y);
    ASSERT_EQ(study().runs.size(), 3U);
    EXPECT_EQ(study().runs.back().consumption->value, 8.22);
    drive("71.5");
    QTest::keyClick(page, Qt::Key_Space); // nor is what had the keyboard
    EXPECT_EQ(study().runs.size(), 3U);
    EXPECT_EQ(button("keepTyped")->keyText(), "K");
    QTest::mouseClick(button("keepTyped"), Qt::LeftButton);
    ASSERT_EQ(study().runs.size(), 4U);
    EXPECT_EQ(study().runs.back().consumption->value, 71.5);
    EXPECT_TRUE(button("start")->isVisible());
}

TEST_F(RoadsidePageTest, DayAndNightAreTheModesOwn)
{
    ASSERT_NE(page, nullptr);
    const ThemeChoice before = preferences.theme();
    const bool dark = Theme::of(page->palette()).dark;
    key(Qt::Key_T);
    EXPECT_NE(Theme::of(page->palette()).dark, dark);
    EXPECT_EQ(preferences.theme(), before);
    EXPECT_EQ(Theme::of(window->palette()).dark, dark);
    key(Qt::Key_Escape);
    trigger("roadside");
    page = window->roadside();
    ASSERT_NE(page, nullptr);
    EXPECT_NE(Theme::of(page->palette()).dark, dark) << "it is kept for the next time";
}

TEST_F(RoadsidePageTest, SomethingElseIsNotedWithoutAKeyboardAndTheRunCanEndMeanwhile)
{
    ASSERT_NE(page, nullptr);
    key(Qt::Key_S);
    passSeconds(40);
    key(Qt::Key_O);
    EXPECT_TRUE(page->findChild<BigLabel*>("wordsElapsed")->isVisible());
    EXPECT_EQ(page->findChild<BigLabel*>("wordsElapsed")->text(), "0:40");
    QTest::mouseClick(button("usualWords0"), Qt::LeftButton);
    EXPECT_TRUE(button("end")->isVisible());
    EXPECT_EQ(page->session().run()->marks.back().words,
              button("usualWords0")->text().toStdString());
    passSeconds(40);
    key(Qt::Key_O);
    QTest::keyClicks(page->findChild<QLineEdit*>("words"), "a dog");
    passSeconds(120);
    QTest::keyClick(page->findChild<QLineEdit*>("words"), Qt::Key_F10);
    EXPECT_EQ(state(), RoadsideSession::State::ended);
    EXPECT_EQ(page->session().run()->marks.back().words, "a dog");
    EXPECT_EQ(page->session().elapsed_s(), 200.0);
}

TEST_F(RoadsidePageTest, ARunIsDrivenByTouchAlone)
{
    ASSERT_NE(page, nullptr);
    QPointingDevice* screen = QTest::createTouchDevice();
    const auto touch = [&](const char* name) {
        BigButton* target = button(name);
        ASSERT_TRUE(target->isVisible() && target->isEnabled()) << name;
        const QPoint at = target->rect().center();
        QTest::touchEvent(target, screen).press(0, at, target);
        QTest::touchEvent(target, screen).release(0, at, target);
    };
    touch("start");
    passSeconds(30);
    touch("markTraffic");
    passSeconds(170);
    touch("end");
    for (const char* name : {"digit8", "decimalSign", "digit4", "digit9", "backspace", "digit1"})
        touch(name);
    touch("ok");
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(study().runs[0].consumption->value, 8.41);
    EXPECT_EQ(study().runs[0].marks.front().at_s, 30.0);
    touch("discard");
    touch("reason_passing_traffic");
    EXPECT_EQ(study().runs[0].discard->reason, "passing_traffic");
    touch("undo");
    EXPECT_TRUE(study().runs[0].counted());
}

TEST_F(RoadsidePageTest, EscapeAsksWhileARunIsUnderWayAndTheWindowOffersToGoOn)
{
    ASSERT_NE(page, nullptr);
    key(Qt::Key_S);
    passSeconds(40);
    key(Qt::Key_Escape);
    ASSERT_NE(window->roadside(), nullptr);
    EXPECT_TRUE(button("choice0")->isVisible());
    key(Qt::Key_S); // stay
    EXPECT_EQ(state(), RoadsideSession::State::running);
    EXPECT_TRUE(button("end")->isVisible());
    key(Qt::Key_Escape);
    key(Qt::Key_L);
    EXPECT_EQ(window->roadside(), nullptr);
    const QString file = window->document()->path();
    ASSERT_TRUE(window->closeStudy());
    ASSERT_TRUE(window->openFile(file));
    EXPECT_TRUE(message().contains("under way")) << message().toStdString();
    trigger("roadside");
    page = window->roadside();
    ASSERT_NE(page, nullptr);
    key(Qt::Key_G);
    EXPECT_EQ(state(), RoadsideSession::State::running);
    EXPECT_EQ(page->session().elapsed_s(), 40.0);
}

TEST_F(RoadsidePageTest, AReasonInWordsNeedsThem)
{
    ASSERT_NE(page, nullptr);
    key(Qt::Key_S);
    passSeconds(40);
    key(Qt::Key_X);
    key(Qt::Key_O);
    auto* line = page->findChild<QLineEdit*>("words");
    ASSERT_TRUE(line->isVisible());
    QTest::keyClick(line, Qt::Key_Return);
    EXPECT_TRUE(page->notice().contains("needs words")) << page->notice().toStdString();
    QTest::keyClicks(line, "a tractor, sx");
    QTest::keyClick(line, Qt::Key_Return);
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(study().runs[0].discard->evidence, "a tractor, sx");
}

TEST_F(RoadsidePageTest, TheWarningOfATimerGoesOnWithTheClock)
{
    ASSERT_NE(page, nullptr);
    core::StudyProperties properties = study().properties;
    properties.limits = {{"stretch.km", 5.0}, {"road_speed.target_kmh", 90.0}}; // 200 s a run
    properties.timed_accessories = {{"windscreen", 600.0, 10.0}};
    ASSERT_TRUE(window->document()->setProperties(properties));
    key(Qt::Key_F2);
    const auto comesToSay = [&](const char* words) {
        return QTest::qWaitFor([&] { return page->notice().contains(words); }, 30'000);
    };
    EXPECT_FALSE(page->notice().contains("windscreen")) << page->notice().toStdString();
    passSeconds(450);
    EXPECT_TRUE(comesToSay("would drop out in 2:30")) << page->notice().toStdString();
    passSeconds(30);
    EXPECT_TRUE(comesToSay("would drop out in 2:00")) << page->notice().toStdString();
    key(Qt::Key_S);
    EXPECT_TRUE(comesToSay("drops out in 2:00, before the end")) << page->notice().toStdString();
    passSeconds(125);
    EXPECT_TRUE(comesToSay("has dropped out")) << page->notice().toStdString();
}

TEST_F(RoadsidePageTest, ARunFoundUnderWayIsGoneOnWithDiscardedOrForgotten)
{
    const auto found = [&](Qt::Key answer) {
        key(Qt::Key_S);
        passSeconds(40);
        key(Qt::Key_Escape);
        key(Qt::Key_L);
        ASSERT_EQ(window->roadside(), nullptr);
        trigger("roadside");
        page = window->roadside();
        ASSERT_NE(page, nullptr);
        EXPECT_TRUE(button("choice0")->isVisible());
        EXPECT_TRUE(button("choice2")->isVisible());
        key(answer);
    };
    ASSERT_NE(page, nullptr);
    found(Qt::Key_F);
    EXPECT_EQ(state(), RoadsideSession::State::ready);
    EXPECT_TRUE(study().runs.empty());
    EXPECT_TRUE(page->notice().contains("forgotten")) << page->notice().toStdString();
    passSeconds(60);
    found(Qt::Key_X);
    key(Qt::Key_Escape); // no reason after all: the run goes on
    EXPECT_EQ(state(), RoadsideSession::State::running);
    key(Qt::Key_X);
    button("reason_passing_traffic")->click();
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(study().runs[0].discard->reason, "passing_traffic");
    passSeconds(60);
    found(Qt::Key_Escape); // not answered: it is asked again
    EXPECT_EQ(window->roadside(), nullptr);
    trigger("roadside");
    page = window->roadside();
    ASSERT_NE(page, nullptr);
    EXPECT_TRUE(button("choice0")->isVisible());
    key(Qt::Key_G);
    EXPECT_EQ(state(), RoadsideSession::State::running);
}

TEST_F(RoadsidePageTest, TabGoesInDrivingOrderAndEveryButtonHasAName)
{
    ASSERT_NE(page, nullptr);
    QStringList order;
    QWidget* next = button("start");
    for (int i = 0; i < 500 && !order.contains(next->objectName()); ++i) {
        if (qobject_cast<BigButton*>(next))
            order += next->objectName();
        do
            next = next->nextInFocusChain();
        while (!qobject_cast<BigButton*>(next));
    }
    const QStringList driving{"start", "configuration", "markTraffic", "end", "digit1", "digit0",
                              "ok",    "discard",       "leave"};
    for (int i = 1; i < driving.size(); ++i)
        EXPECT_LT(order.indexOf(driving[i - 1]), order.indexOf(driving[i]))
            << driving[i].toStdString();
    for (const BigButton* made : page->findChildren<BigButton*>()) {
        if (made->isVisible()) {
            EXPECT_FALSE(made->accessibleName().isEmpty()) << made->objectName().toStdString();
        }
    }
}

namespace {

struct Look {
    int width, height;
    bool dark, large, longWords;
};

/// Everything on show is inside the page and whole; nothing overlaps.
void expectWhole(RoadsidePage& page, const std::string& where)
{
    QCoreApplication::processEvents();
    std::vector<std::pair<QRect, std::string>> places;
    const auto inside = [&](const QWidget* part) {
        const std::string name = part->objectName().toStdString();
        const QRect at(part->mapTo(&page, QPoint()), part->size());
        EXPECT_TRUE(page.rect().contains(at)) << where << ": " << name << " is outside";
        for (const auto& [other, otherName] : places)
            EXPECT_FALSE(other.intersects(at)) << where << ": " << name << " on " << otherName;
        places.emplace_back(at, name);
    };
    for (const BigButton* made : page.findChildren<BigButton*>()) {
        if (!made->isVisible())
            continue;
        inside(made);
        EXPECT_TRUE(made->isWhole()) << where << ": " << made->objectName().toStdString() << " '"
                                     << made->text().toStdString() << "' is cut";
        EXPECT_GE(made->textContrast(), made->isEnabled() ? 7.0 : 4.0)
            << where << ": " << made->objectName().toStdString();
    }
    for (const BigLabel* label : page.findChildren<BigLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty())
            continue;
        inside(label);
        EXPECT_TRUE(label->isWhole()) << where << ": '" << label->text().toStdString()
                                      << "' is cut, " << label->width() << "x" << label->height();
    }
}

void keepPicture(RoadsidePage& page, const std::string& name)
{
    const QString folder = qEnvironmentVariable("BOTHWAYS_PICTURES");
    if (!folder.isEmpty()) {
        EXPECT_TRUE(
            page.grab().save(folder + "/roadside_" + QString::fromStdString(name) + ".png"));
    }
}

} // namespace

class RoadsideLooksTest : public RoadsidePageTest, public testing::WithParamInterface<Look> {};

// Long: one run through every state, a look at each.
TEST_P(RoadsideLooksTest, NothingIsCutInAnyState)
{
    ASSERT_NE(page, nullptr);
    const Look look = GetParam();
    const QFont usual = QApplication::font();
    if (look.large) {
        QFont larger = usual;
        larger.setPointSizeF(usual.pointSizeF() * 1.35);
        QApplication::setFont(larger);
    }
    QApplication::setPalette((look.dark ? Theme::night() : Theme::light()).palette());
    page->showNormal();
    page->resize(look.width, look.height);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return page->size() == QSize(look.width, look.height); }, 30'000))
        << page->width() << "x" << page->height();
    const std::string size = std::to_string(look.width) + (look.dark ? "_dark" : "_light") +
                             (look.large ? "_large" : "") + (look.longWords ? "_long" : "");
    const auto check = [&](const char* state) {
        expectWhole(*page, size + " " + state);
        keepPicture(*page, size + "_" + state);
    };
    check("nothing_planned");
    core::StudyProperties properties = study().properties;
    properties.plan = core::PlannedStudy{"ABA", 4, 1.0, 0.95};
    properties.limits = {{"stretch.km", 5.0}, {"road_speed.target_kmh", 90.0}};
    properties.timed_accessories = {{"heated_windscreen", 600.0, 10.0}, {"seats", 60.0, 15.0}};
    if (look.longWords) {
        properties.baseline = "Ausgangszustand";
        properties.timed_accessories.front().name = "Windschutzscheibenheizung";
    }
    ASSERT_TRUE(window->document()->setProperties(properties));
    check("ready");
    key(Qt::Key_F2);
    passSeconds(450);
    QTest::qWait(250);
    check("timers");
    key(Qt::Key_S);
    passSeconds(67);
    key(Qt::Key_G);
    passSeconds(133);
    QTest::qWait(250);
    check("running");
    key(Qt::Key_O);
    check("words");
    key(Qt::Key_Escape);
    key(Qt::Key_X);
    check("discard");
    key(Qt::Key_Escape);
    key(Qt::Key_Escape);
    check("leaving");
    key(Qt::Key_S);
    key(Qt::Key_E);
    QTest::keyClicks(page, "8.41");
    check("typing");
    passSeconds(2);
    key(Qt::Key_Return);
    if (state() == RoadsideSession::State::ended) {
        check("questioned");
        key(Qt::Key_Return);
    }
    if (state() == RoadsideSession::State::ended) { // far off
        key(Qt::Key_K);
    }
    check("written");
    EXPECT_EQ(study().runs.size(), 1U);
    QApplication::setFont(usual);
    QApplication::setPalette(QPalette());
}

INSTANTIATE_TEST_SUITE_P(Sizes, RoadsideLooksTest,
                         testing::Values(Look{1280, 800, false, false, false},
                                         Look{1280, 800, true, true, true},
                                         Look{800, 480, false, true, true},
                                         Look{800, 480, true, false, false}));

} // namespace bothways::app::tests
