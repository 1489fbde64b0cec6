// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"
#include "storage/recordings/run_traces.h"

class QString;
class QWidget;

namespace bothways::app {

class Preferences;

/// Where the recordings are that a sheet names. Where they are not beside it, a person is asked for
/// their folder, until all are there.
/// @return  an Error (stopped) where nobody says: then nothing is to come in
[[nodiscard]] core::Result<storage::SheetTraces> askForRecordings(const core::Study& runs,
                                                                  const QString& sheet,
                                                                  Preferences& preferences,
                                                                  QWidget& parent);

} // namespace bothways::app
