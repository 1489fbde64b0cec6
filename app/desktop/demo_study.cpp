// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/study_files.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

namespace bothways::app {

StudyDocument::Opened makeDemoStudy()
{
    return core::Error{core::ErrorCode::studyFile, "there is no demo yet", {}};
}

} // namespace bothways::app
