// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/import_problems_dialog.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/said.h"

#include <QClipboard>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

namespace bothways::app {
namespace {

/// "sheet Log, line 14, column 'x'": without the file, which is the same for all.
QString placeInFile(const Language& in, const core::Error& error)
{
    core::Place within = error.where;
    QStringList place;
    if (const auto sheet = within.file.rfind('[');
        within.file.ends_with(']') && sheet != std::string::npos)
        place += ImportProblemsDialog::tr("sheet %1")
                     .arg(nameShown(within.file.substr(sheet + 1, within.file.size() - sheet - 2)));
    if (within.line > 0)
        place += ImportProblemsDialog::tr("line %1").arg(within.line);
    within.file.clear();
    within.line = 0;
    place += QString::fromStdString(in.place(within));
    place.removeAll(QString());
    return place.join(QStringLiteral(", "));
}

} // namespace

ImportProblemsDialog::ImportProblemsDialog(const Language& in, const QString& file,
                                           const core::Error& error, QWidget* parent)
    : QDialog(parent)
{
    setObjectName("importProblems");
    setWindowTitle(tr("Run sheet not imported"));
    setAttribute(Qt::WA_DeleteOnClose);
    const int count = static_cast<int>(error.others.size()) + 1;
    auto* box = new QVBoxLayout(this);
    auto* top = new QLabel(tr("%1 was not imported, and the study is as it was. %n place(s) in it "
                              "need a look:",
                              nullptr, count)
                               .arg(QFileInfo(file).fileName()),
                           this);
    top->setWordWrap(true);
    box->addWidget(top);

    auto* list = new QTableWidget(count, 2, this);
    parts::dress(*list, "importProblemList", tr("Places in the run sheet that need a look"));
    list->setHorizontalHeaderLabels({tr("Line and column"), tr("What is wrong")});
    const auto fill = [&](int row, const core::Error& fault) {
        list->setItem(row, 0, new QTableWidgetItem(placeInFile(in, fault)));
        list->setItem(row, 1, new QTableWidgetItem(said(in, fault.message)));
    };
    fill(0, error);
    for (int row = 1; row < count; ++row)
        fill(row, error.others[static_cast<std::size_t>(row) - 1]);
    list->horizontalHeader()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    list->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
    list->setWordWrap(true);
    // Once the columns have their widths.
    connect(list->horizontalHeader(), &QHeaderView::sectionResized, list,
            &QTableWidget::resizeRowsToContents, Qt::QueuedConnection);
    box->addWidget(list, 1);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* copy = buttons->addButton(tr("Copy the list"), QDialogButtonBox::ActionRole);
    copy->setObjectName("copyProblems");
    auto* again = buttons->addButton(tr("Import again"), QDialogButtonBox::ActionRole);
    again->setObjectName("importAgain");
    box->addWidget(buttons);
    connect(copy, &QPushButton::clicked, this, [text = QString::fromStdString(in.describe(error))] {
        QGuiApplication::clipboard()->setText(text);
    });
    connect(again, &QPushButton::clicked, this, [this, file] {
        close();
        emit importAgain(file);
    });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    resize(720, 420);
}

} // namespace bothways::app
