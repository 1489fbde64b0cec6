// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/plan.h"

#include "app/wording/numbers.h"
#include "core/study/units.h"

namespace bothways::app::wording {
namespace {

std::string percentFromLog(const Language& in, double log)
{
    return in.say("{} %"_t, significant(in, core::pctFromLog(log), 3));
}

} // namespace

std::string planSentence(const Language& in, const core::Plan& plan, const std::string& distance)
{
    return in.sayCount(plan.pairs_per_block, "{} with {} pair a block: {}, {} h on the road, {}."_t,
                       "{} with {} pairs a block: {}, {} h on the road, {}."_t, plan.sequence,
                       grouped(in, plan.pairs_per_block),
                       counted(in, plan.pairs, "pair"_t, "pairs"_t), fixed(in, plan.road_hours, 1),
                       distance);
}

std::string uncertainNoise(const Language& in, const core::Plan& plan)
{
    if (!plan.s_upper80)
        return {};
    return in.say("The noise was measured on few pairs and may well be {}; then the interval is "
                  "plus or minus {} and {} or more is found."_t,
                  percentFromLog(in, *plan.s_upper80),
                  percentFromLog(in, plan.half_width_upper80_log.value_or(0.0)),
                  percentFromLog(in, plan.detectable_upper80_log.value_or(0.0)));
}

PlanWidths planWidths(const Language& in, const core::Plan& plan)
{
    const auto width = [&](const std::optional<double>& log) {
        return log ? in.say("plus or minus {}"_t, percentFromLog(in, *log)) : std::string("-");
    };
    return {width(plan.half_width_log), width(plan.curved_half_width_log),
            width(plan.any_look_half_width_log)};
}

std::vector<std::string> planWidthHeads(const Language& in)
{
    return {in.say("straight drift##interval of a plan"_t), in.say("bent drift"_t),
            in.say("any number of looks"_t)};
}

std::string planWidthsExplained(const Language& in)
{
    return in.say("How wide the interval will be: as the verdict takes it, with a straight drift; "
                  "if the drift may bend; and if the result may be looked at as often as one likes "
                  "on the way."_t);
}

std::string planCaution(const Language& in, const std::string& sequence)
{
    if (sequence == "AB" || sequence == "BA")
        return in.say("Caution: one switch only. Whatever drifts over the day is taken for an "
                      "effect, and more pairs do not help."_t);
    if (sequence == "ABBA")
        return in.say("Caution: short on the road, but the design that a curved drift (an engine "
                      "that is not warm yet) fools most."_t);
    if (sequence == "ABA")
        return in.say("Caution: a straight drift is taken out, a curved one (an engine that is not "
                      "warm yet) is not."_t);
    return {};
}

std::vector<std::string> weaknessHeads(const Language& in)
{
    return {in.say("still day"_t), in.say("straight drift##of a day"_t), in.say("curved drift"_t),
            in.say("changes at switches"_t), in.say("pairs alike"_t)};
}

std::string weaknessExplained(const Language& in)
{
    return in.say("Finds: the smallest effect that would be found with the power asked for. The "
                  "last five columns: how often an interval that promises the confidence asked for "
                  "keeps it, simulated with a fixed seed: on a still day; with a drift of 1 % an "
                  "hour; with one that bends by 1 % an hour squared; when each switch changes the "
                  "level by some 0.5 %; when a pair resembles the one before (0.6)."_t);
}

} // namespace bothways::app::wording
