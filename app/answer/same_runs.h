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

/// A study or run sheet as it was given.
struct GivenStudy {
    std::string name; ///< of its file
    std::filesystem::path path;
    std::string sha256; ///< Material::sha256
    std::vector<core::Run> runs;
};
[[nodiscard]] GivenStudy givenStudy(const Input& input);

/// What was read so far to be taken together, and notices more of the same.
class GivenRuns {
public:
    /// An Error (wrongUse) where the file was taken in already. A copy of it, or a study beside the
    /// sheet that it was made from, may be meant, and is said: by its content, whatever its name,
    /// and by its runs (storage/sheet/known_runs.h).
    /// @param remark  what is to be said; untouched where nothing is
    [[nodiscard]] core::Outcome take(GivenStudy now, core::Message& remark);

private:
    std::vector<GivenStudy> m_given;
};

} // namespace bothways::app
