// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/report_desk.h"

#include "app/answer/noise.h"
#include "app/answer/same_runs.h"
#include "app/desktop/document/studies_reader.h"
#include "app/desktop/document/study_document.h"
#include "app/desktop/document/study_files.h"
#include "app/desktop/document/written_files.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/planning/plan_page.h"
#include "app/desktop/printing/report_pages.h"
#include "app/output/report_html.h"
#include "app/output/run_card.h"
#include "app/wording/findings.h"
#include "app/wording/history.h"
#include "storage/study/library_versions.h"
#include "storage/study/study_file.h"

#include <QDesktopServices>
#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QUrl>

#include <algorithm>

namespace bothways::app {
namespace {

/// The size of paper that a printer of this user is likely to hold.
QPageSize::PageSizeId usualPaper()
{
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? QPageSize::Letter
                                                                      : QPageSize::A4;
}

} // namespace

ReportDesk::ReportDesk(QWidget& window, MessageBar& messages, Preferences& preferences, Clock clock)
    : QObject(&window),
      m_window(window),
      m_messages(messages),
      m_preferences(preferences),
      m_clock(std::move(clock))
{
}

std::optional<ReportInput> ReportDesk::inputOf(const StudyDocument& document) const
{
    const auto result = document.result();
    if (!result || document.isBlind())
        return std::nullopt;
    const Language in = m_preferences.spoken();
    return ReportInput{
        result->study,
        result->analysis,
        result->screening,
        wording::historyLines(in, document.history()),
        result->sha256,
        QFileInfo(document.path()).fileName().toStdString(),
        wording::shownUnitOf(result->study),
        ReportInput::programAndLibraries(storage::libraryVersions() + ", Qt " + qVersion()),
        wording::spoiledRunsSentence(in, result->spoiled),
        in,
        document.liveRecordings(in)};
}

void ReportDesk::writeWhole(const QString& path, const QByteArray& bytes, const QString& study,
                            const QString& news)
{
    if (const core::Outcome written = writeFile(path, bytes, study); !written)
        m_messages.say(MessageBar::Kind::problem,
                       tr("%1 cannot be written: %2.")
                           .arg(path, whyNotWritten(m_preferences.spoken(), written.error())));
    else
        m_messages.say(
            MessageBar::Kind::news, news.arg(path),
            {tr("&Open it"), [path] { QDesktopServices::openUrl(QUrl::fromLocalFile(path)); }});
}

void ReportDesk::writePage(const QString& title, const QString& name, const QByteArray& html,
                           const QString& study)
{
    QFileDialog* dialog =
        saveDialog(m_window, m_preferences, title, tr("Web page (*.html)"), "html", name);
    connect(dialog, &QFileDialog::fileSelected, this, [this, html, study](const QString& path) {
        writeWhole(path, html, study, tr("The page is in %1."));
    });
    dialog->open();
}

void ReportDesk::chooseReport(const StudyDocument& document)
{
    if (const auto input = inputOf(document))
        writePage(tr("Save the report"), QFileInfo(document.path()).completeBaseName() + ".html",
                  QByteArray::fromStdString(reportHtml(*input)), document.path());
}

void ReportDesk::chooseReportPdf(const StudyDocument& document)
{
    const auto input = inputOf(document);
    if (!input)
        return;
    const QString a4 = tr("PDF on A4 paper (*.pdf)"), letter = tr("PDF on Letter paper (*.pdf)");
    QFileDialog* dialog =
        saveDialog(m_window, m_preferences, tr("Save the report as PDF"),
                   usualPaper() == QPageSize::A4 ? a4 + ";;" + letter : letter + ";;" + a4, "pdf",
                   QFileInfo(document.path()).completeBaseName() + ".pdf");
    // Made now, from what is shown now: `result` keeps alive what the input refers to.
    connect(dialog, &QFileDialog::fileSelected, this,
            [this, dialog, letter, input = *input, study = document.path(),
             result = document.result()](const QString& path) {
                const QPageSize size(dialog->selectedNameFilter() == letter ? QPageSize::Letter
                                                                            : QPageSize::A4);
                writeWhole(path, reportPdf(ReportPages(input, size), size), study,
                           tr("The report is in %1."));
            });
    dialog->open();
}

void ReportDesk::printReport(const StudyDocument& document)
{
    const auto input = inputOf(document);
    if (!input)
        return;
    auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setPageSize(QPageSize(usualPaper()));
    printer->setDocName(document.name());
    auto* dialog = new QPrintDialog(printer.get(), &m_window);
    dialog->setObjectName("printDialog");
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, qOverload<>(&QDialog::accepted), this,
            [this, printer, input = *input, result = document.result()] {
                if (!printReportOn(*printer, input))
                    m_messages.say(
                        MessageBar::Kind::problem,
                        tr("The report could not be printed on %1.").arg(printer->printerName()));
            });
    dialog->open();
}

void ReportDesk::chooseRunCard(const StudyDocument& document, const core::Plan& plan)
{
    RunCardInput asked = runCardOf(document.study(), plan);
    asked.language = m_preferences.spoken();
    const core::Result<std::string> card = runCardHtml(asked);
    if (!card)
        m_messages.say(m_preferences.spoken(), card.error());
    else
        writePage(tr("Save the run card"), tr("run card") + ".html",
                  QByteArray::fromStdString(card.value()), document.path());
}

void ReportDesk::chooseNoiseStudies(PlanPage& page)
{
    auto* dialog =
        new QFileDialog(&page, tr("Studies to take the noise from"), studyFolder(),
                        tr("Studies and run sheets (*.bothways *.csv *.tsv *.txt *.xlsx *.ods);;"
                           "All files (*)"));
    dialog->setObjectName("fileDialog");
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::ExistingFiles);
    rememberFolder(*dialog, m_preferences);
    connect(dialog, &QFileDialog::filesSelected, this,
            [this, &page](const QStringList& files) { readNoise(page, files); });
    dialog->open();
}

void ReportDesk::readNoise(PlanPage& page, const QStringList& files)
{
    m_messages.say(MessageBar::Kind::news,
                   tr("Reading %n study(s)…", nullptr, static_cast<int>(files.size())));
    auto* reader = new StudiesReader(&page); // what the page does not live to see is not read
    connect(reader, &StudiesReader::done, &page,
            [this, &page, reader](const std::vector<ReadStudy>& studies) {
                reader->deleteLater();
                takeNoise(page, studies);
            });
    reader->read(files, m_clock().date());
}

void ReportDesk::takeNoise(PlanPage& page, const std::vector<ReadStudy>& studies)
{
    std::vector<NoiseOfStudy> noises;
    QStringList names;
    GivenRuns given;
    core::Message twice;
    for (const ReadStudy& study : studies) {
        if (study.error)
            return m_messages.say(m_preferences.spoken(), *study.error);
        if (const core::Outcome once = given.take(study.given, twice); !once)
            return m_messages.say(m_preferences.spoken(), once.error());
        const QString name = QFileInfo(study.file).completeBaseName();
        auto noise = noiseOf(name.toStdString(), study.result->analysis, study.file.toStdString());
        if (!noise)
            return m_messages.say(m_preferences.spoken(), noise.error());
        noises.push_back(std::move(noise).take());
        names.append(name);
    }
    page.setNoise(pooledNoiseOf(noises), names);
    QString news = tr("The plan takes its noise from %1.")
                       .arg(names.join(tr(", ", "between names of studies")));
    if (!twice.empty())
        news += u' ' + asSentence(said(m_preferences.spoken(), twice));
    m_messages.say(MessageBar::Kind::news, news);
}

} // namespace bothways::app
