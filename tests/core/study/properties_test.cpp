// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/properties.h"

#include "core/effect/answer.h"
#include "core/study/limits.h"
#include "core/study/property_names.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways::core;

namespace {

StudyProperties with(std::initializer_list<std::pair<const char*, const char*>> values)
{
    StudyProperties properties;
    for (const auto& [name, value] : values) {
        const Outcome outcome = setProperty(properties, name, value);
        EXPECT_TRUE(outcome) << name << ": " << (outcome ? "" : describe(outcome.error()));
    }
    return properties;
}

TEST(Properties, TakeADecimalCommaAndMiles)
{
    StudyProperties properties;
    EXPECT_TRUE(setProperty(properties, "margin", "1,5"));
    EXPECT_EQ(properties.margin_pct, 1.5);
    EXPECT_TRUE(setProperty(properties, "claim", "-1,5"));
    EXPECT_EQ(properties.claim_pct, -1.5);
    EXPECT_TRUE(setProperty(properties, "stretch.km", "6,4"));
    EXPECT_EQ(properties.limits["stretch.km"], 6.4);
    EXPECT_TRUE(setProperty(properties, "stretch.km", "4 mi"));
    EXPECT_EQ(properties.limits["stretch.km"], 6.437376);
    EXPECT_TRUE(setProperty(properties, "road_speed.target_kmh", "55,5 MPH"));
    EXPECT_NEAR(properties.limits["road_speed.target_kmh"], 55.5 * 1.609344, 1e-9);
    const auto before = properties;
    for (const char* wrong : {"4 mph", "mi", "4 furlongs", "6,4,4", "6,", ",4"})
        EXPECT_FALSE(setProperty(properties, "stretch.km", wrong)) << wrong;
    EXPECT_EQ(properties, before);
}

} // namespace

TEST(Properties, EveryOneIsSetByItsName)
{
    const StudyProperties set = with({{"name", "Roof box, 2nd try"},
                                      {"date", "2026-05-09"},
                                      {"baseline", "off"},
                                      {"margin", "0.5"},
                                      {"confidence", "0.9"},
                                      {"max_gap", "20"},
                                      {"aero_share", "0.55"},
                                      {"fuel", "Diesel"},
                                      {"bearing_deg", "87.5"},
                                      {"cold_start", "05:20"},
                                      {"claim", "-5"},
                                      {"noise", " 0.9, 21"},
                                      {"noise.from", "three mornings in May"},
                                      {"notes", " two\nlines "},
                                      {"plan.sequence", "aba"},
                                      {"plan.pairs", "4"},
                                      {"plan.margin", "2"},
                                      {"plan.confidence", "0.99"},
                                      {"overspeed.rpm", "3200"},
                                      {"accessory_timer.Heated Windscreen", "300, 10"}});
    EXPECT_EQ(set.name, "Roof box, 2nd try");
    EXPECT_EQ(set.date, "2026-05-09");
    EXPECT_EQ(set.baseline, "off");
    EXPECT_EQ(set.margin_pct, 0.5);
    EXPECT_EQ(set.confidence, 0.9);
    EXPECT_EQ(set.max_gap_min, 20.0);
    EXPECT_EQ(set.aero_share, 0.55);
    EXPECT_EQ(set.fuel, Fuel::diesel);
    EXPECT_EQ(set.stretch_bearing_deg, 87.5);
    EXPECT_EQ(set.cold_start, (Instant{1'778'304'000'000'000, std::nullopt}));
    EXPECT_EQ(set.claim_pct, -5.0);
    EXPECT_EQ(set.noise, (KnownNoise{0.9, 21.0}));
    EXPECT_EQ(set.noise_from, "three mornings in May");
    EXPECT_EQ(AnalysisOptions::of(set).noise, (BorrowedNoise{0.9 / 100.0, 21.0}));
    EXPECT_EQ(set.notes, " two\nlines ");
    EXPECT_EQ(set.plan, (PlannedStudy{"ABA", 4, 2.0, 0.99}));
    EXPECT_EQ(set.limits.at("overspeed.rpm"), 3200.0);
    EXPECT_THAT(set.timed_accessories,
                testing::ElementsAre(TimedAccessory{"heated_windscreen", 300, 10}));
}

TEST(Properties, EveryLimitOfTheRulesIsTaken)
{
    StudyProperties properties;
    for (const LimitInfo& limit : allLimits()) {
        const std::string value = limit.byDefault ? std::to_string(*limit.byDefault)
                                                  : std::to_string(limit.smallest + 1.0);
        EXPECT_TRUE(setProperty(properties, limit.name, value)) << limit.name;
    }
    EXPECT_EQ(properties.limits.size(), allLimits().size());
    EXPECT_GT(allLimits().size(), 10u);
}

TEST(Properties, AreAllNamedByTheListOfNames)
{
    StudyProperties properties;
    const auto names = propertyNames();
    for (const std::string_view name : names)
        EXPECT_TRUE(setProperty(properties, name, "")) << name; // back to the default
    EXPECT_EQ(properties, StudyProperties());
    const auto refused = setProperty(properties, "no_such_property", "1");
    ASSERT_FALSE(refused);
    const std::string expected = describe(refused.error());
    for (const std::string_view name : names)
        EXPECT_TRUE(findLimit(name) || expected.find(name) != std::string::npos) << name;
    EXPECT_EQ(names.size(), 19 + allLimits().size());
}

TEST(Properties, AsTextTheyGoThereAndBack)
{
    const StudyProperties properties = with({{"notes", "x"},
                                             {"margin", "0.1"},
                                             {"confidence", "0.9999"},
                                             {"claim", "2.5"},
                                             {"noise", "0.9,21"},
                                             {"noise.from", "May"},
                                             {"cold_start", "2026-05-09T05:20:00.5+02:00"},
                                             {"accessory_timer.seat", "60,3.5"},
                                             {"accessory_timer.fan", "80,1"},
                                             {"stretch.km", "5.2"},
                                             {"plan.pairs", "3"}});
    StudyProperties back;
    for (const auto& [name, value] : propertiesAsText(properties))
        ASSERT_TRUE(setProperty(back, name, value)) << name;
    EXPECT_EQ(back, properties);
    EXPECT_EQ(back.timed_accessories.front().name, "fan") << "in order of names";
    EXPECT_TRUE(propertiesAsText(StudyProperties{}).empty());
}

TEST(Properties, AnEmptyTextGoesBackToTheDefault)
{
    StudyProperties properties = with({{"name", "x"},
                                       {"date", "2026-05-09"},
                                       {"baseline", "off"},
                                       {"margin", "2"},
                                       {"fuel", "e10"},
                                       {"bearing_deg", "10"},
                                       {"cold_start", "05:20"},
                                       {"notes", "x"},
                                       {"plan.sequence", "ABA"},
                                       {"plan.pairs", "2"},
                                       {"overspeed.rpm", "3200"},
                                       {"accessory_timer.seat", "60,3"}});
    for (const auto& [name, value] : propertiesAsText(properties))
        EXPECT_TRUE(setProperty(properties, name, "")) << name;
    EXPECT_EQ(properties, StudyProperties{});
}

TEST(Properties, WhatIsNotPermittedIsRefusedAndChangesNothing)
{
    const std::pair<const char*, const char*> refused[] = {{"margin", "0"},
                                                           {"margin", "100"},
                                                           {"margin", "1,5,2"},
                                                           {"margin", "nan"},
                                                           {"confidence", "0.5"},
                                                           {"confidence", "1"},
                                                           {"confidence", "95"},
                                                           {"max_gap", "-1"},
                                                           {"aero_share", "1.1"},
                                                           {"date", "9.5.2026"},
                                                           {"date", "2026-02-30"},
                                                           {"fuel", "hydrogen"},
                                                           {"bearing_deg", "-1"},
                                                           {"bearing_deg", "361"},
                                                           {"cold_start", "05:20"},
                                                           {"cold_start", "soon"},
                                                           {"plan.sequence", "ABC"},
                                                           {"plan.sequence", "AA"},
                                                           {"plan.pairs", "0"},
                                                           {"plan.pairs", "2.5"},
                                                           {"plan.margin", "0"},
                                                           {"plan.confidence", "2"},
                                                           {"plan.colour", "red"},
                                                           {"accessory_timer.", "60,3"},
                                                           {"accessory_timer.x", "60"},
                                                           {"accessory_timer.x", "-60,3"},
                                                           {"accessory_timer.x", "a,b"},
                                                           {"overspeed.rpm", "-5"},
                                                           {"overspeed.rpm", "fast"},
                                                           {"overspeed.colour", "1"},
                                                           {"colour", "red"},
                                                           {"", "1"}};
    for (const auto& [name, value] : refused) {
        StudyProperties properties;
        const Outcome outcome = setProperty(properties, name, value);
        ASSERT_FALSE(outcome) << name << "=" << value;
        EXPECT_EQ(outcome.error().code, ErrorCode::wrongUse);
        EXPECT_THAT(outcome.error().message.english(), testing::HasSubstr("expected")) << name;
        EXPECT_EQ(properties, StudyProperties{}) << name << "=" << value;
    }
}

TEST(Properties, ABaselineIsOneOfTheTwoConfigurationsThatWereDriven)
{
    Study study;
    study.properties.baseline = "without";
    EXPECT_TRUE(checkBaseline(study)) << "nothing was driven yet";
    study.runs.resize(2);
    study.runs[0].configuration = study.runs[1].configuration = "with";
    EXPECT_TRUE(checkBaseline(study)) << "the other may come";
    study.runs[1].configuration = "Without";
    EXPECT_TRUE(checkBaseline(study));
    study.properties.baseline = "off";
    const Outcome wrong = checkBaseline(study);
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().message.english(),
              "has no baseline 'off'; expected 'with' or 'Without'");
}

TEST(Properties, AClaimOrANoiseThatCannotBeMeantChangesNothing)
{
    StudyProperties properties = with({{"claim", "-5"}, {"noise", "1,6"}});
    const StudyProperties before = properties;
    for (const char* claim : {"0", "-0", "-100", "-1e3", "five", "1,5,2"})
        EXPECT_FALSE(setProperty(properties, "claim", claim)) << claim;
    for (const char* noise : {"0", "0,6", "1,0", "1", "1,2,3", "-1,6", "101,6", "1,x"})
        EXPECT_FALSE(setProperty(properties, "noise", noise)) << noise;
    for (const char* confidence : {"0.5", "0.99991", "1", "nan"})
        EXPECT_FALSE(setProperty(properties, "confidence", confidence)) << confidence;
    EXPECT_EQ(properties, before);
    EXPECT_TRUE(setProperty(properties, "claim", ""));
    EXPECT_TRUE(setProperty(properties, "noise", ""));
    EXPECT_EQ(properties, StudyProperties{});
}
