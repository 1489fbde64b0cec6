// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/study_document.h"
#include "storage/recordings/run_traces.h"

#include <QDate>

#include <functional>

class QWidget;

/// A run sheet into the window, with the recordings that its column 'trace' names: as the command
/// line takes it.
namespace bothways::app {

using FindRecordings = std::function<core::Result<storage::SheetTraces>(const core::Study& runs)>;

/// Brings the runs of a sheet, and their recordings, into the open study: all or nothing.
/// Recordings are read by a thread of their own; a dialog over `parent` shows how far it is and can
/// stop it.
/// @param runs    what was read from `sheet`
/// @param traces  where its recordings are
/// @return  whether it is in; if not, the document has emitted failed()
bool importSheet(StudyDocument& document, const core::Study& runs, const QString& sheet,
                 QWidget* parent, const storage::SheetTraces& traces = {});

/// A study from a run sheet, beside it where that folder takes it, else in studyFolder().
/// @param said   of its columns; its dates are those of `today`
/// @param where  says where its recordings are, or why nothing is made; none: beside it
[[nodiscard]] StudyDocument::Opened makeStudyFromSheet(const QString& sheet, const QDate& today,
                                                       QWidget* parent = nullptr,
                                                       const storage::SheetOptions& said = {},
                                                       const FindRecordings& where = {});

} // namespace bothways::app
