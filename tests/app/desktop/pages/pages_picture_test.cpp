// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/checks_page.h"
#include "app/desktop/pages/companions_page.h"
#include "app/desktop/pages/compare_page.h"
#include "app/desktop/pages/result_page.h"
#include "app/desktop/pages/why_page.h"
#include "app/desktop/plots/forest_plot.h"
#include "tests/app/desktop/support/page_fixture.h"
#include "tests/support/study_builder.h"

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
            page.setResult(
                bothways::tests::resultOfExample(study, study == "roof_box_open" ? "off" : ""));
            const bool tall = !std::is_same_v<TypeParam, ResultPage>;
            const QImage image = bothways::tests::pictureOf(
                page, nameOf(page, study, theme.dark), tall ? QSize(1100, 1500) : QSize(1100, 860));
            EXPECT_EQ(image.pixelColor(3, 3), theme.window) << study;
            const QString texts = bothways::tests::allTexts(page);
            EXPECT_GT(texts.size(), 100) << study;
            EXPECT_FALSE(bothways::tests::hasNonsense(texts)) << study << '\n'
                                                              << texts.toStdString();
        }
}

TYPED_TEST(ResultViews, DrawTheDemoStudies)
{
    for (const auto& [study, baseline] :
         {std::pair("levee_generator", "off"), std::pair("roof_box", "no box"),
          std::pair("tyre_pressure", "2,2 bar")}) {
        TypeParam page;
        page.setPalette(Theme::light().palette());
        page.setResult(bothways::tests::resultOfSample(study, baseline));
        bothways::tests::pictureOf(page, nameOf(page, study, false), QSize(1100, 1400));
        EXPECT_FALSE(bothways::tests::hasNonsense(bothways::tests::allTexts(page))) << study;
    }
}

/// Days that ask for trouble: what every page must stand.
std::vector<std::pair<std::string, core::Study>> oddStudies()
{
    using bothways::tests::aDay;
    using bothways::tests::aDrivenRun;
    using bothways::tests::StudyBuilder;
    std::vector<std::pair<std::string, core::Study>> odd;
    odd.emplace_back("no runs", core::Study{});
    odd.emplace_back("one run", StudyBuilder().add(aDrivenRun().a().out()));
    odd.emplace_back("one pair", StudyBuilder().addPair("A", 10.0, 8.0, 8.1));
    odd.emplace_back("all equal", aDay("ABA", 3, 0.0, 0.0));
    odd.emplace_back("two blocks of two", aDay("AB", 2));
    odd.emplace_back("a clear effect", aDay("ABABA", 4, -0.05, 0.005));
    core::Study outlier = aDay("ABA", 4);
    outlier.runs[9].consumption->value = 1e6;
    odd.emplace_back("an enormous outlier", outlier);
    core::Study none = aDay("ABA", 3);
    for (core::Run& run : none.runs)
        run.discard = core::Discard{"other", "rain"};
    odd.emplace_back("every run discarded", none);
    core::Study empty = aDay("ABA", 3);
    empty.runs[4].discard = core::Discard{"sensor_lost", ""};
    empty.runs[4].consumption.reset();
    odd.emplace_back("a discard without consumption", empty);
    core::Study days = aDay("ABAABA", 3);
    for (std::size_t i = days.runs.size() / 2; i < days.runs.size(); ++i)
        days.runs[i].start.us += std::int64_t{24} * 3'600'000'000;
    odd.emplace_back("two days", days);
    core::Study control = aDay("ABA", 3);
    for (core::Run& run : control.runs)
        run.control = 7.0 + 0.01 * run.number;
    odd.emplace_back("a control vehicle", control);
    core::Study electric = aDay("ABA", 3);
    for (core::Run& run : electric.runs)
        run.consumption->unit = core::ConsumptionUnit::kwhPer100km;
    odd.emplace_back("electric drive", electric);
    core::Study settings = aDay("ABA", 4, 0.01);
    for (core::Run& run : settings.runs)
        if (run.configuration == "B")
            run.setting = run.number % 4 < 2 ? "18" : "22 <b>%1</b>";
    odd.emplace_back("two settings", settings);
    return odd;
}

TYPED_TEST(ResultViews, StandEveryOddStudyWithoutNonsense)
{
    TypeParam page;
    page.resize(700, 500);
    page.show();
    for (const auto& [name, study] : oddStudies()) {
        page.setResult(bothways::tests::resultOf(study));
        QApplication::processEvents();
        const QString texts = bothways::tests::allTexts(page);
        EXPECT_FALSE(bothways::tests::hasNonsense(QString(texts).remove(QStringLiteral("%1</b>"))))
            << name << '\n'
            << texts.toStdString();
    }
}

TYPED_TEST(ResultViews, SpeakAllUnitsAndACommaLocale)
{
    TypeParam page;
    UnitsShown units;
    units.locale = QLocale(QLocale::German, QLocale::Germany);
    for (const core::ConsumptionUnit unit :
         {core::ConsumptionUnit::mpgUs, core::ConsumptionUnit::mpgImp,
          core::ConsumptionUnit::kmPerL}) {
        units.consumption = unit;
        page.setUnits(units);
        page.setResult(bothways::tests::resultOfExample("morning"));
        EXPECT_FALSE(bothways::tests::hasNonsense(bothways::tests::allTexts(page)));
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
            {{QStringLiteral("9 May"), bothways::tests::resultOfExample("morning")},
             {QStringLiteral("roof box"), bothways::tests::resultOfExample("roof_box_open", "off")},
             {QStringLiteral("short day"), bothways::tests::resultOfExample("too_few")}});
        bothways::tests::pictureOf(
            page, theme.dark ? QStringLiteral("compare_dark") : QStringLiteral("compare_light"),
            QSize(1100, 560));
        EXPECT_TRUE(page.pooled());
        EXPECT_TRUE(page.findChild<QLabel*>(QStringLiteral("pooledCaveat"))
                        ->text()
                        .startsWith(QStringLiteral("Together they say")));
        // The margin that decides is in the picture, as wide as on the other pages.
        auto* forest = page.findChild<ForestPlot*>();
        ASSERT_NE(forest, nullptr);
        const QCPItemRect* band = nullptr;
        for (int i = 0; i < forest->itemCount() && !band; ++i)
            band = qobject_cast<QCPItemRect*>(forest->item(i));
        ASSERT_NE(band, nullptr);
        EXPECT_EQ(band->topLeft->coords().x(), -1.0);
        EXPECT_EQ(band->bottomRight->coords().x(), 1.0);
        EXPECT_FALSE(bothways::tests::hasNonsense(bothways::tests::allTexts(page)));
    }
}

} // namespace
