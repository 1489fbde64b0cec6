// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/appearance.h"
#include "tests/app/desktop/desktop_fixture.h"

#include <QApplication>
#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include <set>

namespace bothways::app::tests {
namespace {

QByteArray contents(const QString& file)
{
    QFile source(file);
    EXPECT_TRUE(source.open(QIODevice::ReadOnly)) << file.toStdString();
    return source.readAll();
}

/// Every string with %n in the window's sources, neighbouring literals joined as in C++.
std::set<QString> countedTexts()
{
    std::set<QString> texts;
    static const QRegularExpression kLiterals(R"(tr\(\s*((?:"(?:[^"\\]|\\.)*"\s*)+))");
    static const QRegularExpression kJoint(R"("\s*")");
    QDirIterator files(QString(BOTHWAYS_SOURCE_DIR) + "/app/desktop", {"*.cpp"}, QDir::Files,
                       QDirIterator::Subdirectories);
    while (files.hasNext()) {
        auto found = kLiterals.globalMatch(QString::fromUtf8(contents(files.next())));
        while (found.hasNext()) {
            QString text = found.next().captured(1).trimmed();
            text = text.mid(1, text.size() - 2).remove(kJoint);
            text.replace("\\u00a0", QChar(0xA0));
            if (text.contains("%n"))
                texts.insert(text);
        }
    }
    return texts;
}

/// Sources of the English file with both of their forms.
std::set<QString> pluralsIn(const QString& file)
{
    std::set<QString> texts;
    const QByteArray bytes = contents(file);
    QXmlStreamReader xml(bytes);
    QString source;
    int forms = 0;
    while (!xml.atEnd()) {
        const auto token = xml.readNext();
        if (token == QXmlStreamReader::StartElement && xml.name() == u"source") {
            source = xml.readElementText();
            forms = 0;
        } else if (token == QXmlStreamReader::StartElement && xml.name() == u"numerusform") {
            forms += xml.readElementText().isEmpty() ? 0 : 1;
        } else if (token == QXmlStreamReader::EndElement && xml.name() == u"message" &&
                   forms == 2) {
            texts.insert(source);
        }
    }
    return texts;
}

} // namespace

TEST(Translations, EveryCountedSentenceHasAnEnglishSingularAndPlural)
{
    const std::set<QString> counted = countedTexts();
    ASSERT_GT(counted.size(), 10U) << "the scanner found nothing";
    const auto known =
        pluralsIn(QString(BOTHWAYS_SOURCE_DIR) + "/resources/translations/bothways_en.ts");
    for (const QString& text : counted)
        EXPECT_EQ(known.count(text), 1U)
            << text.toStdString() << ": build the target update_translations, then fill it in";
}

TEST_F(DesktopTest, OneRunAndTwoRunsAreSaidAsPeopleSayThem)
{
    installTranslation(*qobject_cast<QApplication*>(QCoreApplication::instance()), preferences);
    EXPECT_EQ(MainWindow::tr("%n run(s)", nullptr, 1), "1 run");
    EXPECT_EQ(MainWindow::tr("%n run(s)", nullptr, 2), "2 runs");
}

} // namespace bothways::app::tests
