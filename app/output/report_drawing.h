// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/output/report_picture.h"
#include "app/wording/numbers.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

/// What the report's pictures are drawn with. Private to app/output.
namespace bothways::app::report {

inline constexpr double kWidth = 640.0;
inline constexpr double kLeft = 66.0; ///< of a picture with a scale on its left
inline constexpr double kRight = kWidth - 16.0;
inline constexpr double kAxisHeight = 42.0;

/// One scale: values to places on the picture.
class Axis {
public:
    Axis(double low, double high, double from, double to) : m_from(from), m_to(to)
    {
        // A single value, or values that differ by rounding alone, which no scale can tell apart.
        if (!(high - low > kNarrowest * std::max(std::abs(low), std::abs(high)))) {
            low -= 0.5;
            high += 0.5;
        }
        const double room = 0.06 * (high - low);
        m_low = low - room;
        m_high = high + room;
    }
    double at(double value) const
    {
        return m_from + (value - m_low) / (m_high - m_low) * (m_to - m_from);
    }
    /// Round values inside the scale: 1, 2 or 5 times a power of ten, some five of them.
    std::vector<double> ticks() const
    {
        const double raw = (m_high - m_low) / 5.0;
        const double power = std::pow(10.0, std::floor(std::log10(raw)));
        const double lead = raw / power;
        m_step = power * (lead < 1.5 ? 1.0 : lead < 3.5 ? 2.0 : lead < 7.5 ? 5.0 : 10.0);
        std::vector<double> ticks;
        for (double k = std::ceil(m_low / m_step); k * m_step <= m_high; ++k)
            ticks.push_back(k * m_step);
        return ticks;
    }
    std::string label(double tick) const
    {
        const int decimals =
            std::clamp(static_cast<int>(-std::floor(std::log10(m_step) + 1e-9)), 0, 6);
        std::string text = fmt::format("{:.{}f}", std::abs(tick), decimals);
        const bool zero = text.find_first_not_of("0.") == std::string::npos;
        return tick < 0.0 && !zero ? "\u2212" + text : text;
    }

private:
    static constexpr double kNarrowest = 1e-6; ///< of the values: as many digits as label() has
    double m_low, m_high, m_from, m_to;
    mutable double m_step = 1.0;
};

/// A picture in the making. The language must outlive it.
class Drawing {
public:
    Drawing(const Language& in, double height, std::string title) : m_in(in)
    {
        m_picture.width = kWidth;
        m_picture.height = height;
        m_picture.title = std::move(title);
    }
    void line(double x1, double y1, double x2, double y2, Ink ink)
    {
        m_picture.marks.push_back(Line{x1, y1, x2, y2, ink});
    }
    void box(double x, double y, double width, double height, Ink ink)
    {
        m_picture.marks.push_back(Box{x, y, std::max(width, 0.0), height, ink});
    }
    void dot(double x, double y, Ink ink, std::string says)
    {
        m_picture.marks.push_back(Point{x, y, Shape::disc, ink, std::move(says)});
    }
    void square(double x, double y, Ink ink, std::string says)
    {
        m_picture.marks.push_back(Point{x, y, Shape::square, ink, std::move(says)});
    }
    void diamond(double x, double y, Ink ink, std::string says)
    {
        m_picture.marks.push_back(Point{x, y, Shape::diamond, ink, std::move(says)});
    }
    void words(double x, double y, Anchor anchor, std::string text, bool strong = false)
    {
        m_picture.marks.push_back(Words{x, y, anchor, std::move(text), strong});
    }
    /// A scale along the bottom, with its name.
    void bottomAxis(const Axis& axis, double left, double right, std::string name)
    {
        const double y = m_picture.height - kAxisHeight;
        line(left, y, right, y, Ink::axis);
        for (const double tick : axis.ticks()) {
            line(axis.at(tick), y, axis.at(tick), y + 5.0, Ink::axis);
            words(axis.at(tick), y + 19.0, Anchor::middle, localised(m_in, axis.label(tick)));
        }
        words(0.5 * (left + right), m_picture.height - 5.0, Anchor::middle, std::move(name));
    }
    void leftAxis(const Axis& axis, double top, double bottom)
    {
        line(kLeft, top, kLeft, bottom, Ink::axis);
        for (const double tick : axis.ticks()) {
            line(kLeft - 5.0, axis.at(tick), kLeft, axis.at(tick), Ink::axis);
            words(kLeft - 8.0, axis.at(tick) + 5.0, Anchor::end, localised(m_in, axis.label(tick)));
        }
    }
    /// Points to what is beyond the picture. Its tip is at x, y; it looks along (dx, dy), of which
    /// one is 1 or -1 and the other 0.
    void arrowhead(double x, double y, double dx, double dy, Ink ink)
    {
        constexpr double kLong = 7.0, kWide = 6.0;
        line(x - kLong * dx - kWide * dy, y - kLong * dy - kWide * dx, x, y, ink);
        line(x, y, x - kLong * dx + kWide * dy, y - kLong * dy + kWide * dx, ink);
        m_picture.goes_on = true;
    }
    Picture take() && { return std::move(m_picture); }

private:
    const Language& m_in;
    Picture m_picture;
};

} // namespace bothways::app::report
