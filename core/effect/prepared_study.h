// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/study/study.h"

#include <cstdint>
#include <optional>
#include <vector>

/// A study made ready for arithmetic: runs coded, blocks formed, pairs matched, design decided.
/// Internal to core; the headline, the companions and the checks all start from here, so that they
/// cannot disagree about what was driven. (Method, sections 1 to 4.)
namespace bothways::core {

/// A counted run that can be used: it has a consumption, and one of the two configurations and
/// directions.
struct CodedRun {
    std::size_t index = 0;   ///< place in Study::runs
    int number = 0;          ///< the user's
    bool out = false;        ///< direction of the study's first run
    bool device = false;     ///< configuration B; x = 1
    int day = 0;             ///< from 0
    int block = 0;           ///< Block::block
    std::int64_t mid_us = 0; ///< mid-time from the start of the study's first run
    double t_h = 0.0;        ///< the same in hours
    double l_per_100km = 0.0;
    double y = 0.0; ///< ln of consumption; with a control vehicle ln of the ratio to the control's
    std::optional<double> distance_km;
    std::optional<double> control_l_per_100km; ///< only when PreparedStudy::control
    int pair = 0;                              ///< Pair::number; 0: stays alone
};

inline constexpr std::size_t kNotTied = static_cast<std::size_t>(-1);

/// What counts as one block for the design, `bracket`, `blocks` and `baseline`: a block with pairs,
/// or neighbours of one configuration on one day among such.
struct DesignBlock {
    std::vector<int> blocks; ///< Block::block of each
    bool device = false;
    int day = 0;
    std::vector<std::size_t> pairs; ///< places in PreparedStudy::pairs, in order of time
    double m = 0.0;                 ///< mean of Pair::log
    double t_h = 0.0;               ///< mean of Pair::time_h
};

struct PreparedStudy {
    std::string baseline, device;      ///< names; empty where there is none
    std::vector<CodedRun> runs;        ///< counted and usable, in order of start
    std::vector<Block> blocks;         ///< all, those without counted runs too
    std::vector<Pair> pairs;           ///< in order of number
    std::vector<std::size_t> pairRuns; ///< 2 a pair, out then return: places in `runs`
    std::vector<int> unpaired; ///< numbers of counted runs that stay alone, in order of start
    std::vector<DesignBlock> design_blocks; ///< in order of time
    std::optional<Design> design;
    int days = 0;                     ///< driven, with pairs or without; 0 without runs
    std::vector<int> days_with_pairs; ///< ascending; the others do not count anywhere in the model
    int counted = 0;
    bool electric = false; ///< every consumption is in kWh/100 km
    /// A run each of Study::runs: the place of the run it is tied to by hand, or kNotTied. Ties
    /// hold whether or not the runs count.
    std::vector<std::size_t> tied_with;
    bool control = false; ///< `y` and Pair::log are ratios to the control vehicle
    std::vector<Note> notes;

    [[nodiscard]] int pairsOf(bool ofDevice) const; ///< number of pairs of one configuration
    /// Whether the model has a slope in time a day: a closed design has one for every day, an open
    /// design for none.
    [[nodiscard]] bool sloped() const { return design == Design::closed; }
    /// Places in `runs` of those whose day has a pair.
    [[nodiscard]] std::vector<std::size_t> runsOfDaysWithPairs() const;
};

/// Which runs to use; the default is: those that are not discarded.
struct PrepareOptions {
    /// Discarded runs to count all the same: places in Study::runs, ascending.
    std::vector<std::size_t> restored = {};
    /// Whether the control vehicle is used. Empty: when every counted run has it.
    std::optional<bool> control = {};
};

[[nodiscard]] PreparedStudy prepareStudy(const Study& study, const AnalysisOptions& options,
                                         const PrepareOptions& which = {});

/// A day with this many design blocks, so two switches, closes the study.
inline constexpr int kClosedBlocks = 3;

} // namespace bothways::core
