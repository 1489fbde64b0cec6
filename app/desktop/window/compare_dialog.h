// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/pages/compare_page.h"

#include <QDialog>

#include <vector>

class QLabel;

namespace bothways::app {

/// Several studies side by side: the open one, and those that are added from files. Files are only
/// read.
class CompareDialog final : public QDialog {
    Q_OBJECT

public:
    CompareDialog(ComparedStudy open, const Theme& theme, const UnitsShown& units,
                  QWidget* parent = nullptr);

    /// Reads a study and sets it beside the others; says so where it cannot.
    void addFile(const QString& file);
    [[nodiscard]] ComparePage* page() const { return m_page; }

private:
    void chooseFiles();

    Language m_language;
    std::vector<ComparedStudy> m_studies;
    ComparePage* m_page = nullptr;
    QLabel* m_problem = nullptr;
};

} // namespace bothways::app
