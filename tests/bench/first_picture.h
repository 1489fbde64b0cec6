// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QEvent>
#include <QWidget>

#include <sys/resource.h>

namespace bothways::bench {

constexpr QSize kWindow(1280, 800);

/// All threads of this process, until now.
inline double processor_ms()
{
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    const auto ms = [](const timeval& time) {
        return 1e3 * static_cast<double>(time.tv_sec) + 1e-3 * static_cast<double>(time.tv_usec);
    };
    return ms(usage.ru_utime) + ms(usage.ru_stime);
}

/// Whether a widget has been painted since this watches it.
class PaintSeen final : public QObject {
public:
    explicit PaintSeen(QWidget& widget) { widget.installEventFilter(this); }
    [[nodiscard]] bool seen() const { return m_seen; }

protected:
    bool eventFilter(QObject*, QEvent* event) override
    {
        m_seen = m_seen || event->type() == QEvent::Paint;
        return false;
    }

private:
    bool m_seen = false;
};

/// Goes on until what is in the widget now is on the screen.
inline void untilPainted(QWidget& widget)
{
    const PaintSeen paint(widget);
    widget.update();
    while (!paint.seen())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    for (int i = 0; i < 5; ++i) // layouts that follow layouts
        QCoreApplication::processEvents();
}

} // namespace bothways::bench
