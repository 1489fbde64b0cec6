// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/big_button.h"
#include "app/desktop/look/big_label.h"
#include "app/desktop/roadside/roadside_page.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QLineEdit>
#include <QTest>

namespace bothways::app::tests {

/// What is asked once a block, by the keys that a companion presses.
class RoadsideBlockTest : public WindowTest {
protected:
    void open(const char* list)
    {
        window->newStudy();
        core::StudyProperties properties = study().properties;
        properties.walk_round = list;
        ASSERT_TRUE(window->document()->setProperties(properties));
        trigger("roadside");
        page = window->roadside();
        ASSERT_NE(page, nullptr);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(page));
    }
    BigButton* button(const char* name) const
    {
        auto* found = page->findChild<BigButton*>(name);
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    QString label(const char* name) const
    {
        auto* found = page->findChild<BigLabel*>(name);
        EXPECT_NE(found, nullptr) << name;
        return found ? found->text() : QString();
    }
    void key(Qt::Key which) const { QTest::keyClick(page, which); }
    /// Types an answer, Enter.
    void answer(const QString& text) const
    {
        auto* line = page->findChild<QLineEdit*>("words");
        ASSERT_TRUE(line->isVisible());
        line->setText(text);
        key(Qt::Key_Return);
    }
    void drive(const char* typed, Qt::Key end = Qt::Key_E)
    {
        now = now.addSecs(60);
        key(Qt::Key_S);
        now = now.addSecs(200);
        key(end);
        QTest::keyClicks(page, typed);
        key(Qt::Key_Return);
    }
    RoadsidePage* page = nullptr;
};

TEST_F(RoadsideBlockTest, TheWalkRoundIsOneLargeQuestionAfterTheOther)
{
    open("belts on; tyre pressure = kPa +- 10; no wire hangs");
    ASSERT_TRUE(button("walkRound")->isVisible());
    EXPECT_EQ(button("walkRound")->keyText(), "W");
    EXPECT_TRUE(label("todo").contains("Walk round the car"));
    key(Qt::Key_W);
    EXPECT_EQ(label("asked"), "Walk-round, 1 of 3: belts on. In order?");
    paint(*page, "walk_question");
    key(Qt::Key_Y);
    paint(*page, "walk_number");
    EXPECT_TRUE(label("wordsAsked").contains("2 of 3: tyre pressure, in kPa"))
        << label("wordsAsked").toStdString();
    answer("23o");
    EXPECT_TRUE(page->notice().contains("is no number")) << page->notice().toStdString();
    answer("230");
    EXPECT_EQ(label("asked"), "Walk-round, 3 of 3: no wire hangs. In order?");
    key(Qt::Key_N);
    const auto made = window->document()->walkRounds();
    ASSERT_EQ(made.size(), 1U);
    EXPECT_EQ(made[0].ticks[1].number, 230.0);
    EXPECT_TRUE(made[0].ticks[0].ticked);
    EXPECT_FALSE(made[0].ticks[2].ticked);
    EXPECT_TRUE(page->notice().contains("not ticked: 1")) << page->notice().toStdString();
    EXPECT_FALSE(label("todo").contains("Walk round the car"));
    drive("8.41");
    ASSERT_EQ(study().runs.size(), 1U);
    ASSERT_EQ(study().runs[0].extra.size(), 1U);
    EXPECT_EQ(study().runs[0].extra[0].second, "230");
    EXPECT_FALSE(label("todo").contains("Walk round the car")) << "once a block";
    key(Qt::Key_C); // the other configuration begins a block
    EXPECT_TRUE(label("todo").contains("Walk round the car"));
    key(Qt::Key_W);
    key(Qt::Key_Y);
    answer("245");
    key(Qt::Key_Y);
    EXPECT_TRUE(page->notice().contains("245 kPa now, 230 before")) << page->notice().toStdString();
}

TEST_F(RoadsideBlockTest, WhoGoesBackGivesTheWalkRoundUpAndABlockWithoutOneIsANote)
{
    open("belts on; no wire hangs");
    key(Qt::Key_W);
    key(Qt::Key_Y);
    key(Qt::Key_Escape);
    EXPECT_TRUE(button("start")->isVisible());
    EXPECT_TRUE(window->document()->walkRounds().empty());
    key(Qt::Key_V); // other words end no walk-round
    answer("20");
    EXPECT_TRUE(button("start")->isVisible());
    EXPECT_TRUE(window->document()->walkRounds().empty());
    now = now.addSecs(60);
    key(Qt::Key_S);
    EXPECT_TRUE(label("reminder").contains("without its walk-round"))
        << label("reminder").toStdString();
}

TEST_F(RoadsideBlockTest, WithoutAListNothingIsAskedButTheWeather)
{
    open("");
    EXPECT_FALSE(button("walkRound")->isVisible());
    EXPECT_TRUE(button("weather")->isVisible());
}

TEST_F(RoadsideBlockTest, TheWeatherOfTheBlockGoesIntoTheNextRunThatCounts)
{
    open("");
    EXPECT_TRUE(page->session().isWeatherDue());
    key(Qt::Key_K);
    EXPECT_TRUE(label("wordsAsked").contains("1 of 5")) << label("wordsAsked").toStdString();
    answer("14,5");
    answer("fast");
    EXPECT_TRUE(page->notice().contains("Expected a number")) << page->notice().toStdString();
    answer("2.1");
    answer("400");
    EXPECT_TRUE(page->notice().contains("Expected a number from 0 to 360"))
        << page->notice().toStdString();
    answer("270");
    answer("");
    answer("");
    EXPECT_FALSE(page->session().isWeatherDue());
    drive("", Qt::Key_E);
    key(Qt::Key_X); // spoiled: the same weather is the next run's
    key(Qt::Key_1);
    drive("8.41");
    drive("8.30");
    ASSERT_EQ(study().runs.size(), 3U);
    EXPECT_FALSE(study().runs[0].counted());
    for (const std::size_t run : {0U, 1U}) {
        EXPECT_EQ(study().runs[run].temperature_c, 14.5) << run;
        EXPECT_EQ(study().runs[run].wind_ms, 2.1) << run;
        EXPECT_EQ(study().runs[run].wind_from_deg, 270.0) << run;
        EXPECT_FALSE(study().runs[run].pressure_hpa) << run;
    }
    EXPECT_FALSE(study().runs[2].temperature_c) << "nothing is noted that nobody saw";
    EXPECT_FALSE(page->session().isWeatherDue());
    key(Qt::Key_C);
    EXPECT_TRUE(page->session().isWeatherDue()) << "the next block";
}

TEST_F(RoadsideBlockTest, TheWeatherOutlivesAClosedLid)
{
    open("");
    key(Qt::Key_K);
    for (const char* typed : {"14", "", "", "", ""})
        answer(typed);
    RoadsideSession again(*window->document(), preferences, clock());
    EXPECT_EQ(again.weatherText(RunField::temperature), "14");
    EXPECT_EQ(again.weatherText(RunField::wind), "");
}

} // namespace bothways::app::tests
