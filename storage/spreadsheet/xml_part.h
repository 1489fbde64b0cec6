// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/number_text.h"
#include "storage/bytes/xml_pull.h"

#include <algorithm>
#include <cstring>
#include <optional>
#include <string>
#include <string_view>

namespace bothways::storage {

/// A parser of a text in memory, which outlives it.
[[nodiscard]] inline XmlPull xmlOf(const std::string& text)
{
    return XmlPull([&text, at = std::size_t{0}](char* buffer, std::size_t size) mutable {
        const std::size_t count = std::min(size, text.size() - at);
        std::memcpy(buffer, text.data() + at, count);
        at += count;
        return count;
    });
}

/// A whole number that an attribute holds.
[[nodiscard]] inline std::optional<long> wholeIn(std::optional<std::string_view> text)
{
    return text ? core::wholeNumber<long>(*text) : std::nullopt;
}

} // namespace bothways::storage
