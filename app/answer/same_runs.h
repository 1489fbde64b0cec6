// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/input.h"
#include "core/base/result.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <tuple>
#include <vector>

/// Runs that are given twice under two names would count twice.
namespace bothways::app {

/// What was read so far for one call, and refuses more of the same.
class GivenRuns {
public:
    /// An Error (wrongUse) where the runs of `input` were taken in already: the same file, a copy
    /// of it, or a study and the sheet that it was made from. Runs are the same when start,
    /// direction, configuration and consumption are; a study is, when more than half of the runs of
    /// both are.
    /// @param remark  what is to be said where fewer are; empty where none
    [[nodiscard]] core::Outcome take(const Input& input, core::Message& remark);

private:
    using Mark = std::tuple<std::int64_t, std::string, std::string, double>;
    struct Given {
        std::string name, sha256;
        std::vector<Mark> runs; ///< sorted
    };
    [[nodiscard]] static std::vector<Mark> marksOf(const core::Study& study);
    [[nodiscard]] static std::size_t shared(const std::vector<Mark>& a, const std::vector<Mark>& b);

    std::vector<Given> m_given;
};

} // namespace bothways::app
