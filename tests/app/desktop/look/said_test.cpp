// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/said.h"

#include "app/desktop/document/history_words.h"
#include "core/planning/ledger.h"
#include "storage/sheet/run_sheet.h"
#include "storage/study/study_file.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/app/desktop/support/german.h"

#include <gtest/gtest.h>

#include <utility>

namespace bothways::app::tests {

TEST(FixedSpaces, StandBetweenANumberAndItsUnitAndNowhereElse)
{
    const auto marked = [](const char* text) {
        return withFixedSpaces(QString::fromUtf8(text)).replace(QChar::Nbsp, u'_').toStdString();
    };
    EXPECT_EQ(marked("1.2 % less, 8.32 L/100 km"), "1.2_% less, 8.32_L/100_km");
    EXPECT_EQ(marked("at 61.2 s, 90 km/h and 21 °C"), "at 61.2_s, 90_km/h and 21_°C");
    EXPECT_EQ(marked("3410 rpm, 3410 U/min, 12 V, 300 W, 5 min, 2 h, 4 MB"),
              "3410_rpm, 3410_U/min, 12_V, 300_W, 5_min, 2_h, 4_MB");
    EXPECT_EQ(marked("28.3 mpg (US), 14 km/L, 17 kWh/100 km, 3 mi, 55 mph, 7 m/s"),
              "28.3_mpg (US), 14_km/L, 17_kWh/100_km, 3_mi, 55_mph, 7_m/s");
    EXPECT_EQ(marked("2 more pairs, 3 minutes, 4 Waggons, run 5 A out, 6 s."),
              "2 more pairs, 3 minutes, 4 Waggons, run 5 A out, 6_s.");
}

TEST(Sentences, BeginWithACapitalAndEndWithOneStop)
{
    EXPECT_EQ(asSentence("3 empty cells"), "3 empty cells.");
    EXPECT_EQ(asSentence("is the unit right?"), "Is the unit right?");
    EXPECT_EQ(asSentence("Done."), "Done.");
}

TEST_F(DesktopTest, TheWindowSpeaksTheLanguageOfItsTextsWithTheLocalesNumbers)
{
    EXPECT_EQ(preferences.spoken().tag(), "en");
    EXPECT_EQ(preferences.spoken().numbers(), (NumberStyle{".", ","}));
    preferences.setLanguage("de"); // for the next start
    EXPECT_EQ(preferences.spoken().tag(), "en");
    const German german(preferences);
    EXPECT_EQ(preferences.spoken().tag(), "de");
    EXPECT_EQ(preferences.units().language, preferences.spoken());
    EXPECT_EQ(preferences.spoken().numbers().decimal, QLocale().decimalPoint().toStdString());
    EXPECT_EQ(preferences.spoken().numbers().decimal, ",");
}

TEST_F(DesktopTest, ErrorsAreSaidInGermanWithTheirValues)
{
    const auto file = storage::StudyFile::open(path("none.bothways").toStdString(), true);
    ASSERT_FALSE(file);
    EXPECT_EQ(sentenceOf(preferences.spoken(), file.error()),
              "There is no such file; expected a study.");
    const German german(preferences);
    const Language in = preferences.spoken();
    EXPECT_EQ(sentenceOf(in, file.error()).toStdString(),
              "Die Datei gibt es nicht; erwartet wird eine Studie.");
    const auto sheet =
        storage::parseRunSheet("configuration,direction,start,l_per_100km,wind_from_deg\n"
                               "A,out,05:40,8.4,400\nA,return,noon,8.5,\nB,out,06:10,\"{0} km\",\n",
                               "morning.csv");
    ASSERT_FALSE(sheet);
    const QString all = describedHere(in, sheet.error());
    EXPECT_TRUE(all.contains("„400“ ist unmöglich; erwartet wird eine Zahl von 0 bis"))
        << all.toStdString();
    EXPECT_TRUE(all.contains("„noon“ ist kein Start; erwartet werden Datum und Uhrzeit wie"))
        << all.toStdString();
    EXPECT_TRUE(all.contains("„{0} km“ ist keine endliche Zahl; erwartet wird"))
        << all.toStdString();
    EXPECT_FALSE(all.contains("expected")) << all.toStdString();
    core::LedgerOptions ledger;
    std::swap(ledger.generator.low, ledger.generator.high);
    EXPECT_EQ(
        said(in, core::makeLedger(ledger).error().message).toStdString(),
        "Wirkungsgrad des Generators: 0,8 / 0,7 / 0,6 angegeben; niedrig, mittel und hoch müssen "
        "aufsteigen");
    EXPECT_TRUE(all.startsWith("morning.csv:1: Spalte „start“: enthält Uhrzeiten;"))
        << all.toStdString();
}

TEST_F(DesktopTest, TheHistoryIsToldInGerman)
{
    const German german(preferences);
    const auto told = [&](const char* kind, const char* detail) {
        return historyLine(preferences.spoken(), {0, {}, kind, detail, false}, 200).toStdString();
    };
    EXPECT_EQ(told("edit_run", R"(/1["edit",[9,"duration_s","211","213"]])"),
              "Fahrt geändert: Fahrt 9: Dauer (s) „211“ → „213“");
    EXPECT_EQ(told("pair", R"(/1["runs",3,4])"), "Paar verbunden: Fahrten 3, 4");
    EXPECT_EQ(told("undo", R"(pair /1["runs",3,4])"),
              "Rückgängig gemacht: Paar verbunden: Fahrten 3, 4");
    EXPECT_EQ(told("import", R"(/1["sheet","morning.csv",12])"),
              "Fahrtenblatt importiert: morning.csv: 12 Fahrten");
    EXPECT_EQ(told("import_trace", R"(/1["recording","run_28.csv",1355,6,28])"),
              "Aufzeichnung importiert: run_28.csv: 1355 Zeilen, 6 Kanäle, Fahrt 28");
    EXPECT_EQ(told("pair", "runs 3, 4"), "Paar verbunden: runs 3, 4") << "of an earlier version";
}

} // namespace bothways::app::tests
