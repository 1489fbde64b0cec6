// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/help/help_browser.h"
#include "app/desktop/help/help_desk.h"
#include "app/desktop/help/help_places.h"
#include "app/desktop/help/help_window.h"
#include "app/desktop/look/help_topics.h"
#include "app/desktop/look/theme.h"

#include <QAction>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScrollBar>
#include <QTabWidget>
#include <QTest>
#include <QToolButton>
#include <QTreeWidget>

#include <gtest/gtest.h>

namespace bothways::app::tests {
namespace {

class HelpWindowTest : public ::testing::Test {
protected:
    HelpWindowTest()
    {
        window.resize(1000, 700);
        window.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
    }
    template <class Widget>
    Widget* find(const char* name)
    {
        return window.findChild<Widget*>(name);
    }
    [[nodiscard]] bool open(const char* topic) { return window.open(HelpTopic::of(topic)); }
    [[nodiscard]] QString where() const { return window.topic().text(); }
    /// How many pixels of the page have nearly this colour.
    int pixelsLike(const QColor& colour)
    {
        const QImage image = find<HelpBrowser>("helpPage")->grab().toImage();
        int count = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) {
                const QColor pixel = image.pixelColor(x, y);
                count += std::abs(pixel.red() - colour.red()) < 8 &&
                         std::abs(pixel.green() - colour.green()) < 8 &&
                         std::abs(pixel.blue() - colour.blue()) < 8;
            }
        return count;
    }

    HelpWindow window;
};

const QColor kBlue(0x00, 0x72, 0xb2);    // of our pictures, by day
const QColor kSkyBlue(0x56, 0xb4, 0xe9); // the same by night

} // namespace

TEST_F(HelpWindowTest, OpensAtTheIndexAndFollowsLinksBackAndForth)
{
    EXPECT_EQ(where(), "index");
    auto* page = find<HelpBrowser>("helpPage");
    emit page->linkFollowed("rules.md#overspeed");
    EXPECT_EQ(where(), "rules#overspeed");
    EXPECT_GT(page->verticalScrollBar()->value(), 0);
    emit page->linkFollowed("cautions.md");
    EXPECT_EQ(where(), "cautions");
    find<QAction>("helpBack")->trigger();
    find<QAction>("helpBack")->trigger();
    EXPECT_EQ(where(), "index");
    EXPECT_FALSE(find<QAction>("helpBack")->isEnabled());
    find<QAction>("helpForward")->trigger();
    EXPECT_EQ(where(), "rules#overspeed");
    ASSERT_TRUE(open("verdict"));
    EXPECT_FALSE(find<QAction>("helpForward")->isEnabled());
}

TEST_F(HelpWindowTest, RefusesAPlaceThatIsNotThereAndStays)
{
    ASSERT_TRUE(open("checks#order"));
    EXPECT_FALSE(open("checks#no_such_check"));
    EXPECT_EQ(where(), "checks#order");
}

TEST_F(HelpWindowTest, ContentsFollowThePageAndOpenIt)
{
    auto* contents = find<QTreeWidget>("helpContents");
    ASSERT_TRUE(open("companions#labels"));
    EXPECT_EQ(contents->currentItem()->text(0), "labels");
    contents->setCurrentItem(contents->topLevelItem(1));
    EXPECT_EQ(where(), window.handbook().pages()[1].name);
}

TEST_F(HelpWindowTest, ASearchOverAllPagesListsPlacesAndGoesThere)
{
    QTest::keyClicks(find<QLineEdit>("helpSearch"), "battery_balance");
    auto* hits = find<QListWidget>("helpHits");
    ASSERT_TRUE(hits->isVisible());
    ASSERT_GE(hits->count(), 2);
    hits->setCurrentRow(0);
    EXPECT_EQ(where(), "rules#battery_balance");
    find<QLineEdit>("helpSearch")->setText("zeppelin");
    EXPECT_EQ(hits->count(), 1);
    EXPECT_EQ(where(), "rules#battery_balance");
    find<QLineEdit>("helpSearch")->clear();
    EXPECT_TRUE(find<QTreeWidget>("helpContents")->isVisible());
}

TEST_F(HelpWindowTest, FindMarksEveryPlaceInThePage)
{
    ASSERT_TRUE(open("cautions"));
    QTest::keyClicks(find<QLineEdit>("helpFind"), "insur");
    auto* page = find<HelpBrowser>("helpPage");
    EXPECT_EQ(page->extraSelections().size(), 1);
    EXPECT_EQ(page->textCursor().selectedText().toLower(), "insur");
    find<QLineEdit>("helpFind")->setText("zeppelin");
    EXPECT_TRUE(page->extraSelections().isEmpty());
    QTest::keyClick(page, Qt::Key_Escape);
    EXPECT_TRUE(window.isVisible()) << "the first Escape ends the search";
}

TEST_F(HelpWindowTest, PicturesShowAndTurnDarkWithTheWindow)
{
    ASSERT_TRUE(open("why_pairs"));
    EXPECT_GT(pixelsLike(kBlue), 300) << "the picture of a pair is not there";
    EXPECT_EQ(pixelsLike(kSkyBlue), 0);
    window.setPalette(Theme::night().palette());
    QCoreApplication::processEvents();
    EXPECT_GT(pixelsLike(kSkyBlue), 300);
    EXPECT_EQ(pixelsLike(Qt::white), 0) << "something stayed white in the dark";
}

TEST_F(HelpWindowTest, LargerLettersMakeLargerPicturesThatStillFit)
{
    ASSERT_TRUE(open("why_pairs"));
    const int before = pixelsLike(kBlue);
    QFont font = window.font();
    font.setPointSizeF(1.35 * font.pointSizeF());
    window.setFont(font);
    QCoreApplication::processEvents();
    EXPECT_GT(pixelsLike(kBlue), before);
    auto* page = find<HelpBrowser>("helpPage");
    window.resize(560, 600);
    QCoreApplication::processEvents();
    EXPECT_LE(page->document()->size().width(), page->viewport()->width() + 1.0);
}

TEST_F(HelpWindowTest, TablesHaveTheirHeadAndLines)
{
    ASSERT_TRUE(open("planning#what-each-sequence-is-weak-against"));
    EXPECT_GT(pixelsLike(Theme::light().grid), 200);
}

/// With BOTHWAYS_PICTURES=DIR: every page as a picture, to look at.
TEST_F(HelpWindowTest, EveryPageCanBeOpenedInEveryLook)
{
    const QString folder = qEnvironmentVariable("BOTHWAYS_PICTURES");
    const QFont usual = window.font();
    QFont large = usual;
    large.setPointSizeF(1.35 * usual.pointSizeF());
    for (const bool dark : {false, true})
        for (const bool isLarge : {false, true}) {
            if (folder.isEmpty() && isLarge != dark)
                continue; // each light, each letter once: half of the looks says as much
            window.setPalette((dark ? Theme::night() : Theme::light()).palette());
            window.setFont(isLarge ? large : usual);
            for (const HandbookPage& page : window.handbook().pages()) {
                ASSERT_TRUE(window.open({page.name, {}}));
                auto* browser = find<HelpBrowser>("helpPage");
                EXPECT_GT(browser->document()->blockCount(), 5) << page.name.toStdString();
                if (!folder.isEmpty() && (!isLarge || page.name == "verdict"))
                    window.grab().save(folder + "/help_" + page.name + (dark ? "_dark" : "") +
                                       (isLarge ? "_large" : "") + ".png");
            }
        }
}

TEST_F(HelpWindowTest, AGermanWindowShowsGermanPagesAndTheirPictures)
{
    const QString folder = qEnvironmentVariable("BOTHWAYS_PICTURES");
    HelpWindow german("de");
    german.resize(1000, 700);
    german.show();
    auto* browser = german.findChild<HelpBrowser*>("helpPage");
    for (const HandbookPage& page : german.handbook().pages()) {
        ASSERT_TRUE(german.open({page.name, {}}));
        EXPECT_TRUE(browser->toPlainText().startsWith(page.title)) << page.name.toStdString();
        for (const QString& picture : page.pictures)
            EXPECT_FALSE(browser->document()
                             ->resource(QTextDocument::ImageResource, QUrl(picture))
                             .value<QImage>()
                             .isNull())
                << picture.toStdString();
        if (!folder.isEmpty())
            german.grab().save(folder + "/help_de_" + page.name + ".png");
    }
    ASSERT_TRUE(german.open(HelpTopic::of("rules#overspeed")));
    EXPECT_GT(browser->verticalScrollBar()->value(), 0);
    emit browser->linkFollowed("cautions.md");
    EXPECT_EQ(german.topic().text(), "cautions");
    EXPECT_TRUE(browser->toPlainText().startsWith("Vorsicht"));
}

TEST(HelpPlacesTest, TheNearestPlaceSaysTheTopic)
{
    QWidget page;
    page.setObjectName("checksPage");
    QWidget inside(&page);
    EXPECT_EQ(helpTopicAt(&inside), "checks");
    setHelpTopic(inside, helpTopic(CheckKind::normal));
    EXPECT_EQ(helpTopicAt(&inside), "checks#normal");
    QTabWidget tabs;
    auto* ledger = new QWidget;
    ledger->setObjectName("ledgerPage");
    tabs.addTab(ledger, "Ledger");
    EXPECT_EQ(helpTopicAt(&tabs), "ledger");
    EXPECT_EQ(helpTopicAt(nullptr), "index");
}

TEST(HelpDeskTest, AQuestionMarkAndF1InADialogOpenTheHandbook)
{
    QWidget window;
    HelpDesk desk(window);
    QDialog dialog(&window);
    dialog.setObjectName("discardDialog");
    auto* button = helpButton("rules#interrupted", "interrupted");
    button->setParent(&dialog);
    auto* field = new QLineEdit(&dialog);
    dialog.show();
    EXPECT_EQ(desk.window(), nullptr);
    button->click();
    ASSERT_NE(desk.window(), nullptr);
    EXPECT_EQ(desk.window()->topic().text(), "rules#interrupted");
    QTest::keyClick(field, Qt::Key_F1);
    EXPECT_EQ(desk.window()->topic().text(), "window#discarding-a-run");
    QWidget stranger;
    QTest::keyClick(&stranger, Qt::Key_F1);
    EXPECT_EQ(desk.window()->topic().text(), "window#discarding-a-run");
}

} // namespace bothways::app::tests
