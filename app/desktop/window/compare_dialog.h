// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/run_draft.h"
#include "app/desktop/document/studies_reader.h"
#include "app/desktop/pages/compare_page.h"

#include <QDialog>

#include <vector>

class QLabel;

namespace bothways::app {

class Preferences;

/// Several studies side by side: the open one, and those that are added from files. Files are only
/// read.
class CompareDialog final : public QDialog {
    Q_OBJECT

public:
    CompareDialog(ComparedStudy open, const Theme& theme, const UnitsShown& units, Clock clock,
                  QWidget* parent = nullptr);

    /// File dialogs begin in the folder that is kept there.
    void keepFolderIn(Preferences& preferences) { m_folders = &preferences; }
    /// Reads studies and sets them beside the others; says so where it cannot. The window goes on
    /// meanwhile.
    void addFiles(const QStringList& files);
    [[nodiscard]] bool isReading() const { return m_reader->isBusy(); }
    [[nodiscard]] ComparePage* page() const { return m_page; }

private:
    void chooseFiles();
    void add(const std::vector<ReadStudy>& studies);
    void say(const QString& sentence);

    Language m_language;
    Clock m_clock;
    StudiesReader* m_reader = nullptr;
    std::vector<ComparedStudy> m_studies;
    ComparePage* m_page = nullptr;
    QLabel* m_state = nullptr; ///< what is being read, or why it cannot be
    Preferences* m_folders = nullptr;
};

} // namespace bothways::app
