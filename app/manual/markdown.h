// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

/// As much of Markdown as the handbook is written in: headings with anchors, paragraphs, lists,
/// tables, pictures; within them strong and emphasised words, code and links.
namespace bothways::app::manual {

/// Words that look alike.
struct Span {
    std::string text;
    bool strong = false, emphasised = false, code = false;
    std::string link = {};    ///< where it leads; empty: nowhere
    std::string picture = {}; ///< a file; `text` says what it shows
    friend bool operator==(const Span&, const Span&) = default;
};
using Spans = std::vector<Span>;

enum class BlockKind { heading, paragraph, bullets, numbers, table };

struct Block {
    BlockKind kind = BlockKind::paragraph;
    int level = 0;                             ///< of a heading
    std::string anchor = {};                   ///< of a heading
    Spans words = {};                          ///< of a heading or a paragraph
    std::vector<Spans> items = {};             ///< of a list
    std::vector<std::vector<Spans>> rows = {}; ///< of a table, its head first
};
using Blocks = std::vector<Block>;

[[nodiscard]] Spans parseSpans(std::string_view text);
[[nodiscard]] Blocks parseMarkdown(std::string_view text);
/// As they are read, without their looks.
[[nodiscard]] std::string plainText(const Spans& spans);
/// The anchor that a heading has where none is written.
[[nodiscard]] std::string anchorOf(std::string_view heading);

} // namespace bothways::app::manual
