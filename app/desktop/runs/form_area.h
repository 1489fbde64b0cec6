// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>

namespace bothways::app {

/// Room for fields that may be wider or higher than what a small screen leaves: all of them where
/// there is room, else a part that scrolls to what has the keyboard.
class FormArea final : public QScrollArea {
    Q_OBJECT

public:
    explicit FormArea(QWidget* fields, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void follow(QWidget* keyboard);
};

} // namespace bothways::app
