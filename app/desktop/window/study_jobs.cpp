// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/study_jobs.h"

#include "app/desktop/document/paths.h"
#include "app/desktop/document/sheet_import.h"
#include "app/desktop/document/study_files.h"
#include "app/desktop/document/written_files.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/recordings/recordings_folder.h"
#include "app/desktop/runs/rename_dialog.h"
#include "app/desktop/runs/run_list_model.h"
#include "app/desktop/runs/walk_dialog.h"
#include "app/desktop/window/columns_dialog.h"
#include "app/desktop/window/compare_dialog.h"
#include "app/desktop/window/import_problems_dialog.h"
#include "app/desktop/window/study_properties_dialog.h"
#include "core/study/properties.h"
#include "storage/recordings/sheet_import.h"

#include <QClipboard>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QMimeData>

#include <algorithm>

namespace bothways::app {

QString studyFilter()
{
    return StudyJobs::tr("Studies (*.bothways);;All files (*)");
}

QString sheetFilter()
{
    return StudyJobs::tr("Run sheets (*.csv *.tsv *.txt *.xlsx *.ods);;All files (*)");
}

StudyJobs::StudyJobs(QWidget& window, MessageBar& messages, Preferences& preferences, Clock clock)
    : QObject(&window),
      m_window(window),
      m_messages(messages),
      m_preferences(preferences),
      m_clock(std::move(clock))
{
}

void StudyJobs::say(const core::Outcome& outcome, const QString& news)
{
    if (!outcome)
        m_messages.say(m_preferences.spoken(), outcome.error());
    else
        m_messages.say(MessageBar::Kind::news, news);
}

void StudyJobs::importSheet(StudyDocument& document, const QString& file, FileIs is)
{
    const core::Study& study = document.study();
    const auto bytes = storage::readSheetBytes(toPath(file));
    if (is == FileIs::unknown &&
        storage::isRecordingInstead(toPath(file), bytes ? bytes.value() : std::string())) {
        offerRecording(file, tr("&Import it as a recording…"),
                       [this, file] { emit importWanted(file, FileIs::sheet); });
        return;
    }
    if (!bytes) {
        showSheetFaults(file, bytes.error());
        return;
    }
    const auto options =
        askColumns(m_preferences.spoken(), bytes.value(), file,
                   document.keptColumns(bytes.value(), file, sheetOptions(m_clock().date())),
                   &study, document.isBlind(), &m_window);
    if (!options)
        return;
    const auto sheet = storage::parseRunSheet(bytes.value(), file.toStdString(), *options, &study);
    if (!sheet) {
        showSheetFaults(file, sheet.error());
        return;
    }
    const QString name = QFileInfo(file).fileName();
    core::Study together = study;
    const auto& added = sheet.value().study.runs;
    together.runs.insert(together.runs.end(), added.begin(), added.end());
    if (const core::Outcome known = core::checkBaseline(together); !known) {
        m_messages.say(m_preferences.spoken(),
                       {known.error().code, known.error().message, name.toStdString()});
        return;
    }
    const auto count = static_cast<int>(added.size());
    const auto traces = askForRecordings(sheet.value().study, file, m_preferences, m_window);
    if (!traces) {
        m_messages.say(m_preferences.spoken(), traces.error());
        return;
    }
    if (!app::importSheet(document, sheet.value().study, file, &m_window, traces.value()))
        return;
    if (const core::Outcome kept = document.keepColumns(bytes.value(), file, *options); !kept) {
        m_messages.say(m_preferences.spoken(), kept.error());
        return;
    }
    QString news = tr("%n run(s) came from %1.", nullptr, count).arg(name);
    if (const auto twice = static_cast<int>(sheet.value().already_there.size()); twice > 0)
        news += u' ' + tr("%n run(s) of the sheet were there already and are in the study twice "
                          "now; Undo takes the import back.",
                          nullptr, twice);
    m_messages.say(MessageBar::Kind::news, news);
}

/// Runs from elsewhere get numbers of this study; the one baseline has to hold for all.
core::Outcome StudyJobs::add(StudyDocument& document, core::Study runs, const QString& source)
{
    const core::Study& study = document.study();
    int highest = 0;
    for (const core::Run& run : study.runs)
        highest = std::max(highest, run.number);
    core::Study together = study;
    for (core::Run& run : runs.runs) {
        run.number = ++highest;
        run.pair_mark.clear(); // ties belong to the study that they were made in
        run.trace.clear();
        const auto faults = storage::faultsOf(together, run);
        if (!faults.empty())
            return faults.front();
        together.runs.push_back(run);
    }
    if (const core::Outcome known = core::checkBaseline(together); !known)
        return known;
    return document.outcomeOf([&] { return document.importRuns(runs, source); });
}

void StudyJobs::offerRecording(const QString& file, const QString& order,
                               const std::function<void()>& asSheet)
{
    m_messages.say(MessageBar::Kind::problem,
                   tr("%1 looks like a logger's recording and not like a run sheet.")
                       .arg(QFileInfo(file).fileName()),
                   {order, [this, file] { emit recordingWanted(file); }},
                   {tr("It is a &run sheet…"), asSheet});
}

void StudyJobs::pasteRuns(StudyDocument& document)
{
    const QMimeData* data = QGuiApplication::clipboard()->mimeData();
    const QString source = tr("the clipboard");
    const QByteArray ours = data ? data->data(kRunsMime) : QByteArray();
    const std::string text =
        ours.isEmpty() ? (data ? data->text() : QString()).toStdString() : ours.toStdString();
    if (QString::fromStdString(text).trimmed().isEmpty()) {
        m_messages.say(MessageBar::Kind::problem,
                       tr("There is no text in the clipboard. Copy runs in a study, or lines of a "
                          "spreadsheet together with the header."));
        return;
    }
    storage::SheetOptions known =
        document.keptColumns(text, source, sheetOptions(m_clock().date()));
    known.date = document.study().properties.date;
    const auto options = askColumns(m_preferences.spoken(), text, tr("Clipboard"), known, nullptr,
                                    document.isBlind(), &m_window);
    if (!options)
        return;
    const auto sheet = storage::parseRunSheet(text, source.toStdString(), *options);
    if (!sheet) {
        m_messages.say(m_preferences.spoken(), sheet.error());
        return;
    }
    const auto count = static_cast<int>(sheet.value().study.runs.size());
    core::Outcome outcome = add(document, sheet.value().study, source);
    if (outcome)
        outcome = document.keepColumns(text, source, *options);
    say(outcome, tr("%n run(s) came from %1.", nullptr, count).arg(source));
}

void StudyJobs::showSheetFaults(const QString& file, const core::Error& error)
{
    if (error.others.empty() && error.code != core::ErrorCode::badInput) {
        m_messages.say(m_preferences.spoken(), error);
        return;
    }
    auto* dialog = new ImportProblemsDialog(m_preferences.spoken(), file, error, &m_window);
    connect(dialog, &ImportProblemsDialog::importAgain, this,
            [this](const QString& mended) { emit importWanted(mended, FileIs::unknown); });
    dialog->show();
}

void StudyJobs::chooseExport(const StudyDocument& document)
{
    const QString guarded = tr("Run sheets in which a spreadsheet finds no formula (*.csv)");
    QFileDialog* dialog =
        saveDialog(m_window, m_preferences, tr("Export the run sheet"),
                   tr("Run sheets (*.csv);;All files (*)") + ";;" + guarded, "csv");
    connect(dialog, &QFileDialog::fileSelected, &document,
            [this, &document, dialog, guarded](const QString& file) {
                const auto form = dialog->selectedNameFilter() == guarded
                                      ? storage::csv::Form::forSpreadsheet
                                      : storage::csv::Form::plain;
                say(exportSheet(document.study(), file, form),
                    tr("The run sheet is in %1.").arg(file));
            });
    dialog->open();
}

void StudyJobs::chooseCopy(StudyDocument& document)
{
    QFileDialog* dialog = saveDialog(m_window, m_preferences, tr("Save a copy of the study"),
                                     studyFilter(), "bothways");
    connect(dialog, &QFileDialog::fileSelected, &document, [this, &document](const QString& file) {
        document.settleOptions();
        say(copyStudy(document.path(), file), tr("A copy is in %1.").arg(file));
    });
    dialog->open();
}

void StudyJobs::compare(const StudyDocument& document)
{
    const auto result = document.result();
    if (!result)
        return;
    const QString name = nameShown(result->study.properties.name);
    auto* dialog = new CompareDialog(
        {name.isEmpty() ? QFileInfo(document.path()).completeBaseName() : name,
         result,
         {QFileInfo(document.path()).fileName().toStdString(), toPath(document.path()),
          result->sha256, result->study.runs}},
        Theme::of(m_window.palette()), m_preferences.units(document.isElectric()), m_clock,
        &m_window);
    dialog->keepFolderIn(m_preferences);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void StudyJobs::editProperties(StudyDocument& document, const QString& page)
{
    document.settleOptions();
    auto* dialog = new StudyPropertiesDialog(
        document.study(), m_preferences.units(document.isElectric()),
        [&document](const core::StudyProperties& properties) {
            return document.outcomeOf([&] { return document.setProperties(properties); });
        },
        &m_window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->showPage(page);
    dialog->open();
}

void StudyJobs::walkRound(StudyDocument& document)
{
    auto* dialog = new WalkDialog(document, m_preferences, m_clock, &m_window);
    connect(dialog, &WalkDialog::noted, this,
            [this](const QString& sentence) { m_messages.say(MessageBar::Kind::news, sentence); });
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void StudyJobs::renameInAllRuns(StudyDocument& document)
{
    auto* dialog = new RenameDialog(
        m_preferences.spoken(), document.study(),
        [&document](const std::vector<storage::Renaming>& renamings) {
            return document.outcomeOf([&] { return document.rename(renamings); });
        },
        &m_window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

} // namespace bothways::app
