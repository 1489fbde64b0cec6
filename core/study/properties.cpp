// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one function a property, and the two lists that name them all.
#include "core/study/properties.h"

#include "core/base/decimal_text.h"
#include "core/base/nearest_word.h"
#include "core/base/text_parts.h"
#include "core/base/utf8.h"
#include "core/study/clock.h"
#include "core/study/fuel.h"
#include "core/study/limits.h"
#include "core/study/property_names.h"
#include "core/study/property_values.h"
#include "core/study/walk_round.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace bothways::core {
namespace {

constexpr std::string_view kTimerPrefix = "accessory_timer.";

/// A property that is a number: what may stand in it.
struct NumberProperty {
    std::string_view name;
    double StudyProperties::*field;
    double low, high; ///< not permitted themselves, unless `inclusive`
    bool inclusive;
};
constexpr std::array kNumbers = {
    NumberProperty{"margin", &StudyProperties::margin_pct, 0.0, 100.0, false},
    NumberProperty{"max_gap", &StudyProperties::max_gap_min, 0.0, 1e6, true},
    NumberProperty{"aero_share", &StudyProperties::aero_share, 0.0, 1.0, true}};

/// Above 0.5; what may be asked must be answerable.
Result<double> confidence(std::string_view name, std::string_view value)
{
    const auto given = typedNumber(value);
    if (given && *given > 0.5 && *given <= kHighestConfidence)
        return *given;
    return propertyRefusal(
        name, value, message("a number above 0.5, at most {}"_t, decimalText(kHighestConfidence)));
}

struct TextProperty {
    std::string_view name;
    std::string StudyProperties::*field;
};
constexpr std::array kTexts = {TextProperty{"name", &StudyProperties::name},
                               TextProperty{"noise.from", &StudyProperties::noise_from},
                               TextProperty{"notes", &StudyProperties::notes}};

Result<double> within(std::string_view name, std::string_view value, double low, double high,
                      bool inclusive)
{
    const auto given = typedNumber(value);
    if (given && (inclusive ? *given >= low && *given <= high : *given > low && *given < high))
        return *given;
    return propertyRefusal(
        name, value,
        inclusive ? message("a number from {} to {}"_t, decimalText(propertyText(low)),
                            decimalText(propertyText(high)))
                  : message("a number between {} and {}"_t, decimalText(propertyText(low)),
                            decimalText(propertyText(high))));
}

Outcome setNumber(StudyProperties& properties, const NumberProperty& property,
                  std::string_view value)
{
    if (value.empty()) {
        properties.*property.field = StudyProperties{}.*property.field;
        return Done{};
    }
    const auto given =
        within(property.name, value, property.low, property.high, property.inclusive);
    if (!given)
        return given.error();
    properties.*property.field = given.value();
    return Done{};
}

Outcome setDate(StudyProperties& properties, std::string_view value)
{
    if (!value.empty() && !parseDate_us(value))
        return propertyRefusal("date", value, "a date like 2026-05-09"_t);
    properties.date = value;
    return Done{};
}

Outcome setFuel(StudyProperties& properties, std::string_view value)
{
    const auto fuel = value.empty() ? std::optional(Fuel::petrol) : fuelFromName(value);
    if (!fuel)
        return propertyRefusal("fuel", value, "petrol, e10, diesel or electric"_t);
    properties.fuel = *fuel;
    return Done{};
}

Outcome setConfidence(StudyProperties& properties, std::string_view value)
{
    const auto given = value.empty() ? Result<double>(StudyProperties{}.confidence)
                                     : confidence("confidence", value);
    if (!given)
        return given.error();
    properties.confidence = given.value();
    return Done{};
}

/// What someone says that the device saves, in per cent.
Outcome setClaim(StudyProperties& properties, std::string_view value)
{
    if (value.empty()) {
        properties.claim_pct.reset();
        return Done{};
    }
    const auto given = typedNumber(value);
    if (!given || *given == 0.0 || !(*given > -100.0))
        return propertyRefusal(
            "claim", value, "a change in per cent, like -5 for 5 % less: not 0, and above -100"_t);
    properties.claim_pct = given;
    return Done{};
}

/// noise = PERCENT,DF
Outcome setNoise(StudyProperties& properties, std::string_view value)
{
    if (value.empty()) {
        properties.noise.reset();
        return Done{};
    }
    const std::size_t comma = std::min(value.find(','), value.size());
    const auto pct = propertyNumber(value.substr(0, comma));
    const auto df = comma < value.size() ? propertyNumber(value.substr(comma + 1)) : std::nullopt;
    constexpr double kMostDf = 1e6;
    if (!pct || !df || !(*pct > 0.0) || *pct > 100.0 || !(*df > 0.0) || *df > kMostDf)
        return propertyRefusal(
            "noise", value,
            "two numbers above 0, the noise of a pair in per cent and its degrees of "
            "freedom, like 0.9,21"_t);
    properties.noise = KnownNoise{*pct, *df};
    return Done{};
}

Outcome setBearing(StudyProperties& properties, std::string_view value)
{
    if (value.empty()) {
        properties.stretch_bearing_deg.reset();
        return Done{};
    }
    const auto given = within("bearing_deg", value, 0.0, 360.0, true);
    if (!given)
        return given.error();
    properties.stretch_bearing_deg = given.value();
    return Done{};
}

/// A date-time; or a time of day on the study's date.
Outcome setColdStart(StudyProperties& properties, std::string_view value)
{
    if (value.empty()) {
        properties.cold_start.reset();
        return Done{};
    }
    if (const auto moment = parseDateTime(value)) {
        properties.cold_start = moment.value();
        return Done{};
    }
    const auto time = parseTimeOfDay_us(value);
    const auto date = parseDate_us(properties.date);
    if (!time || !date)
        return propertyRefusal(
            "cold_start", value,
            "a date and time like 2026-05-09T05:20, or a time of day where the study "
            "has a date"_t);
    properties.cold_start = Instant{date.value() + time.value(), std::nullopt};
    return Done{};
}

Result<std::string> sequence(std::string_view value)
{
    std::string given(value);
    for (char& c : given)
        if (c >= 'a' && c <= 'z')
            c = static_cast<char>(c - 'a' + 'A');
    const bool known =
        std::all_of(given.begin(), given.end(), [](char c) { return c == 'A' || c == 'B'; });
    const bool both = given.find('A') != std::string::npos && given.find('B') != std::string::npos;
    if (!given.empty() && (!known || !both || given.size() > 1000))
        return propertyRefusal("plan.sequence", value, "letters A and B, both of them, like ABA"_t);
    return given;
}

Outcome setPlan(StudyProperties& properties, std::string_view what, std::string_view value)
{
    PlannedStudy plan = properties.plan.value_or(PlannedStudy{});
    const std::string name = fmt::format("plan.{}", what);
    if (what == "sequence") {
        const auto given = sequence(value);
        if (!given)
            return given.error();
        plan.sequence = given.value();
    } else if (what == "pairs") {
        const auto given =
            value.empty() ? Result<double>(0.0) : within(name, value, 1.0, 10000.0, true);
        if (!given)
            return given.error();
        if (given.value() != std::floor(given.value()))
            return propertyRefusal(name, value, "a whole number of pairs a block"_t);
        plan.pairs_per_block = static_cast<int>(given.value());
    } else {
        const bool margin = what == "margin";
        double& field = margin ? plan.margin_pct : plan.confidence;
        const auto given = value.empty() ? Result<double>(margin ? PlannedStudy{}.margin_pct
                                                                 : PlannedStudy{}.confidence)
                           : margin      ? within(name, value, 0.0, 100.0, false)
                                         : confidence(name, value);
        if (!given)
            return given.error();
        field = given.value();
    }
    properties.plan = plan == PlannedStudy{} ? std::nullopt : std::optional(plan);
    return Done{};
}

/// @param name  the limit's, or with a part: "overspeed@left.rpm"
Outcome setLimit(StudyProperties& properties, std::string_view name, const LimitInfo& limit,
                 std::string_view value)
{
    if (value.empty()) {
        properties.limits.erase(std::string(name));
        return Done{};
    }
    const auto given = within(name, inUnit(value, limit.unit), limit.smallest, limit.largest, true);
    if (!given)
        return given.error();
    properties.limits.insert_or_assign(std::string(name), given.value());
    return Done{};
}

/// accessory_timer.NAME = WATTS,MINUTES
Outcome setTimer(StudyProperties& properties, std::string_view full, std::string_view value)
{
    std::string name(trimmed(full.substr(kTimerPrefix.size())));
    std::replace(name.begin(), name.end(), ' ', '_');
    if (name.empty())
        return propertyRefusal(full, value, "the accessory's name after the point"_t);
    auto& timers = properties.timed_accessories;
    const auto known = std::find_if(timers.begin(), timers.end(),
                                    [&](const TimedAccessory& t) { return t.name == name; });
    if (value.empty()) {
        if (known != timers.end())
            timers.erase(known);
        return Done{};
    }
    const std::size_t comma = std::min(value.find(','), value.size());
    const auto watts = propertyNumber(value.substr(0, comma));
    const auto minutes =
        comma < value.size() ? propertyNumber(value.substr(comma + 1)) : std::nullopt;
    if (!watts || !minutes || !(*watts > 0.0) || !(*minutes > 0.0) || *watts > 1e6 ||
        *minutes > 1e4)
        return propertyRefusal(full, value, "watts and minutes above 0, like 300,10"_t);
    const TimedAccessory timer{name, *watts, *minutes};
    if (known != timers.end())
        *known = timer;
    else
        timers.insert(std::find_if(timers.begin(), timers.end(),
                                   [&](const TimedAccessory& t) { return t.name > name; }),
                      timer);
    return Done{};
}

Outcome setWalkRound(StudyProperties& properties, std::string_view value)
{
    const auto lines = walkLines(value);
    if (!lines)
        return lines.error();
    properties.walk_round = walkText(lines.value());
    return Done{};
}

Error noSuchProperty(std::string_view name)
{
    const std::vector<std::string_view> known = propertyNames();
    const std::string_view nearest = nearestWord(inSmallLetters(trimmed(name)), known);
    std::string own;
    for (const std::string_view property : ownPropertyNames())
        own.append(property).append(", ");
    Message why = message("'{}' is no property of a study; expected {}accessory_timer.NAME, or a "
                          "limit like overspeed.rpm"_t,
                          name, own);
    return Error{ErrorCode::wrongUse, didYouMean(std::move(why), nearest), {}};
}

} // namespace

Outcome setProperty(StudyProperties& properties, std::string_view name, std::string_view value)
{
    const std::string key = inSmallLetters(trimmed(name));
    if (!isStorableText(name) || !isStorableText(value))
        return Error{
            ErrorCode::wrongUse, message("the property '{}' is not UTF-8 text"_t, name), {}};
    for (const TextProperty& property : kTexts)
        if (key == property.name) {
            properties.*property.field = value;
            return Done{};
        }
    value = trimmed(value);
    for (const NumberProperty& property : kNumbers)
        if (key == property.name)
            return setNumber(properties, property, value);
    if (key == "date")
        return setDate(properties, value);
    if (key == "baseline") {
        properties.baseline = value;
        return Done{};
    }
    if (key == "confidence")
        return setConfidence(properties, value);
    if (key == "claim")
        return setClaim(properties, value);
    if (key == "noise")
        return setNoise(properties, value);
    if (key == "fuel")
        return setFuel(properties, value);
    if (key == "bearing_deg")
        return setBearing(properties, value);
    if (key == "cold_start")
        return setColdStart(properties, value);
    if (key == "walk_round")
        return setWalkRound(properties, value);
    if (key == "plan.sequence" || key == "plan.pairs" || key == "plan.margin" ||
        key == "plan.confidence")
        return setPlan(properties, std::string_view(key).substr(5), value);
    if (key.starts_with(kTimerPrefix))
        return setTimer(properties, key, value);
    if (const LimitInfo* limit = findLimit(key))
        return setLimit(properties, key, *limit, value);
    return noSuchProperty(name);
}

Outcome checkBaseline(const Study& study)
{
    const std::string& asked = study.properties.baseline;
    const std::vector<std::string> names = configurations(study);
    if (asked.empty() || names.size() < 2 || sameWord(asked, names[0]) || sameWord(asked, names[1]))
        return Done{};
    return Error{
        ErrorCode::wrongUse,
        message("has no baseline '{}'; expected '{}' or '{}'"_t, asked, names[0], names[1]),
        {}};
}

std::vector<std::pair<std::string, std::string>> propertiesAsText(const StudyProperties& properties)
{
    const StudyProperties defaults;
    std::vector<std::pair<std::string, std::string>> texts;
    const auto add = [&texts](bool differs, std::string_view name, std::string value) {
        if (differs)
            texts.emplace_back(name, std::move(value));
    };
    add(!properties.name.empty(), "name", properties.name);
    add(!properties.date.empty(), "date", properties.date);
    add(!properties.baseline.empty(), "baseline", properties.baseline);
    for (const NumberProperty& property : kNumbers)
        add(properties.*property.field != defaults.*property.field, property.name,
            propertyText(properties.*property.field));
    add(properties.confidence != defaults.confidence, "confidence",
        propertyText(properties.confidence));
    if (properties.claim_pct)
        add(true, "claim", propertyText(*properties.claim_pct));
    if (properties.noise)
        add(true, "noise",
            fmt::format("{},{}", propertyText(properties.noise->pct),
                        propertyText(properties.noise->df)));
    add(!properties.noise_from.empty(), "noise.from", properties.noise_from);
    add(properties.fuel != defaults.fuel, "fuel", std::string(fuelName(properties.fuel)));
    if (properties.stretch_bearing_deg)
        add(true, "bearing_deg", propertyText(*properties.stretch_bearing_deg));
    if (properties.cold_start)
        add(true, "cold_start", formatDateTime(*properties.cold_start));
    for (const auto& [name, value] : properties.limits)
        add(true, name, propertyText(value));
    for (const TimedAccessory& timer : properties.timed_accessories)
        add(true, fmt::format("{}{}", kTimerPrefix, timer.name),
            fmt::format("{},{}", propertyText(timer.watts), propertyText(timer.minutes)));
    if (properties.plan) {
        const PlannedStudy& plan = *properties.plan;
        const PlannedStudy none;
        add(plan.sequence != none.sequence, "plan.sequence", plan.sequence);
        add(plan.pairs_per_block != none.pairs_per_block, "plan.pairs",
            std::to_string(plan.pairs_per_block));
        add(plan.margin_pct != none.margin_pct, "plan.margin", propertyText(plan.margin_pct));
        add(plan.confidence != none.confidence, "plan.confidence", propertyText(plan.confidence));
    }
    add(!properties.walk_round.empty(), "walk_round", properties.walk_round);
    add(!properties.notes.empty(), "notes", properties.notes);
    return texts;
}

} // namespace bothways::core
