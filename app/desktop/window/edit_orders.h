// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace bothways::app {

class StudyDocument;
class StudyJobs;
class StudyPage;

/// Cut, copy and paste of the edit menu: they go to what has the keyboard, and to the runs where
/// that has no use for them.
namespace edit {

void copy(StudyPage& page);
void cut(StudyPage& page);
void paste(StudyPage& page, StudyDocument& document, StudyJobs& jobs);

} // namespace edit
} // namespace bothways::app
