// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/checks_page.h"
#include "app/desktop/pages/companions_page.h"
#include "app/desktop/pages/compare_page.h"
#include "app/desktop/pages/result_page.h"
#include "app/desktop/pages/why_page.h"
#include "tests/app/pages/page_fixture.h"

using namespace bothways;
using namespace bothways::app;

// Every page in light and dark: drawn whole, and without nonsense. With BOTHWAYS_PICTURES set the
// pictures are kept, to be looked at.

namespace {

template <class Page>
class ResultViews : public ::testing::Test {
};
using Pages = ::testing::Types<ResultPage, CompanionsPage, ChecksPage, WhyPage>;
TYPED_TEST_SUITE(ResultViews, Pages);

QString nameOf(const QWidget& page, const std::string& study, bool dark)
{
    return QStringLiteral("%1_%2_%3")
        .arg(QString::fromLatin1(page.metaObject()->className()).section(u':', -1),
             QString::fromStdString(study),
             dark ? QStringLiteral("dark") : QStringLiteral("light"));
}

TYPED_TEST(ResultViews, DrawEveryExampleInLightAndDarkWithoutNonsense)
{
    for (const std::string study : {"morning", "roof_box_open", "too_few"})
        for (const Theme& theme : {Theme::light(), Theme::night()}) {
            TypeParam page;
            page.setPalette(theme.palette());
            page.setAutoFillBackground(true);
            page.setTheme(theme);
            page.setResult(test::resultOfExample(study, study == "roof_box_open" ? "off" : ""));
            const bool tall = !std::is_same_v<TypeParam, ResultPage>;
            const QImage image = test::pictureOf(page, nameOf(page, study, theme.dark),
                                                 tall ? QSize(1100, 1500) : QSize(1100, 860));
            EXPECT_EQ(image.pixelColor(3, 3), theme.window) << study;
            const QString texts = test::allTexts(page);
            EXPECT_GT(texts.size(), 100) << study;
            EXPECT_FALSE(test::hasNonsense(texts)) << study << '\n' << texts.toStdString();
        }
}

TEST(ComparePageTest, DrawsThreeStudiesAndThePooledOne)
{
    for (const Theme& theme : {Theme::light(), Theme::night()}) {
        ComparePage page;
        page.setPalette(theme.palette());
        page.setAutoFillBackground(true);
        page.setTheme(theme);
        page.setStudies(
            {{QStringLiteral("9 May"), test::resultOfExample("morning")},
             {QStringLiteral("roof box"), test::resultOfExample("roof_box_open", "off")},
             {QStringLiteral("short day"), test::resultOfExample("too_few")}});
        test::pictureOf(
            page, theme.dark ? QStringLiteral("compare_dark") : QStringLiteral("compare_light"),
            QSize(1100, 560));
        EXPECT_TRUE(page.pooled());
        EXPECT_FALSE(test::hasNonsense(test::allTexts(page)));
    }
}

} // namespace
