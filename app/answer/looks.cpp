// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/answer/looks.h"

#include "storage/study/history_detail.h"

#include <algorithm>
#include <optional>
#include <string_view>

namespace bothways::app {

namespace {

using storage::HistoryDetail;

constexpr std::string_view kPlan = "plan.";

/// Whether a line of the history that set properties set one of the plan. Those of earlier versions
/// hold the words that were typed: "margin=1, plan.pairs=4".
bool setsPlan(const storage::HistoryEntry& entry)
{
    const auto isPlan = [](std::string_view name) {
        return core::inSmallLetters(name.substr(0, kPlan.size())) == kPlan;
    };
    const auto detail = HistoryDetail::read(entry.detail);
    if (!detail || entry.kind != "set")
        return false;
    if (detail->form == "properties")
        return std::ranges::any_of(detail->values, [&](const storage::HistoryValue& property) {
            return !property.list().empty() && isPlan(property.list().front().text());
        });
    if (detail->form != "words" || detail->values.empty())
        return false;
    std::string_view rest = detail->values.front().text();
    for (;;) {
        if (isPlan(rest))
            return true;
        const std::size_t comma = rest.find(", ");
        if (comma == std::string_view::npos)
            return false;
        rest.remove_prefix(comma + 2);
    }
}

bool bringsRuns(const storage::HistoryEntry& entry)
{
    if (entry.kind != "import_trace")
        return entry.kind == "add_run" || entry.kind == "import" || entry.kind == "cut_recording";
    const auto detail = HistoryDetail::read(entry.detail);
    return detail &&
           detail->values.size() > storage::kRunsOfRecording; // it was cut into runs as it came in
}

std::optional<core::PlannedStudy> planOfLook(const storage::HistoryEntry& entry)
{
    const auto detail = HistoryDetail::read(entry.detail);
    if (entry.kind != "look" || !detail || detail->form != "look" ||
        detail->values.size() < storage::kPlanOfLook + 2)
        return std::nullopt;
    core::PlannedStudy plan;
    plan.sequence = detail->values[storage::kPlanOfLook].text();
    plan.pairs_per_block = static_cast<int>(detail->values[storage::kPlanOfLook + 1].number());
    return plan;
}

} // namespace

core::PlanRecord planRecordOf(const std::vector<storage::HistoryEntry>& history,
                              const core::StudyProperties& properties)
{
    core::PlanRecord record;
    bool runs = false, looked = false;
    for (const storage::HistoryEntry& entry : history) {
        if (const auto plan = planOfLook(entry)) {
            if (std::ranges::find(record.looked_at, *plan) == record.looked_at.end())
                record.looked_at.push_back(*plan);
        }
        looked = looked || entry.kind == "look";
        if (entry.undone)
            continue;
        runs = runs || bringsRuns(entry);
        if (properties.plan && setsPlan(entry)) {
            record.after_runs = runs;
            record.after_look = looked;
        }
    }
    return record;
}

std::vector<int> pairsLookedAt(const std::vector<storage::HistoryEntry>& history)
{
    std::vector<int> pairs;
    for (const storage::HistoryEntry& entry : history) {
        if (entry.kind != "look")
            continue;
        const auto detail = storage::HistoryDetail::read(entry.detail);
        if (detail && detail->form == "look" && !detail->values.empty())
            pairs.push_back(static_cast<int>(detail->values.front().number()));
    }
    return pairs;
}

bool isLookForTheRecord(const core::StudyProperties& properties, const core::Analysis& analysis,
                        const std::vector<int>& lookedAtPairs)
{
    if (properties.plan)
        return true;
    const auto pairs = static_cast<int>(analysis.pairs.size());
    return analysis.headline && std::ranges::find(lookedAtPairs, pairs) == lookedAtPairs.end();
}

std::string lookDetail(const core::Analysis& analysis, const core::StudyProperties& properties)
{
    HistoryDetail detail{"look", {analysis.pairs.size(), core::name(analysis.verdict.cls)}};
    if (properties.plan) {
        detail.values.emplace_back(properties.plan->sequence);
        detail.values.emplace_back(properties.plan->pairs_per_block);
    }
    return detail.written();
}

} // namespace bothways::app
