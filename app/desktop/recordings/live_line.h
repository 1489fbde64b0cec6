// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/study_document.h"
#include "app/wording/language.h"

namespace bothways::app {

/// "Recorded live with the rig car: 3 reconnects."; empty where the recording came as a file.
[[nodiscard]] QString liveLine(const Language& in, const StudyDocument& document,
                               core::RecordingId recording);

} // namespace bothways::app
