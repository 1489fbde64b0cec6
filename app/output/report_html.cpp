// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_html.h"

#include "app/output/report_model.h"
#include "app/output/report_page.h"
#include "app/output/report_pictures.h"
#include "app/output/version.h"

#include <Eigen/Core>
#include <boost/version.hpp>
#include <fmt/format.h>

namespace bothways::app {
namespace {

using namespace report;

const char* className(Tone tone)
{
    switch (tone) {
    case Tone::plain: return "";
    case Tone::verdict: return " class=\"verdict\"";
    case Tone::quiet: return " class=\"quiet\"";
    case Tone::formula: return " class=\"formula\"";
    }
    return "";
}

const char* className(Column kind)
{
    switch (kind) {
    case Column::tight: return "";
    case Column::number: return " class=\"n\"";
    case Column::words: return " class=\"w\"";
    }
    return "";
}

const char* className(RowTone tone)
{
    switch (tone) {
    case RowTone::plain: return "";
    case RowTone::strong: return " class=\"strong\"";
    case RowTone::quiet: return " class=\"quiet\"";
    case RowTone::alarmed: return " class=\"alarmed\"";
    }
    return "";
}

/// Writes the parts as HTML that is well-formed XML as well.
class HtmlParts {
public:
    void operator()(const Heading& part)
    {
        m_text += fmt::format("<h{0}>{1}</h{0}>\n", part.level, part.text);
    }
    void operator()(const Paragraph& part)
    {
        m_text += fmt::format("<p{}>{}</p>\n", className(part.tone), part.text);
    }
    void operator()(const Bullets& part)
    {
        m_text += "<ul>\n";
        for (const std::string& item : part.items)
            m_text += fmt::format("<li>{}</li>\n", item);
        m_text += "</ul>\n";
    }
    void operator()(const Figure& part)
    {
        m_text += fmt::format("<figure>\n<div class=\"wide\">\n{}</div>\n"
                              "<figcaption>{}</figcaption>\n</figure>\n",
                              svg(part.picture), part.caption);
    }
    /// What is wider than a phone is scrolled within, with the keyboard as well.
    void operator()(const Table& part)
    {
        m_text += fmt::format(
            "<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"{0}\">\n<table>\n"
            "<thead>\n<tr>",
            part.name);
        for (const TableColumn& column : part.columns)
            m_text +=
                fmt::format("<th scope=\"col\"{}>{}</th>", className(column.kind), column.head);
        m_text += "</tr>\n</thead>\n<tbody>\n";
        for (const Row& row : part.rows) {
            m_text += fmt::format("<tr{}>", className(row.tone));
            for (std::size_t i = 0; i < row.cells.size(); ++i)
                m_text +=
                    fmt::format("<td{}>{}</td>", className(part.columns[i].kind), row.cells[i]);
            m_text += "</tr>\n";
        }
        m_text += "</tbody>\n</table>\n</div>\n";
    }
    std::string take() && { return std::move(m_text); }

private:
    std::string m_text;
};

std::string pageOf(const Report& report, const Language& language)
{
    HtmlParts parts;
    for (const Part& part : report.parts)
        std::visit(parts, part);
    return fmt::format(
        "<!DOCTYPE html>\n<html lang=\"{3}\">\n<head>\n<meta charset=\"utf-8\"/>\n{4}\n"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
        "<title>{0}</title>\n<style>{1}</style>\n</head>\n<body>\n<main>\n"
        "<h1>{0}</h1>\n{2}</main>\n</body>\n</html>\n",
        report.title, styleSheet(), std::move(parts).take(), language.tag(), kReportMark);
}

} // namespace

std::string ReportInput::programAndLibraries(std::string_view others)
{
    std::string text =
        fmt::format("Bothways {}; Boost {}.{}.{}, Eigen {}.{}.{}, fmt {}.{}.{}", kVersion,
                    BOOST_VERSION / 100000, BOOST_VERSION / 100 % 1000, BOOST_VERSION % 100,
                    EIGEN_WORLD_VERSION, EIGEN_MAJOR_VERSION, EIGEN_MINOR_VERSION,
                    FMT_VERSION / 10000, FMT_VERSION / 100 % 100, FMT_VERSION % 100);
    if (!others.empty())
        text += fmt::format(", {}", others);
    return text;
}

std::string reportHtml(const ReportInput& input)
{
    return pageOf(makeReport(input), input.language);
}

std::string reportOfSeveralHtml(const SeveralInput& input)
{
    return pageOf(makeReportOfSeveral(input), input.language);
}

} // namespace bothways::app
