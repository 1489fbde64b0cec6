// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iterator>
#include <optional>
#include <string_view>

/// Values that files and people name by a word, in a table of both.
namespace bothways::core {

template <class Value>
struct NamedValue {
    Value value;
    std::string_view name;
};

/// Empty for a value that the table has not.
template <class Table, class Value>
[[nodiscard]] constexpr std::string_view nameIn(const Table& table, Value value)
{
    for (const NamedValue<Value>& named : table)
        if (named.value == value)
            return named.name;
    return {};
}

template <class Table>
[[nodiscard]] constexpr auto valueIn(const Table& table, std::string_view name)
    -> std::optional<decltype(std::begin(table)->value)>
{
    for (const auto& named : table)
        if (named.name == name)
            return named.value;
    return std::nullopt;
}

} // namespace bothways::core
