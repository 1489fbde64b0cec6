// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_html.h"
#include "core/answer/analyse.h"
#include "core/screening/finding.h"
#include "core/screening/screening.h"
#include "tests/support/plain_sheet.h"

#include <gtest/gtest.h>

#include <QColor>
#include <QMap>
#include <QRegularExpression>
#include <QSet>
#include <QXmlStreamReader>

#include <cmath>

using namespace bothways;

namespace {

QString reportOf(const std::string& name, const std::string& title = {})
{
    core::Study study = bothways::tests::PlainSheet::read(
        std::string(BOTHWAYS_SOURCE_DIR "/tests/published/data/examples/") + name);
    study.properties.name = title;
    const core::Analysis analysis = core::analyse(study, {});
    const core::Screening screening = core::screen(study);
    return QString::fromStdString(
        app::reportHtml({study, analysis, screening, {"<one> & 'two'"}, "00ff", "day.csv"}));
}

/// Where an element may stand: HTML Living Standard, sections 4.3 to 4.9 and 4.8.17 (content
/// models), for the elements that a report has; nothing else may be in it.
const QMap<QString, QSet<QString>>& parents()
{
    static const QSet<QString> flow{"main", "div", "figure"};
    static const QSet<QString> phrasing{"p", "li", "td", "th", "h1", "h2", "h3", "figcaption"};
    static const QMap<QString, QSet<QString>> kParents{
        {"html", {""}},
        {"head", {"html"}},
        {"meta", {"head"}},
        {"title", {"head", "circle", "path", "rect"}},
        {"style", {"head"}},
        {"body", {"html"}},
        {"main", {"body"}},
        {"h1", {"main"}},
        {"h2", {"main"}},
        {"h3", {"main"}},
        {"p", {"main"}},
        {"ul", {"main"}},
        {"li", {"ul"}},
        {"figure", {"main"}},
        {"figcaption", {"figure"}},
        {"div", flow},
        {"table", {"div"}},
        {"thead", {"table"}},
        {"tbody", {"table"}},
        {"tr", {"thead", "tbody"}},
        {"th", {"tr"}},
        {"td", {"tr"}},
        {"b", phrasing},
        {"i", phrasing},
        {"s", phrasing},
        {"sub", phrasing},
        {"sup", phrasing},
        {"svg", {"div"}},
        {"line", {"svg"}},
        {"rect", {"svg"}},
        {"circle", {"svg"}},
        {"path", {"svg"}},
        {"text", {"svg"}}};
    return kParents;
}

/// What breaks a rule; empty when nothing does. Well-formedness (each tag closed, attributes quoted
/// and single, entities known) is XML's, judged by Qt's reader.
// Long: one walk through the page, a question at each element.
QStringList faultsOf(const QString& html)
{
    QStringList faults;
    QXmlStreamReader xml(html);
    QStringList open{QString()};
    QSet<QString> ids;
    int heading = 0, h1 = 0, columns = 0, cells = 0;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement()) {
            const QString name = xml.name().toString();
            const auto allowed = parents().constFind(name);
            if (allowed == parents().constEnd())
                faults += QStringLiteral("unknown element %1").arg(name);
            else if (!allowed->contains(open.last()) &&
                     !(QSet<QString>{"b", "i", "s", "sub", "sup"}.contains(open.last()) &&
                       allowed->contains(QStringLiteral("p"))))
                faults += QStringLiteral("%1 in %2").arg(name, open.last());
            const QXmlStreamAttributes attributes = xml.attributes();
            const QString id = attributes.value(QStringLiteral("id")).toString();
            if (!id.isEmpty() && ids.contains(id))
                faults += QStringLiteral("id %1 twice").arg(id);
            ids.insert(id);
            for (const QXmlStreamAttribute& attribute : attributes)
                if (attribute.name().startsWith(QLatin1String("on")) ||
                    attribute.name() == QLatin1String("style"))
                    faults += attribute.name().toString();
            if (QRegularExpression(QStringLiteral("^h[1-6]$")).match(name).hasMatch()) {
                const int level = name.mid(1).toInt();
                h1 += level == 1 ? 1 : 0;
                if (level > heading + 1)
                    faults += QStringLiteral("h%1 after h%2").arg(level).arg(heading);
                heading = level;
            }
            const QString role = attributes.value(QStringLiteral("role")).toString();
            if ((name == QLatin1String("svg") || role == QLatin1String("region")) &&
                attributes.value(QStringLiteral("aria-label")).trimmed().isEmpty())
                faults += QStringLiteral("%1 without a name").arg(name);
            if (name == QLatin1String("svg") && role != QLatin1String("img"))
                faults += QStringLiteral("svg that is no img");
            if (name == QLatin1String("th") && !attributes.hasAttribute(QStringLiteral("scope")))
                faults += QStringLiteral("th without scope");
            if (name == QLatin1String("table"))
                columns = 0;
            if (name == QLatin1String("tr"))
                cells = 0;
            cells += name == QLatin1String("th") || name == QLatin1String("td") ? 1 : 0;
            open += name;
        } else if (xml.isEndElement()) {
            if (xml.name() == QLatin1String("tr")) {
                if (columns != 0 && cells != columns)
                    faults +=
                        QStringLiteral("a row of %1 cells in %2 columns").arg(cells).arg(columns);
                columns = cells;
            }
            open.removeLast();
        }
    }
    if (xml.hasError())
        faults += QStringLiteral("line %1: %2").arg(xml.lineNumber()).arg(xml.errorString());
    if (h1 != 1)
        faults += QStringLiteral("%1 h1").arg(h1);
    return faults;
}

/// Relative luminance and contrast: WCAG 2.1, "relative luminance", "contrast ratio".
double luminance(const QColor& colour)
{
    const auto part = [](double c) {
        return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * part(colour.redF()) + 0.7152 * part(colour.greenF()) +
           0.0722 * part(colour.blueF());
}

double contrastSeen(const QColor& a, const QColor& b)
{
    const double one = luminance(a) + 0.05, two = luminance(b) + 0.05;
    return std::max(one, two) / std::min(one, two);
}

} // namespace

TEST(ReportValidity, TheCheckerSeesWhatIsWrong)
{
    const QString good = reportOf("morning.csv");
    ASSERT_EQ(faultsOf(good), QStringList());
    const auto broken = [&](const char* what, const char* by) {
        QString html = good;
        const auto at = html.indexOf(QLatin1String(what));
        EXPECT_GE(at, 0) << what;
        return faultsOf(html.replace(at, static_cast<qsizetype>(qstrlen(what)), QLatin1String(by)));
    };
    EXPECT_FALSE(broken("</p>", "").isEmpty());
    EXPECT_FALSE(broken("class=\"verdict\"", "class=verdict").isEmpty());
    EXPECT_FALSE(broken("<h2>", "<h2 id=\"a\"><h3 id=\"a\"/>").isEmpty());
    EXPECT_FALSE(broken("role=\"img\"", "").isEmpty());
    EXPECT_FALSE(broken("<ul>", "<ul><p>x</p>").isEmpty());
    EXPECT_FALSE(broken("<td>", "<td/><td>").isEmpty());
    EXPECT_FALSE(broken("<h1>", "<h1 onclick=\"x()\">").isEmpty());
}

TEST(ReportValidity, HoldsForEveryKindOfVerdict)
{
    for (const char* name : {"morning.csv", "roof_box_open.csv", "too_few.csv"}) {
        EXPECT_EQ(faultsOf(reportOf(name)).join('\n').toStdString(), "") << name;
        EXPECT_EQ(faultsOf(reportOf(name, "<b> & \" \x01 ' ]]>")).join('\n').toStdString(), "")
            << name;
    }
}

TEST(ReportValidity, TextStandsOutFromWhatIsBehindIt)
{
    EXPECT_NEAR(contrastSeen(Qt::black, Qt::white), 21.0, 1e-9);
    const QString css = reportOf("morning.csv");
    // What text is written in: "color:" of the page, "fill:" of the pictures' labels.
    QRegularExpression text(
        QStringLiteral("(?<![-\\w])color: (#[0-9a-f]{3,6})|label \\{[^}]*fill: (#[0-9a-f]{6})"));
    int seen = 0;
    for (auto it = text.globalMatch(css); it.hasNext(); ++seen) {
        const QRegularExpressionMatch match = it.next();
        const QColor colour(match.captured(1).isEmpty() ? match.captured(2) : match.captured(1));
        ASSERT_TRUE(colour.isValid());
        for (const char* behind : {"#ffffff", "#e4e4e4", "#e3f0fa"})
            if (!match.captured(2).isEmpty() || QLatin1String(behind) == QLatin1String("#ffffff")) {
                EXPECT_GE(contrastSeen(colour, QColor(behind)), 4.5) // WCAG 2.1, 1.4.3, level AA
                    << match.captured().toStdString() << " on " << behind;
            }
    }
    EXPECT_GE(seen, 5);
}

TEST(ReportValidity, IsMadeForPhonesAndPaper)
{
    const QString html = reportOf("morning.csv");
    EXPECT_TRUE(
        html.contains(QStringLiteral("<meta name=\"viewport\" content=\"width=device-width")));
    EXPECT_TRUE(html.contains(QStringLiteral(".wide { overflow-x: auto; }")));
    EXPECT_TRUE(html.contains(QStringLiteral("@media print")));
    EXPECT_TRUE(html.contains(QStringLiteral("@page { margin: 15mm; }"))); // of whatever paper
    // Each table and each picture can be scrolled within.
    EXPECT_EQ(html.count(QStringLiteral("<table>")) + html.count(QStringLiteral("<svg ")),
              html.count(QStringLiteral("<div class=\"wide\"")));
}
