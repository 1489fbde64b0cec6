// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/roadside/big_button.h"
#include "app/desktop/roadside/big_label.h"
#include "app/desktop/roadside/roadside_page.h"
#include "tests/app/desktop/desktop_fixture.h"

#include <QAction>
#include <QLineEdit>
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

} // namespace bothways::app::tests
