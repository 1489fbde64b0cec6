// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/walk_dialog.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>

namespace bothways::app::tests {

class WalkDialogTest : public WindowTest {
protected:
    WalkDialogTest() { window->newStudy(); }
    WalkDialog* openWalk() const
    {
        trigger("walkRound");
        return openDialog<WalkDialog>("walkDialog");
    }
    template <class Widget>
    static Widget* in(QWidget* dialog, const char* name)
    {
        auto* found = dialog->findChild<Widget*>(name);
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    /// A walk-round with this number, of a list whose third line asks for one.
    void walk(const QString& number) const
    {
        auto* dialog = openWalk();
        ASSERT_NE(dialog, nullptr);
        in<QCheckBox>(dialog, "walkTick1")->setChecked(true);
        in<QLineEdit>(dialog, "walkNumber3")->setText(number);
        in<QPushButton>(dialog, "walkOk")->click();
        EXPECT_TRUE(waitFor([&] { return !window->findChild<WalkDialog*>("walkDialog"); }));
    }
    void setList(const char* list) const
    {
        core::StudyProperties properties = study().properties;
        properties.walk_round = list;
        ASSERT_TRUE(window->document()->setProperties(properties));
    }
};

TEST_F(WalkDialogTest, OffersAFirstListAndTheUsersLastOneToTheNextStudy)
{
    auto* dialog = openWalk();
    ASSERT_NE(dialog, nullptr);
    auto* list = in<QPlainTextEdit>(dialog, "walkList");
    ASSERT_TRUE(list->isVisible());
    EXPECT_GT(list->toPlainText().count('\n'), 2) << list->toPlainText().toStdString();
    paint(*dialog, "walk_list");
    list->setPlainText("belts on\nbelts on");
    in<QPushButton>(dialog, "walkOk")->click();
    EXPECT_TRUE(in<QLabel>(dialog, "walkProblem")->isVisible());
    EXPECT_TRUE(study().properties.walk_round.empty()) << "two lines alike are refused";
    list->setPlainText("belts on\n\n no wire hangs\ntyre pressure = kPa ± 10\n");
    in<QPushButton>(dialog, "walkOk")->click();
    EXPECT_EQ(study().properties.walk_round, "belts on; no wire hangs; tyre pressure = kPa +- 10");
    EXPECT_TRUE(in<QCheckBox>(dialog, "walkTick3")->isVisible()) << "it can be ticked at once";
    dialog->reject();
    EXPECT_TRUE(window->document()->walkRounds().empty());
    window->newStudy();
    dialog = openWalk();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(in<QPlainTextEdit>(dialog, "walkList")->toPlainText(),
              "belts on\nno wire hangs\ntyre pressure = kPa +- 10");
}

TEST_F(WalkDialogTest, NotesWhatWasTickedAndItsNumbersGoIntoTheRun)
{
    setList("belts on; no wire hangs; tyre pressure = kPa +- 10");
    walk("230");
    const auto made = window->document()->walkRounds();
    ASSERT_EQ(made.size(), 1U);
    EXPECT_EQ(made[0].run, 1);
    EXPECT_TRUE(made[0].ticks[0].ticked);
    EXPECT_FALSE(made[0].ticks[1].ticked);
    EXPECT_TRUE(made[0].ticks[2].ticked) << "who read the number has looked";
    EXPECT_EQ(made[0].ticks[2].number, 230.0);
    EXPECT_EQ(message(), "Walk-round before run 1: lines that are not ticked: 1.");
    drive("8.41");
    ASSERT_EQ(study().runs.size(), 1U);
    ASSERT_EQ(study().runs[0].extra.size(), 1U);
    EXPECT_EQ(study().runs[0].extra[0].first, "tyre pressure (kPa)");
    EXPECT_EQ(study().runs[0].extra[0].second, "230");
    drive("8.38");
    EXPECT_TRUE(study().runs[1].extra.empty()) << "into the run that came next alone";
}

TEST_F(WalkDialogTest, SaysWhileItIsTypedWhatIsTooFarFromTheLast)
{
    setList("belts on; no wire hangs; tyre pressure = kPa +- 10");
    walk("230");
    auto* dialog = openWalk();
    ASSERT_NE(dialog, nullptr);
    auto* number = in<QLineEdit>(dialog, "walkNumber3");
    auto* problem = in<QLabel>(dialog, "walkProblem");
    EXPECT_FALSE(problem->isVisible());
    number->setText("240");
    EXPECT_FALSE(problem->isVisible());
    number->setText("241");
    EXPECT_EQ(problem->text(), "Tyre pressure: 241 kPa now, 230 before: more than 10 apart.");
    EXPECT_TRUE(in<QPushButton>(dialog, "walkOk")->isEnabled()) << "it is noted all the same";
    paint(*dialog, "walk_dialog");
    number->setText("24x");
    EXPECT_TRUE(problem->text().contains("expected a number")) << problem->text().toStdString();
    EXPECT_FALSE(in<QPushButton>(dialog, "walkOk")->isEnabled());
}

} // namespace bothways::app::tests
