// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/said.h"
#include "app/desktop/planning/ledger_page.h"
#include "app/desktop/planning/plan_page.h"
#include "app/wording/ledger.h"
#include "core/study/units.h"
#include "tests/app/desktop/support/page_fixture.h"

#include <QAbstractButton>
#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTableWidget>
#include <QTest>

using namespace bothways;
using namespace bothways::tests;

namespace {

template <class T>
T* child(QWidget& page, const char* name)
{
    T* found = page.findChild<T*>(QLatin1String(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
}

} // namespace

TEST(PlanPage, SaysWhatTheUsualDayCanShow)
{
    app::PlanPage page;
    ASSERT_TRUE(page.plan());
    EXPECT_EQ(page.plan()->pairs, 12);
    EXPECT_TRUE(child<QLabel>(page, "planAnswer")->text().contains(QStringLiteral("12 pairs")));
    EXPECT_FALSE(hasNonsense(allTexts(page)));
    pictureOf(page, QStringLiteral("plan"));
}

TEST(PlanPage, FindsThePairsForAWantedEffect)
{
    app::PlanPage page;
    child<QDoubleSpinBox>(page, "planWant")->setValue(1.0);
    child<QAbstractButton>(page, "planWanted")->setChecked(true);
    ASSERT_TRUE(page.plan());
    EXPECT_LE(core::pctFromLog(page.plan()->detectable_log), 1.0);
    core::PlanOptions fewer = page.plan()->options;
    --fewer.pairs_per_block;
    EXPECT_GT(core::pctFromLog(core::makePlan(fewer).value().detectable_log), 1.0);
}

TEST(PlanPage, TellsWhyThereIsNoPlan)
{
    app::PlanPage page;
    child<QComboBox>(page, "planSequence")->setEditText(QStringLiteral("AAA"));
    EXPECT_FALSE(page.plan());
    EXPECT_TRUE(child<QLabel>(page, "planAnswer")->text().contains(QStringLiteral("AAA")));
    EXPECT_FALSE(child<QPushButton>(page, "planCard")->isEnabled());
}

TEST(PlanPage, TakesTheNoiseOfTheStudyAndItsUncertainty)
{
    app::PlanPage page;
    const auto result = resultOfExample("morning");
    page.setResult(result);
    QTest::mouseClick(child<QPushButton>(page, "planNoiseOfStudy"), Qt::LeftButton);
    ASSERT_TRUE(page.plan());
    EXPECT_NEAR(page.plan()->options.s, result->analysis.headline->s, 5e-6); // the field's digits
    ASSERT_TRUE(page.plan()->s_upper80);
    EXPECT_GT(*page.plan()->s_upper80, page.plan()->options.s);
}

TEST(PlanPage, TiesThePlanToTheStudy)
{
    app::PlanPage page;
    EXPECT_FALSE(child<QPushButton>(page, "planTie")->isEnabled());
    page.setResult(resultOfExample("morning"));
    QSignalSpy tied(&page, &app::PlanPage::tieRequested);
    child<QSpinBox>(page, "planPairs")->setValue(5);
    QTest::mouseClick(child<QPushButton>(page, "planTie"), Qt::LeftButton);
    ASSERT_EQ(tied.count(), 1);
    EXPECT_EQ(tied.at(0).at(0).value<core::PlannedStudy>().pairs_per_block, 5);
}

TEST(PlanPage, SimulatesTheSequencesThatFit)
{
    app::PlanPage page;
    auto* table = child<QTableWidget>(page, "planSequences");
    ASSERT_TRUE(QTest::qWaitFor([&] { return table->rowCount() >= 4; }, 30000));
    for (int row = 0; row < table->rowCount(); ++row)
        for (int column = 0; column < table->columnCount(); ++column)
            EXPECT_FALSE(table->item(row, column)->text().isEmpty());
    pictureOf(page, QStringLiteral("plan_sequences"));
    pictureOf(page, QStringLiteral("plan_sequences_narrow"), {530, 1200});
}

TEST(LedgerPage, ExpectsMoreAtTheMiddles)
{
    app::LedgerPage page;
    ASSERT_TRUE(page.ledger());
    EXPECT_GT(page.ledger()->net_pct.middle, 0.0);
    EXPECT_LT(page.ledger()->net_pct.low, 0.0); // one extreme corner
    EXPECT_FALSE(hasNonsense(allTexts(page)));
    pictureOf(page, QStringLiteral("ledger"));
}

TEST(LedgerPage, SaysHowManyWattsTheStudyCouldSee)
{
    app::LedgerPage page;
    page.setResult(resultOfExample("morning"));
    EXPECT_TRUE(
        child<QLabel>(page, "ledgerWatts")->text().contains(QStringLiteral("can detect a change")));
    pictureOf(page, QStringLiteral("ledger_study"));
}

TEST(LedgerPage, RefusesFactorsThatDoNotAscend)
{
    app::LedgerPage page;
    child<QDoubleSpinBox>(page, "ledgerAlternator0")->setValue(0.99);
    EXPECT_FALSE(page.ledger());
    EXPECT_TRUE(
        child<QLabel>(page, "ledgerAnswer")->text().contains(QStringLiteral("must ascend")));
}

TEST(LedgerPage, TakesTheFactorsOfAFuel)
{
    app::LedgerPage page;
    child<QComboBox>(page, "ledgerFuel")->setCurrentIndex(2);
    ASSERT_TRUE(page.ledger());
    EXPECT_EQ(page.ledger()->options.fuel, core::Fuel::diesel);
    EXPECT_DOUBLE_EQ(page.ledger()->options.heating_value_mj_per_l, 35.9);
    EXPECT_DOUBLE_EQ(page.ledger()->options.marginal.middle, 0.42);
}

// The table, and which term is which, in the words of the command line.
TEST(LedgerPage, NamesItsLinesAsTheCommandLineDoes)
{
    app::LedgerPage page;
    const app::Language english;
    const auto* table = child<QTableWidget>(page, "ledgerTable");
    for (const core::Fuel fuel : {core::Fuel::petrol, core::Fuel::electric}) {
        child<QComboBox>(page, "ledgerFuel")->setCurrentIndex(static_cast<int>(fuel));
        ASSERT_TRUE(page.ledger());
        const auto rows = app::wording::ledgerRows(english, *page.ledger());
        ASSERT_EQ(table->rowCount(), static_cast<int>(rows.size()));
        for (int row = 0; row < table->rowCount(); ++row)
            EXPECT_EQ(table->item(row, 0)->text(),
                      app::shown(rows[static_cast<std::size_t>(row)].name));
    }
    EXPECT_EQ(child<QCheckBox>(page, "ledgerRelief")->text(),
              app::shown("Relief of the 12 V supply"))
        << "there is no engine whose alternator could be relieved";
    EXPECT_EQ(table->horizontalHeaderItem(0)->text(), app::shown("kWh/100 km"));
    child<QCheckBox>(page, "ledgerCost")->setChecked(false);
    EXPECT_EQ(table->rowCount(), 3) << "what is switched off has no line";
}

TEST(LedgerPage, SaysWhatTheRunsMeasuredBesideWhatIsExpected)
{
    app::LedgerPage page;
    EXPECT_TRUE(child<QLabel>(page, "ledgerBeside")->isHidden());
    page.setResult(resultOfExample("morning"));
    EXPECT_TRUE(child<QLabel>(page, "ledgerBeside")
                    ->text()
                    .startsWith("Measured by the study's runs, beside it: "));
}

// Without a property that says so: the units of the runs do.
TEST(LedgerPage, TakesWhatTheStudyKnowsOfFuelOutputAndSpeed)
{
    core::Study study = resultOfExample("morning")->study;
    for (core::Run& run : study.runs) {
        if (run.consumption)
            run.consumption->unit = core::ConsumptionUnit::kwhPer100km;
        run.output_w = 640.0;
        run.speed_kmh = 88.0;
    }
    app::LedgerPage page;
    page.setResult(resultOf(study));
    ASSERT_TRUE(page.ledger());
    EXPECT_EQ(page.ledger()->options.fuel, core::Fuel::electric);
    EXPECT_EQ(page.ledger()->options.output_w, 640.0);
    EXPECT_EQ(page.ledger()->options.speed_kmh, 88.0);
    child<QDoubleSpinBox>(page, "ledgerOutput")->setValue(500.0);
    page.setResult(resultOf(study));
    EXPECT_EQ(page.ledger()->options.output_w, 500.0) << "what was typed went";
}

template <class Page>
class PlanningPages : public ::testing::Test {
};
using BothPages = ::testing::Types<app::PlanPage, app::LedgerPage>;
TYPED_TEST_SUITE(PlanningPages, BothPages);

TYPED_TEST(PlanningPages, StandWholeInANarrowDock)
{
    TypeParam page;
    page.setResult(resultOfExample("morning"));
    for (const int width : {520, 1100}) {
        const QString name = QString::fromLatin1(page.metaObject()->className()).section(u':', -1);
        pictureOf(page, QStringLiteral("%1_%2").arg(name).arg(width), {width, 1500});
        const auto* area = page.template findChild<QScrollArea*>();
        ASSERT_NE(area, nullptr);
        EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0) << width;
    }
}
