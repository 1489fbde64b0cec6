// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"
#include "storage/study/study_file.h"

#include <optional>

/// How the values of a line of the history are said.
namespace bothways::storage {

/// "run 9: overspeed, rotor 3410 rpm"; empty where the line has nothing beside its kind. A line of
/// an earlier version, and one that a program noted in its own words, reads as it stands there.
[[nodiscard]] core::Message historyDetail(const HistoryEntry& entry);

/// Of a line "undo" or "redo": the change that was taken back or done again (kind and detail
/// alone).
[[nodiscard]] std::optional<HistoryEntry> changeBehind(const HistoryEntry& entry);

} // namespace bothways::storage
