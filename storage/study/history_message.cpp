// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/history_message.h"

#include "core/base/decimal_text.h"
#include "core/study/rule.h"
#include "core/study/units.h"
#include "storage/sheet/run_columns.h"
#include "storage/study/history_detail.h"

#include <algorithm>
#include <array>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace bothways::storage {
namespace {

using core::message;
using core::Message;
using core::Text;
using core::Value;
using List = HistoryValue::List;

/// A name of the program's own, and what people read.
struct Named {
    std::string_view name;
    Text<0> text;
};

constexpr std::array kStatuses = {Named{"counted", "counted##status"_t},
                                  Named{"discarded", "discarded##status"_t}};

constexpr std::array kVerdicts = {
    Named{"less", "less##verdict"_t}, Named{"more", "more##verdict"_t},
    Named{"equivalent", "equivalent##verdict"_t}, Named{"undecided", "undecided##verdict"_t},
    Named{"none", "none##verdict"_t}};

/// The text that people read; a name of somebody else's as it is.
template <std::size_t Size>
Value shown(const std::array<Named, Size>& known, const std::string& name)
{
    const auto at = std::find_if(known.begin(), known.end(),
                                 [&](const Named& named) { return named.name == name; });
    if (at == known.end())
        return name;
    return at->text;
}

Value columnShown(const std::string& name)
{
    const ColumnWords* words = columnWords(name);
    if (!words)
        return name;
    return words->unit ? Value(message("{} ({})"_t, words->name, *words->unit))
                       : Value(words->name);
}

Value unitShown(const std::string& name)
{
    const auto unit = core::unitFromName(name);
    return unit ? Value(core::unitSign(*unit)) : Value(name);
}

const HistoryValue& at(const List& list, std::size_t place)
{
    static const HistoryValue none{std::string()};
    return place < list.size() ? list[place] : none;
}

const std::string& textAt(const List& list, std::size_t place)
{
    return at(list, place).text();
}

/// "a; b; c", halved again and again so that thousands of parts do not lie thousands deep.
Message joined(std::span<const Message> parts, Text<2> two)
{
    if (parts.empty())
        return Message::verbatim({});
    if (parts.size() == 1)
        return parts.front();
    const std::size_t half = parts.size() / 2;
    return message(two, joined(parts.first(half), two), joined(parts.subspan(half), two));
}

template <class Said>
Message each(const List& list, std::size_t from, Text<2> two, const Said& said)
{
    std::vector<Message> parts;
    for (std::size_t i = from; i < list.size(); ++i)
        parts.push_back(said(list[i].list()));
    return joined(parts, two);
}

constexpr auto kSemicolon = "{}; {}"_t;
constexpr auto kComma = "{}, {}"_t;

Message runs(const List& numbers)
{
    std::string text;
    for (const HistoryValue& number : numbers)
        text += (text.empty() ? "" : ", ") + std::to_string(number.number());
    return numbers.size() == 1 ? message("run {}"_t, text) : message("runs {}"_t, text);
}

Message facts(const List& run)
{
    const auto number = at(run, 0).number();
    if (run.size() <= 4)
        return message("run {}: {} {} {}"_t, number, textAt(run, 1), textAt(run, 2),
                       textAt(run, 3));
    return message("run {}: {} {} {}, {} {}"_t, number, textAt(run, 1), textAt(run, 2),
                   textAt(run, 3), core::decimalText(textAt(run, 4)), unitShown(textAt(run, 5)));
}

bool isNumber(const std::string& column)
{
    const auto columns = numberColumns();
    return std::any_of(columns.begin(), columns.end(),
                       [&](const NumberColumn& known) { return known.name == column; });
}

/// What stood in a cell, in quotes.
Message cell(const std::string& column, const HistoryValue& value)
{
    const List& parts = value.list();
    if (parts.size() == 2)
        return message("'{} {}'"_t, core::decimalText(textAt(parts, 0)),
                       unitShown(textAt(parts, 1)));
    if (parts.size() > 2)
        return message("'{} {} from trace'"_t, core::decimalText(textAt(parts, 0)),
                       unitShown(textAt(parts, 1)));
    if (column == "status")
        return message("'{}'"_t, shown(kStatuses, value.text()));
    if (column == "reason")
        return message("'{}'"_t, core::reasonValue(value.text()));
    if (isNumber(column))
        return message("'{}'"_t, core::decimalText(value.text()));
    return message("'{}'"_t, value.text());
}

Message edit(const List& change)
{
    const auto number = at(change, 0).number();
    std::vector<Message> cells;
    for (std::size_t i = 1; i + 2 < change.size(); i += 3) {
        const std::string& column = change[i].text();
        cells.push_back(message("{} {} -> {}"_t, columnShown(column), cell(column, change[i + 1]),
                                cell(column, change[i + 2])));
    }
    if (cells.empty())
        return message("run {}:"_t, number);
    return message("run {}: {}"_t, number, joined(cells, kComma));
}

Message discarded(const List& part)
{
    const Value reason = core::reasonValue(textAt(part, 1));
    if (part.size() <= 2)
        return message("{}: {}"_t, runs(at(part, 0).list()), reason);
    return message("{}: {}, {}"_t, runs(at(part, 0).list()), reason, textAt(part, 2));
}

Message overruled(const List& one)
{
    return message("run {}: {}, {}"_t, at(one, 0).number(), core::reasonValue(textAt(one, 1)),
                   textAt(one, 2));
}

Message standing(const List& one)
{
    return message("run {}: {}"_t, at(one, 0).number(), core::reasonValue(textAt(one, 1)));
}

Message property(const List& one)
{
    return message("{}='{}'"_t, textAt(one, 0), textAt(one, 1));
}

Message renamed(const List& one)
{
    const Message from = message("'{}'"_t, textAt(one, 1));
    const Message to = message("'{}'"_t, textAt(one, 2));
    return textAt(one, 0) == "direction" ? message("direction {} -> {}"_t, from, to)
                                         : message("configuration {} -> {}"_t, from, to);
}

Message sheet(const List& values)
{
    const auto count = at(values, 1).number();
    const Message runs = count == 1 ? message("{}: {} run"_t, textAt(values, 0), count)
                                    : message("{}: {} runs"_t, textAt(values, 0), count);
    const auto recordings = at(values, 2).number();
    if (recordings == 0)
        return runs;
    return recordings == 1 ? message("{}, {} recording"_t, runs, recordings)
                           : message("{}, {} recordings"_t, runs, recordings);
}

/// "runs 1, 2; run 1: start ...": from `place` on.
Message parts(const List& values, std::size_t place)
{
    const Message numbers = runs(at(values, place).list());
    if (values.size() <= place + 1)
        return numbers;
    return message(kSemicolon, numbers, each(values, place + 1, kSemicolon, edit));
}

/// "drive.csv: 1201 rows, 2 channels": rows at `place`, channels behind them.
Message size(const List& values, std::size_t place)
{
    const auto rows = at(values, place).number();
    const auto channels = at(values, place + 1).number();
    return message("{}: {}, {}"_t, textAt(values, 0),
                   rows == 1 ? message("{} row"_t, rows) : message("{} rows"_t, rows),
                   channels == 1 ? message("{} channel"_t, channels)
                                 : message("{} channels"_t, channels));
}

Message recording(const List& values)
{
    const auto run = at(values, 3).number();
    Message whole = size(values, 1);
    if (run != 0)
        whole = message("{}, run {}"_t, std::move(whole), run);
    return values.size() <= kRunsOfRecording
               ? whole
               : message(kSemicolon, whole, parts(values, kRunsOfRecording));
}

/// "3 reconnects" of all instruments of a recording; nothing without one.
struct Troubles {
    long long garbage = 0, reconnects = 0, silences = 0;
    explicit Troubles(const List& instruments)
    {
        for (const HistoryValue& one : instruments) {
            garbage += at(one.list(), 2).number();
            reconnects += at(one.list(), 4).number();
            silences += at(one.list(), 5).number();
        }
    }
};

Message recorded(const List& values)
{
    if (at(values, 4).number() != 0)
        return message("{}: was not stopped; it is there up to its last second"_t,
                       textAt(values, 0));
    const Message whole = size(values, 2);
    const Troubles troubles(at(values, 5).list());
    if (troubles.garbage + troubles.reconnects + troubles.silences == 0)
        return whole;
    return message("{}; reconnects: {}, silences: {}, unreadable lines: {}"_t, whole,
                   troubles.reconnects, troubles.silences, troubles.garbage);
}

/// "before run 7: 5 of 6 ticked; tyre pressure 230 kPa; not ticked: belts on"
Message walkRound(const List& values)
{
    long long ticked = 0;
    long long lines = 0;
    std::vector<Message> numbers;
    for (std::size_t i = 2; i < values.size(); ++i) {
        const List& line = values[i].list();
        ++lines;
        ticked += at(line, 1).number() != 0 ? 1 : 0;
        if (at(line, 1).number() == 0)
            numbers.push_back(message("not ticked: {}"_t, textAt(line, 0)));
        else if (!textAt(line, 2).empty())
            numbers.push_back(message("{} {} {}"_t, textAt(line, 0),
                                      core::decimalText(textAt(line, 2)), textAt(line, 3)));
    }
    const Message whole =
        message("before run {}: {} of {} ticked"_t, at(values, 1).number(), ticked, lines);
    return numbers.empty() ? whole : message(kSemicolon, whole, joined(numbers, kSemicolon));
}

std::optional<Message> said(const HistoryDetail& detail)
{
    const List& values = detail.values;
    const auto all = [&](Text<2> two, Message (*one)(const List&)) {
        return each(values, 0, two, one);
    };
    if (detail.form == "runs")
        return runs(values);
    if (detail.form == "facts")
        return all(kSemicolon, facts);
    if (detail.form == "edit")
        return all(kSemicolon, edit);
    if (detail.form == "discard")
        return all(kSemicolon, discarded);
    if (detail.form == "overrule")
        return all(kSemicolon, overruled);
    if (detail.form == "stand")
        return all(kSemicolon, standing);
    if (detail.form == "properties")
        return all(kComma, property);
    if (detail.form == "rename")
        return all(kComma, renamed);
    if (detail.form == "sheet")
        return sheet(values);
    if (detail.form == "recording")
        return recording(values);
    if (detail.form == "cut")
        return message("{}: {}"_t, textAt(values, 0), parts(values, kRunsOfCut));
    if (detail.form == "assign")
        return message("run {}: {} from {} s"_t, at(values, 0).number(), textAt(values, 1),
                       core::decimalText(textAt(values, 2)));
    if (detail.form == "walk_round")
        return walkRound(values);
    if (detail.form == "record")
        return Message::verbatim(textAt(values, 0));
    if (detail.form == "record_end")
        return recorded(values);
    if (detail.form == "words")
        return Message::verbatim(textAt(values, 0));
    if (detail.form == "made")
        return message("made by Bothways {}"_t, textAt(values, 0));
    if (detail.form == "look")
        return message("{} pairs: {}"_t, at(values, 0).number(),
                       shown(kVerdicts, textAt(values, 1)));
    return std::nullopt;
}

} // namespace

core::Message historyDetail(const HistoryEntry& entry)
{
    if (entry.detail.empty())
        return {};
    if (const auto change = changeBehind(entry))
        return change->detail.empty() ? Message::verbatim(entry.detail)
                                      : message("{} {}"_t, change->kind, historyDetail(*change));
    if (entry.kind == "blind" && entry.detail == "on")
        return "on##blind screening"_t;
    if (entry.kind == "blind" && entry.detail == "off")
        return "off##blind screening"_t;
    if (const auto detail = HistoryDetail::read(entry.detail))
        if (auto message = said(*detail))
            return *std::move(message);
    return Message::verbatim(entry.detail);
}

std::optional<HistoryEntry> changeBehind(const HistoryEntry& entry)
{
    if (entry.kind != "undo" && entry.kind != "redo")
        return std::nullopt;
    const std::size_t blank = std::min(entry.detail.find(' '), entry.detail.size());
    HistoryEntry change = entry;
    change.kind = entry.detail.substr(0, blank);
    change.detail = entry.detail.substr(std::min(blank + 1, entry.detail.size()));
    if (change.kind == "undo" || change.kind == "redo")
        return std::nullopt; // nobody undoes an undoing
    return change;
}

} // namespace bothways::storage
