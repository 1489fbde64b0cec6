// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"
#include "core/watching/run_finder.h"

#include <array>
#include <optional>
#include <string>

/// What is driven next, and how far the day is: for people who sit in the car.
namespace bothways::app {

/// In the user's language.
using UsualDirections = std::array<std::string, 2>;

struct UpNext {
    enum class Because {
        plan,      ///< the plan that is tied to the study says so
        lastRun,   ///< no plan: as the last run, the other way
        planDone,  ///< the plan is driven; more runs go on as after the last
        offThePlan ///< the blocks so far are not those of the plan
    };
    Because because = Because::lastRun;
    int number = 1;
    std::string configuration, setting, direction;
    bool device = false;
    bool switchFirst = false; ///< another configuration than that of the run before
    int block = 1;            ///< from 1
    int pairs_in_block = 0;   ///< that are done
    std::optional<int> planned_blocks, planned_pairs_in_block;
};

/// One beyond the highest number, discarded runs too; 1 in a study without a run.
[[nodiscard]] int nextNumber(const core::Study& study);

/// The plan's blocks are held against the blocks that were driven, as core::fulfils() does: equal
/// neighbours of one day are one, a new day begins a new one, blocks without a pair are left out.
/// The direction is always the other one than that of the last run, discarded or not: the vehicle
/// stands at that end of the stretch.
/// @param usual  what the two ways are called where the study does not say
[[nodiscard]] UpNext upNext(const core::Study& study, const UsualDirections& usual);

/// Whether a run of that configuration that starts now would be the first of its block.
[[nodiscard]] bool beginsBlock(const core::Study& study, std::string_view configuration,
                               core::Instant now);

/// What the recording says of a run that it begins; empty: nothing.
struct BegunAs {
    std::string configuration, direction;
};
/// Directions are the study's, else the usual ones. A word of the mark that is one of the
/// configurations is the run's.
[[nodiscard]] BegunAs begunAs(const core::FoundBound& found, const core::Study& study,
                              const UsualDirections& usual);

/// The usual name of the way back from `direction`; empty where none is known.
[[nodiscard]] std::string wayBack(const std::string& direction, const UsualDirections& usual);

/// The other direction, same configuration and setting. Everything else is empty: nothing is noted
/// that nobody saw.
[[nodiscard]] core::Run runAfterLast(const core::Study& study, const UsualDirections& usual);

/// Name of configuration A: the study's, else A.
[[nodiscard]] std::string baselineToDrive(const core::Study& study);

/// Name of configuration B: the study's, else the usual opposite of the baseline's.
[[nodiscard]] std::string deviceName(const core::Study& study);

struct PairTally {
    int done = 0;
    std::optional<int> planned; ///< of the tied plan
};
[[nodiscard]] PairTally pairTally(const core::Study& study);

/// Seconds that a run should take: stretch over target speed where the study has both, else the
/// middle one of the durations so far, where there are two.
[[nodiscard]] std::optional<double> expectedDuration_s(const core::Study& study);

} // namespace bothways::app
