// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/study_document.h"
#include "storage/sheet/run_sheet.h"

#include <QDate>
#include <QString>

/// Making studies from nothing, from a run sheet and from the demo; writing them out.
namespace bothways::app {

/// A file name in `folder` that nothing has yet: "NAME.bothways", "NAME 2.bothways", ...
[[nodiscard]] QString freeStudyFile(const QString& folder, const QString& name);
/// Where studies go when nobody said: the user's documents, in a folder of ours; made when needed.
[[nodiscard]] QString studyFolder();

[[nodiscard]] storage::SheetOptions sheetOptions(const QDate& today);

/// An empty study of today in studyFolder().
[[nodiscard]] StudyDocument::Opened makeEmptyStudy(const QDate& today);
/// The demo, always from scratch and in a file of its own, so that nothing done to it lasts.
[[nodiscard]] StudyDocument::Opened makeDemoStudy(const QString& name = "demo");

/// The runs as a run sheet; whole or not at all.
[[nodiscard]] core::Outcome exportSheet(const core::Study& study, const QString& file,
                                        storage::csv::Form form = storage::csv::Form::plain);
/// A copy of the study file; whole or not at all, and never over another study.
[[nodiscard]] core::Outcome copyStudy(const QString& study, const QString& file);

} // namespace bothways::app
