// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>

namespace bothways::app {

/// Room for a panel that may be wider or higher than what a small screen leaves: all of it where
/// there is room, else a part that scrolls to what has the keyboard. Shown and hidden with it.
class FormArea final : public QScrollArea {
    Q_OBJECT

public:
    explicit FormArea(QWidget* form, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
};

} // namespace bothways::app
