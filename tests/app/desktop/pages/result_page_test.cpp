// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/result_page.h"

#include "app/desktop/pages/checks_page.h"
#include "app/desktop/pages/companions_page.h"
#include "app/desktop/pages/why_page.h"
#include "app/desktop/plots/clock_axis.h"
#include "app/desktop/plots/forest_plot.h"
#include "app/desktop/plots/leave_out_plot.h"
#include "app/desktop/plots/result_plots.h"
#include "core/answer/analyse.h"
#include "core/study/units.h"
#include "tests/app/desktop/support/page_fixture.h"
#include "tests/support/study_builder.h"

#include <gmock/gmock.h>

#include <QClipboard>
#include <QDoubleSpinBox>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>

using namespace bothways;
using namespace bothways::app;

namespace {

const core::Analysis& morning()
{
    static const auto result = bothways::tests::resultOfExample("morning");
    return result->analysis;
}

TEST(ResultPageTest, SaysTheVerdictInLargeType)
{
    ResultPage page;
    page.setResult(bothways::tests::resultOfExample("morning"));
    const auto* verdict = page.findChild<QLabel*>(QStringLiteral("verdict"));
    EXPECT_TRUE(verdict->text().startsWith(QLatin1String("These runs cannot tell B from A")));
    EXPECT_GT(verdict->font().pointSizeF(), 1.3 * page.font().pointSizeF());
    EXPECT_EQ(page.findChildren<QWidget*>(QStringLiteral("qualifier")).size(), 1)
        << "sensitive, as in the worked example";
}

TEST(ResultPageTest, AsksForANewAnswerAtEveryChangeOfMarginAndConfidence)
{
    ResultPage page;
    page.setResult(bothways::tests::resultOfExample("morning"));
    QSignalSpy asked(&page, &ResultPage::optionsAsked);
    auto* margin = page.findChild<QDoubleSpinBox*>(QStringLiteral("margin"));
    margin->stepUp();
    ASSERT_EQ(asked.size(), 1);
    EXPECT_NEAR(asked.back().at(0).toDouble(), 1.1, 1e-12);
    EXPECT_FALSE(asked.back().at(2).value<std::optional<double>>()) << "nobody claims anything";
    page.findChild<QDoubleSpinBox*>(QStringLiteral("confidence"))->setValue(90.0);
    ASSERT_EQ(asked.size(), 2);
    EXPECT_NEAR(asked.back().at(1).toDouble(), 0.90, 1e-12);
    auto* claim = page.findChild<QDoubleSpinBox*>(QStringLiteral("claim"));
    EXPECT_EQ(claim->text(), QStringLiteral("none"));
    claim->setValue(-5.0);
    EXPECT_EQ(claim->text(), QStringLiteral("-5.00\u00a0%"));
    ASSERT_EQ(asked.size(), 3);
    EXPECT_EQ(asked.back().at(2).value<std::optional<double>>(), -5.0);
}

TEST(ResultPageTest, DoesNotAskWhenANewAnswerArrives)
{
    ResultPage page;
    QSignalSpy asked(&page, &ResultPage::optionsAsked);
    page.setResult(bothways::tests::resultOfExample("morning"));
    page.setResult(bothways::tests::resultOfExample("too_few"));
    EXPECT_EQ(asked.size(), 0);
}

TEST(ResultPageTest, FitsANarrowDockWithAClaimAndEachDay)
{
    auto result = std::make_shared<ResultSet>(*bothways::tests::resultOfExample("two_days"));
    core::AnalysisOptions options;
    options.claim_pct = -3.0;
    result->analysis = core::analyse(result->study, options);
    ResultPage page;
    page.setResult(result);
    bothways::tests::pictureOf(page, QStringLiteral("ResultPage_520"), {520, 900});
    ASSERT_EQ(page.findChild<QTableWidget*>(QStringLiteral("daysTable"))->rowCount(), 2);
    EXPECT_EQ(page.findChild<QScrollArea*>()->horizontalScrollBar()->maximum(), 0);
}

TEST(ResultPageTest, ChangesTheVerdictWithTheMargin)
{
    auto result = std::make_shared<ResultSet>(*bothways::tests::resultOfExample("morning"));
    core::AnalysisOptions options;
    options.margin_pct = 2.0; // the 90 % interval, 0.12 to 1.51 %, lies inside
    result->analysis = core::analyse(result->study, options);
    ResultPage page;
    page.setResult(result);
    EXPECT_TRUE(page.findChild<QLabel*>(QStringLiteral("verdict"))
                    ->text()
                    .startsWith(QLatin1String("No difference as large as 2")));
    EXPECT_NEAR(page.findChild<QDoubleSpinBox*>(QStringLiteral("margin"))->value(), 2.0, 1e-12);
}

TEST(ResultPageTest, WarnsWhileSpoiledRunsCount)
{
    auto result = std::make_shared<ResultSet>(*bothways::tests::resultOfExample("morning"));
    ResultPage page;
    page.setResult(result);
    EXPECT_EQ(page.findChild<QLabel*>(QStringLiteral("spoiledRunsText")), nullptr);
    result = std::make_shared<ResultSet>(*result);
    result->spoiled = {9, 13};
    page.setResult(result);
    const auto* warning = page.findChild<QLabel*>(QStringLiteral("spoiledRunsText"));
    ASSERT_NE(warning, nullptr);
    EXPECT_TRUE(warning->text().startsWith(QLatin1String("Runs 9, 13 count although")));
}

TEST(ResultPageTest, KeepsTheOldAnswerGreyedWhileTheNewIsComputed)
{
    ResultPage page;
    page.setResult(bothways::tests::resultOfExample("morning"));
    page.resize(900, 700);
    page.show();
    QApplication::processEvents();
    const QImage before = page.grab().toImage();
    page.setRecomputing(true);
    EXPECT_TRUE(page.isRecomputing());
    EXPECT_NE(page.grab().toImage(), before);
    EXPECT_FALSE(page.findChild<QLabel*>(QStringLiteral("verdict"))->text().isEmpty());
    page.setResult(bothways::tests::resultOfExample("morning"));
    EXPECT_FALSE(page.isRecomputing());
}

TEST(ResultPageTest, SaysThatThereIsNoResultUntilThereIsOne)
{
    ResultPage page;
    page.show();
    EXPECT_FALSE(page.findChild<QLabel*>(QStringLiteral("verdict"))->isVisible());
    EXPECT_TRUE(page.findChild<QLabel*>(QStringLiteral("nothing"))->isVisible());
    page.setResult(bothways::tests::resultOfExample("morning"));
    EXPECT_TRUE(page.findChild<QLabel*>(QStringLiteral("verdict"))->isVisible());
}

TEST(EffectPlotTest, GivesTheNumbersOfTheHeadline)
{
    EffectPlot plot;
    plot.show(morning(), Words(morning(), {}));
    ASSERT_EQ(plot.numbers().rows().size(), 1);
    const QVariantList row = plot.numbers().rows().front();
    // tests/published/data/examples/morning.json
    EXPECT_NEAR(row[0].toDouble(), 0.810399429202307, 1e-9);
    EXPECT_NEAR(row[1].toDouble(), -0.0628621299756575, 1e-9);
    EXPECT_NEAR(row[2].toDouble(), 1.69129164267947, 1e-9);
    EXPECT_NEAR(row[3].toDouble(), 0.116290663737532, 1e-9);
    EXPECT_NEAR(row[4].toDouble(), 1.50932046822517, 1e-9);
    EXPECT_TRUE(plot.xAxis->range().contains(0.0));
    EXPECT_TRUE(plot.xAxis->range().contains(-1.0)) << "the margin is seen whole";
}

TEST(DayPlotTest, ShowsEveryPairAndEveryDiscardWithItsReason)
{
    const auto result = bothways::tests::resultOfExample("morning");
    DayPlot plot;
    plot.show(*result, Words(result->analysis, {}));
    EXPECT_EQ(plot.readings().size(), 9U + 2U);
    EXPECT_EQ(plot.numbers().rows().size(), 9 + 2);
    QStringList words;
    for (const Reading& reading : plot.readings())
        words << reading.words;
    const std::string all = words.join(u'\n').toStdString();
    EXPECT_THAT(all, ::testing::HasSubstr("over-speed\nrotor 3410 rpm beside a road train"));
    EXPECT_THAT(all, ::testing::HasSubstr("timed accessory dropped out"));
    EXPECT_THAT(all, ::testing::HasSubstr("runs 11 and 10"));
    EXPECT_THAT(plot.numbers().csv().toStdString(), ::testing::HasSubstr("discarded,,,B,12,,"));
}

TEST(DayPlotTest, SpeaksTheUsersUnits)
{
    const auto result = bothways::tests::resultOfExample("morning");
    UnitsShown units;
    units.consumption = core::ConsumptionUnit::mpgImp;
    DayPlot plot;
    plot.show(*result, Words(result->analysis, units));
    EXPECT_EQ(plot.yAxis->label(), units.unitText(core::ConsumptionUnit::mpgImp));
    const double first = core::fromLPer100km(11.39, core::ConsumptionUnit::mpgImp);
    bool found = false;
    for (const Reading& reading : plot.readings())
        found = found || std::abs(reading.y - first) < 1e-9;
    EXPECT_TRUE(found) << "pair 1, 11.39 L/100 km";
}

TEST(CompanionsPageTest, GivesTheNumbersOfTheWorkedExample)
{
    CompanionsPage page;
    page.setResult(bothways::tests::resultOfExample("morning"));
    const auto* forest = page.findChild<ForestPlot*>(QStringLiteral("forestPlot"));
    ASSERT_EQ(forest->numbers().rows().size(), 8);
    const QVariantList bracket = forest->numbers().rows()[1];
    EXPECT_EQ(bracket[0].toString(), "bracket");
    EXPECT_NEAR(bracket[1].toDouble(), 0.81039889043669, 1e-9);
    EXPECT_NEAR(bracket[3].toDouble(), 1.82457439126552, 1e-9);
    const auto* leave = page.findChild<LeaveOneOutPlot*>(QStringLiteral("leavePlot"));
    ASSERT_EQ(leave->numbers().rows().size(), 9);
    EXPECT_NEAR(leave->numbers().rows()[2][1].toDouble(), 0.925471730969114, 1e-9);
    EXPECT_EQ(leave->numbers().rows()[2][2].toString(), "more");
    const auto* restored = page.findChild<ForestPlot*>(QStringLiteral("restoredPlot"));
    ASSERT_EQ(restored->numbers().rows().size(), 4);
    EXPECT_NEAR(restored->numbers().rows()[1][1].toDouble(), 0.306417632910517, 1e-9);
}

TEST(CompanionsPageTest, LeadsFromADiscardToItsRun)
{
    CompanionsPage page;
    page.setResult(bothways::tests::resultOfExample("morning"));
    QSignalSpy activated(&page, &ResultView::runActivated);
    auto* restored = page.findChild<ForestPlot*>(QStringLiteral("restoredPlot"));
    restored->readOffNext(-1); // the last row
    QTest::keyClick(restored, Qt::Key_Return);
    ASSERT_EQ(activated.size(), 1);
    EXPECT_EQ(activated.front().front().toInt(), 12);
}

TEST(CompanionsPageTest, ShowsEveryNumberInANarrowDock)
{
    CompanionsPage page;
    page.setResult(bothways::tests::resultOfSample("levee_generator", "off"));
    bothways::tests::pictureOf(page, QStringLiteral("CompanionsPage_520"), {520, 900});
    const auto* table = page.findChild<QTableWidget*>("companionsTable");
    ASSERT_NE(table, nullptr);
    EXPECT_EQ(table->horizontalScrollBar()->maximum(), 0);
    for (int row = 0; row < table->rowCount(); ++row)
        for (int column = 1; column < 5; ++column)
            EXPECT_LE(table->fontMetrics().horizontalAdvance(table->item(row, column)->text()),
                      table->columnWidth(column))
                << row << ", " << column;
}

TEST(ChecksPageTest, ShowsEverySentenceWholeInANarrowDock)
{
    ChecksPage page;
    page.setResult(bothways::tests::resultOfSample("levee_generator", "off"));
    for (const int width : {560, 420, 900}) {
        bothways::tests::pictureOf(page, QStringLiteral("ChecksPage_%1").arg(width), {width, 700});
        int sentences = 0;
        for (const QLabel* label : page.findChildren<QLabel*>()) {
            if (!label->isVisible() || label->text().isEmpty())
                continue;
            ++sentences;
            EXPECT_GE(label->height(), label->heightForWidth(label->width()))
                << width << ": " << label->text().toStdString();
        }
        EXPECT_GE(sentences, 19) << width; // two for each of the nine checks, and the summary
    }
}

/// Lines of a plot that are drawn through several days at once: nothing was driven in between.
int linesAcrossDays(const PlotView& plot, const ClockAxis& clock)
{
    int across = 0;
    for (int i = 0; i < plot.graphCount(); ++i) {
        const QCPGraph& graph = *plot.graph(i);
        if (graph.lineStyle() != QCPGraph::lsLine || graph.dataCount() < 2)
            continue;
        const double from = graph.data()->constBegin()->key;
        const double to = (graph.data()->constEnd() - 1)->key;
        for (const ClockAxis::Day& day : clock.days())
            across += from < day.to && to > day.to ? 1 : 0;
    }
    return across;
}

TEST(ChecksPageTest, DrawsNoLineFromOneDayIntoTheNext)
{
    core::Study study = bothways::tests::aDay("ABA", 3);
    const core::Study first = study;
    for (core::Run run : first.runs) {
        run.number += static_cast<int>(first.runs.size());
        run.start.us += std::int64_t{24} * 3'600'000'000;
        study.runs.push_back(run);
    }
    const auto result = bothways::tests::resultOf(study);
    ASSERT_TRUE(result->analysis.checks.direction.slope_per_h);
    ChecksPage page;
    page.setResult(result);
    const ClockAxis clock(result->study);
    ASSERT_EQ(clock.days().size(), 2U);
    int plots = 0;
    for (const PlotView* plot : page.findChildren<PlotView*>()) {
        ++plots;
        EXPECT_EQ(linesAcrossDays(*plot, clock), 0) << plot->objectName().toStdString();
    }
    EXPECT_GE(plots, 3);
}

TEST(WhyPageTest, WalksFromTheRunsToTheVerdictWithThisStudysNumbers)
{
    WhyPage page;
    page.setResult(bothways::tests::resultOfExample("morning"));
    const std::string text = page.asText().toStdString();
    for (const char* number : {"2.43274", "0.00807", "0.0050283", "2.4469", "0.70711", "2.270",
                               "heated windscreen went off at 96 s"})
        EXPECT_THAT(text, ::testing::HasSubstr(number));
    page.copyText();
    EXPECT_EQ(QApplication::clipboard()->text().toStdString(), text);
    EXPECT_TRUE(page.asHtml().contains(QLatin1String("<table")));
}

TEST(WhyPageTest, SaysWhatIsMissingWithoutAVerdict)
{
    WhyPage page;
    page.setResult(bothways::tests::resultOfExample("too_few"));
    EXPECT_THAT(page.asText().toStdString(), ::testing::HasSubstr("No verdict:"));
    EXPECT_FALSE(page.asText().contains(QLatin1String("Student")));
}

} // namespace
