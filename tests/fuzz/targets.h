// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

/// Every reader of what comes from outside, fed with bytes. A target gives back what did not hold
/// together; a crash, a sanitizer's word or endless work is for whoever calls to notice.
namespace bothways::tests {

struct FuzzTarget {
    std::string_view name;                            ///< and of its folder in tests/storage/corpus
    std::string_view (*feed)(std::string_view bytes); ///< empty: all is well
};

[[nodiscard]] std::span<const FuzzTarget> fuzzTargets();

} // namespace bothways::tests
