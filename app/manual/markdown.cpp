// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/manual/markdown.h"

#include "core/base/text_parts.h"

#include <algorithm>
#include <cctype>
#include <optional>

namespace bothways::app::manual {
namespace {

bool isPunctuation(char c)
{
    return std::ispunct(static_cast<unsigned char>(c)) != 0;
}

/// Reads one run of text; looks nest ("**a `b` c**"), so it calls itself for what stands inside.
class SpanReader {
public:
    explicit SpanReader(Spans& spans) : m_spans(spans) {}

    void read(std::string_view text, const Span& look)
    {
        while (!text.empty()) {
            const std::size_t used = marked(text, look);
            if (used > 0) {
                text.remove_prefix(used);
                continue;
            }
            const bool escaped = text.size() > 1 && text[0] == '\\' && isPunctuation(text[1]);
            add(std::string_view(&text[escaped ? 1 : 0], 1), look);
            text.remove_prefix(escaped ? 2 : 1);
        }
    }

private:
    void add(std::string_view text, const Span& look)
    {
        const auto alike = [&](const Span& last) {
            return last.strong == look.strong && last.emphasised == look.emphasised &&
                   last.code == look.code && last.link == look.link && last.picture.empty();
        };
        if (m_spans.empty() || !alike(m_spans.back()) || !look.picture.empty()) {
            m_spans.push_back(look);
            m_spans.back().text.clear();
        }
        m_spans.back().text += text;
    }

    /// @return  the bytes that a marked piece at the beginning of the text took; 0: there is none
    std::size_t marked(std::string_view text, const Span& look)
    {
        if (text.front() == '`')
            return code(text, look);
        if (text.starts_with("!["))
            return link(text, look, 1);
        if (text.front() == '[')
            return link(text, look, 0);
        if (text.starts_with("**"))
            return between(text, "**", look, &Span::strong);
        if (text.front() == '*')
            return between(text, "*", look, &Span::emphasised);
        return 0;
    }

    std::size_t code(std::string_view text, const Span& look)
    {
        const std::size_t ticks = std::min(text.find_first_not_of('`'), text.size());
        const std::size_t end = text.find(std::string(ticks, '`'), ticks);
        if (end == std::string_view::npos)
            return 0;
        Span inside = look;
        inside.code = true;
        std::string_view words = text.substr(ticks, end - ticks);
        if (ticks > 1) // blanks keep ticks apart
            words = core::trimmedLines(words);
        add(words, inside);
        return end + ticks;
    }

    std::size_t between(std::string_view text, std::string_view mark, const Span& look,
                        bool Span::*member)
    {
        const std::size_t begin = mark.size();
        if (text.size() <= begin || text[begin] == ' ')
            return 0;
        std::size_t end = begin;
        do
            end = text.find(mark, end + 1);
        while (end != std::string_view::npos &&
               (text[end - 1] == ' ' || (mark.size() == 1 && text.substr(end, 2) == "**")));
        if (end == std::string_view::npos)
            return 0;
        Span inside = look;
        inside.*member = true;
        read(text.substr(begin, end - begin), inside);
        return end + mark.size();
    }

    std::size_t link(std::string_view text, const Span& look, std::size_t bang)
    {
        const std::size_t middle = text.find("](");
        if (middle == std::string_view::npos)
            return 0;
        const std::size_t end = text.find(')', middle);
        if (end == std::string_view::npos)
            return 0;
        Span inside = look;
        const std::string target(text.substr(middle + 2, end - middle - 2));
        const std::string_view words = text.substr(bang + 1, middle - bang - 1);
        if (bang == 1) {
            inside.picture = target;
            add(words, inside);
        } else {
            inside.link = target;
            read(words, inside);
        }
        return end + 1;
    }

    Spans& m_spans;
};

/// "- x" or "12. x": what stands after the mark.
std::optional<std::string_view> itemOf(std::string_view line, BlockKind& kind)
{
    if (line.starts_with("- ")) {
        kind = BlockKind::bullets;
        return line.substr(2);
    }
    const std::size_t digits = line.find_first_not_of("0123456789");
    if (digits == 0 || digits == std::string_view::npos || line.substr(digits, 2) != ". ")
        return std::nullopt;
    kind = BlockKind::numbers;
    return line.substr(digits + 2);
}

/// The cells of "| a | b |"; a bar within code or after a backslash is none.
std::vector<Spans> cellsOf(std::string_view line)
{
    line = core::trimmedLines(line);
    line.remove_prefix(1);
    std::vector<Spans> cells;
    bool code = false;
    std::size_t begin = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        code = line[i] == '`' ? !code : code;
        if (line[i] != '|' || code || (i > 0 && line[i - 1] == '\\'))
            continue;
        cells.push_back(parseSpans(core::trimmedLines(line.substr(begin, i - begin))));
        begin = i + 1;
    }
    return cells;
}

bool isRule(std::string_view line)
{
    return line.starts_with('|') && line.find_first_not_of("|-: ") == std::string_view::npos;
}

Block headingOf(std::string_view line)
{
    constexpr std::string_view kAnchor = "<a id=\"";
    constexpr std::string_view kAnchorEnd = "\"></a>";
    Block block;
    block.kind = BlockKind::heading;
    block.level = static_cast<int>(std::min(line.find_first_not_of('#'), line.size()));
    line = core::trimmedLines(line.substr(static_cast<std::size_t>(block.level)));
    if (line.starts_with(kAnchor)) {
        const std::size_t end = line.find(kAnchorEnd);
        block.anchor = line.substr(kAnchor.size(), end - kAnchor.size());
        line = core::trimmedLines(line.substr(end + kAnchorEnd.size()));
    }
    block.words = parseSpans(line);
    if (block.anchor.empty())
        block.anchor = anchorOf(plainText(block.words));
    return block;
}

class BlockReader {
public:
    void take(std::string_view whole)
    {
        const std::string_view line = core::trimmedLines(whole);
        BlockKind kind{};
        if (line.empty())
            end();
        else if (line.starts_with('#'))
            heading(line);
        else if (line.starts_with('|'))
            row(line);
        else if (const auto item = itemOf(line, kind))
            begin(kind, *item);
        else
            more(line);
    }
    Blocks done()
    {
        end();
        return std::move(m_blocks);
    }

private:
    void heading(std::string_view line)
    {
        end();
        m_blocks.push_back(headingOf(line));
    }
    void row(std::string_view line)
    {
        if (!m_inTable) {
            end();
            m_blocks.emplace_back().kind = BlockKind::table;
            m_inTable = true;
        }
        if (!isRule(line))
            m_blocks.back().rows.push_back(cellsOf(line));
    }
    void begin(BlockKind kind, std::string_view item)
    {
        const bool goesOn = m_inList && m_blocks.back().kind == kind;
        flush();
        if (!goesOn)
            m_blocks.emplace_back().kind = kind;
        m_inList = true;
        m_text = item;
    }
    /// A line that goes on with what the one before began.
    void more(std::string_view line)
    {
        if (m_inTable)
            end();
        if (!m_inList && m_text.empty())
            m_blocks.emplace_back();
        m_text += (m_text.empty() ? "" : " ") + std::string(line);
    }
    void flush()
    {
        if (m_text.empty())
            return;
        if (m_inList)
            m_blocks.back().items.push_back(parseSpans(m_text));
        else
            m_blocks.back().words = parseSpans(m_text);
        m_text.clear();
    }
    void end()
    {
        flush();
        m_inTable = false;
        m_inList = false;
    }

    Blocks m_blocks;
    std::string m_text; ///< of the paragraph or item that is being read
    bool m_inTable = false, m_inList = false;
};

} // namespace

Spans parseSpans(std::string_view text)
{
    Spans spans;
    SpanReader(spans).read(text, {});
    return spans;
}

Blocks parseMarkdown(std::string_view text)
{
    BlockReader reader;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        reader.take(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return reader.done();
}

std::string plainText(const Spans& spans)
{
    std::string text;
    for (const Span& span : spans)
        text += span.text;
    return text;
}

std::string anchorOf(std::string_view heading)
{
    std::string anchor;
    for (const char c : heading) {
        const auto byte = static_cast<unsigned char>(c);
        if (std::isalnum(byte) || byte >= 0x80U || c == '_' || c == '-')
            anchor += static_cast<char>(byte < 0x80U ? std::tolower(byte) : byte);
        else if (c == ' ')
            anchor += '-';
    }
    return anchor;
}

} // namespace bothways::app::manual
