// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/result_page.h"

#include "app/desktop/pages/result_plots.h"
#include "tests/app/pages/page_fixture.h"

#include <QDoubleSpinBox>
#include <QSignalSpy>

using namespace bothways;
using namespace bothways::app;

namespace {

void show(ResultView& page, const Theme& theme, std::shared_ptr<const ResultSet> result)
{
    page.setPalette(theme.palette());
    page.setAutoFillBackground(true);
    page.setTheme(theme);
    page.setResult(std::move(result));
}

class ResultPagePicture : public ::testing::TestWithParam<std::string> {};

TEST_P(ResultPagePicture, SaysAndDrawsEveryExampleInLightAndDark)
{
    for (const Theme& theme : {Theme::light(), Theme::night()}) {
        ResultPage page;
        show(page, theme,
             test::resultOfExample(GetParam(), GetParam() == "roof_box_open" ? "off" : ""));
        const QString name =
            QStringLiteral("result_%1_%2")
                .arg(QString::fromStdString(GetParam()),
                     theme.dark ? QStringLiteral("dark") : QStringLiteral("light"));
        const QImage image = test::pictureOf(page, name);
        EXPECT_EQ(image.pixelColor(3, 3), theme.window);
        EXPECT_FALSE(test::hasNonsense(test::allTexts(page))) << test::allTexts(page).toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(Examples, ResultPagePicture,
                         ::testing::Values("morning", "roof_box_open", "too_few"));

} // namespace
