// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/study_files.h"

#include "app/desktop/document/paths.h"
#include "app/desktop/document/written_files.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLocale>
#include <QStandardPaths>

namespace bothways::app {
namespace {

struct StudyFiles {
    Q_DECLARE_TR_FUNCTIONS(StudyFiles)
};

core::Error fileError(core::Message message, const QString& file)
{
    return {core::ErrorCode::studyFile, std::move(message), file.toStdString()};
}

/// As Qt names what the system answered.
core::Message problemOf(const QFileDevice& device)
{
    return core::Message::verbatim(device.errorString().toStdString());
}

} // namespace

QString freeStudyFile(const QString& folder, const QString& name)
{
    const QDir directory(folder);
    QString file = directory.filePath(name + ".bothways");
    for (int n = 2; QFileInfo::exists(file); ++n)
        file = directory.filePath(QString("%1 %2.bothways").arg(name).arg(n));
    return file;
}

QString studyFolder()
{
    const QString folder = QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
                               .filePath("Bothways");
    QDir().mkpath(folder);
    return folder;
}

storage::SheetOptions sheetOptions(const QDate& today)
{
    storage::SheetOptions options;
    options.today = today.toString(Qt::ISODate).toStdString();
    return options;
}

StudyDocument::Opened makeEmptyStudy(const QDate& today)
{
    core::StudyProperties properties;
    properties.date = today.toString(Qt::ISODate).toStdString();
    //: a study's name, with the day on which it was begun
    properties.name = StudyFiles::tr("Study of %1")
                          .arg(QLocale().toString(today, QLocale::LongFormat))
                          .toStdString();
    // Files sort by it, and a '/' could not be in it.
    const QString name = StudyFiles::tr("Study of %1").arg(today.toString(Qt::ISODate));
    return StudyDocument::create(freeStudyFile(studyFolder(), name), properties);
}

core::Outcome exportSheet(const core::Study& study, const QString& file, storage::csv::Form form)
{
    return writeFile(file, QByteArray::fromStdString(storage::writeRunSheet(study, form)));
}

core::Outcome copyStudy(const QString& study, const QString& file)
{
    if (QFileInfo(study) == QFileInfo(file))
        return fileError("a copy needs another name"_t, file);
    QFile source(study);
    if (!source.open(QIODevice::ReadOnly))
        return fileError(core::message("cannot be read: {}"_t, problemOf(source)), study);
    return writeFile(file, source.readAll(), study);
}

} // namespace bothways::app
