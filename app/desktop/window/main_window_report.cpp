// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/main_window.h"

#include "app/answer/input.h"
#include "app/desktop/document/paths.h"
#include "app/desktop/document/study_files.h"
#include "app/desktop/look/message_bar.h"
#include "app/desktop/planning/plan_page.h"
#include "app/desktop/printing/report_pages.h"
#include "app/desktop/window/result_tabs.h"
#include "app/output/report_html.h"
#include "app/output/run_card.h"
#include "app/wording/findings.h"
#include "app/wording/history.h"
#include "storage/sheet/study_digest.h"
#include "storage/study/library_versions.h"
#include "storage/study/study_file.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QSaveFile>

/// Pages that leave the program: the report, the run card; and the noise that comes in from
/// studies.

#include <algorithm>

namespace bothways::app {
namespace {

QFileDialog* saveDialog(QWidget* parent, const QString& title, const QString& filter,
                        const QString& name)
{
    auto* dialog = new QFileDialog(parent, title, studyFolder(), filter);
    dialog->setObjectName("fileDialog");
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setDefaultSuffix(QFileInfo(name).suffix());
    dialog->selectFile(name);
    return dialog;
}

/// The size of paper that a printer of this user is likely to hold.
QPageSize::PageSizeId usualPaper()
{
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? QPageSize::Letter
                                                                      : QPageSize::A4;
}

} // namespace

std::optional<ReportInput> MainWindow::reportInput() const
{
    const auto result = m_document->result();
    if (!result || m_document->isBlind())
        return std::nullopt;
    std::vector<std::string> lines;
    for (const storage::HistoryEntry& entry : m_document->history())
        lines.push_back(entry.at + " " +
                        wording::historySentence(Language::english(), entry.kind, entry.detail) +
                        (entry.undone ? " (undone)" : ""));
    return ReportInput{
        result->study,
        result->analysis,
        result->screening,
        std::move(lines),
        storage::sha256OfStudy(result->study),
        QFileInfo(m_document->path()).fileName().toStdString(),
        wording::shownUnitOf(result->study),
        ReportInput::programAndLibraries(storage::libraryVersions() + ", Qt " + qVersion()),
        wording::spoiledRunsSentence(
            Language::english(), result->analysis,
            storage::withoutOverruled(result->screening, m_document->overruled()))};
}

void MainWindow::writeWhole(const QString& path, const QByteArray& bytes, const QString& news)
{
    // Whole or not at all: written beside the target, then put in its place.
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        m_messages->say(MessageBar::Kind::problem,
                        tr("%1 cannot be written: %2.").arg(path, file.errorString()));
    else
        m_messages->say(MessageBar::Kind::news, news.arg(path));
}

void MainWindow::writePage(const QString& title, const QString& name, const QByteArray& html)
{
    QFileDialog* dialog = saveDialog(this, title, tr("Web page (*.html)"), name);
    connect(dialog, &QFileDialog::fileSelected, this, [this, html](const QString& path) {
        writeWhole(path, html, tr("The page is in %1."));
    });
    dialog->open();
}

void MainWindow::chooseReport()
{
    if (const auto input = reportInput())
        writePage(tr("Save the report"), QFileInfo(m_document->path()).completeBaseName() + ".html",
                  QByteArray::fromStdString(reportHtml(*input)));
}

void MainWindow::chooseReportPdf()
{
    const auto input = reportInput();
    if (!input)
        return;
    const QString a4 = tr("PDF on A4 paper (*.pdf)"), letter = tr("PDF on Letter paper (*.pdf)");
    QFileDialog* dialog =
        saveDialog(this, tr("Save the report as PDF"),
                   usualPaper() == QPageSize::A4 ? a4 + ";;" + letter : letter + ";;" + a4,
                   QFileInfo(m_document->path()).completeBaseName() + ".pdf");
    // Made now, from what is shown now: `result` keeps alive what the input refers to.
    connect(
        dialog, &QFileDialog::fileSelected, this,
        [this, dialog, letter, input = *input, result = m_document->result()](const QString& path) {
            const QPageSize size(dialog->selectedNameFilter() == letter ? QPageSize::Letter
                                                                        : QPageSize::A4);
            writeWhole(path, reportPdf(ReportPages(input, size), size), tr("The report is in %1."));
        });
    dialog->open();
}

void MainWindow::printReport()
{
    const auto input = reportInput();
    if (!input)
        return;
    auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setPageSize(QPageSize(usualPaper()));
    printer->setDocName(m_document->name());
    auto* dialog = new QPrintDialog(printer.get(), this);
    dialog->setObjectName("printDialog");
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, qOverload<>(&QDialog::accepted), this,
            [this, printer, input = *input, result = m_document->result()] {
                if (!printReportOn(*printer, input))
                    m_messages->say(
                        MessageBar::Kind::problem,
                        tr("The report could not be printed on %1.").arg(printer->printerName()));
            });
    dialog->open();
}

void MainWindow::chooseRunCard(const core::Plan& plan)
{
    const core::Result<std::string> card = runCardHtml(runCardOf(m_document->study(), plan));
    if (!card)
        say(card.error());
    else
        writePage(tr("Save the run card"), tr("run card") + ".html",
                  QByteArray::fromStdString(card.value()));
}

void MainWindow::chooseNoiseStudies()
{
    auto* dialog = new QFileDialog(this, tr("Studies to take the noise from"), studyFolder(),
                                   tr("Studies and run sheets (*.bothways *.csv);;All files (*)"));
    dialog->setObjectName("fileDialog");
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::ExistingFiles);
    connect(dialog, &QFileDialog::filesSelected, this, [this](const QStringList& files) {
        std::vector<core::Noise> noises;
        QStringList names;
        for (const QString& file : files) {
            const auto input =
                readInput(toPath(file), {{}, m_clock().date().toString(Qt::ISODate).toStdString()});
            if (!input)
                return say(input.error());
            const core::Analysis analysis = answerTo(input.value())->analysis;
            const QString name = QFileInfo(file).completeBaseName();
            if (!analysis.headline) {
                m_messages->say(MessageBar::Kind::problem,
                                tr("There is no verdict in %1, so the noise of a pair is not "
                                   "known from it.")
                                    .arg(name));
                return;
            }
            noises.push_back({analysis.headline->s, analysis.headline->df});
            names.append(name);
        }
        m_result->plan()->setNoise(core::pooledNoise(noises), names);
    });
    dialog->open();
}

} // namespace bothways::app
