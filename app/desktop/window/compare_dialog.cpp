// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/compare_dialog.h"

#include "app/answer/input.h"
#include "app/desktop/document/paths.h"
#include "app/desktop/document/study_files.h"
#include "app/desktop/look/said.h"

#include <QDate>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QVBoxLayout>

namespace bothways::app {

CompareDialog::CompareDialog(ComparedStudy open, const Theme& theme, const UnitsShown& units,
                             QWidget* parent)
    : QDialog(parent), m_language(units.language), m_page(new ComparePage), m_problem(new QLabel)
{
    setObjectName("compareDialog");
    setWindowTitle(tr("Compare studies"));
    m_problem->setObjectName("compareProblem");
    m_problem->setWordWrap(true);
    m_problem->hide();
    auto* box = new QVBoxLayout(this);
    box->addWidget(m_problem);
    box->addWidget(m_page, 1);
    m_page->setTheme(theme);
    m_page->setUnits(units);
    m_studies.push_back(std::move(open));
    m_page->setStudies(m_studies);
    connect(m_page, &ComparePage::addAsked, this, &CompareDialog::chooseFiles);
    connect(m_page, &ComparePage::removeAsked, this, [this](int study) {
        if (study < 0 || study >= static_cast<int>(m_studies.size()))
            return;
        m_studies.erase(m_studies.begin() + study);
        m_page->setStudies(m_studies);
    });
    resize(900, 640);
}

void CompareDialog::addFile(const QString& file)
{
    const auto say = [this](const core::Error& error) {
        m_problem->setText(describedHere(m_language, error));
        m_problem->show();
    };
    m_problem->hide();
    const auto input =
        readInput(toPath(file), {{}, QDate::currentDate().toString(Qt::ISODate).toStdString()});
    if (!input)
        return say(input.error());
    m_studies.push_back({QString::fromStdString(input.value().name()), answerTo(input.value())});
    m_page->setStudies(m_studies);
}

void CompareDialog::chooseFiles()
{
    auto* dialog = new QFileDialog(this, tr("Add studies to compare"), studyFolder(),
                                   tr("Studies and run sheets (*.bothways *.csv);;All files (*)"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::ExistingFiles);
    connect(dialog, &QFileDialog::filesSelected, this, [this](const QStringList& files) {
        for (const QString& file : files)
            addFile(file);
    });
    dialog->open();
}

} // namespace bothways::app
