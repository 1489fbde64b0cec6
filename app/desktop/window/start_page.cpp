// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/start_page.h"

#include "app/desktop/look/preferences.h"

#include <QCommandLinkButton>
#include <QDir>
#include <QFileInfo>
#include <QGridLayout>
#include <QLabel>
#include <QListWidget>
#include <QVBoxLayout>

namespace bothways::app {
namespace {

QLabel* paragraph(const QString& text, QWidget* parent, double scale = 1.0, bool bold = false)
{
    auto* label = new QLabel(text, parent);
    QFont font = label->font();
    font.setPointSizeF(font.pointSizeF() * scale);
    font.setBold(bold);
    label->setFont(font);
    label->setWordWrap(true);
    return label;
}

} // namespace

StartPage::StartPage(Preferences& preferences, QWidget* parent)
    : QWidget(parent),
      m_preferences(preferences),
      m_recentBox(new QWidget(this)),
      m_recent(new QListWidget(m_recentBox))
{
    setObjectName("startPage");
    auto* column = new QWidget(this);
    column->setMaximumWidth(900);
    auto* outer = new QHBoxLayout(this);
    outer->addStretch(1);
    outer->addWidget(column, 20);
    outer->addStretch(1);
    auto* box = new QVBoxLayout(column);
    box->setSpacing(10);
    box->addStretch(1);
    box->addWidget(paragraph(tr("Does it change the consumption?"), column, 1.9, true));
    box->addWidget(paragraph(
        tr("Log runs driven out and back, baseline – device – baseline. Bothways finds the runs "
           "that cannot be used, pairs the rest, and says whether there is an effect, how large, "
           "how sure, and if the runs cannot tell, what it would take."),
        column, 1.1));
    box->addSpacing(10);

    box->addLayout(buildChoices(column));
    buildRecent();
    box->addWidget(m_recentBox);
    box->addSpacing(10);
    box->addWidget(paragraph(
        tr("The driver drives, the companion types. Obey traffic law and the vehicle's insurance "
           "and inspection rules; keep clear of rotating parts. This is no certification "
           "procedure."),
        column, 0.95));
    box->addStretch(2);
    connect(&preferences, &Preferences::recentFilesChanged, this, &StartPage::fillRecent);
    fillRecent();
}

QLayout* StartPage::buildChoices(QWidget* column)
{
    auto* grid = new QGridLayout;
    grid->setSpacing(8);
    const auto add = [&](int row, int place, const char* name, const QString& title,
                         const QString& words) {
        auto* button = new QCommandLinkButton(title, words, column);
        button->setObjectName(name);
        button->setAccessibleDescription(words);
        grid->addWidget(button, row, place);
        return button;
    };
    connect(add(0, 0, "openDemo", tr("&Demo study"),
                tr("An invented day with a generator on a van's roof")),
            &QCommandLinkButton::clicked, this, &StartPage::demoWanted);
    connect(add(0, 1, "newStudy", tr("&New study"),
                tr("Empty, and ready for the first run; saved as you type")),
            &QCommandLinkButton::clicked, this, &StartPage::emptyStudyWanted);
    connect(add(1, 0, "openStudy", tr("&Open a study…"), tr("A file that ends in .bothways")),
            &QCommandLinkButton::clicked, this, &StartPage::openWanted);
    connect(add(1, 1, "openSheet", tr("&Import a run sheet…"),
                tr("A CSV file with a line for each run")),
            &QCommandLinkButton::clicked, this, &StartPage::sheetWanted);
    return grid;
}

void StartPage::buildRecent()
{
    auto* recent = new QVBoxLayout(m_recentBox);
    recent->setContentsMargins(0, 10, 0, 0);
    recent->addWidget(paragraph(tr("Recent studies"), m_recentBox, 1.1, true));
    m_recent->setObjectName("recentStudies");
    m_recent->setAccessibleName(tr("Recent studies"));
    recent->addWidget(m_recent);
    connect(m_recent, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) {
        emit fileWanted(item->data(Qt::UserRole).toString());
    });
}

void StartPage::fillRecent()
{
    m_recent->clear();
    const QStringList files = m_preferences.recentFiles();
    for (const QString& file : files) {
        const QFileInfo info(file);
        auto* item = new QListWidgetItem(
            tr("%1   –   %2")
                .arg(info.completeBaseName(), QDir::toNativeSeparators(info.absolutePath())),
            m_recent);
        item->setData(Qt::UserRole, file);
        item->setToolTip(QDir::toNativeSeparators(file));
    }
    m_recent->setMaximumHeight((fontMetrics().height() + 6) *
                               static_cast<int>(qBound(2, files.size() + 1, 7)));
    m_recentBox->setVisible(!files.isEmpty());
}

} // namespace bothways::app
