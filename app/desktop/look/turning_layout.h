// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QBoxLayout>

namespace bothways::app {

/// Two or more things side by side where there is room, below each other where there is not.
class TurningLayout final : public QBoxLayout {
public:
    /// Below a width of `wide` pixels they stand below each other.
    explicit TurningLayout(int wide, QWidget* parent = nullptr);

    void setGeometry(const QRect& rect) override;
    [[nodiscard]] QSize minimumSize() const override;
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] int minimumHeightForWidth(int width) const override;

private:
    void turnFor(int width) const;
    int m_wide;
};

} // namespace bothways::app
