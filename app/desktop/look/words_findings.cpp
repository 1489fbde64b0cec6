// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/words.h"

#include "core/screening/finding.h"
#include "core/study/rule.h"

#include <cmath>

// Sentences of the screening rules, without the run's number: the run is named where they stand.
namespace bothways::app {
namespace {

using core::Finding;
using core::Rule;

constexpr double kInstant_s = 0.05; // shorter spans are one moment

bool isNegative(const Finding& finding)
{
    return finding.value && *finding.value < 0.0;
}

} // namespace

QString FindingWords::ruleName(Rule rule)
{
    switch (rule) {
    case Rule::accessoryChange: return tr("accessory load changed");
    case Rule::accessoryTimer: return tr("timed accessory dropped out");
    case Rule::overspeed: return tr("over-speed");
    case Rule::loadLost: return tr("load lost");
    case Rule::driveSlip: return tr("drive slipped");
    case Rule::outputDrop: return tr("output dropped");
    case Rule::settingMismatch: return tr("setting not as set");
    case Rule::settingChanged: return tr("setting changed");
    case Rule::vibration: return tr("vibration");
    case Rule::roadSpeed: return tr("road speed off target");
    case Rule::interrupted: return tr("run interrupted");
    case Rule::notCruising: return tr("not yet cruising");
    case Rule::stretch: return tr("wrong distance");
    case Rule::passingTraffic: return tr("passing traffic");
    case Rule::sensorLost: return tr("sensor lost");
    case Rule::traceEndsEarly: return tr("recording ends early");
    case Rule::batteryBalance: return tr("battery not balanced");
    case Rule::warmingUp: return tr("warming up");
    case Rule::sameRunTwice: return tr("same run twice");
    case Rule::adjusted: return tr("adjusted during the run");
    }
    return {};
}

QString FindingWords::reasonName(const std::string& reason)
{
    const auto rule = core::ruleFromName(reason);
    return rule ? ruleName(*rule) : tr("other reason");
}

QString FindingWords::gradeName(core::Grade grade)
{
    switch (grade) {
    case core::Grade::note: return tr("note", "grade of a finding");
    case core::Grade::doubtful: return tr("doubtful", "grade of a finding");
    case core::Grade::spoils: return tr("spoils the run", "grade of a finding");
    }
    return {};
}

QString FindingWords::size(const std::optional<double>& value) const
{
    return value ? m_numbers.significant(std::abs(*value)) : tr("an unknown amount");
}

/// "from 61.2 s to 63.0 s; limit 50 W; windscreen": what is known, in brackets at the end.
QString FindingWords::whereAndLimit(const Finding& finding) const
{
    QStringList parts;
    if (finding.from_s) {
        const QString from = m_numbers.fixed(*finding.from_s, 1);
        if (finding.to_s && *finding.to_s - *finding.from_s >= kInstant_s)
            parts << tr("from %1 to %2\u00a0s").arg(from, m_numbers.fixed(*finding.to_s, 1));
        else
            parts << tr("at %1\u00a0s").arg(from);
    }
    if (finding.limit && finding.rule != Rule::sameRunTwice)
        parts << tr("limit %1\u00a0%2")
                     .arg(m_numbers.shortest(std::abs(*finding.limit)),
                          UnitsShown::signShown(QString::fromStdString(finding.unit)));
    if (!finding.detail.empty() && finding.rule != Rule::accessoryTimer)
        parts << QString::fromStdString(finding.detail);
    return parts.join(QLatin1String("; "));
}

QString FindingWords::overspeed(const Finding& finding) const
{
    const QString peak = finding.value ? m_numbers.fixed(*finding.value, 0) : tr("an unknown");
    if (finding.length_s && finding.output_w)
        return tr("the rotor reached %1\u00a0rpm and was too fast for %2\u00a0s, delivering "
                  "%3\u00a0W just before")
            .arg(peak, m_numbers.fixed(*finding.length_s, 1),
                 m_numbers.fixed(*finding.output_w, 0));
    if (finding.length_s)
        return tr("the rotor reached %1\u00a0rpm and was too fast for %2\u00a0s")
            .arg(peak, m_numbers.fixed(*finding.length_s, 1));
    return tr("the rotor reached %1\u00a0rpm").arg(peak);
}

QString FindingWords::speedFinding(const Finding& finding) const
{
    const bool low = isNegative(finding);
    if (finding.rule == Rule::roadSpeed)
        return (low ? tr("road speed was %1\u00a0% below the target")
                    : tr("road speed was %1\u00a0% above the target"))
            .arg(size(finding.value));
    if (finding.rule == Rule::interrupted)
        return tr("stopped or crawled: down to %1")
            .arg(m_numbers.units().speedWithUnit(finding.value.value_or(0.0)));
    return (low ? tr("counting began before the vehicle was cruising: %1\u00a0% below the target "
                     "speed")
                : tr("counting began before the vehicle was cruising: %1\u00a0% above the target "
                     "speed"))
        .arg(size(finding.value));
}

QString FindingWords::sheetFinding(const Finding& finding) const
{
    const bool low = isNegative(finding);
    switch (finding.rule) {
    case Rule::stretch:
        return (low ? tr("the distance is %1\u00a0% shorter than the stretch")
                    : tr("the distance is %1\u00a0% longer than the stretch"))
            .arg(size(finding.value));
    case Rule::passingTraffic:
        return finding.value ? tr("a gust or a passing vehicle: %1 times the usual scatter")
                                   .arg(size(finding.value))
                             : tr("passing traffic was noted");
    case Rule::sensorLost: return tr("no true reading for %1\u00a0s").arg(size(finding.value));
    case Rule::traceEndsEarly:
        return tr("the recording stops %1\u00a0s before the run does").arg(size(finding.value));
    case Rule::batteryBalance:
        return (low ? tr("the battery ended %1\u00a0V lower than it began: fuel was borrowed from "
                         "it")
                    : tr("the battery ended %1\u00a0V higher than it began: fuel went into "
                         "charging it"))
            .arg(size(finding.value));
    case Rule::warmingUp:
        return tr("began %1\u00a0min after the cold start; warming up bends the drift, and no "
                  "design takes that out")
            .arg(size(finding.value));
    case Rule::sameRunTwice:
        return tr("same start, direction and consumption as run %1: typed twice?")
            .arg(m_numbers.fixed(finding.value.value_or(0.0), 0));
    default: return tr("something was adjusted during the run");
    }
}

QString FindingWords::finding(const Finding& finding) const
{
    const bool low = isNegative(finding);
    QString what;
    switch (finding.rule) {
    case Rule::accessoryChange:
        what = (low ? tr("the accessory load was %1\u00a0W lower than it should be")
                    : tr("the accessory load was %1\u00a0W higher than it should be"))
                   .arg(size(finding.value));
        break;
    case Rule::accessoryTimer:
        what = (finding.from_s ? tr("“%1” (%2\u00a0W) switched itself off")
                               : tr("“%1” (%2\u00a0W) had switched itself off before the run"))
                   .arg(finding.detail.empty() ? tr("a timed accessory")
                                               : QString::fromStdString(finding.detail),
                        size(finding.value));
        break;
    case Rule::overspeed: what = overspeed(finding); break;
    case Rule::loadLost:
        what = tr("the device turned without load, up to %1\u00a0rpm: an open circuit, or the belt "
                  "is off")
                   .arg(m_numbers.fixed(finding.value.value_or(0.0), 0));
        break;
    case Rule::driveSlip:
        what = (low ? tr("the drive slipped: the generator was %1\u00a0% too slow for its rotor")
                    : tr("the drive slipped: the generator was %1\u00a0% too fast for its rotor"))
                   .arg(size(finding.value));
        break;
    case Rule::outputDrop:
        what = tr("output fell by %1\u00a0% and stayed there").arg(size(finding.value));
        break;
    case Rule::settingMismatch:
        what = (low ? tr("the setting was measured %1° below the one set")
                    : tr("the setting was measured %1° above the one set"))
                   .arg(size(finding.value));
        break;
    case Rule::settingChanged:
        what = tr("the setting was moved by %1° during the run").arg(size(finding.value));
        break;
    case Rule::vibration: what = tr("vibration up to %1\u00a0m/s²").arg(size(finding.value)); break;
    case Rule::roadSpeed:
    case Rule::interrupted:
    case Rule::notCruising: what = speedFinding(finding); break;
    default: what = sheetFinding(finding); break;
    }
    const QString where = whereAndLimit(finding);
    //: a finding, and where it was and which limit it broke
    return where.isEmpty() ? what : tr("%1 (%2)").arg(what, where);
}

QString FindingWords::notChecked(const core::NotChecked& notChecked) const
{
    QString why;
    switch (notChecked.why) {
    case core::WhyNotChecked::noTrace: why = tr("the run has no recording"); break;
    case core::WhyNotChecked::noChannel: why = tr("not recorded"); break;
    case core::WhyNotChecked::noLimit: why = tr("no limit is set"); break;
    case core::WhyNotChecked::notNoted: why = tr("not noted"); break;
    case core::WhyNotChecked::recordedTooSlowly: why = tr("recorded too slowly"); break;
    case core::WhyNotChecked::noSpread: why = tr("the channel does not vary"); break;
    case core::WhyNotChecked::noSetTime: why = tr("its switch-on time is not noted"); break;
    }
    if (notChecked.what.empty()) //: a rule, and why it was not checked
        return tr("%1 was not checked: %2").arg(ruleName(notChecked.rule), why);
    //: a rule, why it was not checked, and what is missing
    return tr("%1 was not checked: %2 (%3)")
        .arg(ruleName(notChecked.rule), why, QString::fromStdString(notChecked.what));
}

QString FindingWords::pattern(const core::OverspeedPattern& pattern) const
{
    const QString text =
        pattern.oversped == pattern.reached
            ? tr("Of %1 runs that reached %2\u00a0W, %3 oversped (%4 to %5\u00a0% of such runs, at "
                 "the study's confidence). Each time just above that output: that hints at a "
                 "slipping drive or a current limit. It is a hint, not a fact.")
            : tr("Of %1 runs that reached %2\u00a0W, %3 oversped (%4 to %5\u00a0% of such runs, at "
                 "the study's confidence). Not each time, so output alone does not explain it.");
    return text.arg(m_numbers.fixed(pattern.reached, 0), m_numbers.fixed(pattern.first_output_w, 0),
                    m_numbers.fixed(pattern.oversped, 0),
                    m_numbers.significant(100.0 * pattern.low),
                    m_numbers.significant(100.0 * pattern.high));
}

} // namespace bothways::app
