// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/manual/web_page.h"

#include "app/output/markup.h"
#include "app/output/version.h"

#include <fmt/format.h>

namespace bothways::app::manual {
namespace {

constexpr std::string_view kStyle =
    "body{font:1em/1.5 sans-serif;max-width:46em;margin:2em auto;padding:0 1em}"
    "table{border-collapse:collapse}td,th{border:1px solid #888;padding:.2em .5em;"
    "text-align:left;vertical-align:top}img{max-width:100%;background:#fff}"
    "code{font-size:.95em}@media(prefers-color-scheme:dark){body{background:#1f2329;"
    "color:#e8eaed}a{color:#56b4e9}}";

/// Pages lead to pages: "rules.md#overspeed" is rules.html here.
std::string target(std::string link)
{
    if (const std::size_t at = link.find(".md"); at != std::string::npos)
        link.replace(at, 3, ".html");
    return link;
}

std::string inHtml(const Span& span)
{
    if (!span.picture.empty())
        return fmt::format("<img src=\"{}\" alt=\"{}\">", escaped(span.picture),
                           escaped(span.text));
    std::string text = escaped(span.text);
    if (span.code)
        text = "<code>" + text + "</code>";
    if (span.emphasised)
        text = "<em>" + text + "</em>";
    if (span.strong)
        text = "<strong>" + text + "</strong>";
    if (!span.link.empty())
        text = "<a href=\"" + escaped(target(span.link)) + "\">" + text + "</a>";
    return text;
}

std::string inHtml(const Spans& spans)
{
    std::string text;
    for (const Span& span : spans)
        text += inHtml(span);
    return text;
}

std::string tableHtml(const Block& block)
{
    std::string text = "<table>\n";
    const char* cell = "th";
    for (const auto& row : block.rows) {
        text += "<tr>";
        for (const Spans& spans : row)
            text += fmt::format("<{0}>{1}</{0}>", cell, inHtml(spans));
        text += "</tr>\n";
        cell = "td";
    }
    return text + "</table>\n";
}

std::string blockHtml(const Block& block)
{
    switch (block.kind) {
    case BlockKind::heading:
        return fmt::format("<h{0} id=\"{1}\">{2}</h{0}>\n", block.level, escaped(block.anchor),
                           inHtml(block.words));
    case BlockKind::paragraph: return "<p>" + inHtml(block.words) + "</p>\n";
    case BlockKind::table: return tableHtml(block);
    case BlockKind::bullets:
    case BlockKind::numbers: break;
    }
    const char* list = block.kind == BlockKind::bullets ? "ul" : "ol";
    std::string text = fmt::format("<{}>\n", list);
    for (const Spans& item : block.items)
        text += "<li>" + inHtml(item) + "</li>\n";
    return text + fmt::format("</{}>\n", list);
}

} // namespace

std::string webPage(const Language& in, const Blocks& blocks, bool isIndex)
{
    const std::string title =
        blocks.empty() ? std::string("Bothways") : plainText(blocks.front().words);
    std::string text =
        fmt::format("<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\">\n"
                    "<meta name=\"viewport\" content=\"width=device-width\">\n<title>{}</title>\n"
                    "<style>{}</style>\n</head>\n<body>\n",
                    in.tag(), escaped(title), kStyle);
    if (!isIndex)
        text += "<p><a href=\"index.html\">" + escaped(in.say("The Bothways handbook"_t)) +
                "</a></p>\n";
    for (const Block& block : blocks)
        text += blockHtml(block);
    return text + fmt::format("<hr>\n<p>Bothways {}</p>\n</body>\n</html>\n", kVersion);
}

} // namespace bothways::app::manual
