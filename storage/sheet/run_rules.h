// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/study/study.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <limits>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// What must hold for a run to be in a study. The same rules for a line of a sheet, a run typed by
/// hand, and an edit; so that every study can be exported, and imported again.
namespace bothways::storage {

/// One thing that is wrong with one run.
struct RunFault {
    std::size_t run = 0; ///< index in what was asked about
    std::string column;
    core::Message message;
};

/// Faults of a run by itself: numbers that are impossible, what is missing, what contradicts.
/// A counted run whose consumption is missing passes when it names a trace to take it from.
[[nodiscard]] std::vector<RunFault> ownFaults(const core::Run& run);

/// Stands for the start of a run whose start could not be read.
inline constexpr std::int64_t kUnknownStart_us = std::numeric_limits<std::int64_t>::min();

/// Faults of `added` among each other and with the runs of `existing`: a third name, a number given
/// twice, UTC offsets on some, marks of pairs. What a run lacks (an empty name) is not repeated
/// here. Numbers that are 0 are not yet given.
/// @param sheetLines  where each added run stands, for messages about another one; may be empty
[[nodiscard]] std::vector<RunFault> faultsAmong(const core::Study& existing,
                                                std::span<const core::Run> added,
                                                std::span<const int> sheetLines = {});
[[nodiscard]] std::vector<RunFault> faultsAmong(std::span<const core::Run* const> existing,
                                                std::span<const core::Run> added,
                                                std::span<const int> sheetLines = {});

/// Where no run of `existing` has a consumption yet: those of `added` whose unit is not that of the
/// fuel which the study names. (Between runs, faultsAmong() compares the units.)
[[nodiscard]] std::vector<RunFault> fuelFaults(core::Fuel named,
                                               std::span<const core::Run* const> existing,
                                               std::span<const core::Run> added);

/// The runs of a study, one left out (none for an identity of 0); nothing is copied.
[[nodiscard]] std::vector<const core::Run*> othersIn(const core::Study& study, core::RunId except);

/// A study has at most kMostOwnColumns columns of one's own, timed accessories among them.
/// @return  the first of `added` that is too many
[[nodiscard]] std::optional<RunFault> tooManyOwnColumns(const core::Study& existing,
                                                        std::span<const core::Run> added);

/// The names of a study as first written in it.
struct Spellings {
    std::vector<std::string> configurations, directions;
    std::map<std::string, std::string> extras; ///< columns of one's own, by name in small letters
    [[nodiscard]] static Spellings of(const core::Study& study);
    [[nodiscard]] static Spellings of(std::span<const core::Run* const> runs);
    /// As far as normalised() needs it for `asking`: many runs are not read to the end for nothing.
    [[nodiscard]] static Spellings of(std::span<const core::Run* const> runs,
                                      const core::Run& asking);

private:
    void addExtrasOf(std::span<const core::Run* const> runs);
};

/// All faults as one Error: the first, which carries the others.
/// @param errors  at least one
[[nodiscard]] core::Error inOne(std::vector<core::Error> errors);

/// The run in the form in which a study holds it: names trimmed and spelled as in `spellings`, the
/// reason in small letters, as many digits of the consumption as are really in it. Names that are
/// new are added to `spellings`.
[[nodiscard]] core::Run normalised(core::Run run, Spellings& spellings);

/// Gives each run without a number the next free one, after the highest of `existing`, or the
/// lowest free one where no number is higher. `added` must be in order of start.
void numberRuns(const core::Study& existing, std::span<core::Run> added);

/// Where a fault of a run is: "morning.csv: run 3: column 'start'".
using FaultPlace = std::function<core::Place(std::size_t run, const std::string& column)>;

/// Runs as they may be added to a study: normalised, checked against it and each other, numbered.
/// Nothing is written.
/// @param given  in order of start
/// @return  an Error (badInput) with all faults, each at its `place`
[[nodiscard]] core::Result<std::vector<core::Run>>
admitted(const core::Study& existing, std::vector<core::Run> given, const FaultPlace& place);

/// True when both runs are in one block of the merged, sorted runs: no switch and no new day
/// between them. (Method, sections 1 and 4.)
[[nodiscard]] bool inOneBlock(std::span<const core::Run* const> sorted, std::size_t a,
                              std::size_t b);

} // namespace bothways::storage
