// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QListWidget>
#include <QString>
#include <QWidget>

namespace bothways::tests {

/// Ticks a channel of a trace view, or takes its tick away, as a click on it does.
inline void tickChannel(const QWidget& view, const QString& channel, bool ticked)
{
    auto* list = view.findChild<QListWidget*>(QStringLiteral("traceChannels"));
    ASSERT_NE(list, nullptr);
    for (int i = 0; i < list->count(); ++i)
        if (list->item(i)->data(Qt::UserRole).toString() == channel)
            return list->item(i)->setCheckState(ticked ? Qt::Checked : Qt::Unchecked);
    FAIL() << "there is no channel " << channel.toStdString();
}

} // namespace bothways::tests
