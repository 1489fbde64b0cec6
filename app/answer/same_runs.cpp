// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/answer/same_runs.h"

#include "storage/sheet/known_runs.h"

#include <algorithm>
#include <system_error>

namespace bothways::app {

namespace {

std::size_t sharedRuns(const GivenStudy& before, const GivenStudy& now)
{
    const storage::KnownRuns known(before.runs);
    return static_cast<std::size_t>(
        std::count_if(now.runs.begin(), now.runs.end(),
                      [&](const core::Run& run) { return known.find(run) != nullptr; }));
}

} // namespace

GivenStudy givenStudy(const Input& input)
{
    return {input.fileName(), input.path, input.sha256, input.study.runs};
}

core::Outcome GivenRuns::take(GivenStudy now, core::Message& remark)
{
    for (const GivenStudy& before : m_given) {
        std::error_code problem;
        if (now.path == before.path || std::filesystem::equivalent(now.path, before.path, problem))
            return core::Error{core::ErrorCode::wrongUse,
                               "is given twice; expected each file once"_t, now.path.string()};
        const std::size_t same = sharedRuns(before, now);
        if (!now.sha256.empty() && now.sha256 == before.sha256 && !now.runs.empty())
            remark =
                core::message("{} holds the same as {}, and counts twice"_t, now.name, before.name);
        else if (same > 0)
            remark = core::message("{}: {} of its {} runs are runs of {}, too, and count twice"_t,
                                   now.name, same, now.runs.size(), before.name);
    }
    m_given.push_back(std::move(now));
    return core::Done{};
}

} // namespace bothways::app
