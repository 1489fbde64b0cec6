// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/base/result.h"
#include "core/recording/runs_by.h"

#include <QWidget>

class QComboBox;

namespace bothways::app {

class GateRow;

/// What begins and ends a run while a rig records, with the gates where it goes by them.
class RunsByForm final : public QWidget {
    Q_OBJECT

public:
    explicit RunsByForm(const Language& language, QWidget* parent = nullptr);
    void setRuns(const core::RunsBy& runs);
    /// As chosen; an Error says which gate is no place. Gates that no run goes by are not kept.
    [[nodiscard]] core::Result<core::RunsBy> runs() const;

private:
    [[nodiscard]] core::RunsBy::Way way() const;
    void showGates();

    QComboBox* m_ways; ///< in the order of core::RunsBy::Way
    GateRow* m_gates;
};

} // namespace bothways::app
