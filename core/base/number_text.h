// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <charconv>
#include <cstddef>
#include <optional>
#include <string_view>
#include <system_error>

/// Numbers out of texts, the same under every locale. Blanks, a plus sign and a decimal comma are
/// no part of a number here: who allows them takes them away beforehand.
namespace bothways::core {

/// The number that the whole of `text` is; nothing for one that is not finite ("nan", "inf",
/// "1e999").
[[nodiscard]] std::optional<double> finiteNumber(std::string_view text);

/// The same of an integer that `Integer` can hold; a minus sign is allowed where that is signed.
template <typename Integer>
[[nodiscard]] std::optional<Integer> wholeNumber(std::string_view text, int base = 10)
{
    Integer value = 0;
    const char* const end = text.data() + text.size();
    const auto [rest, problem] = std::from_chars(text.data(), end, value, base);
    return problem == std::errc() && rest == end ? std::optional(value) : std::nullopt;
}

[[nodiscard]] constexpr bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

/// Takes `least` to `most` digits, 9 at most, off the front, as many as there are; none where there
/// are fewer.
[[nodiscard]] std::optional<int> takeDigits(std::string_view& text, std::size_t least,
                                            std::size_t most);

/// Takes `c` off the front, and says whether it was there.
bool take(std::string_view& text, char c);

} // namespace bothways::core
