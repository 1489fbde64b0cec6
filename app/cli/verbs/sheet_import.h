// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "storage/recordings/run_traces.h"
#include "storage/sheet/run_sheet.h"
#include "storage/study/study_file.h"

#include <filesystem>
#include <string>

namespace bothways::cli {

/// A run sheet into a study, with the recordings that its column 'trace' names: all or nothing.
/// What is said of its columns is kept by the study, for the next sheet with this header.
/// @param date     of a sheet with times of day; empty: the study's
/// @param given    what the person said of columns, dates and sheet
/// @param traces   where its recordings are
[[nodiscard]] Outcome importSheet(storage::StudyFile& file, const std::filesystem::path& sheet,
                                  const std::string& date, const storage::SheetOptions& given,
                                  const storage::SheetTraces& traces, Surroundings& io);

} // namespace bothways::cli
