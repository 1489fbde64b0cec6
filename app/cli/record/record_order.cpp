// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/record/record_order.h"

#include "app/cli/options.h"
#include "core/study/study.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace bothways::cli {
namespace {

struct KnownOrder {
    RecordOrder::Kind kind;
    std::string_view name;
    char letter;
    std::string_view form;
    core::Text<0> what;
};

using Kind = RecordOrder::Kind;

constexpr std::array<KnownOrder, 10> kOrders = {
    {{Kind::start, "start", 's', "start [CONFIGURATION] [DIRECTION] [SETTING]",
      "a run begins; what is left out is as it comes next"_t},
     {Kind::end, "end", 'e', "end [CONSUMPTION]",
      "it ends, with the number that the display shows, or with that of the recording"_t},
     {Kind::mark, "mark", 'm', "mark WORD [WORDS]",
      "something was seen: passing_traffic, adjusted, or a word of your own"_t},
     {Kind::on, "on", 'o', "on ACCESSORY", "a timed accessory was switched on"_t},
     {Kind::weather, "weather", 'w', "weather COLUMN=NUMBER ...",
      "the weather of the block, like temperature_c=14 wind_ms=2 wind_from_deg=270"_t},
     {Kind::discard, "discard", 'd', "discard [REASON] [WORDS]",
      "the run does not count; without a reason, for what spoils it"_t},
     {Kind::forget, "forget", 'f', "forget", "the run under way is not written"_t},
     {Kind::next, "next", 'n', "next", "says what is driven next"_t},
     {Kind::help, "help", 'h', "help", "says this"_t},
     {Kind::stop, "stop", 'q', "stop", "ends the recording"_t}}};

/// Words parted by blanks; quotes hold one together.
std::vector<std::string> wordsOf(std::string_view line)
{
    std::vector<std::string> words;
    std::string word;
    bool isWord = false;
    char quote = 0;
    for (const char c : line) {
        if (quote != 0) {
            if (c == quote)
                quote = 0;
            else
                word += c;
        } else if (c == '"' || (c == '\'' && !isWord)) {
            quote = c;
            isWord = true;
        } else if (c == ' ' || c == '\t' || c == '\r') {
            if (isWord)
                words.push_back(std::move(word));
            word.clear();
            isWord = false;
        } else {
            word += c;
            isWord = true;
        }
    }
    if (isWord)
        words.push_back(std::move(word));
    return words;
}

std::string orderNames()
{
    std::string names;
    for (const KnownOrder& order : kOrders)
        names += (names.empty() ? "" : ", ") + std::string(order.name);
    return names;
}

} // namespace

Result<RecordOrder> recordOrderFrom(std::string_view line)
{
    std::vector<std::string> words = wordsOf(line);
    if (words.empty())
        return RecordOrder{};
    const auto known = std::find_if(kOrders.begin(), kOrders.end(), [&](const KnownOrder& order) {
        return core::sameWord(words.front(), order.name) ||
               (words.front().size() == 1 && words.front().front() == order.letter);
    });
    if (known == kOrders.end()) {
        std::vector<std::string_view> names;
        for (const KnownOrder& order : kOrders)
            names.push_back(order.name);
        return wrongUse(withNearest(
            core::message("'{}' is no order; expected one of {}"_t, words.front(), orderNames()),
            words.front(), names));
    }
    words.erase(words.begin());
    return RecordOrder{known->kind, std::move(words)};
}

std::string recordOrdersText(const Language& in)
{
    std::string text;
    for (const KnownOrder& order : kOrders)
        text += fmt::format("  {:<44} {}\n", order.form, in.say(order.what));
    return text + fmt::format("  {:<44} {}\n", "", in.say("an empty line: the alarm was heard"_t));
}

} // namespace bothways::cli
