// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/blind_page.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace bothways::app {

BlindPage::BlindPage(bool mayShow, QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("blindPage"));
    auto* box = new QVBoxLayout(this);
    auto* words = new QLabel(tr("Consumption and result are hidden, so that the answer cannot "
                                "choose the runs. Go through the findings, discard what has to "
                                "go, then show them. That they were hidden, and until when, is in "
                                "the history."));
    words->setWordWrap(true);
    words->setAlignment(Qt::AlignCenter);
    auto* reveal = new QPushButton(tr("The discards are settled: show the result"));
    reveal->setObjectName(QStringLiteral("reveal"));
    reveal->setEnabled(mayShow);
    if (!mayShow)
        reveal->setToolTip(tr("This study is open for reading only."));
    box->addStretch(1);
    box->addWidget(words);
    box->addWidget(reveal, 0, Qt::AlignHCenter);
    box->addStretch(2);
    connect(reveal, &QPushButton::clicked, this, &BlindPage::showWanted);
}

} // namespace bothways::app
