// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_tags.h"

#include "app/desktop/look/said.h"

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

struct RunTagWords {
    Q_DECLARE_TR_FUNCTIONS(RunTagWords)
};

QString readable(std::string name)
{
    std::replace(name.begin(), name.end(), '_', ' ');
    return nameShown(name);
}

/// "8½": half minutes are as exact as a person remembers.
QString minutesText(double seconds, const UnitsShown& units)
{
    const auto halves = std::llround(std::abs(seconds) / 30.0);
    const QString whole = units.number(static_cast<double>(halves / 2), 0);
    if (halves % 2 == 0)
        return whole;
    return halves == 1 ? QString(QChar(0x00BD)) : whole + QChar(0x00BD);
}

/// The usual way: on before the start, and still on at the end.
RunTag timedTag(const core::Run& run, const std::string& name, double on_s,
                const std::vector<core::TimedAccessory>& timed, const UnitsShown& units)
{
    const QString shownName = readable(name);
    const QString seconds = units.fieldText(std::abs(on_s), 0);
    RunTag tag{RunTag::Kind::accessory, {}, {}, "on " + name};
    tag.tooltip =
        on_s < 0.0 ? RunTagWords::tr("%1 switched on %2 s before the start").arg(shownName, seconds)
                   : RunTagWords::tr("%1 switched on at %2 s").arg(shownName, seconds);
    if (on_s > 0.0) {
        tag.text = RunTagWords::tr("%1 on only at %2 s").arg(shownName, seconds);
        tag.loud = true;
        return tag;
    }
    const auto timer = std::ranges::find(timed, name, &core::TimedAccessory::name);
    const double end_s = core::duration_s(run).value_or(0.0);
    if (timer == timed.end() || 60.0 * timer->minutes + on_s >= end_s) {
        tag.text = RunTagWords::tr("%1 on").arg(shownName);
        return tag;
    }
    tag.loud = true;
    //: an accessory, when it was switched on, and after how many minutes it drops out
    tag.text = RunTagWords::tr("%1 on %2 min before: too early for its %3 minutes")
                   .arg(shownName, minutesText(on_s, units), units.fieldText(timer->minutes, 1));
    return tag;
}

void addAccessories(const core::Run& run, const UnitsShown& units,
                    const std::vector<core::TimedAccessory>& timed, RunTags& tags)
{
    for (const auto& [name, on_s] : run.accessory_on_s)
        tags.push_back(timedTag(run, name, on_s, timed, units));
    if (run.accessory_w) {
        const QString watts = units.fieldText(*run.accessory_w, 0);
        tags.push_back({RunTag::Kind::accessory, RunTagWords::tr("load %1 W").arg(watts),
                        RunTagWords::tr("Accessory load %1 W").arg(watts), "load"});
    }
}

void addWeather(const core::Run& run, const UnitsShown& units, RunTags& tags)
{
    if (run.temperature_c) {
        const QString text = units.temperatureWithUnit(*run.temperature_c);
        tags.push_back(
            {RunTag::Kind::temperature, text, RunTagWords::tr("Temperature %1").arg(text)});
    }
    if (run.wind_ms) {
        const QString speed = units.windWithUnit(*run.wind_ms);
        const QString text = run.wind_from_deg
                                 ? RunTagWords::tr("wind %1 from %2°")
                                       .arg(speed, units.fieldText(*run.wind_from_deg, 0))
                                 : RunTagWords::tr("wind %1").arg(speed);
        tags.push_back({RunTag::Kind::wind, text, text});
    }
}

void addMarks(const core::Run& run, const UnitsShown& units, RunTags& tags)
{
    for (const core::Mark& mark : run.marks) {
        const QString at = RunTagWords::tr("at %1 s").arg(units.fieldText(mark.at_s, 1));
        const QString words = nameShown(mark.words);
        RunTag tag{RunTag::Kind::mark, readable(mark.word), {}, {}, true};
        if (mark.word == kTrafficMark)
            tag = {RunTag::Kind::traffic, RunTagWords::tr("traffic"), {}, {}, true};
        else if (mark.word == kAdjustedMark)
            tag = {RunTag::Kind::adjusted, RunTagWords::tr("adjusted"), {}, {}, true};
        tag.tooltip = words.isEmpty() ? QString("%1, %2").arg(tag.text, at)
                                      : QString("%1, %2: %3").arg(tag.text, at, words);
        tags.push_back(tag);
    }
}

} // namespace

RunTags tagsOf(const core::Run& run, const UnitsShown& units,
               const std::vector<core::TimedAccessory>& timed)
{
    RunTags tags;
    addMarks(run, units, tags);
    addAccessories(run, units, timed, tags);
    addWeather(run, units, tags);
    if (run.battery_v_start && run.battery_v_end) {
        const QString change = units.signedNumber(*run.battery_v_end - *run.battery_v_start, 2);
        tags.push_back({RunTag::Kind::battery, RunTagWords::tr("battery %1 V").arg(change),
                        RunTagWords::tr("Battery at the end against the start: %1 V").arg(change)});
    }
    if (!run.accessories.empty())
        tags.push_back({RunTag::Kind::accessory, nameShown(run.accessories),
                        RunTagWords::tr("Accessories on: %1").arg(nameShown(run.accessories)),
                        "words"});
    return tags;
}

bool hasMark(const core::Run& run, std::string_view word)
{
    return std::any_of(run.marks.begin(), run.marks.end(),
                       [&](const core::Mark& mark) { return mark.word == word; });
}

void setMark(core::Run& run, std::string_view word, bool there)
{
    if (there && !hasMark(run, word))
        run.marks.push_back({0.0, std::string(word), {}});
    else if (!there)
        std::erase_if(run.marks, [&](const core::Mark& mark) { return mark.word == word; });
}

} // namespace bothways::app
