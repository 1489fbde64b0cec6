// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "storage/loggers/trace_report.h"

#include <QString>
#include <QStringList>

namespace bothways::app {

/// "CSV, columns parted by semicolons, decimal commas": what a recording looks like.
[[nodiscard]] QString formWords(const storage::TracePreview& preview);
/// What an import brought, a sentence, and what was odd in the recording, a sentence each.
[[nodiscard]] QStringList reportWords(const storage::TraceReport& report, const UnitsShown& units);
/// What went wrong, as a sentence with its place: "Logger.csv:14: …".
[[nodiscard]] QString faultWords(const core::Error& error);

} // namespace bothways::app
