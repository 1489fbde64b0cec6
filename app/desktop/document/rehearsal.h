// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/study_document.h"
#include "storage/instruments/rig.h"

namespace bothways::app {

/// A drive to try everything with: a copy of the demo study, and a rig that plays the demo's
/// recordings one after the other, twenty times as fast as they were.
struct Rehearsal {
    StudyDocument::Opened study;
    storage::Rig rig;
};
[[nodiscard]] core::Result<Rehearsal> makeRehearsal();

} // namespace bothways::app
