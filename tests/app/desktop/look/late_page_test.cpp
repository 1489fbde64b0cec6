// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/late_page.h"

#include <QApplication>
#include <QLineEdit>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace bothways::app::tests {
namespace {

/// A window with a field, a place for a page, and another field below it.
class LatePageTest : public testing::Test {
protected:
    LatePageTest()
    {
        auto* box = new QVBoxLayout(&window);
        for (QWidget* part : std::initializer_list<QWidget*>{&above, &place, &below})
            box->addWidget(part);
    }
    ~LatePageTest() override
    {
        for (QWidget* part : std::initializer_list<QWidget*>{&above, &place, &below})
            part->setParent(nullptr);
    }
    QWidget* make()
    {
        ++made;
        auto* page = new QWidget;
        auto* box = new QVBoxLayout(page);
        for (const char* name : {"first", "second"}) {
            auto* field = new QLineEdit;
            field->setObjectName(name);
            box->addWidget(field);
        }
        return page;
    }

    QWidget window;
    QLineEdit above, below;
    LatePage place{[this] { return make(); }};
    int made = 0;
};

TEST_F(LatePageTest, MakesItsPageOnceWhenItIsSeen)
{
    place.hide();
    window.show();
    EXPECT_EQ(place.made(), nullptr);
    place.show();
    ASSERT_NE(place.made(), nullptr);
    EXPECT_TRUE(place.made()->isVisible());
    place.hide();
    place.show();
    EXPECT_EQ(made, 1);
}

TEST_F(LatePageTest, SaysEachTimeThatItIsAboutToBeSeen)
{
    int told = 0;
    QObject::connect(&place, &LatePage::aboutToBeSeen, [&] {
        EXPECT_NE(place.made(), nullptr) << "there is nothing yet to bring up to date";
        ++told;
    });
    window.show();
    place.hide();
    place.show();
    EXPECT_EQ(told, 2);
}

TEST_F(LatePageTest, FieldsMadeLateHaveTheirPlaceInTheOrderOfTab)
{
    place.hide();
    window.show();
    place.show();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    above.setFocus();
    QStringList order;
    for (int i = 0; i < 3; ++i) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        order += QApplication::focusWidget() == &below ? QString("below")
                                                       : QApplication::focusWidget()->objectName();
    }
    EXPECT_EQ(order, QStringList({"first", "second", "below"}));
}

TEST_F(LatePageTest, WhatIsDroppedIsMadeAnewWhereItIsSeenAndOnlyThere)
{
    window.show();
    place.drop();
    EXPECT_EQ(made, 2);
    EXPECT_TRUE(place.made()->isVisible());
    place.hide();
    place.drop();
    EXPECT_EQ(place.made(), nullptr);
    EXPECT_EQ(made, 2);
}

} // namespace
} // namespace bothways::app::tests
