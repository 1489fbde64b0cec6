// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/theme.h"

#include <QWidget>

class QPainter;
class QRectF;

namespace bothways::app {

/// What an answer is, as a shape: an arrow down (less) or up (more), two bars (no difference), a
/// question mark (cannot tell), an empty ring (no verdict).
class VerdictMark final : public QWidget {
    Q_OBJECT

public:
    explicit VerdictMark(QWidget* parent = nullptr);
    void show(core::VerdictClass cls, const Theme& theme);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    core::VerdictClass m_class = core::VerdictClass::none;
    Theme m_theme = Theme::light();
};

/// The state of a check as a shape: tick (holds), triangle (note), cross in a square (fails), ring
/// (not computed).
class CheckMark final : public QWidget {
    Q_OBJECT

public:
    explicit CheckMark(QWidget* parent = nullptr);
    void show(core::CheckState state, const Theme& theme);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    core::CheckState m_state = core::CheckState::notComputed;
    Theme m_theme = Theme::light();
};

void paintVerdict(QPainter& painter, const QRectF& box, core::VerdictClass cls, const Theme& theme);
void paintCheck(QPainter& painter, const QRectF& box, core::CheckState state, const Theme& theme);

} // namespace bothways::app
