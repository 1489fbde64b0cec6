// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/screening/finding.h"

#include <string>
#include <vector>

namespace bothways::app::wording {

/// Findings of one rule that say the same of several runs.
struct AlikeFindings {
    const core::Finding* first = nullptr; ///< in `findings`
    std::vector<int> runs;
    std::string words; ///< findingWords()
    /// "runs 1–4, 7: the distance is 19 % shorter ..."
    [[nodiscard]] std::string sentence(const Language& in) const;
};

/// In the order of the first of each.
[[nodiscard]] std::vector<AlikeFindings> alikeFindings(const Language& in,
                                                       const std::vector<core::Finding>& findings);

} // namespace bothways::app::wording
