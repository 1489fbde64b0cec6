// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/study/study.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The walk-round: what is looked at while the car stands, before each block. Half of what spoils a
/// day can be seen then: a loose nut, a belt off, a set point that the blades do not follow.
namespace bothways::core {

/// One thing to look at; one with a unit asks for a number.
struct WalkLine {
    std::string words;
    std::string unit;                ///< empty: it is ticked, without a number
    std::optional<double> tolerance; ///< two numbers may differ by so much; none: by anything
    friend bool operator==(const WalkLine&, const WalkLine&) = default;
};

/// The list as a study keeps it (property `walk_round`): lines parted by ";", each its words, or
/// "words = unit", or "words = unit +- tolerance" ("±" as well). Empty lines are left out.
/// @return  an Error (badInput) that names the line: more than 40 of them, two alike, no words, a
///          tolerance that is no number above 0
[[nodiscard]] Result<std::vector<WalkLine>> walkLines(std::string_view text);
[[nodiscard]] std::string walkText(const std::vector<WalkLine>& lines);

/// What was ticked, for one line.
struct WalkTick {
    std::string words;
    bool ticked = false;
    std::optional<double> number;
    std::string unit;
    friend bool operator==(const WalkTick&, const WalkTick&) = default;
};

/// A walk-round that was made.
struct WalkRound {
    Instant at;  ///< when it was ended
    int run = 0; ///< number of the run that came next
    std::vector<WalkTick> ticks;
    friend bool operator==(const WalkRound&, const WalkRound&) = default;
};

/// Nothing of it ticked yet: for the run of this number.
[[nodiscard]] WalkRound blankRound(const std::vector<WalkLine>& lines, Instant at, int run);
/// How many lines are not ticked.
[[nodiscard]] int openLines(const WalkRound& round);

/// A number that is further from the one before than the line's tolerance.
struct WalkDifference {
    std::string words, unit;
    double before = 0.0, now = 0.0, tolerance = 0.0;
};
/// Of each line the last number before, against the one in `now`.
[[nodiscard]] std::vector<WalkDifference> differencesOf(const std::vector<WalkLine>& lines,
                                                        const std::vector<WalkRound>& before,
                                                        const WalkRound& now);

/// Whether a run that is not in the study yet, its last one in time, would begin a block that
/// nobody walked round for. A walk-round belongs to the block whose first run is its `run`, or that
/// was begun next after it. False where no walk-round was ever made and the study has no list.
[[nodiscard]] bool wouldBeWithoutWalkRound(const Study& study, const Run& next,
                                           const std::vector<WalkRound>& made);

/// The numbers of the walk-rounds that were made for this run become columns of it, but for those
/// that it has.
void putNumbers(Run& run, const std::vector<WalkRound>& made);
/// The run's column for a number of the walk-round: "tyre pressure (kPa)".
[[nodiscard]] std::string walkColumn(const WalkTick& tick);

} // namespace bothways::core
