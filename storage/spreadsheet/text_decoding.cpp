// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/spreadsheet/text_decoding.h"

#include "core/base/utf8.h"
#include "core/study/study.h"

#include <algorithm>
#include <array>

namespace bothways::storage {
namespace {

void appendUtf8(std::string& text, char32_t code)
{
    const auto byte = [&text](char32_t value) { text += static_cast<char>(value); };
    if (code < 0x80) {
        byte(code);
    } else if (code < 0x800) {
        byte(0xC0 | code >> 6);
        byte(0x80 | (code & 0x3F));
    } else if (code < 0x10000) {
        byte(0xE0 | code >> 12);
        byte(0x80 | (code >> 6 & 0x3F));
        byte(0x80 | (code & 0x3F));
    } else {
        byte(0xF0 | code >> 18);
        byte(0x80 | (code >> 12 & 0x3F));
        byte(0x80 | (code >> 6 & 0x3F));
        byte(0x80 | (code & 0x3F));
    }
}

std::optional<std::string> fromUtf16(std::string_view bytes, bool bigEnd)
{
    if (bytes.size() % 2 != 0)
        return std::nullopt;
    const auto unit = [&](std::size_t at) {
        const auto first = static_cast<unsigned char>(bytes[at]);
        const auto second = static_cast<unsigned char>(bytes[at + 1]);
        return static_cast<char32_t>(bigEnd ? first << 8 | second : second << 8 | first);
    };
    std::string text;
    text.reserve(bytes.size() / 2);
    for (std::size_t i = 0; i < bytes.size(); i += 2) {
        char32_t code = unit(i);
        if (code >= 0xDC00 && code < 0xE000)
            return std::nullopt; // the second half of a pair without the first
        if (code >= 0xD800 && code < 0xDC00) {
            i += 2;
            if (i >= bytes.size())
                return std::nullopt;
            const char32_t low = unit(i);
            if (low < 0xDC00 || low >= 0xE000)
                return std::nullopt;
            code = 0x10000 + ((code - 0xD800) << 10) + (low - 0xDC00);
        }
        if (code == 0)
            return std::nullopt;
        appendUtf8(text, code);
    }
    return text;
}

/// 0x80 to 0x9F; 0: nothing stands there.
constexpr std::array<char32_t, 32> kWindows1252 = {
    0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

/// Nothing where a byte is none, or a control character shows that this is no text.
std::optional<std::string> fromWindows1252(std::string_view bytes)
{
    std::string text;
    text.reserve(bytes.size() + bytes.size() / 8);
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        const char32_t code = byte >= 0x80 && byte < 0xA0 ? kWindows1252[byte - 0x80] : byte;
        const bool control = code < 0x20 && c != '\t' && c != '\n' && c != '\r';
        if (code == 0 || control || code == 0x7F)
            return std::nullopt;
        appendUtf8(text, code);
    }
    return text;
}

/// Of the first letters, which are the header's: ASCII, mostly.
bool everyOtherIsZero(std::string_view bytes, std::size_t from)
{
    const std::size_t count = std::min<std::size_t>(bytes.size(), 64);
    if (count < 8 || bytes.size() % 2 != 0)
        return false;
    std::size_t zeros = 0;
    for (std::size_t i = from; i < count; i += 2)
        zeros += bytes[i] == '\0' ? 1U : 0U;
    return zeros >= count / 2 - 2;
}

} // namespace

std::optional<DecodedText> decodeText(std::string_view bytes)
{
    const auto made = [](std::optional<std::string> text,
                         Encoding encoding) -> std::optional<DecodedText> {
        if (!text)
            return std::nullopt;
        return DecodedText{std::move(*text), encoding};
    };
    if (bytes.starts_with("\xFF\xFE"))
        return made(fromUtf16(bytes.substr(2), false), Encoding::utf16LittleEnd);
    if (bytes.starts_with("\xFE\xFF"))
        return made(fromUtf16(bytes.substr(2), true), Encoding::utf16BigEnd);
    if (everyOtherIsZero(bytes, 1))
        return made(fromUtf16(bytes, false), Encoding::utf16LittleEnd);
    if (everyOtherIsZero(bytes, 0))
        return made(fromUtf16(bytes, true), Encoding::utf16BigEnd);
    if (bytes.starts_with("\xEF\xBB\xBF"))
        bytes.remove_prefix(3);
    if (bytes.find('\0') != std::string_view::npos)
        return std::nullopt;
    if (core::isUtf8(bytes))
        return DecodedText{std::string(bytes), Encoding::utf8};
    return made(fromWindows1252(bytes), Encoding::windows1252);
}

std::optional<char> namedSeparator(std::string_view text)
{
    if (text.size() < 5 || !core::sameWord(text.substr(0, 4), "sep="))
        return std::nullopt;
    const bool alone = text.size() == 5 || text[5] == '\n' || text[5] == '\r';
    const bool known = std::string_view(",;\t|").find(text[4]) != std::string_view::npos;
    return alone && known ? std::optional(text[4]) : std::nullopt;
}

} // namespace bothways::storage
