// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/units_shown.h"

#include "tests/app/desktop/support/desktop_fixture.h"

#include <cmath>
#include <limits>

using namespace bothways::app;
using bothways::core::ConsumptionUnit;

namespace {

UnitsShown german()
{
    UnitsShown units;
    units.locale = QLocale(QLocale::German, QLocale::Germany);
    units.locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return units;
}

TEST(UnitsShown, DatesAreWrittenAsTheLanguageHasThemAndReadInBothWays)
{
    UnitsShown english;
    UnitsShown german;
    german.locale = QLocale(QLocale::German);
    EXPECT_EQ(english.dateText("2026-05-09"), "2026-05-09");
    EXPECT_EQ(german.dateText("2026-05-09"), "09.05.2026");
    EXPECT_EQ(german.dateText("2026-05-09T05:20:00+02:00"), "09.05.2026 05:20:00+02:00");
    EXPECT_EQ(german.dateText("05:20"), "05:20");
    EXPECT_EQ(german.dateText(""), "");
    for (const char* typed : {"9.5.2026 05:20", "09.05.2026, 05:20", "2026-05-09T05:20"})
        EXPECT_EQ(UnitsShown::dateOfFiles(typed), "2026-05-09T05:20") << typed;
    EXPECT_EQ(UnitsShown::dateOfFiles(" 9. 5. 2026 "), "2026-05-09");
    EXPECT_EQ(UnitsShown::dateOfFiles("5:20"), "5:20");
}

} // namespace

TEST(UnitsShown, ReadsEitherDecimalSignUnderEveryLocale)
{
    for (const char* text : {"8.41", "8,41", " 8.41 ", "+8,41"}) {
        const auto typed = UnitsShown::parseNumber(text);
        ASSERT_TRUE(typed) << text;
        EXPECT_DOUBLE_EQ(typed->value, 8.41);
        EXPECT_EQ(typed->decimals, 2);
    }
    EXPECT_DOUBLE_EQ(UnitsShown::parseNumber("1 234,5")->value, 1234.5);
    EXPECT_DOUBLE_EQ(UnitsShown::parseNumber(QString::fromUtf8("−3"))->value, -3.0);
    EXPECT_DOUBLE_EQ(UnitsShown::parseNumber(QString::fromUtf8("٨٫٤"))->value, 8.4);
}

TEST(UnitsShown, TakesNothingThatIsNoNumber)
{
    for (const char* text :
         {"", " ", "eight", "8.4.1", "1,234.5", "inf", "nan", "1e400", "8.41x", "--1", "."})
        EXPECT_FALSE(UnitsShown::parseNumber(text)) << text;
}

TEST(UnitsShown, WritesInTheLocaleOfTheReader)
{
    EXPECT_EQ(german().consumptionText(8.41), "8,41");
    EXPECT_EQ(german().fieldText(1234.5), "1234,5");
    EXPECT_EQ(german().signedNumber(-0.06, 2), QString::fromUtf8("−0,06"));
    EXPECT_EQ(german().signedNumber(-0.001, 1), "0,0") << "no sign where nothing is left";
}

TEST(UnitsShown, ShowsConsumptionInTheUnitOfTheDashboard)
{
    UnitsShown units;
    units.consumption = ConsumptionUnit::mpgUs;
    // 235.214583 / 8.41 (NIST SP 811: 1 gal = 3.785411784 L, 1 mi = 1.609344 km)
    EXPECT_EQ(units.consumptionText(8.41), "27.97");
    EXPECT_TRUE(units.moreIsBetter());
    units.electric = true;
    EXPECT_EQ(units.consumptionUnit(), QString::fromUtf8("kWh/100\u00a0km"));
    EXPECT_FALSE(units.moreIsBetter());
}

TEST(UnitsShown, ARunsOwnNumberStandsDigitByDigitAsGiven)
{
    bothways::core::Run run;
    run.consumption = {28.0, ConsumptionUnit::mpgUs, 1, false};
    UnitsShown units;
    units.consumption = ConsumptionUnit::mpgUs;
    EXPECT_EQ(units.consumptionText(run), "28.0");
    units.consumption = ConsumptionUnit::lPer100km;
    EXPECT_EQ(units.consumptionText(run), "8.40");
    run.consumption = {0.42, ConsumptionUnit::fuelL, 2, false};
    EXPECT_EQ(units.consumptionText(run), QString::fromUtf8("–")) << "fuel without a distance";
}

TEST(UnitsShown, NeverShowsANotANumber)
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const QString dash = QString::fromUtf8("–");
    const UnitsShown units;
    EXPECT_EQ(units.number(nan, 2), dash);
    EXPECT_EQ(units.signedNumber(nan, 2), dash);
    EXPECT_EQ(units.consumptionText(nan), dash);
    EXPECT_EQ(units.temperatureText(std::numeric_limits<double>::infinity()), dash);
}

TEST(UnitsShown, FieldsInMilesAndFahrenheitGoThereAndBack)
{
    UnitsShown units;
    units.distance = DistanceUnit::miles;
    units.temperature = TemperatureUnit::fahrenheit;
    EXPECT_DOUBLE_EQ(*units.parseDistance_km("1"), 1.609344);
    EXPECT_DOUBLE_EQ(*units.parseTemperature_c("212"), 100.0);
    EXPECT_EQ(units.temperatureText(*units.parseTemperature_c("45.5")), "45.5");
    EXPECT_EQ(units.windText(*units.parseWind_ms("10")), "10.0");
    EXPECT_EQ(units.speedText(*units.parseSpeed_kmh("55")), "55");
}
