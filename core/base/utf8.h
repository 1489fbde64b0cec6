// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string_view>

/// UTF-8 as RFC 3629 has it: no overlong forms, no surrogates, nothing beyond U+10FFFF.
namespace bothways::core {

/// What a text begins with.
struct CodePoint {
    char32_t value = 0;
    std::size_t bytes = 0; ///< that it takes; 0: the text begins with a byte that is no UTF-8
};
[[nodiscard]] CodePoint firstCodePoint(std::string_view text);

/// True when every byte belongs to a well-formed code point.
[[nodiscard]] bool isUtf8(std::string_view text);
/// The same without a zero byte: what a study gives back as it was.
[[nodiscard]] bool isStorableText(std::string_view text);

} // namespace bothways::core
