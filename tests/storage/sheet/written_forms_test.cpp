// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/column_mapping.h"
#include "storage/sheet/column_names.h"
#include "storage/sheet/date_forms.h"
#include "storage/sheet/number_forms.h"
#include "storage/sheet/run_columns.h"
#include "storage/sheet/run_sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// How people write names of columns, dates and numbers.

using namespace bothways;
using storage::DateOrder;
using storage::meaningOf;
using testing::ElementsAre;

namespace {

/// "2026-05-09 05:40:00", parts that are not there left out; "-": none of these.
std::string momentIn(const std::string& text, DateOrder order = DateOrder::unknown)
{
    const auto moment = storage::writtenMoment(text);
    if (!moment)
        return "-";
    std::string said = moment->date ? moment->date->inIso(order).value_or("no such day") : "";
    return said + (said.empty() || moment->time.empty() ? "" : " ") + moment->time;
}

std::string numberIn(const std::string& text, const std::vector<std::string>& column)
{
    storage::NumberSigns signs;
    for (const std::string& other : column)
        signs.look(other);
    const auto number = storage::plainNumber(text, signs.decimal(), signs);
    return number ? number->text : "-";
}

} // namespace

TEST(ColumnNames, EachThatIsListedMeansItsColumn)
{
    for (const storage::ColumnInfo& column : storage::allColumns()) {
        if (column.name == "NAME_on_s")
            continue;
        EXPECT_EQ(meaningOf(column.name).column, column.name);
        for (const std::string& name : column.known_as)
            EXPECT_EQ(meaningOf(name).column, column.name) << name;
    }
}

TEST(ColumnNames, EveryColumnThatIsReadIsListed)
{
    std::vector<std::string> listed;
    for (const storage::ColumnInfo& column : storage::allColumns())
        listed.push_back(column.name);
    for (const storage::NumberColumn& column : storage::numberColumns())
        EXPECT_THAT(listed, testing::Contains(std::string(column.name)));
    for (const storage::TextColumn& column : storage::textColumns())
        EXPECT_THAT(listed, testing::Contains(std::string(column.name)));
    for (const core::ConsumptionUnit unit : core::kConsumptionUnits)
        EXPECT_THAT(listed, testing::Contains(std::string(core::unitName(unit))));
    for (const std::string& name : listed)
        EXPECT_TRUE(storage::isKnownColumn(name) || name == storage::kDateColumn ||
                    name == "NAME_on_s")
            << name;
}

TEST(ColumnNames, AreKnownInFourLanguagesWithTheirUnitsHoweverTheyStand)
{
    const std::pair<const char*, const char*> kNames[] = {
        {"Fuel (l)", "fuel_l"},
        {"L/100km", "l_per_100km"},
        {"l/100 km", "l_per_100km"},
        {"MPG (US)", "mpg_us"},
        {"mpg [UK]", "mpg_imp"},
        {"Verbrauch [l/100 km]", "l_per_100km"},
        {"VERBRAUCH L/100KM", "l_per_100km"},
        {"Verbrauch in l/100 km", "l_per_100km"},
        {"Strecke / km", "distance_km"},
        {"Strecke, km", "distance_km"},
        {"Länge (m)", "distance_km"},
        {"Geschwindigkeit in km/h", "speed_kmh"},
        {"Vitesse moyenne (km/h)", "speed_kmh"},
        {"Consommation (L/100 km)", "l_per_100km"},
        {"Consumo [l/100km]", "l_per_100km"},
        {"Dirección", "direction"},
        {"Sens", "direction"},
        {"Début", "start"},
        {"Uhrzeit", "start"},
        {"Time (s)", "duration_s"},
        {"Time", "start"},
        {"Start (local time)", "start"},
        {"Datum / Uhrzeit", "start"},
        {"Température\nextérieure (°C)", "temperature_c"},
        {"Temp °F", "temperature_c"},
        {"Luftdruck\xC2\xA0(hPa)", "pressure_hpa"},
        {"Energy [kWh/100 km]", "kwh_per_100km"},
        {"Wind (km/h)", "wind_ms"},
        {"Distance km", "distance_km"},
        {"Heated Windscreen on s", "heated_windscreen_on_s"},
    };
    for (const auto& [name, column] : kNames)
        EXPECT_EQ(meaningOf(name).column, column) << name;
    EXPECT_EQ(meaningOf("Strecke", "[km]").column, "distance_km");
    EXPECT_EQ(meaningOf("Strecke", "mi").column, "distance_mi");
}

TEST(ColumnNames, WithoutTheUnitThatTheyNeedAreNotGuessed)
{
    EXPECT_THAT(meaningOf("MPG").candidates, ElementsAre("mpg_us", "mpg_imp"));
    EXPECT_THAT(meaningOf("Fuel economy (mpg)").candidates, ElementsAre("mpg_us", "mpg_imp"));
    EXPECT_THAT(meaningOf("Distance").candidates, ElementsAre("distance_km", "distance_mi"));
    for (const char* name : {"Verbrauch", "Fuel (gal)", "Temperature", "Wind", "Pressure (psi)",
                             "Driver", "Odometer", "C", ""})
        EXPECT_FALSE(meaningOf(name).known()) << name;
}

TEST(ColumnNames, ThatNoTableHasAreGuessedByTheirUnitOrWithoutTheirMean)
{
    const std::pair<const char*, const char*> names[] = {
        {"Ø-Verbrauch (l/100km)", "l_per_100km"},
        {"Average temp (°C)", "temperature_c"},
        {"Display (L/100 km)", "l_per_100km"},
        {"Bordcomputer [mpg (US)]", "mpg_us"},
        {"Vitesse mesurée (km/h)", "speed_kmh"},
        {"Mean consumption [kWh/100 km]", "kwh_per_100km"},
    };
    for (const auto& [name, column] : names) {
        EXPECT_EQ(meaningOf(name).column, column) << name;
        EXPECT_TRUE(meaningOf(name).guessed) << name;
    }
    EXPECT_FALSE(meaningOf("Consumption (L/100 km)").guessed);
    for (const char* name : {"Range (km)", "Tyres (bar)", "Average", "Average gap (m)", "Gear (s)"})
        EXPECT_FALSE(meaningOf(name).mentioned()) << name;
}

TEST(ColumnNames, ThatAreKnownGoBeforeGuessedOnes)
{
    const auto sheet = [](const char* other) {
        return storage::parseRunSheet("Setup,Direction,Start," + std::string(other) +
                                          ",Consumption (L/100 km)\n"
                                          "A,out,2026-05-09 05:40,9.1,8.41\n"
                                          "A,back,2026-05-09 05:47,9.2,8.22\n",
                                      "day.csv");
    };
    for (const char* other : {"Display (L/100 km)", "Display (mpg (US))", "Average l/100km"}) {
        const auto read = sheet(other);
        ASSERT_TRUE(read) << core::describe(read.error());
        EXPECT_EQ(read.value().study.runs[0].consumption->value, 8.41) << other;
    }
    const auto alone = storage::parseRunSheet("Setup,Direction,Start,Ø-Verbrauch (l/100km)\n"
                                              "A,out,2026-05-09 05:40,9.1\n",
                                              "day.csv");
    ASSERT_TRUE(alone) << core::describe(alone.error());
    EXPECT_EQ(alone.value().study.runs[0].consumption->value, 9.1);
    const auto two = storage::parseRunSheet("Setup,Direction,Start,Display (l/100km),BC (l/100km)\n"
                                            "A,out,2026-05-09 05:40,9.1,9.2\n",
                                            "day.csv");
    ASSERT_FALSE(two);
    EXPECT_THAT(core::describe(two.error()), testing::HasSubstr("says the same as"));
}

TEST(ColumnNames, OfAPersonsOwnAreMappedByAnyNameAndUnitThatIsKnown)
{
    const auto mapping = storage::parseColumnMapping("x=y=distance (m)");
    ASSERT_TRUE(mapping);
    EXPECT_EQ(mapping.value().column, "x=y");
    EXPECT_EQ(mapping.value().ours, "distance (m)");
    EXPECT_TRUE(storage::parseColumnMapping("Liter="));
    for (const char* wrong : {"", "Liter", "=fuel_l", "Liter=nonsense", "Weg=distance"})
        EXPECT_EQ(storage::parseColumnMapping(wrong).error().code, core::ErrorCode::wrongUse)
            << wrong;
}

TEST(WrittenDates, AreReadInTheFormsOfManyCountries)
{
    const std::pair<const char*, const char*> kMoments[] = {
        {"2026-05-09T05:40:00", "2026-05-09 05:40:00"},
        {"2026-05-09 05:40", "2026-05-09 05:40"},
        {"09.05.2026 05:40", "2026-05-09 05:40"},
        {"9.5.26, 5:40", "2026-05-09 05:40"},
        {"Sa., 09.05.2026 05:40 Uhr", "2026-05-09 05:40"},
        {"2026/05/09 5:40", "2026-05-09 05:40"},
        {"9. Mai 2026", "2026-05-09"},
        {"9 May 2026 5:40 PM", "2026-05-09 17:40"},
        {"May 9, 2026 12:05 am", "2026-05-09 00:05"},
        {"Saturday, May 9th, 2026", "2026-05-09"},
        {"9 de mayo de 2026 05:40", "2026-05-09 05:40"},
        {"1er août 2026", "2026-08-01"},
        {"09-déc-2026", "2026-12-09"},
        {"5h40", "05:40"},
        {"5 h 05", "05:05"},
        {"12:30 p.m.", "12:30"},
        {"5 PM", "17:00"},
        {"5:40:12,5", "05:40:12.5"},
        {"05:40 09.05.2026", "2026-05-09 05:40"},
        {"31.06.2026", "no such day"},
        {"05.40", "-"},
        {"13:00 PM", "-"},
        {"0:30 AM", "-"},
        {"25:00", "-"},
        {"540", "-"},
        {"A", "-"},
        {"", "-"},
        {"1.2.3.2026", "-"},
        {"5/9", "-"},
    };
    for (const auto& [text, moment] : kMoments)
        EXPECT_EQ(momentIn(text), moment) << text;
}

TEST(WrittenDates, WithSlashesHaveTheOrderThatIsSaid)
{
    EXPECT_EQ(momentIn("5/9/2026 5:40 PM", DateOrder::monthFirst), "2026-05-09 17:40");
    EXPECT_EQ(momentIn("5/9/2026 5:40 PM", DateOrder::dayFirst), "2026-09-05 17:40");
    EXPECT_EQ(momentIn("25-5-2026", DateOrder::dayFirst), "2026-05-25");
    EXPECT_EQ(momentIn("25-5-2026", DateOrder::monthFirst), "no such day");
    EXPECT_EQ(momentIn("9.5.2026", DateOrder::monthFirst), "2026-05-09");
}

TEST(WrittenLengths, OfThreePartsAreSecondsAndOfTwoOnlyWhereTheHeaderSaysSo)
{
    EXPECT_EQ(storage::secondsOfLength("0:03:33", false), "213");
    EXPECT_EQ(storage::secondsOfLength("3:33,5", true), "213.5");
    EXPECT_EQ(storage::secondsOfLength("3:33", false), std::nullopt);
    EXPECT_EQ(storage::secondsOfLength("3:75", true), std::nullopt);
    EXPECT_TRUE(storage::isTwoPartLength("3:33"));
    EXPECT_FALSE(storage::isTwoPartLength("0:03:33"));
}

TEST(WrittenNumbers, HaveSignsBetweenThousandsWhereNothingElseIsPossible)
{
    EXPECT_EQ(numberIn("1,008.1", {"1,008.1"}), "1008.1");
    EXPECT_EQ(numberIn("1.008,10", {"1.008,10"}), "1008.10");
    EXPECT_EQ(numberIn("1 008,1", {"8,41"}), "1008.1");
    EXPECT_EQ(numberIn("1\xE2\x80\xAF"
                       "008,1",
                       {"8,41"}),
              "1008.1");
    EXPECT_EQ(numberIn("1'008'216.5", {"8.4"}), "1008216.5");
    EXPECT_EQ(numberIn("\xE2\x88\x92"
                       "8,41",
                       {"8,41"}),
              "-8.41");
    EXPECT_EQ(numberIn("8,412", {"8,412", "8,1"}), "8.412");
    EXPECT_EQ(numberIn("8.412", {"8.412"}), "8.412");
    EXPECT_EQ(numberIn("8.412", {"8,41", "8.412"}), "-"); // a little more than eight, or thousands
    EXPECT_EQ(numberIn("10,08.1", {"8.4"}), "-");
    EXPECT_EQ(numberIn("1,00,8", {"8.4"}), "-");
    EXPECT_EQ(numberIn("8.4 L", {"8.4"}), "-");
}

TEST(WrittenNumbers, ByAPowerOfTenKeepTheirDigits)
{
    EXPECT_EQ(storage::convertedNumber("437.0", 0.0, 1.0, 1000.0), "0.4370");
    EXPECT_EQ(storage::convertedNumber("5201", 0.0, 1.0, 1000.0), "5.201");
    EXPECT_EQ(storage::convertedNumber("36", 0.0, 10.0, 36.0), "10");
    EXPECT_EQ(storage::convertedNumber("68", -32.0, 5.0, 9.0), "20");
}
