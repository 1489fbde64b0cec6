// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/study_document.h"
#include "app/desktop/runs/day_layout.h"

#include <QStringList>

#include <optional>
#include <utility>
#include <vector>

namespace bothways::app {

/// What the run list shows of a run, and compares to find out what changed.
struct RunRow {
    enum State { waiting, paired, alone, discarded }; // plain: Qt speaks int
    core::Run run;
    BlockPlace place;
    QStringList blockLines; ///< what the rows of its block say, from the top
    bool device = false;    ///< configuration B
    BracketPieces brackets;
    State state = waiting;
    int pair = 0; ///< number; 0 without
    std::vector<std::pair<core::Finding, Answer>> findings;
    int grade = -1;                             ///< worst open finding's core::Grade; -1 without
    std::optional<core::Consumption> fromTrace; ///< where the driver noted none
    friend bool operator==(const RunRow&, const RunRow&) = default;
};

/// A row for each run of the document's study, in its order. Pairs come from the answer; while that
/// is of the study as it was, a run keeps what it had in `before`.
[[nodiscard]] std::vector<RunRow> runRows(const StudyDocument& document,
                                          const std::vector<RunRow>& before);

} // namespace bothways::app
