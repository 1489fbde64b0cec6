// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/recordings_panel.h"

#include "app/desktop/findings/findings_model.h"
#include "app/desktop/findings/findings_panel.h"
#include "app/desktop/look/recorded_words.h"
#include "app/desktop/recordings/trace_loader.h"
#include "app/desktop/recordings/trace_view.h"
#include "app/desktop/runs/run_list_model.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/app/desktop/support/ticks.h"

#include <gmock/gmock.h>

#include <QLabel>
#include <QListWidget>
#include <QTableView>

namespace bothways::app::tests {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::Not;

namespace {

/// The demo, with its recordings in front.
class RecordingsTest : public WindowTest {
protected:
    RecordingsTest()
    {
        window->openDemo();
        EXPECT_TRUE(window->showPage("recordings"));
        wait();
    }
    void wait() const
    {
        EXPECT_TRUE(waitFor([&] { return !window->isLoading(); }));
        QCoreApplication::processEvents();
    }
    [[nodiscard]] RecordingsPanel& panel() const
    {
        return *window->findChild<RecordingsPanel*>("recordingsPanel");
    }
    [[nodiscard]] TraceView& view() const { return panel().view(); }
    [[nodiscard]] FindingsModel& findings() const
    {
        return window->findChild<FindingsPanel*>("findingsPanel")->model();
    }
    /// Row of the first finding of a rule that has a place; -1 where there is none.
    [[nodiscard]] int rowOf(core::Rule rule) const
    {
        for (int row = 0; row < findings().rowCount(); ++row)
            if (findings().findingAt(row).rule == rule && findings().findingAt(row).from_s)
                return row;
        return -1;
    }
    void selectRun(int number) const
    {
        window->page()->showRun(number);
        wait();
    }
    [[nodiscard]] QString words() const { return find<QLabel>("recordedConsumption")->text(); }
    [[nodiscard]] QCPRange seen() const
    {
        return view().plot().axisRect(1)->axis(QCPAxis::atBottom)->range();
    }
};

} // namespace

TEST_F(RecordingsTest, TheDemoShowsItsRecordingsWithFindingsAsBands)
{
    EXPECT_EQ(window->document()->recordings().size(), 10U);
    EXPECT_FALSE(view().shownRuns().empty());
    selectRun(20);
    EXPECT_TRUE(view().shownChannels().contains("road_speed_kmh"));
    EXPECT_GT(view().plot().axisRectCount(), 3) << "strips of channels";
    int placed = 0;
    for (const core::Finding& finding : window->document()->result()->screening.findings)
        placed += finding.from_s.has_value();
    EXPECT_GT(placed, 3);
}

TEST_F(RecordingsTest, ADiscardedRunIsStruckThroughHereAsInTheListOfRuns)
{
    const auto isStruck = [&](const QString& label) {
        const auto found = find<QListWidget>("traceRuns")->findItems(label, Qt::MatchStartsWith);
        return !found.isEmpty() && found.front()->font().strikeOut();
    };
    EXPECT_TRUE(isStruck("28, "));
    EXPECT_FALSE(isStruck("20, "));
    ASSERT_TRUE(
        window->document()->discardRuns({window->document()->runByNumber(20)->id}, {"other", "x"}));
    EXPECT_TRUE(waitFor([&] { return isStruck("20, "); }));
}

TEST_F(RecordingsTest, ARunChosenInTheListShowsItsRecordingAndOneWithoutSaysSo)
{
    selectRun(20);
    EXPECT_THAT(view().shownRuns(), ElementsAre(20));
    selectRun(22);
    EXPECT_THAT(view().shownRuns(), ElementsAre(22));
    selectRun(2);
    EXPECT_THAT(view().shownRuns(), ElementsAre(22)) << "there is nothing to show instead";
    EXPECT_EQ(words(), "Run 2 has no recording; another run is shown.");
}

TEST_F(RecordingsTest, AFindingJumpsToItsPlaceAndItsBandJumpsBack)
{
    const int row = rowOf(core::Rule::overspeed);
    ASSERT_GE(row, 0);
    const core::Finding finding = findings().findingAt(row);
    auto* list = find<QTableView>("findingsList");
    list->selectRow(row);
    wait();
    EXPECT_THAT(view().shownRuns(), ElementsAre(finding.run));
    EXPECT_TRUE(seen().contains(*finding.from_s) && seen().contains(*finding.to_s));
    EXPECT_LT(seen().size(), 100.0) << "the place, not the whole run";

    list->clearSelection();
    emit view().findingActivated(finding);
    EXPECT_EQ(list->currentIndex().row(), row);
    EXPECT_THAT(window->page()->selectedRuns().front().number, finding.run);
    EXPECT_TRUE(find("findingsPanel")->isVisible());
}

TEST_F(RecordingsTest, WhatTheRecordingSaysStandsBesideWhatWasTyped)
{
    const auto& recorded = window->document()->result()->recorded;
    ASSERT_FALSE(recorded.empty());
    const int number = recorded.begin()->first;
    selectRun(number);
    EXPECT_TRUE(words().contains("dashboard")) << words().toStdString();
    EXPECT_TRUE(words().contains("recording")) << words().toStdString();
    for (int row = 0; row < window->page()->list().model()->rowCount(); ++row)
        if (cell(row, RunListModel::numberColumn).toInt() == number) {
            EXPECT_TRUE(
                cell(row, RunListModel::consumptionColumn, Qt::ToolTipRole).contains("dashboard"));
        }
}

TEST_F(RecordingsTest, HidingConsumptionHidesTheChannelsThatTellIt)
{
    const auto names = [&] {
        QStringList channels;
        const auto* list = view().findChild<QListWidget*>("traceChannels");
        for (int i = 0; i < list->count(); ++i)
            channels += list->item(i)->data(Qt::UserRole).toString();
        return channels;
    };
    selectRun(20);
    EXPECT_TRUE(names().contains("fuel_rate_l_per_h"));
    trigger("blind");
    wait();
    EXPECT_FALSE(names().contains("fuel_rate_l_per_h"));
    EXPECT_TRUE(names().contains("road_speed_kmh"));
    EXPECT_FALSE(words().contains("dashboard"));
    window->document()->setBlind(false); // not from the menu: it asks about open findings
    wait();
    EXPECT_TRUE(names().contains("fuel_rate_l_per_h"));
}

TEST_F(RecordingsTest, TheFirstStripsAreThoseThatTheShownRunHasUntilSomebodyChooses)
{
    selectRun(1); // a baseline run: no output, no rotor
    EXPECT_EQ(view().shownChannels(), QStringList({"road_speed_kmh", "accessory_w",
                                                   "fuel_rate_l_per_h", "wind_ms", "battery_v"}));
    selectRun(20);
    EXPECT_EQ(view().shownChannels(),
              QStringList({"road_speed_kmh", "output_w", "rotor_rpm", "accessory_w", "setting"}));
    bothways::tests::tickChannel(view(), "battery_v", true);
    const QStringList chosen = view().shownChannels();
    selectRun(1);
    EXPECT_EQ(view().shownChannels(), chosen);
}

TEST_F(RecordingsTest, AnEditElsewhereLeavesWhatIsShown)
{
    selectRun(20);
    bothways::tests::tickChannel(view(), "wind_ms", true);
    const QStringList channels = view().shownChannels();
    core::Run run = *window->document()->runByNumber(3);
    run.notes = "a note";
    ASSERT_TRUE(window->document()->updateRun(run));
    wait();
    EXPECT_THAT(view().shownRuns(), ElementsAre(20));
    EXPECT_EQ(view().shownChannels(), channels);
}

TEST_F(RecordingsTest, ClosingTheStudyWhileRecordingsAreReadIsHarmless)
{
    selectRun(20);
    view().showRuns({20, 22, 23, 28});
    EXPECT_TRUE(window->closeStudy());
    EXPECT_FALSE(window->isLoading());
}

TEST(TellsConsumption, KnowsOurNamesAndTheWordsOfOthers)
{
    for (const char* name : {"fuel_rate_l_per_h", "fuel_used_l", "energy_used_kwh", "power_kw",
                             "Inst. MPG", "Fuel flow", "Injector duration"})
        EXPECT_TRUE(tellsConsumption(name)) << name;
    for (const char* name : {"road_speed_kmh", "output_w", "accessory_w", "wind_ms", "coolant"})
        EXPECT_FALSE(tellsConsumption(name)) << name;
}

TEST(RecordedBeside, SaysBothNumbersAndTheirDifference)
{
    core::Run run;
    run.consumption = core::Consumption{8.65, core::ConsumptionUnit::lPer100km, 2, false};
    const core::Consumption recorded{8.71, core::ConsumptionUnit::lPer100km, 2, true};
    UnitsShown units;
    const auto beside = [&] {
        return recordedBeside(run, recorded, units).replace(QChar::Nbsp, QChar::Space);
    };
    EXPECT_EQ(beside(), "dashboard 8.65, recording 8.71 L/100 km (+0.7 %)");
    run.consumption.reset();
    EXPECT_EQ(beside(), "recording 8.71 L/100 km");
    EXPECT_EQ(lengthText(205.4), "3:25");
    EXPECT_EQ(lengthText(3765.0), "1:02:45");
}

} // namespace bothways::app::tests
