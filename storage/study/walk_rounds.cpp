// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/walk_rounds.h"

#include "core/study/clock.h"
#include "core/study/property_values.h"
#include "storage/study/history_detail.h"

#include <optional>
#include <string>

namespace bothways::storage {
namespace {

constexpr const char* kWalkRound = "walk_round";

std::string wordsAt(const HistoryValue::List& values, std::size_t place)
{
    return place < values.size() ? values[place].text() : std::string();
}

core::WalkTick tickFrom(const HistoryValue::List& values)
{
    core::WalkTick tick;
    tick.words = wordsAt(values, 0);
    tick.ticked = values.size() > 1 && values[1].number() != 0;
    tick.number = core::propertyNumber(wordsAt(values, 2));
    tick.unit = wordsAt(values, 3);
    return tick;
}

std::optional<core::WalkRound> roundFrom(const HistoryEntry& entry)
{
    if (entry.kind != kWalkRound)
        return std::nullopt;
    const auto detail = HistoryDetail::read(entry.detail);
    if (!detail || detail->form != kWalkRound || detail->values.size() < 2)
        return std::nullopt;
    const auto at = core::parseDateTime(detail->values[0].text());
    if (!at)
        return std::nullopt;
    core::WalkRound round;
    round.at = at.value();
    round.run = static_cast<int>(detail->values[1].number());
    for (std::size_t i = 2; i < detail->values.size(); ++i)
        round.ticks.push_back(tickFrom(detail->values[i].list()));
    return round;
}

} // namespace

std::vector<core::WalkRound> walkRoundsIn(const std::vector<HistoryEntry>& history)
{
    std::vector<core::WalkRound> rounds;
    for (const HistoryEntry& entry : history)
        if (auto round = roundFrom(entry))
            rounds.push_back(*std::move(round));
    return rounds;
}

Result<std::vector<core::WalkRound>> walkRounds(const StudyFile& study)
{
    const auto history = study.history();
    if (!history)
        return history.error();
    return walkRoundsIn(history.value());
}

Outcome noteWalkRound(StudyFile& study, const core::WalkRound& round)
{
    HistoryDetail detail{kWalkRound, {core::formatDateTime(round.at), round.run}};
    for (const core::WalkTick& tick : round.ticks)
        detail.values.emplace_back(HistoryValue::List{
            tick.words, tick.ticked ? 1 : 0,
            tick.number ? core::propertyText(*tick.number) : std::string(), tick.unit});
    return study.note(kWalkRound, detail.written());
}

} // namespace bothways::storage
