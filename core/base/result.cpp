// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/result.h"

#include <fmt/format.h>

namespace bothways::core {

std::string Place::english() const
{
    std::string text = file;
    if (line > 0)
        text += fmt::format("{}{}", text.empty() ? "" : ":", line);
    const auto add = [&text](const std::string& part) {
        text += (text.empty() ? "" : ": ") + part;
    };
    if (run != 0)
        add(fmt::format("{}run {}", new_run ? "new " : "", run));
    if (!column.empty())
        add(fmt::format("column '{}'", column));
    else if (column_number > 0)
        add(fmt::format("column {}", column_number));
    return text;
}

std::string describe(const Error& error)
{
    std::string text = error.message.english();
    if (!error.where.empty())
        text = error.where.english() + ": " + text;
    for (const Error& other : error.others)
        text += '\n' + describe(other);
    return text;
}

} // namespace bothways::core
