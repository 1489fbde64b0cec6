// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/recordings_folder.h"

#include "app/desktop/document/paths.h"
#include "app/desktop/document/written_files.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>

namespace bothways::app {
namespace {

constexpr int kNamed = 3; // the others are many

struct RecordingsFolder {
    Q_DECLARE_TR_FUNCTIONS(RecordingsFolder)
};

/// The names of what is not there.
QStringList namesOf(const core::Error& missing)
{
    QStringList names{QFileInfo(nameShown(missing.where.file)).fileName()};
    for (const core::Error& other : missing.others)
        names += QFileInfo(nameShown(other.where.file)).fileName();
    return names;
}

bool wantsToChoose(const QStringList& missing, const QString& sheet, const QString& looked,
                   QWidget& parent)
{
    QStringList some = missing.mid(0, kNamed);
    if (missing.size() > kNamed)
        some += QStringLiteral("…");
    const auto count = static_cast<int>(missing.size());
    const QString what =
        looked.isEmpty()
            ? RecordingsFolder::tr("%n recording(s) that %1 names are not there.", nullptr, count)
                  .arg(QFileInfo(sheet).fileName())
            : RecordingsFolder::tr("%n recording(s) are not in %1 either.", nullptr, count)
                  .arg(looked);
    QMessageBox box(QMessageBox::Question, RecordingsFolder::tr("Where are the recordings?"), what,
                    QMessageBox::Cancel, &parent);
    box.setObjectName("recordingsMissing");
    box.setTextFormat(Qt::PlainText);
    box.setInformativeText(some.join(u'\n'));
    QPushButton* choose =
        box.addButton(RecordingsFolder::tr("&Choose their folder…"), QMessageBox::AcceptRole);
    choose->setObjectName("chooseRecordingsFolder");
    box.setDefaultButton(choose);
    box.exec();
    return box.clickedButton() == static_cast<QAbstractButton*>(choose);
}

} // namespace

core::Result<storage::SheetTraces> askForRecordings(const core::Study& runs, const QString& sheet,
                                                    Preferences& preferences, QWidget& parent)
{
    storage::SheetTraces where;
    const core::Error nobodySays{core::ErrorCode::stopped,
                                 "stopped before the end; nothing was imported"_t,
                                 QFileInfo(sheet).fileName().toStdString()};
    QString looked;
    while (true) {
        const auto files = storage::traceFiles(runs, toPath(sheet), where);
        if (files)
            return where;
        if (!wantsToChoose(namesOf(files.error()), sheet, looked, parent))
            return nobodySays;
        QFileDialog dialog(&parent, RecordingsFolder::tr("Folder of the recordings"),
                           QFileInfo(sheet).absolutePath());
        dialog.setObjectName("fileDialog");
        dialog.setFileMode(QFileDialog::Directory);
        dialog.setOption(QFileDialog::ShowDirsOnly);
        rememberFolder(dialog, preferences);
        if (dialog.exec() != QDialog::Accepted)
            return nobodySays;
        looked = dialog.selectedFiles().value(0);
        where.folder = toPath(looked);
    }
}

} // namespace bothways::app
