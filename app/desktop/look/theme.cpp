// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/theme.h"

#include "app/output/role_colours.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace bothways::app {
namespace {

/// Source: W3C, WCAG 2.1, "relative luminance".
double luminance(const QColor& colour)
{
    const auto linear = [](double part) {
        return part <= 0.03928 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

QColor withAlpha(QRgb rgb, int alpha)
{
    QColor colour = QColor::fromRgb(rgb);
    colour.setAlpha(alpha);
    return colour;
}

} // namespace

Theme Theme::light()
{
    Theme theme;
    theme.window = QColor(0xf3, 0xf4, 0xf6);
    theme.paper = QColor(0xff, 0xff, 0xff);
    theme.ink = QColor(roles::kInk.light);
    theme.faint_ink = QColor(roles::kFaintInk.light);
    theme.grid = QColor(0xdd, 0xe1, 0xe6);
    theme.baseline = QColor(roles::kBaseline.light);
    theme.device = QColor(roles::kDevice.light);
    theme.result = theme.ink;
    theme.margin = withAlpha(okabe_ito::kSkyBlue, 64);
    theme.interval = QColor(0x1c, 0x21, 0x27, 26);
    theme.block_tint = withAlpha(okabe_ito::kVermilion, 22);
    theme.holds = QColor(roles::kHolds.light);
    theme.note = QColor::fromRgb(okabe_ito::kOrange);
    theme.fails = QColor(roles::kFails.light);
    theme.unknown = theme.faint_ink;
    theme.selection = QColor::fromRgb(okabe_ito::kBlue);
    return theme;
}

Theme Theme::night()
{
    Theme theme;
    theme.dark = true;
    theme.window = QColor(0x17, 0x1a, 0x1f);
    theme.paper = QColor(0x1f, 0x23, 0x29);
    theme.ink = QColor(roles::kInk.night);
    theme.faint_ink = QColor(roles::kFaintInk.night);
    theme.grid = QColor(0x3a, 0x41, 0x4a);
    theme.baseline = QColor(roles::kBaseline.night);
    theme.device = QColor(roles::kDevice.night);
    theme.result = theme.ink;
    theme.margin = withAlpha(okabe_ito::kSkyBlue, 48);
    theme.interval = QColor(0xe8, 0xea, 0xed, 30);
    theme.block_tint = withAlpha(okabe_ito::kOrange, 26);
    theme.holds = QColor(roles::kHolds.night);
    theme.note = QColor::fromRgb(okabe_ito::kOrange);
    theme.fails = QColor(roles::kFails.night);
    theme.unknown = theme.faint_ink;
    theme.selection = QColor::fromRgb(okabe_ito::kSkyBlue);
    return theme;
}

Theme Theme::of(const QPalette& palette)
{
    return luminance(palette.color(QPalette::Window)) <
                   luminance(palette.color(QPalette::WindowText))
               ? night()
               : light();
}

QPalette Theme::palette() const
{
    QPalette colours;
    colours.setColor(QPalette::Window, window);
    colours.setColor(QPalette::Base, paper);
    colours.setColor(QPalette::AlternateBase, dark ? paper.lighter(115) : paper.darker(103));
    colours.setColor(QPalette::Button, dark ? paper.lighter(125) : window);
    colours.setColor(QPalette::ToolTipBase, paper);
    for (const QPalette::ColorRole role :
         {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText})
        colours.setColor(role, ink);
    colours.setColor(QPalette::PlaceholderText, faint_ink);
    colours.setColor(QPalette::Highlight, selection);
    colours.setColor(QPalette::HighlightedText, dark ? window : paper);
    colours.setColor(QPalette::Link, selection);
    colours.setColor(QPalette::LinkVisited, dark ? QColor(0xcc, 0x79, 0xa7) : ink);
    colours.setColor(QPalette::Light, dark ? paper.lighter(150) : paper);
    colours.setColor(QPalette::Midlight, dark ? paper.lighter(130) : window.lighter(102));
    colours.setColor(QPalette::Mid, grid);
    colours.setColor(QPalette::Dark, dark ? window.darker(130) : grid.darker(115));
    colours.setColor(QPalette::Shadow, dark ? window.darker(180) : grid.darker(150));
    for (const QPalette::ColorRole role :
         {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        colours.setColor(QPalette::Disabled, role, faint_ink);
    return colours;
}

const QColor& Theme::state(core::CheckState state) const
{
    switch (state) {
    case core::CheckState::holds: return holds;
    case core::CheckState::note: return note;
    case core::CheckState::fails: return fails;
    case core::CheckState::notComputed: return unknown;
    }
    return unknown;
}

Qt::PenStyle Theme::dashes(int n)
{
    constexpr std::array kStyles{Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine,
                                 Qt::DashDotDotLine};
    return kStyles[static_cast<std::size_t>(std::max(n, 0)) % kStyles.size()];
}

double contrast(const QColor& a, const QColor& b)
{
    const double first = luminance(a);
    const double second = luminance(b);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

} // namespace bothways::app
