// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/late_page.h"

#include <QShowEvent>
#include <QVBoxLayout>

namespace bothways::app {
namespace {

/// What is made later stands at the end of the window's order of Tab: its parts go to their place.
void tabThrough(QWidget* place, QWidget* page)
{
    QList<QWidget*> stops;
    if (page->focusPolicy() & Qt::TabFocus)
        stops += page;
    for (QWidget* next = page->nextInFocusChain(); next != page; next = next->nextInFocusChain())
        if (page->isAncestorOf(next) && next->focusPolicy() & Qt::TabFocus)
            stops += next;
    QWidget* before = place->previousInFocusChain();
    while (before != place->window() && !(before->focusPolicy() & Qt::TabFocus))
        before = before->previousInFocusChain();
    for (QWidget* stop : stops) {
        QWidget::setTabOrder(before, stop);
        before = stop;
    }
}

} // namespace

LatePage::LatePage(Make make, QWidget* parent) : QWidget(parent), m_make(std::move(make))
{
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
}

void LatePage::drop()
{
    delete m_page;
    m_page = nullptr;
    if (isVisible())
        prepare();
}

void LatePage::showEvent(QShowEvent* event)
{
    if (!event->spontaneous())
        prepare();
    QWidget::showEvent(event);
}

void LatePage::prepare()
{
    if (!m_page) {
        m_page = m_make();
        layout()->addWidget(m_page);
        tabThrough(this, m_page);
    }
    emit aboutToBeSeen();
    m_page->show(); // it would wait for the next event
}

} // namespace bothways::app
