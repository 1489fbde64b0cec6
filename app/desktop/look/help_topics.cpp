// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/help_topics.h"

#include <QToolButton>

namespace bothways::app {
namespace {

constexpr const char* kTopic = "helpTopic"; // a dynamic property of the widget

QString within(const char* page, std::string_view anchor)
{
    return QLatin1String(page) + u'#' +
           QLatin1String(anchor.data(), static_cast<qsizetype>(anchor.size()));
}

std::string_view nameOf(CheckKind check)
{
    switch (check) {
    case CheckKind::normal: return "normal";
    case CheckKind::outlier: return "outlier";
    case CheckKind::order: return "order";
    case CheckKind::curve: return "curve";
    case CheckKind::spread: return "spread";
    case CheckKind::baseline: return "baseline";
    case CheckKind::direction: return "direction";
    case CheckKind::ways: return "ways";
    case CheckKind::settling: return "settling";
    case CheckKind::days: return "days";
    case CheckKind::resolution: return "resolution";
    case CheckKind::air: return "air";
    }
    return {};
}

} // namespace

QString helpTopic(core::Rule rule)
{
    return within("rules", core::ruleName(rule));
}

QString helpTopic(CheckKind check)
{
    return within("checks", nameOf(check));
}

QString helpTopic(core::Companion companion)
{
    return within("companions", core::name(companion));
}

QString helpTopic(core::Qualifier qualifier)
{
    return within("verdict", core::name(qualifier));
}

QString helpTopic(core::VerdictClass cls)
{
    return within("verdict", core::name(cls));
}

void setHelpTopic(QWidget& widget, const QString& topic)
{
    widget.setProperty(kTopic, topic);
}

QString helpTopicOf(const QWidget& widget)
{
    return widget.property(kTopic).toString();
}

QEvent::Type helpWantedEvent()
{
    static const auto type = static_cast<QEvent::Type>(QEvent::registerEventType());
    return type;
}

void askForHelp(QWidget& widget)
{
    QEvent wanted(helpWantedEvent());
    QCoreApplication::sendEvent(&widget, &wanted);
}

void setHelpAbout(QToolButton& button, const QString& about)
{
    button.setAccessibleName(QCoreApplication::translate("Help", "Handbook: %1").arg(about));
}

QToolButton* helpButton(const QString& topic, const QString& about)
{
    auto* button = new QToolButton;
    button->setObjectName(QStringLiteral("helpButton"));
    button->setText(QStringLiteral("?"));
    button->setAutoRaise(true);
    button->setToolTip(QCoreApplication::translate("Help", "What this means (handbook)"));
    setHelpAbout(*button, about);
    button->setCursor(Qt::PointingHandCursor);
    setHelpTopic(*button, topic);
    QObject::connect(button, &QToolButton::clicked, button, [button] { askForHelp(*button); });
    return button;
}

} // namespace bothways::app
