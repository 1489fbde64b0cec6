// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

/// Parts of a text: what is left without blanks at its ends, and its words.
namespace bothways::core {

/// Blanks and tabs at both ends dropped.
[[nodiscard]] std::string_view trimmed(std::string_view text);
/// Line breaks as well.
[[nodiscard]] std::string_view trimmedLines(std::string_view text);

/// What stands between separators, which are single characters; nothing empty.
/// @param most  words; what comes after them is not looked at
[[nodiscard]] std::vector<std::string_view>
wordsBetween(std::string_view separators, std::string_view text, std::size_t most = SIZE_MAX);

} // namespace bothways::core
