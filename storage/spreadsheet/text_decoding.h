// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

/// The texts that programs write spreadsheets as, made UTF-8.
namespace bothways::storage {

enum class Encoding { utf8, utf16LittleEnd, utf16BigEnd, windows1252 };

struct DecodedText {
    std::string text; ///< UTF-8, without a byte order mark
    Encoding encoding = Encoding::utf8;
};
/// UTF-8, UTF-16 of both ends (by its byte order mark; without one by the zero bytes that every
/// header has), and what is not UTF-8 as Windows-1252, which Latin-1 is a part of (WHATWG Encoding
/// Standard, index windows-1252). Nothing: it is no text.
[[nodiscard]] std::optional<DecodedText> decodeText(std::string_view bytes);

/// What stands behind "sep=" in the first line, as spreadsheets write it for one another.
[[nodiscard]] std::optional<char> namedSeparator(std::string_view text);

} // namespace bothways::storage
