// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/study_document_private.h"

#include "app/desktop/look/said.h"
#include "app/live/next_run.h"
#include "app/wording/runs.h"
#include "storage/study/walk_rounds.h"

// Walk-rounds of the open study.
namespace bothways::app {

std::vector<core::WalkRound> StudyDocument::walkRounds() const
{
    return storage::walkRoundsIn(d->history);
}

std::vector<core::WalkLine> StudyDocument::walkLines() const
{
    auto lines = core::walkLines(d->study.properties.walk_round);
    return lines ? std::move(lines).take() : std::vector<core::WalkLine>();
}

QStringList StudyDocument::walkDifferences(const Language& in, const core::WalkRound& round) const
{
    QStringList said;
    for (const core::WalkDifference& one : core::differencesOf(walkLines(), walkRounds(), round))
        said += asSentence(shown(wording::walkDifference(in, one)));
    return said;
}

bool StudyDocument::noteWalkRound(const core::WalkRound& round)
{
    return change([&] { return storage::noteWalkRound(d->file, round); });
}

core::Run StudyDocument::withWalkRound(core::Run run) const
{
    const int given = run.number;
    if (given == 0)
        run.number = nextNumber(d->study); // the one that it will get
    core::putNumbers(run, walkRounds());
    run.number = given;
    return run;
}

} // namespace bothways::app
