// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "storage/study/study_file.h"

#include <filesystem>
#include <string>

namespace bothways::cli {

/// A run sheet into a study, with the recordings that its column 'trace' names: all or nothing.
/// @param date  of a sheet with times of day; empty: the study's
[[nodiscard]] Outcome importSheet(storage::StudyFile& file, const std::filesystem::path& sheet,
                                  const std::string& date, Surroundings& io);

} // namespace bothways::cli
