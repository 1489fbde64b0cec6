// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_tags.h"
#include "app/desktop/look/said.h"

#include <algorithm>

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

void addAccessories(const core::Run& run, const UnitsShown& units, RunTags& tags)
{
    for (const auto& [name, on_s] : run.accessory_on_s) {
        const QString seconds = units.fieldText(std::abs(on_s), 0);
        const QString words =
            on_s < 0.0 ? RunTagWords::tr("%1 switched on %2 s before the start")
                             .arg(readable(name), seconds)
                       : RunTagWords::tr("%1 switched on at %2 s").arg(readable(name), seconds);
        //: an accessory's name and when it was switched on, seconds from the run's start
        const QString text =
            RunTagWords::tr("%1 on %2 s").arg(readable(name), units.signedNumber(on_s, 0));
        tags.push_back({RunTag::Kind::accessory, text, words});
    }
    if (run.accessory_w) {
        const QString watts = units.fieldText(*run.accessory_w, 0);
        tags.push_back({RunTag::Kind::accessory, RunTagWords::tr("load %1 W").arg(watts),
                        RunTagWords::tr("Accessory load %1 W").arg(watts)});
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
        RunTag tag{RunTag::Kind::mark, readable(mark.word), {}};
        if (mark.word == kTrafficMark)
            tag = {RunTag::Kind::traffic, RunTagWords::tr("traffic"), {}};
        else if (mark.word == kAdjustedMark)
            tag = {RunTag::Kind::adjusted, RunTagWords::tr("adjusted"), {}};
        tag.tooltip = words.isEmpty() ? QString("%1, %2").arg(tag.text, at)
                                      : QString("%1, %2: %3").arg(tag.text, at, words);
        tags.push_back(tag);
    }
}

} // namespace

RunTags tagsOf(const core::Run& run, const UnitsShown& units)
{
    RunTags tags;
    addMarks(run, units, tags);
    addAccessories(run, units, tags);
    addWeather(run, units, tags);
    if (run.battery_v_start && run.battery_v_end) {
        const QString change = units.signedNumber(*run.battery_v_end - *run.battery_v_start, 2);
        tags.push_back({RunTag::Kind::battery, RunTagWords::tr("battery %1 V").arg(change),
                        RunTagWords::tr("Battery at the end against the start: %1 V").arg(change)});
    }
    if (!run.accessories.empty())
        tags.push_back({RunTag::Kind::accessory, nameShown(run.accessories),
                        RunTagWords::tr("Accessories on: %1").arg(nameShown(run.accessories))});
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
