// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/study/study.h"
#include "storage/study/renaming.h"

#include <QDialog>

#include <functional>
#include <vector>

class QFormLayout;
class QLabel;
class QLineEdit;

namespace bothways::app {

/// The names of a study's configurations and directions, to be changed in all runs at once. Stays
/// open, with the reason, where they cannot be.
class RenameDialog final : public QDialog {
    Q_OBJECT

public:
    using Apply = std::function<core::Outcome(const std::vector<storage::Renaming>&)>;
    RenameDialog(Language in, const core::Study& study, Apply apply, QWidget* parent = nullptr);

    void accept() override;

private:
    struct Field {
        storage::NameOf what;
        std::string from;
        QLineEdit* line;
    };
    void addField(QFormLayout* form, storage::NameOf what, const std::string& name);

    Language m_language;
    Apply m_apply;
    std::vector<Field> m_fields;
    QLabel* m_problem = nullptr;
};

} // namespace bothways::app
