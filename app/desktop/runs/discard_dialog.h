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
class QLineEdit;

namespace bothways::app {

/// Why runs do not count: a reason from the list of rules, and words.
class DiscardDialog final : public QDialog {
    Q_OBJECT

public:
    /// @param runs      their numbers, for the sentence at the top
    /// @param proposed  what screening found in them; the first is chosen to begin with
    DiscardDialog(const Language& in, const std::vector<int>& runs,
                  const std::vector<core::Rule>& proposed, QWidget* parent = nullptr);

    [[nodiscard]] core::Discard discard() const;

private:
    void follow();

    QComboBox* m_reason;
    QLineEdit* m_words;
    QDialogButtonBox* m_buttons;
};

} // namespace bothways::app
