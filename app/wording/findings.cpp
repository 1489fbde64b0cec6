// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/sentences.h"

#include "app/wording/numbers.h"
#include "core/answer/spoiled_runs.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

// Sentences of the screening rules: "run 9: rotor at 3,410 rpm from 61.2 s to 63.0 s, above the
// limit of 3,200 rpm".
namespace bothways::app::english {
namespace {

using core::Finding;
using core::Rule;
using core::WhyNotChecked;

std::string size(const std::optional<double>& value, int digits = 2)
{
    return value ? significant(std::abs(*value), digits) : std::string("an unknown amount");
}

std::string rpm(const std::optional<double>& value)
{
    return value ? grouped(*value) : std::string("?");
}

std::string seconds(double s)
{
    return fixed(s, 1) + " s";
}

/// " from 61.2 s to 63.0 s", " at 96.0 s"; empty without a span.
std::string span(const Finding& finding)
{
    if (!finding.from_s)
        return {};
    if (!finding.to_s || *finding.to_s - *finding.from_s < 0.05)
        return " at " + seconds(*finding.from_s);
    return " from " + seconds(*finding.from_s) + " to " + seconds(*finding.to_s);
}

/// " (limit 50 W)"; empty without a limit.
std::string limit(const Finding& finding)
{
    if (!finding.limit)
        return {};
    const std::string unit = finding.unit.empty() ? "" : " " + finding.unit;
    return fmt::format(" (limit {}{})", shortest(std::abs(*finding.limit)), unit);
}

std::string noted(const Finding& finding)
{
    return finding.detail.empty() ? std::string() : fmt::format(" ({})", finding.detail);
}

bool negative(const Finding& finding)
{
    return finding.value && *finding.value < 0.0;
}

std::string overspeed(const Finding& finding)
{
    std::string text = fmt::format("rotor at {} rpm{}", rpm(finding.value), span(finding));
    if (finding.limit)
        text += fmt::format(", above the limit of {} rpm", rpm(finding.limit));
    if (finding.length_s)
        text += fmt::format(" for {}", seconds(*finding.length_s));
    if (finding.output_w)
        text += fmt::format(", delivering {} W just before", grouped(*finding.output_w));
    return text;
}

std::string accessoryTimer(const Finding& finding)
{
    const std::string name = finding.detail.empty() ? "a timed accessory" : finding.detail;
    const std::string what = fmt::format("{} ({} W)", name, size(finding.value));
    if (finding.from_s)
        return fmt::format("{} switched itself off at {}", what, seconds(*finding.from_s));
    return what + " had switched itself off before the run";
}

std::string roadSpeed(const Finding& finding)
{
    const char* what = finding.detail == "mean" ? "mean road speed" : "road speed";
    return fmt::format("{} {} % {} the target{}{}", what, size(finding.value),
                       negative(finding) ? "below" : "above", span(finding), limit(finding));
}

std::string notCruising(const Finding& finding)
{
    std::string text = fmt::format("counting began before the vehicle was cruising: {} % {} the "
                                   "target speed",
                                   size(finding.value), negative(finding) ? "below" : "above");
    if (finding.to_s && *finding.to_s > 0.0)
        text += fmt::format(", within it only at {}", seconds(*finding.to_s));
    return text;
}

std::string passingTraffic(const Finding& finding)
{
    if (!finding.value)
        return fmt::format("passing traffic noted{}{}", span(finding), noted(finding));
    return fmt::format("a gust or a passing vehicle{}: {} times the usual scatter{}", span(finding),
                       size(finding.value), noted(finding));
}

/// "no samples of wind_ms and 2 more channels", "output_w did not move".
std::string sensorLost(const Finding& finding)
{
    const auto lost = core::lostSensors(finding);
    if (lost.empty())
        return fmt::format("no true reading{}, for {} s", span(finding), size(finding.value));
    std::string others;
    if (lost.size() > 1)
        others = fmt::format(" and {}", counted(static_cast<long long>(lost.size()) - 1,
                                                "more channel", "more channels"));
    const std::string which = lost.front().channel + others;
    switch (lost.front().how) {
    case core::LostSensor::How::gap: return fmt::format("no samples of {}{}", which, span(finding));
    case core::LostSensor::How::frozen:
        return fmt::format("{} frozen at one value{} while the vehicle's speed moved", which,
                           span(finding));
    case core::LostSensor::How::zero:
        return fmt::format("{} read 0{} while the device gave power", which, span(finding));
    }
    return {};
}

std::string batteryBalance(const Finding& finding)
{
    return fmt::format("the battery ended {} V {} than it began: {}{}", size(finding.value),
                       negative(finding) ? "lower" : "higher",
                       negative(finding) ? "fuel was borrowed from it"
                                         : "fuel went into charging it",
                       limit(finding));
}

std::string traceOrSheet(const Finding& finding)
{
    switch (finding.rule) {
    case Rule::sensorLost: return sensorLost(finding);
    case Rule::traceEndsEarly:
        return fmt::format("the recording stops {} s before the run does", size(finding.value));
    case Rule::warmingUp:
        return fmt::format("began {} min after the cold start; warming up bends the drift, and no "
                           "design takes that out",
                           size(finding.value));
    case Rule::sameRunTwice:
        return fmt::format("same start, direction and consumption as run {}: typed twice?",
                           finding.value ? grouped(*finding.value) : "before");
    case Rule::adjusted:
        return fmt::format("something was adjusted during the run{}{}", span(finding),
                           noted(finding));
    case Rule::batteryBalance: return batteryBalance(finding);
    case Rule::passingTraffic: return passingTraffic(finding);
    case Rule::stretch:
        return fmt::format("the distance is {} % {} than the stretch{}", size(finding.value),
                           negative(finding) ? "shorter" : "longer", limit(finding));
    default: return std::string(core::ruleName(finding.rule)) + noted(finding);
    }
}

/// A mark by hand of a rule that else measures: it has a moment and no value.
bool isMark(const Finding& finding)
{
    return finding.from_s && !finding.value && finding.rule != Rule::passingTraffic &&
           finding.rule != Rule::adjusted;
}

std::string what(const Finding& finding)
{
    if (isMark(finding)) {
        std::string rule(core::ruleName(finding.rule));
        std::replace(rule.begin(), rule.end(), '_', ' ');
        return fmt::format("{} noted by hand{}{}", rule, span(finding), noted(finding));
    }
    switch (finding.rule) {
    case Rule::accessoryChange:
        return fmt::format("accessory load {} W {} than it should be{}{}{}", size(finding.value),
                           negative(finding) ? "lower" : "higher", span(finding), limit(finding),
                           noted(finding));
    case Rule::accessoryTimer: return accessoryTimer(finding);
    case Rule::overspeed: return overspeed(finding);
    case Rule::loadLost:
        return fmt::format(
            "the device turned without load{}, up to {} rpm: an open circuit, or the "
            "belt is off",
            span(finding), rpm(finding.value));
    case Rule::driveSlip:
        return fmt::format("the drive slipped{}: generator {} % {} for its rotor{}", span(finding),
                           size(finding.value), negative(finding) ? "too slow" : "too fast",
                           limit(finding));
    case Rule::outputDrop:
        return fmt::format("output fell by {} %{} and stayed there", size(finding.value),
                           finding.from_s ? " at " + seconds(*finding.from_s) : "");
    case Rule::settingMismatch:
        return fmt::format("the setting measured {}° {} the one set{}", size(finding.value),
                           negative(finding) ? "below" : "above", span(finding));
    case Rule::settingChanged:
        return fmt::format("the setting was moved by {}° during the run{}", size(finding.value),
                           span(finding));
    case Rule::vibration:
        return fmt::format("vibration up to {} m/s²{}{}", size(finding.value), span(finding),
                           limit(finding));
    case Rule::roadSpeed: return roadSpeed(finding);
    case Rule::interrupted:
        return fmt::format("stopped or crawled{}: down to {} km/h", span(finding),
                           size(finding.value));
    case Rule::notCruising: return notCruising(finding);
    default: return traceOrSheet(finding);
    }
}

} // namespace

std::string findingSentence(const Finding& finding)
{
    return fmt::format("run {}: {}", finding.run, what(finding));
}

std::string whyNotChecked(const core::NotChecked& notChecked)
{
    const std::string& missing = notChecked.what;
    const auto with = [&](const char* text) {
        return missing.empty() ? std::string(text) : fmt::format("{} ({})", text, missing);
    };
    switch (notChecked.why) {
    case WhyNotChecked::noTrace: return with("the run has no recording");
    case WhyNotChecked::noChannel: return with("not recorded");
    case WhyNotChecked::noLimit: return with("no limit is set");
    case WhyNotChecked::notNoted: return with("not noted");
    case WhyNotChecked::recordedTooSlowly: return with("recorded too slowly");
    case WhyNotChecked::noSpread: return with("the channel does not vary");
    case WhyNotChecked::noSetTime: return with("its switch-on time is not noted");
    }
    return {};
}

std::string notCheckedSentence(const core::NotChecked& notChecked)
{
    return fmt::format("run {}: {} not checked: {}", notChecked.run,
                       core::ruleName(notChecked.rule), whyNotChecked(notChecked));
}

std::string patternSentence(const core::OverspeedPattern& pattern)
{
    return fmt::format("Of {} that reached {} W, {} oversped ({} to {} % of such runs, at the "
                       "study's confidence). "
                       "{}",
                       counted(pattern.reached, "run", "runs"), grouped(pattern.first_output_w),
                       pattern.oversped, significant(100.0 * pattern.low),
                       significant(100.0 * pattern.high),
                       pattern.oversped == pattern.reached
                           ? "Each time just above that output: that hints at a slipping drive or "
                             "a current limit. "
                             "It is a hint, not a fact."
                           : "Not each time, so output alone does not explain it.");
}

std::string spoiledRunsSentence(const core::Analysis& analysis, const core::Screening& screening)
{
    const std::vector<int> spoiled = core::spoiledButCounted(analysis, screening);
    if (spoiled.empty())
        return {};
    return fmt::format("{} {} {} although a finding says that {}. Discard, or overrule the "
                       "finding with a reason, before you go by this.",
                       spoiled.size() == 1 ? "Run" : "Runs", fmt::join(spoiled, ", "),
                       spoiled.size() == 1 ? "counts" : "count",
                       spoiled.size() == 1 ? "it is spoiled" : "they are spoiled");
}

} // namespace bothways::app::english
