// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace bothways::app {

/// The wheel scrolls the page that the pointer is over. Without it, a number or a choice that
/// happens to be under the pointer would be changed instead, unseen: it is changed by the wheel
/// only while it has the keyboard.
class WheelGuard final : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace bothways::app
