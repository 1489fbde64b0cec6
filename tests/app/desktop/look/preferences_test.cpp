// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/preferences.h"

#include "tests/app/desktop/support/desktop_fixture.h"

#include <QFile>
#include <QSignalSpy>

namespace bothways::app::tests {

using core::ConsumptionUnit;

TEST_F(DesktopTest, ChoicesAreThereAgainAfterARestart)
{
    preferences.setConsumptionUnit(ConsumptionUnit::mpgImp);
    preferences.setEntryUnit(ConsumptionUnit::fuelL);
    preferences.setDistanceUnit(DistanceUnit::miles);
    preferences.setTemperatureUnit(TemperatureUnit::fahrenheit);
    preferences.setTheme(ThemeChoice::dark);
    preferences.setLargeText(true);
    preferences.setLanguage("de");
    preferences.setMoreFields(true);
    const QString file = path("preferences.ini");
    {
        const Preferences written(file);
    }
    const Preferences again(file);
    EXPECT_EQ(again.consumptionUnit(), ConsumptionUnit::mpgImp);
    EXPECT_EQ(again.entryUnit(), ConsumptionUnit::fuelL);
    EXPECT_EQ(again.distanceUnit(), DistanceUnit::miles);
    EXPECT_EQ(again.temperatureUnit(), TemperatureUnit::fahrenheit);
    EXPECT_EQ(again.theme(), ThemeChoice::dark);
    EXPECT_TRUE(again.largeText());
    EXPECT_EQ(again.language(), "de");
    EXPECT_TRUE(again.moreFields());
}

TEST_F(DesktopTest, UnitsNotYetChosenAreThoseOfTheCountry)
{
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    const Preferences american(path("us.ini"));
    EXPECT_EQ(american.consumptionUnit(), ConsumptionUnit::mpgUs);
    EXPECT_EQ(american.entryUnit(), ConsumptionUnit::mpgUs);
    EXPECT_EQ(american.temperatureUnit(), TemperatureUnit::fahrenheit);
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    const Preferences german(path("de.ini"));
    EXPECT_EQ(german.consumptionUnit(), ConsumptionUnit::lPer100km);
    EXPECT_EQ(german.distanceUnit(), DistanceUnit::km);
    QLocale::setDefault(before);
}

TEST_F(DesktopTest, AChoiceThatChangesNothingIsNotAnnounced)
{
    QSignalSpy units(&preferences, &Preferences::unitsChanged);
    preferences.setDistanceUnit(DistanceUnit::miles);
    preferences.setDistanceUnit(DistanceUnit::miles);
    EXPECT_EQ(units.count(), 1);
}

TEST_F(DesktopTest, NonsenseInThePreferencesFileFallsBackToDefaults)
{
    const QString file = write("odd.ini", "[units]\nconsumption=furlongs\ndistance=7\n"
                                          "[window]\ntheme=plaid\n");
    const Preferences odd(file);
    EXPECT_EQ(odd.consumptionUnit(), ConsumptionUnit::lPer100km);
    EXPECT_EQ(odd.distanceUnit(), DistanceUnit::km);
    EXPECT_EQ(odd.theme(), ThemeChoice::system);
}

TEST_F(DesktopTest, RecentFilesAreNewestFirstAndThoseThatAreGoneAreLeftOut)
{
    const QString one = write("one.bothways", ""), two = write("two.bothways", "");
    preferences.addRecentFile(one);
    preferences.addRecentFile(two);
    preferences.addRecentFile(one);
    EXPECT_EQ(preferences.recentFiles(), (QStringList{one, two}));
    QFile::remove(one);
    EXPECT_EQ(preferences.recentFiles(), QStringList{two});
}

} // namespace bothways::app::tests
