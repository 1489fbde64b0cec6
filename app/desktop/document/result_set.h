// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/screening/finding.h"
#include "core/study/study.h"

#include <QMetaType>

#include <map>
#include <memory>
#include <vector>

namespace bothways::app {

/// One whole answer and the study that it is the answer to: made off the user-interface thread,
/// then shared and never changed.
struct ResultSet {
    core::Study study;
    core::Analysis analysis;
    core::Screening screening;
    /// What the recordings say was used, by the run's number; runs without one are left out.
    std::map<int, core::Consumption> recorded;
    std::vector<int> spoiled; ///< core::spoiledButCounted(), for what was overruled then
};

} // namespace bothways::app

Q_DECLARE_METATYPE(std::shared_ptr<const bothways::app::ResultSet>)
