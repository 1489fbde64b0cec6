// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/compare_dialog.h"

#include "app/desktop/document/study_files.h"
#include "app/desktop/document/written_files.h"
#include "app/desktop/look/said.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QVBoxLayout>

namespace bothways::app {

CompareDialog::CompareDialog(ComparedStudy open, const Theme& theme, const UnitsShown& units,
                             Clock clock, QWidget* parent)
    : QDialog(parent),
      m_language(units.language),
      m_clock(std::move(clock)),
      m_reader(new StudiesReader(this)),
      m_page(new ComparePage),
      m_state(new QLabel)
{
    setObjectName("compareDialog");
    setWindowTitle(tr("Compare studies"));
    m_state->setObjectName("compareState");
    m_state->setWordWrap(true);
    m_state->hide();
    auto* box = new QVBoxLayout(this);
    box->addWidget(m_state);
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
    connect(m_reader, &StudiesReader::done, this, &CompareDialog::add);
    resize(900, 640);
}

void CompareDialog::addFiles(const QStringList& files)
{
    say(tr("Reading %n study(s)…", nullptr, static_cast<int>(files.size())));
    m_reader->read(files, m_clock().date());
}

void CompareDialog::add(const std::vector<ReadStudy>& studies)
{
    GivenRuns given;
    core::Message twice;
    for (const ComparedStudy& before : m_studies)
        static_cast<void>(given.take(before.given, twice));
    QStringList problems;
    for (const ReadStudy& study : studies) {
        twice = {};
        if (study.error)
            problems.append(describedHere(m_language, *study.error));
        else if (const core::Outcome once = given.take(study.given, twice); !once)
            problems.append(describedHere(m_language, once.error()));
        else if (study.result)
            m_studies.push_back({nameShown(study.name.toStdString()), study.result, study.given});
        if (!twice.empty())
            problems.append(asSentence(said(m_language, twice)));
    }
    m_page->setStudies(m_studies);
    say(problems.join(QLatin1Char('\n')));
}

void CompareDialog::say(const QString& sentence)
{
    m_state->setText(sentence);
    m_state->setVisible(!sentence.isEmpty());
}

void CompareDialog::chooseFiles()
{
    auto* dialog =
        new QFileDialog(this, tr("Add studies to compare"), studyFolder(),
                        tr("Studies and run sheets (*.bothways *.csv *.tsv *.txt *.xlsx *.ods);;"
                           "All files (*)"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::ExistingFiles);
    if (m_folders)
        rememberFolder(*dialog, *m_folders);
    connect(dialog, &QFileDialog::filesSelected, this, &CompareDialog::addFiles);
    dialog->open();
}

} // namespace bothways::app
