// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/study_files.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/plots/plot_view.h"
#include "app/desktop/window/preferences_dialog.h"
#include "storage/sheet/run_sheet.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/app/desktop/support/german.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDirIterator>
#include <QFile>
#include <QLabel>
#include <QMenuBar>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTranslator>
#include <QXmlStreamReader>

#include <set>
#include <vector>

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

/// A text of a translation file.
struct Text {
    QString context, source, comment;
    bool counted = false; ///< has a form for one and one for many
    bool finished = true;
    QStringList translations{};

    [[nodiscard]] QString key() const
    {
        return QStringList{context, source, comment, counted ? "n" : ""}.join(u'|');
    }
};

std::vector<Text> textsIn(const QString& file)
{
    std::vector<Text> texts;
    const QByteArray bytes = contents(file);
    QXmlStreamReader xml(bytes);
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (xml.name() == u"name") {
            context = xml.readElementText();
        } else if (xml.name() == u"message") {
            Text text;
            text.context = context;
            text.counted = xml.attributes().value("numerus") == u"yes";
            texts.push_back(text);
        } else if (texts.empty()) {
            continue;
        } else if (xml.name() == u"source") {
            texts.back().source = xml.readElementText();
        } else if (xml.name() == u"comment") {
            texts.back().comment = xml.readElementText();
        } else if (xml.name() == u"translation") {
            texts.back().finished = !xml.attributes().hasAttribute("type");
            if (!texts.back().counted)
                texts.back().translations += xml.readElementText();
        } else if (xml.name() == u"numerusform") {
            texts.back().translations += xml.readElementText();
        }
    }
    EXPECT_FALSE(xml.hasError()) << file.toStdString() << ": " << xml.errorString().toStdString();
    return texts;
}

/// Places for numbers and words, and tags, each as often as it is there.
QStringList placeholdersOf(const QString& text)
{
    static const QRegularExpression kPlaceholder("%L?\\d+|%n|</?\\w+[^>]*>");
    QStringList found;
    auto matches = kPlaceholder.globalMatch(text);
    while (matches.hasNext())
        found += matches.next().captured();
    found.sort();
    return found;
}

/// Spaces and line breaks at the ends of a text: a unit behind a number needs its space.
QString endsOf(const QString& text)
{
    const auto blank = [](QChar c) { return c.isSpace() ? QString(c) : QString("x"); };
    return blank(text.front()) + blank(text.back());
}

const QString kGerman = QString(BOTHWAYS_SOURCE_DIR) + "/resources/translations/bothways_de.ts";

QString wordsOn(const QWidget& page)
{
    QStringList words;
    for (const QLabel* label : page.findChildren<QLabel*>())
        words += label->text();
    return words.join(u'\n');
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

TEST(Translations, GermanSaysEveryText)
{
    const std::vector<Text> texts = textsIn(kGerman);
    ASSERT_GT(texts.size(), 900U);
    for (const Text& text : texts) {
        EXPECT_TRUE(text.finished) << text.key().toStdString() << " is unfinished";
        EXPECT_EQ(text.translations.size(), text.counted ? 2 : 1) << text.key().toStdString();
        for (const QString& translation : text.translations)
            EXPECT_FALSE(translation.trimmed().isEmpty() && !text.source.trimmed().isEmpty())
                << text.key().toStdString() << " is empty";
    }
}

TEST(Translations, GermanKeepsPlaceholdersMnemonicsAndOuterSpaces)
{
    for (const Text& text : textsIn(kGerman))
        for (const QString& translation : text.translations) {
            if (translation.isEmpty() || text.source.isEmpty())
                continue;
            EXPECT_EQ(placeholdersOf(translation), placeholdersOf(text.source))
                << text.key().toStdString() << " -> " << translation.toStdString();
            EXPECT_EQ(translation.count('&'), text.source.count('&'))
                << text.key().toStdString() << " -> " << translation.toStdString();
            EXPECT_EQ(endsOf(translation), endsOf(text.source)) << text.key().toStdString();
        }
}

TEST(Translations, GermanKeepsKeysThatQtUnderstands)
{
    static const QRegularExpression kKeys("^((Ctrl|Shift|Alt)\\+)+(\\w+|,)$|^F\\d+$");
    int keys = 0;
    for (const Text& text : textsIn(kGerman))
        if (kKeys.match(text.source).hasMatch()) {
            ++keys;
            EXPECT_EQ(text.translations, QStringList(text.source));
        }
    EXPECT_GT(keys, 10);
}

TEST(Translations, GermanHasTheTextsOfTheSources)
{
    const QString lupdate(BOTHWAYS_LUPDATE);
    if (!QFile::exists(lupdate))
        GTEST_SKIP() << "no lupdate at " << BOTHWAYS_LUPDATE;
    const QTemporaryDir folder;
    const QString fresh = folder.filePath("fresh_de.ts");
    QProcess process;
    process.start(lupdate, {"-silent", "-I", BOTHWAYS_SOURCE_DIR, "-no-obsolete", "-locations",
                            "none", QString(BOTHWAYS_SOURCE_DIR) + "/app/desktop", "-ts", fresh});
    ASSERT_TRUE(process.waitForFinished(120'000)) << process.errorString().toStdString();
    ASSERT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    std::set<QString> said, kept;
    for (const Text& text : textsIn(fresh))
        said.insert(text.key());
    for (const Text& text : textsIn(kGerman))
        kept.insert(text.key());
    ASSERT_GT(said.size(), 900U) << "lupdate found nothing";
    for (const QString& key : said)
        EXPECT_EQ(kept.count(key), 1U)
            << key.toStdString() << ": build the target update_translations, then say it in German";
    for (const QString& key : kept)
        EXPECT_EQ(said.count(key), 1U) << key.toStdString() << " is in no source any more";
}

TEST_F(DesktopTest, OneRunAndTwoRunsAreSaidAsPeopleSayThem)
{
    installTranslation(*qobject_cast<QApplication*>(QCoreApplication::instance()), preferences);
    EXPECT_EQ(MainWindow::tr("%n run(s)", nullptr, 1), "1 run");
    EXPECT_EQ(MainWindow::tr("%n run(s)", nullptr, 2), "2 runs");
}

TEST_F(DesktopTest, AWindowInGermanSaysTheVerdictInGermanAndWritesFilesAsInEnglish)
{
    std::string english;
    {
        MainWindow window(preferences, clock());
        window.openDemo();
        settle(*window.document());
        english = storage::writeRunSheet(window.document()->study());
    }
    const German german(preferences);
    MainWindow window(preferences, clock());
    window.show();
    window.openDemo();
    settle(*window.document());
    QStringList menus;
    for (const QAction* menu : window.menuBar()->actions())
        menus += menu->text();
    EXPECT_EQ(menus,
              QStringList({"&Datei", "&Bearbeiten", "&Fahrt", "&Studie", "Auf&zeichnen", "&Ansicht", "&Hilfe"}));
    ASSERT_TRUE(window.showPage("result"));
    const auto* page = window.findChild<QWidget*>("resultPage");
    ASSERT_NE(page, nullptr);
    const QString words = wordsOn(*page);
    EXPECT_TRUE(words.contains(QString::fromUtf8("95\u2011%-Intervall"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QRegularExpression("\\d,\\d"))) << words.toStdString();
    EXPECT_FALSE(words.contains(QRegularExpression("\\d\\.\\d"))) << words.toStdString();

    const QString sheet = path("sheet.csv");
    ASSERT_TRUE(exportSheet(window.document()->study(), sheet));
    const QByteArray written = contents(sheet);
    EXPECT_EQ(written.toStdString(), english);
    EXPECT_TRUE(QString::fromUtf8(written).contains(QRegularExpression(",\\d+\\.\\d+,")));
}

TEST_F(DesktopTest, NumbersOfAPlotAreSavedWithPointsInGermanToo)
{
    const German german(preferences);
    MainWindow window(preferences, clock());
    window.show();
    window.openDemo();
    settle(*window.document());
    auto* page = window.findChild<QWidget*>("resultPage");
    ASSERT_NE(page, nullptr);
    const auto plots = page->findChildren<PlotView*>();
    ASSERT_FALSE(plots.isEmpty());
    for (PlotView* plot : plots) {
        if (plot->numbers().isEmpty())
            continue; // each day for itself, where there is one day
        const QString file = path(plot->objectName() + ".csv");
        ASSERT_EQ(plot->save(file), "");
        const QString numbers = QString::fromUtf8(contents(file));
        EXPECT_TRUE(numbers.contains(QRegularExpression("\\d\\.\\d"))) << numbers.toStdString();
    }
}

TEST_F(DesktopTest, GermanIsOfferedInItsOwnWordsAndForTheNextStart)
{
    PreferencesDialog dialog(preferences);
    auto* languages = dialog.findChild<QComboBox*>("language");
    ASSERT_NE(languages, nullptr);
    const int german = languages->findText("Deutsch");
    ASSERT_GE(german, 0);
    EXPECT_GE(languages->findText("English"), 0);
    EXPECT_TRUE(wordsOn(dialog).contains("next start"));
    languages->setCurrentIndex(german);
    EXPECT_EQ(preferences.language(), "de");
}

TEST_F(DesktopTest, GermanSaysOneAndManyAndTheButtonsOfQt)
{
    const German german(preferences);
    EXPECT_EQ(MainWindow::tr("%n run(s)", nullptr, 1), "1 Fahrt");
    EXPECT_EQ(MainWindow::tr("%n run(s)", nullptr, 2), "2 Fahrten");
    PreferencesDialog dialog(preferences);
    const auto* box = dialog.findChild<QDialogButtonBox*>();
    ASSERT_NE(box, nullptr);
    EXPECT_TRUE(box->button(QDialogButtonBox::Close)->text().remove('&').startsWith("Schlie"));
}

} // namespace bothways::app::tests
