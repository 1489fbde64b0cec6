// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/words.h"

#include "tests/app/desktop/support/analysis_builder.h"
#include "tests/app/desktop/support/page_fixture.h"

#include <gmock/gmock.h>

#include <cmath>

// Sentences themselves are tested where they are made (tests/app/wording). Here: that the window
// says those, in its units, and that no line ends between a number and its unit.
using namespace bothways;
using namespace bothways::app;
using bothways::tests::AnalysisBuilder;
using core::VerdictClass;

namespace {

/// With its no-break spaces to be seen.
std::string seen(QString text)
{
    return text.replace(QChar(QChar::Nbsp), u'_').toStdString();
}

TEST(WordsOfTheVerdict, AreThoseOfTheCommandLineWithFixedSpaces)
{
    const core::Analysis analysis = AnalysisBuilder();
    const Words words(analysis, {});
    EXPECT_EQ(words.verdict().replace(QChar(QChar::Nbsp), u' ').toStdString(),
              wording::shortVerdict(Language::english(), analysis));
    EXPECT_EQ(seen(words.verdict()),
              "B used 1.20_% less fuel than A (95_% interval: 0.50_% to 1.90_% less).");
}

TEST(WordsOfTheVerdict, UseTheDecimalSignOfTheLanguage)
{
    UnitsShown units;
    units.language.setNumbers({",", "."});
    EXPECT_THAT(seen(Words(AnalysisBuilder(), units).verdict()),
                ::testing::HasSubstr("1,20_% less"));
}

TEST(WordsInUnits, AreInTheUnitsOfTheReader)
{
    UnitsShown units;
    EXPECT_EQ(seen(Words(AnalysisBuilder(), units).inUnits()),
              "That is 8.220 in place of 8.320_L/100_km.");
    units.consumption = core::ConsumptionUnit::mpgUs; // 235.2146 / 8.32 = 28.27; / 8.220 = 28.61
    EXPECT_EQ(seen(Words(AnalysisBuilder(), units).inUnits()),
              "That is 28.61 in place of 28.27_mpg (US).");
}

TEST(WordsInUnits, AreOfEnergyWithElectricDrive)
{
    AnalysisBuilder builder;
    builder.raw().electric = true;
    EXPECT_THAT(seen(Words(builder, {}).inUnits()), ::testing::HasSubstr("_kWh/100_km"));
}

TEST(WordsOfFindings, AreInTheUnitsOfTheReader)
{
    core::Finding crawled;
    crawled.rule = core::Rule::interrupted;
    crawled.value = 16.09344;
    UnitsShown miles;
    miles.distance = DistanceUnit::miles;
    EXPECT_THAT(seen(shown(wording::findingWords(miles.language, crawled, unitsOf(miles)))),
                ::testing::HasSubstr("down to 10_mph"));
    EXPECT_THAT(seen(shown(wording::findingWords({}, crawled, unitsOf({})))),
                ::testing::HasSubstr("down to 16_km/h"));
}

TEST(WordsOfNumbers, NeverShowWhatIsNoNumber)
{
    const NumberWords words{UnitsShown{}};
    const double none = std::nan("");
    for (const QString& text : {words.fixed(none, 2), words.shortest(none), words.significant(none),
                                words.change(none, 2), words.range(none, none, 2),
                                words.signedRange(none, none, 2), words.p(none)})
        EXPECT_FALSE(bothways::tests::hasNonsense(text)) << text.toStdString();
}

TEST(WordsOfNumbers, GiveAnIntervalTwoSignificantDigits)
{
    EXPECT_EQ(NumberWords::decimalsOfRange(std::log(0.98), std::log(1.02)), 1); // half width 2 %
    EXPECT_EQ(NumberWords::decimalsOfRange(std::log(0.995), std::log(1.005)), 2);
}

TEST(WordsOfNumbers, RoundSmallProbabilitiesToASign)
{
    const NumberWords words{UnitsShown{}};
    EXPECT_EQ(words.p(0.0637), "p = 0.064");
    EXPECT_EQ(words.p(1e-7), "p < 0.001");
    EXPECT_EQ(words.pAlone(1e-7), "< 0.001");
    EXPECT_EQ(words.significant(3410.0), "3400") << "cells have no signs between thousands";
}

TEST(WordsOfNumbers, ShowOnWhichSideOfZeroAnEndLies)
{
    const NumberWords words{UnitsShown{}};
    EXPECT_EQ(seen(words.signedRange(std::log(0.976), std::log(0.99997), 1)),
              "\u22122.4 to \u22120.003_%");
}

} // namespace
