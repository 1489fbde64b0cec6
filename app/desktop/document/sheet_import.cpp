// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/sheet_import.h"

#include "app/desktop/document/paths.h"
#include "app/desktop/document/study_files.h"
#include "app/desktop/look/said.h"
#include "storage/recordings/sheet_import.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QFile>
#include <QFileInfo>
#include <QFutureWatcher>
#include <QProgressDialog>
#include <QtConcurrent/QtConcurrentRun>

#include <stop_token>

namespace bothways::app {
namespace {

constexpr int kSteps = 1000;
constexpr int kPatience_ms = 400; // shorter work needs no dialog

struct SheetImport {
    Q_DECLARE_TR_FUNCTIONS(SheetImport)
};

/// Waits, with a dialog and without freezing the window, until the thread has brought all in.
core::Outcome importByAThread(const std::shared_ptr<storage::StudyFile>& connection,
                              const core::Study& runs, const QString& sheet, QWidget* parent,
                              const storage::SheetTraces& traces)
{
    std::stop_source stop;
    QProgressDialog dialog(
        SheetImport::tr("Reading the recordings of %1 …").arg(QFileInfo(sheet).fileName()),
        SheetImport::tr("Stop"), 0, kSteps, parent);
    dialog.setObjectName("sheetImportDialog");
    dialog.setWindowModality(Qt::WindowModal);
    dialog.setMinimumDuration(kPatience_ms);
    dialog.setAutoReset(false);
    dialog.setAutoClose(false);
    QObject::connect(&dialog, &QProgressDialog::canceled, &dialog,
                     [&stop] { stop.request_stop(); });

    storage::SheetImportOptions options;
    options.stop = stop.get_token();
    options.traces = traces;
    options.progress = [&dialog](const std::string& name, double done, double /*rate*/) {
        QMetaObject::invokeMethod(
            &dialog,
            [&dialog, name, done] {
                dialog.setLabelText(nameShown(name));
                dialog.setValue(static_cast<int>(done * (kSteps - 1)));
            },
            Qt::QueuedConnection);
    };
    using Imported = core::Result<std::vector<storage::ImportedRecording>>;
    QFutureWatcher<std::shared_ptr<Imported>> watcher;
    QEventLoop loop;
    QObject::connect(&watcher, &QFutureWatcherBase::finished, &loop, &QEventLoop::quit);
    watcher.setFuture(QtConcurrent::run([connection, &runs, file = toPath(sheet), options] {
        return std::make_shared<Imported>(storage::importSheet(*connection, runs, file, options));
    }));
    loop.exec();
    stop.request_stop();
    watcher.waitForFinished(); // also where the program was told to end meanwhile
    const Imported& imported = *watcher.result();
    return imported ? core::Outcome(core::Done{}) : core::Outcome(imported.error());
}

} // namespace

bool importSheet(StudyDocument& document, const core::Study& runs, const QString& sheet,
                 QWidget* parent, const storage::SheetTraces& traces)
{
    if (!storage::namesRecordings(runs))
        return document.importRuns(runs, QFileInfo(sheet).fileName());
    document.settleOptions();
    const auto connection = document.anotherConnection();
    if (!connection)
        return false;
    return document.takeForeignChange(importByAThread(connection, runs, sheet, parent, traces));
}

StudyDocument::Opened makeStudyFromSheet(const QString& sheet, const QDate& today, QWidget* parent,
                                         const storage::SheetOptions& said,
                                         const FindRecordings& where)
{
    const auto bytes = storage::readSheetBytes(toPath(sheet));
    if (!bytes)
        return bytes.error();
    storage::SheetOptions options = said;
    options.today = sheetOptions(today).today;
    const auto read = storage::parseRunSheet(bytes.value(), sheet.toStdString(), options);
    if (!read)
        return read.error();
    const core::Study& runs = read.value().study;
    const auto traces = where ? where(runs) : storage::SheetTraces();
    if (!traces)
        return traces.error();
    const QFileInfo info(sheet);
    const bool besideIt = QFileInfo(info.absolutePath()).isWritable();
    const QString folder = besideIt ? info.absolutePath() : studyFolder();
    const QString file = freeStudyFile(folder, info.completeBaseName());
    auto document = StudyDocument::create(file, runs.properties);
    if (!document || runs.runs.empty())
        return document;
    core::Outcome imported = document.value()->outcomeOf(
        [&] { return importSheet(*document.value(), runs, sheet, parent, traces.value()); });
    if (imported)
        imported = document.value()->keepColumns(bytes.value(), sheet, options);
    if (imported)
        return document;
    std::move(document).take().reset();
    QFile::remove(file); // half a study is none
    return imported.error();
}

} // namespace bothways::app
