// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/plot_parts.h"
#include "app/desktop/plots/plot_view.h"
#include "app/desktop/plots/svg_picture.h"
#include "tests/app/desktop/support/page_fixture.h"

#include <QApplication>
#include <QClipboard>
#include <QDomDocument>
#include <QFile>
#include <QMimeData>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

using namespace bothways;
using namespace bothways::app;

namespace {

class PlotViewTest : public ::testing::Test {
protected:
    void SetUp() override
    {
        plot.resize(400, 300);
        parts::addMarks(plot, {{1.0, 10.0}, {2.0, 20.0}, {3.0, 15.0}},
                        markOf(plot.theme(), true, false));
        plot.setWhole(plot.xAxis, {0.0, 4.0});
        plot.setWhole(plot.yAxis, {0.0, 30.0});
        plot.setReadings({{nullptr, 1.0, 10.0, QStringLiteral("one"), 7},
                          {nullptr, 2.0, 20.0, QStringLiteral("two"), 8},
                          {nullptr, 3.0, 15.0, QStringLiteral("three"), 9}});
        PlotNumbers numbers({QStringLiteral("x"), QStringLiteral("name")});
        numbers.add({0.1, QStringLiteral("a \"b\", c")});
        numbers.add({1.0 / 3.0, QVariant()});
        plot.setNumbers(numbers);
        plot.setWords(QStringLiteral("Three points"), QStringLiteral("They rise and fall."));
        plot.finish();
        plot.show();
        QApplication::processEvents();
    }

    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QTest::keyClick(&plot, static_cast<Qt::Key>(key), modifiers);
        QApplication::processEvents();
    }

    PlotView plot;
};

TEST_F(PlotViewTest, ZoomsMovesAndComesBackByKeyboard)
{
    press(Qt::Key_Plus);
    EXPECT_NEAR(plot.xAxis->range().size(), 4.0 / 1.25, 1e-12);
    EXPECT_TRUE(plot.isZoomed());
    const double centre = plot.xAxis->range().center();
    press(Qt::Key_Right);
    EXPECT_GT(plot.xAxis->range().center(), centre);
    press(Qt::Key_Up);
    EXPECT_GT(plot.yAxis->range().center(), 15.0);
    press(Qt::Key_0);
    EXPECT_EQ(plot.xAxis->range(), QCPRange(0.0, 4.0));
    EXPECT_EQ(plot.yAxis->range(), QCPRange(0.0, 30.0));
    EXPECT_FALSE(plot.isZoomed());
}

TEST_F(PlotViewTest, DoesNotZoomOutWithoutEnd)
{
    for (int i = 0; i < 100; ++i)
        plot.zoom(0.8);
    EXPECT_LE(plot.xAxis->range().size(), 4.0 * 4.0);
}

TEST_F(PlotViewTest, KeepsAZoomedViewWhenTheWholeChanges)
{
    plot.zoom(2.0);
    const QCPRange seen = plot.xAxis->range();
    plot.setWhole(plot.xAxis, {0.0, 8.0});
    EXPECT_EQ(plot.xAxis->range(), seen);
    plot.showWhole();
    EXPECT_EQ(plot.xAxis->range(), QCPRange(0.0, 8.0));
}

TEST_F(PlotViewTest, ReadsPointsOffByKeyboardAndTellsAScreenReader)
{
    press(Qt::Key_Period);
    EXPECT_EQ(plot.readOff(), 0);
    EXPECT_TRUE(plot.accessibleDescription().startsWith(QLatin1String("one")));
    press(Qt::Key_Comma);
    EXPECT_EQ(plot.readOff(), 2);
    QSignalSpy activated(&plot, &PlotView::readingActivated);
    press(Qt::Key_Return);
    ASSERT_EQ(activated.size(), 1);
    EXPECT_EQ(activated.front().front().toInt(), 9);
    press(Qt::Key_Escape);
    EXPECT_EQ(plot.readOff(), -1);
    EXPECT_EQ(plot.accessibleDescription(), "They rise and fall.");
}

TEST_F(PlotViewTest, ReadsThePointUnderTheMouse)
{
    const QPoint at(qRound(plot.xAxis->coordToPixel(2.0)), qRound(plot.yAxis->coordToPixel(20.0)));
    QTest::mouseMove(&plot, at);
    EXPECT_EQ(plot.readOff(), 1);
    QTest::mouseMove(&plot, at + QPoint(0, 80));
    EXPECT_EQ(plot.readOff(), -1);
}

TEST_F(PlotViewTest, WritesNumbersWithEveryDigitAndNoLocale)
{
    plot.setLocale(QLocale(QLocale::German));
    EXPECT_EQ(plot.numbers().csv(), "x,name\r\n0.1,\"a \"\"b\"\", c\"\r\n0.3333333333333333,\r\n");
    press(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(QApplication::clipboard()->text(), plot.numbers().csv());
}

TEST_F(PlotViewTest, CopiesAPictureAtTwiceTheSize)
{
    press(Qt::Key_C, Qt::ControlModifier);
    const QMimeData* copied = QApplication::clipboard()->mimeData();
    ASSERT_TRUE(copied->hasImage());
    EXPECT_EQ(qvariant_cast<QImage>(copied->imageData()).size(), QSize(800, 600));
    EXPECT_TRUE(copied->hasFormat(QStringLiteral("image/svg+xml")));
}

TEST_F(PlotViewTest, SavesEveryKindOfFile)
{
    QTemporaryDir folder;
    for (const char* name : {"a.png", "a.svg", "a.pdf", "a.csv"})
        EXPECT_EQ(plot.save(folder.filePath(QLatin1String(name))), "") << name;
    EXPECT_EQ(QImage(folder.filePath(QStringLiteral("a.png"))).size(), QSize(800, 600));
    QFile pdf(folder.filePath(QStringLiteral("a.pdf")));
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.readAll().startsWith("%PDF"));
    QFile svg(folder.filePath(QStringLiteral("a.svg")));
    ASSERT_TRUE(svg.open(QIODevice::ReadOnly));
    QDomDocument picture;
    EXPECT_TRUE(picture.setContent(svg.readAll()));
    EXPECT_EQ(picture.documentElement().tagName(), "svg");
    QFile csv(folder.filePath(QStringLiteral("a.csv")));
    ASSERT_TRUE(csv.open(QIODevice::ReadOnly));
    EXPECT_TRUE(csv.readAll().startsWith("x,name")) << "its numbers under their names";
}

TEST_F(PlotViewTest, SaysInOneSentenceWhyAFileIsNotWritten)
{
    EXPECT_TRUE(plot.save(QStringLiteral("/no/such/folder/a.png")).endsWith(u'.'));
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("a.bmp"));
    EXPECT_TRUE(plot.save(file).contains(QLatin1String("png, svg, pdf or csv")));
    EXPECT_FALSE(QFile::exists(file));
}

TEST_F(PlotViewTest, WritesTextAsTextAndClipsTheDataInSvg)
{
    plot.xAxis->setLabel(QStringLiteral("time <s> & more"));
    plot.zoom(20.0, QPointF(plot.xAxis->coordToPixel(2.0), plot.yAxis->coordToPixel(20.0)));
    QApplication::processEvents();
    const QByteArray svg = plot.svg();
    QDomDocument document;
    ASSERT_TRUE(document.setContent(svg)) << svg.left(400).toStdString();
    EXPECT_TRUE(svg.contains("<title>Three points</title>"));
    EXPECT_TRUE(svg.contains("time &lt;s&gt; &amp; more"));
    EXPECT_GT(document.elementsByTagName(QStringLiteral("clipPath")).size(), 0);
    EXPECT_EQ(svg, plot.svg()) << "same picture, same bytes";
}

TEST_F(PlotViewTest, LeavesTheReadOffOutOfPictures)
{
    press(Qt::Key_Period);
    EXPECT_FALSE(plot.svg().contains(">one<"));
    EXPECT_EQ(plot.readOff(), 0);
}

TEST(PlotRange, IsNeverEmpty)
{
    EXPECT_GT(parts::rangeAround({}).size(), 0.0);
    EXPECT_GT(parts::rangeAround({5.0, 5.0}).size(), 0.0);
    EXPECT_GT(parts::rangeAround({std::nan(""), 1.0}).size(), 0.0);
    EXPECT_LT(parts::rangeAround({1.0, 2.0}).lower, 1.0);
}

} // namespace
