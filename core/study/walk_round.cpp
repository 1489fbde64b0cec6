// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/walk_round.h"

#include "core/base/text_parts.h"
#include "core/study/property_values.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace bothways::core {
namespace {

constexpr std::size_t kMostLines = 40;
constexpr std::size_t kLongestLine = 200;

Error badLine(std::string_view line, Message expected)
{
    return Error{ErrorCode::badInput,
                 message("the line '{}' of the walk-round: expected {}"_t, line, expected),
                 {}};
}

Result<WalkLine> lineFrom(std::string_view text)
{
    WalkLine line;
    const std::size_t equals = text.rfind('=');
    line.words = trimmed(text.substr(0, equals));
    if (line.words.empty() || text.size() > kLongestLine)
        return badLine(text, message("words, at most {} bytes"_t, kLongestLine));
    if (equals == std::string_view::npos)
        return line;
    std::string_view unit = trimmed(text.substr(equals + 1));
    for (const std::string_view sign : {"+-", "±"}) {
        const std::size_t at = unit.find(sign);
        if (at == std::string_view::npos)
            continue;
        const auto tolerance = typedNumber(trimmed(unit.substr(at + sign.size())));
        if (!tolerance || !(*tolerance > 0.0))
            return badLine(text, "a tolerance above 0 after +-"_t);
        line.tolerance = *tolerance;
        unit = trimmed(unit.substr(0, at));
        break;
    }
    if (unit.empty())
        return badLine(text, "a unit after '='"_t);
    line.unit = unit;
    return line;
}

} // namespace

Result<std::vector<WalkLine>> walkLines(std::string_view text)
{
    std::vector<WalkLine> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(';'), text.size());
        const std::string_view part = trimmed(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (part.empty())
            continue;
        auto line = lineFrom(part);
        if (!line)
            return line.error();
        if (std::any_of(lines.begin(), lines.end(), [&](const WalkLine& other) {
                return sameWord(other.words, line.value().words);
            }))
            return badLine(part, "each line once"_t);
        lines.push_back(std::move(line).take());
        if (lines.size() > kMostLines)
            return badLine(part, message("at most {} lines"_t, kMostLines));
    }
    return lines;
}

std::string walkText(const std::vector<WalkLine>& lines)
{
    std::string text;
    for (const WalkLine& line : lines) {
        text += (text.empty() ? "" : "; ") + line.words;
        if (!line.unit.empty())
            text += " = " + line.unit;
        if (line.tolerance)
            text += " +- " + propertyText(*line.tolerance);
    }
    return text;
}

WalkRound blankRound(const std::vector<WalkLine>& lines, Instant at, int run)
{
    WalkRound round{at, run, {}};
    for (const WalkLine& line : lines)
        round.ticks.push_back({line.words, false, std::nullopt, line.unit});
    return round;
}

int openLines(const WalkRound& round)
{
    return static_cast<int>(std::count_if(round.ticks.begin(), round.ticks.end(),
                                          [](const WalkTick& tick) { return !tick.ticked; }));
}

std::vector<WalkDifference> differencesOf(const std::vector<WalkLine>& lines,
                                          const std::vector<WalkRound>& before,
                                          const WalkRound& now)
{
    std::vector<WalkDifference> found;
    const auto numberIn = [](const WalkRound& round, const WalkLine& line) {
        const auto tick =
            std::find_if(round.ticks.begin(), round.ticks.end(), [&](const WalkTick& one) {
                return sameWord(one.words, line.words) && one.unit == line.unit;
            });
        return tick == round.ticks.end() ? std::nullopt : tick->number;
    };
    for (const WalkLine& line : lines) {
        const auto number = numberIn(now, line);
        if (!number || !line.tolerance)
            continue;
        for (auto round = before.rbegin(); round != before.rend(); ++round) {
            const auto earlier = numberIn(*round, line);
            if (!earlier)
                continue;
            // two decimals may differ by rounding once they are subtracted
            if (std::abs(*number - *earlier) > *line.tolerance * (1.0 + 1e-9))
                found.push_back({line.words, line.unit, *earlier, *number, *line.tolerance});
            break;
        }
    }
    return found;
}

bool wouldBeWithoutWalkRound(const Study& study, const Run& next,
                             const std::vector<WalkRound>& made)
{
    if (study.properties.walk_round.empty() && made.empty())
        return false;
    const Run* const before = study.runs.empty() ? nullptr : &study.runs.back();
    // made for this run, or since the run before and not later than it
    return beginsBlock(before, next.configuration, next.start) &&
           std::none_of(made.begin(), made.end(), [&](const WalkRound& round) {
               return round.run == next.number ||
                      (round.at.us <= next.start.us && (!before || round.at.us > before->start.us));
           });
}

void putNumbers(Run& run, const std::vector<WalkRound>& made)
{
    const auto has = [&](const std::string& column) {
        return std::any_of(run.extra.begin(), run.extra.end(),
                           [&](const auto& own) { return own.first == column; });
    };
    for (auto round = made.rbegin(); round != made.rend(); ++round)
        for (const WalkTick& tick : round->ticks)
            if (round->run == run.number && tick.number && !has(walkColumn(tick)))
                run.extra.emplace_back(walkColumn(tick), propertyText(*tick.number));
}

std::string walkColumn(const WalkTick& tick)
{
    return tick.unit.empty() ? tick.words : fmt::format("{} ({})", tick.words, tick.unit);
}

} // namespace bothways::core
