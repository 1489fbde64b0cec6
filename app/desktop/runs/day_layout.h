// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/study/study.h"

#include <QMetaType>

#include <string>
#include <vector>

/// How a day of runs is drawn: which block each run is in, and the brackets that tie pairs.
namespace bothways::app {

/// One bracket's part in one row. Brackets that overlap lie in lanes of their own, 0 nearest to the
/// runs.
struct BracketPiece {
    enum class Part { top, middle, bottom };
    int lane = 0;
    Part part = Part::middle;
    int pair = 0;       ///< number
    bool fixed = false; ///< tied by hand
    friend bool operator==(const BracketPiece&, const BracketPiece&) = default;
};
using BracketPieces = std::vector<BracketPiece>;

/// Where a run stands in its block.
struct BlockPlace {
    int block = 0; ///< from 1; as in core::Analysis
    int row = 0;   ///< 0: the block's first run
    int rows = 0;  ///< runs of the block, discarded ones too
    int day = 0;   ///< from 0
    friend bool operator==(const BlockPlace&, const BlockPlace&) = default;
};

/// A block is consecutive runs in one configuration, discarded ones too; more than 6 h between
/// starts begins a new day and with it a new block. (Method, sections 1 and 4.)
[[nodiscard]] std::vector<BlockPlace> blockPlaces(const core::Study& study);

/// The pieces of all brackets, a list for each run of the study. Pairs that name runs beyond
/// `runs` are left out: the answer may be older than the list.
[[nodiscard]] std::vector<BracketPieces> pairBrackets(const std::vector<core::Pair>& pairs,
                                                      std::size_t runs);

} // namespace bothways::app

Q_DECLARE_METATYPE(bothways::app::BracketPieces)
