// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "storage/study/study_file.h"

#include <QDateTime>
#include <QString>

namespace bothways::app {

/// A kind of change in words: "Run added".
[[nodiscard]] QString historyKind(const Language& in, const std::string& kind);
/// What was changed: "run 9: …". Names of columns, and lines of earlier versions, stay as they are.
[[nodiscard]] QString historyDetail(const Language& in, const storage::HistoryEntry& entry);
/// Both, for menus: "Discarded: run 9: overspeed, rotor 3410 rpm", no longer than `most`
/// characters.
[[nodiscard]] QString historyLine(const Language& in, const storage::HistoryEntry& entry,
                                  int most = 60);
/// The line without what it says of consumption, of a control vehicle's too, or of the verdict, for
/// as long as those are hidden.
[[nodiscard]] storage::HistoryEntry withoutConsumption(const storage::HistoryEntry& entry);
/// The moment in local time.
[[nodiscard]] QDateTime historyTime(const storage::HistoryEntry& entry);

} // namespace bothways::app
