// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/printing/report_pages.h"
#include "app/output/report_model.h"
#include "core/answer/analyse.h"
#include "core/screening/finding.h"
#include "core/screening/screening.h"
#include "tests/support/plain_sheet.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QImage>
#include <QPainter>
#include <QPrinter>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTextDocumentFragment>

using namespace bothways;

namespace {

const QPageSize kA4(QPageSize::A4);
const QPageSize kLetter(QPageSize::Letter);

/// A study with everything that its report refers to.
struct Reported {
    core::Study study;
    core::Analysis analysis;
    core::Screening screening;
    explicit Reported(core::Study its)
        : study(std::move(its)), analysis(core::analyse(study, {})), screening(core::screen(study))
    {
    }
    app::ReportInput input() const
    {
        return {study,
                analysis,
                screening,
                {"2026-05-09T10:00:00Z new"},
                std::string(64, 'a'),
                "day.csv",
                app::wording::shownUnitOf(study),
                "Bothways of the tests"};
    }
};

core::Study example(const std::string& name)
{
    return bothways::tests::PlainSheet::read(
        std::string(BOTHWAYS_SOURCE_DIR "/tests/published/data/examples/") + name);
}

QImage pictureOf(const app::ReportPages& pages, int page, double dpi)
{
    const double scale = dpi / app::ReportPages::kUnitsPerInch;
    QImage image((pages.size() * scale).toSize(), QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(scale, scale);
    pages.paint(painter, page);
    return image;
}

/// Mean difference in grey levels, 0 to 255; 255 for pictures of two sizes.
double difference(const QImage& a, const QImage& b)
{
    if (a.size() != b.size())
        return 255.0;
    double sum = 0.0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            sum += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y)));
    return sum / (a.width() * a.height());
}

/// Text of each page by pdftotext; empty where that is not installed.
QStringList textOf(const QByteArray& pdf)
{
    const QString tool = QStandardPaths::findExecutable(QStringLiteral("pdftotext"));
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("report.pdf"));
    QFile target(file);
    if (tool.isEmpty() || !target.open(QIODevice::WriteOnly))
        return {};
    target.write(pdf);
    target.close();
    QProcess process;
    process.start(tool, {QStringLiteral("-layout"), file, QStringLiteral("-")});
    process.waitForFinished();
    // Ligatures back to letters.
    QStringList pages = QString::fromUtf8(process.readAllStandardOutput())
                            .normalized(QString::NormalizationForm_KC)
                            .split(QChar('\f'));
    pages.removeLast(); // each page ends with a form feed
    return pages;
}

QSet<QString> wordsOf(const QString& text)
{
    const QStringList words =
        text.split(QRegularExpression(QStringLiteral("[^\\p{L}\\p{N}.]+")), Qt::SkipEmptyParts);
    return {words.begin(), words.end()};
}

/// All that the web page says, pictures' alternative texts aside.
QString textOfHtml(const app::ReportInput& input)
{
    QString html = QString::fromStdString(app::reportHtml(input));
    html.remove(QRegularExpression(QStringLiteral("<(style|svg|title).*?</\\1>"),
                                   QRegularExpression::DotMatchesEverythingOption));
    html.replace(QStringLiteral("</td>"), QStringLiteral("</td> "));
    html.replace(QStringLiteral("</th>"), QStringLiteral("</th> "));
    return QTextDocumentFragment::fromHtml(html).toPlainText().normalized(
        QString::NormalizationForm_KC);
}

void keepForEyes(const QString& name, const QByteArray& pdf)
{
    const QString folder = qEnvironmentVariable("BOTHWAYS_PICTURES");
    QFile file(QDir(folder).filePath(name));
    if (!folder.isEmpty() && file.open(QIODevice::WriteOnly))
        file.write(pdf);
}

} // namespace

TEST(ReportPages, SayWhatTheWebPageSays)
{
    if (QStandardPaths::findExecutable(QStringLiteral("pdftotext")).isEmpty())
        GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
    for (const char* name : {"morning.csv", "roof_box_open.csv", "too_few.csv"}) {
        const Reported reported(example(name));
        const app::ReportInput input = reported.input();
        const QByteArray pdf = reportPdf(app::ReportPages(input, kA4), kA4);
        keepForEyes(QString::fromLatin1(name) + QStringLiteral(".pdf"), pdf);
        const QSet<QString> printed = wordsOf(textOf(pdf).join(QChar(' ')));
        const QSet<QString> shown = wordsOf(textOfHtml(input));
        ASSERT_GT(shown.size(), 200);
        // A long word may be broken at the end of a line; nothing else may be missing.
        const QSet<QString> missing = shown - printed;
        EXPECT_LE(missing.size(), 3) << QStringList(missing.values()).join(' ').toStdString();
    }
}

TEST(ReportPages, HaveNameChecksumAndNumberOnEach)
{
    core::Study study = example("morning.csv");
    study.properties.name = "A name <of> a study";
    const Reported reported(study);
    const app::ReportPages pages(reported.input(), kLetter);
    ASSERT_GT(pages.count(), 2);
    EXPECT_EQ(pages.title(), QStringLiteral("A name <of> a study"));
    const QStringList texts = textOf(reportPdf(pages, kLetter));
    if (texts.isEmpty())
        GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
    ASSERT_EQ(texts.size(), pages.count());
    for (int page = 0; page < pages.count(); ++page) {
        EXPECT_TRUE(texts[page].contains(QStringLiteral("A name <of> a study")));
        EXPECT_TRUE(texts[page].contains(QString(64, QChar('a'))));
        EXPECT_TRUE(
            texts[page].contains(QStringLiteral("%1 of %2").arg(page + 1).arg(pages.count())));
    }
}

TEST(ReportPages, AreOfThePaperThatWasAsked)
{
    const Reported reported(example("morning.csv"));
    for (const auto& [size, box] :
         {std::pair{kA4, "/MediaBox [0 0 595"}, std::pair{kLetter, "/MediaBox [0 0 612"}}) {
        const app::ReportPages pages(reported.input(), size);
        const QByteArray pdf = reportPdf(pages, size);
        keepForEyes(size.key() + ".pdf", pdf);
        EXPECT_TRUE(pdf.startsWith("%PDF-"));
        EXPECT_TRUE(pdf.contains(box)) << box;
        EXPECT_EQ(pdf.count("/Type /Page\n"), pages.count());
        EXPECT_EQ(pdf.count("/Subtype /Image"), 0); // lines and letters, no pictures of them
    }
}

TEST(ReportPages, RepeatTheHeadOfATableAndPartNoRow)
{
    core::Study study = example("morning.csv");
    for (core::Run& run : study.runs)
        run.notes = "first of run " + std::to_string(run.number) + std::string(160, '.') +
                    " last of run " + std::to_string(run.number) + " end";
    const Reported reported(study);
    const QStringList texts = textOf(reportPdf(app::ReportPages(reported.input(), kA4), kA4));
    if (texts.isEmpty())
        GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
    int pagesWithRuns = 0;
    for (const QString& text : texts) {
        const bool runs = text.contains(QStringLiteral("first of run"));
        pagesWithRuns += runs ? 1 : 0;
        EXPECT_EQ(runs, text.contains(QStringLiteral("reason, evidence, notes")));
        for (const core::Run& run : study.runs) {
            const auto says = [&](const char* which) {
                return text.contains(QRegularExpression(QStringLiteral("%1 of\\s+run\\s+%2\\b")
                                                            .arg(QLatin1String(which))
                                                            .arg(run.number)));
            };
            EXPECT_EQ(says("first"), says("last")) << run.number;
        }
    }
    EXPECT_GT(pagesWithRuns, 1);
}

TEST(ReportPages, LoseNothingOfARowThatIsTallerThanAPage)
{
    core::Study study = example("morning.csv");
    for (int i = 0; i < 3000; ++i)
        study.runs[3].notes += "word" + std::to_string(i) + " ";
    const Reported reported(study);
    const app::ReportPages pages(reported.input(), kA4);
    const QStringList texts = textOf(reportPdf(pages, kA4));
    if (texts.isEmpty())
        GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
    const QSet<QString> printed = wordsOf(texts.join(QChar(' ')));
    for (int i = 0; i < 3000; i += 37)
        EXPECT_TRUE(printed.contains(QStringLiteral("word%1").arg(i))) << i;
    EXPECT_LT(pages.count(), 40);
}

TEST(ReportPages, TakeAStudyWithoutRuns)
{
    const Reported reported{core::Study{}};
    const app::ReportPages pages(reported.input(), kA4);
    EXPECT_GE(pages.count(), 1);
    EXPECT_TRUE(reportPdf(pages, kA4).startsWith("%PDF-"));
}

TEST(ReportPages, ArePrintedAsTheyAreSaved)
{
    const Reported reported(example("too_few.csv"));
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("printed.pdf"));
    {
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(file);
        printer.setPageSize(kLetter);
        ASSERT_TRUE(printReportOn(printer, reported.input()));
    }
    QFile printed(file);
    ASSERT_TRUE(printed.open(QIODevice::ReadOnly));
    const app::ReportPages pages(reported.input(), kLetter);
    const QByteArray bytes = printed.readAll();
    EXPECT_EQ(bytes.count("/Type /Page\n"), pages.count());
    EXPECT_EQ(textOf(bytes), textOf(reportPdf(pages, kLetter)));
}

/// The first pages against pictures that were looked at. To renew after a wanted change:
/// BOTHWAYS_RENEW_GOLDEN=1 build/PRESET/bin/printing_tests, then look at the pictures.
/// Tolerance: other versions of the font rasteriser differ by less than 1 grey level in the mean;
/// a missing line of text on a page of 35 dots an inch makes more than that, another study does
/// too.
TEST(ReportPages, LookAsTheyDidWhenTheyWereLookedAt)
{
    constexpr double kDpi = 35.0, kAllowed = 1.0;
    const Reported reported(example("morning.csv"));
    const app::ReportPages pages(reported.input(), kA4);
    const app::ReportPages others(Reported(example("roof_box_open.csv")).input(), kA4);
    for (int page = 0; page < 4; ++page) {
        const QString golden = QStringLiteral("%1/tests/app/desktop/printing/golden/morning_%2.png")
                                   .arg(QLatin1String(BOTHWAYS_SOURCE_DIR))
                                   .arg(page + 1);
        const QImage now = pictureOf(pages, page, kDpi);
        if (qEnvironmentVariableIsSet("BOTHWAYS_RENEW_GOLDEN")) {
            ASSERT_TRUE(now.save(golden)) << golden.toStdString();
        }
        QImage then(golden);
        ASSERT_FALSE(then.isNull()) << golden.toStdString();
        EXPECT_LT(difference(now, then), kAllowed) << page + 1;
        EXPECT_GT(difference(pictureOf(others, page, kDpi), then), kAllowed) << page + 1;
    }
}
