// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/why_page.h"

#include "app/desktop/pages/why_text.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QScrollBar>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace bothways::app {

WhyPage::WhyPage(QWidget* parent) : ResultView(parent)
{
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(18, 16, 18, 16);
    auto* buttons = new QHBoxLayout;
    m_copyText = new QPushButton;
    m_copyText->setObjectName(QStringLiteral("copyText"));
    m_copyHtml = new QPushButton;
    m_copyHtml->setObjectName(QStringLiteral("copyHtml"));
    buttons->addStretch();
    buttons->addWidget(m_copyText);
    buttons->addWidget(m_copyHtml);
    m_browser = new QTextBrowser;
    m_browser->setObjectName(QStringLiteral("why"));
    m_browser->setOpenLinks(false);
    m_browser->setWordWrapMode(QTextOption::WordWrap); // no word or number of a table is broken
    m_browser->document()->setDocumentMargin(14);
    column->addWidget(m_browser, 1);
    column->addLayout(buttons);
    connect(m_copyText, &QPushButton::clicked, this, &WhyPage::copyText);
    connect(m_copyHtml, &QPushButton::clicked, this, &WhyPage::copyHtml);
    setContent(content);
}

WhyPage::~WhyPage() = default;

void WhyPage::refresh()
{
    const Words words(result()->analysis, units());
    m_html = whyHtml(*result(), words);
    const int place = m_browser->verticalScrollBar()->value();
    m_browser->setAccessibleName(tr("Why this verdict"));
    m_browser->setHtml(m_html);
    m_browser->verticalScrollBar()->setValue(place);
    m_copyText->setText(tr("Copy as &text"));
    m_copyText->setToolTip(tr("For a forum or a letter: plain text with its tables (Markdown)"));
    m_copyHtml->setText(tr("Copy as &HTML"));
    m_copyHtml->setToolTip(tr("For a word processor or a web page"));
}

QString WhyPage::asText() const
{
    return m_browser->document()->toMarkdown();
}

QString WhyPage::asHtml() const
{
    return m_html;
}

void WhyPage::copyText()
{
    QApplication::clipboard()->setText(asText());
}

void WhyPage::copyHtml()
{
    auto* copied = new QMimeData;
    copied->setHtml(asHtml());
    copied->setText(asHtml());
    QApplication::clipboard()->setMimeData(copied);
}

} // namespace bothways::app
