// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/run_draft.h"

#include "app/desktop/document/up_next.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace bothways::app {
namespace {

constexpr std::array<std::pair<const char*, const char*>, 7> kOpposites{{{"out", "return"},
                                                                         {"out", "back"},
                                                                         {"east", "west"},
                                                                         {"north", "south"},
                                                                         {"up", "down"},
                                                                         {"there", "back"},
                                                                         {"hin", "zurück"}}};

struct RunDraftWords {
    Q_DECLARE_TR_FUNCTIONS(RunDraft)
};

/// What the two ways are called where the study does not say: in the user's language.
QStringList usualDirections()
{
    return {RunDraftWords::tr("out", "a direction"), RunDraftWords::tr("return", "a direction")};
}

/// The usual name of the way back from `direction`; empty where none is known.
std::string opposite(const std::string& direction)
{
    const QStringList usual = usualDirections();
    for (const int way : {0, 1})
        if (core::sameWord(direction, usual[way].toStdString()))
            return usual[1 - way].toStdString();
    for (const auto& [one, other] : kOpposites) {
        if (core::sameWord(direction, one))
            return other;
        if (core::sameWord(direction, other))
            return one;
    }
    return {};
}

std::string otherDirection(const core::Study& study, const std::string& last)
{
    for (const std::string& known : core::directions(study))
        if (!core::sameWord(known, last))
            return known;
    return opposite(last);
}

} // namespace

core::Instant instantOf(const core::Study& study, const QDateTime& moment)
{
    const bool offsets = !study.runs.empty() && study.runs.back().start.utc_offset_min.has_value();
    const int offset_s = moment.offsetFromUtc();
    core::Instant instant;
    instant.us = moment.toMSecsSinceEpoch() / 1000 * 1'000'000; // whole seconds: nobody is faster
    if (offsets)
        instant.utc_offset_min = offset_s / 60;
    else
        instant.us += std::int64_t{offset_s} * 1'000'000;
    return instant;
}

core::Run nextRun(const core::Study& study, const QDateTime& now)
{
    core::Run next = runAfterLast(study);
    next.start = instantOf(study, now);
    if (!study.properties.plan)
        return next;
    const UpNext planned = upNext(study); // as at the roadside
    next.configuration = planned.configuration;
    next.setting = planned.setting;
    next.direction = planned.direction;
    return next;
}

core::Run runAfterLast(const core::Study& study)
{
    core::Run next;
    if (study.runs.empty()) {
        next.configuration = study.properties.baseline.empty() ? "A" : study.properties.baseline;
        next.direction = directionChoices(study).constFirst().toStdString();
        return next;
    }
    const core::Run& last = study.runs.back();
    next.configuration = last.configuration;
    next.setting = last.setting;
    next.direction = otherDirection(study, last.direction);
    return next;
}

core::Instant nextStartFromNotebook(const core::Study& study)
{
    if (study.runs.empty())
        return {};
    core::Instant start = study.runs.back().start;
    std::vector<std::int64_t> gaps;
    for (std::size_t i = 1; i < study.runs.size(); ++i)
        gaps.push_back(study.runs[i].start.us - study.runs[i - 1].start.us);
    if (gaps.empty())
        return start;
    const auto middle = gaps.begin() + static_cast<std::ptrdiff_t>(gaps.size() / 2);
    std::nth_element(gaps.begin(), middle, gaps.end());
    const std::int64_t minute = 60'000'000;
    start.us += (*middle + minute / 2) / minute * minute;
    return start;
}

QStringList configurationChoices(const core::Study& study)
{
    QStringList names;
    for (const std::string& name : core::configurations(study))
        names += QString::fromStdString(name);
    if (names.isEmpty() && !study.properties.baseline.empty())
        names += QString::fromStdString(study.properties.baseline);
    for (const char* usual : {"A", "B"})
        if (names.size() < 2 && !names.contains(QLatin1String(usual), Qt::CaseInsensitive))
            names += QLatin1String(usual);
    return names;
}

QStringList directionChoices(const core::Study& study)
{
    QStringList names;
    for (const std::string& name : core::directions(study))
        names += QString::fromStdString(name);
    if (names.isEmpty())
        return usualDirections();
    if (names.size() == 1)
        if (const std::string other = opposite(names.front().toStdString()); !other.empty())
            names += QString::fromStdString(other);
    return names;
}

} // namespace bothways::app
