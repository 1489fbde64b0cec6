// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/trace_view.h"

#include "app/desktop/plots/trace_channels.h"
#include "app/desktop/plots/trace_scatter.h"
#include "tests/app/desktop/support/page_fixture.h"
#include "tests/app/desktop/support/ticks.h"

#include <gmock/gmock.h>

#include <QListWidget>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTest>

#include <cmath>
#include <map>

using namespace bothways;
using namespace bothways::app;

namespace {

constexpr double kRate_hz = 10.0;
constexpr double kRun_s = 200.0;
constexpr double kApproach_s = 10.0;

using Signal = std::function<double(double)>;

core::Samples sampled(const Signal& signal)
{
    core::Samples samples;
    const auto n = static_cast<int>((kApproach_s + kRun_s) * kRate_hz);
    for (int i = 0; i <= n; ++i) {
        const double t = -kApproach_s + i / kRate_hz;
        samples.time_s.push_back(t);
        samples.value.push_back(signal(t));
    }
    return samples;
}

/// A run of 200 s with a speed, an output, a setting and an over-speed at 120 s.
TracedRun aTracedRun(int number, bool device, double speed_kmh = 90.0)
{
    auto trace = std::make_shared<core::MemoryTrace>();
    trace->add("road_speed_kmh", "km/h",
               sampled([=](double t) { return speed_kmh + 0.8 * std::sin(0.11 * t + number); }));
    trace->add("rotor_rpm", "rpm", sampled([=](double t) {
                   return 2700.0 + 60.0 * std::sin(0.7 * t) +
                          (t > 120.0 && t < 121.8 ? 640.0 : 0.0);
               }));
    trace->add("output_w", "W",
               sampled([=](double t) { return 780.0 + 35.0 * std::sin(0.7 * t + 0.3); }));
    trace->add("setting", "°", sampled([](double t) { return t < 60.0 ? 18.0 : 17.6; }));
    trace->add("setting_set", "°", sampled([](double) { return 18.0; }));
    trace->add("coolant", "", sampled([](double t) { return 88.0 + 0.01 * t; }));
    trace->addMark(40.0, "lorry");
    TracedRun run;
    run.run = number;
    run.label = QStringLiteral("run %1, %2").arg(number).arg(QChar(device ? u'B' : u'A'));
    run.device = device;
    run.duration_s = kRun_s;
    run.trace = trace;
    core::Finding overspeed;
    overspeed.rule = core::Rule::overspeed;
    overspeed.run = number;
    overspeed.from_s = 120.1;
    overspeed.to_s = 121.7;
    overspeed.value = 3396.0;
    overspeed.limit = 3200.0;
    overspeed.unit = "rpm";
    overspeed.grade = core::Grade::spoils;
    core::Finding mismatch = overspeed;
    mismatch.rule = core::Rule::settingMismatch;
    mismatch.from_s = 60.0;
    mismatch.to_s = 200.0;
    mismatch.grade = core::Grade::doubtful;
    run.findings = {mismatch, overspeed};
    return run;
}

TracedRun withoutRecording(int number)
{
    TracedRun run;
    run.run = number;
    run.label = QStringLiteral("run %1").arg(number);
    return run;
}

class TraceViewTest : public ::testing::Test {
protected:
    void SetUp() override
    {
        view.resize(1100, 760);
        view.setRuns({withoutRecording(8), aTracedRun(9, true), aTracedRun(10, false, 80.0)});
        view.show();
        view.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&view));
    }
    QCPRange seen() { return view.plot().axisRect(1)->axis(QCPAxis::atBottom)->range(); }

    TraceView view;
};

TEST_F(TraceViewTest, ShowsTheFirstRunThatHasARecording)
{
    EXPECT_THAT(view.shownRuns(), ::testing::ElementsAre(9));
    EXPECT_EQ(view.shownChannels().front(), "road_speed_kmh");
    EXPECT_FALSE(view.shownChannels().contains(QStringLiteral("setting_set")))
        << "drawn with the setting";
}

TEST_F(TraceViewTest, HidesAndShowsChannels)
{
    const int before = view.plot().axisRectCount();
    bothways::tests::tickChannel(view, QStringLiteral("output_w"), false);
    EXPECT_EQ(view.plot().axisRectCount(), before - 1);
    bothways::tests::tickChannel(view, QStringLiteral("output_w"), true);
    EXPECT_EQ(view.plot().axisRectCount(), before);
}

TEST_F(TraceViewTest, JumpsToAFindingAndBack)
{
    const core::Finding overspeed = aTracedRun(10, false).findings[1];
    view.showFinding(overspeed);
    EXPECT_THAT(view.shownRuns(), ::testing::ElementsAre(10));
    EXPECT_TRUE(seen().contains(120.1) && seen().contains(121.7));
    EXPECT_LT(seen().size(), 40.0);
    QSignalSpy activated(&view, &TraceView::findingActivated);
    QCPAxisRect* rect = view.plot().axisRect(1);
    const QPoint at(qRound(rect->axis(QCPAxis::atBottom)->coordToPixel(121.0)), rect->center().y());
    QTest::mouseDClick(&view.plot(), Qt::LeftButton, Qt::NoModifier, at);
    ASSERT_EQ(activated.size(), 1);
    EXPECT_EQ(activated.front().front().value<core::Finding>(), overspeed)
        << "the narrower of two bands";
}

TEST_F(TraceViewTest, GoesThroughTheFindingsByKey)
{
    view.plot().setFocus();
    QTest::keyClick(&view.plot(), Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_TRUE(seen().contains(60.0));
    EXPECT_TRUE(view.plot().isZoomed());
    QTest::keyClick(&view.plot(), Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_TRUE(seen().contains(121.0));
    EXPECT_FALSE(seen().contains(60.0));
}

TEST_F(TraceViewTest, ReadsEveryChannelAtThePointer)
{
    view.plot().readAt(121.0);
    const QString texts = view.plot().readingTexts().join(u'\n');
    EXPECT_TRUE(texts.startsWith(QLatin1String("121.00"))) << texts.toStdString();
    EXPECT_TRUE(texts.contains(QLatin1String("run 9, as set: 18"))) << texts.toStdString();
    EXPECT_EQ(view.plot().accessibleDescription(), texts);
    view.plot().readOffNext(1);
    EXPECT_GT(*view.plot().readingPlace(), 121.0);
}

TEST_F(TraceViewTest, KeepsAllStripsOnOneAxis)
{
    view.plot().zoom(4.0);
    view.plot().pan(0.2, 0.0);
    for (int i = 0; i < view.plot().axisRectCount(); ++i)
        EXPECT_EQ(view.plot().axisRect(i)->axis(QCPAxis::atBottom)->range(), seen());
    EXPECT_NEAR(seen().size(), 1.02 * (kRun_s + kApproach_s) / 4.0, 1e-9) << "zoomed once";
}

TEST_F(TraceViewTest, LaysRunsOverOneAnotherByDistance)
{
    view.showRuns({9, 10});
    view.setAxis(TraceAxis::distance);
    view.plot().showWhole();
    // 200 s at 90 and at 80 km/h: 5.0 and 4.44 km
    EXPECT_NEAR(seen().upper, 5.0, 0.12);
    UnitsShown miles;
    miles.distance = DistanceUnit::miles;
    view.setUnits(miles);
    view.plot().showWhole();
    EXPECT_NEAR(seen().upper, 5.0 / 1.609344, 0.08);
}

TEST_F(TraceViewTest, KeepsTheColourOfARun)
{
    const auto colours = [&] {
        QSet<QRgb> pens;
        for (int i = 0; i < view.plot().plottableCount(); ++i)
            pens.insert(view.plot().plottable(i)->pen().color().rgb());
        return pens;
    };
    view.showRuns({10});
    ASSERT_EQ(colours().size(), 1);
    const QRgb alone = *colours().cbegin();
    view.showRuns({9, 10});
    EXPECT_EQ(colours().size(), 2);
    EXPECT_TRUE(colours().contains(alone));
}

/// Two rotors with settings of their own; the right one's strips are those of the second part.
TEST_F(TraceViewTest, TellsThePartsOfADeviceApartByDashesToo)
{
    auto trace = std::make_shared<core::MemoryTrace>();
    for (const char* channel : {"rotor_rpm@left", "rotor_rpm@right", "setting@left",
                                "setting_set@left", "setting@right", "setting_set@right"})
        trace->add(channel, "", sampled([](double t) { return 20.0 + std::sin(t); }));
    TracedRun run;
    run.run = 3;
    run.label = QStringLiteral("run 3");
    run.duration_s = kRun_s;
    run.trace = trace;
    view.setRuns({run});
    for (const QString& channel :
         {QStringLiteral("rotor_rpm@left"), QStringLiteral("rotor_rpm@right"),
          QStringLiteral("setting@left"), QStringLiteral("setting@right")})
        bothways::tests::tickChannel(view, channel, true);
    EXPECT_FALSE(view.shownChannels().contains(QStringLiteral("setting_set@right")))
        << "a part's set point is drawn with what it sets";
    std::map<Qt::PenStyle, int> styles;
    for (int i = 0; i < view.plot().plottableCount(); ++i)
        ++styles[view.plot().plottable(i)->pen().style()];
    // Of each part: the rotor, the setting, and as what it was set.
    EXPECT_EQ(styles[Qt::SolidLine], 3);
    EXPECT_EQ(styles[Qt::DashLine], 3);
    bothways::tests::pictureOf(view, QStringLiteral("trace_parts_light"), QSize(1100, 760));
}

TEST_F(TraceViewTest, SetsOneChannelAgainstAnother)
{
    view.findChild<QTabWidget*>()->setCurrentIndex(1);
    EXPECT_EQ(view.scatter().xAxis->label(), "rotor speed, rpm");
    EXPECT_EQ(view.scatter().yAxis->label(), "output, W");
    EXPECT_EQ(view.scatter().numbers().rows().size(), 2101);
    bothways::tests::pictureOf(view, QStringLiteral("scatter_light"), QSize(1100, 760));
}

TEST_F(TraceViewTest, GivesTheSamplesInViewAsNumbers)
{
    bothways::tests::tickChannel(view, QStringLiteral("coolant"), false);
    for (const QString& channel : view.shownChannels())
        bothways::tests::tickChannel(view, channel, channel == QLatin1String("rotor_rpm"));
    view.plot().showStretch(120.0, 122.0);
    const PlotNumbers numbers = view.plot().numbers();
    EXPECT_NEAR(static_cast<double>(numbers.rows().size()), seen().size() * kRate_hz, 2.0);
    double highest = 0.0;
    for (const QVariantList& row : numbers.rows())
        highest = std::max(highest, row[4].toDouble());
    EXPECT_GT(highest, 3300.0);
}

TEST_F(TraceViewTest, SaysWhereThereIsNothingToSee)
{
    TraceView empty;
    empty.setRuns({withoutRecording(1)});
    empty.show();
    EXPECT_FALSE(empty.findChild<QTabWidget*>()->isVisible());
    empty.showFinding({});
    empty.setAxis(TraceAxis::distance);
}

TEST_F(TraceViewTest, DrawsInLightAndDark)
{
    for (const Theme& theme : {Theme::light(), Theme::night()}) {
        view.setPalette(theme.palette());
        view.setTheme(theme);
        view.showRuns({9});
        view.plot().showWhole();
        view.plot().readAt(121.0);
        const QString name = theme.dark ? QStringLiteral("dark") : QStringLiteral("light");
        bothways::tests::pictureOf(view, QStringLiteral("trace_") + name, QSize(1100, 760));
        view.showRuns({9, 10});
        bothways::tests::pictureOf(view, QStringLiteral("trace_overlay_") + name, QSize(1100, 760));
        EXPECT_FALSE(bothways::tests::hasNonsense(bothways::tests::allTexts(view)));
    }
}

TEST(TraceLineTest, PaintsTheSpikeOfOneSampleAmongAMillion)
{
    core::Samples samples;
    for (int i = 0; i < 1'000'000; ++i) {
        samples.time_s.push_back(0.01 * i);
        samples.value.push_back(i == 654'321 ? 100.0 : 1.0);
    }
    auto trace = std::make_shared<core::MemoryTrace>();
    trace->add("x", "", samples);
    TraceView view;
    TracedRun run = withoutRecording(1);
    run.trace = trace;
    view.setRuns({run});
    view.resize(900, 500);
    view.show();
    QApplication::processEvents();
    const QImage image = view.plot().picture();
    QCPAxisRect* rect = view.plot().axisRect(1);
    const int x = qRound(rect->axis(QCPAxis::atBottom)->coordToPixel(6543.21));
    const int y = qRound(rect->axis(QCPAxis::atLeft)->coordToPixel(60.0));
    int darkest = 255;
    for (int dx = -2; dx <= 2; ++dx)
        darkest = std::min(darkest, qGray(image.pixel(x + dx, y)));
    EXPECT_LT(darkest, 200) << "the line to the spike at half its height";
}

TEST(TraceLineTest, PaintsEveryColumnFromItsMinimumToItsMaximum)
{
    core::Samples samples;
    for (int i = 0; i < 300'000; ++i) {
        samples.time_s.push_back(0.01 * i);
        const double sway = std::sin(0.004 * i) + 0.3 * std::sin(1.7 * i) * std::sin(0.00013 * i);
        samples.value.push_back(i % 50'021 == 7 ? 4.0 : sway);
    }
    auto trace = std::make_shared<core::MemoryTrace>();
    trace->add("x", "", samples);
    TraceView view;
    TracedRun run = withoutRecording(1);
    run.trace = trace;
    view.setRuns({run});
    view.resize(900, 500);
    view.show();
    QApplication::processEvents();
    const QImage image = view.plot().picture();
    QCPAxisRect* rect = view.plot().axisRect(1);
    const QCPAxis* left = rect->axis(QCPAxis::atLeft);
    const QCPRange seen = rect->axis(QCPAxis::atBottom)->range();
    const core::TracePyramid pyramid(samples.value);
    const auto isDrawn = [&](int x, double value) {
        const int y = static_cast<int>(std::floor(left->coordToPixel(value)));
        const auto saturation = [&](int dy) { return QColor(image.pixel(x, y + dy)).saturation(); };
        return std::max({saturation(-1), saturation(0), saturation(1)}) > 60;
    };
    const std::span<const double> times(samples.time_s.data(), samples.time_s.size());
    const auto columns = core::columnsOf(times, pyramid, seen.lower, seen.upper,
                                         static_cast<std::size_t>(rect->width()));
    EXPECT_GT(columns.size(), 500U);
    for (const core::PlacedColumn& column : columns) {
        const int x = rect->left() + static_cast<int>(column.column);
        const core::TraceColumn& what = column.what;
        EXPECT_TRUE(isDrawn(x, what.minimum)) << x;
        EXPECT_TRUE(isDrawn(x, what.maximum)) << x;
        EXPECT_TRUE(isDrawn(x, 0.5 * (what.minimum + what.maximum))) << x;
    }
}

TEST(TraceSeriesTest, BreaksTheLineWhereSamplesAreMissing)
{
    auto samples = std::make_shared<core::Samples>();
    for (const double t : {0.0, 0.1, 0.2, 0.3, 3.0, 3.1})
        samples->time_s.push_back(t);
    samples->value = {1, 2, 3, 4, 5, 6};
    const TraceSeries series(samples, TraceAxis::time, {});
    EXPECT_FALSE(series.gapBefore(3));
    EXPECT_TRUE(series.gapBefore(4));
    EXPECT_EQ(series.nearest(0.26), 3U);
    EXPECT_FALSE(series.nearest(1.5));
    EXPECT_FALSE(series.nearest(-1.0));
}

TEST(DistanceOfTimeTest, IntegratesSpeedAndNeverFalls)
{
    core::MemoryTrace bySpeed;
    bySpeed.add("road_speed_kmh", "km/h", sampled([](double) { return 72.0; })); // 20 m/s
    EXPECT_NEAR(DistanceOfTime(bySpeed, 1.0).at(50.0), 1000.0, 1e-6);
    EXPECT_NEAR(DistanceOfTime(bySpeed, 1.0).at(-5.0), -100.0, 1e-6);
    core::MemoryTrace odd;
    odd.add("distance_m", "m",
            sampled([](double t) { return t < 100.0 ? 10.0 * t : 10.0 * t - 50.0; }));
    const DistanceOfTime distance(odd, 1.0);
    double last = distance.at(-10.0);
    for (double t = -10.0; t < 200.0; t += 0.5) {
        EXPECT_GE(distance.at(t), last);
        last = distance.at(t);
    }
}

TEST(ValueAtTest, JoinsNeighboursAndNothingElse)
{
    core::Samples samples;
    samples.time_s.push_back(0.0);
    samples.time_s.push_back(1.0);
    samples.time_s.push_back(9.0);
    samples.value = {10.0, 20.0, 30.0};
    EXPECT_EQ(valueAt(samples, 0.25, 1.5), 12.5);
    EXPECT_EQ(valueAt(samples, 1.0, 1.5), 20.0);
    EXPECT_FALSE(valueAt(samples, 5.0, 1.5));
    EXPECT_FALSE(valueAt(samples, -0.1, 1.5));
    EXPECT_FALSE(valueAt(samples, 9.1, 1.5));
}

TEST(TraceChannelsTest, KnowTheUsersUnitsAndKeepForeignNames)
{
    UnitsShown miles;
    miles.distance = DistanceUnit::miles;
    EXPECT_NEAR(channelShown("road_speed_kmh", "km/h", miles).factor, 1.0 / 1.609344, 1e-12);
    EXPECT_EQ(channelShown("coolant", "°C", {}).label, "coolant, °C");
    EXPECT_EQ(setPointOf("setting"), "setting_set");
    EXPECT_EQ(setPointOf("setting_set"), "");
    EXPECT_EQ(inUsualOrder({"zzz", "output_w", "road_speed_kmh"}),
              QStringList({"road_speed_kmh", "output_w", "zzz"}));
}

} // namespace
