// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/discard_dialog.h"

#include "app/desktop/look/words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

namespace bothways::app {
namespace {

constexpr const char* kOther = "other";

QString nameOf(core::Rule rule)
{
    const std::string_view name = core::ruleName(rule);
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

QString capitalised(const QString& text)
{
    return text.left(1).toUpper() + text.mid(1);
}

} // namespace

DiscardDialog::DiscardDialog(const Language& in, const std::vector<int>& runs,
                             const std::vector<core::Rule>& proposed, QWidget* parent)
    : QDialog(parent),
      m_reason(new QComboBox(this)),
      m_words(new QLineEdit(this)),
      m_buttons(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this))
{
    setObjectName("discardDialog");
    setWindowTitle(tr("Discard runs"));
    QStringList numbers;
    for (const int run : runs)
        numbers += QString::number(run);
    const QString sentence =
        runs.size() == 1 ? tr("Run %1 will not count. It stays in the list, with the reason.")
                         : tr("Runs %1 will not count. They stay in the list, with the reason.");
    auto* which = new QLabel(sentence.arg(numbers.join(", ")), this);
    which->setWordWrap(true);

    m_reason->setObjectName("reason");
    m_reason->setAccessibleName(tr("Reason"));
    m_reason->setMaxVisibleItems(25);
    const auto add = [&](core::Rule rule) {
        if (m_reason->findData(nameOf(rule)) < 0)
            m_reason->addItem(capitalised(shown(wording::ruleName(in, rule))), nameOf(rule));
    };
    for (const core::Rule rule : proposed)
        add(rule);
    if (!proposed.empty())
        m_reason->insertSeparator(m_reason->count());
    if (proposed.empty())
        m_reason->addItem(tr("Other reason, in words"), kOther);
    for (const core::Rule rule : core::allRules())
        add(rule);
    if (!proposed.empty())
        m_reason->addItem(tr("Other reason, in words"), kOther);
    m_reason->setCurrentIndex(0);
    m_words->setObjectName("evidence");
    m_words->setAccessibleName(tr("Evidence"));

    auto* form = new QFormLayout(this);
    form->addRow(which);
    form->addRow(tr("&Reason"), m_reason);
    form->addRow(tr("&Evidence"), m_words);
    form->addRow(m_buttons);
    m_buttons->button(QDialogButtonBox::Ok)->setText(tr("Discard"));
    m_buttons->button(QDialogButtonBox::Ok)->setObjectName("discardOk");
    m_buttons->button(QDialogButtonBox::Cancel)->setObjectName("discardCancel");
    connect(m_buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(m_buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_reason, &QComboBox::currentIndexChanged, this, &DiscardDialog::follow);
    connect(m_words, &QLineEdit::textChanged, this, &DiscardDialog::follow);
    follow();
    (proposed.empty() ? static_cast<QWidget*>(m_words) : m_reason)->setFocus();
    setMinimumWidth(fontMetrics().averageCharWidth() * 60);
}

core::Discard DiscardDialog::discard() const
{
    return {m_reason->currentData().toString().toStdString(),
            m_words->text().trimmed().toStdString()};
}

void DiscardDialog::follow()
{
    const bool other = m_reason->currentData().toString() == kOther;
    m_words->setPlaceholderText(other ? tr("What happened; needed here")
                                      : tr("What happened, if there is more to say"));
    m_buttons->button(QDialogButtonBox::Ok)
        ->setEnabled(!other || !m_words->text().trimmed().isEmpty());
}

} // namespace bothways::app
