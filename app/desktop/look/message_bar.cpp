// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/message_bar.h"

#include "app/desktop/look/said.h"
#include "app/desktop/look/shapes.h"
#include "app/desktop/look/theme.h"

#include <QAccessible>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>

namespace bothways::app {

MessageBar::MessageBar(QWidget* parent)
    : QFrame(parent),
      m_sign(new QLabel(this)),
      m_sentence(new QLabel(this)),
      m_offer(new QPushButton(this)),
      m_otherwise(new QPushButton(this))
{
    setObjectName("messageBar");
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    m_sentence->setObjectName("messageText");
    m_sentence->setWordWrap(true);
    m_sentence->setTextFormat(Qt::PlainText);
    m_sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_offer->setObjectName("messageAction");
    m_otherwise->setObjectName("messageOtherwise");
    auto* close = new QToolButton(this);
    close->setObjectName("messageClose");
    close->setText(tr("Close"));
    close->setAutoRaise(true);
    close->setAccessibleName(tr("Close the message"));
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(10, 4, 6, 4);
    box->addWidget(m_sign);
    box->addWidget(m_sentence, 1);
    box->addWidget(m_offer);
    box->addWidget(m_otherwise);
    box->addWidget(close);
    connect(close, &QToolButton::clicked, this, &QWidget::hide);
    hide();
}

void MessageBar::say(Kind kind, const QString& sentence, const Offer& offer, const Offer& otherwise)
{
    m_kind = kind;
    const QString visible = nameShown(sentence.toStdString()); // paths and names stand in it
    m_sentence->setText(visible);
    m_sentence->setAccessibleName(visible);
    put(m_offer, offer);
    put(m_otherwise, otherwise);
    restyle();
    show();
    QAccessibleEvent event(m_sentence, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

void MessageBar::put(QPushButton* button, const Offer& offer)
{
    button->setText(offer.words);
    button->setVisible(!offer.words.isEmpty());
    button->disconnect(this);
    connect(button, &QPushButton::clicked, this, [this, done = offer.done] {
        hide();
        const auto now = done; // which may say the next thing here
        if (now)
            now();
    });
}

void MessageBar::say(const Language& in, const core::Error& error)
{
    // The file's name in front, so that the sentence is soon there; its folder behind.
    core::Error shown = error;
    shown.where.file = QFileInfo(QString::fromStdString(error.where.file)).fileName().toStdString();
    QString sentence = sentenceWithPlace(in, shown);
    if (shown.where.file != error.where.file) //: what went wrong, and where
        sentence = tr("%1 (%2)").arg(sentence, nameShown(error.where.file));
    if (!error.others.empty())
        sentence += u' ' + tr("There are %n more.", nullptr, static_cast<int>(error.others.size()));
    say(Kind::problem, sentence);
}

QString MessageBar::sentence() const
{
    return isHidden() ? QString() : m_sentence->text();
}

void MessageBar::restyle()
{
    const Theme theme = Theme::of(parentWidget() ? parentWidget()->palette() : palette());
    QPalette own = theme.palette();
    own.setColor(QPalette::Window, theme.block_tint);
    own.setColor(QPalette::WindowText, theme.ink);
    if (palette() != own)
        setPalette(own);
    const int size = m_sentence->fontMetrics().height() + 2;
    m_sign->setPixmap(
        gradeIcon(m_kind == Kind::problem ? core::Grade::spoils : core::Grade::note, theme)
            .pixmap(size, size));
}

void MessageBar::changeEvent(QEvent* event)
{
    QFrame::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        restyle();
}

} // namespace bothways::app
