// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/help/handbook.h"
#include "app/desktop/help/help_places.h"
#include "app/desktop/pages/help_topics.h"

#include <QDir>
#include <QImageReader>

#include <gtest/gtest.h>

namespace bothways::app::tests {
namespace {

const Handbook& handbook()
{
    static const Handbook book;
    return book;
}

::testing::AssertionResult explains(const QString& topic)
{
    if (handbook().has(HelpTopic::of(topic)))
        return ::testing::AssertionSuccess();
    return ::testing::AssertionFailure()
           << "the handbook has no " << topic.toStdString() << ": write a section of that name";
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
                                      Companion::labels, Companion::correlated})
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
         {Qualifier::openDesign, Qualifier::fragile, Qualifier::sensitive, Qualifier::assumptions,
          Qualifier::smallerThanMargin, Qualifier::interim})
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
    int links = 0;
    for (const HandbookPage& page : handbook().pages())
        for (const QString& link : page.links) {
            const HelpTopic topic = Handbook::linkFrom(page.name, link);
            EXPECT_TRUE(handbook().has(topic))
                << page.name.toStdString() << ".md: " << link.toStdString();
            ++links;
        }
    EXPECT_GE(links, 40);
}

TEST(HandbookTest, EveryPictureIsThereAndCanBeDrawnAndSaysWhatItShows)
{
    int pictures = 0;
    for (const HandbookPage& page : handbook().pages())
        for (const QString& picture : page.pictures) {
            EXPECT_FALSE(QImageReader(":/help/" + picture).read().isNull())
                << page.name.toStdString() << ".md: " << picture.toStdString();
            EXPECT_FALSE(page.markdown.contains("![](" + picture)) << picture.toStdString();
            ++pictures;
        }
    EXPECT_GE(pictures, 5);
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
    for (const HandbookPage& page : handbook().pages()) {
        QFile file(folder().filePath(page.name + ".md"));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << page.name.toStdString();
        EXPECT_EQ(QString::fromUtf8(file.readAll()), page.markdown) << page.name.toStdString();
    }
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
    for (const HandbookPage& page : handbook().pages()) {
        qsizetype columns = 0;
        for (const QString& line : page.markdown.split(u'\n')) {
            if (!line.startsWith(u'|')) {
                columns = 0;
                continue;
            }
            const qsizetype here = line.trimmed().count(u'|') - line.count("\\|");
            if (columns == 0)
                columns = here;
            EXPECT_EQ(here, columns) << page.name.toStdString() << ".md: " << line.toStdString();
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
