// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/study/rule.h"
#include "core/study/study.h"

#include <QDialog>

#include <vector>

class QComboBox;
class QDialogButtonBox;
class QLabel;
class QLineEdit;

namespace bothways::app {

/// Why runs do not count: a reason from the list of rules, words, and a photo or a clip.
class DiscardDialog final : public QDialog {
    Q_OBJECT

public:
    /// @param runs      their numbers, for the sentence at the top
    /// @param proposed  what screening found in them; the first is chosen to begin with
    /// @param folder    of the study: a file below it is named relative to it
    DiscardDialog(const Language& in, const std::vector<int>& runs,
                  const std::vector<core::Rule>& proposed, const QString& folder,
                  QWidget* parent = nullptr);

    [[nodiscard]] const core::Discard& discard() const { return m_discard; }
    /// Reads the file; stays open, with the reason, where there is none.
    void accept() override;

private:
    [[nodiscard]] QWidget* buildFile();
    void follow();
    void chooseFile();
    void refuse(const QString& sentence);

    Language m_language;
    QString m_folder;
    core::Discard m_discard;
    QComboBox* m_reason;
    QLineEdit* m_words;
    QLineEdit* m_file = nullptr;
    QLineEdit* m_second = nullptr;
    QLabel* m_problem = nullptr;
    QDialogButtonBox* m_buttons;
};

} // namespace bothways::app
