// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/theme.h"

#include "app/desktop/plots/plot_view.h"

#include <gtest/gtest.h>

using namespace bothways::app;

namespace {

// Least contrasts: W3C, WCAG 2.1, 1.4.3 (text 4.5 to 1) and 1.4.11 (graphics 3 to 1).
constexpr double kText = 4.5;
constexpr double kGraphics = 3.0;

class ThemeContrast : public ::testing::TestWithParam<bool> {
protected:
    Theme theme = GetParam() ? Theme::night() : Theme::light();
};

TEST_P(ThemeContrast, IsEnoughForTextOnBothGrounds)
{
    for (const QColor& ground : {theme.window, theme.paper}) {
        EXPECT_GE(contrast(theme.ink, ground), kText);
        EXPECT_GE(contrast(theme.faint_ink, ground), kText);
    }
}

TEST_P(ThemeContrast, IsEnoughForSeriesAndStatesOnPaper)
{
    for (const QColor& colour : {theme.baseline, theme.device, theme.holds, theme.fails})
        EXPECT_GE(contrast(colour, theme.paper), kGraphics) << colour.name().toStdString();
}

TEST_P(ThemeContrast, IsEnoughForTextOnASelection)
{
    const QPalette palette = theme.palette();
    EXPECT_GE(
        contrast(palette.color(QPalette::HighlightedText), palette.color(QPalette::Highlight)),
        kText);
}

TEST_P(ThemeContrast, IsFoundAgainFromItsPalette)
{
    EXPECT_EQ(Theme::of(theme.palette()), theme);
}

INSTANTIATE_TEST_SUITE_P(LightAndDark, ThemeContrast, ::testing::Bool());

TEST(ThemeColours, OfContrastAreThoseOfTheStandardsExample)
{
    // W3C, WCAG 2.1: black on white is 21 to 1
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrast(Qt::white, Qt::white), 1.0, 1e-12);
}

TEST(ThemeShapes, TellConfigurationsApartWithoutColour)
{
    const Theme theme = Theme::light();
    EXPECT_NE(markOf(theme, false, false).shape(), markOf(theme, true, false).shape());
    EXPECT_EQ(markOf(theme, false, true).brush().color(), theme.paper);
}

} // namespace
