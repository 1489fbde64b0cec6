// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/live/next_run.h"
#include "core/study/study.h"

#include <QDateTime>
#include <QStringList>

#include <functional>

namespace bothways::app {

/// Where the time comes from: handed in, so that tests have their own.
using Clock = std::function<QDateTime()>;

/// The moment by the study's kind of clock: with the UTC offset where its runs have one.
[[nodiscard]] core::Instant instantOf(const core::Study& study, const QDateTime& moment);

/// The run that is likely to come next: what the plan that is tied to the study has, else as
/// runAfterLast(); at the time as given.
[[nodiscard]] core::Run nextRun(const core::Study& study, const QDateTime& now);
/// The other direction, same configuration and setting. Everything else is empty: nothing is noted
/// that nobody saw.
[[nodiscard]] core::Run runAfterLast(const core::Study& study);
/// Of next_run.h, in the user's language.
[[nodiscard]] UpNext upNext(const core::Study& study);
[[nodiscard]] BegunAs begunAs(const core::FoundBound& found, const core::Study& study);

/// The start to propose to someone who types from a notebook: the last start plus the usual gap
/// between runs.
[[nodiscard]] core::Instant nextStartFromNotebook(const core::Study& study);

/// Names to choose from: those of the study, filled up with the usual ones.
[[nodiscard]] QStringList configurationChoices(const core::Study& study);
[[nodiscard]] QStringList directionChoices(const core::Study& study);

} // namespace bothways::app
