// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/day_layout.h"

#include "core/effect/prepared_study.h"

#include <algorithm>

namespace bothways::app {
namespace {

struct Bracket {
    std::size_t top, bottom;
    const core::Pair* pair;
};

} // namespace

std::vector<BlockPlace> blockPlaces(const core::Study& study)
{
    std::vector<BlockPlace> places;
    places.reserve(study.runs.size());
    std::size_t first = 0;
    for (std::size_t i = 0; i < study.runs.size(); ++i) {
        BlockPlace place{1, 0, 0, 0};
        if (i > 0) {
            const core::Run& before = study.runs[i - 1];
            const core::Run& run = study.runs[i];
            const bool newDay = run.start.us - before.start.us > core::kNewDay_us;
            const bool newBlock =
                newDay || !core::sameWord(run.configuration, before.configuration);
            place = places.back();
            place.day += newDay ? 1 : 0;
            place.block += newBlock ? 1 : 0;
            place.row = newBlock ? 0 : place.row + 1;
            if (newBlock)
                first = i;
        }
        places.push_back(place);
        for (std::size_t j = first; j <= i; ++j)
            places[j].rows = static_cast<int>(i - first + 1);
    }
    return places;
}

std::vector<BracketPieces> pairBrackets(const std::vector<core::Pair>& pairs, std::size_t runs)
{
    std::vector<Bracket> brackets;
    for (const core::Pair& pair : pairs) {
        const auto [top, bottom] = std::minmax(pair.out_index, pair.return_index);
        if (bottom < runs && top != bottom)
            brackets.push_back({top, bottom, &pair});
    }
    std::sort(brackets.begin(), brackets.end(),
              [](const Bracket& a, const Bracket& b) { return a.top < b.top; });

    std::vector<BracketPieces> pieces(runs);
    std::vector<std::size_t> laneEnds; // last row that each lane is taken to
    for (const Bracket& bracket : brackets) {
        const auto free = std::find_if(laneEnds.begin(), laneEnds.end(),
                                       [&](std::size_t end) { return end < bracket.top; });
        const int lane = static_cast<int>(free - laneEnds.begin());
        if (free == laneEnds.end())
            laneEnds.push_back(bracket.bottom);
        else
            *free = bracket.bottom;
        for (std::size_t row = bracket.top; row <= bracket.bottom; ++row) {
            using Part = BracketPiece::Part;
            const Part part = row == bracket.top      ? Part::top
                              : row == bracket.bottom ? Part::bottom
                                                      : Part::middle;
            pieces[row].push_back({lane, part, bracket.pair->number, bracket.pair->fixed});
        }
    }
    return pieces;
}

} // namespace bothways::app
