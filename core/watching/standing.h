// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/screening/finding.h"

#include <span>
#include <string>
#include <vector>

namespace bothways::core {

/// A finding of the run under way that stands from now on.
struct Standing {
    Finding finding;
    std::string key; ///< stays the same while the finding grows
};

/// What the looks at a run under way have found, each look at its latest part: what was found
/// before and goes on is one finding, as screen() would have it.
class StandingFindings {
public:
    void take(std::span<const Finding> found);
    [[nodiscard]] const std::vector<Standing>& all() const { return m_standing; }

private:
    std::vector<Standing> m_standing;
};

} // namespace bothways::core
