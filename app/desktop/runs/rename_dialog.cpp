// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/rename_dialog.h"

#include "app/desktop/look/said.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace bothways::app {

RenameDialog::RenameDialog(Language in, const core::Study& study, Apply apply, QWidget* parent)
    : QDialog(parent),
      m_language(std::move(in)),
      m_apply(std::move(apply)),
      m_problem(new QLabel(this))
{
    setObjectName("renameDialog");
    setWindowTitle(tr("Names in all runs"));
    auto* why = new QLabel(tr("A name that was mistyped is changed in every run at once. The "
                              "history keeps what it was."),
                           this);
    why->setWordWrap(true);
    auto* form = new QFormLayout(this);
    form->addRow(why);
    for (const std::string& name : core::configurations(study))
        addField(form, storage::NameOf::configuration, name);
    for (const std::string& name : core::directions(study))
        addField(form, storage::NameOf::direction, name);
    m_problem->setObjectName("renameProblem");
    m_problem->setWordWrap(true);
    m_problem->hide();
    form->addRow(m_problem);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Rename"));
    buttons->button(QDialogButtonBox::Ok)->setObjectName("renameOk");
    form->addRow(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    if (!m_fields.empty()) {
        m_fields.front().line->setFocus();
        m_fields.front().line->selectAll();
    }
    setMinimumWidth(fontMetrics().averageCharWidth() * 60);
}

void RenameDialog::addField(QFormLayout* form, storage::NameOf what, const std::string& name)
{
    const QString from = QString::fromStdString(name);
    auto* line = new QLineEdit(from, this);
    const QString label = what == storage::NameOf::configuration
                              ? tr("Configuration “%1”").arg(from)
                              : tr("Direction “%1”").arg(from);
    line->setAccessibleName(label);
    form->addRow(label, line);
    m_fields.push_back({what, name, line});
}

void RenameDialog::accept()
{
    std::vector<storage::Renaming> changed;
    for (const Field& field : m_fields)
        if (const std::string to = field.line->text().trimmed().toStdString(); to != field.from)
            changed.push_back({field.what, field.from, to});
    if (!changed.empty())
        if (const core::Outcome renamed = m_apply(changed); !renamed) {
            m_problem->setText(sentenceOf(m_language, renamed.error()));
            m_problem->show();
            return;
        }
    QDialog::accept();
}

} // namespace bothways::app
