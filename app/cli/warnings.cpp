// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/warnings.h"

#include "app/wording/runs.h"
#include "core/screening/odd_runs.h"
#include "core/study/properties.h"

#include <algorithm>
#include <ostream>

namespace bothways::cli {
namespace {

constexpr std::size_t kMostWarnings = 10;

} // namespace

void warn(const std::string& sentence, const Surroundings& io)
{
    io.err << io.language.say("warning: {}"_t, sentence) << "\n";
}

void warnOfNewRuns(const core::Study& before, const core::Study& now, Surroundings& io)
{
    const Outcome baseline = core::checkBaseline(now);
    if (!baseline && core::checkBaseline(before))
        warn(io.language.say("the study {}; choose with 'bothways set STUDY baseline=NAME'"_t,
                             baseline.error().message),
             io);
    const auto known = core::oddRuns(before);
    auto added = core::oddRuns(now);
    std::erase_if(added, [&](const core::OddRun& odd) {
        return std::any_of(known.begin(), known.end(), [&](const core::OddRun& other) {
            return other.what == odd.what && other.run == odd.run;
        });
    });
    for (std::size_t i = 0; i < std::min(added.size(), kMostWarnings); ++i)
        warn(app::wording::oddRunSentence(io.language, added[i], now), io);
    if (added.size() > kMostWarnings)
        warn(io.language.say("and {} more; 'bothways runs' lists them"_t,
                             added.size() - kMostWarnings),
             io);
}

} // namespace bothways::cli
