// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/look_first_page.h"

#include "app/desktop/look/page_parts.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace bothways::app {

LookFirstPage::LookFirstPage(QWidget* parent)
    : QWidget(parent),
      m_heading(parts::heading(QStringLiteral("lookFirstHeading"))),
      m_words(parts::sentence(QStringLiteral("lookFirstWords"))),
      m_anyLook(new QPushButton),
      m_verdict(new QPushButton)
{
    setObjectName(QStringLiteral("lookFirstPage"));
    m_anyLook->setObjectName(QStringLiteral("lookAnyLook"));
    m_verdict->setObjectName(QStringLiteral("lookVerdict"));
    auto* box = new QVBoxLayout(this);
    box->setSpacing(12);
    box->addStretch(1);
    box->addWidget(m_heading);
    box->addWidget(m_words);
    box->addWidget(m_anyLook, 0, Qt::AlignLeft);
    box->addWidget(m_verdict, 0, Qt::AlignLeft);
    box->addStretch(2);
    connect(m_anyLook, &QPushButton::clicked, this, &LookFirstPage::anyLookWanted);
    connect(m_verdict, &QPushButton::clicked, this, &LookFirstPage::verdictWanted);
    reword();
}

void LookFirstPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange)
        reword();
    QWidget::changeEvent(event);
}

void LookFirstPage::reword()
{
    parts::enlarge(*m_heading, 1.25, true);
    m_heading->setText(tr("The plan is not fulfilled yet"));
    // Simulated: looks after each block from the third to the ninth, 2 to 8 pairs a block (help,
    // "The method").
    m_words->setText(
        tr("Whoever looks after each block and stops when the answer suits finds an effect that is "
           "not there in some 15 of 100 studies, instead of 5. So every look goes on record. One "
           "interval holds however often it is looked at; it is about 1.65 times as wide in the "
           "end."));
    m_anyLook->setText(tr("Show the &interval that allows looking"));
    m_verdict->setText(tr("Show the &verdict"));
}

} // namespace bothways::app
