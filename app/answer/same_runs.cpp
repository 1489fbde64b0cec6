// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/answer/same_runs.h"

#include <algorithm>
#include <iterator>
#include <system_error>

namespace bothways::app {

core::Outcome GivenRuns::take(const Input& input, core::Message& remark)
{
    Given now{input.fileName(), input.path, input.sha256, marksOf(input.study)};
    for (const Given& before : m_given) {
        std::error_code problem;
        if (now.path == before.path || std::filesystem::equivalent(now.path, before.path, problem))
            return core::Error{core::ErrorCode::wrongUse,
                               "is given twice; expected each file once"_t, input.path.string()};
        const std::size_t same = shared(before.runs, now.runs);
        if (!now.sha256.empty() && now.sha256 == before.sha256 && !now.runs.empty())
            remark = core::message("{} holds the same as {}, and counts twice"_t,
                                   input.path.string(), before.path.string());
        else if (same > 0)
            remark = core::message("{}: {} of its {} runs are runs of {}, too, and count twice"_t,
                                   now.name, same, now.runs.size(), before.name);
    }
    m_given.push_back(std::move(now));
    return core::Done{};
}

std::vector<GivenRuns::Mark> GivenRuns::marksOf(const core::Study& study)
{
    std::vector<Mark> marks;
    for (const core::Run& run : study.runs)
        marks.emplace_back(run.start.us, core::inSmallLetters(run.direction),
                           core::inSmallLetters(run.configuration),
                           run.consumption ? run.consumption->value : 0.0);
    std::sort(marks.begin(), marks.end());
    return marks;
}

std::size_t GivenRuns::shared(const std::vector<Mark>& a, const std::vector<Mark>& b)
{
    std::vector<Mark> both;
    std::set_intersection(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(both));
    return both.size();
}

} // namespace bothways::app
