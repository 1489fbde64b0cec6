// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/study/study_file.h"

#include <string>
#include <vector>

/// A configuration or a direction under another name, in every run at once. Run by run it cannot be
/// done: the first would be a third name.
namespace bothways::storage {

enum class NameOf { configuration, direction };

struct Renaming {
    NameOf what = NameOf::configuration;
    std::string from; ///< as in the study; case does not matter
    std::string to;
};

/// All of them at once, so that two names can be exchanged; one change that undo takes back. The
/// baseline stays what it was, under its new name.
///
/// @return  an Error (badInput) where the study has no such name, a new name is empty or has line
///          breaks, or two names would be alike; nothing is changed then
[[nodiscard]] Outcome rename(StudyFile& study, const std::vector<Renaming>& renamings);

} // namespace bothways::storage
