// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/error_words.h"

#include "app/desktop/document/history_words.h"
#include "core/planning/ledger.h"
#include "storage/sheet/run_sheet.h"
#include "storage/study/study_file.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/app/desktop/support/german.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include <set>
#include <utility>

namespace bothways::app::tests {
namespace {

/// The sentences in the sources of a folder that say what was expected, each value as a 7. Pieces
/// on successive lines are one sentence.
std::set<std::string> sentencesIn(const QString& folder)
{
    static const QRegularExpression literals(R"(("(?:[^"\\\n]|\\.)*"\s*)+)");
    static const QRegularExpression seam(R"("\s*")");
    static const QRegularExpression value(R"(\{[^{}]*\})");
    std::set<std::string> sentences;
    for (const QString& file : QDir(folder).entryList({"*.cpp"})) {
        QFile source(folder + "/" + file);
        EXPECT_TRUE(source.open(QIODevice::ReadOnly)) << file.toStdString();
        auto found = literals.globalMatch(QString::fromUtf8(source.readAll()));
        while (found.hasNext()) {
            QString sentence = found.next().captured().trimmed();
            sentence = sentence.mid(1, sentence.size() - 2).replace(seam, "").replace("\\\"", "\"");
            if (sentence.contains("; expected") || sentence.contains("; nothing was") ||
                sentence.contains("; restore") || sentence.startsWith("expected "))
                sentences.insert(sentence.replace(value, "7").toStdString());
        }
    }
    return sentences;
}

} // namespace

TEST(ErrorWords, EveryErrorOfCoreAndStorageThatSaysWhatWasExpectedHasAPattern)
{
    // Words are put into these, so that each has several patterns; or the command line alone says
    // them.
    const std::set<std::string> otherwise = {
        "7 is a 7 where the lines before have a 7; expected one form throughout",
        "7 is given already 7; expected another number",
        "7 is on 7; expected on exactly two, an out and a return run",
        "is 7; expected a recording in CSV, plain text in UTF-8",
        "7 (recording 7, channel 7, row 7); restore it from a copy",
        "7; nothing was changed",
        "both 7s would be 7; expected two names",
        "expected a new name for 7 7, on one line",
        "the latitude of the 7 gate is 7; expected degrees from -90 to 90",
        "the longitude of the 7 gate is 7; expected degrees from -180 to 180",
        "the study has no 7 7; expected 7",
        "'7' is no property of a study; expected name, date, baseline, margin, confidence, "
        "max_gap, "
        "aero_share, fuel, bearing_deg, cold_start, notes, plan.sequence, plan.pairs, plan.margin, "
        "plan.confidence, accessory_timer.NAME, or a limit like overspeed.rpm",
        "'7' is no mapping; expected COLUMN=CHANNEL, COLUMN=CHANNEL*FACTOR or "
        "COLUMN=CHANNEL*FACTOR+OFFSET"};
    std::set<std::string> sentences = sentencesIn(QString(BOTHWAYS_SOURCE_DIR) + "/storage");
    sentences.merge(sentencesIn(QString(BOTHWAYS_SOURCE_DIR) + "/core"));
    ASSERT_GT(sentences.size(), 60U) << "the scanner found nothing";
    for (const std::string& sentence : sentences)
        EXPECT_TRUE(otherwise.count(sentence) > 0 || isRecognised(sentence))
            << sentence << ": write its pattern into app/desktop/look/error_patterns.cpp";
    EXPECT_FALSE(isRecognised("a sentence that nobody makes"));
}

TEST_F(DesktopTest, ErrorsAreSaidInGermanWithTheirValuesAndStayEnglishInEnglish)
{
    const auto file = storage::StudyFile::open(path("none.bothways").toStdString(), true);
    ASSERT_FALSE(file);
    EXPECT_EQ(translated(file.error().message.english()).toStdString(),
              file.error().message.english());
    const German german(preferences);
    EXPECT_EQ(sentenceOf(file.error()).toStdString(),
              "Die Datei gibt es nicht; erwartet wird eine Studie.");
    const auto sheet =
        storage::parseRunSheet("configuration,direction,start,l_per_100km,wind_from_deg\n"
                               "A,out,05:40,8.4,400\nA,return,noon,8.5,\nB,out,06:10,\"%1 km\",\n",
                               "morning.csv");
    ASSERT_FALSE(sheet);
    const QString all = describedHere(sheet.error());
    EXPECT_TRUE(all.contains("'400' ist unmöglich; erwartet wird eine Zahl von 0 bis"))
        << all.toStdString();
    EXPECT_TRUE(all.contains("'noon' ist kein Start; erwartet werden Datum und Uhrzeit wie"))
        << all.toStdString();
    EXPECT_TRUE(all.contains("'%1 km' ist keine endliche Zahl; erwartet wird"))
        << all.toStdString();
    EXPECT_FALSE(all.contains("expected")) << all.toStdString();
    core::LedgerOptions ledger;
    std::swap(ledger.generator.low, ledger.generator.high);
    EXPECT_EQ(
        translated(core::makeLedger(ledger).error().message.english()).toStdString(),
        "Wirkungsgrad des Generators: 0.8, 0.7, 0.6 angegeben; niedrig, mittel und hoch müssen "
        "aufsteigen");
    EXPECT_TRUE(all.startsWith("morning.csv:1: Spalte 'start': enthält Uhrzeiten;"))
        << all.toStdString();
}

TEST_F(DesktopTest, TheHistoryIsToldInGermanWhereItsWordsAreKnown)
{
    const German german(preferences);
    const auto told = [](const char* kind, const char* detail) {
        storage::HistoryEntry entry;
        entry.kind = kind;
        entry.detail = detail;
        return historyDetail(entry).toStdString();
    };
    EXPECT_EQ(told("edit_run", "run 9: duration_s '211' -> '213'"),
              "Fahrt 9: duration_s '211' -> '213'");
    EXPECT_EQ(told("pair", "runs 3, 4"), "Fahrten 3, 4");
    EXPECT_EQ(told("import", "morning.csv: 12 runs"), "morning.csv: 12 Fahrten");
    EXPECT_EQ(told("import_trace", "run_28.csv: 1355 rows, 6 channels, run 28"),
              "run_28.csv: 1355 Zeilen, 6 Kanäle, Fahrt 28");
    EXPECT_EQ(told("set", "name='run 5: fast'"), "name='run 5: fast'");
}

} // namespace bothways::app::tests
