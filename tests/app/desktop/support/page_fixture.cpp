// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/desktop/support/page_fixture.h"

#include "app/desktop/plots/plot_view.h"
#include "core/answer/analyse.h"
#include "core/screening/screening.h"
#include "storage/sheet/run_sheet.h"
#include "tests/support/read_sheet.h"

#include <QRegularExpression>
#include <QTableWidget>
#include <QTest>
#include <QTextBrowser>

#include <filesystem>

namespace bothways::tests {

std::shared_ptr<const app::ResultSet> resultOf(core::Study study,
                                               const core::AnalysisOptions& options)
{
    auto result = std::make_shared<app::ResultSet>();
    result->analysis = core::analyse(study, options);
    result->screening = core::screen(study);
    result->study = std::move(study);
    return result;
}

namespace {

std::shared_ptr<const app::ResultSet> resultOfSheet(const std::filesystem::path& file,
                                                    const std::string& baseline)
{
    storage::SheetOptions sheetOptions;
    sheetOptions.date = "2026-05-09";
    auto sheet = tests::readRunSheet(file, sheetOptions);
    if (!sheet) {
        ADD_FAILURE() << core::describe(sheet.error());
        return std::make_shared<app::ResultSet>();
    }
    core::AnalysisOptions options;
    options.baseline = baseline;
    return resultOf(std::move(sheet.value().study), options);
}

} // namespace

std::shared_ptr<const app::ResultSet> resultOfExample(const std::string& name,
                                                      const std::string& baseline)
{
    return resultOfSheet(BOTHWAYS_SOURCE_DIR "/tests/published/data/examples/" + name + ".csv",
                         baseline);
}

std::shared_ptr<const app::ResultSet> resultOfSample(const std::string& name,
                                                     const std::string& baseline)
{
    return resultOfSheet(BOTHWAYS_SOURCE_DIR "/sample_data/" + name + ".csv", baseline);
}

QString allTexts(const QWidget& page)
{
    QStringList texts{page.accessibleDescription()};
    for (const QLabel* label : page.findChildren<QLabel*>())
        texts << label->text();
    for (const QTextBrowser* browser : page.findChildren<QTextBrowser*>())
        texts << browser->toPlainText();
    for (const QTableWidget* table : page.findChildren<QTableWidget*>())
        for (int row = 0; row < table->rowCount(); ++row)
            for (int column = 0; column < table->columnCount(); ++column)
                if (const QTableWidgetItem* item = table->item(row, column))
                    texts << item->text();
    for (const app::PlotView* plot : page.findChildren<app::PlotView*>()) {
        texts << plot->accessibleName() << plot->accessibleDescription() << plot->numbers().csv();
        for (const app::Reading& reading : plot->readings())
            texts << reading.words;
        for (QCPAxisRect* rect : plot->axisRects())
            for (QCPAxis* axis : rect->axes())
                texts << axis->label() << QStringList(axis->tickVectorLabels());
        for (int i = 0; i < plot->itemCount(); ++i)
            if (const auto* text = qobject_cast<QCPItemText*>(plot->item(i)))
                texts << text->text();
    }
    return texts.join(u'\n');
}

QImage pictureOf(QWidget& page, const QString& name, QSize size)
{
    page.resize(size);
    page.show();
    QApplication::sendPostedEvents();
    QApplication::processEvents();
    const QImage image = page.grab().toImage();
    const QString folder = qEnvironmentVariable("BOTHWAYS_PICTURES");
    if (!folder.isEmpty())
        image.save(folder + u'/' + name + QLatin1String(".png"));
    return image;
}

bool hasNonsense(const QString& text)
{
    static const QRegularExpression nonsense(
        QStringLiteral(R"(\bnan\b|\binf\b|-nan|%[1-9]|%n\b|\(s\)|\bnull\b)"),
        QRegularExpression::CaseInsensitiveOption);
    return text.contains(nonsense);
}

} // namespace bothways::tests
