// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/run_draft.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace bothways::app {
namespace {

struct RunDraftWords {
    Q_DECLARE_TR_FUNCTIONS(RunDraft)
};

/// What the two ways are called where the study does not say: in the user's language.
QStringList usualDirections()
{
    return {RunDraftWords::tr("out", "a direction"), RunDraftWords::tr("return", "a direction")};
}

UsualDirections usualWords()
{
    const QStringList usual = usualDirections();
    return {usual[0].toStdString(), usual[1].toStdString()};
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
    return runAfterLast(study, usualWords());
}

UpNext upNext(const core::Study& study)
{
    return upNext(study, usualWords());
}

BegunAs begunAs(const core::FoundBound& found, const core::Study& study)
{
    return begunAs(found, study, usualWords());
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
        if (const std::string other = wayBack(names.front().toStdString(), usualWords());
            !other.empty())
            names += QString::fromStdString(other);
    return names;
}

} // namespace bothways::app
