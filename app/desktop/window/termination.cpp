// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/termination.h"

#include <QEvent>
#include <QGuiApplication>
#include <QSocketNotifier>

#include <fcntl.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <utility>

namespace bothways::app {
namespace {

constexpr std::array kEndings{SIGTERM, SIGINT, SIGHUP};
std::array<int, 2> signalPipe{-1, -1}; // reading end, writing end

extern "C" void passOnEnding(int)
{
    const char byte = 1;
    // Nothing else may be done here. A full pipe has the news already.
    [[maybe_unused]] const ssize_t written = ::write(signalPipe[1], &byte, 1);
}

} // namespace

Termination::Termination(QObject* parent) : QObject(parent)
{
    connect(qGuiApp, &QGuiApplication::commitDataRequest, this, &Termination::mayFollow);
    qGuiApp->installEventFilter(this);
    if (::pipe2(signalPipe.data(), O_CLOEXEC | O_NONBLOCK) != 0)
        return;
    m_notifier = new QSocketNotifier(signalPipe[0], QSocketNotifier::Read, this);
    connect(m_notifier, &QSocketNotifier::activated, this, [this] {
        char byte = 0;
        while (::read(signalPipe[0], &byte, 1) > 0) {
        }
        emit asked();
    });
    struct sigaction action {};
    action.sa_handler = passOnEnding;
    action.sa_flags = SA_RESTART | SA_RESETHAND;
    for (const int ending : kEndings)
        ::sigaction(ending, &action, nullptr);
}

Termination::~Termination()
{
    for (const int ending : kEndings)
        std::signal(ending, SIG_DFL);
    for (int& end : signalPipe)
        if (end >= 0)
            ::close(std::exchange(end, -1));
}

/// A session manager ends a program by this event, as quit() does.
bool Termination::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Quit && watched == qGuiApp)
        emit asked();
    return QObject::eventFilter(watched, event);
}

} // namespace bothways::app
