// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/result.h"

#include "core/base/place_words.h"

namespace bothways::core {

std::string placeIn(const Place& place, const std::function<std::string(const Message&)>& say)
{
    std::string text = place.file;
    if (place.line > 0)
        text += (text.empty() ? "" : ":") + std::to_string(place.line);
    const auto add = [&](const Message& part) { text += (text.empty() ? "" : ": ") + say(part); };
    if (place.run != 0)
        add(place.new_run ? message("new run {}"_t, place.run) : message("run {}"_t, place.run));
    if (!place.column.empty())
        add(message("column '{}'"_t, place.column));
    else if (place.column_number > 0)
        add(message("column {}"_t, place.column_number));
    return text;
}

std::string Place::english() const
{
    return placeIn(*this, [](const Message& part) { return part.english(); });
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
