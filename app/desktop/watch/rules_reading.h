// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/rule.h"

#include <string>
#include <string_view>
#include <vector>

namespace bothways::app {

/// The rules that read a channel, its part left aside. None: it is recorded, and that is all.
[[nodiscard]] std::vector<core::Rule> rulesReading(std::string_view channel);

/// A rule that can say nothing about what comes from these channels, and what it lacks.
struct RuleWithout {
    core::Rule rule;
    std::string channel;
};
[[nodiscard]] std::vector<RuleWithout> rulesWithout(const std::vector<std::string>& channels);

} // namespace bothways::app
