// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/theme.h"

#include <QWidget>

class QPainter;
class QRectF;

namespace bothways::app {

/// A state as a shape, in a square.
class StateMark : public QWidget {
    Q_OBJECT

public:
    [[nodiscard]] QSize sizeHint() const final { return {side(), side()}; }

protected:
    explicit StateMark(QWidget* parent);
    void showIn(const Theme& theme);
    [[nodiscard]] virtual int side() const = 0;
    [[nodiscard]] virtual double air() const = 0; ///< around the shape
    virtual void paint(QPainter& painter, const QRectF& box, const Theme& theme) const = 0;
    void paintEvent(QPaintEvent* event) final;

private:
    Theme m_theme = Theme::light();
};

/// What an answer is: an arrow down (less) or up (more), two bars (no difference), a question mark
/// (cannot tell), an empty ring (no verdict).
class VerdictMark final : public StateMark {
    Q_OBJECT

public:
    explicit VerdictMark(QWidget* parent = nullptr) : StateMark(parent) {}
    void show(core::VerdictClass cls, const Theme& theme);

protected:
    [[nodiscard]] int side() const override { return 3 * fontMetrics().height(); }
    [[nodiscard]] double air() const override { return 1.0; }
    void paint(QPainter& painter, const QRectF& box, const Theme& theme) const override;

private:
    core::VerdictClass m_class = core::VerdictClass::none;
};

/// The state of a check: tick (holds), triangle (note), cross in a square (fails), ring (not
/// computed).
class CheckMark final : public StateMark {
    Q_OBJECT

public:
    explicit CheckMark(QWidget* parent = nullptr) : StateMark(parent) {}
    void show(core::CheckState state, const Theme& theme);

protected:
    [[nodiscard]] int side() const override { return fontMetrics().height() + 4; }
    [[nodiscard]] double air() const override { return 2.0; }
    void paint(QPainter& painter, const QRectF& box, const Theme& theme) const override;

private:
    core::CheckState m_state = core::CheckState::notComputed;
};

void paintVerdict(QPainter& painter, const QRectF& box, core::VerdictClass cls, const Theme& theme);
void paintCheck(QPainter& painter, const QRectF& box, core::CheckState state, const Theme& theme);

} // namespace bothways::app
