// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/visible_text.h"

#include "core/base/utf8.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

namespace bothways::app {
namespace {

/// First and last of those that nobody sees, or that change how others are drawn: Unicode's
/// categories Cc from U+0080, Cf, Zl and Zp, the letters that are blank, and what is no character.
constexpr std::array<std::pair<char32_t, char32_t>, 29> kInvisible{
    {{0x80, 0x9F},        {0xAD, 0xAD},       {0x34F, 0x34F},     {0x600, 0x605},
     {0x61C, 0x61C},      {0x6DD, 0x6DD},     {0x70F, 0x70F},     {0x890, 0x891},
     {0x8E2, 0x8E2},      {0x115F, 0x1160},   {0x17B4, 0x17B5},   {0x180B, 0x180F},
     {0x200B, 0x200F},    {0x2028, 0x202E},   {0x2060, 0x206F},   {0x2800, 0x2800},
     {0x3164, 0x3164},    {0xFDD0, 0xFDEF},   {0xFEFF, 0xFEFF},   {0xFFA0, 0xFFA0},
     {0xFFF0, 0xFFFB},    {0xFFFE, 0xFFFF},   {0x110BD, 0x110BD}, {0x110CD, 0x110CD},
     {0x13430, 0x1343F},  {0x1BCA0, 0x1BCA3}, {0x1D173, 0x1D17A}, {0xE0000, 0xE0FFF},
     {0x10FFFE, 0x10FFFF}}};

constexpr const char* kNoText = "\xEF\xBF\xBD"; // U+FFFD

bool isInvisible(char32_t c)
{
    const auto after =
        std::upper_bound(kInvisible.begin(), kInvisible.end(), c,
                         [](char32_t value, const auto& range) { return value < range.first; });
    return after != kInvisible.begin() && c <= std::prev(after)->second;
}

/// "␛" of U+001B, "␡" of U+007F: from U+2400 on, and U+2421.
void appendPicture(std::string& out, char32_t control)
{
    const auto last = control == 0x7F ? 0x21U : static_cast<unsigned>(control);
    out += "\xE2\x90";
    out += static_cast<char>(0x80U + last);
}

} // namespace

std::string visibleText(std::string_view text, Breaks breaks)
{
    std::string out;
    out.reserve(text.size());
    while (!text.empty()) {
        const core::CodePoint c = core::firstCodePoint(text);
        const bool isBreak = c.value == '\n' || c.value == '\t';
        if (c.bytes == 0)
            out += kNoText;
        else if (isBreak && breaks == Breaks::kept)
            out += text.front();
        else if (c.value < 0x20 || c.value == 0x7F)
            appendPicture(out, c.value);
        else if (isInvisible(c.value))
            out += fmt::format("<U+{:04X}>", static_cast<unsigned>(c.value));
        else
            out += text.substr(0, c.bytes);
        text.remove_prefix(std::max<std::size_t>(c.bytes, 1));
    }
    return out;
}

} // namespace bothways::app
