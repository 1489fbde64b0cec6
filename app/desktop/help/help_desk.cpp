// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/help/help_desk.h"

#include "app/desktop/help/help_places.h"
#include "app/desktop/help/help_window.h"
#include "app/desktop/look/help_topics.h"

#include <QApplication>
#include <QKeyEvent>

namespace bothways::app {

HelpDesk::HelpDesk(QWidget& window) : m_window(window)
{
    qApp->installEventFilter(this);
}

HelpDesk::~HelpDesk() = default;

void HelpDesk::open(const QString& topic)
{
    if (!m_help)
        // Without a parent: a dialog of the window must not keep people from reading.
        m_help = std::make_unique<HelpWindow>(QLocale().name().section(u'_', 0, 0));
    if (!m_help->open(HelpTopic::of(topic)))
        m_help->open({QStringLiteral("index"), {}});
    if (m_help->isMinimized())
        m_help->showNormal();
    m_help->show();
    m_help->raise();
    m_help->activateWindow();
}

void HelpDesk::openHere()
{
    const QWidget* focus = QApplication::focusWidget();
    if (!focus || focus->window() == m_help.get())
        focus = m_window.focusWidget();
    open(helpTopicAt(focus));
}

bool HelpDesk::isOurs(const QWidget* widget) const
{
    while (widget && widget != &m_window)
        widget = widget->parentWidget();
    return widget != nullptr;
}

bool HelpDesk::eventFilter(QObject* watched, QEvent* event)
{
    const bool asked = event->type() == helpWantedEvent();
    if (!asked && event->type() != QEvent::KeyPress)
        return false;
    const auto* widget = qobject_cast<const QWidget*>(watched);
    if (!isOurs(widget))
        return false;
    if (!asked) {
        const auto* key = static_cast<const QKeyEvent*>(event);
        if (key->key() != Qt::Key_F1 || key->modifiers() != Qt::NoModifier ||
            widget->window() == &m_window)
            return false;
    }
    open(helpTopicAt(widget));
    return true;
}

} // namespace bothways::app
