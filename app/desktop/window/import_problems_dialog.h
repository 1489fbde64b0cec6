// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/base/result.h"

#include <QDialog>

namespace bothways::app {

/// Every line of a run sheet that could not be read, in one list. Stands beside the work: the sheet
/// can be mended and imported again while it is open.
class ImportProblemsDialog final : public QDialog {
    Q_OBJECT

public:
    ImportProblemsDialog(const Language& in, const QString& file, const core::Error& error,
                         QWidget* parent = nullptr);

signals:
    void importAgain(const QString& file);
};

} // namespace bothways::app
