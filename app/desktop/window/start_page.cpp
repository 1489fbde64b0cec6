// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/start_page.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/turning_layout.h"

#include <QCommandLinkButton>
#include <QDir>
#include <QEvent>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QScrollArea>
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
    QWidget* column = this; // until the layout takes them
    auto* box = new QVBoxLayout;
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
    QScrollArea* area = parts::scrolled(box); // a small window stays as small as it is
    area->setFocusPolicy(Qt::NoFocus);
    area->setMaximumWidth(900);
    auto* outer = new QHBoxLayout(this);
    outer->addStretch(1);
    outer->addWidget(area, 20);
    outer->addStretch(1);
    connect(&preferences, &Preferences::recentFilesChanged, this, &StartPage::fillRecent);
    fillRecent();
}

QLayout* StartPage::buildChoices(QWidget* column)
{
    constexpr int kWide = 620; // two beside each other, words and drawings whole
    auto* rows = new QVBoxLayout;
    rows->setSpacing(8);
    QBoxLayout* row = nullptr;
    const auto add = [&](const char* name, StartDrawing drawing, const QString& title,
                         const QString& words, void (StartPage::*wanted)()) {
        auto* button = new QCommandLinkButton(title, words, column);
        button->setObjectName(name);
        button->setAccessibleDescription(words);
        button->setIconSize(kStartDrawing);
        if (m_choices.size() % 2 == 0)
            rows->addLayout(row = new TurningLayout(kWide));
        row->addWidget(button, 1);
        connect(button, &QCommandLinkButton::clicked, this, wanted);
        m_choices.emplace_back(button, drawing);
    };
    add("openDemo", StartDrawing::days, tr("&Demo study"),
        tr("An invented day with a generator on a van's roof"), &StartPage::demoWanted);
    add("newStudy", StartDrawing::stretch, tr("&New study"),
        tr("Empty, and ready for the first run; saved as you type"), &StartPage::emptyStudyWanted);
    add("openStudy", StartDrawing::answer, tr("&Open a study…"),
        tr("A file that ends in .bothways"), &StartPage::openWanted);
    add("openSheet", StartDrawing::sheet, tr("&Import a run sheet…"),
        tr("A spreadsheet or a CSV file with a line for each run"), &StartPage::sheetWanted);
    draw();
    return rows;
}

void StartPage::draw()
{
    const Theme theme = Theme::of(palette());
    for (const auto& [button, drawing] : m_choices)
        button->setIcon(startDrawing(drawing, theme, devicePixelRatioF()));
}

void StartPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange)
        draw();
    QWidget::changeEvent(event);
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
