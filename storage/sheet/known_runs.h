// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"

#include <cstdint>
#include <map>
#include <span>
#include <vector>

/// Whether a run is known already: the one rule, for what is imported twice and for what is given
/// under two names.
namespace bothways::storage {

/// Two notes of one run: same start, configuration, direction, and consumption in whatever unit.
[[nodiscard]] bool sameRun(const core::Run& a, const core::Run& b);

/// Runs among which others are looked for. They must outlive it.
class KnownRuns {
public:
    explicit KnownRuns(std::span<const core::Run> runs);
    /// Null where none is the same.
    [[nodiscard]] const core::Run* find(const core::Run& run) const;

private:
    std::multimap<std::int64_t, const core::Run*> m_byStart;
};

/// Numbers of the runs of `existing` that are among `added`, too. Ascending.
[[nodiscard]] std::vector<int> alreadyThere(const core::Study& existing,
                                            std::span<const core::Run> added);

} // namespace bothways::storage
