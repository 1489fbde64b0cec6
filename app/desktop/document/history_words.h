// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/study/study_file.h"

#include <QDateTime>
#include <QString>

namespace bothways::app {

/// A kind of change in words: "Run added".
[[nodiscard]] QString historyKind(const std::string& kind);
/// What was changed, in the user's language where the stored words are of a known form: "run 9: …".
/// The names of columns, and whatever else was kept, stay as they are.
[[nodiscard]] QString historyDetail(const storage::HistoryEntry& entry);
/// "Run 9 discarded: overspeed, 3410 rpm"-like line for menus, no longer than `most` characters.
[[nodiscard]] QString historyLine(const storage::HistoryEntry& entry, int most = 60);
/// The moment in local time.
[[nodiscard]] QDateTime historyTime(const storage::HistoryEntry& entry);

} // namespace bothways::app
