// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "storage/study/study_file.h"

#include <string>
#include <string_view>
#include <vector>

/// A study's history in words.
namespace bothways::app::wording {

/// "Run added".
/// @param kind  as the study file has it: "add_run"
[[nodiscard]] std::string historyKind(const Language& in, std::string_view kind);
/// A line of the history: "Run added: run 13: A out ...".
[[nodiscard]] std::string historyLine(const Language& in, const storage::HistoryEntry& entry);
/// A line each, with its time, as the report has them.
[[nodiscard]] std::vector<std::string>
historyLines(const Language& in, const std::vector<storage::HistoryEntry>& history);
[[nodiscard]] std::string historySentence(const Language& in, std::string_view kind,
                                          std::string_view detail);

} // namespace bothways::app::wording
