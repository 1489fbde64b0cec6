// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/written_files.h"

#include "app/desktop/document/paths.h"
#include "app/desktop/document/study_files.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "storage/bytes/written_file.h"

#include <QFileDialog>
#include <QFileInfo>

namespace bothways::app {

void rememberFolder(QFileDialog& dialog, Preferences& preferences)
{
    if (const QString folder = preferences.lastFolder(); !folder.isEmpty())
        dialog.setDirectory(folder);
    QObject::connect(&dialog, &QFileDialog::filesSelected, &preferences,
                     [&preferences](const QStringList& files) {
                         if (!files.isEmpty())
                             preferences.setLastFolder(QFileInfo(files.front()).absolutePath());
                     });
}

QFileDialog* saveDialog(QWidget& window, Preferences& preferences, const QString& title,
                        const QString& filter, const QString& suffix, const QString& name)
{
    auto* dialog = new QFileDialog(&window, title, studyFolder(), filter);
    dialog->setObjectName("fileDialog");
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setDefaultSuffix(suffix);
    rememberFolder(*dialog, preferences);
    if (!name.isEmpty())
        dialog->selectFile(name);
    return dialog;
}

core::Outcome writeFile(const QString& file, const QByteArray& bytes, const QString& study,
                        IfThere ifThere, std::string_view ownMark)
{
    storage::WriteRules rules;
    rules.replace = ifThere == IfThere::replaced;
    rules.ownMark = ownMark;
    if (!study.isEmpty())
        rules.inputs.push_back(toPath(study));
    return storage::writeWholeFile(
        toPath(file), {bytes.constData(), static_cast<std::size_t>(bytes.size())}, rules);
}

QString whyNotWritten(const Language& in, const core::Error& error)
{
    const auto& reasons = error.message.values; // "cannot be written: {}"
    return said(in, reasons.empty() ? error.message : core::message("{}"_t, reasons.front()));
}

} // namespace bothways::app
