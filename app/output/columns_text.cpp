// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/columns_text.h"

#include "storage/sheet/column_names.h"

#include <algorithm>

namespace bothways::app {
namespace {

constexpr std::size_t kColumnsWide = 98; // as help is

/// Names between commas, a new line where one is full.
std::string wrappedNames(const std::string& begin, const std::vector<std::string>& names)
{
    std::string text;
    std::string line = "    " + begin;
    for (std::size_t i = 0; i < names.size(); ++i) {
        const std::string word = " " + names[i] + (i + 1 < names.size() ? "," : "");
        if (line.size() + word.size() > kColumnsWide) {
            text += line + "\n";
            line = "     ";
        }
        line += word;
    }
    return text + line + "\n";
}

std::string joinedNames(const std::vector<std::string>& names)
{
    std::string text;
    for (const std::string& name : names)
        text += (text.empty() ? "" : ", ") + name;
    return text;
}

} // namespace

std::string columnsText(const Language& in, const std::vector<std::string>& names)
{
    std::string text;
    if (names.empty())
        text =
            in.say("configuration, direction, start and one consumption must be there; every "
                   "other column may be. Any other name is kept as it is, without a meaning."_t) +
            "\n";
    for (const storage::ColumnInfo& column : storage::allColumns()) {
        if (!names.empty() && std::ranges::find(names, column.name) == names.end())
            continue;
        const std::string unit = column.unit.empty() ? "" : " [" + in.say(column.unit) + "]";
        text += (text.empty() ? "" : "\n") + column.name + unit + "\n    " +
                in.say("{}; like {}"_t, column.range, column.example) + "\n";
        if (!column.known_as.empty())
            text += wrappedNames(in.say("also:##other names of a column"_t), column.known_as);
    }
    return text;
}

std::string columnsMarkdown(const Language& in)
{
    std::string text = "| " + in.say("column##of a run sheet"_t) + " | " +
                       in.say("unit##of a column"_t) + " | " + in.say("a cell holds"_t) + " | " +
                       in.say("example##of a cell"_t) + " |\n|---|---|---|---|\n";
    const auto columns = storage::allColumns();
    for (const storage::ColumnInfo& column : columns)
        text += "| `" + column.name + "` | " + in.say(column.unit) + " | " + in.say(column.range) +
                " | `" + column.example + "` |\n";
    text += "\n" + in.say("Other names, in large or small letters, with or without accents:"_t) +
            "\n\n";
    for (const storage::ColumnInfo& column : columns)
        if (!column.known_as.empty())
            text += "- `" + column.name + "`: " + joinedNames(column.known_as) + "\n";
    return text;
}

} // namespace bothways::app
