// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/discard_dialog.h"

#include "app/desktop/document/paths.h"
#include "app/desktop/look/said.h"
#include "app/desktop/look/units_shown.h"
#include "app/desktop/look/words.h"
#include "storage/bytes/evidence_file.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFormLayout>
#include <QGuiApplication>
#include <QHBoxLayout>
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

/// What was found comes first; where nothing was, that it is in words.
void fillReasons(QComboBox& box, const Language& in, const std::vector<core::Rule>& proposed)
{
    const auto add = [&](core::Rule rule) {
        if (box.findData(nameOf(rule)) < 0)
            box.addItem(withCapital(shown(wording::ruleName(in, rule))), nameOf(rule));
    };
    for (const core::Rule rule : proposed)
        add(rule);
    if (!proposed.empty())
        box.insertSeparator(box.count());
    if (proposed.empty())
        box.addItem(DiscardDialog::tr("Other reason, in words"), kOther);
    for (const core::Rule rule : core::allRules())
        add(rule);
    if (!proposed.empty())
        box.addItem(DiscardDialog::tr("Other reason, in words"), kOther);
}

} // namespace

DiscardDialog::DiscardDialog(const Language& in, const std::vector<int>& runs,
                             const std::vector<core::Rule>& proposed, const QString& folder,
                             QWidget* parent)
    : QDialog(parent),
      m_language(in),
      m_folder(folder),
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
    fillReasons(*m_reason, in, proposed);
    m_reason->setCurrentIndex(0);
    m_words->setObjectName("evidence");
    m_words->setAccessibleName(tr("Evidence"));

    auto* form = new QFormLayout(this);
    form->addRow(which);
    form->addRow(tr("&Reason"), m_reason);
    form->addRow(tr("&Evidence"), m_words);
    QWidget* file = buildFile();
    auto* fileLabel = new QLabel(tr("Photo or &clip"), this);
    fileLabel->setBuddy(m_file); // the row itself takes no keyboard
    form->addRow(fileLabel, file);
    m_problem = new QLabel(this);
    m_problem->setObjectName("discardProblem");
    m_problem->setWordWrap(true);
    m_problem->hide();
    form->addRow(m_problem);
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

/// A file, and the moment in it; the file stays where it is.
QWidget* DiscardDialog::buildFile()
{
    auto* row = new QWidget(this);
    auto* box = new QHBoxLayout(row);
    box->setContentsMargins(0, 0, 0, 0);
    m_file = new QLineEdit(row);
    m_file->setObjectName("evidenceFile");
    m_file->setAccessibleName(tr("Photo or clip"));
    m_file->setToolTip(tr("Name, size and SHA-256 are kept, not the file"));
    auto* choose = new QPushButton(tr("Choo&se…"), row);
    choose->setObjectName("chooseEvidence");
    choose->setAutoDefault(false);
    m_second = new QLineEdit(row);
    m_second->setObjectName("evidenceSecond");
    m_second->setAccessibleName(tr("At which second of the clip"));
    m_second->setMaximumWidth(fontMetrics().averageCharWidth() * 10);
    auto* at = new QLabel(tr("a&t second"), row);
    at->setBuddy(m_second);
    box->addWidget(m_file, 1);
    box->addWidget(choose);
    box->addWidget(at);
    box->addWidget(m_second);
    connect(choose, &QPushButton::clicked, this, &DiscardDialog::chooseFile);
    return row;
}

void DiscardDialog::chooseFile()
{
    auto* dialog = new QFileDialog(this, tr("Photo or clip"), m_folder);
    dialog->setObjectName("evidenceDialog");
    dialog->setFileMode(QFileDialog::ExistingFile);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QFileDialog::fileSelected, m_file, &QLineEdit::setText);
    dialog->open();
}

void DiscardDialog::refuse(const QString& sentence)
{
    m_problem->setText(sentence);
    m_problem->show();
}

void DiscardDialog::accept()
{
    m_discard = {m_reason->currentData().toString().toStdString(),
                 m_words->text().trimmed().toStdString()};
    const QString file = m_file->text().trimmed();
    const QString second = m_second->text().trimmed();
    const auto at = UnitsShown::parseNumber(second);
    if (!second.isEmpty() && (file.isEmpty() || !at || at->value < 0.0)) {
        refuse(file.isEmpty() ? tr("The second is one of a clip: choose the clip.")
                              : tr("Expected the second of the clip, such as 83.5."));
        return;
    }
    if (!file.isEmpty()) {
        QGuiApplication::setOverrideCursor(Qt::WaitCursor); // all of it is read
        auto evidence = storage::evidenceFile(
            toPath(QDir(m_folder).absoluteFilePath(file)).string(), toPath(m_folder));
        QGuiApplication::restoreOverrideCursor();
        if (!evidence) {
            refuse(sentenceWithPlace(m_language, evidence.error()));
            return;
        }
        if (at)
            evidence.value().at_s = at->value;
        m_discard.evidence = storage::withEvidenceFile(m_discard.evidence, evidence.value());
    }
    QDialog::accept();
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
