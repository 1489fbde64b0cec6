// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/theme.h"
#include "core/watching/watcher.h"

#include <QWidget>

class QPainter;

namespace bothways::app {

/// An alarm in words, with the colour and the shape of its level: a disc, a triangle, an octagon.
/// One that was acknowledged is an outline.
class AlarmBand final : public QWidget {
    Q_OBJECT

public:
    explicit AlarmBand(QWidget* parent = nullptr);
    /// @param words  with the level in front
    /// @param others  how many more there are
    void showAlarm(const core::Alarm& alarm, const QString& words, int others, bool acknowledged);
    void setTheme(const Theme& theme);
    [[nodiscard]] QString words() const { return m_words; }
    /// Nothing is cut.
    [[nodiscard]] bool isWhole() const;
    [[nodiscard]] double textContrast() const;
    [[nodiscard]] QSize sizeHint() const override { return {1, 1}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {1, 1}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QColor fill() const;
    [[nodiscard]] QColor ink() const;
    [[nodiscard]] QColor levelColour() const;
    [[nodiscard]] QRect textRoom() const;
    [[nodiscard]] QFont textFont() const;
    void paintShape(QPainter& painter, const QRectF& box) const;

    core::AlarmLevel m_level = core::AlarmLevel::note;
    QString m_words;
    bool m_acknowledged = false;
    Theme m_theme = Theme::light();
};

} // namespace bothways::app
