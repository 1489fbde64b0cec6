// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/rule_channels.h"

#include "core/screening/screening.h"
#include "core/study/limits.h"
#include "tests/core/screening/screening_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace bothways::core::tests {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

/// Rules that a run with these channels leaves unasked because it lacks one.
std::vector<Rule> unaskedWith(const std::vector<std::string_view>& channels)
{
    Study study;
    for (const LimitInfo& limit : allLimits())
        if (!limit.byDefault)
            study.properties.limits[std::string(limit.name)] = limit.largest / 2.0;
    study.properties.limits["stretch.km"] = 5.0;
    study.runs = {aRun()};
    study.runs.front().id = RunId{1};
    const auto screening = screen(study, [&](const Run&) -> std::unique_ptr<RunTrace> {
        auto trace = std::make_unique<MemoryTrace>();
        Samples samples;
        for (int i = 0; i <= 2000; ++i) {
            samples.time_s.push_back(i * 0.1);
            samples.value.push_back(45.0 + 0.001 * i); // a speed, a counter, a latitude
        }
        trace->add("own", "", samples);
        for (const std::string_view channel : channels)
            trace->add(std::string(channel), "", samples);
        return trace;
    });
    std::vector<Rule> unasked;
    for (const NotChecked& skipped : screening.not_checked)
        if (skipped.why == WhyNotChecked::noChannel)
            unasked.push_back(skipped.rule);
    return unasked;
}

bool contains(const std::vector<Rule>& rules, Rule rule)
{
    return std::find(rules.begin(), rules.end(), rule) != rules.end();
}

TEST(RuleChannels, AreWhatTheRulesThemselvesAskFor)
{
    for (const RuleChannels& one : rulesWithChannels()) {
        EXPECT_TRUE(contains(unaskedWith({}), one.rule)) << ruleName(one.rule);
        for (const RuleWay& way : one.ways) {
            EXPECT_FALSE(contains(unaskedWith(way), one.rule)) << ruleName(one.rule);
            for (std::size_t without = 0; without < way.size(); ++without) {
                RuleWay less = way;
                less.erase(less.begin() + static_cast<std::ptrdiff_t>(without));
                EXPECT_TRUE(contains(unaskedWith(less), one.rule))
                    << ruleName(one.rule) << " without " << way[without];
            }
        }
    }
}

TEST(RuleChannels, NoRuleAsksForAChannelThatTheTableDoesNotKnow)
{
    for (const Rule rule : unaskedWith({})) {
        const auto rules = rulesWithChannels();
        const bool known = std::any_of(rules.begin(), rules.end(),
                                       [&](const RuleChannels& one) { return one.rule == rule; });
        EXPECT_TRUE(known || rule == Rule::sensorLost) << ruleName(rule);
    }
}

TEST(RuleChannels, ToldByChannelAndByWhatIsMissing)
{
    EXPECT_THAT(rulesThatRead("rotor_rpm@left"),
                ElementsAre(Rule::overspeed, Rule::loadLost, Rule::driveSlip));
    EXPECT_THAT(rulesThatRead("temperature"), IsEmpty());
    EXPECT_TRUE(tellsConsumption("fuel_rate_l_per_h"));
    EXPECT_FALSE(tellsConsumption("rotor_rpm"));
    const auto lacking = rulesLacking({"rotor_rpm@left", "road_speed_kmh", "lat_deg"});
    const auto has = [&](const RuleLack& lack) {
        return std::find(lacking.begin(), lacking.end(), lack) != lacking.end();
    };
    EXPECT_TRUE(has({Rule::driveSlip, {"generator_rpm"}}));
    EXPECT_TRUE(has({Rule::loadLost, {"output_w"}}));
    EXPECT_TRUE(has({Rule::settingMismatch, {"setting", "setting_set"}}));
    for (const RuleLack& lack : lacking) {
        EXPECT_NE(lack.rule, Rule::overspeed);
        EXPECT_NE(lack.rule, Rule::stretch) << "road speed is enough";
    }
}

} // namespace
} // namespace bothways::core::tests
