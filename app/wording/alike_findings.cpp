// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/alike_findings.h"

#include "app/wording/findings.h"
#include "app/wording/runs.h"

#include <map>
#include <tuple>

namespace bothways::app::wording {

std::string AlikeFindings::sentence(const Language& in) const
{
    return in.say("{}: {}"_t, runsWords(in, runs), words);
}

std::vector<AlikeFindings> alikeFindings(const Language& in,
                                         const std::vector<core::Finding>& findings)
{
    std::vector<AlikeFindings> groups;
    std::map<std::tuple<core::Rule, core::Grade, std::string>, std::size_t> places;
    for (const core::Finding& finding : findings) {
        std::string words = findingWords(in, finding);
        const auto [at, isNew] =
            places.try_emplace({finding.rule, finding.grade, words}, groups.size());
        if (isNew)
            groups.push_back({&finding, {}, std::move(words)});
        groups[at->second].runs.push_back(finding.run);
    }
    return groups;
}

} // namespace bothways::app::wording
