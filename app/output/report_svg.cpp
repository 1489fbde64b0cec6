// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/markup.h"
#include "app/output/report_pictures.h"
#include "app/output/role_colours.h"
#include "app/wording/visible_text.h"

#include <fmt/format.h>

namespace bothways::app {

std::string escaped(std::string_view text)
{
    std::string out;
    out.reserve(text.size());
    for (const char c : visibleText(text, Breaks::kept)) {
        switch (c) {
        case '&': out += "&amp;"; break;
        case '<': out += "&lt;"; break;
        case '>': out += "&gt;"; break;
        case '"': out += "&quot;"; break;
        case '\'': out += "&#39;"; break;
        default: out += c;
        }
    }
    return out;
}

namespace report {
namespace {

class SvgMarks {
public:
    void operator()(const Line& m)
    {
        m_text += fmt::format(
            "<line x1=\"{:.2f}\" y1=\"{:.2f}\" x2=\"{:.2f}\" y2=\"{:.2f}\" class=\"{}\"/>\n", m.x1,
            m.y1, m.x2, m.y2, lookOf(m.ink).name);
    }
    void operator()(const Box& m)
    {
        m_text += fmt::format(
            "<rect x=\"{:.2f}\" y=\"{:.2f}\" width=\"{:.2f}\" height=\"{:.2f}\" class=\"{}\"/>\n",
            m.x, m.y, m.width, m.height, lookOf(m.ink).name);
    }
    void operator()(const Point& m)
    {
        const std::string title = fmt::format("<title>{}</title>", escaped(m.says));
        if (m.shape == Shape::diamond)
            m_text += fmt::format(
                "<path d=\"M{:.2f} {:.2f}l6.5 6.5l-6.5 6.5l-6.5 -6.5z\" class=\"{}\">{}</path>\n",
                m.x, m.y - kHalfDiamond, lookOf(m.ink).name, title);
        else if (m.shape == Shape::square)
            m_text += fmt::format("<rect x=\"{:.2f}\" y=\"{:.2f}\" width=\"{:.0f}\" "
                                  "height=\"{:.0f}\" class=\"{}\">{}</rect>\n",
                                  m.x - kHalfSquare, m.y - kHalfSquare, 2.0 * kHalfSquare,
                                  2.0 * kHalfSquare, lookOf(m.ink).name, title);
        else
            m_text += fmt::format(
                "<circle cx=\"{:.2f}\" cy=\"{:.2f}\" r=\"5\" class=\"{}\">{}</circle>\n", m.x, m.y,
                lookOf(m.ink).name, title);
    }
    void operator()(const Words& m)
    {
        static constexpr const char* kAnchors[] = {"start", "middle", "end"};
        m_text += fmt::format(
            "<text x=\"{:.2f}\" y=\"{:.2f}\" text-anchor=\"{}\" class=\"{}\">{}</text>\n", m.x, m.y,
            kAnchors[static_cast<int>(m.anchor)], m.strong ? "label strong" : "label",
            escaped(m.text));
    }
    std::string take() && { return std::move(m_text); }

private:
    std::string m_text;
};

} // namespace

Look lookOf(Ink ink)
{
    switch (ink) {
    case Ink::axis: return {"axis", "#888888", 1.0, nullptr};
    case Ink::zero: return {"zero", "#000000", 1.5, nullptr};
    case Ink::margin: return {"margin", nullptr, 0.0, "#e4e4e4"};
    case Ink::interval: return {"interval", roles::kInk.light, 2.5, nullptr};
    case Ink::inner: return {"inner", nullptr, 0.0, "#8b949e"};
    case Ink::thin: return {"thin", roles::kFaintInk.light, 1.0, nullptr};
    case Ink::fit: return {"fit", roles::kHolds.light, 1.5, nullptr};
    case Ink::shadeBaseline: return {"shade-a", nullptr, 0.0, roles::kBaselineShade};
    case Ink::shadeDevice: return {"shade-b", nullptr, 0.0, roles::kDeviceShade};
    case Ink::baseline: return {"a", nullptr, 0.0, roles::kBaseline.light};
    case Ink::device: return {"b", nullptr, 0.0, roles::kDevice.light};
    case Ink::alarm: return {"alarm", nullptr, 0.0, roles::kFails.light};
    case Ink::discardedBaseline: return {"discarded-a", roles::kBaseline.light, 1.5, nullptr};
    case Ink::discardedDevice: return {"discarded-b", roles::kDevice.light, 1.5, nullptr};
    case Ink::result: return {"result", nullptr, 0.0, roles::kInk.light};
    }
    return {"axis"};
}

std::string svg(const Picture& picture)
{
    if (picture.empty())
        return {};
    SvgMarks marks;
    for (const Mark& mark : picture.marks)
        std::visit(marks, mark);
    return fmt::format("<svg viewBox=\"0 0 {:.0f} {:.0f}\" role=\"img\" aria-label=\"{}\" "
                       "xmlns=\"http://www.w3.org/2000/svg\">\n{}</svg>\n",
                       picture.width, picture.height, escaped(picture.title),
                       std::move(marks).take());
}

} // namespace report
} // namespace bothways::app
