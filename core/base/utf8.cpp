// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/utf8.h"

#include <array>

namespace bothways::core {
namespace {

/// A form of so many bytes: the bits that tell it, and the least code point that it is for.
struct Utf8Form {
    std::size_t bytes;
    unsigned mask, lead;
    char32_t least;
};
constexpr std::array<Utf8Form, 4> kForms{{{1, 0x80U, 0x00U, 0},
                                          {2, 0xE0U, 0xC0U, 0x80},
                                          {3, 0xF0U, 0xE0U, 0x800},
                                          {4, 0xF8U, 0xF0U, 0x10000}}};

} // namespace

CodePoint firstCodePoint(std::string_view text)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    for (const Utf8Form& form : kForms) {
        if (text.size() < form.bytes || (byte(0) & form.mask) != form.lead)
            continue;
        char32_t value = byte(0) & ~form.mask & 0xFFU;
        for (std::size_t i = 1; i < form.bytes; ++i) {
            if ((byte(i) & 0xC0U) != 0x80U)
                return {};
            value = value << 6 | (byte(i) & 0x3FU);
        }
        const bool surrogate = value >= 0xD800 && value <= 0xDFFF;
        if (value < form.least || value > 0x10FFFF || surrogate)
            return {};
        return {value, form.bytes};
    }
    return {};
}

bool isUtf8(std::string_view text)
{
    while (!text.empty()) {
        const std::size_t bytes = firstCodePoint(text).bytes;
        if (bytes == 0)
            return false;
        text.remove_prefix(bytes);
    }
    return true;
}

bool isStorableText(std::string_view text)
{
    return isUtf8(text) && text.find('\0') == std::string_view::npos;
}

} // namespace bothways::core
