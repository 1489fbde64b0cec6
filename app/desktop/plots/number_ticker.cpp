// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/plot_view.h"

#include <cmath>

namespace bothways::app {
namespace {

constexpr int kMostDecimals = 6;

/// Fewest decimals that write `step` exactly.
int decimalsOf(double step)
{
    double scaled = std::abs(step);
    for (int decimals = 0; decimals < kMostDecimals; ++decimals, scaled *= 10.0)
        if (std::abs(scaled - std::round(scaled)) < 1e-6 * scaled)
            return decimals;
    return kMostDecimals;
}

} // namespace

double NumberTicker::getTickStep(const QCPRange& range)
{
    const double step =
        QCPAxisTicker::getTickStep({range.lower * m_factor, range.upper * m_factor});
    m_decimals = decimalsOf(step);
    return step / m_factor;
}

QString NumberTicker::getTickLabel(double tick, const QLocale& locale, QChar, int)
{
    tick *= m_factor;
    const double zero = 0.5 * std::pow(10.0, -m_decimals);
    if (std::abs(tick) < zero)
        return QString(locale.toString(0.0, 'f', 0)) + m_suffix;
    const QString size = locale.toString(std::abs(tick), 'f', m_decimals) + m_suffix;
    if (tick < 0.0)
        return QChar(0x2212) + size;
    return m_withPlus ? u'+' + size : size;
}

QCPScatterStyle markOf(const Theme& theme, bool device, bool hollow, double size)
{
    const QColor& colour = theme.series(device);
    const auto shape = device ? QCPScatterStyle::ssSquare : QCPScatterStyle::ssCircle;
    if (hollow)
        return {shape, QPen(colour, 1.5), QBrush(theme.paper), size};
    return {shape, QPen(theme.paper, 1.0), QBrush(colour), size};
}

} // namespace bothways::app
