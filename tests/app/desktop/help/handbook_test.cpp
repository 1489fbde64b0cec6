// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/help/handbook.h"
#include "app/desktop/help/help_places.h"
#include "app/desktop/look/help_topics.h"

#include <QDir>
#include <QImageReader>
#include <QRegularExpression>

#include <gtest/gtest.h>

namespace bothways::app::tests {
namespace {

const Handbook& handbook()
{
    static const Handbook book;
    return book;
}

const Handbook& germanHandbook()
{
    static const Handbook book("de");
    return book;
}

/// Every page of both languages.
QList<HandbookPage> allPages()
{
    return handbook().pages() + germanHandbook().pages();
}

std::string fileOf(const HandbookPage& page)
{
    return (page.folder + page.name + ".md").toStdString();
}

/// The figures of a text, in order of size. Between backquotes they are in C form in any language.
QStringList figuresOf(const QString& text, bool german)
{
    static const QRegularExpression figure(R"(\d+(?:[.,]\d+)*)");
    QStringList figures;
    const QStringList parts = text.split(u'`');
    for (qsizetype i = 0; i < parts.size(); ++i)
        for (auto it = figure.globalMatch(parts[i]); it.hasNext();) {
            QString found = it.next().captured();
            if (i % 2 == 0)
                found = german ? found.remove(u'.').replace(u',', u'.') : found.remove(u',');
            figures += found;
        }
    figures.sort();
    return figures;
}

::testing::AssertionResult explains(const QString& topic)
{
    for (const Handbook* book : {&handbook(), &germanHandbook()})
        if (!book->has(HelpTopic::of(topic)))
            return ::testing::AssertionFailure()
                   << "the handbook" << (book == &handbook() ? "" : " in German") << " has no "
                   << topic.toStdString() << ": write a section of that name";
    return ::testing::AssertionSuccess();
}

QDir folder()
{
    return QDir(QStringLiteral(BOTHWAYS_SOURCE_DIR "/resources/help"));
}

} // namespace

TEST(HandbookTest, EveryRuleIsExplainedUnderItsName)
{
    ASSERT_GE(core::allRules().size(), 20U);
    for (const core::Rule rule : core::allRules())
        EXPECT_TRUE(explains(helpTopic(rule)));
}

TEST(HandbookTest, EveryCheckIsExplainedUnderItsName)
{
    for (const CheckKind check : kCheckKinds)
        EXPECT_TRUE(explains(helpTopic(check)));
}

TEST(HandbookTest, EveryCompanionIsExplainedUnderItsName)
{
    using core::Companion;
    for (const Companion companion : {Companion::bracket, Companion::runs, Companion::blocks,
                                      Companion::curved, Companion::labels, Companion::correlated,
                                      Companion::anyLook, Companion::borrowed, Companion::days})
        EXPECT_TRUE(explains(helpTopic(companion)));
    EXPECT_TRUE(explains("companions#settings"));
}

TEST(HandbookTest, EveryVerdictAndEachWordBesideItIsExplained)
{
    using core::Qualifier;
    using core::VerdictClass;
    for (const VerdictClass cls : {VerdictClass::less, VerdictClass::more, VerdictClass::equivalent,
                                   VerdictClass::undecided, VerdictClass::none})
        EXPECT_TRUE(explains(helpTopic(cls)));
    for (const Qualifier qualifier :
         {Qualifier::openDesign, Qualifier::fragile, Qualifier::needsIndependence,
          Qualifier::sensitive, Qualifier::assumptions, Qualifier::smallerThanMargin,
          Qualifier::looked, Qualifier::interim, Qualifier::planLate})
        EXPECT_TRUE(explains(helpTopic(qualifier)));
}

TEST(HandbookTest, EveryPlaceOfTheWindowHasItsPage)
{
    for (const HelpPlace& place : helpPlaces())
        EXPECT_TRUE(explains(place.topic)) << place.object;
}

TEST(HandbookTest, WhatIsNotThereIsNotFound)
{
    EXPECT_FALSE(explains("rules#no_such_rule"));
    EXPECT_FALSE(explains("no_such_page"));
}

TEST(HandbookTest, EveryLinkLeadsSomewhere)
{
    for (const Handbook* book : {&handbook(), &germanHandbook()}) {
        int links = 0;
        for (const HandbookPage& page : book->pages())
            for (const QString& link : page.links) {
                const HelpTopic topic = Handbook::linkFrom(page.name, link);
                EXPECT_TRUE(book->has(topic)) << fileOf(page) << ": " << link.toStdString();
                ++links;
            }
        EXPECT_GE(links, 40);
    }
}

TEST(HandbookTest, EveryPictureIsThereAndCanBeDrawnAndSaysWhatItShows)
{
    int pictures = 0;
    for (const HandbookPage& page : allPages())
        for (const QString& picture : page.pictures) {
            EXPECT_FALSE(QImageReader(":/help/" + page.folder + picture).read().isNull())
                << fileOf(page) << ": " << picture.toStdString();
            EXPECT_FALSE(page.markdown.contains("![](" + picture)) << picture.toStdString();
            ++pictures;
        }
    EXPECT_GE(pictures, 10);
}

TEST(HandbookTest, EveryFileOfTheRepositoryIsInTheHandbook)
{
    for (const QString& file : folder().entryList({"*.md"}))
        EXPECT_TRUE(explains(file.chopped(3)));
    QStringList used;
    for (const HandbookPage& page : handbook().pages())
        used += page.pictures;
    for (const QString& file : QDir(folder().filePath("pictures")).entryList({"*.svg"}))
        EXPECT_TRUE(used.contains("pictures/" + file)) << file.toStdString();
}

TEST(HandbookTest, ThePagesThatAreCompiledInAreThoseOfTheRepository)
{
    for (const HandbookPage& page : allPages()) {
        const QString name = page.folder + page.name + ".md";
        QFile file(folder().filePath(name));
        QFile compiledIn(":/help/" + name);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << fileOf(page);
        ASSERT_TRUE(compiledIn.open(QIODevice::ReadOnly)) << fileOf(page);
        EXPECT_EQ(file.readAll(), compiledIn.readAll()) << fileOf(page);
    }
}

TEST(HandbookTest, TheGermanHandbookHasThePagesSectionsAndPicturesOfTheEnglish)
{
    ASSERT_EQ(germanHandbook().pages().size(), handbook().pages().size());
    for (const HandbookPage& english : handbook().pages()) {
        const HandbookPage* german = germanHandbook().page(english.name);
        ASSERT_TRUE(german) << english.name.toStdString();
        EXPECT_EQ(german->folder, "de/") << english.name.toStdString() << " is in English";
        EXPECT_EQ(german->pictures, english.pictures) << fileOf(english);
        EXPECT_FALSE(german->markdown.contains("<a id=")) << fileOf(*german);
        ASSERT_EQ(german->sections.size(), english.sections.size()) << fileOf(english);
        for (qsizetype i = 1; i < english.sections.size(); ++i) {
            EXPECT_EQ(german->sections[i].anchor.toStdString(),
                      english.sections[i].anchor.toStdString())
                << fileOf(*german);
            EXPECT_EQ(german->sections[i].level, english.sections[i].level) << fileOf(*german);
        }
    }
}

TEST(HandbookTest, TheGermanHandbookHasTheLinksAndTheFiguresOfTheEnglish)
{
    for (const HandbookPage& english : handbook().pages()) {
        const HandbookPage* german = germanHandbook().page(english.name);
        ASSERT_TRUE(german) << english.name.toStdString();
        QStringList here = german->links;
        QStringList there = english.links;
        here.sort();
        there.sort();
        EXPECT_EQ(here, there) << fileOf(english);
        const QStringList lines = english.markdown.split(u'\n');
        const QStringList germanLines = german->markdown.split(u'\n');
        ASSERT_EQ(germanLines.size(), lines.size()) << fileOf(*german);
        for (qsizetype i = 0; i < lines.size(); ++i) {
            if (germanLines[i] == lines[i])
                continue; // a command, an address
            EXPECT_EQ(figuresOf(germanLines[i], true).join(u' ').toStdString(),
                      figuresOf(lines[i], false).join(u' ').toStdString())
                << fileOf(*german) << ':' << i + 1;
        }
    }
    EXPECT_EQ(figuresOf("40,000 times 0.5 in `0.2`", false),
              figuresOf("40.000-mal 0,5 in `0.2`", true));
    EXPECT_NE(figuresOf("0.5", false), figuresOf("0,6", true));
}

TEST(HandbookTest, EveryGermanFileOfTheRepositoryIsInTheHandbook)
{
    const QDir german(folder().filePath("de"));
    EXPECT_EQ(german.entryList({"*.md"}), folder().entryList({"*.md"}));
    EXPECT_EQ(QDir(german.filePath("pictures")).entryList({"*.svg"}),
              QDir(folder().filePath("pictures")).entryList({"*.svg"}));
}

TEST(HandbookTest, AHeadingIsLinkedToAsWhereTheRepositoryIsRead)
{
    EXPECT_EQ(anchorOf("12. What this method is known to do"),
              "12-what-this-method-is-known-to-do");
    EXPECT_EQ(anchorOf("Baseline, device, baseline: A B A"), "baseline-device-baseline-a-b-a");
    EXPECT_EQ(anchorOf("accessory_timer"), "accessory_timer");
}

TEST(HandbookTest, TablesKeepTheirColumns)
{
    // A bar inside a cell would part it in two.
    for (const HandbookPage& page : allPages()) {
        qsizetype columns = 0;
        for (const QString& line : page.markdown.split(u'\n')) {
            if (!line.startsWith(u'|')) {
                columns = 0;
                continue;
            }
            const qsizetype here = line.trimmed().count(u'|') - line.count("\\|");
            if (columns == 0)
                columns = here;
            EXPECT_EQ(here, columns) << fileOf(page) << ": " << line.toStdString();
        }
    }
}

TEST(HandbookTest, ASearchFindsSectionsWithAllWordsHeadingsFirst)
{
    const QList<HandbookHit> hits = handbook().search("overspeed");
    ASSERT_FALSE(hits.isEmpty());
    EXPECT_EQ(hits.front().topic.text(), "rules#overspeed");
    const QList<HandbookHit> both = handbook().search("Pettitt   output");
    ASSERT_FALSE(both.isEmpty());
    EXPECT_TRUE(std::any_of(both.begin(), both.end(), [](const HandbookHit& hit) {
        return hit.topic.text() == "rules#output_drop" &&
               hit.excerpt.contains("output", Qt::CaseInsensitive);
    }));
    EXPECT_TRUE(handbook().search("zeppelin").isEmpty());
    EXPECT_TRUE(handbook().search("  ").isEmpty());
}

TEST(HandbookTest, ALanguageWithoutAPageReadsTheEnglishOne)
{
    const Handbook book("xx");
    EXPECT_EQ(book.pages().size(), handbook().pages().size());
    EXPECT_EQ(book.page("rules")->markdown, handbook().page("rules")->markdown);
}

} // namespace bothways::app::tests
