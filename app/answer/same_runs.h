// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/input.h"
#include "core/base/result.h"

#include <cstddef>
#include <filesystem>
#include <string>
#include <vector>

/// Runs that are given twice under two names would count twice.
namespace bothways::app {

/// What was read so far for one call, and notices more of the same.
class GivenRuns {
public:
    /// An Error (wrongUse) where the file was taken in already. A copy of it, or a study beside the
    /// sheet that it was made from, may be meant, and is said: by its content, whatever its name,
    /// and by its runs (storage/sheet/known_runs.h).
    /// @param remark  what is to be said; untouched where nothing is
    [[nodiscard]] core::Outcome take(const Input& input, core::Message& remark);

private:
    struct Given {
        std::string name;
        std::filesystem::path path;
        std::string sha256;
        std::vector<core::Run> runs;
    };
    [[nodiscard]] static std::size_t shared(const Given& before, const Given& now);

    std::vector<Given> m_given;
};

} // namespace bothways::app
