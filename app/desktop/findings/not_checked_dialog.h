// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "core/screening/finding.h"

#include <QDialog>

#include <vector>

namespace bothways::app {

/// "1–4, 7": runs that follow one another as a range.
[[nodiscard]] QString runRanges(std::vector<int> runs);

/// Which rules said nothing about which runs, and why. Stands beside the work.
class NotCheckedDialog final : public QDialog {
    Q_OBJECT

public:
    NotCheckedDialog(const std::vector<core::NotChecked>& list, const UnitsShown& units,
                     QWidget* parent = nullptr);
};

} // namespace bothways::app
