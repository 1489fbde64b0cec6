// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: a sentence for each rule, side by side, so that they read alike.
#include "app/wording/findings.h"

#include "app/wording/channels.h"
#include "app/wording/numbers.h"
#include "app/wording/runs.h"
#include "core/study/parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

// Sentences of the screening rules: "run 9: rotor at 3,410 rpm from 61.2 s to 63.0 s, above the
// limit of 3,200 rpm".
namespace bothways::app::wording {
namespace {

using core::Finding;
using core::Rule;
using core::WhyNotChecked;

constexpr double kInstant_s = 0.05; // shorter spans are one moment

std::string size(const Language& in, const std::optional<double>& value)
{
    return value ? significant(in, std::abs(*value)) : in.say("an unknown amount"_t);
}

std::string rpm(const Language& in, const std::optional<double>& value)
{
    return value ? grouped(in, *value) : std::string("?");
}

/// " from 61.2 s to 63.0 s", " at 96.0 s"; empty without a span.
std::string span(const Language& in, const Finding& finding)
{
    if (!finding.from_s)
        return {};
    const std::string from = fixed(in, *finding.from_s, 1);
    if (!finding.to_s || *finding.to_s - *finding.from_s < kInstant_s)
        return in.say(" at {} s"_t, from);
    return in.say(" from {} s to {} s"_t, from, fixed(in, *finding.to_s, 1));
}

/// " (limit 50 W)"; empty without a limit.
std::string limit(const Language& in, const Finding& finding)
{
    if (!finding.limit)
        return {};
    const std::string value = shortest(in, std::abs(*finding.limit));
    return finding.unit.empty() ? in.say(" (limit {})"_t, value)
                                : in.say(" (limit {} {})"_t, value, signText(in, finding.unit));
}

/// " (lorry, gust)": the words of marks, behind what else is named; empty without any.
std::string noted(const Finding& finding, std::vector<std::string> named = {})
{
    named.insert(named.end(), finding.words.begin(), finding.words.end());
    return named.empty() ? std::string() : fmt::format(" ({})", fmt::join(named, ", "));
}

bool negative(const Finding& finding)
{
    return finding.value && *finding.value < 0.0;
}

std::string overspeed(const Language& in, const Finding& finding)
{
    std::string text = in.say("rotor at {} rpm{}"_t, rpm(in, finding.value), span(in, finding));
    if (finding.limit)
        text += in.say(", above the limit of {} rpm"_t, rpm(in, finding.limit));
    if (finding.length_s)
        text += in.say(" for {} s"_t, fixed(in, *finding.length_s, 1));
    if (finding.output_w)
        text += in.say(", delivering {} W just before"_t, grouped(in, *finding.output_w));
    return text;
}

std::string accessoryTimer(const Language& in, const Finding& finding)
{
    const std::string name =
        finding.accessory.empty() ? in.say("a timed accessory"_t) : finding.accessory;
    if (finding.from_s)
        return in.say("{} ({} W) switched itself off at {} s"_t, name, size(in, finding.value),
                      fixed(in, *finding.from_s, 1));
    return in.say("{} ({} W) had switched itself off before the run"_t, name,
                  size(in, finding.value));
}

std::string roadSpeed(const Language& in, const Finding& finding)
{
    const std::string what = size(in, finding.value);
    const std::string rest = span(in, finding) + limit(in, finding);
    if (finding.of_mean)
        return in.say(negative(finding) ? "mean road speed {} % below the target{}"_t
                                        : "mean road speed {} % above the target{}"_t,
                      what, rest);
    return in.say(negative(finding) ? "road speed {} % below the target{}"_t
                                    : "road speed {} % above the target{}"_t,
                  what, rest);
}

std::string notCruising(const Language& in, const Finding& finding)
{
    std::string text =
        in.say(negative(finding) ? "counting began before the vehicle was cruising: {} % below "
                                   "the target speed"_t
                                 : "counting began before the vehicle was cruising: {} % above "
                                   "the target speed"_t,
               size(in, finding.value));
    if (finding.to_s && *finding.to_s > 0.0)
        text += in.say(", within it only at {} s"_t, fixed(in, *finding.to_s, 1));
    return text;
}

std::string passingTraffic(const Language& in, const Finding& finding)
{
    if (!finding.value)
        return in.say("passing traffic noted{}{}"_t, span(in, finding), noted(finding));
    std::vector<std::string> channels;
    for (const std::string& channel : finding.channels)
        channels.push_back(channelName(in, channel));
    return in.say("a gust or a passing vehicle{}: {} times the usual scatter{}"_t,
                  span(in, finding), size(in, finding.value), noted(finding, std::move(channels)));
}

/// "no samples of wind and 2 more channels", "output frozen at one value".
std::string sensorLost(const Language& in, const Finding& finding)
{
    const std::vector<core::LostSensor>& lost = finding.lost;
    if (lost.empty())
        return in.say("no true reading{}, for {} s"_t, span(in, finding), size(in, finding.value));
    std::string which = channelName(in, lost.front().channel);
    if (const auto others = static_cast<long long>(lost.size()) - 1; others > 0)
        which = in.sayCount(others, "{} and {} more channel"_t, "{} and {} more channels"_t, which,
                            grouped(in, static_cast<double>(others)));
    switch (lost.front().how) {
    case core::LostSensor::How::gap:
        return in.say("no samples of {}{}"_t, which, span(in, finding));
    case core::LostSensor::How::frozen:
        return in.say("{} frozen at one value{} while the vehicle's speed moved"_t, which,
                      span(in, finding));
    case core::LostSensor::How::zero:
        return in.say("{} read 0{} while the device gave power"_t, which, span(in, finding));
    case core::LostSensor::How::fell:
        return in.say("{} fell by {} {}{}: it was reset, and does not say what was used"_t, which,
                      size(in, finding.value), finding.unit, span(in, finding));
    }
    return {};
}

std::string batteryBalance(const Language& in, const Finding& finding)
{
    return in.say(negative(finding) ? "the battery ended {} V lower than it began: fuel was "
                                      "borrowed from it{}"_t
                                    : "the battery ended {} V higher than it began: fuel went into "
                                      "charging it{}"_t,
                  size(in, finding.value), limit(in, finding));
}

std::string sameRunTwice(const Language& in, const Finding& finding)
{
    const std::string other = finding.value ? grouped(in, *finding.value) : in.say("before##run"_t);
    return in.say("same start, direction and consumption as run {}: typed twice?"_t, other);
}

std::string traceOrSheet(const Language& in, const Finding& finding)
{
    switch (finding.rule) {
    case Rule::sensorLost: return sensorLost(in, finding);
    case Rule::traceEndsEarly:
        return in.say("the recording stops {} s before the run does"_t, size(in, finding.value));
    case Rule::warmingUp:
        return in.say("began {} min after the cold start; warming up bends the drift, and no "
                      "design takes that out"_t,
                      size(in, finding.value));
    case Rule::sameRunTwice: return sameRunTwice(in, finding);
    case Rule::adjusted:
        return in.say("something was adjusted during the run{}{}"_t, span(in, finding),
                      noted(finding));
    case Rule::batteryBalance: return batteryBalance(in, finding);
    case Rule::passingTraffic: return passingTraffic(in, finding);
    case Rule::stretch:
        return in.say(negative(finding) ? "the distance is {} % shorter than the stretch{}"_t
                                        : "the distance is {} % longer than the stretch{}"_t,
                      size(in, finding.value), limit(in, finding));
    default: return ruleName(in, finding.rule) + noted(finding);
    }
}

std::string device(const Language& in, const Finding& finding)
{
    switch (finding.rule) {
    case Rule::overspeed: return overspeed(in, finding);
    case Rule::loadLost:
        return in.say("the device turned without load{}, up to {} rpm: an open circuit, or the "
                      "belt is off"_t,
                      span(in, finding), rpm(in, finding.value));
    case Rule::driveSlip:
        return in.say(negative(finding)
                          ? "the drive slipped{}: generator {} % too slow for its rotor{}"_t
                          : "the drive slipped{}: generator {} % too fast for its rotor{}"_t,
                      span(in, finding), size(in, finding.value), limit(in, finding));
    case Rule::outputDrop:
        return in.say("output fell by {} %{} and stayed there"_t, size(in, finding.value),
                      finding.from_s ? in.say(" at {} s"_t, fixed(in, *finding.from_s, 1))
                                     : std::string());
    case Rule::settingMismatch:
        return in.say(negative(finding) ? "the setting measured {}° below the one set{}"_t
                                        : "the setting measured {}° above the one set{}"_t,
                      size(in, finding.value), span(in, finding));
    case Rule::settingChanged:
        return in.say("the setting was moved by {}° during the run{}"_t, size(in, finding.value),
                      span(in, finding));
    case Rule::vibration:
        return in.say("vibration up to {} m/s²{}{}"_t, size(in, finding.value), span(in, finding),
                      limit(in, finding));
    default: return traceOrSheet(in, finding);
    }
}

/// A mark by hand of a rule that else measures: it has a moment and no value.
bool isMark(const Finding& finding)
{
    return finding.from_s && !finding.value && finding.rule != Rule::passingTraffic &&
           finding.rule != Rule::adjusted;
}

/// As if the device had one part.
std::string wordsWithoutPart(const Language& in, const Finding& finding, const Units& units)
{
    if (isMark(finding))
        return in.say("{}, noted by hand{}{}"_t, ruleName(in, finding.rule), span(in, finding),
                      noted(finding));
    switch (finding.rule) {
    case Rule::accessoryChange:
        return in.say(negative(finding) ? "accessory load {} W lower than it should be{}{}{}"_t
                                        : "accessory load {} W higher than it should be{}{}{}"_t,
                      size(in, finding.value), span(in, finding), limit(in, finding),
                      noted(finding));
    case Rule::accessoryTimer: return accessoryTimer(in, finding);
    case Rule::roadSpeed: return roadSpeed(in, finding);
    case Rule::interrupted:
        return finding.value ? in.say("stopped or crawled{}: down to {}"_t, span(in, finding),
                                      speedText(in, std::abs(*finding.value), units))
                             : in.say("stopped or crawled{}"_t, span(in, finding));
    case Rule::notCruising: return notCruising(in, finding);
    default: return device(in, finding);
    }
}

} // namespace

std::string findingWords(const Language& in, const Finding& finding, const Units& units)
{
    const std::string words = wordsWithoutPart(in, finding, units);
    // A lost sensor is named with its part.
    return finding.part.empty() || !finding.lost.empty()
               ? words
               : in.say("{}: {}##a part of the device, and what it did"_t, finding.part, words);
}

std::string findingSentence(const Language& in, const Finding& finding, const Units& units)
{
    return in.say("run {}: {}"_t, finding.run, findingWords(in, finding, units));
}

std::string whyNotChecked(const Language& in, const core::NotChecked& notChecked, Names names)
{
    const auto with = [&](core::Text<0> why, const std::string& what) {
        if (what.empty())
            return in.say(why);
        const bool named =
            notChecked.part.empty() || core::partedName(what).part == notChecked.part;
        return named ? in.say("{} ({})"_t, why, what)
                     : in.say("{} ({}, {})"_t, why, what, notChecked.part);
    };
    const std::string& what = notChecked.what;
    const auto channel = [&] { return names == Names::ofFiles ? what : channelBaseName(in, what); };
    const auto column = [&] { return names == Names::ofFiles ? what : columnName(in, what); };
    switch (notChecked.why) {
    case WhyNotChecked::noTrace: return with("the run has no recording"_t, what);
    case WhyNotChecked::noChannel: return with("not recorded"_t, channel());
    case WhyNotChecked::noLimit: return with("no limit is set"_t, what); // as it is set by name
    case WhyNotChecked::notNoted: return with("not noted"_t, column());
    case WhyNotChecked::recordedTooSlowly: return with("recorded too slowly"_t, channel());
    case WhyNotChecked::noSpread: return with("the channel does not vary"_t, channel());
    case WhyNotChecked::noSetTime: return with("its switch-on time is not noted"_t, column());
    }
    return {};
}

std::string notCheckedSentence(const Language& in, const core::NotChecked& notChecked)
{
    return in.say("run {}: {} not checked: {}"_t, notChecked.run, ruleName(in, notChecked.rule),
                  whyNotChecked(in, notChecked));
}

std::string patternSentence(const Language& in, const core::OverspeedPattern& pattern)
{
    const bool each = pattern.oversped == pattern.reached;
    const std::string reached = grouped(in, pattern.reached);
    const std::string watts = grouped(in, pattern.first_output_w);
    const std::string low = significant(in, 100.0 * pattern.low);
    const std::string high = significant(in, 100.0 * pattern.high);
    std::string text = in.sayCount(
        pattern.reached,
        "Of {} run that reached {} W, {} oversped ({} to {} % of such runs, at the study's "
        "confidence)."_t,
        "Of {} runs that reached {} W, {} oversped ({} to {} % of such runs, at the study's "
        "confidence)."_t,
        reached, watts, pattern.oversped, low, high);
    if (!pattern.part.empty())
        text = in.say("{}: {}##a part of the device, and what it did"_t, pattern.part, text);
    return in.say("{} {}##two sentences"_t, text,
                  each ? "Each time just above that output: that hints at a slipping drive or a "
                         "current limit. It is a hint, not a fact."_t
                       : "Not each time, so output alone does not explain it."_t);
}

std::string spoiledRunsSentence(const Language& in, const std::vector<int>& runs)
{
    if (runs.empty())
        return {};
    return in.say(runs.size() == 1
                      ? "Run {} counts although a finding says that it is spoiled. Discard, or "
                        "overrule the finding with a reason, before you go by this."_t
                      : "Runs {} count although a finding says that they are spoiled. Discard, or "
                        "overrule the finding with a reason, before you go by this."_t,
                  runList(runs));
}

std::string ruleName(const Language& in, Rule rule)
{
    return in.say(core::ruleText(rule));
}

std::string reasonName(const Language& in, std::string_view reason)
{
    const auto rule = core::ruleFromName(reason);
    return rule ? ruleName(in, *rule) : in.say("other reason"_t);
}

std::string reasonWord(const Language& in, std::string_view reason)
{
    if (const auto rule = core::ruleFromName(reason))
        return ruleName(in, *rule);
    return reason == "other" ? in.say(core::kOtherReason) : std::string(reason);
}

std::string gradeName(const Language& in, core::Grade grade)
{
    switch (grade) {
    case core::Grade::note: return in.say("note##grade of a finding"_t);
    case core::Grade::doubtful: return in.say("doubtful##grade of a finding"_t);
    case core::Grade::spoils: return in.say("spoils the run##grade of a finding"_t);
    }
    return {};
}

std::string gradeWord(const Language& in, core::Grade grade)
{
    return grade == core::Grade::spoils ? in.say("spoils##grade of a finding"_t)
                                        : gradeName(in, grade);
}

std::string markName(const Language& in, std::string_view word)
{
    if (word == core::ruleName(Rule::passingTraffic))
        return in.say("Passing traffic"_t);
    if (word == "gust")
        return in.say("Gust"_t);
    if (word == core::ruleName(Rule::adjusted))
        return in.say("Adjusted"_t);
    if (word == "other")
        return in.say("Other##something else that happened during the run"_t);
    std::string words(word);
    std::replace(words.begin(), words.end(), '_', ' ');
    return words;
}

} // namespace bothways::app::wording
